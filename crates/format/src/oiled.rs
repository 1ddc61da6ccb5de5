//! What the page draws of an oil pattern and of the friction on it.

use physics::lane::oil::{BOARD_COUNT, Film, ROW_M};
use physics::lane::{Hand, x_at_m};
use serde::Serialize;

use crate::ball::Cover;
use crate::lane::Friction;
use crate::node::Node;
use crate::oil::{M_PER_UM, M3_PER_ML, OilFile};
use crate::problem::Problem;
use crate::tree::Tree;

/// A pattern's numbers and its film, foot by foot and board by board.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct OilMapDoc {
    /// Where the oil ends: as a pattern asks; of a map the end of the last
    /// foot whose mean film is over 0.05 µm.
    pub length_ft: f64,
    /// All of it.
    pub volume_ml: f64,
    /// Film on the five middle boards over that on boards 3 to 7 of both
    /// sides; `null` where there is none outside.
    pub ratio: Option<f64>,
    /// The thickest of `film_um`.
    pub thickest_um: f64,
    /// What was laid on each cell: 63 feet from the foul line, in each 39
    /// boards from the lane's right edge; a map file's `film_um`.
    pub cells_um: Vec<Vec<f64>>,
    /// The smooth film at the middle of each cell.
    pub film_um: Vec<Vec<f64>>,
    /// Oil laid on each board, its mean over the length.
    pub by_board_um: Vec<f64>,
    /// Oil laid on each foot, its mean across.
    pub by_row_um: Vec<f64>,
}

impl OilMapDoc {
    /// What is in a file.
    pub fn new(file: &OilFile, film: &Film) -> Self {
        let um = |film_m: &f64| film_m / M_PER_UM;
        let cells_um: Vec<Vec<f64>> = film.cells_m().iter().map(|row| row.iter().map(um).collect()).collect();
        let film_um: Vec<Vec<f64>> = (0..cells_um.len())
            .map(|row| {
                let y_m = (row as f64 + 0.5) * ROW_M;
                (1..=BOARD_COUNT).map(|board| um(&film.at_m(x_at_m(Hand::Right, board as f64), y_m))).collect()
            })
            .collect();
        Self {
            length_ft: file.length_ft(film),
            volume_ml: film.volume_m3() / M3_PER_ML,
            ratio: film.ratio(),
            thickest_um: film_um.iter().flatten().fold(0.0, |most, &film| film.max(most)),
            cells_um,
            film_um,
            by_board_um: film.by_board_m().iter().map(um).collect(),
            by_row_um: film.by_row_m().iter().map(um).collect(),
        }
    }
}

/// Friction by film for one ball.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FrictionCurveDoc {
    /// Under a thick film.
    pub mu_oil: f64,
    /// On dry boards.
    pub mu_dry: f64,
    /// The film at which friction is half-way.
    pub film_half_um: f64,
    /// From a dry lane on.
    pub points: Vec<CurvePointDoc>,
}

/// A point of the curve.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct CurvePointDoc {
    /// Thickness of the oil.
    pub film_um: f64,
    /// Coefficient of friction on it.
    pub mu: f64,
}

/// The thickest film of the curve, and how many points after the first; they
/// lie closer where friction changes faster.
const CURVE_TO_UM: f64 = 8.0;
const CURVE_POINTS: u32 = 80;

impl FrictionCurveDoc {
    /// Of a ball file's cover under a shot file's `lane.friction` (JSON text;
    /// the friction may be `null`).
    ///
    /// # Errors
    /// The first mistake in either.
    pub fn read(cover: &[u8], friction: &[u8]) -> Result<Self, Problem> {
        let cover = Cover::read(&Node::root(&Tree::parse(cover)?)).map_err(|problem| problem.within("cover"))?;
        let tree = Tree::parse(friction)?;
        let friction = match tree {
            Tree::Null => Friction::default(),
            _ => Friction::read(&Node::root(&tree)).map_err(|problem| problem.within("friction"))?,
        };
        let law = friction.law(&cover).map_err(|problem| problem.within("friction"))?;
        let points = (0..=CURVE_POINTS).map(|i| {
            let part = f64::from(i) / f64::from(CURVE_POINTS);
            let film_um = CURVE_TO_UM * part * part;
            CurvePointDoc { film_um, mu: law.mu(film_um * M_PER_UM) }
        });
        Ok(Self {
            mu_oil: law.mu_oil,
            mu_dry: law.mu_dry,
            film_half_um: law.film_half_m / M_PER_UM,
            points: points.collect(),
        })
    }
}
