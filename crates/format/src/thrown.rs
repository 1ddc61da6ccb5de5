//! From a shot file to the physics' shot, its complaints put at their places.

use physics::lane;
use physics::roll::{self, ShotError};
use physics::units::{M_PER_FT, M_PER_IN, M_S_PER_MPH, RAD_S_PER_RPM};

use crate::ball::Cover;
use crate::build::accepted_words;
use crate::problem::Problem;
use crate::shot::{Hand, Layout, Release, Throw};
use crate::tree::{rounded, short};
use crate::{Phrase, phrase};

impl Throw {
    /// The shot this file writes down, for a ball with this cover.
    ///
    /// # Errors
    /// Where the zones or the oil do not make a lane, or the oil is given as a
    /// path: whoever reads files puts [`crate::OilRef::Object`] in its place.
    pub fn shot(&self, cover: &Cover) -> Result<roll::Shot, Problem> {
        Ok(roll::Shot {
            hand: self.hand.to_physics(),
            release: self.release.to_physics(),
            layout: self.layout.to_physics(),
            lane: self.lane.friction(cover).map_err(|problem| problem.within("lane"))?,
        })
    }
}

impl Hand {
    pub(crate) fn to_physics(self) -> lane::Hand {
        match self {
            Self::Right => lane::Hand::Right,
            Self::Left => lane::Hand::Left,
        }
    }
}

impl Release {
    fn to_physics(self) -> roll::Release {
        roll::Release {
            speed_m_s: self.speed_mph * M_S_PER_MPH,
            spin_rad_s: self.revs_rpm * RAD_S_PER_RPM,
            axis_rotation_rad: self.axis_rotation_deg.to_radians(),
            axis_tilt_rad: self.axis_tilt_deg.to_radians(),
            launch_angle_rad: self.launch_angle_deg.to_radians(),
            board: self.board,
        }
    }
}

impl Layout {
    fn to_physics(self) -> roll::Layout {
        roll::Layout {
            pin_to_pap_m: self.pin_to_pap_in * M_PER_IN,
            drilling_angle_rad: self.drilling_angle_deg.to_radians(),
            start_turn_rad: self.start_turn_deg.to_radians(),
        }
    }
}

impl From<&ShotError> for Problem {
    fn from(error: &ShotError) -> Self {
        let down = |distance_m: f64| format!("{:.1}", distance_m / M_PER_FT);
        match *error {
            ShotError::OutOfRange { quantity, found, accepted } => out_of_range(quantity, found, accepted),
            ShotError::Hops { distance_m, .. } => not_followed(
                phrase!("hop-at", "a hop at {at} ft", at = down(distance_m)),
                phrase!(
                    "shot-hops",
                    "This ball would hop up off the lane at {at} ft: its centre of gravity is too far from the middle for this spin.",
                    at = down(distance_m)
                ),
            ),
            ShotError::Jams { distance_m, .. } => not_followed(
                phrase!("jam-at", "a jam at {at} ft", at = down(distance_m)),
                phrase!(
                    "shot-jams",
                    "This ball would jam against the lane at {at} ft: the friction is too high for a centre of gravity so far from the middle.",
                    at = down(distance_m)
                ),
            ),
            ShotError::TooManySteps { distance_m, .. } => not_followed(
                phrase!("too-many-steps", "too many steps"),
                phrase!(
                    "shot-too-many-steps",
                    "The shot could not be followed beyond {at} ft: it takes too many steps.",
                    at = down(distance_m)
                ),
            ),
        }
    }
}

/// A number of the shot at its place and in its file's unit.
fn out_of_range(quantity: &str, found: f64, accepted: &str) -> Problem {
    let value = |unit: f64| short(rounded(found / unit));
    let degree = 1.0_f64.to_radians();
    let (place, found) = match quantity {
        "speed_m_s" => ("release.speed_mph", value(M_S_PER_MPH)),
        "spin_rad_s" => ("release.revs_rpm", value(RAD_S_PER_RPM)),
        "axis_rotation_rad" => ("release.axis_rotation_deg", value(degree)),
        "axis_tilt_rad" => ("release.axis_tilt_deg", value(degree)),
        "launch_angle_rad" => ("release.launch_angle_deg", value(degree)),
        "board" => ("release.board", value(1.0)),
        "pin_to_pap_m" => ("layout.pin_to_pap_in", value(M_PER_IN)),
        "drilling_angle_rad" => ("layout.drilling_angle_deg", value(degree)),
        "start_turn_rad" => ("layout.start_turn_deg", value(degree)),
        // The ball itself cannot be rolled.
        _ => ("ball", format!("{quantity} {}", value(1.0))),
    };
    Problem::new(place, found.into(), accepted_words(accepted))
}

/// A shot that cannot be followed, and why.
fn not_followed(found: Phrase, why: Phrase) -> Problem {
    Problem::new("", found, phrase!("good-shot", "a shot that keeps the ball on the lane")).saying(why)
}
