//! A ball's numbers as it strays from the recipe, by the fit where that is
//! good enough, and how far the fit is from weighing.

use super::apply::made;
use super::fit::Fit;
use super::mishap::{self, Pair};
use super::numbers::{NUMBERS, Reason, values};
use super::{Plan, ScatterError, sample};
use crate::ball::Ball;
use crate::recipe::Recipe;
use crate::weigh::{Weighed, weigh};

/// Balls on which the fit is held against weighing.
const CHECKS: usize = 48;
/// By how much the largest difference seen is widened.
const WIDENED: f64 = 2.0;

#[derive(Debug)]
pub(super) struct Deviations {
    /// The ball of the recipe itself.
    pub(super) nominal: Weighed,
    fit: Fit,
    pairs: Vec<Pair>,
    /// What every number of the fit may be wrong by: twice the largest
    /// difference from weighing seen on sampled balls, plus what the weighing
    /// that it was fitted to may be wrong by.
    pub(super) error: [f64; NUMBERS.len()],
}

impl Deviations {
    pub(super) fn new(recipe: &Recipe, plan: &Plan) -> Result<Self, ScatterError> {
        let nominal = weigh(&Ball::new(recipe)?);
        let fit = Fit::new(recipe, plan);
        let pairs = mishap::pairs(recipe);
        let mut deviations = Self { nominal, fit, pairs, error: [0.0; NUMBERS.len()] };
        for n in 0..CHECKS {
            let off = sample::check(plan, n);
            let made = made(recipe, &plan.tolerances, &off);
            let Some(weighed) = deviations.weighed(&made) else { continue };
            let fitted = deviations.fitted(&made, &off);
            let nominal = &deviations.nominal;
            let bound = weighed.relative_error + fitted.relative_error;
            let both = values(&weighed, nominal).into_iter().zip(values(&fitted, nominal));
            for (error, (exact, fitted)) in deviations.error.iter_mut().zip(both) {
                // A difference of two RGs is wrong by what both are wrong by;
                // a number that one of them does not have says nothing.
                let scale = exact.abs().max(2.0 * nominal.rg_m[2] / crate::units::M_PER_IN);
                *error = error.max(WIDENED * (exact - fitted).abs() + bound * scale);
            }
        }
        Ok(deviations)
    }

    /// Why a ball cannot be made, or is spoiled whatever it weighs.
    pub(super) fn mishap(&self, recipe: &Recipe) -> Option<Reason> {
        mishap::mishap(recipe, &self.pairs)
    }

    /// The ball by the fit.
    pub(super) fn fitted(&self, recipe: &Recipe, off: &[f64]) -> Weighed {
        self.fit.filled(off).weighed(0.5 * recipe.diameter_m, &recipe.densities_kg_m3())
    }

    /// The ball weighed itself; `None` where it cannot be made.
    pub(super) fn weighed(&self, recipe: &Recipe) -> Option<Weighed> {
        Ball::new(recipe).ok().map(|ball| weigh(&ball))
    }
}
