//! A shelf is read entry by entry: what is whole comes in, what is broken is named.

#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use pithball_format::{MAX_SHELF_BYTES, ReadShelf, ShelfFile, ShelfVersion, ShotFile, shelf_schema};
use serde_json::{Value, json};

fn shot() -> Value {
    let text = include_str!("../../../scenarios/shots/opening.shot.json");
    let ball = include_str!("../../../scenarios/balls/no-4-nested-core.ball.json");
    let mut shot: Value = serde_json::from_str(text).expect("JSON");
    shot["ball"] = serde_json::from_str(ball).expect("JSON");
    shot
}

fn entry(name: &str) -> Value {
    json!({ "name": name, "note": "for Thursdays", "saved_at": "2026-03-01T18:30:00.123Z", "shot": shot() })
}

fn shelf(entries: &[Value]) -> Value {
    json!({ "format": "pithball.shelf/1", "entries": entries })
}

fn read(shelf: &Value) -> ReadShelf {
    ReadShelf::read(shelf.to_string().as_bytes()).expect("a shelf")
}

#[test]
fn a_whole_shelf_comes_back_as_it_was() {
    let file = shelf(&[entry("first"), json!({ "name": "", "shot": shot() })]);
    let read = read(&file);
    assert!(read.broken.is_empty());
    assert_eq!(read.entries[0].shot, ShotFile::read(shot().to_string().as_bytes()).expect("the shot"));
    assert_eq!((read.entries[0].note.as_deref(), read.entries[1].note.as_deref()), (Some("for Thursdays"), None));
    let written = ShelfFile { format: ShelfVersion::V1, entries: read.entries.clone() };
    let written = serde_json::to_string(&written).expect("JSON");
    assert_eq!(ReadShelf::read(written.as_bytes()).expect("a shelf"), read);
    assert!(jsonschema::validator_for(&shelf_schema()).expect("a schema").is_valid(&file));
}

/// The shot on oil, its ball drilled.
fn whole_state() -> Value {
    let mut shot = shot();
    let oil = include_str!("../../../scenarios/oil/house.oil.json");
    shot["lane"] = json!({ "oil": serde_json::from_str::<Value>(oil).expect("JSON"), "friction": { "mu_dry": 0.19 } });
    let layout = include_str!("../../../scenarios/layouts/league-right.layout.json");
    let layout: Value = serde_json::from_str(layout).expect("JSON");
    shot["drilling"] = layout["drilling"].clone();
    shot
}

#[test]
fn oil_and_drilling_come_along() {
    let file = shelf(&[json!({ "name": "whole", "shot": whole_state() })]);
    let read = read(&file);
    assert_eq!(read.broken, []);
    assert_eq!(read.entries[0].shot, ShotFile::read(whole_state().to_string().as_bytes()).expect("the shot"));
    let written = serde_json::to_value(&read.entries[0].shot).expect("JSON");
    for key in ["lane", "drilling"] {
        assert!(written[key].to_string().len() > 100, "{key} is there");
    }
    let mut spoiled = whole_state();
    spoiled["lane"]["oil"] = json!("house.oil.json");
    broken(|e| e["shot"] = spoiled.clone(), "entries[1].shot.lane.oil", "\"house.oil.json\"", false);
    let mut spoiled = whole_state();
    spoiled["drilling"]["thumb"]["middle_span_in"] = json!(-1);
    broken(|e| e["shot"] = spoiled.clone(), "entries[1].shot.drilling.thumb.middle_span_in", "-1", true);
}

#[test]
fn an_empty_shelf_is_a_shelf() {
    assert!(read(&shelf(&[])).entries.is_empty());
}

/// The middle one of three is spoiled: the two others come in, it is named with its place.
/// The schema refuses it too where the mistake is one a schema can tell.
#[track_caller]
fn broken(spoil: impl Fn(&mut Value), place: &str, found: &str, schema_tells: bool) {
    let mut middle = entry("spoiled");
    spoil(&mut middle);
    let file = shelf(&[entry("first"), middle, entry("last")]);
    let read = read(&file);
    let names: Vec<&str> = read.entries.iter().map(|entry| entry.name.as_str()).collect();
    assert_eq!(names, ["first", "last"]);
    assert_eq!(read.broken.len(), 1);
    let one = &read.broken[0];
    let problem = &one.problem;
    assert_eq!((problem.place.as_str(), problem.found.as_str()), (place, found), "{problem}");
    assert!(!problem.accepted.is_empty() && !problem.message.is_empty(), "{problem}");
    assert_eq!(one.name.as_deref(), file["entries"][1]["name"].as_str());
    let valid = jsonschema::validator_for(&shelf_schema()).expect("a schema").is_valid(&file);
    assert_eq!(valid, !schema_tells);
}

#[test]
fn a_broken_entry_is_named_and_the_rest_comes_in() {
    broken(|e| *e = json!(3), "entries[1]", "3", true);
    broken(|e| e["name"] = json!(7), "entries[1].name", "7", true);
    broken(|e| e["name"] = json!("x".repeat(201)), "entries[1].name", "201 characters", true);
    broken(|e| e["note"] = json!("é".repeat(4001)), "entries[1].note", "4001 characters", true);
    broken(|e| e["weight_lb"] = json!(15), "entries[1].weight_lb", "the unknown key \"weight_lb\"", true);
    broken(|e| e["shot"] = json!("opening.shot.json"), "entries[1].shot", "\"opening.shot.json\"", true);
    broken(|e| e["shot"]["release"]["speed_mph"] = json!(-3), "entries[1].shot.release.speed_mph", "-3", true);
    broken(|e| e["shot"]["ball"] = json!("a.ball.json"), "entries[1].shot.ball", "\"a.ball.json\"", false);
    let place = "entries[1].shot.ball.pieces[1].density_g_cc";
    broken(|e| e["shot"]["ball"]["pieces"][1]["density_g_cc"] = json!(null), place, "null", true);
    let place = "entries[1].shot.lane.zones[0].from_ft";
    broken(|e| e["shot"]["lane"]["zones"][0]["from_ft"] = json!(2), place, "2", false);
}

#[test]
fn a_piece_out_of_its_ball_is_told_at_its_place_in_the_file() {
    let mut spoiled = entry("spoiled");
    spoiled["shot"]["ball"]["pieces"][2]["at_in"] = json!([9, 0, 0]);
    let read = read(&shelf(&[spoiled]));
    let place = &read.broken[0].problem.place;
    assert!(place.starts_with("entries[0].shot.ball.pieces[2]"), "{place}");
}

#[test]
fn a_moment_is_one_of_universal_time() {
    for good in ["2026-03-01T18:30:00Z", "2026-12-31T23:59:60.5Z"] {
        let mut entry = entry("one");
        entry["saved_at"] = json!(good);
        assert_eq!(read(&shelf(&[entry])).entries.len(), 1, "{good}");
    }
    for bad in [
        "",
        "yesterday",
        "2026-03-01",
        "2026-03-01T18:30Z",
        "2026-03-01T18:30:00",
        "2026-03-01T18:30:00+01:00",
        "2026-3-01T18:30:00Z",
        "2026-03-01T18:30:00.Z",
        "2026-03-01 18:30:00Z",
    ] {
        broken(|e| e["saved_at"] = json!(bad), "entries[1].saved_at", &format!("{bad:?}"), true);
    }
    broken(|e| e["saved_at"] = json!("2026-13-01T18:30:00Z"), "entries[1].saved_at", "\"2026-13-01T18:30:00Z\"", false);
}

/// A mistake of the file as a whole.
#[track_caller]
fn refused(text: &str, place: &str, found: &str) {
    let problem = ReadShelf::read(text.as_bytes()).expect_err("a mistake that goes unseen");
    assert_eq!((problem.place.as_str(), problem.found.as_str()), (place, found), "{problem}");
    assert!(!problem.accepted.is_empty() && !problem.message.is_empty(), "{problem}");
}

#[test]
fn a_file_that_is_no_shelf_is_refused_as_a_whole() {
    refused("", "", "it is empty");
    refused("[]", "", "a list of 0");
    refused(r#"{"entries": []}"#, "format", "nothing");
    refused(r#"{"format": "pithball.shelf/2", "entries": []}"#, "format", "\"pithball.shelf/2\"");
    refused(r#"{"format": "pithball.ball/1", "entries": []}"#, "format", "\"pithball.ball/1\"");
    refused(r#"{"format": "pithball.shelf/1"}"#, "entries", "nothing");
    refused(r#"{"format": "pithball.shelf/1", "entries": {}}"#, "entries", "an object");
    refused(r#"{"format": "pithball.shelf/1", "entries": [], "owner": 1}"#, "owner", "the unknown key \"owner\"");
    let many = format!(r#"{{"format": "pithball.shelf/1", "entries": [{}0]}}"#, "0,".repeat(1000));
    refused(&many, "entries", "a list of 1001");
}

#[test]
fn a_shelf_may_be_larger_than_one_shot_but_not_without_end() {
    let pad = |bytes: usize| {
        let text = shelf(&[entry("one")]).to_string();
        format!("{}{text}", " ".repeat(bytes - text.len()))
    };
    assert_eq!(ReadShelf::read(pad(MAX_SHELF_BYTES).as_bytes()).expect("a shelf").entries.len(), 1);
    refused(&pad(MAX_SHELF_BYTES + 1), "", "33554433 bytes");
}
