//! Draws what physics says: the ball whole, sawn, or pulled apart.
//!
//! Nothing physical is computed here. Surfaces come from the recipe's shapes,
//! what lies on either side of them and what a pixel shows from
//! [`physics::ball::Ball`], cut faces from [`physics::section`].

mod arrange;
mod camera;
mod convert;
mod cover;
mod gpu;
mod look;
mod marks;
mod model;
mod pick;
mod scene;
mod skin;
mod surface;

pub use camera::{Camera, Stance};
pub use cover::{CoverLook, Globe, LIMITS};
pub use look::{Hatching, Lines, Look, Paint};
pub use marks::{Label, Mark};
pub use model::Model;
pub use pick::{Pick, pick};
pub use scene::Scene;
pub use skin::{Mesh, number};
pub use three_d::context::Context as GlContext;
