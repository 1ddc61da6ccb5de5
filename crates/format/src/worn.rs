//! What `wear` prints: a lane game after game.

use physics::lane::oil::{Film, FilmError, WEAR_RATES, Wearing};
use physics::roll::{RigidBall, roll};
use physics::units::M_PER_FT;
use physics::wear::{SHOTS_A_GAME, SPREAD_BOARDS, Thrower, WearError, play};
use serde::Serialize;

use crate::ball::Cover;
use crate::lane::{Lane, OilRef, oil_itself};
use crate::oil::{M_PER_UM, M3_PER_ML, Oil, OilFile, so_many_rows, um};
use crate::phrase;
use crate::problem::Problem;
use crate::rolled::SummaryDoc;
use crate::shot::Throw;

/// Most games that are followed.
pub const MAX_GAMES: u32 = 40;

/// A lane's oil over games, and what the same throw does on it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WornDoc {
    /// First balls of each thrower in a game.
    pub shots_a_game: u32,
    /// How far from its line a throw may lie.
    pub spread_boards: f64,
    /// Share of the film in its band, a board wide, that a ball takes up in one pass.
    pub taken_up_share: f64,
    /// Distance over which a ball lays down all but 1/e of the oil on it.
    pub carried_ft: f64,
    /// The fresh lane, and the lane after each game.
    pub games: Vec<WornGameDoc>,
    /// The oil after the last game, a map.
    pub oil: OilFile,
    /// What this is.
    pub model: &'static str,
}

/// A lane after so many games.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WornGameDoc {
    /// How many.
    pub game: u32,
    /// Oil on the lane.
    pub volume_ml: f64,
    /// Oil gone with the balls; with the oil on the lane always the same.
    pub taken_away_ml: f64,
    /// Oil taken up and laid down again, all of it summed.
    pub carried_down_ml: f64,
    /// The end of the last foot whose mean film is over 0.05 µm.
    pub length_ft: f64,
    /// Film inside over film outside.
    pub ratio: Option<f64>,
    /// What the first shot, thrown on its line, does now.
    pub summary: SummaryDoc,
}

/// Follows throws on one lane over `games`. Each is a ball, its cover and a
/// shot; they take turns on the oil of the first shot.
///
/// # Errors
/// Where the first shot's lane has no oil, `games` is 0 or above
/// [`MAX_GAMES`], or a throw cannot be followed; places are those of the first
/// shot.
pub fn wear(throws: &[(RigidBall, &Cover, &Throw)], games: u32) -> Result<WornDoc, Problem> {
    if !(1..=MAX_GAMES).contains(&games) {
        return Err(Problem::new(
            "games",
            games.into(),
            phrase!("so-many-games", "1 to {most} games", most = MAX_GAMES),
        ));
    }
    let Some((_, _, Throw { lane: Lane::Oiled(lane), .. })) = throws.first() else {
        return Err(Problem::new(
            "lane",
            phrase!("friction-in-zones", "friction in zones"),
            phrase!("lane-with-oil", "a lane with oil"),
        )
        .saying(phrase!("only-oil-wears", "Only oil wears: this lane's friction is given in zones.")));
    };
    let OilRef::Object(fresh) = &lane.oil else {
        return Err(Problem::new("lane.oil", phrase!("a-path", "a path"), oil_itself()));
    };
    let mut throwers = Vec::with_capacity(throws.len());
    for (ball, cover, throw) in throws {
        let own = if let Lane::Oiled(own) = &throw.lane { own } else { lane };
        let law = own.friction.unwrap_or_default().law(cover).map_err(|problem| problem.within("lane.friction"))?;
        let shot = Throw { lane: Lane::Oiled(lane.clone()), ..(*throw).clone() }.shot(cover)?;
        throwers.push(Thrower { ball: *ball, shot, law });
    }
    let mut wearing = Wearing::new(&fresh.film().map_err(|problem| problem.within("lane.oil"))?);
    let mut after = Vec::new();
    for game in 0..=games {
        if game > 0 {
            play(&mut wearing, &throwers, &WEAR_RATES, game - 1).map_err(|error| problem(&error))?;
        }
        let film = wearing.film().map_err(|error| problem(&error.into()))?;
        after.push(WornGameDoc::new(game, &wearing, &film, &throwers[0])?);
    }
    let film = wearing.film().map_err(|error| problem(&error.into()))?;
    Ok(WornDoc {
        shots_a_game: SHOTS_A_GAME,
        spread_boards: SPREAD_BOARDS,
        taken_up_share: WEAR_RATES.taken_up,
        carried_ft: WEAR_RATES.carried_m / M_PER_FT,
        games: after,
        oil: worn_file(fresh, &film, games),
        model: "A model choice: no published figures say how much oil a ball takes up and carries.",
    })
}

impl WornGameDoc {
    fn new(game: u32, lane: &Wearing, film: &Film, first: &Thrower) -> Result<Self, Problem> {
        let summary = roll(&first.ball, &first.on(film.clone())).map_err(|error| Problem::from(&error))?;
        Ok(Self {
            game,
            volume_ml: film.volume_m3() / M3_PER_ML,
            taken_away_ml: lane.taken_away_m3() / M3_PER_ML,
            carried_down_ml: lane.carried_down_m3() / M3_PER_ML,
            length_ft: (film.length_m() / M_PER_FT).round(),
            ratio: film.ratio(),
            summary: SummaryDoc::from(&summary),
        })
    }
}

/// The map of a worn pattern, without the dry feet at its end.
fn worn_file(fresh: &OilFile, film: &Film, games: u32) -> OilFile {
    let cells = film.cells_m();
    let oiled = cells.iter().rposition(|row| row.iter().any(|&cell| cell > 0.0)).map_or(0, |row| row + 1);
    let film_um = cells[..oiled].iter().map(|row| row.iter().map(|cell| cell / M_PER_UM).collect()).collect();
    let so_many = if games == 1 { "1 game".to_owned() } else { format!("{games} games") };
    OilFile {
        format: fresh.format,
        name: format!("{} after {so_many}", fresh.name),
        note: Some("Worn by a model, not measured.".to_owned()),
        oil: Oil::Map { film_um },
    }
}

fn problem(error: &WearError) -> Problem {
    match error {
        WearError::Throw { error, .. } => Problem::from(error),
        WearError::Film(error) => {
            let found = match *error {
                FilmError::Rows { found } => so_many_rows(found),
                FilmError::Thickness { row, board, found_m } => phrase!(
                    "film-at",
                    "a film of {thick} µm on board {board} at {far} ft",
                    thick = um(found_m),
                    board = board,
                    far = row
                ),
            };
            Problem::new("lane.oil", found, phrase!("stays-film", "oil that stays a film"))
        }
    }
}
