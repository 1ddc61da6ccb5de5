//! What the page calls: files in, derived documents out, as `www/src/types/`
//! says. Holds handles, never state of its own; computes nothing that physics
//! does not say.
//!
//! The page has two modules, built from here with one feature each: `first` has
//! what the first picture and every edit need, `more` is fetched in the quiet
//! after it and has lessons and the work of the workers. Both know a `Ball`; an
//! object of the one is none of the other.

mod ball;
mod wire;

#[cfg(feature = "first")]
mod maker;
#[cfg(feature = "first")]
mod oil;
#[cfg(feature = "first")]
mod shelf;
#[cfg(feature = "first")]
mod shot;
// A canvas exists only in a browser.
#[cfg(all(feature = "first", target_arch = "wasm32"))]
mod view;

#[cfg(feature = "more")]
mod compare;
#[cfg(feature = "more")]
mod jobs;
#[cfg(feature = "more")]
mod lesson;
#[cfg(feature = "more")]
mod scatter;
#[cfg(feature = "more")]
mod seek;

pub use ball::Ball;

#[cfg(feature = "first")]
pub use maker::{read_target, read_tolerances};
#[cfg(feature = "first")]
pub use oil::{friction_curve, oil_map, read_oil};
#[cfg(feature = "first")]
pub use shelf::read_shelf;
#[cfg(feature = "first")]
pub use shot::{link, read_layout, read_shot, same_effort_revs_rpm, unlink};
#[cfg(all(feature = "first", target_arch = "wasm32"))]
pub use view::View;

#[cfg(feature = "more")]
pub use compare::{Throws, why};
#[cfg(feature = "more")]
pub use lesson::{Lesson, class_table, lesson_names, lesson_problems, read_progress};
#[cfg(feature = "more")]
pub use scatter::Scatter;
#[cfg(feature = "more")]
pub use seek::Seek;

use wasm_bindgen::prelude::wasm_bindgen;

/// Makes a mistake of ours readable in the browser's console.
#[wasm_bindgen(start)]
pub fn start() {
    console_error_panic_hook::set_once();
}
