//! One recipe at other weights: the weight line.
//!
//! Makers keep what can be kept and lighten or load one piece, or a few in
//! proportion. Mass is linear in the densities given the volumes really filled,
//! so a density follows in one step; a size is the root of the mass as the
//! piece grows about its own origin, no larger than stays inside the ball.

mod size;

use thiserror::Error;

use crate::ball::{Ball, Part};
use crate::check::RecipeError;
use crate::recipe::Recipe;
use crate::units::{KG_M3_PER_G_CC, KG_PER_LB};
use crate::weigh::{Weighed, weigh};
pub(crate) use size::grown;

/// The weights balls are usually offered in (common practice, no source), lb.
pub const WEIGHTS_LB: [f64; 7] = [16.0, 15.0, 14.0, 13.0, 12.0, 11.0, 10.0];
/// How near to its weight a rung is made: 10⁻⁹ lb, where `weigh` itself is as
/// good as that; else to its own error.
pub const EXACT_KG: f64 = 1e-9 * KG_PER_LB;
/// Density of the water that decides whether a ball floats.
pub const WATER_KG_M3: f64 = 1000.0;
/// Largest published density of any piece (see [`crate::spec`]).
pub const MOST_DENSITY_KG_M3: f64 = 3.8 * KG_M3_PER_G_CC;

/// What changes from weight to weight.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum By {
    /// The density of the chosen parts, all by the same factor.
    Density,
    /// The size of the chosen pieces, each about its own origin, cuts and
    /// all, by the same factor.
    Size,
}

/// Why a weight cannot be had.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Trouble {
    /// The rest of the ball weighs as much already: no density above 0 will do.
    DensityNotPositive,
    /// A density over [`MOST_DENSITY_KG_M3`].
    DensityAboveLimit,
    /// The chosen parts fill nothing: others displace them wholly.
    FillsNothing,
    /// A chosen piece would stick out of the ball first.
    SticksOut,
    /// Even next to nothing of the chosen pieces is not enough of a change.
    VanishesFirst,
    /// No size in between gives this weight.
    NoSize,
}

/// Why there is no weight line at all.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum LadderError {
    /// The recipe itself cannot be made.
    #[error(transparent)]
    Recipe(#[from] RecipeError),
    /// No part was chosen, or one that the recipe does not have.
    #[error("no such part; accepted are the cover and the recipe's {pieces} pieces")]
    NoSuchPart {
        /// How many pieces there are.
        pieces: usize,
    },
    /// The cover is as large as the ball.
    #[error("the cover has no size of its own; accepted is a piece")]
    CoverSize,
}

/// The ball at one weight.
#[derive(Clone, Debug, PartialEq)]
pub struct Rung {
    /// The weight asked for.
    pub target_kg: f64,
    /// Factor on the chosen parts' densities. Where no size will do: the one
    /// that would do it at the recipe's own size. May be 0 or less; `None`
    /// where the parts fill nothing.
    pub density_factor: Option<f64>,
    /// Factor on the chosen pieces' sizes; `None` where no size will do.
    pub size_factor: Option<f64>,
    /// The ball and what it weighs, where there is one; with
    /// [`Trouble::DensityAboveLimit`] there may be.
    pub made: Option<(Recipe, Weighed)>,
    /// Why it should not or cannot be made; `None` where it can.
    pub trouble: Option<Trouble>,
}

/// Makes a recipe at each of the weights `targets_kg` by changing `chosen` alone.
///
/// # Errors
/// [`LadderError`] where the recipe cannot be made or the choice makes no sense.
pub fn ladder(recipe: &Recipe, chosen: &[Part], by: By, targets_kg: &[f64]) -> Result<Vec<Rung>, LadderError> {
    let pieces = recipe.pieces.len();
    if chosen.is_empty() || chosen.iter().any(|part| matches!(part, Part::Piece(n) if *n >= pieces)) {
        return Err(LadderError::NoSuchPart { pieces });
    }
    if by == By::Size && chosen.contains(&Part::Cover) {
        return Err(LadderError::CoverSize);
    }
    let weighed = weigh(&Ball::new(recipe)?);
    let by_density = |target_kg: &f64| to_density(recipe, chosen, &weighed, *target_kg);
    if by == By::Density {
        return Ok(targets_kg.iter().map(by_density).collect());
    }
    let sizes = size::Sizes::new(recipe, chosen);
    let by_size = |target_kg: &f64| {
        let found = sizes.solve(*target_kg);
        let (size_factor, made, trouble) = match found {
            Ok((factor, made)) => (Some(factor), Some(made), None),
            Err(trouble) => (None, None, Some(trouble)),
        };
        let density_factor = if trouble.is_none() { Some(1.0) } else { density_factor(chosen, &weighed, *target_kg) };
        Rung { target_kg: *target_kg, density_factor, size_factor, made, trouble }
    };
    Ok(targets_kg.iter().map(by_size).collect())
}

/// Mass of the water that a ball holding this much material would push aside:
/// a lighter ball floats. Holes let the water in.
pub fn floating_mass_kg(weighed: &Weighed) -> f64 {
    WATER_KG_M3 * weighed.shares.iter().map(|share| share.volume_m3).sum::<f64>()
}

/// What to multiply the chosen parts' densities by; exact for these volumes.
fn density_factor(chosen: &[Part], weighed: &Weighed, target_kg: f64) -> Option<f64> {
    let parts = weighed.shares.iter().enumerate();
    let chosen_kg: f64 = parts.filter(|(n, _)| chosen.contains(&part(*n))).map(|(_, share)| share.mass_kg).sum();
    // What rounding leaves of a piece that is displaced wholly is nothing.
    let filled = chosen_kg > weighed.relative_error.max(1e-12) * weighed.mass_kg;
    filled.then(|| 1.0 + (target_kg - weighed.mass_kg) / chosen_kg)
}

fn part(n: usize) -> Part {
    n.checked_sub(1).map_or(Part::Cover, Part::Piece)
}

fn to_density(recipe: &Recipe, chosen: &[Part], weighed: &Weighed, target_kg: f64) -> Rung {
    let rung =
        |density_factor, made, trouble| Rung { target_kg, density_factor, size_factor: Some(1.0), made, trouble };
    let Some(mut factor) = density_factor(chosen, weighed, target_kg) else {
        return rung(None, None, Some(Trouble::FillsNothing));
    };
    if factor <= 0.0 {
        return rung(Some(factor), None, Some(Trouble::DensityNotPositive));
    }
    let mut made = None;
    // One step is exact but for what `weigh` makes of other densities.
    for _ in 0..4 {
        let denser = denser(recipe, chosen, factor);
        let Ok(ball) = Ball::new(&denser) else { break };
        let weighed = weigh(&ball);
        let miss_kg = target_kg - weighed.mass_kg;
        let step = density_factor(chosen, &weighed, target_kg);
        made = Some((denser, weighed));
        match step {
            Some(step) if miss_kg.abs() > 0.1 * EXACT_KG && step > 0.0 => factor *= step,
            _ => break,
        }
    }
    let most = |recipe: &Recipe| chosen.iter().map(|part| density_kg_m3(recipe, *part)).fold(0.0, f64::max);
    let above = factor * most(recipe) > MOST_DENSITY_KG_M3 * (1.0 + 1e-12);
    rung(Some(factor), made, above.then_some(Trouble::DensityAboveLimit))
}

fn density_kg_m3(recipe: &Recipe, part: Part) -> f64 {
    match part {
        Part::Cover => recipe.cover_density_kg_m3,
        Part::Piece(n) => recipe.pieces[n].density_kg_m3,
    }
}

/// The recipe with the chosen parts' densities times `factor`.
fn denser(recipe: &Recipe, chosen: &[Part], factor: f64) -> Recipe {
    let mut recipe = recipe.clone();
    if chosen.contains(&Part::Cover) {
        recipe.cover_density_kg_m3 *= factor;
    }
    for (n, piece) in recipe.pieces.iter_mut().enumerate() {
        if chosen.contains(&Part::Piece(n)) {
            piece.density_kg_m3 *= factor;
        }
    }
    recipe
}

#[cfg(test)]
mod tests;
