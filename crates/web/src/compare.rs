//! Two shots compared, and one shot thrown again and again.

use format::{AreaDoc, Problem, WhyDoc, WhyProblem};
use physics::area::{Arrival, THROWS, area, throws};
use physics::roll::SameHand;
use physics::why::Thrown;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::wire::{thrown, to_page, weighed};

/// Why shot `b` differs from shot `a`, each with its ball inside, as a `Why`.
/// `same_effort`: the hand gives both balls the same effort, not the same revs.
/// The labels are what the sentence calls them.
///
/// # Errors
/// A `Problem` where one of the shots is wrong, its place under `a` or `b`.
#[wasm_bindgen]
pub fn why(a: &JsValue, b: &JsValue, same_effort: bool, label_a: &str, label_b: &str) -> Result<JsValue, JsValue> {
    let hand = if same_effort { SameHand::Effort } else { SameHand::Revs };
    let doc = WhyDoc::new(&weighed(a)?, &weighed(b)?, hand, [label_a, label_b]).map_err(|problem| {
        thrown(match problem {
            WhyProblem::A(problem) => problem.within("a"),
            WhyProblem::B(problem) => problem.within("b"),
        })
    })?;
    to_page(&doc)
}

/// A shot to throw again and again.
#[wasm_bindgen]
pub struct Throws(Thrown);

#[wasm_bindgen]
impl Throws {
    /// Takes a shot with its ball inside.
    ///
    /// # Errors
    /// A `Problem` where the shot is wrong or cannot be followed.
    #[wasm_bindgen(constructor)]
    pub fn new(file: &JsValue) -> Result<Throws, JsValue> {
        let shot = weighed(file)?.thrown().map_err(thrown)?;
        physics::roll::roll(&shot.ball, &shot.shot).map_err(|error| thrown(Problem::from(&error)))?;
        Ok(Self(shot))
    }

    /// How many throws there are in all.
    #[wasm_bindgen(getter)]
    pub fn count(&self) -> usize {
        THROWS
    }

    /// Where throws `from` up to `to` arrive: board at the pins and entry angle
    /// (rad) of each in turn, NaN where it does not.
    pub fn part(&self, from: usize, to: usize) -> Vec<f64> {
        let arrivals = throws(&self.0.ball, &self.0.shot, from..to);
        arrivals.iter().flat_map(|at| at.map_or([f64::NAN; 2], |at| [at.board, at.entry_angle_rad])).collect()
    }

    /// All parts, one after another, put together, as an `Area`; null where some are missing.
    ///
    /// # Errors
    /// None in practice: only where the page cannot take an object.
    pub fn area(&self, parts: &[f64]) -> Result<JsValue, JsValue> {
        let arrival = |pair: &[f64]| match pair {
            [board, angle] if board.is_finite() => Some(Arrival { board: *board, entry_angle_rad: *angle }),
            _ => None,
        };
        let arrivals: Vec<_> = parts.chunks(2).map(arrival).collect();
        to_page(&area(&self.0.ball, &self.0.shot, &arrivals).as_ref().map(AreaDoc::from))
    }
}
