//! Why two shots differ, and room for error.

use std::fs;

use serde_json::Value;

use crate::support::{Folder, json, opening, refused, replaced, said, scenario, three_piece};

#[test]
fn why_shares_the_difference_out_to_the_last_digit() {
    let [a, b] = ["shots/opening.shot.json", "shots/league-medium.shot.json"].map(scenario);
    let args = ["why", &a.to_string_lossy(), &b.to_string_lossy(), "--json"];
    let told = json(&args);
    for key in ["hook_boards", "board_at_pins", "entry_angle_deg", "breakpoint_board", "breakpoint_ft"] {
        let number = |value: &Value| value[key].as_f64().expect("a number");
        let whole = number(&told["whole"]);
        let parts = told["parts"].as_array().expect("a list");
        let sum: f64 = parts.iter().map(|part| number(&part["part"])).sum();
        assert!((sum - whole).abs() < 1e-11, "{key}: {sum} {whole}");
        let [from, to] = ["a", "b"].map(|shot| number(&told[shot]["outcome"]));
        assert!((to - from - whole).abs() < 1e-12, "{key}");
    }
    // What roll says of each, to the last bit.
    for (shot, path) in [("a", &a), ("b", &b)] {
        let rolled = json(&["roll", &path.to_string_lossy(), "--json"]);
        assert_eq!(told[shot]["outcome"]["board_at_pins"], rolled["summary"]["board_at_pins"]);
    }
    assert_eq!(told["reason"], Value::Null);
    assert!(told["sentence"].as_str().expect("text").contains("hooks"));
    let plain = said(&args[..3]);
    assert!(plain.contains("from RG") && plain.contains("B less A"), "{plain}");
    let effort = json(&[&args[..], &["--same-effort"]].concat());
    assert_eq!(effort["hand"], "effort");
    assert_ne!(effort["b"]["revs_rpm"], told["b"]["revs_rpm"]);
}

#[test]
fn why_tells_cover_and_oil_apart() {
    let folder = Folder::new();
    let house = fs::read_to_string(scenario("oil/house.oil.json")).expect("a file");
    folder.write("oil.json", house);
    let shot = |name: &str, ball: &str| {
        let mut file: Value = serde_json::from_str(&opening()).expect("JSON");
        file["ball"] = serde_json::from_str(ball).expect("JSON");
        file["lane"] = serde_json::json!({ "oil": "oil.json" });
        folder.write(name, file.to_string())
    };
    let plain: Value = serde_json::from_str(&three_piece()).expect("JSON");
    let family = |family: &str| {
        let mut ball = plain.clone();
        ball["cover"]["family"] = family.into();
        ball.to_string()
    };
    let (a, b) = (shot("a.shot.json", &family("reactive")), shot("b.shot.json", &family("urethane")));
    let told = json(&["why", &a, &b, "--json"]);
    let parts = told["parts"].as_array().expect("a list");
    assert_eq!(parts.len(), 1, "{parts:?}");
    assert_eq!(parts[0]["property"], "cover");
    assert_eq!(parts[0]["part"], told["whole"]);
    assert!(told["sentence"].as_str().expect("text").ends_with("All of it comes from the cover."));
}

#[test]
fn why_says_what_it_cannot_tell_and_refuses_what_is_wrong() {
    let [good, gutter] = ["shots/opening.shot.json", "shots/gutter.shot.json"].map(scenario);
    let (good, gutter) = (good.to_string_lossy(), gutter.to_string_lossy());
    let told = json(&["why", &good, &gutter, "--json"]);
    assert_eq!((&told["whole"], &told["parts"]), (&Value::Null, &Value::Null));
    assert!(told["reason"].as_str().expect("text").contains("gutter"));
    let folder = Folder::new();
    let fast = folder.write("fast.shot.json", replaced(&opening(), "17.5", "41"));
    refused(&["why", &good, &fast], &["fast.shot.json", "release.speed_mph", "41"]);
    refused(&["why", &fast, &good], &["fast.shot.json", "release.speed_mph", "41"]);
    refused(&["why", &good, "nowhere.shot.json"], &["nowhere.shot.json", "cannot be read"]);
}

#[test]
fn area_prints_the_map_and_the_room() {
    let path = scenario("shots/opening.shot.json");
    let args = ["area", &path.to_string_lossy(), "--json"];
    let told = json(&args);
    assert_eq!(told["throws"], 3525);
    let map = &told["map"];
    let rows = map["board_at_pins"].as_array().expect("a list");
    assert_eq!((rows.len(), rows[0].as_array().map(Vec::len)), (61, Some(41)));
    // The shot itself is in the middle.
    let rolled = json(&["roll", &path.to_string_lossy(), "--json"]);
    assert_eq!(map["board_at_pins"][30][20], rolled["summary"]["board_at_pins"]);
    assert_eq!(map["entry_angle_deg"][30][20], rolled["summary"]["entry_angle_deg"]);
    for of in ["map", "scatter"] {
        let shares = told[of]["shares"].as_object().expect("an object");
        let sum: f64 = shares.values().filter_map(Value::as_f64).sum();
        assert!((sum - 1.0).abs() < 1e-12, "{of}: {sum}");
        let pocket = told[of]["shares"]["pocket"].as_f64().expect("a number");
        for one in ["on_boards", "at_angles"] {
            let share = told[of]["apart"][one].as_f64().expect("a number");
            assert!((pocket..=1.0).contains(&share), "{of}: {one} is {share}");
        }
    }
    assert_eq!(told["board_room"]["holds"], true);
    assert!(said(&args[..2]).contains("This shot reaches the pocket with 1.5 boards of room"));
}

#[test]
fn area_is_told_of_a_shot_that_misses_and_refuses_one_that_cannot_be_thrown() {
    let missing = scenario("shots/gutter.shot.json");
    assert!(said(&["area", &missing.to_string_lossy()]).contains("does not reach the pins"));
    let folder = Folder::new();
    let off = folder.write("off.shot.json", replaced(&opening(), "\"board\": 24", "\"board\": 40"));
    refused(&["area", &off], &["off.shot.json", "release.board", "40"]);
}
