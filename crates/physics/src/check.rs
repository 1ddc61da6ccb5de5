//! Whether a recipe can be made at all.

use nalgebra::Vector3;
use thiserror::Error;

use crate::recipe::{Hole, Recipe, Shape, Solid};
use crate::solid::{Placed, farthest};
use crate::units::M_PER_IN;

/// Smallest and largest ball.
pub const DIAMETER_RANGE_M: [f64; 2] = [4.0 * M_PER_IN, 12.0 * M_PER_IN];
/// Largest density of any material (the published limit is far lower: that is
/// a check on a ball, not on a recipe).
pub const MAX_DENSITY_KG_M3: f64 = 25_000.0;
/// Smallest and largest squash.
pub const SQUASH_RANGE: [f64; 2] = [0.05, 20.0];
/// Fewest and most points of a lathe profile.
pub const PROFILE_POINTS: [usize; 2] = [3, 10_000];
/// Most pieces, cuts and holes together.
pub const MOST_PARTS: usize = 256;
/// By how much, relative to the ball's radius, a piece may pass the ball's
/// surface before it sticks out: room for rounding, nothing more.
const TOUCH: f64 = 1e-9;

/// A part of a recipe, by its place in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// The ball as a whole.
    Ball,
    /// The coverstock.
    Cover,
    /// A piece.
    Piece(usize),
    /// A cut, by piece and place in the piece.
    Cut(usize, usize),
    /// A hole.
    Hole(usize),
}

/// Why a recipe cannot be made.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum RecipeError {
    /// A number is not finite or out of its range.
    #[error("{place:?}: {what} is {found}, accepted is {accepted}")]
    Value {
        /// Where.
        place: Place,
        /// Which number.
        what: &'static str,
        /// What it is (SI).
        found: f64,
        /// What is accepted, in words (SI).
        accepted: &'static str,
    },
    /// More pieces, cuts and holes than [`MOST_PARTS`].
    #[error("{found} pieces, cuts and holes, accepted are at most {MOST_PARTS}")]
    TooManyParts {
        /// How many there are.
        found: usize,
    },
    /// A profile has too few or too many points ([`PROFILE_POINTS`]).
    #[error("{place:?}: a profile of {found} points, accepted are 3 to 10,000")]
    ProfilePoints {
        /// Where.
        place: Place,
        /// How many there are.
        found: usize,
    },
    /// A profile crosses itself.
    #[error("{place:?}: the side from point {first} crosses the side from point {second} of the profile")]
    ProfileCrosses {
        /// Where.
        place: Place,
        /// Point at which one side begins.
        first: usize,
        /// Point at which the other begins.
        second: usize,
    },
    /// A piece, taken without its cuts, is not inside the ball.
    #[error(
        "piece {piece} sticks out of the ball: it reaches {reach_m} m from the centre, accepted is up to {radius_m} m"
    )]
    SticksOut {
        /// Which piece.
        piece: usize,
        /// How far from the ball's centre it reaches.
        reach_m: f64,
        /// Radius of the ball.
        radius_m: f64,
    },
    /// A hole's axis does not lead into the ball.
    #[error(
        "hole {hole}: its axis leads out of the ball; accepted is an axis at less than 90 degrees to the line from entry to centre"
    )]
    HoleLeadsOut {
        /// Which hole.
        hole: usize,
    },
}

type Checked = Result<(), RecipeError>;

/// Accepts exactly the recipes of the ball file's contract.
pub(crate) fn check(recipe: &Recipe) -> Checked {
    let [low, high] = DIAMETER_RANGE_M;
    let slack = 1.0 + 1e-12;
    let fits = recipe.diameter_m >= low / slack && recipe.diameter_m <= high * slack;
    value(fits, Place::Ball, "diameter_m", recipe.diameter_m, "0.1016 to 0.3048")?;
    let found = recipe.holes.len() + recipe.pieces.iter().map(|p| 1 + p.cuts.len()).sum::<usize>();
    if found > MOST_PARTS {
        return Err(RecipeError::TooManyParts { found });
    }
    density(Place::Cover, recipe.cover_density_kg_m3)?;
    for (n, piece) in recipe.pieces.iter().enumerate() {
        density(Place::Piece(n), piece.density_kg_m3)?;
        solid(Place::Piece(n), &piece.solid)?;
        for (k, cut) in piece.cuts.iter().enumerate() {
            solid(Place::Cut(n, k), cut)?;
        }
        let (placed, radius_m) = (Placed::new(&piece.solid), 0.5 * recipe.diameter_m);
        if placed.at.norm() + placed.reach <= radius_m {
            continue;
        }
        let reach_m = farthest(&placed);
        if reach_m > radius_m * (1.0 + TOUCH) {
            return Err(RecipeError::SticksOut { piece: n, reach_m, radius_m });
        }
    }
    recipe.holes.iter().enumerate().try_for_each(|(n, h)| hole(n, h))
}

/// How far a solid reaches from its frame's origin.
pub(crate) fn reach_m(solid: &Solid) -> f64 {
    farthest(&Placed::new(solid))
}

fn value(good: bool, place: Place, what: &'static str, found: f64, accepted: &'static str) -> Checked {
    if good { Ok(()) } else { Err(RecipeError::Value { place, what, found, accepted }) }
}

fn density(place: Place, found: f64) -> Checked {
    value(
        found > 0.0 && found <= MAX_DENSITY_KG_M3 * (1.0 + 1e-12),
        place,
        "density_kg_m3",
        found,
        "above 0, up to 25,000",
    )
}

fn size(place: Place, what: &'static str, found: f64) -> Checked {
    value(found > 0.0 && found.is_finite(), place, what, found, "above 0 and finite")
}

fn finite(place: Place, what: &'static str, found: &[f64]) -> Checked {
    found.iter().try_for_each(|v| value(v.is_finite(), place, what, *v, "a finite number"))
}

fn solid(place: Place, solid: &Solid) -> Checked {
    finite(place, "at_m", solid.at_m.as_slice())?;
    finite(place, "turn_rad", &solid.turn_rad)?;
    for squash in solid.squash {
        let [low, high] = SQUASH_RANGE;
        value(squash >= low && squash <= high, place, "squash", squash, "0.05 to 20")?;
    }
    match &solid.shape {
        Shape::Sphere { diameter_m } => size(place, "diameter_m", *diameter_m),
        Shape::Ellipsoid { size_m } | Shape::Box { size_m } => {
            size_m.iter().try_for_each(|s| size(place, "size_m", *s))
        }
        Shape::Cylinder { diameter_m, height_m } => {
            size(place, "diameter_m", *diameter_m)?;
            size(place, "height_m", *height_m)
        }
        Shape::Frustum { bottom_diameter_m, top_diameter_m, height_m } => {
            for (what, d) in [("bottom_diameter_m", bottom_diameter_m), ("top_diameter_m", top_diameter_m)] {
                value(*d >= 0.0 && d.is_finite(), place, what, *d, "0 or more, finite")?;
            }
            size(place, "the larger of the two diameters", bottom_diameter_m.max(*top_diameter_m))?;
            size(place, "height_m", *height_m)
        }
        Shape::Ring { ring_diameter_m, tube_diameter_m } => {
            size(place, "ring_diameter_m", *ring_diameter_m)?;
            size(place, "tube_diameter_m", *tube_diameter_m)
        }
        Shape::Lathe { profile_m } => profile(place, profile_m),
    }
}

fn profile(place: Place, points: &[[f64; 2]]) -> Checked {
    let [fewest, most] = PROFILE_POINTS;
    if points.len() < fewest || points.len() > most {
        return Err(RecipeError::ProfilePoints { place, found: points.len() });
    }
    for [r, z] in points {
        value(*r >= 0.0 && r.is_finite(), place, "profile_m r", *r, "0 or more, finite")?;
        finite(place, "profile_m z", &[*z])?;
    }
    match crossing(points) {
        Some((first, second)) => Err(RecipeError::ProfileCrosses { place, first, second }),
        None => Ok(()),
    }
}

type Point = [f64; 2];

/// Two sides of a closed polygon that cross, each by its first point. Sides
/// that only touch, or lie on one another, do not cross.
fn crossing(points: &[Point]) -> Option<(usize, usize)> {
    // A point given twice in a row is one.
    let mut kept: Vec<usize> = (0..points.len()).collect();
    kept.dedup_by_key(|n| points[*n]);
    let n = kept.len();
    let point = |a: usize| points[kept[a % n]];
    let side = |a: usize| (point(a), point(a + 1));
    // Whether the way through corner a passes from one side of b to the other,
    // or of the way through b's own first point where the corner lies on that.
    let passes = |a: usize, b: usize| {
        let (v, before, after) = (point(a), point(a + n - 1), point(a + 1));
        let (s, t) = side(b);
        let on = turn(s, t, v) == 0 && (0..2).all(|k| v[k] >= s[k].min(t[k]) && v[k] <= s[k].max(t[k]));
        if !on || v == t || (b + 1) % n == a || a == b {
            return false;
        }
        let s = if v == s { point(b + n - 1) } else { s };
        let [left, right] = [(before, after), (after, before)].map(|(u, w)| [s, t].map(|d| between(v, u, w, d)));
        (left[0] && right[1]) || (left[1] && right[0])
    };
    // Lowest first, so that a side is compared with those it can reach in z.
    let mut order: Vec<usize> = (0..n).collect();
    let low = |a: usize| side(a).0[1].min(side(a).1[1]);
    let high = |a: usize| side(a).0[1].max(side(a).1[1]);
    order.sort_by(|&a, &b| low(a).total_cmp(&low(b)));
    for (k, &a) in order.iter().enumerate() {
        let (p, q) = side(a);
        for &b in order[k + 1..].iter().take_while(|&&b| low(b) <= high(a)) {
            let (s, t) = side(b);
            let cut = turn(p, q, s) * turn(p, q, t) < 0 && turn(s, t, p) * turn(s, t, q) < 0;
            if cut || passes(a, b) || passes(b, a) {
                return Some((kept[a.min(b)], kept[a.max(b)]));
            }
        }
    }
    None
}

/// 1 where a → b → c turns left, −1 where it turns right, 0 where it does not.
fn turn(a: Point, b: Point, c: Point) -> i32 {
    let cross = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    if cross > 0.0 { 1 } else { -i32::from(cross < 0.0) }
}

/// Whether, seen from `v`, `d` lies strictly between `u` and `w`, going left round.
fn between(v: Point, u: Point, w: Point, d: Point) -> bool {
    let (from, to) = (turn(v, u, d) > 0, turn(v, d, w) > 0);
    match turn(v, u, w) {
        1 => from && to,
        -1 => from || to,
        // A straight way leaves half a turn, a way straight back none.
        _ => (u[0] - v[0]) * (w[0] - v[0]) + (u[1] - v[1]) * (w[1] - v[1]) < 0.0 && from,
    }
}

fn hole(n: usize, hole: &Hole) -> Checked {
    let place = Place::Hole(n);
    size(place, "diameter_m", hole.diameter_m)?;
    size(place, "depth_m", hole.depth_m)?;
    for (what, v) in [("entry", &hole.entry), ("axis", &hole.axis)] {
        finite(place, what, v.as_slice())?;
        value(unit(v).is_some(), place, what, 0.0, "a direction of length above 0")?;
    }
    match (unit(&hole.entry), unit(&hole.axis)) {
        (Some(entry), Some(axis)) if entry.dot(&axis) < 0.0 => Ok(()),
        _ => Err(RecipeError::HoleLeadsOut { hole: n }),
    }
}

/// Unit vector along `v`, however long or short; `None` for none.
pub(crate) fn unit(v: &Vector3<f64>) -> Option<Vector3<f64>> {
    let scale = v.amax();
    (scale > 0.0 && scale.is_finite()).then(|| (v / scale).normalize())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn crossing_profiles_are_found_and_touching_ones_are_not() {
        let hourglass = [[0.0, -1.0], [1.0, -1.0], [0.0, 0.0], [1.0, 1.0], [0.0, 1.0]];
        assert_eq!(crossing(&hourglass), None);
        let bow_tie = [[0.0, -1.0], [1.0, 1.0], [1.0, -1.0], [0.0, 1.0]];
        assert_eq!(crossing(&bow_tie), Some((0, 2)));
    }

    #[test]
    fn a_crossing_right_at_a_corner_is_one_and_a_waist_is_not() {
        let through = [[0.0, -1.0], [0.5, 0.0], [1.0, 1.0], [1.0, -1.0], [0.5, 0.0], [0.0, 1.0]];
        assert_eq!(crossing(&through), Some((1, 4)));
        let waist = [[0.0, -1.0], [1.0, -1.0], [0.5, 0.0], [1.0, 1.0], [0.0, 1.0], [0.5, 0.0]];
        assert_eq!(crossing(&waist), None);
        // A corner on another side: the way goes through it, or turns back.
        let on_a_side = [[0.0, 0.0], [2.0, 0.0], [2.0, 2.0], [1.0, 0.0], [1.0, -1.0], [0.5, -1.0]];
        assert_eq!(crossing(&on_a_side), Some((0, 3)));
        let turns_back = [[0.0, 0.0], [2.0, 0.0], [2.0, 2.0], [1.0, 0.0], [0.0, 2.0]];
        assert_eq!(crossing(&turns_back), None);
        let given_twice = [[0.0, -1.0], [1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [0.0, 1.0]];
        assert_eq!(crossing(&given_twice), None);
    }
}
