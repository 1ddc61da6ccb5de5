//! Balls at the edge of what can be: surfaces that touch or coincide, pieces
//! hidden, vast or minute; and overlaps with closed forms.

use core::f64::consts::PI;

use super::{hole, lines, piece, solid};
use crate::ball::Ball;
use crate::recipe::{Piece, Recipe, Shape, Solid};
use crate::weigh::{TOLERANCE, Weighed, weigh};

fn sphere(diameter_m: f64, at: [f64; 3]) -> Solid {
    solid(Shape::Sphere { diameter_m }, at, [0.0; 3])
}

fn cylinder(diameter_m: f64, height_m: f64, at: [f64; 3], turn: [f64; 3]) -> Solid {
    solid(Shape::Cylinder { diameter_m, height_m }, at, turn)
}

fn of(pieces: Vec<Piece>) -> Recipe {
    Recipe { diameter_m: 0.2, cover_density_kg_m3: 1000.0, pieces, holes: vec![] }
}

fn weighed(recipe: &Recipe) -> Weighed {
    let made = weigh(&Ball::new(recipe).expect("a ball that can be made"));
    assert!(made.relative_error <= TOLERANCE && made.mass_kg.is_finite(), "{}", made.relative_error);
    assert!(made.inertia_kg_m2.iter().chain(made.rg_m.iter()).all(|v| v.is_finite()));
    made
}

/// Volume of the part that two spheres share (a lens of two caps, E. W.
/// Weisstein, MathWorld, "Sphere–Sphere Intersection", eq. 16).
fn lens(r: f64, s: f64, d: f64) -> f64 {
    PI * (r + s - d).powi(2) * (d * d + 2.0 * d * (r + s) - 3.0 * (r - s).powi(2)) / (12.0 * d)
}

#[test]
fn a_lens_of_two_spheres_is_near_rounding_on_one_axis() {
    let ball = of(vec![piece(2000.0, sphere(0.08, [0.0; 3])), piece(3000.0, sphere(0.06, [0.0, 0.0, 0.04]))]);
    let made = weighed(&ball);
    let shared = lens(0.04, 0.03, 0.04);
    assert!(made.relative_error < 1e-9);
    assert!((made.shares[1].volume_m3 / (PI * 0.08_f64.powi(3) / 6.0 - shared) - 1.0).abs() < 1e-9);
    assert!((made.shares[2].volume_m3 / (PI * 0.06_f64.powi(3) / 6.0) - 1.0).abs() < 1e-12);
}

#[test]
fn a_lens_off_the_axis_keeps_its_bound() {
    let at = [0.02, -0.01, 0.03];
    let d = (0.02_f64.powi(2) + 0.01_f64.powi(2) + 0.03_f64.powi(2)).sqrt();
    let made = weighed(&of(vec![piece(2000.0, sphere(0.08, [0.0; 3])), piece(3000.0, sphere(0.06, at))]));
    let volume = PI * 0.08_f64.powi(3) / 6.0 - lens(0.04, 0.03, d);
    assert!((made.shares[1].mass_kg - 2000.0 * volume).abs() <= made.relative_error * made.mass_kg);
}

/// Two equal cylinders crossing at right angles share 16r³/3 (Archimedes, The
/// Method, proposition 15: two thirds of the cube around).
#[test]
fn crossed_cylinders_share_what_archimedes_found() {
    let crossed = [PI / 2.0, 0.0, 0.3];
    let pieces = vec![
        piece(2000.0, cylinder(0.05, 0.12, [0.0; 3], [0.0; 3])),
        piece(3000.0, cylinder(0.05, 0.12, [0.0; 3], crossed)),
    ];
    let made = weighed(&of(pieces));
    let volume = PI * 0.025_f64.powi(2) * 0.12 - 16.0 / 3.0 * 0.025_f64.powi(3);
    assert!((made.shares[1].mass_kg - 2000.0 * volume).abs() <= made.relative_error * made.mass_kg);
}

#[test]
fn a_cylinder_lying_in_a_box_turns_its_corners() {
    // Walls along the lines of one another's jobs: the box takes half of the cylinder.
    let block = Shape::Box { size_m: [0.1, 0.05, 0.1] };
    let pieces = vec![
        piece(2000.0, cylinder(0.05, 0.08, [0.0; 3], [0.0, PI / 2.0, 0.0])),
        piece(3000.0, solid(block, [0.0, 0.025, 0.0], [0.0; 3])),
    ];
    let made = weighed(&of(pieces));
    let volume = 0.5 * PI * 0.025_f64.powi(2) * 0.08;
    assert!((made.shares[1].mass_kg - 2000.0 * volume).abs() <= made.relative_error * made.mass_kg);
}

#[test]
fn a_hidden_piece_counts_for_nothing() {
    let plain = weighed(&of(vec![piece(2500.0, sphere(0.1, [0.01, 0.0, 0.0]))]));
    let hidden = cylinder(0.03, 0.05, [0.0; 3], [0.4, 0.2, 0.0]);
    let made = weighed(&of(vec![piece(900.0, hidden), piece(2500.0, sphere(0.1, [0.01, 0.0, 0.0]))]));
    let error_kg = made.relative_error * made.mass_kg;
    assert!((made.mass_kg - plain.mass_kg).abs() <= error_kg && made.shares[1].mass_kg <= error_kg);
}

#[test]
fn touching_and_coinciding_surfaces_are_no_trouble() {
    let tilt = [0.3, -0.2, 0.1];
    let twins =
        vec![piece(2000.0, cylinder(0.06, 0.05, [0.0; 3], tilt)), piece(2000.0, cylinder(0.06, 0.05, [0.0; 3], tilt))];
    let one = vec![twins[0].clone()];
    let (twins, one) = (weighed(&of(twins)), weighed(&of(one)));
    assert!((twins.mass_kg - one.mass_kg).abs() <= (twins.relative_error + one.relative_error) * one.mass_kg);
    // Spheres that touch outside and inside; a puck flush on a flat end; a cut of the piece's own shape.
    let touching = vec![piece(2000.0, sphere(0.06, [0.0; 3])), piece(2500.0, sphere(0.04, [0.0, 0.0, 0.05]))];
    weighed(&of(touching));
    weighed(&of(vec![piece(2000.0, sphere(0.06, [0.0; 3])), piece(2500.0, sphere(0.04, [0.006, 0.0, 0.008]))]));
    let flush = [
        piece(2000.0, cylinder(0.06, 0.04, [0.0; 3], [0.0; 3])),
        piece(2500.0, cylinder(0.04, 0.02, [0.0, 0.0, 0.03], [0.0; 3])),
    ];
    weighed(&of(flush.to_vec()));
    let mut gone = piece(2000.0, cylinder(0.06, 0.05, [0.0; 3], tilt));
    gone.cuts.push(cylinder(0.06, 0.05, [0.0; 3], [0.0; 3]));
    let gone = weighed(&of(vec![gone]));
    assert!((gone.mass_kg / (1000.0 * PI * 0.2_f64.powi(3) / 6.0) - 1.0).abs() <= gone.relative_error + 1e-15);
}

#[test]
fn vast_cuts_and_minute_pieces_are_weighed() {
    let mut halved = piece(2000.0, sphere(0.1, [0.0; 3]));
    halved.cuts.push(solid(Shape::Box { size_m: [1e6; 3] }, [0.0, 0.0, 5e5], [0.0; 3]));
    let made = weighed(&of(vec![halved]));
    let half = 0.5 * PI * 0.1_f64.powi(3) / 6.0;
    assert!((made.shares[1].mass_kg - 2000.0 * half).abs() <= made.relative_error * made.mass_kg);
    let speck = Shape::Ring { ring_diameter_m: 1e-9, tube_diameter_m: 2e-9 };
    weighed(&of(vec![
        piece(2000.0, sphere(0.1, [0.0; 3])),
        piece(9000.0, solid(speck, [0.05, 0.0, 0.0], [0.5, 0.0, 0.0])),
    ]));
    let sliver = cylinder(0.15, 1e-6, [0.0, 0.0, 0.01], [0.2, 0.0, 0.0]);
    weighed(&of(vec![piece(2000.0, sphere(0.1, [0.0; 3])), piece(9000.0, sliver)]));
}

#[test]
fn a_hole_through_everything_and_a_closed_ring() {
    let ring = Shape::Ring { ring_diameter_m: 0.03, tube_diameter_m: 0.05 };
    let mut recipe = of(vec![
        piece(2000.0, sphere(0.12, [0.0; 3])),
        piece(2600.0, solid(ring, [0.0, 0.0, 0.01], [0.3, 0.0, 0.0])),
        piece(3000.0, cylinder(0.03, 0.03, [0.0, 0.01, 0.0], [0.0, 0.5, 0.0])),
    ]);
    recipe.holes = vec![hole([0.2, 0.1, 1.0], 0.025, 0.19)];
    weighed(&recipe);
    assert!(lines(&recipe) < 100_000);
}
