//! The lane: its size, its boards, its oil and its friction.
//!
//! Lane frame: origin on the foul line at the lane's centre line, +y towards
//! the pins, +x to the right of a bowler who faces the pins, +z up.

pub mod cover;
mod friction;
pub mod oil;

pub use friction::{Friction, FrictionError, Zone};

use crate::units::{M_PER_FT, M_PER_IN};

/// Foul line to the centre of the head pin, 60 ft
/// (United States Bowling Congress, Equipment Specifications and Certifications).
pub const PINS_M: f64 = 60.0 * M_PER_FT;
/// How far friction must be given: 63 ft, just past the pit's edge at 62 ft 10 3/16 in.
pub const COVERED_M: f64 = 63.0 * M_PER_FT;
/// Width of the lane, 41.5 in (same source, 41 in to 42 in).
pub const WIDTH_M: f64 = 41.5 * M_PER_IN;
/// Boards across the lane (same source).
pub const BOARDS: f64 = 39.0;
/// Width of one board.
pub const BOARD_M: f64 = WIDTH_M / BOARDS;
/// Board on the centre line.
pub const CENTRE_BOARD: f64 = 20.0;
/// Where a ball's centre passes the lane's edge: |x| of 20.75 in.
pub const EDGE_M: f64 = WIDTH_M / 2.0;

/// The bowler's hand: from which side boards are counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Hand {
    /// Board 1 is the rightmost.
    Right,
    /// Board 1 is the leftmost.
    Left,
}

impl Hand {
    /// +1 where the bowler's own side is +x (right), −1 where it is −x.
    #[must_use]
    pub fn side(self) -> f64 {
        match self {
            Self::Right => 1.0,
            Self::Left => -1.0,
        }
    }
}

/// Board under a point of the lane, counted from the bowler's own side;
/// 20 is the centre line, fractions are kept.
#[must_use]
pub fn board_at(hand: Hand, x_m: f64) -> f64 {
    CENTRE_BOARD - hand.side() * x_m / BOARD_M
}

/// Where a board is across the lane; the inverse of [`board_at`].
#[must_use]
pub fn x_at_m(hand: Hand, board: f64) -> f64 {
    hand.side() * (CENTRE_BOARD - board) * BOARD_M
}
