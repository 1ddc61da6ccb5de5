//! What any file may have wrong.

use crate::support::{BALL, SHOT, ball, check_ball, shot, with};
use pithball_format::{BallFile, ShotFile};

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
fn a_byte_order_mark_is_passed_over() {
    BallFile::read(format!("\u{feff}{BALL}").as_bytes()).expect("a byte order mark before the text");
}

#[test]
fn names_from_a_file_are_told_in_part_however_long() {
    let key = "k".repeat(5_000);
    let nested = format!("{}1e999{}", format!("{{\"{key}\":").repeat(20), "}".repeat(20));
    for text in [
        format!("{{\"{key}\": 1}}"),
        format!("{{\"{key}\": 1, \"{key}\": 1}}"),
        format!("{{\"{key}\": 1e999}}"),
        format!("{{\"format\": \"{key}\"}}"),
        nested,
    ] {
        let problem = BallFile::read(text.as_bytes()).expect_err("no ball");
        assert!(problem.message.len() < 1_000 && problem.place.len() < 300, "{problem:?}");
        assert!(problem.found.len() < 1_000 && problem.accepted.len() < 1_000, "{problem:?}");
    }
}
