//! Every mistake in a file is named with its place and what was found there.

#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

mod ball;
mod lane;
mod layout;
mod maker;
mod progress;
#[path = "../../../../tests/shared/sayable.rs"]
mod sayable;
mod support;
mod text;
