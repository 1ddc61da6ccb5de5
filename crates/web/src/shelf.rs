//! Reading a shelf file.

use format::ReadShelf;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::wire::{thrown, to_page};

/// Reads the text of a shelf file entry by entry, as a `ReadShelf`.
///
/// # Errors
/// A `Problem` where the file as a whole is wrong.
#[wasm_bindgen]
pub fn read_shelf(text: &str) -> Result<JsValue, JsValue> {
    to_page(&ReadShelf::read(text.as_bytes()).map_err(thrown)?)
}
