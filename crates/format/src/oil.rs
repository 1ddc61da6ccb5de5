//! The oil file, `NAME.oil.json`.

use physics::lane::oil::{self, BOARD_COUNT, Film, FilmError, PatternError, ROW_COUNT};
use physics::units::M_PER_FT;
use schemars::JsonSchema;
use serde::Serialize;

use crate::build::accepted_words;
use crate::limits;
use crate::node::{Node, Object};
use crate::problem::Problem;
use crate::tree::{Tree, rounded, short};
use crate::{Phrase, phrase};

/// Metres in a micrometre.
pub(crate) const M_PER_UM: f64 = 1e-6;
/// Cubic metres in a millilitre.
pub(crate) const M3_PER_ML: f64 = 1e-6;

/// Which edition of the oil file this is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub enum OilVersion {
    /// The first.
    #[serde(rename = "pithball.oil/1")]
    V1,
}

/// The oil on a lane, as a pattern in a few numbers or as a map.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct OilFile {
    /// `pithball.oil/1`.
    pub format: OilVersion,
    /// What the pattern is called.
    pub name: String,
    /// A line about it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
    /// The oil itself.
    #[serde(flatten)]
    pub oil: Oil,
}

/// How the oil is given.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(untagged)]
pub enum Oil {
    /// In a few numbers.
    Pattern {
        /// The numbers.
        pattern: Pattern,
    },
    /// Cell by cell.
    Map {
        /// Oil laid on each cell, as a thickness in micrometres, 0 to 100: a
        /// list for each foot from the foul line, at most 63; in each, 39
        /// boards from the lane's right edge, whichever hand bowls. Feet that
        /// are left out are dry. Between the cells the film is a smooth spline
        /// that keeps their volume.
        #[schemars(length(max = ROW_COUNT), inner(length(min = BOARD_COUNT, max = BOARD_COUNT)))]
        #[schemars(inner(inner(range(min = limits::FILM_UM.min, max = limits::FILM_UM.max))))]
        film_um: Vec<Vec<f64>>,
    },
}

/// An oil pattern in a few numbers, the same on both sides of the lane.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Pattern {
    /// Where the oil ends, 10 to 63.
    #[schemars(range(min = limits::OIL_LENGTH_FT.min, max = limits::OIL_LENGTH_FT.max))]
    pub length_ft: f64,
    /// All the oil on the lane, 0 to 60.
    #[schemars(range(min = limits::OIL_VOLUME_ML.min, max = limits::OIL_VOLUME_ML.max))]
    pub volume_ml: f64,
    /// How many times thicker the film is inside than outside, 1 to 100.
    #[schemars(range(min = limits::OIL_RATIO.min, max = limits::OIL_RATIO.max))]
    pub ratio: f64,
    /// From either edge to this board the film is thin, 7 to 17.
    #[schemars(range(min = limits::THIN_TO_BOARD.min, max = limits::THIN_TO_BOARD.max))]
    pub thin_to_board: f64,
    /// From this board to the middle it is full; above `thin_to_board` and up
    /// to 18.
    #[schemars(range(min = limits::THIN_TO_BOARD.min, max = limits::FULL_FROM_BOARD_MAX))]
    pub full_from_board: f64,
    /// From the foul line to here the film is as thick as it gets.
    #[schemars(range(min = 0))]
    pub front_ft: f64,
    /// What is left of that where the last stretch begins, 0 to 1.
    #[schemars(range(min = limits::SHARE.min, max = limits::SHARE.max))]
    pub end_share: f64,
    /// Length of the last stretch, where the film is brushed out to nothing;
    /// with `front_ft` at most `length_ft`.
    #[schemars(range(min = 0))]
    pub buff_ft: f64,
}

impl OilFile {
    /// Reads an oil file from JSON text in UTF-8.
    ///
    /// # Errors
    /// The first mistake in the file, with its place. Whether the numbers of a
    /// pattern go together is checked by [`OilFile::film`].
    pub fn read(json: &[u8]) -> Result<Self, Problem> {
        Self::read_node(&Node::root(&Tree::parse(json)?))
    }

    pub(crate) fn read_node(node: &Node<'_>) -> Result<Self, Problem> {
        let format = node.key("format")?.choice(&[("pithball.oil/1", OilVersion::V1)])?;
        let file = node.object(&["format", "name", "note", "pattern", "film_um"])?;
        Ok(Self {
            format,
            name: file.get("name")?.text()?,
            note: file.find_text("note")?,
            oil: Oil::read(node, &file)?,
        })
    }

    /// The film this file writes down.
    ///
    /// # Errors
    /// Where the numbers of a pattern do not go together.
    pub fn film(&self) -> Result<Film, Problem> {
        match &self.oil {
            Oil::Pattern { pattern } => pattern.to_physics().film().map_err(|error| problem(&error)),
            Oil::Map { film_um } => {
                let cells_m: Vec<[f64; BOARD_COUNT]> = film_um
                    .iter()
                    .map(|row| core::array::from_fn(|i| row.get(i).map_or(0.0, |um| um * M_PER_UM)))
                    .collect();
                Film::from_cells(&cells_m).map_err(|error| match error {
                    FilmError::Rows { found } => Problem::new("film_um", so_many_rows(found), most_rows()),
                    FilmError::Thickness { row, board, found_m } => {
                        Problem::new(format!("film_um[{row}][{}]", board - 1), um(found_m), limits::FILM_UM.words())
                    }
                })
            }
        }
    }

    /// How long the oil is called: the length asked for of a pattern, that of
    /// the film of a map.
    pub(crate) fn length_ft(&self, film: &Film) -> f64 {
        match &self.oil {
            Oil::Pattern { pattern } if pattern.volume_ml > 0.0 => pattern.length_ft,
            _ => (film.length_m() / M_PER_FT).round(),
        }
    }
}

impl Oil {
    fn read(node: &Node<'_>, file: &Object<'_>) -> Result<Self, Problem> {
        match (file.find("pattern"), file.find("film_um")) {
            (Some(pattern), None) => Ok(Self::Pattern { pattern: Pattern::read(&pattern)? }),
            (None, Some(rows)) => Ok(Self::Map { film_um: read_rows(&rows)? }),
            (Some(_), Some(_)) => Err(node
                .problem_found(
                    phrase!("and", "{one} and {next}", one = "pattern", next = "film_um"),
                    phrase!("pattern-or-film", "either pattern or film_um"),
                )
                .saying(phrase!("oil-twice", "The oil is given twice, as a pattern and as a map."))),
            (None, None) => Err(node
                .problem_found(
                    phrase!("neither", "neither {one} nor {next}", one = "pattern", next = "film_um"),
                    phrase!("pattern-or-film", "either pattern or film_um"),
                )
                .saying(phrase!("no-oil", "The file has no oil in it: give a pattern or a map."))),
        }
    }
}

fn read_rows(node: &Node<'_>) -> Result<Vec<Vec<f64>>, Problem> {
    let rows = node.items()?;
    if rows.len() > ROW_COUNT {
        return Err(node.problem_found(so_many_rows(rows.len()), most_rows()));
    }
    rows.map(|row| row.numbers::<BOARD_COUNT>(&limits::FILM_UM).map(Vec::from)).collect()
}

pub(crate) fn so_many_rows(count: usize) -> Phrase {
    phrase!("so-many-rows", "{count} rows", count = count)
}

fn most_rows() -> Phrase {
    phrase!("most-rows", "at most {most} rows, one a foot", most = ROW_COUNT)
}

/// How thick a film is.
pub(crate) fn um(film_m: f64) -> Phrase {
    short(rounded(film_m / M_PER_UM)).into()
}

impl Pattern {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let pattern = node.object(&[
            "length_ft",
            "volume_ml",
            "ratio",
            "thin_to_board",
            "full_from_board",
            "front_ft",
            "end_share",
            "buff_ft",
        ])?;
        Ok(Self {
            length_ft: pattern.get_number("length_ft", &limits::OIL_LENGTH_FT)?,
            volume_ml: pattern.get_number("volume_ml", &limits::OIL_VOLUME_ML)?,
            ratio: pattern.get_number("ratio", &limits::OIL_RATIO)?,
            thin_to_board: pattern.get_number("thin_to_board", &limits::THIN_TO_BOARD)?,
            full_from_board: pattern.get_number("full_from_board", &limits::ZERO_OR_MORE)?,
            front_ft: pattern.get_number("front_ft", &limits::ZERO_OR_MORE)?,
            end_share: pattern.get_number("end_share", &limits::SHARE)?,
            buff_ft: pattern.get_number("buff_ft", &limits::ZERO_OR_MORE)?,
        })
    }

    fn to_physics(self) -> oil::Pattern {
        oil::Pattern {
            length_m: self.length_ft * M_PER_FT,
            volume_m3: self.volume_ml * M3_PER_ML,
            ratio: self.ratio,
            thin_to_board: self.thin_to_board,
            full_from_board: self.full_from_board,
            front_m: self.front_ft * M_PER_FT,
            end_share: self.end_share,
            buff_m: self.buff_ft * M_PER_FT,
        }
    }
}

fn problem(error: &PatternError) -> Problem {
    let value = |unit: f64| short(rounded(error.found / unit));
    let (key, found) = match error.quantity {
        "length_m" => ("length_ft", value(M_PER_FT)),
        "volume_m3" => ("volume_ml", value(M3_PER_ML)),
        "front_m" => ("front_ft", value(M_PER_FT)),
        "buff_m" => ("buff_ft", value(M_PER_FT)),
        other => (other, value(1.0)),
    };
    Problem::new(format!("pattern.{key}"), found.into(), accepted_words(error.accepted))
}
