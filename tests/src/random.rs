//! Random balls: every shape, squashed, turned, overlapping, cut and drilled.

use nalgebra::{Rotation3, Unit, Vector3};
use physics::recipe::{Piece, Recipe, Shape, Solid};
use proptest::prelude::*;

use crate::make::{Build, ball, cuboid, cylinder, ellipsoid, frustum, lathe, ring, sphere};

/// Radius of every random ball.
const RADIUS_IN: f64 = 4.29;

/// A direction.
pub fn direction() -> impl Strategy<Value = Vector3<f64>> {
    (-1.0..1.0, 0.0..core::f64::consts::TAU).prop_map(|(z, t): (f64, f64)| {
        let r = (1.0 - z * z).sqrt();
        Vector3::new(r * t.cos(), r * t.sin(), z)
    })
}

/// A turn about any axis by any angle.
pub fn rotation() -> impl Strategy<Value = Rotation3<f64>> {
    (direction(), 0.0..core::f64::consts::PI)
        .prop_map(|(axis, angle)| Rotation3::from_axis_angle(&Unit::new_normalize(axis), angle))
}

fn profile() -> impl Strategy<Value = Solid> {
    let rows = proptest::collection::vec((0.2..2.0, 0.2..0.9), 2..6);
    (rows, proptest::bool::ANY, 0.0..0.9).prop_map(|(rows, hollow, inner): (Vec<(f64, f64)>, bool, f64)| {
        let height: f64 = rows.iter().map(|(_, h)| h).sum();
        let mut z = -height / 2.0;
        let bottom = z;
        let mut points: Vec<[f64; 2]> = rows
            .iter()
            .map(|&(r, h)| {
                let point = [if hollow { r + inner } else { r }, z + h / 2.0];
                z += h;
                point
            })
            .collect();
        if hollow {
            // A ring whose inner wall stays clear of the outer one.
            points.push([inner * 0.9, z]);
            points.push([inner * 0.5, 0.0]);
            points.push([inner * 0.9, bottom]);
        } else {
            points.push([0.0, z]);
            points.push([0.0, bottom]);
        }
        lathe(&points)
    })
}

fn shape() -> impl Strategy<Value = Solid> {
    prop_oneof![
        (0.5..4.5).prop_map(sphere),
        (0.6..4.0, 0.6..4.0, 0.6..4.5).prop_map(|(x, y, z)| ellipsoid(x, y, z)),
        (0.5..4.0, 0.1..4.0).prop_map(|(d, h)| cylinder(d, h)),
        (0.0..3.5, 0.3..3.5, 0.3..3.5).prop_map(|(b, t, h)| frustum(b, t, h)),
        (1.0..4.0, 0.2..1.6).prop_map(|(r, t)| ring(r, t)),
        (0.3..3.0, 0.3..3.0, 0.3..3.0).prop_map(|(x, y, z)| cuboid(x, y, z)),
        profile(),
    ]
}

/// Twice the farthest a shape reaches from its origin, in metres: a bound.
fn reach_m(solid: &Solid) -> f64 {
    let widest = solid.squash[0].max(solid.squash[1]).max(1.0);
    let reach = match &solid.shape {
        Shape::Sphere { diameter_m } => diameter_m / 2.0,
        Shape::Ellipsoid { size_m } => size_m.iter().fold(0.0f64, |a, &b| a.max(b)) / 2.0,
        Shape::Box { size_m } => Vector3::from(*size_m).norm() / 2.0,
        Shape::Cylinder { diameter_m, height_m } => diameter_m.hypot(*height_m) / 2.0,
        Shape::Frustum { bottom_diameter_m, top_diameter_m, height_m } => {
            bottom_diameter_m.max(*top_diameter_m).hypot(*height_m) / 2.0
        }
        Shape::Ring { ring_diameter_m, tube_diameter_m } => (ring_diameter_m + tube_diameter_m) / 2.0,
        Shape::Lathe { profile_m } => profile_m.iter().map(|[r, z]| r.hypot(*z)).fold(0.0, f64::max),
    };
    reach * widest
}

/// A solid, squashed half of the time, turned, somewhere within a radius.
fn placed(within_in: f64) -> impl Strategy<Value = Solid> {
    let squash = prop_oneof![Just([1.0, 1.0]), [0.6..1.4, 0.6..1.4]];
    let turn = prop_oneof![Just([0.0; 3]), [-3.1..3.1, -1.5..1.5, -3.1..3.1]];
    (shape(), squash, turn, direction(), 0.0f64..1.0).prop_map(
        move |(mut solid, squash, turn_rad, way, far): (Solid, [f64; 2], [f64; 3], Vector3<f64>, f64)| {
            solid.squash = squash;
            solid.turn_rad = turn_rad;
            let mut room = within_in * physics::units::M_PER_IN - reach_m(&solid);
            if room < 0.0 {
                solid.squash = [1.0, 1.0];
                room = (within_in * physics::units::M_PER_IN - reach_m(&solid)).max(0.0);
            }
            solid.at_m = way * (far * room);
            solid
        },
    )
}

fn piece(within_in: f64, most_cuts: usize) -> impl Strategy<Value = Piece> {
    let cuts = proptest::collection::vec(placed(4.0), 0..=most_cuts);
    (placed(within_in), 0.4..3.7, cuts).prop_map(|(solid, density, cuts): (Solid, f64, Vec<Solid>)| Piece {
        density_kg_m3: density * 1000.0,
        solid,
        cuts,
    })
}

fn pieces(within_in: f64, most: usize, most_cuts: usize) -> impl Strategy<Value = Recipe> {
    proptest::collection::vec(piece(within_in, most_cuts), 1..=most).prop_map(|pieces| {
        let mut recipe = ball(2.0 * RADIUS_IN, 1.18);
        recipe.pieces = pieces;
        recipe
    })
}

/// Radius of a ball about a shape's own origin that lies inside it, in metres;
/// none for shapes that may be hollow there.
fn room_m(solid: &Solid) -> Option<f64> {
    let least = |sizes: &[f64]| sizes.iter().fold(f64::INFINITY, |a, &b| a.min(b)) / 2.0;
    let room = match &solid.shape {
        Shape::Sphere { diameter_m } => diameter_m / 2.0,
        Shape::Ellipsoid { size_m } | Shape::Box { size_m } => least(size_m),
        Shape::Cylinder { diameter_m, height_m } => least(&[*diameter_m, *height_m]),
        Shape::Frustum { .. } | Shape::Ring { .. } | Shape::Lathe { .. } => return None,
    };
    Some(room * solid.squash[0].min(solid.squash[1]).min(1.0))
}

/// A shape as many times as large.
fn times(shape: &Shape, by: f64) -> Shape {
    let three = |size: &[f64; 3]| size.map(|x| x * by);
    match shape {
        Shape::Sphere { diameter_m } => Shape::Sphere { diameter_m: diameter_m * by },
        Shape::Ellipsoid { size_m } => Shape::Ellipsoid { size_m: three(size_m) },
        Shape::Box { size_m } => Shape::Box { size_m: three(size_m) },
        Shape::Cylinder { diameter_m, height_m } => {
            Shape::Cylinder { diameter_m: diameter_m * by, height_m: height_m * by }
        }
        Shape::Frustum { bottom_diameter_m, top_diameter_m, height_m } => Shape::Frustum {
            bottom_diameter_m: bottom_diameter_m * by,
            top_diameter_m: top_diameter_m * by,
            height_m: height_m * by,
        },
        Shape::Ring { ring_diameter_m, tube_diameter_m } => {
            Shape::Ring { ring_diameter_m: ring_diameter_m * by, tube_diameter_m: tube_diameter_m * by }
        }
        Shape::Lathe { profile_m } => Shape::Lathe { profile_m: profile_m.iter().map(|p| p.map(|x| x * by)).collect() },
    }
}

/// A ball with one to five pieces of any shape and turn, each inside the one
/// before as far as that has room: what most cores are like.
pub fn nested_ball() -> impl Strategy<Value = Recipe> {
    let piece = (placed(RADIUS_IN), 0.3..0.98, 0.4..3.7);
    proptest::collection::vec(piece, 1..=5).prop_map(|pieces| {
        let mut recipe = ball(2.0 * RADIUS_IN, 1.18);
        let mut centre_m = Vector3::zeros();
        let mut within_m = Some(RADIUS_IN * physics::units::M_PER_IN);
        for (mut solid, part, density) in pieces {
            let Some(room) = within_m else { break };
            solid.shape = times(&solid.shape, room * part / reach_m(&solid));
            // The first was placed somewhere; it and the others go where there is room for all of them.
            let aside = solid.at_m.try_normalize(0.0).unwrap_or_default();
            solid.at_m = centre_m + aside * (room - reach_m(&solid)) * 0.5;
            centre_m = solid.at_m;
            within_m = room_m(&solid);
            recipe.pieces.push(Piece { density_kg_m3: density * 1000.0, solid, cuts: Vec::new() });
        }
        recipe
    })
}

fn drilled(undrilled: impl Strategy<Value = Recipe>, most: usize) -> impl Strategy<Value = Recipe> {
    let hole = (direction(), direction(), prop_oneof![Just(0.0), 0.0..0.6], 0.5..1.2, 0.5..4.0);
    (undrilled, proptest::collection::vec(hole, 0..=most)).prop_map(|(mut recipe, holes)| {
        for (entry, side, pitch, diameter_in, depth_in) in holes {
            let axis: Vector3<f64> = side * pitch - entry;
            recipe = recipe.drill_along(entry.into(), axis.into(), diameter_in, depth_in);
        }
        recipe
    })
}

/// A ball with one or two pieces, all within a radius, at most one cut in each, and no holes.
pub fn undrilled(within_in: f64) -> impl Strategy<Value = Recipe> {
    pieces(within_in, 2, 1)
}

/// A ball with one or two pieces, at most one cut in each, and at most one hole.
pub fn plain_ball() -> impl Strategy<Value = Recipe> {
    drilled(undrilled(RADIUS_IN), 1)
}

/// A ball with one to four pieces, up to two cuts in each, and up to three holes, some pitched.
pub fn any_ball() -> impl Strategy<Value = Recipe> {
    drilled(pieces(RADIUS_IN, 4, 2), 3)
}
