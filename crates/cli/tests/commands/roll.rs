//! A shot, rolled.

use serde_json::Value;

use crate::support::{Folder, json, opening, replaced, said, scenario, three_piece};

#[test]
fn roll_prints_every_number_of_the_contract() {
    let path = scenario("shots/opening.shot.json");
    let rolled = json(&["roll", &path.to_string_lossy(), "--json"]);
    for key in [
        "time_s",
        "board_at_pins",
        "entry_angle_deg",
        "speed_at_pins_mph",
        "revs_at_pins_rpm",
        "hook_start_ft",
        "roll_start_ft",
        "axis_migration_deg",
        "flare_in",
        "end_ft",
    ] {
        assert!(rolled["summary"][key].is_number(), "{key}");
    }
    assert_eq!(rolled["summary"]["gutter"], false);
    assert!(rolled["summary"]["breakpoint"]["board"].is_number());
    assert!(rolled["summary"]["breakpoint"]["distance_ft"].is_number());
    let samples = rolled["samples"].as_array().expect("a list");
    let (first, last) = (&samples[0], &samples[samples.len() - 1]);
    let number = |sample: &Value, key: &str| sample[key].as_f64().expect("a number");
    // Board 24 lies four boards left of the centre line.
    assert!((number(first, "x_in") + 4.0 * 41.5 / 39.0).abs() < 1e-9);
    assert!((number(first, "speed_mph") - 17.5).abs() < 1e-9);
    // ω = 2π·revs·(−cos τ cos α, −cos τ sin α, sin τ), α 55°, τ 12°.
    let spin = 300.0 * std::f64::consts::TAU / 60.0;
    let (rotation, tilt) = (55_f64.to_radians(), 12_f64.to_radians());
    let omega = [-tilt.cos() * rotation.cos(), -tilt.cos() * rotation.sin(), tilt.sin()].map(|x| x * spin);
    for (axis, expected) in omega.iter().enumerate() {
        let found = first["omega_rad_s"][axis].as_f64().expect("a number");
        assert!((found - expected).abs() < 1e-9, "{found} {expected}");
    }
    assert!((number(last, "y_ft") - 60.0).abs() < 1e-9);
    assert!((number(last, "t_s") - rolled["summary"]["time_s"].as_f64().expect("a time")).abs() < 1e-12);
    assert_eq!((first["phase"].as_str(), last["phase"].as_str()), (Some("skid"), Some("roll")));
    assert_eq!(number(last, "slip_mph"), 0.0);
}

#[test]
fn a_gutter_ball_has_no_numbers_at_the_pins() {
    let path = scenario("shots/gutter.shot.json");
    let path = path.to_string_lossy();
    let rolled = json(&["roll", &path, "--json"]);
    let summary = &rolled["summary"];
    assert_eq!(summary["gutter"], true);
    for key in ["time_s", "board_at_pins", "entry_angle_deg", "speed_at_pins_mph", "revs_at_pins_rpm"] {
        assert!(summary[key].is_null(), "{key}");
    }
    let text = said(&["roll", &path]);
    assert!(text.contains("falls into the gutter") && !text.contains("null"), "{text}");
}

#[test]
fn a_ball_is_found_from_the_folder_of_its_shot() {
    let folder = Folder::new();
    let absolute = folder.write("balls/three.ball.json", three_piece());
    let shot = |ball: &str| replaced(&opening(), "../balls/no-3-three-piece.ball.json", ball);
    let up = folder.write("shots/up.shot.json", shot("../balls/three.ball.json"));
    let down = folder.write("down.shot.json", shot("balls/three.ball.json"));
    let whole = folder.write("whole.shot.json", shot(&absolute));
    let inside = folder
        .write("inside.shot.json", replaced(&opening(), "\"../balls/no-3-three-piece.ball.json\"", &three_piece()));
    let expected = json(&["roll", &scenario("shots/opening.shot.json").to_string_lossy(), "--json"]);
    for path in [up, down, whole, inside] {
        assert_eq!(json(&["roll", &path, "--json"]), expected, "{path}");
    }
}
