//! Files without a mistake, and how one put into them is told.

use crate::sayable::assert_sayable;
use pithball_format::{BallFile, OilFile, Problem, ShotFile, in_parts};
use serde_json::json;

pub(crate) const BALL: &str = r#"{
  "format": "pithball.ball/1",
  "name": "Two-piece sketch",
  "diameter_in": 8.55,
  "cover": { "name": "cover", "density_g_cc": 1.18 },
  "pieces": [
    { "name": "outer core", "density_g_cc": 0.95, "shape": { "kind": "sphere", "diameter_in": 7.0 } },
    { "name": "inner core", "density_g_cc": 1.9,
      "shape": { "kind": "lathe", "profile_in": [[0, -1.9], [1.4, -1.5], [1.0, 0.4], [1.6, 1.2], [0, 1.7]] },
      "at_in": [0, 0, 0.1], "turn_deg": [0, 2, 0],
      "cuts": [ { "shape": { "kind": "ring", "ring_diameter_in": 2.6, "tube_diameter_in": 0.5 }, "at_in": [0, 0, 0.4] } ] }
  ],
  "holes": [
    { "name": "thumb", "entry": [0.3, -0.4, 1.0], "diameter_in": 1.0, "depth_in": 2.75 }
  ]
}"#;

pub(crate) const SHOT: &str = r#"{
  "format": "pithball.shot/1",
  "ball": "two-piece.ball.json",
  "hand": "right",
  "release": { "speed_mph": 17.0, "revs_rpm": 300, "axis_rotation_deg": 45, "axis_tilt_deg": 12,
               "launch_angle_deg": 1.5, "board": 22 },
  "layout": { "pin_to_pap_in": 4.0, "drilling_angle_deg": 60, "start_turn_deg": 0 },
  "lane": { "zones": [ { "from_ft": 0, "to_ft": 40, "mu": 0.04 }, { "from_ft": 40, "to_ft": 63, "mu": 0.20 } ] }
}"#;

pub(crate) const OIL: &str = r#"{
  "format": "pithball.oil/1",
  "name": "House",
  "pattern": { "length_ft": 40, "volume_ml": 24, "ratio": 10, "thin_to_board": 8, "full_from_board": 12,
               "front_ft": 8.5, "end_share": 0.3, "buff_ft": 3 }
}"#;

/// The text with one stretch replaced; the stretch must be there.
pub(crate) fn with(text: &str, old: &str, new: &str) -> String {
    assert!(text.contains(old), "{old:?} is not in the text");
    text.replacen(old, new, 1)
}

/// A mistake that is told where it is, and in every language of the page.
#[track_caller]
pub(crate) fn told(problem: &Problem, place: &str, found: &str) {
    assert_eq!((problem.place.as_str(), problem.found.as_str()), (place, found), "{problem}");
    assert!(!problem.accepted.is_empty() && problem.message.ends_with('.'), "{problem}");
    assert_sayable(&in_parts(|| json!(problem)));
}

/// Reads and, where that succeeds, builds: every check a ball file goes through.
#[track_caller]
pub(crate) fn check_ball(text: &str, place: &str, found: &str) {
    let problem =
        BallFile::read(text.as_bytes()).and_then(|file| file.build()).expect_err("a mistake that goes unseen");
    told(&problem, place, found);
}

/// The same for [`BALL`] with one stretch replaced.
#[track_caller]
pub(crate) fn ball(old: &str, new: &str, place: &str, found: &str) {
    check_ball(&with(BALL, old, new), place, found);
}

/// [`SHOT`] with one stretch replaced.
#[track_caller]
pub(crate) fn shot(old: &str, new: &str, place: &str, found: &str) {
    let text = with(SHOT, old, new);
    let problem = ShotFile::read(text.as_bytes()).expect_err("a mistake that goes unseen");
    told(&problem, place, found);
}

/// [`OIL`] with one stretch replaced, read and laid on the lane.
#[track_caller]
pub(crate) fn oil(old: &str, new: &str, place: &str, found: &str) {
    let text = with(OIL, old, new);
    let problem = OilFile::read(text.as_bytes()).and_then(|file| file.film()).expect_err("a mistake that goes unseen");
    told(&problem, place, found);
}
