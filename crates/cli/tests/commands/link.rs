//! Links and back.

use std::fs;
use std::process::Command;

use serde_json::Value;

use crate::support::{Folder, json, opening, refused, replaced, said, scenario, text, three_piece};

#[test]
fn a_link_gives_back_the_shot_with_its_ball() {
    let shot = scenario("shots/opening.shot.json");
    let link = said(&["link", &shot.to_string_lossy()]);
    assert!(link.starts_with("#p1.") && link.lines().count() == 1, "{link}");
    let folder = Folder::new();
    let back = folder.write("back.shot.json", said(&["unlink", link.trim()]));
    let rolled = |path: &str| json(&["roll", path, "--json"]);
    assert_eq!(rolled(&back), rolled(&shot.to_string_lossy()));
    assert_eq!(said(&["link", &back]), link);
    assert_eq!(said(&["unlink", &format!("https://example.org/pithball/{link}")]), said(&["unlink", link.trim()]));
}

#[test]
fn a_link_of_a_drilled_shot_holds_the_grip_and_the_ball_before_it() {
    let layout: Value =
        serde_json::from_slice(&fs::read(scenario("layouts/league-right.layout.json")).expect("a file")).expect("JSON");
    let mut shot: Value = serde_json::from_str(&opening()).expect("JSON");
    shot["ball"] = serde_json::from_str(&three_piece()).expect("JSON");
    shot["drilling"] = layout["drilling"].clone();
    let folder = Folder::new();
    let path = folder.write("drilled.shot.json", shot.to_string());
    let back: Value = serde_json::from_str(&said(&["unlink", said(&["link", &path]).trim()])).expect("JSON");
    assert!(back["ball"].get("holes").is_none(), "{back}");
    let again = folder.write("again.shot.json", back.to_string());
    assert_eq!(json(&["roll", &again, "--json"]), json(&["roll", &path, "--json"]));
}

#[test]
fn a_link_is_read_from_the_standard_input() {
    let shot = scenario("shots/opening.shot.json");
    let link = said(&["link", &shot.to_string_lossy()]);
    let folder = Folder::new();
    let from = fs::File::open(folder.write("link.txt", &link)).expect("a file");
    let output =
        Command::new(env!("CARGO_BIN_EXE_pithball")).args(["unlink", "-"]).stdin(from).output().expect("it runs");
    assert_eq!(text(&output.stdout), said(&["unlink", link.trim()]));
}

#[test]
fn a_link_with_a_mistake_is_named() {
    refused(&["unlink", "p7.AAAA"], &["the link", "edition 7"]);
    refused(&["unlink", "p1.AAAA"], &["the link", "cut off"]);
    refused(&["unlink", ""], &["the link", "holds no shot"]);
    let folder = Folder::new();
    let note = format!("\"note\": \"{}\"", "x".repeat(1001));
    let shot = replaced(&opening(), "\"note\": \"A medium hook with the three-piece ball on a house shot.\"", &note);
    folder.write("balls/no-3-three-piece.ball.json", three_piece());
    refused(&["link", &folder.write("shots/long.shot.json", shot)], &["long.shot.json", "note", "1001 characters"]);
}
