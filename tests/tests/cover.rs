//! Covers of twenty-five assorted balls against mesh booleans and the material
//! rule along radii (tests/reference/cover_trimesh.py), to the uncertainty the
//! script recorded beside each number; and the trade's facts about covers.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a check that cannot be set up must fail loudly")]

use std::path::PathBuf;

use format::{BallFile, CoverDoc, Form};
use physics::ball::Ball;
use physics::cover::{Beside, Gap, cover};
use physics::units::M_PER_IN;
use pithball_tests::{reference, reference_path};
use serde_json::Value;

fn number(of: &Value, key: &str) -> f64 {
    of[key].as_f64().unwrap_or_else(|| panic!("no number {key} in {of}"))
}

/// The true number lies between `least_m − error_m` and `least_m`.
fn off(least_m: f64, error_m: f64, expected_m: f64) -> f64 {
    (least_m - error_m - expected_m).max(expected_m - least_m)
}

fn check(reference: &Value) -> Vec<String> {
    let name = reference["file"].as_str().unwrap();
    let json = std::fs::read(reference_path(name)).unwrap();
    let recipe = BallFile::read(&json).unwrap_or_else(|e| panic!("{name}: {e}")).recipe();
    let ball = Ball::new(&recipe).unwrap_or_else(|e| panic!("{name}: {e}"));
    let got = cover(&ball);
    let mut wrong = Vec::new();
    let mut hold = |what: &str, off: f64, allowed: f64| {
        if off.is_nan() || off > allowed {
            wrong.push(format!("{name}: {what} off by {off:e}, allowed {allowed:e}"));
        }
    };
    let thinnest = got.thinnest.as_ref().unwrap_or_else(|| panic!("{name}: no core"));
    let uncertain_m = number(reference, "thinnest_uncertainty_m");
    let off_m = off(thinnest.thickness_m, thinnest.error_m, number(reference, "thinnest_m"));
    hold("thinnest", off_m, uncertain_m);
    hold("error of the thinnest", thinnest.error_m, 0.004 * M_PER_IN);
    // Both means are sums over some thousand directions.
    hold("mean", (got.mean_m - number(reference, "mean_m")).abs(), 0.005 * M_PER_IN);
    // A boundary along a meridian is placed to one column in 96 by the script.
    let share = number(reference, "under_an_inch_share");
    hold("share under an inch", (got.under_most_share - share).abs(), 1.0 / 96.0);
    for (n, hole) in got.holes.iter().enumerate() {
        let gap = hole.to_core.unwrap_or(Gap { least_m: f64::NAN, error_m: 0.0 });
        let expected_m = reference["to_core_m"][n].as_f64().unwrap();
        let uncertain_m = reference["to_core_uncertainty_m"][n].as_f64().unwrap();
        hold(&format!("hole {n} to the core"), off(gap.least_m, gap.error_m, expected_m), uncertain_m);
        hold(&format!("error of hole {n}"), gap.error_m, 0.002 * M_PER_IN);
    }
    let webs = reference["webs"].as_array().unwrap();
    assert_eq!(webs.len(), got.webs.len(), "{name}");
    for (web, expected) in got.webs.iter().zip(webs) {
        assert_eq!(serde_json::json!(web.holes), expected["holes"], "{name}");
        let off_m = off(web.gap.least_m, web.gap.error_m, number(expected, "least_m"));
        hold(&format!("web {:?}", web.holes), off_m, number(expected, "uncertainty_m"));
        hold("error of the web", web.gap.error_m, 1e-6 * M_PER_IN);
    }
    wrong
}

#[test]
fn assorted_covers_agree_with_mesh_booleans() {
    let file = reference("cover_trimesh.json");
    let balls = file["balls"].as_array().unwrap();
    assert!(balls.len() >= 20);
    let wrong: Vec<String> = balls.iter().flat_map(check).collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

fn house(name: &str) -> BallFile {
    let path: PathBuf = [env!("CARGO_MANIFEST_DIR"), "..", "scenarios", "balls", name].iter().collect();
    BallFile::read(&std::fs::read(path).unwrap()).unwrap()
}

fn beside(file: &BallFile) -> Beside {
    cover(&file.build().unwrap()).beside_usual()
}

#[test]
fn a_core_in_a_thick_cover_comes_out_better_than_a_thin_cover_over_a_big_outer_core() {
    // Common practice, no source: a thicker cover is more durable; a thin one over a big outer core tends to
    // separate and crack with age. Cover ½ in to 1 in on common balls, more without an outer core.
    let thick = house("no-5-thick-cover.ball.json");
    let common = house("no-3-three-piece.ball.json");
    let mut thin = common.clone();
    thin.pieces[0].shape.form = Form::Sphere { diameter_in: 7.7 };
    assert_eq!([&thin, &common, &thick].map(beside), [Beside::Thinner, Beside::Usual, Beside::Thicker]);
    assert!(beside(&thin) < beside(&common) && beside(&common) < beside(&thick) && Beside::Thicker < Beside::NoCore);
    let doc = |file: &BallFile| CoverDoc::new(file, &file.build().unwrap());
    let (thick, thin) = (doc(&thick), doc(&thin));
    let thinnest = |doc: &CoverDoc| doc.thinnest.as_ref().unwrap().thickness_in;
    assert!(thinnest(&thick) > 3.0 * thinnest(&thin));
    // Nothing of the one stands on a core close beneath, all of the other does, and its core is far larger.
    assert_eq!((thick.under_most_share, thin.under_usual_share), (0.0, 1.0));
    assert!(thick.core_share < 0.3 * thin.core_share);
    assert_eq!(thin.thinnest.unwrap().piece, "outer core");
}

#[test]
fn every_ball_of_the_house_has_the_cover_of_common_balls_or_more() {
    for name in ["1-simple", "2-two-piece", "3-three-piece", "4-nested-core", "5-thick-cover", "6-five-piece"] {
        assert!(beside(&house(&format!("no-{name}.ball.json"))) >= Beside::Usual, "{name}");
    }
}
