//! The least squares behind a search.
//!
//! What fills which part does not depend on the densities: where only they
//! differ from where the search stands, nothing is filled anew.

use core::cell::RefCell;

use levenberg_marquardt::{LeastSquaresProblem, LevenbergMarquardt};
use nalgebra_lm::storage::Owned;
use nalgebra_lm::{DMatrix, DVector, Dyn};

use super::{NEAR, Seek};
use crate::ball::Ball;
use crate::check::reach_m;
use crate::control::Quantity;
use crate::figures::{FIGURES, Figures};
use crate::recipe::Recipe;
use crate::spec::{HEAVY_FROM_LB, RULES, RuleId};
use crate::units::{KG_M3_PER_G_CC, KG_PER_LB, M_PER_IN};
use crate::weigh::{Sum, Weighed, filled};

/// Relative error bound while searching.
const SEARCH_TOLERANCE: f64 = 3e-6;
/// Step of the difference quotients, in the angle whose sine spans a range.
const STEP_RAD: f64 = 3e-5;
/// Weight of the pull towards the start, which picks one of many answers.
const PULL: f64 = 1e-3;
/// By how much pieces keep clear of the surface.
const CLEAR_M: f64 = 2e-4 * M_PER_IN;
/// What a piece that sticks out by, or a limit that is passed by, counts for one:
/// first gently, so that a start may lie outside, then hard.
const OUT: [f64; 2] = [0.005, 0.000_05];
/// Most steps, each with one set of difference quotients.
const PATIENCE: usize = 20;

struct Problem<'a> {
    seek: &'a Seek,
    from: DVector<f64>,
    at: DVector<f64>,
    out: f64,
    /// What every part fills where the search stands.
    here: RefCell<Option<Filled>>,
}

/// What every part fills with free controls at these values; densities take no part.
struct Filled {
    shape: Vec<f64>,
    sum: Sum,
}

/// Values of the free controls that a start, in parts of their ranges, leads to.
pub(super) fn solve(seek: &Seek, start: &[f64]) -> Vec<f64> {
    // At the very ends of a range the sine is flat: begin a little inside.
    let angle = |part: &f64| libm::asin(2.0 * part.clamp(0.001, 0.999) - 1.0);
    let mut at = DVector::from_iterator(start.len(), start.iter().map(angle));
    for out in OUT {
        let problem = Problem { seek, from: at.clone(), at: at.clone(), out, here: RefCell::default() };
        let method = LevenbergMarquardt::new().with_patience(PATIENCE).with_tol(1e-9);
        at = method.minimize(problem).0.at;
    }
    values(seek, &at)
}

fn values(seek: &Seek, at: &DVector<f64>) -> Vec<f64> {
    let value = |(free, t): (&super::Free, &f64)| {
        let part = 0.5 * (1.0 + libm::sin(*t));
        (free.from + part * (free.to - free.from)).clamp(free.from, free.to)
    };
    seek.target.free.iter().zip(at.iter()).map(value).collect()
}

/// By how much a ball passes the published limits that its numbers are held
/// to: lb, in, in, in, g/cc; 0 where it keeps them.
pub(super) fn limits(weighed: &Weighed, recipe: &Recipe) -> [f64; 5] {
    let limit = |id: RuleId| RULES.iter().find(|rule| rule.id == id).map_or((None, None), |r| (r.at_least, r.at_most));
    let past = |id: RuleId, value: f64| {
        let (low, high) = limit(id);
        low.map_or(0.0, |low| (low - value).max(0.0)) + high.map_or(0.0, |high| (value - high).max(0.0))
    };
    let weight_lb = weighed.mass_kg / KG_PER_LB;
    let heavy = if weight_lb >= HEAVY_FROM_LB { 1.0 } else { 0.0 };
    let densest = recipe.pieces.iter().map(|p| p.density_kg_m3).fold(recipe.cover_density_kg_m3, f64::max);
    [
        past(RuleId::Weight, weight_lb),
        heavy * past(RuleId::LowRg, weighed.rg_m[0] / M_PER_IN),
        heavy * past(RuleId::HighRg, weighed.rg_m[2] / M_PER_IN),
        past(RuleId::Differential, weighed.differential_m() / M_PER_IN),
        past(RuleId::Density, densest / KG_M3_PER_G_CC),
    ]
}

impl Problem<'_> {
    /// What every part fills; kept where the search stands, so that densities can be tried on it.
    fn filled(&self, values: &[f64], recipe: &Recipe, stands: bool) -> Sum {
        let free = self.seek.target.free.iter().zip(values);
        let shape: Vec<f64> =
            free.filter(|(free, _)| free.control.quantity() != Quantity::Density).map(|(_, value)| *value).collect();
        if let Some(here) = self.here.borrow().as_ref().filter(|here| here.shape == shape) {
            return here.sum.clone();
        }
        let sum = filled(&Ball::assembled(recipe), SEARCH_TOLERANCE);
        if stands {
            self.here.replace(Some(Filled { shape, sum: sum.clone() }));
        }
        sum
    }

    /// `stands`: the search stands there, and does not only look that way.
    fn residuals_at(&self, at: &DVector<f64>, stands: bool) -> DVector<f64> {
        let target = &self.seek.target;
        let values = values(self.seek, at);
        let recipe = self.seek.with(&values);
        let filled = self.filled(&values, &recipe, stands);
        let weighed = filled.weighed(0.5 * recipe.diameter_m, &recipe.densities_kg_m3());
        let figures = Figures::from(&weighed).array();
        let wanted = (0..FIGURES).filter_map(|n| Some((figures[n] - target.want[n]?) / NEAR[n]));
        let room_m = 0.5 * recipe.diameter_m - target.cover_at_least_m.unwrap_or(0.0).max(CLEAR_M);
        let out = recipe.pieces.iter().map(|piece| (reach_m(&piece.solid) - room_m).max(0.0) / (self.out * M_PER_IN));
        let passed = if target.within_limits { limits(&weighed, &recipe) } else { [0.0; 5] };
        let passed = passed.into_iter().map(|past| past / (10.0 * self.out));
        let pull = at.iter().zip(self.from.iter()).map(|(t, from)| PULL * (t - from));
        DVector::from_vec(wanted.chain(out).chain(passed).chain(pull).collect())
    }
}

impl LeastSquaresProblem<f64, Dyn, Dyn> for Problem<'_> {
    type ParameterStorage = Owned<f64, Dyn>;
    type ResidualStorage = Owned<f64, Dyn>;
    type JacobianStorage = Owned<f64, Dyn, Dyn>;

    fn set_params(&mut self, at: &DVector<f64>) {
        self.at.copy_from(at);
    }

    fn params(&self) -> DVector<f64> {
        self.at.clone()
    }

    fn residuals(&self) -> Option<DVector<f64>> {
        Some(self.residuals_at(&self.at, true))
    }

    fn jacobian(&self) -> Option<DMatrix<f64>> {
        let here = self.residuals_at(&self.at, true);
        let mut jacobian = DMatrix::zeros(here.len(), self.at.len());
        for n in 0..self.at.len() {
            let mut there = self.at.clone();
            there[n] += STEP_RAD;
            jacobian.set_column(n, &((self.residuals_at(&there, false) - &here) / STEP_RAD));
        }
        Some(jacobian)
    }
}
