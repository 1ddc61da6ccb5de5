//! What "the same hand" means when two balls are compared.
//!
//! Two readings. The same rev rate: the release says how the ball turns, for
//! any ball. The same effort: the hand gives the same angular impulse about
//! the release axis, so that a ball that is easier to spin about that axis
//! leaves with more revs (ω = J/I). Speed is the same in both: an arm that
//! swings freely is about as fast with a ball of any weight. The second
//! reading is a model choice; how a hand really shares its effort is not
//! published.

use super::shot::{RigidBall, Shot};
use super::start;

/// How a release is carried over to another ball.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum SameHand {
    /// The same rate of spin.
    #[default]
    Revs,
    /// The same angular impulse about the release axis (model choice).
    Effort,
}

/// Moment of inertia about the release axis, through the centre of gravity.
#[must_use]
pub fn release_inertia_kg_m2(ball: &RigidBall, shot: &Shot) -> f64 {
    let turn = start::turn(shot.hand, &shot.release, &shot.layout, ball.radius_m);
    let axis = turn.inverse() * start::spin_direction(shot.hand, &shot.release);
    axis.dot(&(ball.inertia_kg_m2 * axis))
}

impl SameHand {
    /// Rate of spin with which `ball` leaves on `shot`, where the shot's rate
    /// is what this hand gives a ball of `reference_kg_m2` about its release axis.
    #[must_use]
    pub fn spin_rad_s(self, ball: &RigidBall, shot: &Shot, reference_kg_m2: f64) -> f64 {
        match self {
            Self::Revs => shot.release.spin_rad_s,
            Self::Effort => shot.release.spin_rad_s * (reference_kg_m2 / release_inertia_kg_m2(ball, shot)),
        }
    }
}
