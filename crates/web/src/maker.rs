//! The maker's files, and what of a ball can be turned up or down.

use format::{TargetFile, TolerancesFile};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::ball::Ball;
use crate::wire::{json_text, thrown, to_page};

/// Checks a target file, given as text or object, and returns it as an object.
///
/// # Errors
/// A `Problem` where the file is wrong.
#[wasm_bindgen]
pub fn read_target(file: &JsValue) -> Result<JsValue, JsValue> {
    to_page(&TargetFile::read(json_text(file)?.as_bytes()).map_err(thrown)?)
}

/// Checks a tolerances file, given as text or object, and returns it as an object.
///
/// # Errors
/// A `Problem` where the file is wrong.
#[wasm_bindgen]
pub fn read_tolerances(file: &JsValue) -> Result<JsValue, JsValue> {
    to_page(&TolerancesFile::read(json_text(file)?.as_bytes()).map_err(thrown)?)
}

#[wasm_bindgen]
impl Ball {
    /// Tolerances to begin with for this ball (model choice), a `TolerancesFile`.
    ///
    /// # Errors
    /// None in practice: only where the page cannot take an object.
    pub fn usual_tolerances(&self) -> Result<JsValue, JsValue> {
        to_page(&TolerancesFile::usual(&self.weighed))
    }

    /// Every control of the ball, a `Control[]`.
    ///
    /// # Errors
    /// None in practice: only where the page cannot take an object.
    pub fn controls(&self) -> Result<JsValue, JsValue> {
        to_page(&self.file.control_docs())
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
}
