//! Cores for wanted numbers, their starts shared out among workers.

use format::{BallFile, Problem, Seeker, TargetFile, phrase};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

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
            let found = phrase!("so-many-numbers", "{count} numbers", count = results.len());
            let accepted = phrase!("start-results", "the results of whole starts in their order");
            let problem = Problem::new("results", found, accepted);
            thrown(problem.saying(phrase!("no-start-results", "These are not the results of whole starts.")))
        })?;
        to_page(&sought)
    }
}
