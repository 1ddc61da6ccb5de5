//! One ball at other weights.

use serde_json::Value;

use crate::support::{Folder, json, refused, said, scenario, three_piece};

fn ladder(pieces: &[&str], by: &str) -> Value {
    let path = scenario("balls/no-3-three-piece.ball.json").to_string_lossy().into_owned();
    let mut args = vec!["ladder", &path, "--by", by, "--json"];
    args.extend(pieces.iter().flat_map(|piece| ["--piece", piece]));
    json(&args)
}

#[test]
fn a_weight_line_by_density() {
    let line = ladder(&["outer core"], "density");
    let rungs = line["rungs"].as_array().expect("a list");
    let number = |rung: &Value, pointer: &str| rung.pointer(pointer).and_then(Value::as_f64).expect("a number");
    let weights: Vec<f64> = rungs.iter().map(|rung| number(rung, "/weight_lb")).collect();
    assert_eq!(weights, [16.0, 15.0, 14.0, 13.0, 12.0, 11.0, 10.0]);
    // Each rung as a file of its own, weighed by the other command.
    let folder = Folder::new();
    for rung in rungs.iter().filter(|rung| rung["feasible"] == true) {
        let mut file: Value = serde_json::from_str(&three_piece()).expect("JSON");
        file["pieces"][0]["density_g_cc"] = rung["density_g_cc"].clone();
        assert_eq!(rung["ball"]["pieces"][0]["density_g_cc"], file["pieces"][0]["density_g_cc"]);
        let path = folder.write("rung.ball.json", rung["ball"].to_string());
        let weighed = json(&["weigh", &path, "--json"]);
        assert!((number(&weighed, "/weight_lb") - number(rung, "/weight_lb")).abs() < 2e-9);
        for pointer in ["/rg_in/low", "/rg_in/middle", "/rg_in/high", "/differential_in"] {
            assert!((number(&weighed, pointer) - number(rung, pointer)).abs() < 1e-9, "{pointer}");
        }
        assert!((number(&weighed, "/top_weight_oz") - number(rung, "/top_weight_oz")).abs() < 1e-6);
    }
    assert!(rungs.iter().filter(|rung| rung["feasible"] == true).count() >= 4);
    for rung in rungs.iter().filter(|rung| rung["feasible"] == false) {
        assert!(rung["why"].as_str().is_some_and(|why| why.ends_with('.')), "{rung}");
    }
    // Water as large as the ball, 8.55 in across.
    let water_lb = std::f64::consts::PI / 6.0 * (8.55_f64 * 0.0254).powi(3) * 1000.0 / 0.453_592_37;
    assert!((number(&line, "/floating_weight_lb") - water_lb).abs() < 1e-9);
}

#[test]
fn a_weight_line_by_size_and_of_two_pieces() {
    let by_size = ladder(&["inner core"], "size");
    let rungs = by_size["rungs"].as_array().expect("a list");
    let made: Vec<&Value> = rungs.iter().filter(|rung| rung["feasible"] == true).collect();
    assert!(!made.is_empty());
    for pair in made.windows(2) {
        assert!(pair[0]["size_factor"].as_f64() > pair[1]["size_factor"].as_f64());
    }
    assert!(rungs.iter().all(|rung| rung["feasible"] == true || rung["why"].is_string()));
    // Each made ball is a file of its own, named after its weight, and so is its own weight line.
    let folder = Folder::new();
    for rung in made {
        let weight_lb = rung["weight_lb"].as_f64().expect("a weight");
        assert_eq!(rung["ball"]["name"], format!("No. 3, three-piece, {weight_lb:.0} lb"));
        let path = folder.write("rung.ball.json", rung["ball"].to_string());
        let weighed = json(&["weigh", &path, "--json"]);
        assert!((weighed["weight_lb"].as_f64().expect("a weight") - weight_lb).abs() < 2e-9);
        let again = json(&["ladder", &path, "--piece", "outer core", "--by", "density", "--json"]);
        assert_eq!(again["rungs"][3]["ball"]["name"], "No. 3, three-piece, 13 lb");
    }
    let both = ladder(&["inner core", "outer core"], "density");
    assert_eq!(both["parts"], serde_json::json!(["outer core", "inner core"]));
    assert_eq!(both["rungs"][0]["changed"].as_array().map(Vec::len), Some(2));
    let path = scenario("balls/no-3-three-piece.ball.json").to_string_lossy().into_owned();
    // What cannot be had says which density it would take, against its material's usual ones.
    let puck = ladder(&["puck"], "density");
    assert_eq!(puck["rungs"][0]["changed"][0]["usual_g_cc"], serde_json::json!([1.2, 3.2]));
    let why = |rung: usize| puck["rungs"][rung]["why"].as_str().expect("a reason").to_owned();
    assert!(
        why(0).contains("puck at 12.81 g/cc (usually 1.20 to 3.20), over the published limit of 3.80"),
        "{}",
        why(0)
    );
    assert!(why(2).contains("it would take puck at -7.59 g/cc (usually 1.20 to 3.20)"), "{}", why(2));
    let told = said(&["ladder", &path, "--piece", "cover", "--by", "density"]);
    assert!(told.contains("cover, g/cc") && told.contains("floats if it weighs less than"), "{told}");
}

#[test]
fn a_weight_line_tells_of_unusual_densities_and_limits_broken() {
    let path = scenario("balls/no-4-nested-core.ball.json").to_string_lossy().into_owned();
    let asked = ["ladder", &path, "--piece", "outer core", "--by", "density"];
    let told = said(&asked);
    for part in [
        "14 lb: OUTSIDE the limits: differential 0.064 in, over the published 0.060 in.",
        "14 lb: outer core would be 0.42 g/cc, its material usually 0.60 to 1.20.",
        "13 lb: OUTSIDE the limits: differential 0.079 in, over the published 0.060 in.",
    ] {
        assert!(told.contains(part), "{part:?} is not in {told}");
    }
    assert!(!told.contains("15 lb: ") && !told.contains("16 lb: "), "{told}");
    let ladder = json(&[&asked[..], &["--json"]].concat());
    let rung = |n: usize| &ladder["rungs"][n];
    assert_eq!((&rung(1)["limits_broken"], &rung(1)["unusual"]), (&serde_json::json!([]), &serde_json::json!([])));
    assert_eq!(rung(2)["limits_broken"][0]["rule"], "differential");
    assert_eq!(rung(2)["unusual"].as_array().map(Vec::len), Some(1));
    // The ball of that rung, checked by itself, breaks the same rule and no other.
    let folder = Folder::new();
    let light = folder.write("light.ball.json", rung(2)["ball"].to_string());
    let checked = json(&["check", &light, "--json"]);
    let failed = checked["rules"].as_array().expect("rules").iter().filter(|rule| rule["verdict"] == "fail");
    assert_eq!(failed.map(|rule| rule["rule"].clone()).collect::<Vec<_>>(), ["differential"]);
}

#[test]
fn a_weight_line_of_no_such_piece_says_which_there_are() {
    let path = scenario("balls/no-3-three-piece.ball.json").to_string_lossy().into_owned();
    let all = ["\"cover\"", "\"outer core\"", "\"inner core\"", "\"puck\"", "\"middle\""];
    refused(&["ladder", &path, "--piece", "middle", "--by", "density"], &all);
    refused(&["ladder", &path, "--piece", "cover", "--by", "size"], &["as large as the ball"]);
}
