//! Why two shots differ: the difference shared out over the properties in
//! which they differ, so that the parts sum to the whole.
//!
//! The share of a property is its Shapley value (L. S. Shapley, "A value for
//! n-person games", Annals of Mathematics Studies 28, 1953, p. 307): what
//! changes when this property goes over from A's to B's, averaged over every
//! order in which the properties may go over one after another. It is the one
//! way of sharing in which the parts sum to the whole, a property that changes
//! nothing has no part, and the names A and B may change places. It needs the
//! shot of every mixture of A and B: 2ⁿ shots for n properties that differ.
//!
//! A mixture has, property by property, what A or what B has. Its tensor is
//! rebuilt from mass, principal RGs and axes; a mixture that no rigid body
//! can be, or that does not reach the pins, leaves the difference unshared,
//! and the reason is said.

mod mixture;

use crate::roll::{End, RigidBall, SameHand, Shot, ShotError, Summary, roll};
pub use mixture::{Lanes, Property};
use mixture::{Mixtures, Side};

/// A ball and how it is thrown.
#[derive(Clone, Debug, PartialEq)]
pub struct Thrown {
    /// The ball as a rigid body.
    pub ball: RigidBall,
    /// The shot.
    pub shot: Shot,
}

/// What is compared, or the difference of it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Outcome {
    /// How far the ball comes back: boards from breakpoint to pins.
    pub hook_boards: f64,
    /// Board at the pins.
    pub board_at_pins: f64,
    /// Entry angle, positive towards the pocket side.
    pub entry_angle_rad: f64,
    /// Board of the breakpoint.
    pub breakpoint_board: f64,
    /// Distance of the breakpoint from the foul line.
    pub breakpoint_m: f64,
}

impl Outcome {
    /// What a shot came to; none where it did not reach the pins.
    #[must_use]
    pub fn of(summary: &Summary) -> Option<Self> {
        let pins = summary.at_pins.as_ref()?;
        Some(Self {
            hook_boards: pins.board - summary.breakpoint.board,
            board_at_pins: pins.board,
            entry_angle_rad: pins.entry_angle_rad,
            breakpoint_board: summary.breakpoint.board,
            breakpoint_m: summary.breakpoint.distance_m,
        })
    }

    /// `self` plus `factor` times the difference of `to` and `from`.
    fn plus(self, factor: f64, to: &Self, from: &Self) -> Self {
        let sum = |own: f64, to: f64, from: f64| own + factor * (to - from);
        Self {
            hook_boards: sum(self.hook_boards, to.hook_boards, from.hook_boards),
            board_at_pins: sum(self.board_at_pins, to.board_at_pins, from.board_at_pins),
            entry_angle_rad: sum(self.entry_angle_rad, to.entry_angle_rad, from.entry_angle_rad),
            breakpoint_board: sum(self.breakpoint_board, to.breakpoint_board, from.breakpoint_board),
            breakpoint_m: sum(self.breakpoint_m, to.breakpoint_m, from.breakpoint_m),
        }
    }
}

/// Why a difference is not told or not shared out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Unshared {
    /// A does not reach the pins.
    AEnds(End),
    /// B does not reach the pins.
    BEnds(End),
    /// B cannot be thrown with this effort.
    BCannot(ShotError),
    /// A mixture does not reach the pins.
    MixtureEnds(End),
    /// A mixture cannot be followed, or is no rigid body.
    MixtureCannot(ShotError),
}

/// Which shot cannot be thrown at all.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum WhyError {
    /// The first.
    #[error("A: {0}")]
    A(ShotError),
    /// The second.
    #[error("B: {0}")]
    B(ShotError),
}

/// How two shots differ, and why.
#[derive(Clone, Debug, PartialEq)]
pub struct Why {
    /// What A came to; none where it did not reach the pins.
    pub a: Option<Outcome>,
    /// What B came to, thrown by the same hand.
    pub b: Option<Outcome>,
    /// Rate of spin with which B leaves the hand.
    pub b_spin_rad_s: f64,
    /// B's outcome less A's.
    pub whole: Option<Outcome>,
    /// The part of each property in which A and B differ, in the order of
    /// [`Property`]; they sum to `whole`. None where that cannot be told.
    pub parts: Option<Vec<(Property, Outcome)>>,
    /// What stands in the way.
    pub unshared: Option<Unshared>,
}

/// Tells why B's shot differs from A's.
///
/// With [`SameHand::Effort`] rates of spin are what the hand gives A's ball, in
/// B and in every mixture. With [`SameHand::Revs`] the parts of (B, A) are the
/// negative of those of (A, B). Parts sum to the whole within rounding (10⁻¹²).
///
/// # Errors
/// [`WhyError`] where A or B cannot be thrown as it stands.
pub fn why(a: &Thrown, b: &Thrown, lanes: Lanes<'_>, hand: SameHand) -> Result<Why, WhyError> {
    let from = roll(&a.ball, &a.shot).map_err(WhyError::A)?;
    let mixtures = Mixtures::new(a, b, lanes, hand);
    let every = mixtures.every();
    let thrown_b = mixtures.made(every);
    let to = roll(&thrown_b.ball, &thrown_b.shot);
    let b_spin_rad_s = thrown_b.shot.release.spin_rad_s;
    let start = Outcome::of(&from);
    let mut told = Why { a: start, b: None, b_spin_rad_s, whole: None, parts: None, unshared: None };
    let to = match to {
        Ok(to) => to,
        Err(error) if hand == SameHand::Revs => return Err(WhyError::B(error)),
        Err(error) => return Ok(Why { unshared: Some(Unshared::BCannot(error)), ..told }),
    };
    told.b = Outcome::of(&to);
    let (start, end) = match (start, told.b) {
        (Some(start), Some(end)) => (start, end),
        (None, _) => return Ok(Why { unshared: Some(Unshared::AEnds(from.end)), ..told }),
        (_, None) => return Ok(Why { unshared: Some(Unshared::BEnds(to.end)), ..told }),
    };
    told.whole = Some(Outcome::default().plus(1.0, &end, &start));
    let outcomes = (0..=every).map(|mask| match mask {
        0 => Ok(start),
        _ if mask == every => Ok(end),
        _ => {
            let mixed = mixtures.made(mask);
            let rolled = roll(&mixed.ball, &mixed.shot).map_err(Unshared::MixtureCannot)?;
            Outcome::of(&rolled).ok_or(Unshared::MixtureEnds(rolled.end))
        }
    });
    match outcomes.collect::<Result<Vec<_>, _>>() {
        Ok(outcomes) => told.parts = Some(shares(&mixtures.differing, &outcomes)),
        Err(unshared) => told.unshared = Some(unshared),
    }
    Ok(told)
}

/// Shapley values from the outcome of every mixture; bit n of an outcome's
/// place says whether the n-th property is B's.
fn shares(properties: &[Property], outcomes: &[Outcome]) -> Vec<(Property, Outcome)> {
    let count = properties.len();
    // k properties gone over before this one, in (n−1 choose k) equal ways:
    // weight 1 over n·(n−1 choose k).
    let mut weights = Vec::with_capacity(count);
    let mut ways = 1.0;
    for before in 0..count {
        weights.push(1.0 / (count as f64 * ways));
        ways = ways * (count - 1 - before) as f64 / (before + 1) as f64;
    }
    let share = |(at, property): (usize, &Property)| {
        let bit = 1 << at;
        let without = (0..outcomes.len()).filter(|mask| mask & bit == 0);
        let part = without.fold(Outcome::default(), |part, mask| {
            let weight = weights[mask.count_ones() as usize];
            part.plus(weight, &outcomes[mask | bit], &outcomes[mask])
        });
        (*property, part)
    };
    properties.iter().enumerate().map(share).collect()
}

impl Property {
    /// The side that a mixture has this property from.
    fn side(self, differing: &[Self], mask: usize) -> Side {
        match differing.iter().position(|other| *other == self) {
            Some(at) if mask >> at & 1 == 1 => Side::B,
            _ => Side::A,
        }
    }
}
