//! Thousands of balls within their tolerances, shared out among workers.

use format::{BallFile, Problem, TolerancesFile, phrase};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::wire::{json_text, thrown, to_page};

/// A ball and its tolerances made ready to be sampled.
#[wasm_bindgen]
pub struct Scatter(format::Scatter);

#[wasm_bindgen]
impl Scatter {
    /// From a ball file and a tolerances file, each given as text or object.
    ///
    /// # Errors
    /// A `Problem` where a file is wrong or the one is not for the other; its
    /// place begins with `ball` or `tolerances`.
    #[wasm_bindgen(constructor)]
    pub fn new(ball: &JsValue, tolerances: &JsValue) -> Result<Scatter, JsValue> {
        let in_ball = |problem: Problem| thrown(problem.within("ball"));
        let in_tolerances = |problem: Problem| thrown(problem.within("tolerances"));
        let ball = BallFile::read(json_text(ball)?.as_bytes()).map_err(in_ball)?;
        let tolerances = TolerancesFile::read(json_text(tolerances)?.as_bytes()).map_err(in_tolerances)?;
        Ok(Self(format::Scatter::new(&ball, &tolerances).map_err(|problem| thrown(problem.into()))?))
    }

    /// How many units of work there are.
    pub fn units(&self) -> usize {
        self.0.units()
    }

    /// The results of units `from..to`; any worker may do any of them.
    pub fn run(&self, from: usize, to: usize) -> Vec<f64> {
        self.0.run(from, to)
    }

    /// Everything from the results of all units in their order, a `Scattered`.
    ///
    /// # Errors
    /// A `Problem` where that is not what was handed in.
    pub fn merge(&self, results: &[f64]) -> Result<JsValue, JsValue> {
        let scattered = self.0.merge(results).ok_or_else(|| {
            let found = phrase!("so-many-numbers", "{count} numbers", count = results.len());
            let accepted = phrase!("whole-results", "the results of all units in their order");
            let problem = Problem::new("results", found, accepted);
            thrown(problem.saying(phrase!("results-not-whole", "These are not the results of all units.")))
        })?;
        to_page(&scattered)
    }
}
