mod edges;
mod random;

use core::f64::consts::PI;

use nalgebra::{Rotation3, Vector3};

use super::weigh;
use crate::ball::Ball;
use crate::recipe::{Hole, Piece, Recipe, Shape, Solid};

fn solid(shape: Shape, at: [f64; 3], turn: [f64; 3]) -> Solid {
    Solid { shape, squash: [1.0; 2], turn_rad: turn, at_m: at.into() }
}

fn piece(density: f64, solid: Solid) -> Piece {
    Piece { density_kg_m3: density, solid, cuts: vec![] }
}

fn hole(entry: [f64; 3], diameter: f64, depth: f64) -> Hole {
    let entry = Vector3::from(entry);
    Hole { entry, axis: -entry, diameter_m: diameter, depth_m: depth }
}

fn puck(at: [f64; 3], turn: [f64; 3]) -> Piece {
    piece(2400.0, solid(Shape::Cylinder { diameter_m: 0.07, height_m: 0.012 }, at, turn))
}

/// Five pieces that overlap at odd angles, a channel and three holes.
fn tangled() -> Recipe {
    let profile_m = vec![[0.0, -0.048], [0.036, -0.038], [0.025, 0.01], [0.041, 0.03], [0.0, 0.043]];
    let mut core = piece(1900.0, solid(Shape::Lathe { profile_m }, [0.0, 0.0, 0.002], [0.02, 0.3, 0.0]));
    core.cuts.push(solid(Shape::Ring { ring_diameter_m: 0.066, tube_diameter_m: 0.013 }, [0.0, 0.0, 0.01], [0.0; 3]));
    let pieces = vec![
        piece(900.0, solid(Shape::Sphere { diameter_m: 0.18 }, [0.0; 3], [0.0; 3])),
        core,
        puck([0.0, 0.0, 0.05], [0.1, 0.0, 0.0]),
        piece(3000.0, solid(Shape::Ellipsoid { size_m: [0.03, 0.035, 0.05] }, [0.01, 0.0, 0.0], [0.0; 3])),
        puck([0.0, 0.0, -0.05], [0.0; 3]),
    ];
    let holes = vec![
        hole([0.3, -0.4, 1.0], 0.025, 0.07),
        hole([0.1, 0.3, 1.0], 0.024, 0.06),
        hole([-0.2, 0.3, 1.0], 0.024, 0.06),
    ];
    Recipe { diameter_m: 0.2172, cover_density_kg_m3: 1150.0, pieces, holes }
}

fn turned(recipe: &Recipe, turn: &Rotation3<f64>) -> Recipe {
    let mut recipe = recipe.clone();
    for piece in &mut recipe.pieces {
        let [a, b, c] = piece.solid.turn_rad;
        let (a, b, c) = (turn * Rotation3::from_euler_angles(a, b, c)).euler_angles();
        piece.solid.turn_rad = [a, b, c];
        piece.solid.at_m = turn * piece.solid.at_m;
    }
    for hole in &mut recipe.holes {
        hole.entry = turn * hole.entry;
        hole.axis = turn * hole.axis;
    }
    recipe
}

#[test]
fn a_tangled_ball_meets_its_bound_however_it_is_turned() {
    let recipe = tangled();
    let made = weigh(&Ball::new(&recipe).expect("a ball that can be made"));
    assert!(made.relative_error <= super::TOLERANCE);
    for (a, b, c) in [(0.4, -0.7, 1.1), (1.5, 0.2, -2.0)] {
        let turn = Rotation3::from_euler_angles(a, b, c);
        let other = weigh(&Ball::new(&turned(&recipe, &turn)).expect("a ball that can be made"));
        let bound = made.relative_error + other.relative_error;
        assert!((other.mass_kg / made.mass_kg - 1.0).abs() <= bound);
        let back = turn.matrix().transpose() * other.inertia_kg_m2 * turn.matrix();
        assert!((back - made.inertia_kg_m2).amax() <= bound * made.inertia_kg_m2.amax());
    }
}

#[test]
fn a_uniform_ball_is_exact() {
    let recipe = Recipe { diameter_m: 0.2159, cover_density_kg_m3: 1200.0, pieces: vec![], holes: vec![] };
    let made = weigh(&Ball::new(&recipe).expect("a ball that can be made"));
    let mass = 1200.0 * PI * 0.2159_f64.powi(3) / 6.0;
    assert!((made.mass_kg / mass - 1.0).abs() < 1e-14 && made.relative_error < 1e-12);
    for rg in made.rg_m {
        assert!((rg / (0.4_f64.sqrt() * 0.5 * 0.2159) - 1.0).abs() < 1e-14);
    }
}

#[test]
fn a_ball_drilled_away_weighs_nothing() {
    let holes = vec![hole([0.0, 0.0, 1.0], 0.5, 0.5)];
    let recipe = Recipe { diameter_m: 0.2159, cover_density_kg_m3: 1200.0, pieces: vec![], holes };
    let made = weigh(&Ball::new(&recipe).expect("a ball that can be made"));
    assert_eq!((made.mass_kg, made.relative_error), (0.0, 1.0));
    assert!(made.rg_m.iter().chain(made.cg_m.iter()).all(|v| *v == 0.0));
}

/// Lines walked to weigh: the cost, whatever the machine.
fn lines(recipe: &Recipe) -> usize {
    let ball = Ball::new(recipe).expect("a ball that can be made");
    super::filled(&ball, super::TOLERANCE).lines
}

#[test]
fn lines_walked_stay_few() {
    let mut recipe = tangled();
    assert!(lines(&recipe) < 65_000);
    recipe.holes.clear();
    assert!(lines(&recipe) < 7_000);
    // A hole through concentric spheres, and pieces one within the other: no doubt anywhere.
    recipe.pieces.truncate(2);
    recipe.pieces[1].cuts.clear();
    assert_eq!(lines(&recipe), 0);
    recipe.holes = vec![hole([0.3, -0.4, 1.0], 0.025, 0.03)];
    assert!(lines(&recipe) < 50);
}
