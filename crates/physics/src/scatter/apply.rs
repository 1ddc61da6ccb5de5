//! A recipe with its deviations in it.

use nalgebra::Matrix3;

use super::{Source, Tolerance};
use crate::ladder::grown;
use crate::recipe::Recipe;
use crate::solid::turn;

/// Whether a tolerance makes sense for this recipe.
pub(super) fn possible(recipe: &Recipe, tolerance: &Tolerance) -> bool {
    let Tolerance { source, within } = *tolerance;
    let (piece, axes, relative) = match source {
        Source::CoverDensity => (None, 0, true),
        Source::Diameter => (None, 0, false),
        Source::CoreShift(axis) => (None, axis, false),
        Source::Density(piece) | Source::Size(piece) => (Some(piece), 0, true),
        Source::At(piece, axis) => (Some(piece), axis, false),
        Source::Tilt(piece, axis) => (Some(piece), axis + 1, false),
    };
    within > 0.0
        && within.is_finite()
        && !(relative && within >= 1.0)
        && !(source == Source::Diameter && within >= recipe.diameter_m)
        && axes < 3
        && piece.is_none_or(|piece| piece < recipe.pieces.len())
}

/// The recipe with every tolerance's deviation, in parts of the tolerance.
pub(super) fn made(recipe: &Recipe, tolerances: &[Tolerance], off: &[f64]) -> Recipe {
    let mut made = recipe.clone();
    let mut tilts = vec![[0.0; 2]; recipe.pieces.len()];
    for (tolerance, off) in tolerances.iter().zip(off) {
        let by = tolerance.within * off;
        match tolerance.source {
            Source::CoverDensity => made.cover_density_kg_m3 *= 1.0 + by,
            Source::Diameter => made.diameter_m += by,
            Source::CoreShift(axis) => made.pieces.iter_mut().for_each(|piece| piece.solid.at_m[axis] += by),
            Source::Density(piece) => made.pieces[piece].density_kg_m3 *= 1.0 + by,
            Source::Size(piece) => grown(&mut made.pieces[piece], 1.0 + by),
            Source::At(piece, axis) => made.pieces[piece].solid.at_m[axis] += by,
            Source::Tilt(piece, axis) => tilts[piece][axis] = by,
        }
    }
    for (piece, [x, y]) in made.pieces.iter_mut().zip(tilts) {
        if x != 0.0 || y != 0.0 {
            let turned = turn([x, y, 0.0]) * turn(piece.solid.turn_rad);
            piece.solid.turn_rad = angles(&turned);
        }
    }
    made
}

/// Angles about the fixed x, then y, then z axes that make this turn.
fn angles(turned: &Matrix3<f64>) -> [f64; 3] {
    let sine = -turned[(2, 0)];
    let cosine = libm::hypot(turned[(0, 0)], turned[(1, 0)]);
    let y = libm::atan2(sine, cosine);
    if cosine > 1e-9 {
        return [libm::atan2(turned[(2, 1)], turned[(2, 2)]), y, libm::atan2(turned[(1, 0)], turned[(0, 0)])];
    }
    // Straight up or down: the turns about x and z are about one axis.
    [libm::atan2(-turned[(1, 2)], turned[(1, 1)]), y, 0.0]
}

#[cfg(test)]
mod tests {
    use super::{angles, turn};

    #[test]
    fn angles_give_back_their_turn() {
        let quarter = core::f64::consts::FRAC_PI_2;
        for turned in [[0.3, -1.2, 2.5], [-3.0, 0.4, 0.1], [0.4, quarter, 0.0], [0.7, -quarter, 1.1], [0.0; 3]] {
            let turned = turn(turned);
            assert!((turn(angles(&turned)) - turned).amax() < 1e-15, "{turned}");
        }
    }
}
