use core::f64::consts::PI;

use physics::ball::Ball;
use physics::recipe::{Piece, Recipe, Shape, Solid};
use physics::section::Plane;

use super::*;

const R: f64 = 0.108;

/// A sphere within a sphere within the ball.
fn nested() -> Model {
    let sphere = |diameter_m: f64| Piece {
        density_kg_m3: 1500.0,
        solid: Solid {
            shape: Shape::Sphere { diameter_m },
            squash: [1.0; 2],
            turn_rad: [0.0; 3],
            at_m: Vector3::zeros(),
        },
        cuts: Vec::new(),
    };
    let recipe = Recipe {
        diameter_m: 2.0 * R,
        cover_density_kg_m3: 1200.0,
        pieces: vec![sphere(0.16), sphere(0.06)],
        holes: Vec::new(),
    };
    Model::new(&recipe, &Ball::new(&recipe).expect("a valid recipe"))
}

fn look() -> Look {
    Look {
        width_px: 600.0,
        height_px: 600.0,
        pixel_ratio: 1.0,
        yaw_rad: 0.0,
        pitch_rad: 0.0,
        zoom: 1.0,
        plane: None,
        exploded: 0.0,
        hidden: Vec::new(),
        highlighted: None,
        markers: false,
        dark: false,
        paint: Vec::new(),
        cover: None,
    }
}

fn middle(look: &Look) -> Option<Pick> {
    pick(&nested(), look, 300.0, 300.0)
}

#[track_caller]
fn meets(found: Option<Pick>, part: usize, at_m: [f64; 3]) {
    let found = found.expect("something is there");
    assert_eq!(found.part, part);
    assert!((found.at_m - Vector3::from(at_m)).norm() < 1e-9, "{}", found.at_m);
}

#[test]
fn a_whole_ball_shows_its_cover() {
    meets(middle(&look()), 0, [0.0, -R, 0.0]);
    assert_eq!(pick(&nested(), &look(), 2.0, 2.0), None, "beside the ball");
}

#[test]
fn the_saw_takes_away_the_side_its_normal_points_to() {
    let sawn = |y: f64, depth_m: f64| Look { plane: Plane::new(Vector3::new(0.0, y, 0.0), depth_m), ..look() };
    meets(middle(&sawn(-1.0, 0.0)), 2, [0.0, 0.0, 0.0]);
    meets(middle(&sawn(-1.0, 0.05)), 1, [0.0, -0.05, 0.0]);
    meets(middle(&sawn(1.0, 0.0)), 0, [0.0, -R, 0.0]);
    // Nothing is left of the ball.
    assert_eq!(middle(&sawn(-1.0, -R)), None);
}

#[test]
fn hidden_parts_are_looked_through() {
    meets(middle(&Look { hidden: vec![0], ..look() }), 1, [0.0, -0.08, 0.0]);
    meets(middle(&Look { hidden: vec![0, 1], ..look() }), 2, [0.0, -0.03, 0.0]);
    meets(middle(&Look { hidden: vec![0, 2], ..look() }), 1, [0.0, -0.08, 0.0]);
    assert_eq!(middle(&Look { hidden: vec![0, 1, 2], ..look() }), None);
}

#[test]
fn pulled_apart_each_part_is_found_where_it_stands() {
    for plane in [None, Plane::new(-Vector3::y(), 0.0)] {
        let look = Look { plane, exploded: 1.0, width_px: 300.0, height_px: 1500.0, ..look() };
        let mut found: Vec<usize> =
            (0..1500).rev().filter_map(|y| pick(&nested(), &look, 150.0, f64::from(y))).map(|pick| pick.part).collect();
        found.dedup();
        let expected: &[usize] = if plane.is_some() { &[0, 1, 2] } else { &[0, 1, 2, 1, 0] };
        assert_eq!(found, expected, "from the bottom up");
    }
}

#[test]
fn turning_the_eye_round_shows_the_other_side() {
    meets(middle(&Look { yaw_rad: PI, ..look() }), 0, [0.0, R, 0.0]);
    meets(middle(&Look { yaw_rad: PI / 2.0, ..look() }), 0, [R, 0.0, 0.0]);
    meets(middle(&Look { pitch_rad: PI / 2.0, ..look() }), 0, [0.0, 0.0, R]);
}
