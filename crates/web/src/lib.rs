//! What the page calls: files in, derived documents out, as `www/src/types.ts`
//! says. Holds handles, never state of its own; computes nothing that physics
//! does not say.

mod ball;
mod compare;
mod lesson;
mod maker;
mod oil;
mod scatter;
mod shelf;
mod shot;
// A canvas exists only in a browser.
#[cfg(target_arch = "wasm32")]
mod view;
mod wire;

pub use ball::Ball;
pub use compare::{Throws, same_effort_revs_rpm, why};
pub use lesson::{Lesson, class_table, lesson_names, lesson_problems, read_progress};
pub use maker::{Seek, read_target};
pub use oil::{friction_curve, oil_map, read_oil};
pub use scatter::{Scatter, read_tolerances};
pub use shelf::read_shelf;
pub use shot::{link, read_layout, read_shot, unlink};
#[cfg(target_arch = "wasm32")]
pub use view::View;

use wasm_bindgen::prelude::wasm_bindgen;

/// Makes a mistake of ours readable in the browser's console.
#[wasm_bindgen(start)]
pub fn start() {
    console_error_panic_hook::set_once();
}
