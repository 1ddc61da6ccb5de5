//! Balls that cannot be.

use crate::support::{BALL, SHOT, ball, check_ball, with};
use pithball_format::{BallFile, ShotFile};

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
fn a_ball_inside_a_shot() {
    let text = with(SHOT, "\"two-piece.ball.json\"", &with(BALL, "0.95", "-1"));
    let problem = ShotFile::read(text.as_bytes()).expect_err("a negative density");
    assert_eq!((problem.place.as_str(), problem.found.as_str()), ("ball.pieces[0].density_g_cc", "-1"));
}
