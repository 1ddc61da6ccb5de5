//! Games on one lane: the same throws over and over, on oil that they wear.
//!
//! Nobody repeats a throw exactly: each is moved sideways by up to
//! [`SPREAD_BOARDS`] either way, evenly spread (van der Corput's sequence), so
//! that the same games give the same lane. Spares are left out. All of it is a
//! model choice, as is what one pass does ([`crate::lane::oil::Wearing`]).

use nalgebra::Vector2;

use crate::lane::Friction;
use crate::lane::oil::{Film, FilmError, FrictionLaw, Oiled, WearRates, Wearing};
use crate::roll::{RigidBall, Shot, ShotError, trace};

/// First balls in a game: ten frames, and two for a last frame of strikes.
pub const SHOTS_A_GAME: u32 = 12;
/// How far from its line a throw may lie.
pub const SPREAD_BOARDS: f64 = 1.5;
/// Time between the points of a path: some 8 cm apart.
const INTERVAL_S: f64 = 0.01;
/// A throw starts on the lane, wherever its line is.
const BOARDS: (f64, f64) = (0.5, 39.5);

/// One who bowls on the lane.
#[derive(Clone, Debug, PartialEq)]
pub struct Thrower {
    /// The ball.
    pub ball: RigidBall,
    /// The throw, its lane aside.
    pub shot: Shot,
    /// Friction of this ball by film.
    pub law: FrictionLaw,
}

/// Why games could not be followed.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum WearError {
    /// A throw cannot be followed.
    #[error("thrower {thrower}: {error}")]
    Throw {
        /// Whose, counted from 0.
        thrower: usize,
        /// Why.
        error: ShotError,
    },
    /// The oil that is left is no film.
    #[error(transparent)]
    Film(#[from] FilmError),
}

impl Thrower {
    /// The throw on a film.
    #[must_use]
    pub fn on(&self, film: Film) -> Shot {
        Shot { lane: Friction::oiled(Oiled { film, law: self.law }), ..self.shot.clone() }
    }
}

/// A game in which each of the throwers throws [`SHOTS_A_GAME`] balls, taking
/// turns. `game` counts from 0 and says which throws of the spread these are.
///
/// # Errors
/// Where a throw cannot be followed.
pub fn play(lane: &mut Wearing, throwers: &[Thrower], rates: &WearRates, game: u32) -> Result<(), WearError> {
    for i in 0..SHOTS_A_GAME {
        let aside = SPREAD_BOARDS * (2.0 * halved(game * SHOTS_A_GAME + i + 1) - 1.0);
        for (thrower, who) in throwers.iter().enumerate() {
            let mut shot = who.on(lane.film()?);
            shot.release.board = (shot.release.board + aside).clamp(BOARDS.0, BOARDS.1);
            let run = trace(&who.ball, &shot, INTERVAL_S).map_err(|error| WearError::Throw { thrower, error })?;
            let path_m: Vec<Vector2<f64>> = run.samples.iter().map(|sample| sample.position_m).collect();
            lane.pass(&path_m, rates);
        }
    }
    Ok(())
}

/// Van der Corput's sequence in base 2: the bits of a number mirrored at the
/// point, evenly spread over 0 to 1.
fn halved(n: u32) -> f64 {
    f64::from(n.reverse_bits()) / 4_294_967_296.0
}
