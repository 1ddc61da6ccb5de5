//! From a file to a built ball or shot, with the physics' complaints put at
//! their places in the file.

use physics::ball::Ball;
use physics::check::{Place, RecipeError};
use physics::units::{KG_M3_PER_G_CC, M_PER_IN};

use crate::ball::BallFile;
use crate::problem::Problem;
use crate::tree::{read_off, rounded, short};
use crate::{MAX_PROFILE_POINTS, MAX_SOLIDS, MIN_PROFILE_POINTS};
use crate::{Phrase, phrase};

impl BallFile {
    /// Builds the ball this file writes down.
    ///
    /// # Errors
    /// Where a piece sticks out of the ball or a profile crosses itself.
    pub fn build(&self) -> Result<Ball, Problem> {
        Ball::new(&self.recipe()).map_err(|error| self.problem(&error))
    }

    pub(crate) fn problem(&self, error: &RecipeError) -> Problem {
        match error {
            RecipeError::Value { place, what, found, accepted } => {
                let (key, found) = in_file_units(*place, what, *found);
                Problem::new(join(place_in_file(*place), key), found.into(), accepted_words(accepted))
            }
            RecipeError::TooManyParts { found } => Problem::new("pieces", so_many_parts(*found), most_parts()),
            RecipeError::ProfilePoints { place, found } => {
                Problem::new(join(place_in_file(*place), "shape.profile_in"), so_many_points(*found), profile_points())
            }
            RecipeError::ProfileCrosses { place, first, second } => Problem::new(
                join(place_in_file(*place), "shape.profile_in"),
                phrase!(
                    "sides-cross",
                    "the side from point {first} crosses the side from point {second}",
                    first = *first,
                    second = *second
                ),
                phrase!("no-crossing", "an outline that does not cross itself, its last point joined to its first"),
            )
            .saying(phrase!("profile-crosses", "The profile crosses itself.")),
            RecipeError::SticksOut { piece, reach_m, radius_m } => {
                let name = self.pieces.get(*piece).map_or("", |piece| &piece.name);
                let inches = |metres: f64| short(rounded(metres / M_PER_IN));
                Problem::new(
                    format!("pieces[{piece}]"),
                    phrase!("reaches", "it reaches {far} in from the ball's centre", far = inches(*reach_m)),
                    phrase!("up-to-radius", "up to {radius} in, the ball's radius", radius = inches(*radius_m)),
                )
                .saying(phrase!(
                    "sticks-out",
                    "The piece {name} sticks out of the ball by {by} in.",
                    name = format!("{name:?}"),
                    by = read_off((reach_m - radius_m) / M_PER_IN)
                ))
            }
            RecipeError::HoleLeadsOut { hole } => Problem::new(
                format!("holes[{hole}].axis"),
                phrase!("direction-out", "a direction out of the ball"),
                direction_in(),
            )
            .saying(axis_points_out()),
        }
    }
}

/// What physics accepts: fixed English texts, each known by its words.
pub(crate) fn accepted_words(accepted: &str) -> Phrase {
    Phrase::known("accepted", accepted, accepted)
}

pub(crate) fn so_many_parts(count: usize) -> Phrase {
    phrase!("so-many-parts", "{count} pieces, cuts and holes", count = count)
}

pub(crate) fn most_parts() -> Phrase {
    phrase!("most-parts", "at most {most} pieces, cuts and holes in all", most = MAX_SOLIDS)
}

pub(crate) fn so_many_points(count: usize) -> Phrase {
    phrase!("so-many-points", "{count} points", count = count)
}

pub(crate) fn profile_points() -> Phrase {
    phrase!("profile-points", "{least} to {most} points [r, z]", least = MIN_PROFILE_POINTS, most = MAX_PROFILE_POINTS)
}

pub(crate) fn direction_in() -> Phrase {
    phrase!("direction-in", "a direction into the ball: one whose product with entry is below 0")
}

pub(crate) fn axis_points_out() -> Phrase {
    phrase!("axis-points-out", "The hole's axis points out of the ball.")
}

fn place_in_file(place: Place) -> String {
    match place {
        Place::Ball => String::new(),
        Place::Cover => "cover".to_owned(),
        Place::Piece(piece) => format!("pieces[{piece}]"),
        Place::Cut(piece, cut) => format!("pieces[{piece}].cuts[{cut}]"),
        Place::Hole(hole) => format!("holes[{hole}]"),
    }
}

fn join(place: String, key: &str) -> String {
    if place.is_empty() { key.to_owned() } else { format!("{place}.{key}") }
}

/// The file's key for one of the physics' quantities, and its value in the
/// file's unit.
fn in_file_units(place: Place, what: &str, found: f64) -> (&'static str, String) {
    let shaped = matches!(place, Place::Piece(_) | Place::Cut(..));
    let inches = short(rounded(found / M_PER_IN));
    match what {
        "density_kg_m3" => ("density_g_cc", short(found / KG_M3_PER_G_CC)),
        "at_m" => ("at_in", inches),
        "turn_rad" => ("turn_deg", short(found.to_degrees())),
        "squash" => ("shape.squash", short(found)),
        "diameter_m" if shaped => ("shape.diameter_in", inches),
        "diameter_m" => ("diameter_in", inches),
        "depth_m" => ("depth_in", inches),
        "size_m" => ("shape.size_in", inches),
        "height_m" => ("shape.height_in", inches),
        "bottom_diameter_m" => ("shape.bottom_diameter_in", inches),
        "top_diameter_m" => ("shape.top_diameter_in", inches),
        "ring_diameter_m" => ("shape.ring_diameter_in", inches),
        "tube_diameter_m" => ("shape.tube_diameter_in", inches),
        "profile_m r" | "profile_m z" => ("shape.profile_in", inches),
        "entry" => ("entry", short(found)),
        "axis" => ("axis", short(found)),
        _ => ("shape", inches),
    }
}
