//! A pattern made from a few numbers: how long, how much, how much more
//! inside than outside, and how it thins down the lane.
//!
//! The film is a product of a profile across (thin to `thin_to_board` from
//! each edge, full from `full_from_board` on) and a profile down the lane
//! (full to `front_m`, falling to `end_share` of that, faded out over the
//! last `buff_m`), scaled to the volume. Both blends are quintic, smooth to
//! the second derivative. The form is a model choice.

use super::{BOARD_COUNT, CELL_M2, Film, ROW_COUNT, ROW_M};
use crate::lane::COVERED_M;

/// Rounding of a conversion from feet, in metres.
const JOIN_M: f64 = 1e-9;
/// Most oil accepted: 60 mL.
const VOLUME_MAX_M3: f64 = 60e-6;

/// An oil pattern in a few numbers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pattern {
    /// Where the oil ends, 10 to 63 ft.
    pub length_m: f64,
    /// All of it, 0 to 60 mL.
    pub volume_m3: f64,
    /// Film inside over film outside, 1 (the same everywhere) to 100.
    pub ratio: f64,
    /// The film is thin from the edge to here, board 7 to 17.
    pub thin_to_board: f64,
    /// It is full from here on, beyond `thin_to_board` and up to board 18.
    pub full_from_board: f64,
    /// Full from the foul line to here, 0 or more.
    pub front_m: f64,
    /// What is left of the film before its last stretch, 0 to 1.
    pub end_share: f64,
    /// The last stretch, over which the film fades out; with `front_m` at most
    /// the length.
    pub buff_m: f64,
}

/// Why numbers do not make a pattern.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("{quantity} is {found}; accepted: {accepted}")]
pub struct PatternError {
    /// Which number.
    pub quantity: &'static str,
    /// Its value.
    pub found: f64,
    /// What is accepted.
    pub accepted: &'static str,
}

impl Pattern {
    fn check(&self) -> Result<(), PatternError> {
        let rest_m = self.length_m - self.front_m;
        for (quantity, found, holds, accepted) in [
            ("length_m", self.length_m, (3.048 - JOIN_M..=COVERED_M + JOIN_M).contains(&self.length_m), "10 to 63 ft"),
            (
                "volume_m3",
                self.volume_m3,
                (0.0..=VOLUME_MAX_M3 * (1.0 + 1e-12)).contains(&self.volume_m3),
                "0 to 60 mL",
            ),
            ("ratio", self.ratio, (1.0..=100.0).contains(&self.ratio), "1 to 100"),
            ("thin_to_board", self.thin_to_board, (7.0..=17.0).contains(&self.thin_to_board), "7 to 17"),
            (
                "full_from_board",
                self.full_from_board,
                self.full_from_board > self.thin_to_board && self.full_from_board <= 18.0,
                "above thin_to_board and up to 18",
            ),
            ("front_m", self.front_m, self.front_m >= 0.0 && rest_m >= 0.0, "0 to the length"),
            ("end_share", self.end_share, (0.0..=1.0).contains(&self.end_share), "0 to 1"),
            (
                "buff_m",
                self.buff_m,
                self.buff_m >= 0.0 && self.buff_m <= rest_m + JOIN_M,
                "0 to what the front leaves of the length",
            ),
        ] {
            if !holds {
                return Err(PatternError { quantity, found, accepted });
            }
        }
        Ok(())
    }

    /// The film, whose volume is the one asked for to rounding, and whose
    /// [`Film::ratio`] is the ratio asked for.
    ///
    /// # Errors
    /// Where a number is out of its range, or so much oil on so little lane
    /// that the film would be thicker than 100 µm.
    pub fn film(&self) -> Result<Film, PatternError> {
        self.check()?;
        let across: [f64; BOARD_COUNT] = core::array::from_fn(|i| self.across((i + 1) as f64));
        let down: Vec<f64> = (0..ROW_COUNT)
            .map(|row| self.down_to(row as f64 * ROW_M + ROW_M) - self.down_to(row as f64 * ROW_M))
            .map(|metres| metres / ROW_M)
            .collect();
        let whole = across.iter().sum::<f64>() * down.iter().sum::<f64>() * CELL_M2;
        let scale_m = if self.volume_m3 > 0.0 { self.volume_m3 / whole } else { 0.0 };
        let cells_m: Vec<[f64; BOARD_COUNT]> =
            down.iter().map(|down| across.map(|across| across * down * scale_m)).collect();
        Film::from_cells(&cells_m).map_err(|_| PatternError {
            quantity: "volume_m3",
            found: self.volume_m3,
            accepted: "so much oil that no film is thicker than 100 µm",
        })
    }

    /// Film on a board over that in the middle.
    fn across(&self, board: f64) -> f64 {
        let from_edge = board.min((BOARD_COUNT + 1) as f64 - board);
        let outside = 1.0 / self.ratio;
        let part = (from_edge - self.thin_to_board) / (self.full_from_board - self.thin_to_board);
        outside + (1.0 - outside) * blend(part)
    }

    /// Film over that at the foul line, summed from there to `y_m`.
    fn down_to(&self, y_m: f64) -> f64 {
        let fade_m = self.length_m - self.buff_m;
        let (front_m, middle_m, end_m) =
            (y_m.min(self.front_m), y_m.min(fade_m) - self.front_m, y_m.min(self.length_m) - fade_m);
        let mut sum = front_m;
        if middle_m > 0.0 {
            let all_m = fade_m - self.front_m;
            sum += middle_m - (1.0 - self.end_share) * all_m * blend_sum(middle_m / all_m);
        }
        if end_m > 0.0 && self.buff_m > 0.0 {
            sum += self.end_share * (end_m - self.buff_m * blend_sum(end_m / self.buff_m));
        }
        sum
    }
}

/// From 0 to 1 with no first or second derivative at either end.
fn blend(part: f64) -> f64 {
    let t = part.clamp(0.0, 1.0);
    t * t * t * (10.0 + t * (6.0 * t - 15.0))
}

/// Integral of [`blend`] from 0.
fn blend_sum(part: f64) -> f64 {
    let t = part.clamp(0.0, 1.0);
    t * t * t * t * (2.5 + t * (t - 3.0))
}
