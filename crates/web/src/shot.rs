//! Checking a shot or layout file, putting a shot into a link, and the same hand with another ball.

use format::{LayoutFile, ShotFile};
use physics::roll::SameHand;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::wire::{json_text, thrown, to_page, weighed};

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

/// Revs with which the ball of shot `b` leaves a hand that gives it the effort
/// that it gives the ball of shot `a`, where the revs of `b` are meant for that
/// ball. Each shot with its ball inside.
///
/// # Errors
/// A `Problem` where one of the shots is wrong.
#[wasm_bindgen]
pub fn same_effort_revs_rpm(a: &JsValue, b: &JsValue) -> Result<f64, JsValue> {
    let (a, b) = (weighed(a)?.thrown().map_err(thrown)?, weighed(b)?.thrown().map_err(thrown)?);
    let reference_kg_m2 = physics::roll::release_inertia_kg_m2(&a.ball, &a.shot);
    Ok(SameHand::Effort.spin_rad_s(&b.ball, &b.shot, reference_kg_m2) / physics::units::RAD_S_PER_RPM)
}
