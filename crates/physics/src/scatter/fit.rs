//! What every part fills as the recipe's lengths and angles stray: a second
//! order polynomial through the recipe and both ends of every tolerance.
//!
//! Volumes and moments are smooth in the lengths and angles, and mass, centre
//! of gravity and tensor are exact in them and in the densities; so only terms
//! that mix two small deviations of lengths are left out. How far that is from
//! weighing itself is measured, see [`super::deviation`].

use super::apply::made;
use super::{Plan, SCATTER_TOLERANCE, Source};
use crate::ball::Ball;
use crate::moments::Moments;
use crate::recipe::Recipe;
use crate::weigh::{Sum, filled};

#[derive(Debug)]
pub(super) struct Fit {
    base: Sum,
    terms: Vec<Term>,
}

/// What one tolerance does to one part.
#[derive(Debug)]
struct Term {
    tolerance: usize,
    part: usize,
    slope: Moments,
    bend: Moments,
}

impl Fit {
    pub(super) fn new(recipe: &Recipe, plan: &Plan) -> Self {
        let filled = |recipe: &Recipe| filled(&Ball::assembled(recipe), SCATTER_TOLERANCE);
        let base = filled(recipe);
        let mut terms = Vec::new();
        for (n, tolerance) in plan.tolerances.iter().enumerate() {
            // Densities take no part: what fills which part is the same.
            if matches!(tolerance.source, Source::CoverDensity | Source::Density(_)) {
                continue;
            }
            let mut off = vec![0.0; plan.tolerances.len()];
            let [plus, minus] = [1.0, -1.0].map(|end| {
                off[n] = end;
                filled(&made(recipe, &plan.tolerances, &off)).parts
            });
            for (part, ((plus, minus), base)) in plus.iter().zip(&minus).zip(&base.parts).enumerate() {
                let (mut slope, mut bend) = (plus.scaled(0.5), plus.scaled(0.5));
                slope -= minus.scaled(0.5);
                bend += minus.scaled(0.5);
                bend -= *base;
                if slope != Moments::ZERO || bend != Moments::ZERO {
                    terms.push(Term { tolerance: n, part, slope, bend });
                }
            }
        }
        Self { base, terms }
    }

    /// What every part fills with these deviations.
    pub(super) fn filled(&self, off: &[f64]) -> Sum {
        let mut sum = self.base.clone();
        for Term { tolerance, part, slope, bend } in &self.terms {
            let by = off[*tolerance];
            sum.parts[*part] += slope.scaled(by);
            sum.parts[*part] += bend.scaled(by * by);
        }
        sum
    }
}
