//! Oil on the lane: how thick the film is, over boards and distance.
//!
//! A film is given as cells, one board wide and one foot long, each with the
//! oil laid on it as a thickness. Between them the thickness is a uniform
//! bicubic B-spline whose control values are the cells: twice differentiable
//! everywhere, never negative, and each cell's oil reaches at most two boards
//! and two feet further, so that the volume on the lane is the sum over the
//! cells exactly. At the lane's edges, the foul line and 63 ft the spline is
//! mirrored: no oil leaves the lane.
//!
//! Source of the spline: C. de Boor, A Practical Guide to Splines, Springer
//! 1978, chapter IX. That a film is spread by it is a model choice.

mod law;
mod pattern;
mod wear;

pub use law::{FrictionLaw, LawError, NEUTRAL_LAW, PUBLISHED_LIMIT};
pub use pattern::{Pattern, PatternError};
pub use wear::{WEAR_RATES, WearRates, Wearing};

use super::{BOARD_M, CENTRE_BOARD, COVERED_M};
use crate::units::M_PER_FT;

/// Boards across the lane.
pub const BOARD_COUNT: usize = 39;
/// Rows of cells down the lane: each a foot, to 63 ft.
pub const ROW_COUNT: usize = 63;
/// Length of a cell.
pub const ROW_M: f64 = M_PER_FT;
/// Area of a cell.
pub const CELL_M2: f64 = BOARD_M * ROW_M;
/// Thickest film accepted: 100 µm, many times what any pattern lays.
pub const FILM_MAX_M: f64 = 100e-6;
/// A foot of the lane on which the film is this thin, its mean over the boards,
/// no longer counts for a pattern's length: 0.05 µm (model choice). What balls
/// have carried on along their own line does not make a pattern longer.
pub const TRACE_M: f64 = 0.05e-6;
/// Boards that count as inside for the ratio, counted from either edge:
/// the five in the middle (common practice, no source).
pub const INSIDE: core::ops::RangeInclusive<usize> = 18..=22;
/// Boards that count as outside for the ratio, counted from each edge
/// (common practice, no source).
pub const OUTSIDE: core::ops::RangeInclusive<usize> = 3..=7;

const BOARDS_PER_M: f64 = 1.0 / BOARD_M;
const ROWS_PER_M: f64 = 1.0 / ROW_M;
/// Controls beyond the first and the last cell.
const PAD: usize = 2;
const WIDE: usize = BOARD_COUNT + 2 * PAD;
const LONG: usize = ROW_COUNT + 2 * PAD;

/// Thickness of the oil over the whole lane.
///
/// Boards are counted from the lane's right edge, whichever hand bowls: oil
/// lies on the lane and not on the bowler's side.
#[derive(Clone, Debug, PartialEq)]
pub struct Film {
    cells_m: Vec<[f64; BOARD_COUNT]>,
    /// The cells and their mirror images beyond the edges, row by row.
    controls_m: Vec<[f64; WIDE]>,
}

/// Why cells do not make a film.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum FilmError {
    /// More rows than the lane has feet.
    #[error("{found} rows; accepted: at most 63, one for each foot")]
    Rows {
        /// How many.
        found: usize,
    },
    /// A cell is not a thickness.
    #[error("row {row}, board {board}: a film of {found_m} m; accepted: 0 to 0.0001 m (100 µm)")]
    Thickness {
        /// From the foul line, counted from 0.
        row: usize,
        /// From the right edge, counted from 1.
        board: usize,
        /// What stands there.
        found_m: f64,
    },
}

impl Film {
    /// A film from its cells: `cells_m[row][board − 1]`, rows of a foot from
    /// the foul line, boards from the lane's right edge. Rows that are left
    /// out are dry.
    ///
    /// # Errors
    /// Where there are more than 63 rows, or a cell is not between 0 and 100 µm.
    pub fn from_cells(cells_m: &[[f64; BOARD_COUNT]]) -> Result<Self, FilmError> {
        if cells_m.len() > ROW_COUNT {
            return Err(FilmError::Rows { found: cells_m.len() });
        }
        for (row, cells) in cells_m.iter().enumerate() {
            if let Some(i) = cells.iter().position(|cell| !(0.0..=FILM_MAX_M).contains(cell)) {
                return Err(FilmError::Thickness { row, board: i + 1, found_m: cells[i] });
            }
        }
        let mut all = cells_m.to_vec();
        all.resize(ROW_COUNT, [0.0; BOARD_COUNT]);
        let controls_m = (0..LONG)
            .map(|row| {
                let row = &all[mirrored(row, ROW_COUNT)];
                core::array::from_fn(|i| row[mirrored(i, BOARD_COUNT)])
            })
            .collect();
        Ok(Self { cells_m: all, controls_m })
    }

    /// The cells, all 63 rows.
    #[must_use]
    pub fn cells_m(&self) -> &[[f64; BOARD_COUNT]] {
        &self.cells_m
    }

    /// Thickness at a point of the lane (lane frame). Beyond the lane that of
    /// its nearest edge.
    #[inline]
    #[must_use]
    pub fn at_m(&self, x_m: f64, y_m: f64) -> f64 {
        // Cell i of n has its centre at i + 2 here.
        let across = (CENTRE_BOARD - x_m * BOARDS_PER_M).clamp(0.5, BOARD_COUNT as f64 + 0.5) + (PAD as f64 - 1.0);
        let down = (y_m * ROWS_PER_M).clamp(0.0, ROW_COUNT as f64) + (PAD as f64 - 0.5);
        // Where nothing is a number the first cell stands; no index is out of range.
        let (column, row) = ((across as usize).clamp(1, WIDE - 3), (down as usize).clamp(1, LONG - 3));
        let (u, v) = (weights(across - column as f64), weights(down - row as f64));
        let mut film_m = 0.0;
        for (controls, v) in self.controls_m[row - 1..row + 3].iter().zip(v) {
            let c = &controls[column - 1..column + 3];
            film_m += v * (u[0] * c[0] + u[1] * c[1] + u[2] * c[2] + u[3] * c[3]);
        }
        film_m
    }

    /// All oil on the lane: the integral of [`Film::at_m`] over it.
    #[must_use]
    pub fn volume_m3(&self) -> f64 {
        self.cells_m.iter().flatten().sum::<f64>() * CELL_M2
    }

    /// How far down the lane the oil goes: the end of the last foot in which
    /// the boards hold more than [`TRACE_M`] in the mean; 0 on a dry lane.
    #[must_use]
    pub fn length_m(&self) -> f64 {
        let oiled = |row: &[f64; BOARD_COUNT]| row.iter().sum::<f64>() > TRACE_M * BOARD_COUNT as f64;
        let last = self.cells_m.iter().rposition(oiled);
        last.map_or(0.0, |row| ((row + 1) as f64 * ROW_M).min(COVERED_M))
    }

    /// Oil on each board, its mean over all boards' rows as far as `length_m`
    /// goes; zeros on a dry lane.
    #[must_use]
    pub fn by_board_m(&self) -> [f64; BOARD_COUNT] {
        let rows = (self.length_m() / ROW_M).round().max(1.0);
        core::array::from_fn(|i| self.cells_m.iter().map(|row| row[i]).sum::<f64>() / rows)
    }

    /// Mean film across the lane, foot by foot.
    #[must_use]
    pub fn by_row_m(&self) -> Vec<f64> {
        self.cells_m.iter().map(|row| row.iter().sum::<f64>() / BOARD_COUNT as f64).collect()
    }

    /// How many times thicker the film is inside than outside: the mean of
    /// the boards [`INSIDE`] over that of the boards [`OUTSIDE`] of both
    /// sides, over the whole length. None where there is no oil outside.
    #[must_use]
    pub fn ratio(&self) -> Option<f64> {
        let boards = self.by_board_m();
        let mean = |of: &dyn Fn(usize) -> bool| {
            let chosen: Vec<f64> =
                (1..=BOARD_COUNT).filter(|&board| of(board)).map(|board| boards[board - 1]).collect();
            chosen.iter().sum::<f64>() / chosen.len() as f64
        };
        let inside = mean(&|board| INSIDE.contains(&board));
        let outside = mean(&|board| OUTSIDE.contains(&board) || OUTSIDE.contains(&(BOARD_COUNT + 1 - board)));
        (outside > 0.0).then(|| inside / outside)
    }
}

/// Which of `count` cells a control is, its mirror image where it lies beyond.
fn mirrored(control: usize, count: usize) -> usize {
    if control < PAD {
        PAD - 1 - control
    } else if control < PAD + count {
        control - PAD
    } else {
        2 * count + PAD - 1 - control
    }
}

/// The four uniform cubic B-splines at a place between two controls, 0 to 1.
#[inline(always)]
fn weights(t: f64) -> [f64; 4] {
    let s = 1.0 - t;
    let (t2, s2) = (t * t, s * s);
    const SIXTH: f64 = 1.0 / 6.0;
    [s2 * s * SIXTH, (4.0 - 6.0 * t2 + 3.0 * t2 * t) * SIXTH, (4.0 - 6.0 * s2 + 3.0 * s2 * s) * SIXTH, t2 * t * SIXTH]
}

/// A lane under oil: the film, and the friction that follows from it.
#[derive(Clone, Debug, PartialEq)]
pub struct Oiled {
    /// The film.
    pub film: Film,
    /// Friction by film.
    pub law: FrictionLaw,
}

impl Oiled {
    /// Coefficient of friction at a point of the lane (lane frame).
    #[inline]
    #[must_use]
    pub fn mu_at(&self, x_m: f64, y_m: f64) -> f64 {
        self.law.mu(self.film.at_m(x_m, y_m))
    }
}
