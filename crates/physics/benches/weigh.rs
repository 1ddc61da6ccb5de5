//! Weighing, on one core: the shop's templates as they come and drilled, and a
//! ball with its core tilted and a channel cut in it.

#![allow(missing_docs, clippy::panic, reason = "a benchmark, not an interface")]

use std::hint::black_box;
use std::time::Duration;

use criterion::Criterion;
use nalgebra::Vector3;
use pithball_physics::ball::Ball;
use pithball_physics::recipe::{Hole, Piece, Recipe, Shape, Solid};
use pithball_physics::units::M_PER_IN;
use pithball_physics::weigh::weigh;

/// A piece on the axis, by density (g/cm³), shape and height (in).
fn piece(density: f64, shape: Shape, z_in: f64) -> Piece {
    Piece { density_kg_m3: 1000.0 * density, solid: solid(shape, z_in), cuts: vec![] }
}

fn solid(shape: Shape, z_in: f64) -> Solid {
    Solid { shape, squash: [1.0; 2], turn_rad: [0.0; 3], at_m: Vector3::z() * z_in * M_PER_IN }
}

fn sphere(diameter: f64) -> Shape {
    Shape::Sphere { diameter_m: diameter * M_PER_IN }
}

fn cylinder(diameter: f64, height: f64) -> Shape {
    Shape::Cylinder { diameter_m: diameter * M_PER_IN, height_m: height * M_PER_IN }
}

fn ring(ring: f64, tube: f64) -> Shape {
    Shape::Ring { ring_diameter_m: ring * M_PER_IN, tube_diameter_m: tube * M_PER_IN }
}

fn ellipsoid(across: f64, along: f64) -> Shape {
    Shape::Ellipsoid { size_m: [across * M_PER_IN, across * M_PER_IN, along * M_PER_IN] }
}

fn lathe(profile: &[[f64; 2]]) -> Shape {
    Shape::Lathe { profile_m: profile.iter().map(|[r, z]| [r * M_PER_IN, z * M_PER_IN]).collect() }
}

fn ball(diameter_in: f64, cover: f64, pieces: Vec<Piece>) -> Recipe {
    Recipe { diameter_m: diameter_in * M_PER_IN, cover_density_kg_m3: 1000.0 * cover, pieces, holes: vec![] }
}

/// The balls of scenarios/balls, in order.
fn templates() -> [(&'static str, Recipe); 6] {
    let light_bulb = [
        [0.0, -2.58],
        [1.12, -2.48],
        [1.96, -1.88],
        [2.24, -1.09],
        [2.1, -0.3],
        [1.61, 0.5],
        [1.33, 1.19],
        [1.61, 1.88],
        [1.19, 2.48],
        [0.0, 2.68],
    ];
    let bell = [
        [0.0, -2.7],
        [0.99, -2.6],
        [1.67, -2.0],
        [1.97, -1.2],
        [2.04, -0.3],
        [1.85, 0.7],
        [1.42, 1.5],
        [1.17, 2.0],
        [0.0, 2.0],
    ];
    let egg = [
        [0.0, -3.0],
        [1.26, -2.9],
        [2.03, -2.2],
        [2.45, -1.1],
        [2.52, 0.0],
        [2.24, 1.1],
        [1.75, 2.1],
        [1.26, 2.8],
        [0.0, 2.9],
    ];
    let peanut = [
        [0.0, -2.31],
        [0.96, -2.22],
        [1.57, -1.88],
        [1.78, -1.37],
        [1.5, -0.85],
        [1.09, -0.43],
        [1.03, 0.26],
        [1.57, 0.77],
        [1.85, 1.28],
        [1.64, 1.88],
        [1.03, 2.31],
        [0.0, 2.39],
    ];
    let flat = [
        [0.0, -2.7],
        [1.11, -2.6],
        [1.73, -2.0],
        [2.1, -1.1],
        [2.17, 0.0],
        [1.92, 1.1],
        [1.49, 1.9],
        [1.11, 2.2],
        [0.0, 2.2],
    ];
    let mut nested = piece(2.09, lathe(&egg), 0.29);
    nested.cuts.push(solid(ring(5.04, 0.8), -0.3));
    let mut squashed = piece(2.6, lathe(&flat), 0.33);
    squashed.solid.squash = [0.877, 1.123];
    let cap =
        Shape::Frustum { bottom_diameter_m: 2.4 * M_PER_IN, top_diameter_m: 1.7 * M_PER_IN, height_m: 0.6 * M_PER_IN };
    [
        ("1 simple", ball(8.55, 1.18, vec![piece(1.23, sphere(7.1), 0.0), piece(2.6, cylinder(3.8, 0.4), 2.75)])),
        ("2 two-piece", ball(8.55, 1.18, vec![piece(0.98, sphere(7.0), 0.0), piece(2.3, lathe(&light_bulb), 0.58)])),
        (
            "3 three-piece",
            ball(
                8.55,
                1.17,
                vec![
                    piece(0.87, sphere(7.0), 0.0),
                    piece(2.7, lathe(&bell), 0.4),
                    piece(3.0, cylinder(2.4, 0.6), 2.95),
                ],
            ),
        ),
        (
            "4 nested core",
            ball(8.57, 1.16, vec![piece(0.67, sphere(7.1), 0.0), nested, piece(3.2, ellipsoid(2.2, 4.4), 0.2)]),
        ),
        ("5 thick cover", ball(8.55, 1.14, vec![piece(2.6, lathe(&peanut), 0.39)])),
        (
            "6 five-piece",
            ball(
                8.56,
                1.16,
                vec![
                    piece(0.76, sphere(7.1), 0.0),
                    squashed,
                    piece(1.8, ring(4.2, 0.8), -0.4),
                    piece(3.2, ellipsoid(1.8, 3.4), 0.2),
                    piece(3.0, cap, 2.8),
                ],
            ),
        ),
    ]
}

/// The same ball with two finger holes and a thumb hole, as laid out for a right hand.
fn drilled(mut recipe: Recipe) -> Recipe {
    // The fingers side by side: pitched so that they do not meet below.
    let hole = |x: f64, y: f64, diameter: f64, depth: f64| {
        let entry = Vector3::new(x, y, 1.0);
        let pitch = Vector3::new(x, 0.02, 0.0);
        Hole { entry, axis: pitch - entry, diameter_m: diameter * M_PER_IN, depth_m: depth * M_PER_IN }
    };
    recipe.holes = vec![hole(0.15, 0.35, 0.95, 2.4), hole(-0.15, 0.35, 0.95, 2.4), hole(0.0, -0.45, 1.0, 2.75)];
    recipe
}

/// The five-piece ball with its inner core tilted and a flow channel cut in it, drilled.
fn hard() -> Recipe {
    let [.., (_, mut recipe)] = templates();
    recipe.pieces[1].cuts.push(solid(ring(4.6, 0.7), 0.6));
    recipe.pieces[1].solid.turn_rad = [0.0, 0.2, 0.0];
    drilled(recipe)
}

fn main() {
    let mut criterion = Criterion::default()
        .sample_size(10)
        .warm_up_time(Duration::from_millis(100))
        .measurement_time(Duration::from_millis(500))
        .without_plots()
        .configure_from_args();
    let mut group = criterion.benchmark_group("weigh");
    let as_they_come = templates().map(|(name, recipe)| (name.to_owned(), recipe));
    let with_holes = templates().map(|(name, recipe)| (format!("{name}, drilled"), drilled(recipe)));
    let hard = [("tilted core, channel, drilled".to_owned(), hard())];
    for (name, recipe) in as_they_come.into_iter().chain(with_holes).chain(hard) {
        let ball = Ball::new(&recipe).unwrap_or_else(|error| panic!("{name}: {error}"));
        println!("{name}: relative error within {:.1e}", weigh(&ball).relative_error);
        group.bench_function(name, |b| b.iter(|| weigh(black_box(&ball))));
    }
    group.finish();
    criterion.final_summary();
}
