//! Shots against scipy's DOP853 at a relative tolerance of 1e-12, on equations
//! written independently (tests/reference/roll_scipy.py and oil_scipy.py).

#![allow(clippy::unwrap_used, clippy::panic, reason = "a check that cannot be set up must fail loudly")]

use physics::roll::roll;
use pithball_tests::reference;
use pithball_tests::rolls::{ball, differences, lane, shot};
use serde_json::Value;

/// Rolls every shot of a reference file and holds it to the result there.
#[track_caller]
fn agree(file: &Value, count: usize) {
    let shots = file["shots"].as_array().unwrap();
    assert_eq!(shots.len(), count);
    let wrong: Vec<String> = shots
        .iter()
        .flat_map(|reference| {
            let got = roll(&ball(reference), &shot(reference, lane(reference, &file["lopsided_um"])));
            differences(reference, &got.unwrap_or_else(|error| panic!("{}: {error}", reference["name"])))
        })
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn fifteen_shots_in_zones_agree_with_scipy() {
    agree(&reference("roll_scipy.json"), 15);
}

/// The film is scipy's own spline over the cells, a pattern's cells are its
/// profiles integrated by scipy's quadrature, and the law is written anew.
#[test]
fn ten_shots_on_oil_agree_with_scipy() {
    agree(&reference("oil_scipy.json"), 10);
}
