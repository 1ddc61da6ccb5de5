//! What balls do to the oil: taken up along the track, carried down, taken away.
//!
//! Model choice throughout; nothing is published that gives the amounts. On
//! every stretch of its path a ball takes up a share of the film in a band one
//! board wide and lays down again, over the same band, some of the oil that it
//! carries; what it still carries at the end of the lane is gone with it. The
//! oil on the lane and the oil taken away together stay the same.

use super::{BOARD_COUNT, CELL_M2, Film, FilmError, ROW_COUNT, ROW_M};
use crate::lane::{BOARD_M, CENTRE_BOARD};
use nalgebra::Vector2;

/// How a ball takes up oil and lays it down.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WearRates {
    /// Share of the film in its band that a ball takes up in one pass, 0 to 1;
    /// to first order, since what it has taken up is no longer there.
    pub taken_up: f64,
    /// Distance over which a ball lays down all but 1/e of what it carries,
    /// above 0.
    pub carried_m: f64,
}

/// The rates used (model choice): a twentieth of the film in each pass, and
/// about an eighth of that laid down again before the pins.
pub const WEAR_RATES: WearRates = WearRates { taken_up: 0.05, carried_m: 100.0 };

/// A lane as it wears.
#[derive(Clone, Debug, PartialEq)]
pub struct Wearing {
    cells_m: Vec<[f64; BOARD_COUNT]>,
    taken_away_m3: f64,
    carried_down_m3: f64,
}

impl Wearing {
    /// A fresh lane.
    #[must_use]
    pub fn new(film: &Film) -> Self {
        Self { cells_m: film.cells_m().to_vec(), taken_away_m3: 0.0, carried_down_m3: 0.0 }
    }

    /// The film as it is now.
    ///
    /// # Errors
    /// In theory where so much oil is carried to one place that it would be
    /// thicker than 100 µm.
    pub fn film(&self) -> Result<Film, FilmError> {
        Film::from_cells(&self.cells_m)
    }

    /// Oil gone with the balls so far.
    #[must_use]
    pub fn taken_away_m3(&self) -> f64 {
        self.taken_away_m3
    }

    /// Oil laid down again further down the lane so far.
    #[must_use]
    pub fn carried_down_m3(&self) -> f64 {
        self.carried_down_m3
    }

    /// A ball passes along a path of contact points (lane frame), from where it
    /// is let go to where it leaves the lane.
    pub fn pass(&mut self, path_m: &[Vector2<f64>], rates: &WearRates) {
        let mut on_ball_m3 = 0.0;
        for ends in path_m.windows(2) {
            let (middle, length_m) = ((ends[0] + ends[1]) / 2.0, (ends[1] - ends[0]).norm());
            let Some((row, boards)) = band(&middle) else { continue };
            let laid_m3 = -on_ball_m3 * libm::expm1(-length_m / rates.carried_m);
            on_ball_m3 -= laid_m3;
            self.carried_down_m3 += laid_m3;
            for (board, part) in boards {
                let film_m = &mut self.cells_m[row][board];
                // However far the ball goes in a cell, it never takes up more than is there.
                let share = -libm::expm1(-rates.taken_up * part * BOARD_M * length_m / CELL_M2);
                let up_m3 = share * CELL_M2 * *film_m;
                *film_m += (laid_m3 * part - up_m3) / CELL_M2;
                on_ball_m3 += up_m3;
            }
        }
        self.taken_away_m3 += on_ball_m3;
    }
}

/// The row and the two boards under a ball, each board with its part of the
/// band; none beyond the lane.
fn band(at: &Vector2<f64>) -> Option<(usize, [(usize, f64); 2])> {
    let (board, row) = (CENTRE_BOARD - at.x / BOARD_M, (at.y / ROW_M).floor());
    let inside = (0.5..=BOARD_COUNT as f64 + 0.5).contains(&board) && (0.0..ROW_COUNT as f64).contains(&row);
    let lower = board.floor();
    let place = |board: f64| (board.clamp(1.0, BOARD_COUNT as f64) - 1.0) as usize;
    inside.then(|| (row as usize, [(place(lower), 1.0 - (board - lower)), (place(lower + 1.0), board - lower)]))
}
