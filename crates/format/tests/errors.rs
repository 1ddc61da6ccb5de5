//! Every mistake in a file is named with its place and what was found there.

#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

#[path = "../../../tests/shared/sayable.rs"]
mod sayable;

use pithball_format::{
    BallFile, FrictionCurveDoc, LayoutFile, OilFile, Problem, ProgressFile, ShotFile, TargetFile, Throw,
    TolerancesFile, in_parts,
};
use sayable::assert_sayable;
use serde_json::json;

const BALL: &str = r#"{
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

const SHOT: &str = r#"{
  "format": "pithball.shot/1",
  "ball": "two-piece.ball.json",
  "hand": "right",
  "release": { "speed_mph": 17.0, "revs_rpm": 300, "axis_rotation_deg": 45, "axis_tilt_deg": 12,
               "launch_angle_deg": 1.5, "board": 22 },
  "layout": { "pin_to_pap_in": 4.0, "drilling_angle_deg": 60, "start_turn_deg": 0 },
  "lane": { "zones": [ { "from_ft": 0, "to_ft": 40, "mu": 0.04 }, { "from_ft": 40, "to_ft": 63, "mu": 0.20 } ] }
}"#;

const OIL: &str = r#"{
  "format": "pithball.oil/1",
  "name": "House",
  "pattern": { "length_ft": 40, "volume_ml": 24, "ratio": 10, "thin_to_board": 8, "full_from_board": 12,
               "front_ft": 8.5, "end_share": 0.3, "buff_ft": 3 }
}"#;

/// The text with one stretch replaced; the stretch must be there.
fn with(text: &str, old: &str, new: &str) -> String {
    assert!(text.contains(old), "{old:?} is not in the text");
    text.replacen(old, new, 1)
}

/// A mistake that is told where it is, and in every language of the page.
#[track_caller]
fn told(problem: &Problem, place: &str, found: &str) {
    assert_eq!((problem.place.as_str(), problem.found.as_str()), (place, found), "{problem}");
    assert!(!problem.accepted.is_empty() && problem.message.ends_with('.'), "{problem}");
    assert_sayable(&in_parts(|| json!(problem)));
}

/// Reads and, where that succeeds, builds: every check a ball file goes through.
#[track_caller]
fn check_ball(text: &str, place: &str, found: &str) {
    let problem =
        BallFile::read(text.as_bytes()).and_then(|file| file.build()).expect_err("a mistake that goes unseen");
    told(&problem, place, found);
}

/// The same for [`BALL`] with one stretch replaced.
#[track_caller]
fn ball(old: &str, new: &str, place: &str, found: &str) {
    check_ball(&with(BALL, old, new), place, found);
}

/// [`SHOT`] with one stretch replaced.
#[track_caller]
fn shot(old: &str, new: &str, place: &str, found: &str) {
    let text = with(SHOT, old, new);
    let problem = ShotFile::read(text.as_bytes()).expect_err("a mistake that goes unseen");
    told(&problem, place, found);
}

/// [`OIL`] with one stretch replaced, read and laid on the lane.
#[track_caller]
fn oil(old: &str, new: &str, place: &str, found: &str) {
    let text = with(OIL, old, new);
    let problem = OilFile::read(text.as_bytes()).and_then(|file| file.film()).expect_err("a mistake that goes unseen");
    told(&problem, place, found);
}

#[test]
fn the_examples_themselves_are_read() {
    BallFile::read(BALL.as_bytes()).and_then(|file| file.build()).expect("the ball");
    ShotFile::read(SHOT.as_bytes()).expect("the shot");
}

#[test]
fn a_file_that_is_not_json() {
    check_ball("", "", "it is empty");
    check_ball("{", "", "it ends too early (line 1, column 1)");
    let no_value = "a value is missing, or is not one that JSON knows";
    check_ball("weigh me", "", &format!("{no_value} (line 1, column 1)"));
    ball("8.55,", "8.55", "", "a comma or } is missing (line 5, column 3)");
    ball("0.1]", "0.1 0]", "", "a comma or ] is missing (line 10, column 27)");
    ball("\"diameter_in\":", "\"diameter_in\"", "", "a colon is missing (line 4, column 17)");
    ball("\"name\": \"Two", "name: \"Two", "", "a key is not in double quotes (line 3, column 3)");
    ball("0.1]", "0.1, ]", "", "a comma has nothing after it (line 10, column 28)");
    ball("8.55", "NaN", "", &format!("{no_value} (line 4, column 18)"));
    ball("8.55", "-Infinity", "", "a number is not written as JSON writes numbers (line 4, column 19)");
    let escape = "a backslash in a text is followed by what JSON does not know";
    ball("Two-piece", "Two\\piece", "", &format!("{escape} (line 3, column 16)"));
    let control = "a text has a line break or another control character in it";
    ball("Two-piece", "Two\npiece", "", &format!("{control} (line 4, column 0)"));
    check_ball(&format!("{BALL} x"), "", "more follows after its end (line 16, column 3)");
    check_ball("[]", "", "a list of 0");
    check_ball("null", "", "null");
}

#[test]
fn text_that_is_not_utf_8() {
    let mut bytes = BALL.as_bytes().to_vec();
    bytes[40] = 0xff;
    let problem = BallFile::read(&bytes).expect_err("not UTF-8");
    assert_eq!(problem.found, "a byte that is not UTF-8 at position 40");
}

#[test]
fn numbers_out_of_range_of_any_number() {
    ball("8.55", "1e999", "diameter_in", "1e999");
    ball("[0, -1.9]", "[0, -1e400]", "pieces[1].shape.profile_in[0][1]", "-1e400");
    shot("17.0", "1e999", "release.speed_mph", "1e999");
}

#[test]
fn a_key_given_twice() {
    ball("\"name\": \"Two", "\"name\": \"One\", \"name\": \"Two", "name", "the key \"name\" twice");
    ball(
        "\"density_g_cc\": 1.9",
        "\"density_g_cc\": 1.9, \"density_g_cc\": 2",
        "pieces[1].density_g_cc",
        "the key \"density_g_cc\" twice",
    );
}

#[test]
fn nesting_and_size() {
    let deep = format!("{}{}", "[".repeat(65), "]".repeat(65));
    check_ball(&deep, "", "more than 64 levels at line 1");
    let just = format!("{}{}", "[".repeat(64), "]".repeat(64));
    check_ball(&just, "", "a list of 1");
    let long = format!("{BALL}{}", " ".repeat(4 << 20));
    check_ball(&long, "", &format!("{} bytes", long.len()));
}

#[test]
fn another_edition() {
    ball("ball/1", "ball/2", "format", "\"pithball.ball/2\"");
    ball("ball/1", "shot/1", "format", "\"pithball.shot/1\"");
    ball("\"pithball.ball/1\"", "1", "format", "1");
    ball("\"format\": \"pithball.ball/1\",", "", "format", "nothing");
    shot("shot/1", "shot/7", "format", "\"pithball.shot/7\"");
    let problem = BallFile::read(with(BALL, "ball/1", "ball/2").as_bytes()).expect_err("edition 2");
    assert_eq!(problem.accepted, "\"pithball.ball/1\"");
}

#[test]
fn keys_missing_and_unknown() {
    ball("\"diameter_in\": 8.55,", "", "diameter_in", "nothing");
    ball("\"density_g_cc\": 1.9,", "", "pieces[1].density_g_cc", "nothing");
    ball("\"kind\": \"sphere\", ", "", "pieces[0].shape.kind", "nothing");
    ball("\"kind\": \"ring\"", "\"kind\": \"spiral\"", "pieces[1].cuts[0].shape.kind", "\"spiral\"");
    ball(
        "\"kind\": \"sphere\"",
        "\"kind\": \"sphere\", \"radius_in\": 1",
        "pieces[0].shape.radius_in",
        "the unknown key \"radius_in\"",
    );
    ball(
        "\"name\": \"inner core\"",
        "\"name\": \"inner core\", \"densty\": 1",
        "pieces[1].densty",
        "the unknown key \"densty\"",
    );
    ball("\"name\": \"thumb\"", "\"name\": \"thumb\", \"pitch\": 1", "holes[0].pitch", "the unknown key \"pitch\"");
    shot("\"hand\": \"right\",", "", "hand", "nothing");
    shot("\"right\"", "\"both\"", "hand", "\"both\"");
    shot("\"board\": 22", "\"arrow\": 22", "release.arrow", "the unknown key \"arrow\"");
    shot("\"mu\": 0.04", "\"oil\": 0.04", "lane.zones[0].oil", "the unknown key \"oil\"");
}

#[test]
fn values_of_the_wrong_kind() {
    ball("8.55", "\"8.55\"", "diameter_in", "\"8.55\"");
    ball("8.55", "null", "diameter_in", "null");
    ball("\"Two-piece sketch\"", "true", "name", "true");
    ball("[0, 0, 0.1]", "[0, 0]", "pieces[1].at_in", "a list of 2");
    ball("[0, 0, 0.1]", "[0, 0, \"x\"]", "pieces[1].at_in[2]", "\"x\"");
    ball("[1.4, -1.5]", "[1.4]", "pieces[1].shape.profile_in[1]", "a list of 1");
    ball("{ \"kind\": \"sphere\", \"diameter_in\": 7.0 }", "\"sphere\"", "pieces[0].shape", "\"sphere\"");
    shot("\"two-piece.ball.json\"", "7", "ball", "7");
    shot("\"two-piece.ball.json\"", "\"\"", "ball", "\"\"");
}

#[test]
fn numbers_out_of_their_range() {
    ball("8.55", "3.99", "diameter_in", "3.99");
    ball("8.55", "12.01", "diameter_in", "12.01");
    ball("1.18", "0", "cover.density_g_cc", "0");
    ball("0.95", "-0.95", "pieces[0].density_g_cc", "-0.95");
    ball("0.95", "25.1", "pieces[0].density_g_cc", "25.1");
    ball("\"diameter_in\": 7.0", "\"diameter_in\": 0", "pieces[0].shape.diameter_in", "0");
    ball("\"diameter_in\": 7.0", "\"diameter_in\": 7.0, \"squash\": [0.04, 1]", "pieces[0].shape.squash[0]", "0.04");
    ball("\"diameter_in\": 7.0", "\"diameter_in\": 7.0, \"squash\": [1, 21]", "pieces[0].shape.squash[1]", "21");
    ball("\"tube_diameter_in\": 0.5", "\"tube_diameter_in\": -0.5", "pieces[1].cuts[0].shape.tube_diameter_in", "-0.5");
    ball("[1.4, -1.5]", "[-1.4, -1.5]", "pieces[1].shape.profile_in[1][0]", "-1.4");
    ball("\"depth_in\": 2.75", "\"depth_in\": 0", "holes[0].depth_in", "0");
    for (old, key) in [
        ("17.0", "speed_mph"),
        ("300", "revs_rpm"),
        ("45", "axis_rotation_deg"),
        ("12", "axis_tilt_deg"),
        ("1.5", "launch_angle_deg"),
        ("22", "board"),
    ] {
        for wrong in ["-181", "1000.5"] {
            shot(old, wrong, &format!("release.{key}"), wrong);
        }
    }
    shot("17.0", "0", "release.speed_mph", "0");
    shot("22", "0.4", "release.board", "0.4");
    shot("4.0", "-1", "layout.pin_to_pap_in", "-1");
    shot("0.20", "2.1", "lane.zones[1].mu", "2.1");
}

#[test]
fn shapes_and_holes_that_cannot_be() {
    ball(
        "{ \"kind\": \"sphere\", \"diameter_in\": 7.0 }",
        r#"{ "kind": "frustum", "bottom_diameter_in": 0, "top_diameter_in": 0, "height_in": 1 }"#,
        "pieces[0].shape",
        "bottom_diameter_in 0 and top_diameter_in 0",
    );
    ball(
        "[[0, -1.9], [1.4, -1.5], [1.0, 0.4], [1.6, 1.2], [0, 1.7]]",
        "[[0, -1.9], [0, 1.7]]",
        "pieces[1].shape.profile_in",
        "2 points",
    );
    ball("[0.3, -0.4, 1.0]", "[0, 0, 0]", "holes[0].entry", "[0, 0, 0]");
    let drill = |inches: &str| format!("\"diameter_in\": 1.0, \"drilled_diameter_in\": {inches}");
    ball("\"diameter_in\": 1.0", &drill("0.9"), "holes[0].drilled_diameter_in", "0.9");
    ball("\"diameter_in\": 1.0", &drill("true"), "holes[0].drilled_diameter_in", "true");
    let insert = "\"density_g_cc\": 0.95, \"insert\": 1";
    ball("\"density_g_cc\": 0.95", insert, "pieces[0].insert", "1");
    ball("\"diameter_in\": 1.0", "\"diameter_in\": 1.0, \"axis\": [0, 0, 0]", "holes[0].axis", "[0, 0, 0]");
    ball("\"diameter_in\": 1.0", "\"diameter_in\": 1.0, \"axis\": [0, 0, 1]", "holes[0].axis", "[0.0, 0.0, 1.0]");
}

#[test]
fn pieces_and_profiles_the_ball_cannot_hold() {
    ball("\"diameter_in\": 7.0", "\"diameter_in\": 8.6", "pieces[0]", "it reaches 4.3 in from the ball's centre");
    ball("[0, 0, 0.1]", "[0, 0, 3]", "pieces[1]", "it reaches 4.699339 in from the ball's centre");
    ball(
        "[1.0, 0.4], [1.6, 1.2], [0, 1.7]",
        "[1.6, 1.2], [1.0, -1.8], [0, 1.7]",
        "pieces[1].shape.profile_in",
        "the side from point 0 crosses the side from point 2",
    );
    ball(
        "{ \"kind\": \"ring\", \"ring_diameter_in\": 2.6, \"tube_diameter_in\": 0.5 }",
        r#"{ "kind": "lathe", "profile_in": [[0, -1], [1, 1], [1, -1], [0, 1]] }"#,
        "pieces[1].cuts[0].shape.profile_in",
        "the side from point 0 crosses the side from point 2",
    );
}

#[test]
fn sizes_too_small_to_be_told_from_nothing() {
    ball("\"diameter_in\": 7.0", "\"diameter_in\": 5e-324", "pieces[0].shape.diameter_in", "0");
    ball("\"tube_diameter_in\": 0.5", "\"tube_diameter_in\": 5e-324", "pieces[1].cuts[0].shape.tube_diameter_in", "0");
    ball("\"depth_in\": 2.75", "\"depth_in\": 5e-324", "holes[0].depth_in", "0");
}

#[test]
fn too_many_parts() {
    let hole = r#"{ "entry": [0, 0, 1], "diameter_in": 1.0, "depth_in": 1 }"#;
    let holes = |n: usize| with(BALL, "\"holes\": [", &format!("\"holes\": [{}", format!("{hole},").repeat(n)));
    BallFile::read(holes(252).as_bytes()).expect("256 parts");
    check_ball(&holes(253), "holes", "257 pieces, cuts and holes");
    let piece = r#"{ "name": "p", "density_g_cc": 1, "shape": { "kind": "sphere", "diameter_in": 1 } }"#;
    check_ball(
        &with(BALL, "\"pieces\": [", &format!("\"pieces\": [{}", format!("{piece},").repeat(254))),
        "pieces",
        "258 pieces, cuts and holes",
    );
}

#[test]
fn zones_that_do_not_cover_the_lane() {
    shot("\"from_ft\": 40", "\"from_ft\": 41", "lane.zones[1].from_ft", "41");
    shot("\"from_ft\": 40", "\"from_ft\": 39", "lane.zones[1].from_ft", "39");
    shot("\"from_ft\": 0", "\"from_ft\": 1", "lane.zones[0].from_ft", "1");
    shot("\"to_ft\": 63", "\"to_ft\": 60", "lane.zones[1].to_ft", "60");
    shot("\"to_ft\": 63", "\"to_ft\": 40", "lane.zones[1].to_ft", "40");
    shot(
        r#"[ { "from_ft": 0, "to_ft": 40, "mu": 0.04 }, { "from_ft": 40, "to_ft": 63, "mu": 0.20 } ]"#,
        "[]",
        "lane.zones",
        "a list of 0",
    );
}

#[test]
fn a_ball_inside_a_shot() {
    let text = with(SHOT, "\"two-piece.ball.json\"", &with(BALL, "0.95", "-1"));
    let problem = ShotFile::read(text.as_bytes()).expect_err("a negative density");
    assert_eq!((problem.place.as_str(), problem.found.as_str()), ("ball.pieces[0].density_g_cc", "-1"));
}

#[test]
fn zones_may_stand_in_any_order() {
    let text = with(
        SHOT,
        r#"{ "from_ft": 0, "to_ft": 40, "mu": 0.04 }, { "from_ft": 40, "to_ft": 63, "mu": 0.20 }"#,
        r#"{ "from_ft": 40, "to_ft": 63, "mu": 0.20 }, { "from_ft": 0, "to_ft": 40, "mu": 0.04 }"#,
    );
    ShotFile::read(text.as_bytes()).expect("zones in another order");
}

#[test]
fn a_byte_order_mark_is_passed_over() {
    BallFile::read(format!("\u{feff}{BALL}").as_bytes()).expect("a byte order mark before the text");
}

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

#[test]
fn oil_that_cannot_be() {
    oil("oil/1", "oil/2", "format", "\"pithball.oil/2\"");
    oil("\"name\": \"House\",", "", "name", "nothing");
    oil("\"length_ft\": 40", "\"length_ft\": 64", "pattern.length_ft", "64");
    oil("\"volume_ml\": 24", "\"volume_ml\": -1", "pattern.volume_ml", "-1");
    oil("\"ratio\": 10", "\"ratio\": 101", "pattern.ratio", "101");
    oil("\"ratio\": 10", "\"ratio\": \"10:1\"", "pattern.ratio", "\"10:1\"");
    oil("\"thin_to_board\": 8", "\"thin_to_board\": 6", "pattern.thin_to_board", "6");
    oil("\"full_from_board\": 12", "\"full_from_board\": 8", "pattern.full_from_board", "8");
    oil("\"full_from_board\": 12", "\"full_from_board\": 19", "pattern.full_from_board", "19");
    oil("\"front_ft\": 8.5", "\"front_ft\": 40.5", "pattern.front_ft", "40.5");
    oil("\"end_share\": 0.3", "\"end_share\": 1.1", "pattern.end_share", "1.1");
    oil("\"buff_ft\": 3", "\"buff_ft\": 32", "pattern.buff_ft", "32");
    oil("\"buff_ft\": 3", "\"buff_ft\": 3, \"brush\": 1", "pattern.brush", "the unknown key \"brush\"");
    oil("\"length_ft\": 40, ", "", "pattern.length_ft", "nothing");
    oil("\"pattern\"", "\"patern\"", "patern", "the unknown key \"patern\"");
    oil("\"name\"", "\"film_um\": [], \"name\"", "", "pattern and film_um");
    let empty = r#"{ "format": "pithball.oil/1", "name": "x" }"#;
    let problem = OilFile::read(empty.as_bytes()).expect_err("no oil");
    assert_eq!(problem.found, "neither pattern nor film_um");
}

#[test]
fn oil_maps_that_cannot_be() {
    let map = |rows: &str| format!(r#"{{ "format": "pithball.oil/1", "name": "x", "film_um": {rows} }}"#);
    let row = |last: &str| format!("[{}{last}]", "1, ".repeat(38));
    let check = |rows: &str, place: &str, found: &str| {
        let problem = OilFile::read(map(rows).as_bytes()).expect_err("a mistake that goes unseen");
        told(&problem, place, found);
    };
    OilFile::read(map(&format!("[{}]", row("1"))).as_bytes()).and_then(|file| file.film()).expect("a map");
    OilFile::read(map("[]").as_bytes()).and_then(|file| file.film()).expect("a dry lane");
    check("1", "film_um", "1");
    check("[[1, 2]]", "film_um[0]", "a list of 2");
    check(&format!("[{}, 3]", row("1")), "film_um[1]", "3");
    check(&format!("[{}]", row("-0.5")), "film_um[0][38]", "-0.5");
    check(&format!("[{}]", row("100.5")), "film_um[0][38]", "100.5");
    check(&format!("[{}]", row("null")), "film_um[0][38]", "null");
    check(&format!("[{}]", vec![row("1"); 64].join(", ")), "film_um", "64 rows");
}

/// The lane of [`SHOT`] instead of its zones, read and made ready to roll on.
#[track_caller]
fn lane(lane: &str, place: &str, found: &str) {
    let zones =
        r#"{ "zones": [ { "from_ft": 0, "to_ft": 40, "mu": 0.04 }, { "from_ft": 40, "to_ft": 63, "mu": 0.20 } ] }"#;
    let text = with(SHOT, zones, lane);
    let cover = BallFile::read(BALL.as_bytes()).expect("the ball").cover;
    let problem = Throw::read(text.as_bytes()).and_then(|throw| throw.shot(&cover)).expect_err("a mistake");
    told(&problem, place, found);
}

#[test]
fn lanes_of_oil_that_cannot_be() {
    let with_oil = |friction: &str| format!(r#"{{ "oil": {OIL}, "friction": {friction} }}"#);
    lane("{}", "lane.zones", "nothing");
    lane("{ \"oil\": \"\" }", "lane.oil", "\"\"");
    lane("{ \"oil\": 3 }", "lane.oil", "3");
    lane("{ \"oil\": \"house.oil.json\" }", "lane.oil", "\"house.oil.json\"");
    lane("{ \"zones\": [], \"oil\": \"a\" }", "lane", "zones and oil");
    lane("{ \"zones\": [], \"friction\": {} }", "lane.friction", "the unknown key \"friction\"");
    lane(&format!("{{ \"oil\": {} }}", with(OIL, "40", "9")), "lane.oil.pattern.length_ft", "9");
    lane(&format!("{{ \"oil\": {} }}", with(OIL, "8.5", "39")), "lane.oil.pattern.buff_ft", "3");
    lane(&with_oil("{ \"mu_dry\": 0.33 }"), "lane.friction.mu_dry", "0.33");
    lane(&with_oil("{ \"mu_oil\": 0.3 }"), "lane.friction.mu_oil", "0.3");
    lane(&with_oil("{ \"film_half_um\": 0 }"), "lane.friction.film_half_um", "0");
    lane(&with_oil("{ \"mu\": 0.1 }"), "lane.friction.mu", "the unknown key \"mu\"");
    lane(&with_oil("3"), "lane.friction", "3");
}

#[test]
fn covers_and_friction_curves_that_cannot_be() {
    let cover = |more: &str| with(BALL, "\"density_g_cc\": 1.18", &format!("\"density_g_cc\": 1.18, {more}"));
    check_ball(&cover("\"family\": \"glass\""), "cover.family", "\"glass\"");
    check_ball(&cover("\"finish\": \"polish\""), "cover.finish", "\"polish\"");
    check_ball(&cover("\"finish\": {}"), "cover.finish.grit", "nothing");
    check_ball(&cover("\"finish\": { \"grit\": 50 }"), "cover.finish.grit", "50");
    check_ball(&cover("\"finish\": { \"grit\": 500, \"polished\": 1 }"), "cover.finish.polished", "1");
    let curve = |cover: &str, friction: &str| FrictionCurveDoc::read(cover.as_bytes(), friction.as_bytes());
    let good = r#"{ "density_g_cc": 1.2 }"#;
    assert_eq!(curve(good, "null").expect("a curve").points.first().map(|point| point.mu), Some(0.2));
    assert_eq!(curve("{}", "null").expect_err("no density").place, "cover.density_g_cc");
    assert_eq!(curve(good, "{ \"mu_oil\": 0.3 }").expect_err("above mu_dry").place, "friction.mu_oil");
}

const TOLERANCES: &str = r#"{
  "format": "pithball.tolerances/1",
  "seed": 7,
  "cover": { "density_percent": 0.5, "core_shift_in": [0.02, 0.02, 0.02] },
  "every_piece": { "density_percent": 1 },
  "pieces": [ { "piece": "inner core", "at_in": [0.01, 0.01, 0.02], "tilt_deg": 0.5 } ],
  "accept": { "weight_lb": { "at_least": 14.9, "at_most": 15.1 } }
}"#;

/// The problem, which must not be in the ball's file.
fn of_tolerances(problem: pithball_format::ScatterProblem) -> Problem {
    let in_ball = matches!(problem, pithball_format::ScatterProblem::Ball(_));
    assert!(!in_ball, "{problem:?}");
    let problem = Problem::from(problem);
    // As it stands in the tolerances file by itself.
    let place = problem.place.strip_prefix("tolerances").expect("its file").trim_start_matches('.').to_owned();
    Problem { place, ..problem }
}

/// [`TOLERANCES`] for [`BALL`] with one stretch replaced.
#[track_caller]
fn tolerances(old: &str, new: &str, place: &str, found: &str) {
    let ball = BallFile::read(BALL.as_bytes()).expect("the ball");
    let read = TolerancesFile::read(with(TOLERANCES, old, new).as_bytes());
    let made = read.map(|file| pithball_format::Scatter::new(&ball, &file).expect_err("a mistake that goes unseen"));
    let problem = made.map_or_else(|problem| problem, of_tolerances);
    told(&problem, place, found);
}

#[test]
fn a_tolerances_file() {
    tolerances("/1", "/2", "format", "\"pithball.tolerances/2\"");
    tolerances("\"seed\": 7,", "", "seed", "nothing");
    tolerances("7", "0.5", "seed", "0.5");
    tolerances("7,", "7, \"balls\": 10,", "balls", "10");
    tolerances("0.5, \"core", "101, \"core", "cover.density_percent", "101");
    tolerances("0.02] }", "-0.02] }", "cover.core_shift_in[2]", "-0.02");
    tolerances("inner core", "heart", "pieces[0].piece", "\"heart\"");
    tolerances(
        "{ \"piece\": \"inner core\", ",
        "{ \"piece\": \"inner core\", \"tilt_deg\": 1 }, { \"piece\": \"inner core\", ",
        "pieces[1].piece",
        "\"inner core\" again",
    );
    tolerances("0.5 }", "\"half\" }", "pieces[0].tilt_deg", "\"half\"");
    tolerances("14.9", "15.9", "accept.weight_lb", "at_least 15.9 and at_most 15.1");
    tolerances("at_most", "most", "accept.weight_lb.most", "the unknown key \"most\"");
    let none = "\"density_percent\": 0.5, \"core_shift_in\": [0.02, 0.02, 0.02]";
    let text = with(TOLERANCES, none, "")
        .replace("\"density_percent\": 1", "")
        .replace("\"at_in\": [0.01, 0.01, 0.02], \"tilt_deg\": 0.5", "\"tilt_deg\": 0");
    let ball = BallFile::read(BALL.as_bytes()).expect("the ball");
    let file = TolerancesFile::read(text.as_bytes()).expect("it can be read");
    let problem = of_tolerances(pithball_format::Scatter::new(&ball, &file).expect_err("nothing strays"));
    assert_eq!((problem.place.as_str(), problem.found.as_str()), ("", "no tolerance above 0"));
}

const TARGET: &str = r#"{
  "format": "pithball.target/1",
  "want": { "weight_lb": 15, "rg_in": 2.5, "cover_at_least_in": 0.75 },
  "free": [
    { "control": "pieces[0].density_g_cc", "from": 0.7, "to": 1.1 },
    { "control": "pieces[1].shape.wide", "from": 0.8, "to": 1.2 }
  ]
}"#;

/// [`TARGET`] for [`BALL`] with one stretch replaced.
#[track_caller]
fn target(old: &str, new: &str, place: &str, found: &str) {
    let ball = BallFile::read(BALL.as_bytes()).expect("the ball");
    let read = TargetFile::read(with(TARGET, old, new).as_bytes());
    let made = read.map(|file| pithball_format::Seeker::new(&ball, &file).expect_err("a mistake that goes unseen"));
    let problem = made.map_or_else(
        |problem| problem,
        |problem| {
            let problem = Problem::from(problem);
            let place = problem.place.strip_prefix("target.").expect("its file").to_owned();
            Problem { place, ..problem }
        },
    );
    told(&problem, place, found);
}

#[test]
fn a_target_file() {
    target("/1", "/2", "format", "\"pithball.target/2\"");
    target("15,", "0,", "want.weight_lb", "0");
    target("2.5,", "\"low\",", "want.rg_in", "\"low\"");
    target("0.75", "-0.75", "want.cover_at_least_in", "-0.75");
    target("\"weight_lb\": 15, \"rg_in\": 2.5, \"cover_at_least_in\": 0.75", "", "want", "no wanted number");
    target("rg_in", "rg", "want.rg", "the unknown key \"rg\"");
    target("0.7,", "1.1,", "free[0]", "from 1.1 to 1.1");
    target("pieces[1].shape.wide", "pieces[0].shape.wide", "free[1].control", "\"pieces[0].shape.wide\"");
    target("pieces[1].shape.wide", "pieces[0].density_g_cc", "free[1]", "a control that is free already");
    target("\"want\"", "\"starts\": 1001, \"want\"", "starts", "1001");
    target("\"want\"", "\"within_limits\": \"yes\", \"want\"", "within_limits", "\"yes\"");
}

/// A progress file with one stretch replaced.
#[track_caller]
fn progress(old: &str, new: &str, place: &str, found: &str) {
    const PROGRESS: &str = r#"{ "format": "pithball.progress/1", "learner": "Anna", "lessons": [
        { "id": "the-puck", "title": "The puck", "of_steps": 5, "finished_at": "2026-03-01T18:30:00Z", "steps": [
            { "id": "a", "title": "Lift it", "passed": true, "tries": 2, "hints": 1,
              "answer": { "outcome": "low", "said": "0.02 in", "option": 2, "number": 0.02, "path": [[20, 0]] } } ] } ] }"#;
    ProgressFile::read(PROGRESS.as_bytes()).expect("a progress file");
    let problem = ProgressFile::read(with(PROGRESS, old, new).as_bytes()).expect_err("a mistake that goes unseen");
    told(&problem, place, found);
}

#[test]
fn progress_files() {
    progress("progress/1", "progress/2", "format", "\"pithball.progress/2\"");
    progress("\"Anna\"", "7", "learner", "7");
    progress("\"of_steps\": 5", "\"of_steps\": 0", "lessons[0].of_steps", "0");
    progress("\"of_steps\": 5", "\"of_steps\": 2.5", "lessons[0].of_steps", "2.5");
    progress("2026-03-01T", "yesterday", "lessons[0].finished_at", "\"yesterday18:30:00Z\"");
    progress("\"passed\": true", "\"passed\": 1", "lessons[0].steps[0].passed", "1");
    progress("\"hints\": 1", "\"hints\": 4", "lessons[0].steps[0].hints", "4");
    progress("\"hints\": 1", "\"shown\": 1", "lessons[0].steps[0].shown", "1");
    progress("\"tries\": 2", "\"tires\": 2", "lessons[0].steps[0].tires", "the unknown key \"tires\"");
    progress("\"low\"", "\"lowest\"", "lessons[0].steps[0].answer.outcome", "\"lowest\"");
    progress("\"option\": 2", "\"option\": 8", "lessons[0].steps[0].answer.option", "8");
    progress("[20, 0]", "[20]", "lessons[0].steps[0].answer.path[0]", "a list of 1");
    progress("[20, 0]", "[20, null]", "lessons[0].steps[0].answer.path[0][1]", "null");
}
