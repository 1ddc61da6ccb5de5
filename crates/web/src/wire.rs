//! Values between the page and the module.

use format::{Problem, ShotFile, WeighedShot, in_parts};
use serde::Serialize;
use wasm_bindgen::JsValue;

/// A document as a plain object of the page; what is missing is `null`, what is
/// said has its id and parts.
pub(crate) fn to_page(document: &impl Serialize) -> Result<JsValue, JsValue> {
    in_parts(|| document.serialize(&serde_wasm_bindgen::Serializer::json_compatible())).map_err(JsValue::from)
}

/// What the page throws for a mistake in a file.
pub(crate) fn thrown(problem: Problem) -> JsValue {
    to_page(&problem).unwrap_or_else(|error| error)
}

/// The JSON text of a file given as text or as the page's object.
pub(crate) fn json_text(file: &JsValue) -> Result<String, JsValue> {
    if let Some(text) = file.as_string() {
        return Ok(text);
    }
    // `JSON.stringify` gives undefined for what is no JSON value.
    let text = js_sys::JSON::stringify(file)?;
    Ok(text.as_string().unwrap_or_default())
}

/// A shot file with its ball inside, given as text or object, weighed.
pub(crate) fn weighed(file: &JsValue) -> Result<WeighedShot, JsValue> {
    ShotFile::read(json_text(file)?.as_bytes()).and_then(|shot| shot.weighed()).map_err(thrown)
}
