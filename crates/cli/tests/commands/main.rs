//! The commands as a person or another program runs them.

#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

mod ball;
mod drill;
mod files;
mod ladder;
mod lessons;
mod link;
mod maker;
mod oil;
mod roll;
mod support;
mod why;
