//! What every control moves: derivatives of a ball's numbers.
//!
//! By differences over a step and its halves, extrapolated (Richardson, Phil.
//! Trans. R. Soc. A 210, 1911), with what the extrapolation changed and what
//! the weighing may be wrong by as the error. Each side has a derivative of its
//! own where a number has a kink (a squash makes two equal RGs differ whichever
//! way it goes), and none where the ball could not be made.

use crate::ball::Ball;
use crate::check::RecipeError;
use crate::control::{Control, Quantity};
use crate::figures::{FIGURES, Figures};
use crate::recipe::Recipe;
use crate::units::M_PER_IN;
use crate::weigh::{Sum, TOLERANCE, Weighed, filled};

/// What a control is moved by: 0.01 g/cc, 0.05 in, 1°, 0.01.
pub fn step(quantity: Quantity) -> f64 {
    match quantity {
        Quantity::Density => 10.0,
        Quantity::Length => 0.05 * M_PER_IN,
        Quantity::Angle => 1.0_f64.to_radians(),
        Quantity::Ratio => 0.01,
    }
}

/// The ball and its recipe, ready for its levers.
#[derive(Debug)]
pub struct Levers {
    recipe: Recipe,
    sum: Sum,
    weighed: Weighed,
}

/// What one control moves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lever {
    /// Which.
    pub control: Control,
    /// Its value, SI.
    pub value: f64,
    /// The step that everything here is for, SI.
    pub step: f64,
    /// First-order changes as the value is raised by a step; `None` where the
    /// ball cannot be made with any more of it.
    pub raised: Option<Moved>,
    /// First-order changes as it is lowered by a step.
    pub lowered: Option<Moved>,
}

/// First-order changes of a ball's numbers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moved {
    /// The changes.
    pub by: Figures,
    /// What each may be wrong by: an estimate of the extrapolation, a bound of the weighing.
    pub error: Figures,
}

type Row = [f64; FIGURES];

/// Values at distances h, h/2 and h/4, and h itself.
struct Side {
    h: f64,
    values: [Row; 3],
}

/// Smallest part of a step tried where a whole one cannot be made.
const SMALLEST: f64 = 1.0 / 4096.0;

impl Levers {
    /// Weighs the ball.
    ///
    /// # Errors
    /// [`RecipeError`] where it cannot be made.
    pub fn new(recipe: &Recipe) -> Result<Self, RecipeError> {
        let ball = Ball::new(recipe)?;
        let sum = filled(&ball, TOLERANCE);
        let weighed = sum.weighed(ball.radius_m(), &densities(recipe));
        Ok(Self { recipe: recipe.clone(), sum, weighed })
    }

    /// What one control moves; `None` where the recipe has no such control.
    pub fn lever(&self, control: Control) -> Option<Lever> {
        let value = control.value(&self.recipe)?;
        let step = step(control.quantity());
        let here = Figures::from(&self.weighed).array();
        let exact = control.quantity() == Quantity::Density;
        let noise = if exact {
            // The fillings are the same: what they are wrong by is a factor on the derivative.
            here.map(|value| 1e-14 * value.abs())
        } else {
            Figures::error(&self.weighed).array().map(|error| 1.5 * error)
        };
        let [up, down] = [1.0, -1.0].map(|sign| self.side(control, value, sign * step));
        let one_sided = [&up, &down].map(|side| side.as_ref().map(|side| extrapolated(&here, side, &noise, step)));
        let mut moved = one_sided;
        if let ([Some(raised), Some(lowered)], [Some(up), Some(down)]) = (&mut moved, [&up, &down]) {
            for (n, noise) in noise.iter().enumerate() {
                let smooth = (raised.0[n] + lowered.0[n]).abs() <= 2.0 * (raised.1[n] + lowered.1[n]);
                if smooth && up.h == -down.h {
                    let (by, error) = central(n, up, down, *noise, step);
                    (raised.0[n], raised.1[n], lowered.0[n], lowered.1[n]) = (by, error, -by, error);
                }
            }
        }
        let relative = if exact { 4.0 * self.weighed.relative_error } else { 0.0 };
        let [raised, lowered] = moved.map(|moved| {
            moved.map(|(by, error)| {
                let error = core::array::from_fn(|n| error[n] + relative * by[n].abs());
                Moved { by: Figures::from_array(by), error: Figures::from_array(error) }
            })
        });
        Some(Lever { control, value, step, raised, lowered })
    }

    /// The nearest distances at which the ball can be made.
    fn side(&self, control: Control, value: f64, step: f64) -> Option<Side> {
        let mut h = step;
        while h.abs() >= SMALLEST * step.abs() {
            if let Some(farthest) = self.numbers(control, value + h) {
                let values =
                    [farthest, self.numbers(control, value + 0.5 * h)?, self.numbers(control, value + 0.25 * h)?];
                return Some(Side { h, values });
            }
            h *= 0.25;
        }
        None
    }

    fn numbers(&self, control: Control, value: f64) -> Option<Row> {
        let recipe = control.with(&self.recipe, value)?;
        let ball = Ball::new(&recipe).ok()?;
        let sum;
        let filled = if control.quantity() == Quantity::Density {
            &self.sum
        } else {
            sum = filled(&ball, TOLERANCE);
            &sum
        };
        Some(Figures::from(&filled.weighed(ball.radius_m(), &densities(&recipe))).array())
    }
}

fn densities(recipe: &Recipe) -> Vec<f64> {
    core::iter::once(recipe.cover_density_kg_m3).chain(recipe.pieces.iter().map(|p| p.density_kg_m3)).collect()
}

/// One-sided change over `step` and its error: second-order differences over h
/// and h/2, extrapolated.
fn extrapolated(here: &Row, side: &Side, noise: &Row, step: f64) -> (Row, Row) {
    let scale = step / side.h.abs();
    let change = |n: usize| {
        let [far, middle, near] = [0, 1, 2].map(|k| side.values[k][n] - here[n]);
        let (coarse, fine) = (4.0 * middle - far, 2.0 * (4.0 * near - middle));
        // The largest weights in the sum of the two, each value being wrong by the noise.
        let error = (fine - coarse).abs() + 30.0 * noise[n];
        (scale * (fine + (fine - coarse) / 3.0), scale * error)
    };
    let both: [(f64, f64); FIGURES] = core::array::from_fn(change);
    (both.map(|(by, _)| by), both.map(|(_, error)| error))
}

/// Change over `step` of a smooth number by central differences over h and h/2.
fn central(n: usize, up: &Side, down: &Side, noise: f64, step: f64) -> (f64, f64) {
    let [coarse, fine] = [0, 1].map(|k| 0.5 * (up.values[k][n] - down.values[k][n]));
    let fine = 2.0 * fine;
    let scale = step / up.h.abs();
    (scale * (fine + (fine - coarse) / 3.0), scale * ((fine - coarse).abs() + 3.0 * noise))
}

#[cfg(test)]
mod tests;
