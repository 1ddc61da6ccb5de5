//! Grips that cannot be.

use crate::support::{BALL, SHOT, told, with};
use pithball_format::{BallFile, LayoutFile, ShotFile};

const LAYOUT: &str = r#"{
  "format": "pithball.layout/1",
  "hand": "right",
  "layout": { "pin_to_pap_in": 4.5, "drilling_angle_deg": 50 },
  "drilling": {
    "val_angle_deg": 35, "pap_over_in": 5, "pap_up_in": 0.375, "bridge_in": 0.3125,
    "middle": { "diameter_in": 0.75, "depth_in": 1.25, "insert": { "wall_in": 0.06, "density_g_cc": 1.2 } },
    "ring": { "diameter_in": 0.72, "depth_in": 1.2, "side_pitch_in": 0.25 },
    "thumb": { "diameter_in": 0.9, "depth_in": 2.5, "forward_pitch_in": -0.2, "middle_span_in": 3.8, "ring_span_in": 3.9 }
  }
}"#;

/// [`LAYOUT`] with one stretch replaced, read and drilled into [`BALL`]; the
/// same mistake has the same place in a shot file.
#[track_caller]
fn layout(old: &str, new: &str, place: &str, found: &str) {
    let text = with(LAYOUT, old, new);
    let ball = BallFile::read(BALL.as_bytes()).expect("the ball");
    let problem = LayoutFile::read(text.as_bytes())
        .and_then(|file| file.laid.drill(&ball))
        .expect_err("a mistake that goes unseen");
    told(&problem, place, found);
}

#[test]
fn a_grip_in_a_layout_file() {
    let ball = BallFile::read(BALL.as_bytes()).expect("the ball");
    let drilled = LayoutFile::read(LAYOUT.as_bytes()).expect("a layout").laid.drill(&ball).expect("it can be drilled");
    // The thumb hole that was there stays; three more and an insert.
    assert_eq!(drilled.file.holes.as_ref().map(Vec::len), Some(4));
    assert_eq!(drilled.file.pieces.len(), ball.pieces.len() + 1);
    drilled.file.build().expect("it can be made");
    layout("pithball.layout/1", "pithball.layout/2", "format", "\"pithball.layout/2\"");
    layout("\"right\"", "\"both\"", "hand", "\"both\"");
    layout("4.5", "-1", "layout.pin_to_pap_in", "-1");
    layout("4.5", "14", "layout.pin_to_pap_in", "14");
    layout("50 }", "50, \"start_turn_deg\": 0 }", "layout.start_turn_deg", "the unknown key \"start_turn_deg\"");
    layout("\"val_angle_deg\": 35,", "", "drilling.val_angle_deg", "nothing");
    layout("35", "361", "drilling.val_angle_deg", "361");
    layout("\"pap_over_in\": 5", "\"pap_over_in\": 13", "drilling.pap_over_in", "13");
    layout("\"pap_over_in\": 5", "\"pap_over_in\": 7", "drilling.pap_over_in", "7");
    layout("0.375", "-6.5", "drilling.pap_up_in", "-6.5");
    layout("0.3125", "-0.1", "drilling.bridge_in", "-0.1");
    layout("\"diameter_in\": 0.72", "\"diameter_in\": 0", "drilling.ring.diameter_in", "0");
    layout("\"diameter_in\": 0.72", "\"diameter_in\": 2.5", "drilling.ring.diameter_in", "2.5");
    layout("\"depth_in\": 1.2,", "\"depth_in\": \"deep\",", "drilling.ring.depth_in", "\"deep\"");
    layout("0.25 }", "2.1 }", "drilling.ring.side_pitch_in", "2.1");
    layout("-0.2", "-2.5", "drilling.thumb.forward_pitch_in", "-2.5");
    layout("0.06", "0", "drilling.middle.insert.wall_in", "0");
    layout("0.06", "0.8", "drilling.middle.insert.wall_in", "a drilled hole of 2.35 in");
    layout("\"density_g_cc\": 1.2", "\"density_g_cc\": 26", "drilling.middle.insert.density_g_cc", "26");
    layout("\"depth_in\": 1.25", "\"depth_in\": 0.01", "drilling.middle.depth_in", "a hole too shallow for its insert");
    layout("\"middle_span_in\": 3.8, ", "", "drilling.thumb.middle_span_in", "nothing");
    layout("3.9 }", "6.5 }", "drilling.thumb.ring_span_in", "6.5");
    let apart = "spans that differ by more than the fingers are apart";
    layout("3.9 }", "1 }", "drilling.thumb.middle_span_in", apart);
    layout(
        "\"bridge_in\": 0.3125,",
        "\"bridge_in\": 0.3125, \"grip\": 1,",
        "drilling.grip",
        "the unknown key \"grip\"",
    );
}

#[test]
fn a_grip_in_a_shot_file() {
    let drilling = LAYOUT.split_once("\"drilling\": ").expect("it is there").1;
    let drilling = drilling.trim_end().strip_suffix('}').expect("the file's brace");
    let text = |drilling: &str| with(SHOT, "\"lane\":", &format!("\"drilling\": {drilling}, \"lane\":"));
    let shot = ShotFile::read(text(drilling).as_bytes()).expect("a shot with a grip");
    let laid = shot.throw.laid().expect("a grip");
    assert_eq!((laid.layout.pin_to_pap_in, laid.layout.drilling_angle_deg), (4.0, 60.0));
    let wrong = ShotFile::read(text(&with(drilling, "1.25", "-1.25")).as_bytes()).expect_err("a depth below 0");
    assert_eq!((wrong.place.as_str(), wrong.found.as_str()), ("drilling.middle.depth_in", "-1.25"));
}
