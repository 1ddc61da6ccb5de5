//! The inverse problem: a core that meets wanted numbers.
//!
//! Least squares over the free controls by Levenberg and Marquardt's method
//! (Moré, 1978, as in MINPACK; the crate `levenberg-marquardt`) from many
//! starts spread by a Sobol sequence. Every free control stays within its
//! bounds by a sine; pieces stay inside the ball, and the ball within the
//! published limits, by residuals that are 0 as long as they do.
//!
//! Starts may be tried anywhere and in any order ([`Seek::run`]); put together
//! in their order they give the same answer to the bit.

mod blocks;
mod problem;
#[cfg(test)]
mod tests;

use thiserror::Error;

use crate::ball::Ball;
use crate::check::{RecipeError, reach_m};
use crate::control::Control;
use crate::figures::{FIGURES, Figures};
use crate::recipe::Recipe;
use crate::units::{KG_PER_LB, M_PER_IN};
use crate::weigh::{Weighed, weigh};
pub use blocks::Block;

/// How near a number is met: 0.02 lb, 0.001 in three times, 0.05 oz.
pub const NEAR: [f64; FIGURES] = [0.02 * KG_PER_LB, 0.001 * M_PER_IN, 0.001 * M_PER_IN, 0.001 * M_PER_IN, 0.05];
/// Most free controls.
pub const MOST_FREE: usize = 32;
/// Most starts.
pub const MOST_STARTS: usize = 1000;
/// Most different answers that are told.
const MOST_ANSWERS: usize = 6;
/// Two answers differ where some control is farther apart than this part of its range.
const DIFFERENT: f64 = 0.15;

/// What is wanted.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Target {
    /// Wanted numbers, in the order of [`Figures`]; SI.
    pub want: [Option<f64>; FIGURES],
    /// Least thickness of the cover over every piece taken without its cuts.
    pub cover_at_least_m: Option<f64>,
    /// What may change, and between which values (SI).
    pub free: Vec<Free>,
    /// Whether the ball must keep to the published limits.
    pub within_limits: bool,
    /// From how many places to start, the recipe itself first.
    pub starts: usize,
}

/// A control that may change.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Free {
    /// Which.
    pub control: Control,
    /// From here, SI.
    pub from: f64,
    /// To here, SI.
    pub to: f64,
}

/// Why there is nothing to seek.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum SeekError {
    /// The recipe itself cannot be made.
    #[error(transparent)]
    Recipe(#[from] RecipeError),
    /// No number is wanted.
    #[error("no number is wanted")]
    NothingWanted,
    /// No control is free, or more than [`MOST_FREE`].
    #[error("{found} free controls, accepted are 1 to {MOST_FREE}")]
    Free {
        /// How many there are.
        found: usize,
    },
    /// A free control that the recipe does not have, or whose range is none.
    #[error("free control {place} cannot be")]
    Control {
        /// Its place in the target.
        place: usize,
    },
    /// No start, or more than [`MOST_STARTS`].
    #[error("{found} starts, accepted are 1 to {MOST_STARTS}")]
    Starts {
        /// How many were asked for.
        found: usize,
    },
}

/// A target made ready.
#[derive(Debug)]
pub struct Seek {
    recipe: Recipe,
    target: Target,
}

/// A core that was found.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// Values of the free controls, SI.
    pub values: Vec<f64>,
    /// The recipe with them.
    pub recipe: Recipe,
    /// What it weighs.
    pub weighed: Weighed,
    /// Least cover over every piece taken without its cuts; the radius where there is no piece.
    pub cover_m: f64,
    /// The worst miss among the wanted numbers, in parts of [`NEAR`].
    pub miss: f64,
    /// From which start.
    pub start: usize,
}

/// What came of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Sought {
    /// Different cores that meet the target, nearest the recipe first.
    pub answers: Vec<Answer>,
    /// How many starts met it.
    pub met: usize,
    /// The nearest core where none does; `None` also where no start led to a ball that can be made.
    pub nearest: Option<Answer>,
    /// What stands in its way.
    pub blocks: Vec<Block>,
}

impl Seek {
    /// Checks that there is something to seek.
    ///
    /// # Errors
    /// [`SeekError`].
    pub fn new(recipe: &Recipe, target: Target) -> Result<Self, SeekError> {
        Ball::new(recipe)?;
        if target.want.iter().all(Option::is_none) && target.cover_at_least_m.is_none() {
            return Err(SeekError::NothingWanted);
        }
        let found = target.free.len();
        if found == 0 || found > MOST_FREE {
            return Err(SeekError::Free { found });
        }
        let cannot_be = |place: usize| {
            let Free { control, from, to } = target.free[place];
            let again = target.free[..place].iter().any(|other| other.control == control);
            let bounds = from.is_finite() && to.is_finite() && from < to;
            again || !bounds || control.value(recipe).is_none()
        };
        if let Some(place) = (0..found).find(|place| cannot_be(*place)) {
            return Err(SeekError::Control { place });
        }
        if target.starts == 0 || target.starts > MOST_STARTS {
            return Err(SeekError::Starts { found: target.starts });
        }
        Ok(Self { recipe: recipe.clone(), target })
    }

    /// How many starts there are: the units of work.
    pub fn units(&self) -> usize {
        self.target.starts
    }

    /// Where one start leads: the values of the free controls, SI, for [`Seek::merge`].
    pub fn run(&self, start: usize) -> Vec<f64> {
        problem::solve(self, &self.start(start))
    }

    /// Everything from the results of all starts done so far, in their order;
    /// `None` where that is no whole number of results.
    pub fn merge(&self, results: &[f64]) -> Option<Sought> {
        let free = self.target.free.len();
        if results.is_empty() || !results.len().is_multiple_of(free) {
            return None;
        }
        let made = results.chunks_exact(free).enumerate().filter_map(|(start, values)| self.answer(start, values));
        let (mut met, others): (Vec<Answer>, Vec<Answer>) = made.partition(|answer| answer.miss <= 1.0);
        let count = met.len();
        let home = self.home();
        met.sort_by(|a, b| self.apart(&a.values, &home).total_cmp(&self.apart(&b.values, &home)));
        let mut answers: Vec<Answer> = Vec::new();
        for answer in met {
            let new = answers.iter().all(|other| self.apart(&other.values, &answer.values) > DIFFERENT);
            if new && answers.len() < MOST_ANSWERS {
                answers.push(answer);
            }
        }
        let nearest =
            if answers.is_empty() { others.into_iter().min_by(|a, b| a.miss.total_cmp(&b.miss)) } else { None };
        let blocks = nearest.as_ref().map_or_else(Vec::new, |nearest| blocks::blocks(self, nearest));
        Some(Sought { answers, met: count, nearest, blocks })
    }

    /// The recipe's own values, brought within the bounds.
    fn home(&self) -> Vec<f64> {
        let own = |free: &Free| free.control.value(&self.recipe).unwrap_or(free.from).clamp(free.from, free.to);
        self.target.free.iter().map(own).collect()
    }

    /// Where a start begins, in parts of the ranges.
    fn start(&self, start: usize) -> Vec<f64> {
        let part = |(n, (free, own)): (usize, (&Free, f64))| match start.checked_sub(1) {
            None => (own - free.from) / (free.to - free.from),
            Some(point) => f64::from(sobol_burley::sample(point as u32, n as u32, 1)),
        };
        self.target.free.iter().zip(self.home()).enumerate().map(part).collect()
    }

    /// How far apart two sets of values are, in parts of the ranges.
    fn apart(&self, a: &[f64], b: &[f64]) -> f64 {
        let far = |(free, (a, b)): (&Free, (&f64, &f64))| ((a - b) / (free.to - free.from)).abs();
        self.target.free.iter().zip(a.iter().zip(b)).map(far).fold(0.0, f64::max)
    }

    /// The recipe with the free controls at these values.
    fn with(&self, values: &[f64]) -> Recipe {
        let set = |recipe: Recipe, (free, value): (&Free, &f64)| free.control.with(&recipe, *value).unwrap_or(recipe);
        self.target.free.iter().zip(values).fold(self.recipe.clone(), set)
    }

    /// The ball with these values; `None` where it cannot be made, or breaks a
    /// limit that it must keep.
    fn answer(&self, start: usize, values: &[f64]) -> Option<Answer> {
        let recipe = self.with(values);
        let weighed = weigh(&Ball::new(&recipe).ok()?);
        let cover_m = 0.5 * recipe.diameter_m - farthest_m(&recipe);
        let figures = Figures::from(&weighed).array();
        let misses = (0..FIGURES).filter_map(|n| Some((figures[n] - self.target.want[n]?).abs() / NEAR[n]));
        let mut miss = misses.fold(0.0, f64::max);
        if let Some(least_m) = self.target.cover_at_least_m {
            // A cover is met to a thousandth of an inch.
            miss = miss.max((least_m - cover_m) / (0.001 * M_PER_IN));
        }
        if self.target.within_limits {
            miss = miss.max(problem::limits(&weighed, &recipe).into_iter().fold(0.0, f64::max) / 0.05);
        }
        Some(Answer { values: values.to_vec(), recipe, weighed, cover_m, miss, start })
    }
}

/// How far the pieces reach from the centre, each without its cuts; 0 without pieces.
fn farthest_m(recipe: &Recipe) -> f64 {
    recipe.pieces.iter().map(|piece| reach_m(&piece.solid)).fold(0.0, f64::max)
}
