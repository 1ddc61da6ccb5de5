//! Where a step must end early: on a line of the lane, or just after friction
//! ceases to hold the contact. Each is found by taking the step shorter.

use super::dop853::{IN_TIME, STAGES, Step};
use super::run::{Event, Run};
use super::watch::cubic;

/// A step ends on a line if it is this close.
const ON_LINE_M: f64 = 1e-10;
/// What is left to a line is covered in a straight line below this time.
const STRAIGHT_S: f64 = 1e-6;

impl Run<'_> {
    /// Part of a step at which friction first seems to fall short: between two
    /// stages, or at the bottom of the parabola through three. None where it
    /// suffices throughout.
    fn first_lack(&self, taken: &Step) -> Option<f64> {
        let mut before = (0.0, self.now.margin_n.max(0.0));
        let mut last = before;
        for stage in IN_TIME {
            let (part, margin) = (STAGES[stage], taken.margins_n[stage]);
            if margin < 0.0 {
                return Some(last.0 + (part - last.0) * last.1 / (last.1 - margin));
            }
            // Slopes on both sides of `last`, and the parabola's bend.
            let rise = (margin - last.1) / (part - last.0);
            let fall = (last.1 - before.1) / (last.0 - before.0).max(f64::MIN_POSITIVE);
            if fall < 0.0 && rise > 0.0 {
                let bend = (rise - fall) / (part - before.0);
                let slope = fall + bend * (last.0 - before.0);
                if last.1 - slope * slope / (4.0 * bend) < 0.0 {
                    return Some(last.0 - slope / (2.0 * bend));
                }
            }
            (before, last) = (last, (part, margin));
        }
        None
    }

    /// Cuts a step short just after friction ceases to hold the contact.
    pub(super) fn hold(&self, taken: Step) -> (Step, Event) {
        let late_s = self.control.late_s();
        let Some(part) = self.first_lack(&taken) else { return (taken, Event::None) };
        let mut root = part * taken.length_s;
        if taken.rates.margin_n < 0.0 && taken.length_s - root <= late_s {
            return (taken, Event::Slips);
        }
        // Regula falsi, Illinois variant, for a moment soon after.
        let (mut low, mut low_n) = (0.0, self.now.margin_n.max(0.0));
        let mut high = (taken.rates.margin_n < 0.0).then_some((taken.length_s, taken.rates.margin_n));
        loop {
            let most = high.map_or(taken.length_s, |(high, _)| high);
            let h = (root + 0.5 * late_s).clamp(low + 0.02 * (most - low), low + 0.98 * (most - low));
            let tried = self.step(h);
            let margin = tried.rates.margin_n;
            if margin < 0.0 {
                if (h - low) * margin / (margin - low_n) <= late_s {
                    return (tried, Event::Slips);
                }
                high = Some((h, margin));
                low_n *= 0.5;
            } else {
                let Some((_, high_n)) = &mut high else { return (tried, Event::None) };
                (low, low_n) = (h, margin);
                *high_n *= 0.5;
            }
            if let Some((high, high_n)) = high {
                root = low + (high - low) * low_n / (low_n - high_n);
            }
        }
    }

    /// Cuts a step short where a component reaches a line.
    pub(super) fn land(&self, taken: Step, i: usize, line_m: f64) -> Step {
        let way = (taken.state[i] - self.y[i]).signum();
        let (mut low, mut high) = (0.0, taken.length_s);
        let mut h = self.first_guess(&taken, i, line_m);
        let mut taken = taken;
        for _ in 0..60 {
            taken = self.step(h);
            let left = line_m - taken.state[i];
            let rest = left / taken.rates.d[i];
            if left.abs() <= ON_LINE_M || rest.abs() < STRAIGHT_S {
                if rest.abs() < STRAIGHT_S {
                    for (value, rate) in taken.state.iter_mut().zip(&taken.rates.d) {
                        *value += rest * rate;
                    }
                    taken.length_s += rest;
                }
                break;
            }
            if way * left > 0.0 {
                low = h;
            } else {
                high = h;
            }
            let newton = h + rest;
            h = if newton > low && newton < high { newton } else { 0.5 * (low + high) };
        }
        taken.state[i] = line_m;
        taken.rates = self.rates(&taken.state);
        taken
    }

    /// Where the cubic through a step reaches a line.
    fn first_guess(&self, taken: &Step, i: usize, line_m: f64) -> f64 {
        let h = taken.length_s;
        let way = (taken.state[i] - self.y[i]).signum();
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..20 {
            let part = 0.5 * (low + high);
            let at = cubic(part, h, self.y[i], self.now.d[i], taken.state[i], taken.rates.d[i]);
            if way * (line_m - at) > 0.0 {
                low = part;
            } else {
                high = part;
            }
        }
        0.5 * (low + high) * h
    }
}
