//! Checking a shot file.

use format::ShotFile;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::wire::{json_text, thrown, to_page};

/// Checks a shot file, given as text or object, and returns it as an object.
///
/// # Errors
/// A `Problem` where the file is wrong.
#[wasm_bindgen]
pub fn read_shot(file: &JsValue) -> Result<JsValue, JsValue> {
    let shot = ShotFile::read(json_text(file)?.as_bytes()).map_err(thrown)?;
    to_page(&shot)
}
