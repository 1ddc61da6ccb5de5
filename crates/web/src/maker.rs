//! The maker's questions: cores for wanted numbers, levers, maps, pours.

use format::{AxisAsked, BallFile, BallMapDoc, FiguresDoc, LeverDoc, Problem, Seeker, TargetFile};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::ball::Ball;
use crate::wire::{json_text, thrown, to_page};

/// A target made ready for a ball.
#[wasm_bindgen]
pub struct Seek(Seeker);

#[wasm_bindgen]
impl Seek {
    /// From a ball file and a target file, each given as text or object.
    ///
    /// # Errors
    /// A `Problem` where a file is wrong or the one is not for the other; its
    /// place begins with `ball` or `target`.
    #[wasm_bindgen(constructor)]
    pub fn new(ball: &JsValue, target: &JsValue) -> Result<Seek, JsValue> {
        let in_ball = |problem: Problem| thrown(problem.within("ball"));
        let in_target = |problem: Problem| thrown(problem.within("target"));
        let ball = BallFile::read(json_text(ball)?.as_bytes()).map_err(in_ball)?;
        let target = TargetFile::read(json_text(target)?.as_bytes()).map_err(in_target)?;
        Ok(Self(Seeker::new(&ball, &target).map_err(|problem| thrown(problem.into()))?))
    }

    /// How many starts there are.
    pub fn units(&self) -> usize {
        self.0.units()
    }

    /// The results of starts `from..to`; any worker may do any of them.
    pub fn run(&self, from: usize, to: usize) -> Vec<f64> {
        self.0.run(from, to)
    }

    /// Everything from the results of the first so many starts in their order, a `Sought`.
    ///
    /// # Errors
    /// A `Problem` where that is not what was handed in.
    pub fn merge(&self, results: &[f64]) -> Result<JsValue, JsValue> {
        let sought = self.0.merge(results).ok_or_else(|| {
            thrown(Problem {
                place: "results".to_owned(),
                found: format!("{} numbers", results.len()),
                accepted: "the results of whole starts in their order".to_owned(),
                message: "These are not the results of whole starts.".to_owned(),
            })
        })?;
        to_page(&sought)
    }
}

/// Checks a target file, given as text or object, and returns it as an object.
///
/// # Errors
/// A `Problem` where the file is wrong.
#[wasm_bindgen]
pub fn read_target(file: &JsValue) -> Result<JsValue, JsValue> {
    to_page(&TargetFile::read(json_text(file)?.as_bytes()).map_err(thrown)?)
}

#[wasm_bindgen]
impl Ball {
    /// Every control of the ball, a `Control[]`.
    ///
    /// # Errors
    /// None in practice: only where the page cannot take an object.
    pub fn controls(&self) -> Result<JsValue, JsValue> {
        to_page(&self.file.control_docs())
    }

    /// What controls `from..to` move, a `Lever[]`; any worker may do any of them.
    ///
    /// # Errors
    /// None in practice: the ball is one that can be made.
    pub fn levers(&self, from: usize, to: usize) -> Result<JsValue, JsValue> {
        let levers: Vec<LeverDoc> = self.file.lever_docs(from, to).map_err(thrown)?;
        to_page(&levers)
    }

    /// What every control moves, ranked, a `Levers`.
    ///
    /// # Errors
    /// None in practice: the ball is one that can be made.
    pub fn all_levers(&self) -> Result<JsValue, JsValue> {
        let levers = self.file.lever_docs(0, self.file.controls()).map_err(thrown)?;
        to_page(&self.file.levers(levers))
    }

    /// Rows `from..to` of a map over two controls, each `(Figures | null)[]`.
    ///
    /// # Errors
    /// A `Problem` at `x` or `y` where there is no such control or range.
    #[allow(clippy::too_many_arguments, reason = "two sides of a map, flat for the page")]
    pub fn map_rows(
        &self,
        x: &str,
        x_range: &[f64],
        y: &str,
        y_range: &[f64],
        count: usize,
        from: usize,
        to: usize,
    ) -> Result<JsValue, JsValue> {
        let asked = [axis(x, x_range, count), axis(y, y_range, count)];
        to_page(&self.file.map_rows(asked, from, to).map_err(thrown)?)
    }

    /// A map without its rows: both sides, the present ball, the limits; a `BallMap`.
    ///
    /// # Errors
    /// As `map_rows`.
    pub fn map(&self, x: &str, x_range: &[f64], y: &str, y_range: &[f64], count: usize) -> Result<JsValue, JsValue> {
        let asked = [axis(x, x_range, count), axis(y, y_range, count)];
        let rows: Vec<Vec<Option<FiguresDoc>>> = Vec::new();
        let map: BallMapDoc = self.file.map(asked, rows).map_err(thrown)?;
        to_page(&map)
    }

    /// The ball's file with two controls at other values, a `BallFile`; whether
    /// it can be made is another question.
    ///
    /// # Errors
    /// A `Problem` at `control` or `value` where there is none such.
    pub fn turned(&self, x: &str, x_value: f64, y: &str, y_value: f64) -> Result<JsValue, JsValue> {
        let turned = self.file.turned(x, x_value).and_then(|file| file.turned(y, y_value));
        to_page(&turned.map_err(thrown)?)
    }

    /// How the ball is poured, a `Poured`; a usual waste (model choice) where it is not given.
    ///
    /// # Errors
    /// A `Problem` where the waste is not 0 to 0.9.
    pub fn pour(&self, waste: Option<f64>) -> Result<JsValue, JsValue> {
        to_page(&self.file.pour(waste).map_err(thrown)?)
    }
}

fn axis<'a>(control: &'a str, range: &[f64], count: usize) -> AxisAsked<'a> {
    let end = |n: usize| range.get(n).copied().unwrap_or(f64::NAN);
    AxisAsked { control, from: end(0), to: end(1), count }
}
