//! How long the steps are, and what their errors come to.
//!
//! Each step's local error is estimated as in DOP853 (Hairer, Nørsett,
//! Wanner, II.10) and held below a part of the current speed; how the ball is
//! turned is held less tightly where the ball is nearly even, since it enters
//! the path only through the spread of the tensor and the offset of the
//! centre of gravity. The estimates, those of the velocity also times the time
//! that is left, are summed as independent errors are (by their squares) into
//! a bound at the end, with what the beginnings and ends of slip add. DOP853's
//! estimates are far above its real errors, so the bound is cautious; it is an
//! estimate and not a proof, and the tests hold it against a tolerance several
//! hundred times tighter on random shots.

use super::body::{SIZE, State};
use super::dop853::Step;

/// Components that are held to a tolerance: all but the angle turned.
const HELD: usize = SIZE - 1;
/// Safety of the next step's length, and the most it may change.
const SAFETY: f64 = 0.9;
const SHRINK: f64 = 0.2;
const GROW: f64 = 6.0;
/// Speed below which a tolerance no longer shrinks with speed.
const SLOW_M_S: f64 = 1e-2;
/// Orientation is never held less tightly than this, for samples and rings.
const TURN_TOLERANCE: f64 = 1e-5;
/// Most that is made of a slip that nearly ended.
const MOST_GROWTH: f64 = 100.0;
/// Slip that counts as ended, by speed and by tolerance.
const STILL: f64 = 140.0;
/// How late the beginning of slip may be found, at the standard tolerance.
const LATE_S: f64 = 2e-3;
/// Relative tolerance of one step in velocity.
pub(super) const STANDARD: f64 = 7e-8;
/// The same over oil, whose film is less smooth than the method would like.
pub(super) const ON_OIL: f64 = 3.5e-8;

/// Tolerance of each component.
pub(super) struct Control {
    tolerance: f64,
    radius_m: f64,
    unevenness: f64,
    /// Squares of the local errors of position, summed.
    position: f64,
    /// Squares of those of velocity, summed plainly, by time and by its square.
    velocity: [f64; 3],
}

impl Control {
    pub(super) fn new(tolerance: f64, radius_m: f64, unevenness: f64) -> Self {
        Self { tolerance, radius_m, unevenness, position: 0.0, velocity: [0.0; 3] }
    }

    /// Part of the speed below which slip counts as ended.
    pub(super) fn still(&self) -> f64 {
        STILL * self.tolerance
    }

    /// How late slip may be found to have begun. What it has missed by then is
    /// made up for, to second order. Slip that has only begun follows the push
    /// so closely that its equations are stiff; this leaves that moment out.
    pub(super) fn late_s(&self) -> f64 {
        LATE_S * (self.tolerance / STANDARD).sqrt()
    }

    fn speed(y: &State) -> f64 {
        (y[2] * y[2] + y[3] * y[3]).sqrt().max(SLOW_M_S)
    }

    /// Error of a step over its tolerance (at most 1 to be accepted; NaN if
    /// the step met no force that would do), and the share of the estimate of
    /// order 5 that it is.
    pub(super) fn norm(&self, y: &State, step: &Step) -> (f64, f64) {
        let speed = self.tolerance * Self::speed(y);
        let turn = (0.1 * self.tolerance / self.unevenness).min(TURN_TOLERANCE);
        let (x, v, w, q) = (0.1 / speed, 1.0 / speed, self.radius_m / speed, 1.0 / turn);
        let weights = [x, x, v, v, w, w, w, q, q, q, q];
        let (mut five, mut three) = (0.0, 0.0);
        for (i, weight) in weights.iter().enumerate() {
            five += (step.error5[i] * weight) * (step.error5[i] * weight);
            three += (step.error3[i] * weight) * (step.error3[i] * weight);
        }
        let whole = five + 0.01 * three;
        if whole == 0.0 {
            return (0.0, 0.0);
        }
        let share = (five / whole).sqrt();
        ((five / HELD as f64).sqrt() * share, share)
    }

    /// By how much to change a step's length for its error to be just below 1.
    pub(super) fn factor(norm: f64) -> f64 {
        // norm^(−1/8) by three square roots.
        let root = norm.sqrt().sqrt().sqrt();
        if root.is_nan() {
            return SHRINK;
        }
        (SAFETY / root.max(1e-12)).clamp(SHRINK, GROW)
    }

    /// Adds an accepted step's error, made at `time_s`.
    pub(super) fn add(&mut self, time_s: f64, y: &State, step: &Step, share: f64) {
        let e = |i: usize| (step.error5[i] * share).abs();
        let turned = e(7) + e(8) + e(9) + e(10);
        let away = e(0) + e(1);
        self.position += away * away;
        self.add_velocity(
            time_s,
            e(2) + e(3) + self.radius_m * (e(4) + e(5) + 0.1 * e(6)) + self.unevenness * turned * Self::speed(y),
        );
    }

    /// Adds an error of velocity made at `time_s`.
    pub(super) fn add_velocity(&mut self, time_s: f64, error_m_s: f64) {
        let square = error_m_s * error_m_s;
        self.velocity[0] += square;
        self.velocity[1] += square * time_s;
        self.velocity[2] += square * time_s * time_s;
    }

    /// Lets all that has been added to velocity grow by a factor, and by no
    /// more than `most_m_s`.
    pub(super) fn grow(&mut self, time_s: f64, factor: f64, most_m_s: f64) {
        self.add_velocity(time_s, (self.velocity[0].sqrt() * factor.min(MOST_GROWTH)).min(most_m_s));
    }

    /// Bounds at `time_s` on the error of position and of velocity.
    pub(super) fn bounds(&self, time_s: f64) -> (f64, f64) {
        let [plain, by_time, by_square] = self.velocity;
        let later = (plain * time_s - 2.0 * by_time) * time_s + by_square;
        ((self.position + later.max(0.0)).sqrt(), plain.sqrt())
    }
}
