//! Oil and its wear.

use std::fs;

use serde_json::Value;

use crate::support::{Folder, json, pithball, refused, replaced, said, scenario, three_piece};

#[test]
fn a_shot_on_oil_rolls_on_the_film_of_its_file() {
    let path = scenario("shots/house-pattern.shot.json");
    let rolled = json(&["roll", &path.to_string_lossy(), "--json"]);
    let samples = rolled["samples"].as_array().expect("a list");
    let films: Vec<f64> = samples.iter().map(|sample| sample["film_um"].as_f64().expect("a film")).collect();
    let mus: Vec<f64> = samples.iter().map(|sample| sample["mu"].as_f64().expect("a friction")).collect();
    // Thick at first, none at the pins, and friction the other way round.
    assert!(films[0] > 2.0 && films[films.len() - 1] == 0.0, "{films:?}");
    assert!(mus[0] < 0.08 && mus[mus.len() - 1] > 0.2, "{mus:?}");
    let zones = json(&["roll", &scenario("shots/opening.shot.json").to_string_lossy(), "--json"]);
    assert!(zones["samples"][0]["film_um"].is_null());
    assert_eq!(zones["samples"][0]["mu"], 0.04);
}

#[test]
fn roll_takes_another_oil_and_a_layout() {
    let at = |name: &str| scenario(name).to_string_lossy().into_owned();
    let (opening, house) = (at("shots/opening.shot.json"), at("shots/house-pattern.shot.json"));
    let rolled = json(&["roll", &house, "--oil", &at("oil/long.oil.json"), "--json"]);
    let own = json(&["roll", &house, "--json"]);
    let breakpoint_ft = |rolled: &Value| rolled["summary"]["breakpoint"]["distance_ft"].as_f64().expect("a distance");
    assert!(breakpoint_ft(&rolled) > breakpoint_ft(&own) + 1.0, "long oil carries the ball further");
    assert_eq!(json(&["roll", &house, "--oil", &at("oil/house.oil.json"), "--json"]), own);
    assert!(json(&["roll", &opening, "--oil", &at("oil/house.oil.json"), "--json"])["samples"][0]["film_um"].is_f64());

    let layout = at("layouts/league-right.layout.json");
    let drilled = json(&["roll", &opening, "--layout", &layout, "--json"]);
    assert_ne!(drilled["summary"], json(&["roll", &opening, "--json"])["summary"]);
    refused(&["roll", &opening, "--layout", &at("layouts/two-handed-left.layout.json")], &["hand", "left", "right"]);
    refused(&["roll", &opening, "--oil", &layout], &["league-right.layout.json", "format", "pithball.oil/1"]);
}

#[test]
fn oil_is_found_from_the_folder_of_its_shot_or_stands_in_it() {
    let folder = Folder::new();
    let oil = fs::read_to_string(scenario("oil/house.oil.json")).expect("a file");
    let shot = fs::read_to_string(scenario("shots/house-pattern.shot.json")).expect("a file");
    folder.write("balls/no-3-three-piece.ball.json", three_piece());
    folder.write("oil/house.oil.json", &oil);
    let beside = folder.write("shots/a.shot.json", &shot);
    let inside = folder.write("shots/b.shot.json", replaced(&shot, "\"../oil/house.oil.json\"", &oil));
    let expected = json(&["roll", &scenario("shots/house-pattern.shot.json").to_string_lossy(), "--json"]);
    for path in [beside, inside] {
        assert_eq!(json(&["roll", &path, "--json"]), expected, "{path}");
    }
    let path = folder.write("shots/c.shot.json", replaced(&shot, "../oil/house", "../oil/no-such"));
    refused(&["roll", &path], &["c.shot.json", "lane.oil", "no-such.oil.json", "cannot be read"]);
    folder.write("oil/bad.oil.json", replaced(&oil, "\"buff_ft\": 3", "\"buff_ft\": 39"));
    let path = folder.write("shots/d.shot.json", replaced(&shot, "../oil/house", "../oil/bad"));
    refused(&["roll", &path], &["bad.oil.json", "pattern.buff_ft", "39"]);
    let path = folder.write(
        "shots/e.shot.json",
        replaced(&shot, "\"../oil/house.oil.json\"", &replaced(&oil, "\"ratio\": 10", "\"ratio\": 0")),
    );
    refused(&["roll", &path], &["e.shot.json", "lane.oil.pattern.ratio", "1 to 100"]);
}

#[test]
fn wear_keeps_the_oil_and_moves_the_line() {
    let path = scenario("shots/house-pattern.shot.json").to_string_lossy().into_owned();
    let worn = json(&["wear", &path, "--games", "6", "--json"]);
    let games = worn["games"].as_array().expect("a list");
    assert_eq!(games.len(), 7);
    let number = |game: &Value, key: &str| game[key].as_f64().expect("a number");
    for game in games {
        let all = number(game, "volume_ml") + number(game, "taken_away_ml");
        assert!((all - 24.0).abs() < 1e-9, "{all} mL in all");
    }
    assert!(games.windows(2).all(|pair| number(&pair[0], "volume_ml") > number(&pair[1], "volume_ml")));
    // The fresh lane is the shot's own.
    let rolled = json(&["roll", &path, "--json"]);
    assert_eq!(games[0]["summary"], rolled["summary"]);
    let board = |game: &Value| game["summary"]["board_at_pins"].as_f64().expect("a board");
    assert!((board(&games[6]) - board(&games[0])).abs() > 1.0, "{} then {}", board(&games[0]), board(&games[6]));
    let told = said(&["wear", &path, "--games", "2"]);
    for part in ["House pattern", "over 2 games", "mL", "model choice"] {
        assert!(told.contains(part), "{part:?} is not in\n{told}");
    }
}

#[test]
fn a_worn_oil_file_is_one_to_roll_on() {
    let folder = Folder::new();
    let path = scenario("shots/house-pattern.shot.json").to_string_lossy().into_owned();
    let oil = said(&["wear", &path, "--games", "3", "--oil"]);
    let shot = fs::read_to_string(&path).expect("a file");
    folder.write("balls/no-3-three-piece.ball.json", three_piece());
    folder.write("oil/worn.oil.json", &oil);
    let on_worn = folder.write("shots/a.shot.json", replaced(&shot, "house.oil.json", "worn.oil.json"));
    let rolled = json(&["roll", &on_worn, "--json"]);
    let worn = json(&["wear", &path, "--games", "3", "--json"]);
    let (a, b) = (&rolled["summary"]["board_at_pins"], &worn["games"][3]["summary"]["board_at_pins"]);
    assert!((a.as_f64().expect("a board") - b.as_f64().expect("a board")).abs() < 1e-6, "{a} {b}");
    // Two who bowl there wear more.
    let both =
        json(&["wear", &path, &scenario("shots/flat-pattern.shot.json").to_string_lossy(), "--games", "3", "--json"]);
    assert!(both["games"][3]["taken_away_ml"].as_f64() > worn["games"][3]["taken_away_ml"].as_f64());
}

#[test]
fn wear_that_makes_no_sense() {
    let oiled = scenario("shots/house-pattern.shot.json").to_string_lossy().into_owned();
    let zones = scenario("shots/opening.shot.json").to_string_lossy().into_owned();
    refused(&["wear", &zones, "--games", "1"], &["opening.shot.json", "lane", "zones", "Only oil wears"]);
    for games in ["0", "41", "x"] {
        let output = pithball(&["wear", &oiled, "--games", games]);
        assert_eq!(output.status.code(), Some(2));
        assert!(output.stdout.is_empty() && !output.stderr.is_empty());
    }
}

#[test]
fn oil_prints_length_volume_ratio_and_film() {
    let path = scenario("oil/house.oil.json").to_string_lossy().into_owned();
    let oil = json(&["oil", &path, "--json"]);
    let number = |pointer: &str| oil.pointer(pointer).and_then(Value::as_f64).expect(pointer);
    assert_eq!(number("/length_ft"), 40.0);
    assert!((number("/volume_ml") - 24.0).abs() < 1e-9 && (number("/ratio") - 10.0).abs() < 1e-9);
    // The cells are the volume: each a board of 41.5/39 in wide and a foot long.
    let cells = oil["cells_um"].as_array().expect("rows").iter().flat_map(|row| row.as_array().expect("boards"));
    let sum_um: f64 = cells.map(|cell| cell.as_f64().expect("a film")).sum();
    assert!((sum_um * 1e-4 * (41.5 / 39.0 * 2.54) * 30.48 - 24.0).abs() < 1e-9);
    let told = said(&["oil", &path]);
    for part in ["House", "40.0", "24.00", "10.00", "ratio", "right edge"] {
        assert!(told.contains(part), "{part:?} is not in\n{told}");
    }
    let folder = Folder::new();
    let wrong = folder.write("wrong.oil.json", "{ \"format\": \"pithball.oil/1\", \"name\": \"x\" }");
    refused(&["oil", &wrong], &["wrong.oil.json", "pattern", "film_um"]);
}
