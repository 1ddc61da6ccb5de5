//! What Rust says is listed for those who translate it as it is.

#![allow(clippy::expect_used, clippy::panic, reason = "a check that cannot be set up must fail loudly")]

use format::BallFile;
use pithball_tests::words::{fluent, path};

fn listed() -> String {
    std::fs::read_to_string(path()).expect("www/locales/en/said.ftl")
}

#[test]
fn the_list_is_what_the_code_says() {
    assert_eq!(listed(), fluent(), "www/locales/en/said.ftl is stale: run `cargo xtask words`");
}

#[test]
fn a_mistake_names_its_parts() {
    let ball = r#"{ "format": "pithball.ball/1", "name": "x", "diameter_in": 8.5, "cover": { "density_g_cc": 40 }, "pieces": [] }"#;
    let problem = BallFile::read(ball.as_bytes()).expect_err("too dense");
    assert_eq!(problem.message, "The density (g/cc) must be a number above 0 and up to 25, not 40.");
    assert_eq!(problem.message.ids(), ["must-be", "key-density_g_cc", "number-above-to"]);
    let listed = listed();
    assert!(problem.message.ids().iter().all(|id| listed.contains(&format!("\nsaid-{id} = "))));
}
