//! The same ball turned, mirrored, moved about or drawn larger.

use nalgebra::{Matrix3, Rotation3, Vector3};
use physics::recipe::{Recipe, Shape, Solid};

/// Every solid and hole of the ball.
fn each(
    recipe: &Recipe,
    mut outer: impl FnMut(&mut Solid),
    mut cut: impl FnMut(&mut Solid),
    mut way: impl FnMut(&mut Vector3<f64>),
) -> Recipe {
    let mut recipe = recipe.clone();
    for piece in &mut recipe.pieces {
        outer(&mut piece.solid);
        piece.cuts.iter_mut().for_each(&mut cut);
    }
    for hole in &mut recipe.holes {
        way(&mut hole.entry);
        way(&mut hole.axis);
    }
    recipe
}

/// The turn of a solid as a matrix: x first, then y, then z, about fixed axes.
pub fn turn_of(turn_rad: [f64; 3]) -> Rotation3<f64> {
    let [a, b, c] = turn_rad;
    Rotation3::from_axis_angle(&Vector3::z_axis(), c)
        * Rotation3::from_axis_angle(&Vector3::y_axis(), b)
        * Rotation3::from_axis_angle(&Vector3::x_axis(), a)
}

/// The three angles of a turn, as a solid keeps them.
pub fn angles_of(turn: &Rotation3<f64>) -> [f64; 3] {
    let m: &Matrix3<f64> = turn.matrix();
    [m[(2, 1)].atan2(m[(2, 2)]), -m[(2, 0)].clamp(-1.0, 1.0).asin(), m[(1, 0)].atan2(m[(0, 0)])]
}

/// All that is inside the ball, turned about its centre.
pub fn turned(recipe: &Recipe, turn: &Rotation3<f64>) -> Recipe {
    each(
        recipe,
        |s| {
            s.turn_rad = angles_of(&(turn * turn_of(s.turn_rad)));
            s.at_m = turn * s.at_m;
        },
        |_| (),
        |v| *v = turn * *v,
    )
}

/// The mirror image in the plane x = 0.
pub fn mirrored(recipe: &Recipe) -> Recipe {
    let flip = |s: &mut Solid| {
        let [a, b, c] = s.turn_rad;
        s.turn_rad = [a, -b, -c];
        s.at_m.x = -s.at_m.x;
    };
    each(recipe, flip, flip, |v| v.x = -v.x)
}

/// The pieces moved, the ball and its holes left where they are.
pub fn moved(recipe: &Recipe, by_m: &Vector3<f64>) -> Recipe {
    each(recipe, |s| s.at_m += by_m, |_| (), |_| ())
}

/// Every length times a factor.
pub fn scaled(recipe: &Recipe, factor: f64) -> Recipe {
    let grow = |s: &mut Solid| {
        s.at_m *= factor;
        match &mut s.shape {
            Shape::Sphere { diameter_m } => *diameter_m *= factor,
            Shape::Ellipsoid { size_m } | Shape::Box { size_m } => size_m.iter_mut().for_each(|x| *x *= factor),
            Shape::Cylinder { diameter_m, height_m } => {
                *diameter_m *= factor;
                *height_m *= factor;
            }
            Shape::Frustum { bottom_diameter_m, top_diameter_m, height_m } => {
                *bottom_diameter_m *= factor;
                *top_diameter_m *= factor;
                *height_m *= factor;
            }
            Shape::Ring { ring_diameter_m, tube_diameter_m } => {
                *ring_diameter_m *= factor;
                *tube_diameter_m *= factor;
            }
            Shape::Lathe { profile_m } => profile_m.iter_mut().flatten().for_each(|x| *x *= factor),
        }
    };
    let mut grown = each(recipe, grow, grow, |_| ());
    grown.diameter_m *= factor;
    for hole in &mut grown.holes {
        hole.diameter_m *= factor;
        hole.depth_m *= factor;
    }
    grown
}
