//! Checking a shot or layout file, and putting a shot into a link.

use format::{LayoutFile, ShotFile};
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

/// The fragment of an address, without its #, that holds a shot and its ball,
/// given as text or object.
///
/// # Errors
/// A `Problem` where the file is wrong or too much for a link.
#[wasm_bindgen]
pub fn link(file: &JsValue) -> Result<String, JsValue> {
    ShotFile::read(json_text(file)?.as_bytes()).and_then(|shot| shot.to_link()).map_err(thrown)
}

/// The shot, with its ball inside, that an address or its fragment holds.
///
/// # Errors
/// A `Problem` where the link or what it holds is wrong.
#[wasm_bindgen]
pub fn unlink(link: &str) -> Result<JsValue, JsValue> {
    to_page(&ShotFile::from_link(link).map_err(thrown)?)
}

/// Checks a layout file, given as text or object, and returns it as an object.
///
/// # Errors
/// A `Problem` where the file is wrong.
#[wasm_bindgen]
pub fn read_layout(file: &JsValue) -> Result<JsValue, JsValue> {
    let layout = LayoutFile::read(json_text(file)?.as_bytes()).map_err(thrown)?;
    to_page(&layout)
}
