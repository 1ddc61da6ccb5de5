//! Writes `www/locales/en/said.ftl`: what Rust says to a reader of the page.

#![allow(clippy::expect_used, reason = "a program of the tests: what goes wrong must fail loudly")]

use pithball_tests::words::{fluent, path};

fn main() {
    std::fs::write(path(), fluent()).expect("a file");
}
