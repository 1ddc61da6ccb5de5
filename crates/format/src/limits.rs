//! Which numbers are accepted, in file units. One table for reader and schema.

use crate::{Phrase, phrase};

/// A range of accepted numbers; every one of them finite.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Range {
    pub(crate) min: f64,
    /// Whether `min` itself is left out.
    pub(crate) above_min: bool,
    pub(crate) max: f64,
}

impl Range {
    const fn from_to(min: f64, max: f64) -> Self {
        Self { min, above_min: false, max }
    }
    const fn above_to(min: f64, max: f64) -> Self {
        Self { min, above_min: true, max }
    }

    pub(crate) fn holds(&self, number: f64) -> bool {
        let low = if self.above_min { number > self.min } else { number >= self.min };
        number.is_finite() && low && number <= self.max
    }

    pub(crate) fn words(&self) -> Phrase {
        let Self { min, max, .. } = *self;
        match (min.is_finite(), self.above_min, max.is_finite()) {
            (false, _, _) => phrase!("number-finite", "a finite number"),
            (_, true, true) => phrase!("number-above-to", "a number above {min} and up to {max}", min = min, max = max),
            (_, false, true) => phrase!("number-from-to", "a number from {min} to {max}", min = min, max = max),
            (_, true, false) => phrase!("number-above", "a number above {min}", min = min),
            (_, false, false) => phrase!("number-or-more", "a number of {min} or more", min = min),
        }
    }
}

pub(crate) const ANY: Range = Range::from_to(f64::NEG_INFINITY, f64::INFINITY);
pub(crate) const SIZE_IN: Range = Range::above_to(0.0, f64::INFINITY);
pub(crate) const ZERO_OR_MORE: Range = Range::from_to(0.0, f64::INFINITY);
pub(crate) const DIAMETER_IN: Range = Range::from_to(4.0, 12.0);
pub(crate) const DENSITY_G_CC: Range = Range::above_to(0.0, 25.0);
pub(crate) const SQUASH: Range = Range::from_to(0.05, 20.0);

pub(crate) const SPEED_MPH: Range = Range::above_to(0.0, 40.0);
pub(crate) const REVS_RPM: Range = Range::from_to(0.0, 1000.0);
pub(crate) const AXIS_ROTATION_DEG: Range = Range::from_to(-180.0, 180.0);
pub(crate) const AXIS_TILT_DEG: Range = Range::from_to(-90.0, 90.0);
pub(crate) const LAUNCH_ANGLE_DEG: Range = Range::from_to(-45.0, 45.0);
pub(crate) const BOARD: Range = Range::from_to(0.5, 39.5);
pub(crate) const MU: Range = Range::from_to(0.0, 2.0);
/// Friction must be known to here; zones may go on beyond.
pub(crate) const COVERED_FT: f64 = 63.0;
pub(crate) const TURN_DEG: Range = Range::from_to(-360.0, 360.0);
/// Half way round the largest ball is 18.9 in.
pub(crate) const PIN_TO_PAP_IN: Range = Range::from_to(0.0, 20.0);

/// A quarter of the way round the largest ball is 9.4 in; physics holds it to the ball's own.
pub(crate) const PAP_OVER_IN: Range = Range::from_to(0.0, 12.0);
pub(crate) const PAP_UP_IN: Range = Range::from_to(-6.0, 6.0);
pub(crate) const BRIDGE_IN: Range = Range::from_to(0.0, 3.0);
pub(crate) const SPAN_IN: Range = Range::above_to(0.0, 6.0);
pub(crate) const BORE_IN: Range = Range::above_to(0.0, 3.0);
pub(crate) const DEPTH_IN: Range = Range::above_to(0.0, 6.0);
pub(crate) const PITCH_IN: Range = Range::from_to(-2.0, 2.0);
pub(crate) const WALL_IN: Range = Range::above_to(0.0, 1.0);
pub(crate) const OIL_LENGTH_FT: Range = Range::from_to(10.0, 63.0);
pub(crate) const OIL_VOLUME_ML: Range = Range::from_to(0.0, 60.0);
pub(crate) const OIL_RATIO: Range = Range::from_to(1.0, 100.0);
pub(crate) const THIN_TO_BOARD: Range = Range::from_to(7.0, 17.0);
pub(crate) const FULL_FROM_BOARD_MAX: f64 = 18.0;
pub(crate) const SHARE: Range = Range::from_to(0.0, 1.0);
pub(crate) const FILM_UM: Range = Range::from_to(0.0, 100.0);
pub(crate) const FILM_HALF_UM: Range = Range::from_to(0.01, 20.0);
/// The published limit of a ball's friction.
pub(crate) const MU_BALL: Range = Range::from_to(0.0, 0.32);
pub(crate) const GRIT: Range = Range::from_to(100.0, 10_000.0);
/// Of a tolerance that is relative; at 100 nothing would be left.
pub(crate) const PERCENT: Range = Range::from_to(0.0, 99.0);
pub(crate) const DIAMETER_TOLERANCE_IN: Range = Range::from_to(0.0, 1.0);
pub(crate) const SHIFT_IN: Range = Range::from_to(0.0, 12.0);
pub(crate) const LEAN_DEG: Range = Range::from_to(0.0, 90.0);
pub(crate) const SEED: Range = Range::from_to(0.0, u32::MAX as f64);
pub(crate) const BALLS: Range = Range::from_to(100.0, 1e6);
/// Of what is mixed and not poured, as a share.
pub(crate) const WASTE: Range = Range::from_to(0.0, 0.9);
pub(crate) const STARTS: Range = Range::from_to(1.0, 1000.0);
