//! The maker's commands.

use std::fs;

use serde_json::Value;

use crate::support::{Folder, json, refused, replaced, said, scenario};

#[test]
fn scatter_pours_thousands_of_balls() {
    let ball = scenario("balls/no-2-two-piece.ball.json");
    let ball = ball.to_string_lossy();
    let said = said(&["scatter", &ball]);
    for part in ["10000 balls, seed 1", "passed", "seconds", "scrap", "differential, in", "outer core: density"] {
        assert!(said.contains(part), "{part:?} is not in {said}");
    }
    let folder = Folder::new();
    let usual = self::said(&["scatter", &ball, "--print-usual"]);
    let usual = folder.write("usual.tolerances.json", replaced(&usual, "\"seed\": 1", "\"seed\": 1, \"balls\": 500"));
    let scattered = json(&["scatter", &ball, &usual, "--json"]);
    assert_eq!(scattered["balls"], 500);
    let counts = ["passed", "seconds", "scrap"].map(|part| scattered[part]["count"].as_u64().expect("a count"));
    assert_eq!(counts.iter().sum::<u64>(), 500);
    assert_eq!(scattered, json(&["scatter", &ball, &usual, "--json"]));
}

#[test]
fn scatter_says_which_file_is_wrong() {
    let ball = scenario("balls/no-2-two-piece.ball.json");
    let ball = ball.to_string_lossy();
    let folder = Folder::new();
    let text = r#"{ "format": "pithball.tolerances/1", "seed": 1, "pieces": [{ "piece": "heart", "tilt_deg": 1 }] }"#;
    let wrong = folder.write("wrong.tolerances.json", text);
    refused(&["scatter", &ball, &wrong], &["wrong.tolerances.json", "pieces[0].piece", "\"heart\"", "\"inner core\""]);
    refused(&["scatter", &ball, "no-such.json"], &["no-such.json"]);
}

#[test]
fn seek_finds_a_core_and_says_what_stands_in_the_way() {
    let ball = scenario("balls/no-2-two-piece.ball.json");
    let target = scenario("targets/lower-rg.target.json");
    let (ball, target) = (ball.to_string_lossy(), target.to_string_lossy());
    let sought = json(&["seek", &ball, &target, "--json"]);
    let answers = sought["answers"].as_array().expect("a list");
    assert!(!answers.is_empty() && sought["nearest"].is_null());
    // The file of an answer is a ball that weighs what it says.
    let folder = Folder::new();
    let made = folder.write("made.ball.json", answers[0]["file"].to_string());
    let weighed = json(&["weigh", &made, "--json"]);
    let number = |value: &Value| value.as_f64().expect("a number");
    assert!((number(&weighed["rg_in"]["low"]) - 2.55).abs() <= 0.001, "{weighed}");
    assert!((number(&weighed["weight_lb"]) - 15.0).abs() <= 0.02, "{weighed}");
    assert!(said(&["seek", &ball, &target]).contains("starts meet the target"));
    let text = fs::read_to_string(&*target).expect("a file");
    let far = folder.write("far.target.json", replaced(&text, "2.55", "2.2"));
    let sought = json(&["seek", &ball, &far, "--json"]);
    assert!(sought["answers"].as_array().expect("a list").is_empty());
    assert!(!sought["blocks"].as_array().expect("a list").is_empty() && sought["nearest"].is_object());
    let wrong = folder.write("wrong.target.json", replaced(&text, "pieces[1].density_g_cc", "pieces[7].density_g_cc"));
    refused(&["seek", &ball, &wrong], &["wrong.target.json", "free[1].control", "pieces[7].density_g_cc"]);
}

#[test]
fn levers_maps_and_pours() {
    let ball = scenario("balls/no-2-two-piece.ball.json");
    let ball = ball.to_string_lossy();
    let levers = json(&["levers", &ball, "--json"]);
    let ranked = levers["ranked"]["differential_in"].as_array().expect("a list");
    let first = ranked[0].as_u64().expect("a place") as usize;
    assert!(levers["levers"][first]["control"].as_str().expect("a place").starts_with("pieces[1]"), "{first}");
    assert!(said(&["levers", &ball]).contains("inner core: place along z"));
    let map = |x: &'static str, count: &'static str| {
        ["--x", x, "--x-from", "2", "--x-to", "3", "--y", "cover.density_g_cc", "--y-from", "1.1", "--y-to", "1.3"]
            .into_iter()
            .chain(["--count", count])
    };
    let args = |x, count| ["map", &*ball].into_iter().chain(map(x, count)).collect::<Vec<_>>();
    let mut asked = args("pieces[1].density_g_cc", "3");
    assert!(said(&asked).contains("differential, in"));
    asked.push("--json");
    let told = json(&asked);
    assert_eq!((told["rows"].as_array().map(Vec::len), told["x"]["value"].as_f64()), (Some(3), Some(2.3)));
    refused(&args("pieces[9].density_g_cc", "3"), &["x", "pieces[9].density_g_cc", "pieces[1].at_in[2]"]);
    refused(&args("pieces[1].density_g_cc", "1"), &["1 values", "2 to 200"]);
    refused(&args("cover.density_g_cc", "3"), &["y", "another control"]);
    let poured = json(&["pour", &ball, "--json"]);
    let names: Vec<_> = poured["pours"].as_array().expect("a list").iter().map(|pour| &pour["name"]).collect();
    assert_eq!(names, ["inner core", "outer core", "cover"]);
    assert!(said(&["pour", &ball]).contains("Nothing stands in the way"));
    refused(&["pour", &ball, "--waste", "0.95"], &["waste", "0.95"]);
}
