//! Oil patterns, and the friction on them.

use format::{FrictionCurveDoc, OilFile, OilMapDoc};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::wire::{json_text, thrown, to_page};

/// Checks an oil file, given as text or object, and returns it as an object.
///
/// # Errors
/// A `Problem` where the file is wrong or its numbers do not go together.
#[wasm_bindgen]
pub fn read_oil(file: &JsValue) -> Result<JsValue, JsValue> {
    let file = OilFile::read(json_text(file)?.as_bytes()).map_err(thrown)?;
    file.film().map_err(thrown)?;
    to_page(&file)
}

/// The film of an oil file over the whole lane, as an `OilMap`.
///
/// # Errors
/// A `Problem` where the file is wrong.
#[wasm_bindgen]
pub fn oil_map(file: &JsValue) -> Result<JsValue, JsValue> {
    let file = OilFile::read(json_text(file)?.as_bytes()).map_err(thrown)?;
    let film = file.film().map_err(thrown)?;
    to_page(&OilMapDoc::new(&file, &film))
}

/// Friction by film of a ball file's `cover` under a shot file's
/// `lane.friction` (or null), as a `FrictionCurve`.
///
/// # Errors
/// A `Problem`, its place from `cover` or `friction` on.
#[wasm_bindgen]
pub fn friction_curve(cover: &JsValue, friction: &JsValue) -> Result<JsValue, JsValue> {
    let friction = if friction.is_undefined() { JsValue::NULL } else { friction.clone() };
    to_page(&FrictionCurveDoc::read(json_text(cover)?.as_bytes(), json_text(&friction)?.as_bytes()).map_err(thrown)?)
}
