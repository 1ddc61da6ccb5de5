//! Drilling against what is said of it: how much comes out, how much RG and
//! differential change, and that mirror-image bowlers roll mirror-image shots.

#![allow(clippy::unwrap_used, reason = "a check that cannot be set up must fail loudly")]

use std::fs;
use std::path::Path;

use format::{BallFile, DrilledDoc, Hand, LayoutFile, ShotFile};
use physics::roll::{RigidBall, roll};
use physics::weigh::weigh;

fn scenario(name: &str) -> Vec<u8> {
    fs::read(Path::new(env!("CARGO_MANIFEST_DIR")).join("../scenarios").join(name)).unwrap()
}

fn ball(name: &str) -> BallFile {
    BallFile::read(&scenario(&format!("balls/{name}.ball.json"))).unwrap()
}

fn league() -> LayoutFile {
    LayoutFile::read(&scenario("layouts/league-right.layout.json")).unwrap()
}

fn drilled(file: &BallFile, layout: &LayoutFile) -> DrilledDoc {
    let made = layout.laid.drill(file).unwrap();
    let [before, after] = [file, &made.file].map(|file| weigh(&file.build().unwrap()));
    DrilledDoc::new(file, &before, &made, &after)
}

#[test]
fn about_two_and_a_half_ounces_come_out_and_little_changes() {
    // "Drilling removes about 2.5 oz" (common practice, no source) and "changes
    // RG and differential by about 5 %" (published, as reported). Our balls and
    // grip: 2 to 3.2 oz; RG by under 0.5 %; the differential by under 0.006 in
    // either way, which is a few per cent of most balls' and a quarter of that
    // of a plain ball that hardly has one.
    let names = ["no-1-simple", "no-2-two-piece", "no-3-three-piece", "no-4-nested-core", "no-5-thick-cover"];
    let mut changes = Vec::new();
    for name in names.into_iter().chain(["no-6-five-piece"]) {
        let doc = drilled(&ball(name), &league());
        let out_oz = doc.change.drilled_out_oz;
        assert!((2.0..3.2).contains(&out_oz), "{name}: {out_oz} oz");
        assert!(doc.change.rg_in.low.abs() / doc.before.rg_in.low < 0.005, "{name}");
        let by = doc.change.differential_in / doc.before.differential_in;
        assert!(doc.change.differential_in.abs() < 0.006, "{name}: {} in", doc.change.differential_in);
        changes.push(by.abs());
    }
    changes.sort_by(f64::total_cmp);
    let median = 0.5 * (changes[2] + changes[3]);
    // Half of ours change by under 11 %: about twice the 5 % reported, of which
    // neither the balls nor the grips are known.
    assert!((0.05..0.12).contains(&median), "half of the balls change by less than {median}");
}

#[test]
fn a_left_handers_shot_of_the_ball_drilled_for_the_left_is_the_mirror_image() {
    // A ball that is its own mirror image in y = 0.
    let file = ball("no-3-three-piece");
    let mut right = ShotFile::read(&scenario("shots/opening.shot.json")).unwrap().throw;
    right.drilling = Some(league().laid.drilling);
    let mut left = right.clone();
    left.hand = Hand::Left;
    left.release.launch_angle_deg = -right.release.launch_angle_deg;
    let [a, b] = [right, left].map(|throw| {
        let made = throw.laid().unwrap().drill(&file).unwrap();
        let weighed = weigh(&made.file.build().unwrap());
        roll(&RigidBall::from(&weighed), &throw.shot(&made.file.cover).unwrap()).unwrap()
    });
    let (a_pins, b_pins) = (a.at_pins.unwrap(), b.at_pins.unwrap());
    // Weighing is right to some 1e-7, so that mirror images differ by as little.
    assert!((a_pins.board - b_pins.board).abs() < 1e-3, "{} {}", a_pins.board, b_pins.board);
    assert!((a_pins.entry_angle_rad - b_pins.entry_angle_rad).abs() < 1e-4);
    assert!((a.flare_m - b.flare_m).abs() < 1e-4);
}
