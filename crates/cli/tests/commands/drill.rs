//! The grip.

use std::fs;

use serde_json::Value;

use crate::support::{Folder, json, opening, refused, replaced, said, scenario, three_piece};

#[test]
fn static_balance_without_the_grip_is_named_the_whole_and_is_what_the_three_make() {
    let doc: Value = serde_json::from_str(&drill("layouts/league-right.layout.json", "--json")).expect("JSON");
    let folder = Folder::new();
    let path = folder.write("drilled.ball.json", drill("layouts/league-right.layout.json", "--ball"));
    let rule = |doc: &Value| {
        let rules = doc["rules"].as_array().expect("rules");
        rules.iter().find(|rule| rule["rule"] == "static_balance").expect("a rule").clone()
    };
    let [gripped, bare] = [rule(&doc), rule(&json(&["check", &path, "--json"]))];
    let number = |value: &Value| value.as_f64().expect("a number");
    let three = ["top_oz", "finger_oz", "side_oz"].map(|key| number(&doc["statics"][key]));
    assert_eq!(gripped["found_is"], "largest over the grip");
    assert_eq!(number(&gripped["found"]), three.iter().fold(0.0, |most, oz| oz.abs().max(most)));
    // The three directions stand square to one another: Pythagoras.
    assert_eq!(bare["found_is"], "whole imbalance");
    assert!((number(&bare["found"]) - three.iter().map(|oz| oz * oz).sum::<f64>().sqrt()).abs() < 1e-9);
    let told = said(&["check", &path]);
    assert!(
        told.contains("oz (whole imbalance)") && told.contains("`pithball drill BALL LAYOUT` weighs each"),
        "{told}"
    );
}

fn drill(layout: &str, also: &str) -> String {
    let ball = scenario("balls/no-3-three-piece.ball.json").to_string_lossy().into_owned();
    let layout = scenario(layout).to_string_lossy().into_owned();
    let mut args = vec!["drill", &ball, &layout];
    args.extend((!also.is_empty()).then_some(also));
    said(&args)
}

#[test]
fn drilling_a_ball_is_weighing_the_drilled_file() {
    let doc: Value = serde_json::from_str(&drill("layouts/league-right.layout.json", "--json")).expect("JSON");
    let folder = Folder::new();
    let path = folder.write("drilled.ball.json", drill("layouts/league-right.layout.json", "--ball"));
    assert_eq!(doc["after"], json(&["weigh", &path, "--json"]));
    let undrilled = scenario("balls/no-3-three-piece.ball.json").to_string_lossy().into_owned();
    assert_eq!(doc["before"], json(&["weigh", &undrilled, "--json"]));
    let file: Value = serde_json::from_str(&fs::read_to_string(&path).expect("a file")).expect("JSON");
    assert_eq!(doc["holes"], file["holes"]);
    assert_eq!(doc["holes"].as_array().map(Vec::len), Some(3));
    for key in ["top_oz", "finger_oz", "side_oz"] {
        assert!(doc["statics"][key].as_f64().expect("a number").abs() < 3.0, "{doc}");
    }
    assert_eq!(doc["statics"]["verdicts"], serde_json::json!(["pass", "pass", "pass"]));
    assert_eq!(doc["conflicts"], serde_json::json!([]));
    // The layout asks for a pin 4.5 in from the PAP: the marks lie so on 8.55 in.
    let mark = |key: &str| serde_json::from_value::<[f64; 3]>(doc["marks"][key].clone()).expect("a direction");
    let pin_to_pap = mark("pap").iter().zip(mark("pin")).map(|(a, b)| a * b).sum::<f64>().acos();
    assert!((pin_to_pap * 4.275 - 4.5).abs() < 1e-9);
}

#[test]
fn inserts_of_a_drilled_file_are_no_core() {
    let folder = Folder::new();
    let path = folder.write("drilled.ball.json", drill("layouts/league-right.layout.json", "--ball"));
    let cover = json(&["cover", &path, "--json"]);
    let undrilled = scenario("balls/no-3-three-piece.ball.json").to_string_lossy().into_owned();
    assert_eq!(cover["thinnest"], json(&["cover", &undrilled, "--json"])["thinnest"]);
    assert_eq!((&cover["as_thin_share"], &cover["under_usual_share"]), (&1.0.into(), &0.0.into()));
    assert!((cover["mean_in"].as_f64().expect("a mean") - 0.775).abs() < 1e-9);
    let file: Value = serde_json::from_str(&fs::read_to_string(&path).expect("a file")).expect("JSON");
    assert_eq!(file["holes"][0]["drilled_diameter_in"], 0.875);
    assert_eq!(file["pieces"][3]["insert"], true);
    assert!(said(&["cover", &path]).contains("outer core, 0.87 g/cc"));
}

#[test]
fn a_drilled_ball_told_in_words() {
    let told = drill("layouts/two-handed-left.layout.json", "");
    for part in ["ring finger", "differential", "static weight", "within 3 oz", "qualified pro shop", "high-RG axis"] {
        assert!(told.contains(part), "{part:?} is not in {told}");
    }
    assert!(!told.contains("thumb sleeve") && !told.contains("CAUTION"), "{told}");
}

#[test]
fn holes_in_each_others_way_are_told() {
    let folder = Folder::new();
    let layout = fs::read_to_string(scenario("layouts/two-handed-left.layout.json")).expect("a file");
    let path = folder.write("close.layout.json", replaced(&layout, "\"bridge_in\": 0.3125", "\"bridge_in\": 0"));
    let ball = scenario("balls/no-3-three-piece.ball.json").to_string_lossy().into_owned();
    let told = said(&["drill", &ball, &path]);
    assert!(told.contains("CAUTION: Holes run into each other by"), "{told}");
}

#[test]
fn a_shot_with_a_grip_rolls_the_drilled_ball() {
    let folder = Folder::new();
    let layout: Value =
        serde_json::from_str(&fs::read_to_string(scenario("layouts/league-right.layout.json")).expect("a file"))
            .expect("JSON");
    let mut shot: Value = serde_json::from_str(&opening()).expect("JSON");
    shot["layout"]["pin_to_pap_in"] = layout["layout"]["pin_to_pap_in"].clone();
    shot["layout"]["drilling_angle_deg"] = layout["layout"]["drilling_angle_deg"].clone();
    shot["ball"] = serde_json::from_str(&three_piece()).expect("JSON");
    let plain = json(&["roll", &folder.write("plain.shot.json", shot.to_string()), "--json"]);
    shot["drilling"] = layout["drilling"].clone();
    let path = folder.write("drilled.shot.json", shot.to_string());
    let rolled = json(&["roll", &path, "--json"]);
    assert_eq!(plain["track"]["holes"], serde_json::json!([]));
    assert_eq!(rolled["track"]["holes"].as_array().map(Vec::len), Some(3));
    assert_ne!(plain["summary"]["board_at_pins"], rolled["summary"]["board_at_pins"]);
    // The same shot of the drilled file, which needs no grip.
    shot["ball"] = serde_json::from_str(&drill("layouts/league-right.layout.json", "--ball")).expect("JSON");
    shot.as_object_mut().expect("an object").remove("drilling");
    let file = json(&["roll", &folder.write("file.shot.json", shot.to_string()), "--json"]);
    assert_eq!(rolled, file);
    assert!(said(&["roll", &path]).contains("bow-ties"));
}

#[test]
fn a_link_holds_the_grip_and_the_ball_before_it_is_drilled() {
    let shot = scenario("shots/drilled.shot.json").to_string_lossy().into_owned();
    let back: Value = serde_json::from_str(&said(&["unlink", said(&["link", &shot]).trim()])).expect("JSON");
    assert_eq!((back["ball"]["pieces"].as_array().map(Vec::len), &back["ball"]["holes"]), (Some(3), &Value::Null));
    let file: Value = serde_json::from_str(&fs::read_to_string(&shot).expect("a file")).expect("JSON");
    assert_eq!(back["drilling"]["thumb"]["insert"]["wall_in"], file["drilling"]["thumb"]["insert"]["wall_in"]);
    let folder = Folder::new();
    let path = folder.write("back.shot.json", back.to_string());
    assert_eq!(json(&["roll", &path, "--json"]), json(&["roll", &shot, "--json"]));
}

#[test]
fn a_grip_that_cannot_be_drilled_names_its_place() {
    let folder = Folder::new();
    let ball = scenario("balls/no-3-three-piece.ball.json").to_string_lossy().into_owned();
    let layout = fs::read_to_string(scenario("layouts/league-right.layout.json")).expect("a file");
    let apart = folder.write("apart.layout.json", replaced(&layout, "3.9375", "1"));
    refused(&["drill", &ball, &apart], &["apart.layout.json", "drilling.thumb.middle_span_in"]);
    let no_hand = folder.write("hand.layout.json", replaced(&layout, "\"right\"", "1"));
    refused(&["drill", &ball, &no_hand, "--json"], &["hand.layout.json", "hand", "not 1"]);
    refused(&["drill", &ball, "no.layout.json"], &["no.layout.json", "cannot be read"]);
}
