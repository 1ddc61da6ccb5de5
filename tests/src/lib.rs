//! Shared helpers for the checks in `tests/tests`: recipes in inches, closed
//! forms, comparisons that say what differs, random balls.

#![allow(clippy::expect_used, clippy::panic, reason = "a check that cannot be set up must fail loudly")]

pub mod body;
pub mod close;
pub mod hostile;
mod json;
pub mod make;
pub mod many;
pub mod mutate;
pub mod random;
pub mod rolls;
pub mod turned;
pub mod words;

pub use json::{reference, reference_path};
