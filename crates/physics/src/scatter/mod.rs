//! How balls of one recipe differ when no piece is poured quite right.
//!
//! Every tolerance is a random number of its own; a quasi-random sample of
//! balls gives the spread of every number, the share that passes, that would
//! be sold as seconds and that is scrap, and which tolerance costs most.
//!
//! The work comes in units that may be done anywhere and in any order
//! ([`Scatter::run`]); the results, put together in the order of the units,
//! are the same to the bit however they were shared out.

mod apply;
mod deviation;
mod fit;
mod mishap;
mod numbers;
mod sample;
mod sensitivity;
mod summary;
#[cfg(test)]
mod tests;

use thiserror::Error;

use crate::check::RecipeError;
use crate::recipe::Recipe;
use crate::weigh::Weighed;
use deviation::Deviations;
pub(crate) use mishap::{Relation, relation_of};
pub use numbers::{NUMBERS, Number, PUBLISHED, Reason, Window, Windows};
use numbers::{Verdict, judged};
pub use sample::Spread;
pub use summary::{Bin, Costs, Dearness, Distribution, Index, QUANTILES, Scattered, Share};

/// Most tolerances at once: two of the sequence's 256 dimensions are needed for each.
pub const MOST_TOLERANCES: usize = 128;
/// Fewest and most balls.
pub const BALLS: [usize; 2] = [100, 1_000_000];
/// Balls in one unit of work.
const BALLS_PER_UNIT: usize = 64;
/// Points from which the sensitivities start.
const BASE_POINTS: usize = 1024;
/// Such points in one unit of work.
const BASE_PER_UNIT: usize = 16;
/// Relative error bound to which a ball is weighed here.
pub const SCATTER_TOLERANCE: f64 = 3e-6;
/// Numbers a sampled ball is recorded by: every [`Number`] and its reasons.
const RECORD: usize = NUMBERS.len() + 1;
/// Numbers for which sensitivities are computed, before passing itself.
const OUTPUTS: [Number; 5] =
    [Number::Weight, Number::LowRg, Number::Differential, Number::IntermediateDifferential, Number::TopWeight];

/// Where a ball may be off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Source {
    /// Density of the cover, relative.
    CoverDensity,
    /// Diameter of the ball, m.
    Diameter,
    /// The whole core along x, y or z within the cover, m.
    CoreShift(usize),
    /// Density of a piece, relative.
    Density(usize),
    /// All lengths of a piece about its own origin, cuts and all, relative.
    Size(usize),
    /// Position of a piece along x, y or z, m.
    At(usize, usize),
    /// Tilt of a piece about an axis through its origin along the ball's x or y, rad.
    Tilt(usize, usize),
}

/// How far one thing may be off, to either side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tolerance {
    /// What.
    pub source: Source,
    /// How far: above 0, relative tolerances below 1.
    pub within: f64,
}

/// What to sample.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// Every tolerance, at most [`MOST_TOLERANCES`].
    pub tolerances: Vec<Tolerance>,
    /// How often which deviation occurs.
    pub spread: Spread,
    /// What the maker sells as good: outside it, a ball is a second.
    pub windows: Windows,
    /// How many balls, within [`BALLS`].
    pub balls: usize,
    /// The same seed gives the same balls.
    pub seed: u32,
}

/// Why there is nothing to sample.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum ScatterError {
    /// The recipe itself cannot be made.
    #[error(transparent)]
    Recipe(#[from] RecipeError),
    /// More tolerances than [`MOST_TOLERANCES`], or none.
    #[error("{found} tolerances, accepted are 1 to {MOST_TOLERANCES}")]
    Tolerances {
        /// How many there are.
        found: usize,
    },
    /// A number of balls outside [`BALLS`].
    #[error("{found} balls, accepted are 100 to 1,000,000")]
    Balls {
        /// How many were asked for.
        found: usize,
    },
    /// A tolerance that is not above 0, not finite, relative and not below 1,
    /// or of a piece that is not there.
    #[error("tolerance {place} cannot be")]
    Tolerance {
        /// Its place in the plan.
        place: usize,
    },
}

/// The numbers of a ball by itself, in the order of [`NUMBERS`]; NaN where it
/// has none.
pub fn nominal(weighed: &Weighed) -> [f64; NUMBERS.len()] {
    numbers::values(weighed, weighed)
}

/// The published limits of a number, where it has some.
pub fn published(number: Number) -> Window {
    let rule = PUBLISHED.into_iter().find(|id| numbers::number(*id) == Some(number)).and_then(numbers::rule);
    rule.map_or_else(Window::default, |rule| Window { at_least: rule.at_least, at_most: rule.at_most })
}

/// A plan made ready: what does not change from ball to ball.
#[derive(Debug)]
pub struct Scatter {
    plan: Plan,
    recipe: Recipe,
    deviations: Deviations,
}

impl Scatter {
    /// Weighs the recipe itself and what every tolerance does to it.
    ///
    /// # Errors
    /// [`ScatterError`] where the recipe cannot be made or the plan makes no sense.
    pub fn new(recipe: &Recipe, plan: Plan) -> Result<Self, ScatterError> {
        let found = plan.tolerances.len();
        if found == 0 || found > MOST_TOLERANCES {
            return Err(ScatterError::Tolerances { found });
        }
        if !(BALLS[0]..=BALLS[1]).contains(&plan.balls) {
            return Err(ScatterError::Balls { found: plan.balls });
        }
        let cannot_be = |tolerance: &Tolerance| !apply::possible(recipe, tolerance);
        if let Some(place) = plan.tolerances.iter().position(cannot_be) {
            return Err(ScatterError::Tolerance { place });
        }
        let deviations = Deviations::new(recipe, &plan)?;
        Ok(Self { plan, recipe: recipe.clone(), deviations })
    }

    /// The maker's windows, in the order of [`NUMBERS`].
    pub fn windows(&self) -> &Windows {
        &self.plan.windows
    }

    /// Units of sampled balls; those of the sensitivities follow.
    fn ball_units(&self) -> usize {
        self.plan.balls.div_ceil(BALLS_PER_UNIT)
    }

    /// How many units of work there are.
    pub fn units(&self) -> usize {
        self.ball_units() + BASE_POINTS / BASE_PER_UNIT
    }

    /// Balls weighed in a unit: what progress is counted in.
    pub fn balls_in(&self, unit: usize) -> usize {
        if unit < self.ball_units() {
            self.plan.balls.saturating_sub(unit * BALLS_PER_UNIT).min(BALLS_PER_UNIT)
        } else {
            BASE_PER_UNIT * (self.plan.tolerances.len() + 2)
        }
    }

    /// The results of one unit, for [`Scatter::merge`].
    pub fn run(&self, unit: usize) -> Vec<f64> {
        let d = self.plan.tolerances.len();
        let mut results = Vec::new();
        if unit < self.ball_units() {
            let first = unit * BALLS_PER_UNIT;
            for n in first..first + self.balls_in(unit) {
                let numbers = self.ball(&sample::ball(&self.plan, n));
                results.extend(numbers.values);
                results.push(f64::from(numbers.reasons));
            }
        } else {
            let first = (unit - self.ball_units()) * BASE_PER_UNIT;
            for n in first..first + BASE_PER_UNIT {
                let outputs = |off: &[f64]| self.outputs(off);
                sensitivity::base_point(&sample::pair(&self.plan, n, d), outputs, &mut results);
            }
        }
        results
    }

    /// Everything from the results of all units, in their order; `None` where
    /// that is not what was handed in.
    pub fn merge(&self, results: &[f64]) -> Option<Scattered> {
        summary::scattered(self, results)
    }

    /// One ball, its deviations in parts of the tolerances.
    fn ball(&self, off: &[f64]) -> Verdict {
        let windows = &self.plan.windows;
        let recipe = apply::made(&self.recipe, &self.plan.tolerances, off);
        if let Some(reason) = self.deviations.mishap(&recipe) {
            return Verdict::cannot_be(reason);
        }
        let fitted = self.deviations.fitted(&recipe, off);
        let verdict = judged(&recipe, &fitted, &self.deviations.nominal, windows, &self.deviations.error);
        if !verdict.close {
            return verdict;
        }
        // Too near a limit for the fit: weighed itself.
        match self.deviations.weighed(&recipe) {
            Some(weighed) => judged(&recipe, &weighed, &self.deviations.nominal, windows, &[0.0; NUMBERS.len()]),
            None => verdict,
        }
    }

    /// What the sensitivities are of: [`OUTPUTS`], then 1 where the ball passes.
    /// The numbers are those of the fit, whether or not the ball can be made.
    fn outputs(&self, off: &[f64]) -> [f64; OUTPUTS.len() + 1] {
        let recipe = apply::made(&self.recipe, &self.plan.tolerances, off);
        let fitted = self.deviations.fitted(&recipe, off);
        let verdict = judged(&recipe, &fitted, &self.deviations.nominal, &self.plan.windows, &[0.0; NUMBERS.len()]);
        let good = verdict.reasons == 0 && self.deviations.mishap(&recipe).is_none();
        let mut outputs = [0.0; OUTPUTS.len() + 1];
        for (output, number) in outputs.iter_mut().zip(OUTPUTS) {
            *output = verdict.values[number as usize];
        }
        outputs[OUTPUTS.len()] = f64::from(u8::from(good));
        outputs
    }
}
