//! The commands as a person or another program runs them.

#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use serde_json::Value;
use tempfile::TempDir;

fn scenario(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios").join(name)
}

fn pithball(args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_pithball")).args(args).output().expect("it runs")
}

fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).expect("UTF-8")
}

fn said(args: &[&str]) -> String {
    let output = pithball(args);
    assert!(output.status.success(), "{}", text(&output.stderr));
    assert!(output.stderr.is_empty(), "{}", text(&output.stderr));
    text(&output.stdout).to_owned()
}

fn json(args: &[&str]) -> Value {
    serde_json::from_str(&said(args)).expect("JSON")
}

/// Refused with exit code 2, nothing on the standard output, and one line on
/// the standard error that holds every one of `parts`.
#[track_caller]
fn refused(args: &[&str], parts: &[&str]) {
    let output = pithball(args);
    let message = text(&output.stderr);
    assert_eq!(output.status.code(), Some(2), "{message}");
    assert!(output.stdout.is_empty(), "{}", text(&output.stdout));
    assert_eq!(message.lines().count(), 1, "{message}");
    for part in parts {
        assert!(message.contains(part), "{part:?} is not in {message:?}");
    }
}

struct Folder(TempDir);

impl Folder {
    fn new() -> Self {
        Self(tempfile::tempdir().expect("a folder"))
    }

    fn write(&self, name: &str, content: impl AsRef<[u8]>) -> String {
        let path = self.0.path().join(name);
        fs::create_dir_all(path.parent().expect("a folder")).expect("a folder");
        fs::write(&path, content).expect("a file");
        path.to_string_lossy().into_owned()
    }
}

fn three_piece() -> String {
    fs::read_to_string(scenario("balls/no-3-three-piece.ball.json")).expect("a file")
}

fn opening() -> String {
    fs::read_to_string(scenario("shots/opening.shot.json")).expect("a file")
}

fn replaced(text: &str, old: &str, new: &str) -> String {
    assert!(text.contains(old), "{old:?} is not in the text");
    text.replacen(old, new, 1)
}

#[test]
fn weigh_prints_every_number_of_the_contract() {
    let path = scenario("balls/no-3-three-piece.ball.json");
    let weighed = json(&["weigh", &path.to_string_lossy(), "--json"]);
    let number = |pointer: &str| weighed.pointer(pointer).and_then(Value::as_f64).expect(pointer);
    assert!((number("/mass_kg") / 0.453_592_37 - number("/weight_lb")).abs() < 1e-12);
    assert!((number("/rg_in/high") - number("/rg_in/low") - number("/differential_in")).abs() < 1e-12);
    assert!((number("/rg_in/high") - number("/rg_in/middle") - number("/intermediate_differential_in")).abs() < 1e-12);
    // RG = √(I/m) about the low axis, which is z here.
    let rg_in = (number("/inertia_kg_m2/2/2") / number("/mass_kg")).sqrt() / 0.0254;
    assert!((rg_in - number("/rg_in/low")).abs() < 1e-9);
    let top_oz = number("/mass_kg") * number("/cg_in/2") / (8.55 / 2.0) / (0.453_592_37 / 16.0);
    assert!((top_oz - number("/top_weight_oz")).abs() < 1e-9);
    assert!(number("/relative_error") < 1e-6);
    for axis in ["low", "middle", "high"] {
        let length: f64 = (0..3).map(|i| number(&format!("/axes/{axis}/{i}")).powi(2)).sum();
        assert!((length - 1.0).abs() < 1e-12);
    }
    let pieces = weighed["pieces"].as_array().expect("a list");
    let names: Vec<&str> = pieces.iter().map(|piece| piece["name"].as_str().expect("a name")).collect();
    assert_eq!(names, ["cover", "outer core", "inner core", "puck"]);
    let sum = |key: &str| pieces.iter().map(|piece| piece[key].as_f64().expect("a number")).sum::<f64>();
    assert!((sum("mass_kg") - number("/mass_kg")).abs() < 1e-9);
    assert!((sum("rg_share") - 1.0).abs() < 1e-9);
    // The whole sphere, 8.55 in across.
    assert!((sum("volume_cc") - std::f64::consts::PI / 6.0 * (8.55_f64 * 2.54).powi(3)).abs() < 1e-6);
}

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
fn tables_for_people_name_what_they_show() {
    let text = said(&["weigh", &scenario("balls/no-4-nested-core.ball.json").to_string_lossy()]);
    for part in ["No. 4, nested core", "low RG", "differential", "top weight", "heart", "lb", "oz", " in "] {
        assert!(text.contains(part), "{part:?} is not in\n{text}");
    }
    let text = said(&["roll", &scenario("shots/league-medium.shot.json").to_string_lossy()]);
    for part in ["League night, medium revs", "No. 2, two-piece", "entry angle", "breakpoint", "track flare", "mph"] {
        assert!(text.contains(part), "{part:?} is not in\n{text}");
    }
}

#[test]
fn schema_prints_the_published_schemas() {
    for name in ["ball", "shot", "layout", "oil", "shelf"] {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("../../schemas/{name}.schema.json"));
        assert_eq!(said(&["schema", name]), fs::read_to_string(path).expect("a file"));
    }
}

#[test]
fn mistakes_in_a_ball_are_named_with_file_and_place() {
    let folder = Folder::new();
    let refuse = |old: &str, new: &str, parts: &[&str]| {
        let path = folder.write("wrong.ball.json", replaced(&three_piece(), old, new));
        for args in [vec!["weigh", &path], vec!["weigh", &path, "--json"]] {
            refused(&args, &[&["wrong.ball.json"], parts].concat());
        }
    };
    refuse("\"density_g_cc\": 1.17", "\"density_g_cc\": -1", &["cover.density_g_cc", "-1", "above 0 and up to 25"]);
    refuse("\"kind\": \"cylinder\"", "\"kind\": \"disc\"", &["pieces[2].shape.kind", "\"disc\"", "\"cylinder\""]);
    refuse("\"diameter_in\": 7", "\"diameter_in\": 9", &["pieces[0]", "4.5 in", "4.275 in", "sticks out"]);
    refuse("\"diameter_in\": 8.55", "\"diameter_in\": NaN", &["not JSON", "line 5"]);
    refuse("\"diameter_in\": 8.55", "\"diameter_in\": 1e999", &["diameter_in", "1e999", "finite"]);
}

#[test]
fn mistakes_in_a_shot_are_named_with_the_file_they_are_in() {
    let folder = Folder::new();
    folder.write("good.ball.json", three_piece());
    folder.write("bad.ball.json", replaced(&three_piece(), "\"density_g_cc\": 1.17", "\"density_g_cc\": 99"));
    let shot = |ball: &str| replaced(&opening(), "\"../balls/no-3-three-piece.ball.json\"", ball);
    let path = folder.write("a.shot.json", replaced(&shot("\"good.ball.json\""), "17.5", "41"));
    refused(&["roll", &path], &["a.shot.json", "release.speed_mph", "41", "up to 40"]);
    let path = folder.write("b.shot.json", shot("\"bad.ball.json\""));
    refused(&["roll", &path], &["bad.ball.json", "cover.density_g_cc", "99"]);
    let path = folder.write("c.shot.json", shot("\"no-such.ball.json\""));
    refused(&["roll", &path], &["c.shot.json", "ball", "no-such.ball.json", "cannot be read"]);
    let within = replaced(&three_piece(), "\"diameter_in\": 7", "\"diameter_in\": 9");
    let path = folder.write("d.shot.json", shot(&within));
    refused(&["roll", &path], &["d.shot.json", "ball.pieces[0]", "sticks out"]);
    // Half way round this ball is 13.4 in.
    let path = folder.write("e.shot.json", replaced(&shot("\"good.ball.json\""), "4.5", "13.5"));
    refused(&["roll", &path], &["e.shot.json", "layout.pin_to_pap_in", "13.5"]);
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
fn files_that_cannot_be_read() {
    let folder = Folder::new();
    refused(&["weigh", "no-such.ball.json"], &["no-such.ball.json", "cannot be read"]);
    refused(&["roll", "no-such.shot.json", "--json"], &["no-such.shot.json", "cannot be read"]);
    let here = folder.0.path().to_string_lossy().into_owned();
    refused(&["weigh", &here], &[&here, "cannot be read"]);
    let path = folder.write("bytes.ball.json", [b'{', 0xff, b'}']);
    refused(&["weigh", &path], &["bytes.ball.json", "UTF-8"]);
    let path = folder.write("empty.ball.json", "");
    refused(&["weigh", &path], &["empty.ball.json", "not JSON"]);
    let path = folder.write("long.ball.json", vec![b' '; (4 << 20) + 1]);
    refused(&["weigh", &path], &["long.ball.json", "4 MiB"]);
}

#[test]
fn a_message_stays_on_one_line() {
    let folder = Folder::new();
    let path = folder.write(
        "odd\nname.ball.json",
        replaced(&three_piece(), "\"pieces\"", "\"two\\nlines \\u001b[31m\": 1, \"pieces\""),
    );
    refused(&["weigh", &path], &["odd\\nname.ball.json", "two\\nlines"]);
}

#[test]
fn a_wrong_use_is_told_with_exit_code_2() {
    refused(&["weigh"], &["not provided", "<BALL>", "accepted: pithball weigh"]);
    refused(&["lift", "x"], &["'lift'", "accepted: weigh, check,"]);
    refused(&["schema", "lane"], &["'lane'", "<FILE>", "accepted: ball, shot,"]);
    refused(&["weigh", "x", "--xml"], &["'--xml'", "accepted: pithball weigh"]);
    refused(&["wear", "x", "--games", "0"], &["'0'", "--games", "1..=40"]);
    refused(&["roll", "x", "--oil"], &["--oil"]);
    refused(&[], &["no command", "accepted: weigh, check,"]);
}

/// Help that is asked for is no mistake.
#[test]
fn help_and_version_go_to_the_standard_output() {
    for args in [&["--help"][..], &["--version"], &["roll", "--help"]] {
        assert!(said(args).contains("pithball"), "{args:?}");
    }
}

#[test]
fn a_message_says_nothing_twice() {
    let folder = Folder::new();
    let missing = folder.write("there.json", "") + "no";
    let told = |args: &[&str]| text(&pithball(args).stderr).to_owned();
    let message = told(&["weigh", &missing]);
    assert_eq!(message.matches("there.jsonno").count(), 1, "{message}");
    assert_eq!(message.matches("no such file").count(), 1, "{message}");
    let shot = folder.write("a.shot.json", replaced(&opening(), "../balls/no-3-three-piece.ball.json", "gone.json"));
    let message = told(&["roll", &shot]);
    assert_eq!(message.matches("gone.json").count(), 1, "{message}");
    assert_eq!(message.matches("no such file").count(), 1, "{message}");
}

/// What rounds to nothing has no sign.
#[test]
fn no_table_has_a_minus_zero() {
    let [a, b] = ["shots/opening.shot.json", "shots/league-medium.shot.json"].map(scenario);
    let [a, b] = [&a, &b].map(|path| path.to_string_lossy().into_owned());
    for text in [said(&["why", &a, &b]), said(&["why", &b, &a]), said(&["why", &a, &a])] {
        for word in text.split_whitespace() {
            let zero = word.strip_prefix('-').is_some_and(|rest| rest.bytes().all(|c| matches!(c, b'0' | b'.')));
            assert!(!zero || word == "-", "{word} in {text}");
        }
    }
}

#[test]
fn a_reader_that_goes_away_is_no_mistake() {
    let mut child = Command::new(env!("CARGO_BIN_EXE_pithball"))
        .args(["roll", &scenario("shots/opening.shot.json").to_string_lossy(), "--json"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("it runs");
    // The samples are more than a pipe holds.
    drop(child.stdout.take());
    let output = child.wait_with_output().expect("it ends");
    assert!(output.status.success(), "{:?}: {}", output.status, text(&output.stderr));
    assert!(output.stderr.is_empty(), "{}", text(&output.stderr));
}

#[test]
fn check_holds_a_ball_to_every_rule() {
    let path = scenario("balls/no-3-three-piece.ball.json");
    let checked = json(&["check", &path.to_string_lossy(), "--json"]);
    let weighed = json(&["weigh", &path.to_string_lossy(), "--json"]);
    let rules = checked["rules"].as_array().expect("a list");
    let rule = |word: &str| rules.iter().find(|rule| rule["rule"] == word).expect(word);
    for (word, verdict) in [
        ("weight", "pass"),
        ("diameter", "pass"),
        ("density", "pass"),
        ("low_rg", "pass"),
        ("high_rg", "pass"),
        ("differential", "pass"),
        ("low_rg_mark", "pass"),
        ("high_rg_mark", "not_computed"),
        ("static_balance", "not_applicable"),
        ("holes", "not_applicable"),
        ("hardness", "not_computed"),
        ("roundness", "not_computed"),
    ] {
        assert_eq!(rule(word)["verdict"], verdict, "{word}");
        for key in ["name", "source", "edition"] {
            assert!(rule(word)[key].as_str().is_some_and(|text| !text.is_empty()), "{word} {key}");
        }
    }
    assert_eq!(rule("weight")["found"], weighed["weight_lb"]);
    assert_eq!(rule("low_rg")["found"], weighed["rg_in"]["low"]);
    // USBC: 2.460 to 2.800 in, at most 0.060 in, at most 3.80 g/mL.
    assert_eq!((&rule("low_rg")["at_least"], &rule("high_rg")["at_most"]), (&2.46.into(), &2.8.into()));
    assert_eq!((&rule("differential")["at_most"], &rule("density")["at_most"]), (&0.06.into(), &3.8.into()));
    assert_eq!(rule("density")["part"], "puck");
}

#[test]
fn a_ball_outside_the_limits_is_told_so_and_is_no_mistake() {
    let folder = Folder::new();
    let path = folder.write("heavy.ball.json", replaced(&three_piece(), "\"diameter_in\": 8.55", "\"diameter_in\": 9"));
    let told = said(&["check", &path]);
    assert!(told.lines().any(|line| line.contains("diameter") && line.contains("OUTSIDE")), "{told}");
    assert!(told.contains("The current edition of the rules decides"), "{told}");
    for word in ["approve", "certified"] {
        assert!(!told.contains(word), "{told}");
    }
    let checked = json(&["check", &path, "--json"]);
    let rules = checked["rules"].as_array().expect("a list");
    assert!(rules.iter().any(|rule| rule["rule"] == "diameter" && rule["verdict"] == "fail"));
    refused(&["check", &folder.write("no.ball.json", "{}")], &["no.ball.json", "format"]);
}

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

#[test]
fn a_weight_line_of_no_such_piece_says_which_there_are() {
    let path = scenario("balls/no-3-three-piece.ball.json").to_string_lossy().into_owned();
    let all = ["\"cover\"", "\"outer core\"", "\"inner core\"", "\"puck\"", "\"middle\""];
    refused(&["ladder", &path, "--piece", "middle", "--by", "density"], &all);
    refused(&["ladder", &path, "--piece", "cover", "--by", "size"], &["as large as the ball"]);
}

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

#[test]
fn cover_prints_the_thinnest_place_and_what_holes_leave() {
    let path = scenario("balls/no-3-three-piece.ball.json").to_string_lossy().into_owned();
    let cover = json(&["cover", &path, "--json"]);
    let number = |pointer: &str| cover.pointer(pointer).and_then(Value::as_f64).expect(pointer);
    // 8.55 in across over an outer core of 7 in.
    assert!((number("/thinnest/thickness_in") - 0.775).abs() < 1e-12 && number("/thinnest/error_in") < 1e-9);
    assert!((number("/mean_in") - 0.775).abs() < 1e-9);
    assert_eq!((&cover["thinnest"]["piece"], &cover["thinnest"]["part"]), (&"outer core".into(), &1.into()));
    assert_eq!((number("/under_usual_share"), number("/under_most_share")), (0.0, 1.0));
    assert!((number("/core_share") - (7.0_f64 / 8.55).powi(3)).abs() < 1e-6);
    assert_eq!((&cover["beside_usual"], &cover["holes"]), (&"usual".into(), &serde_json::json!([])));
    let folder = Folder::new();
    let holes = r#""holes": [{ "entry": [0, 0, 1], "diameter_in": 1, "depth_in": 0.5 },
        { "name": "thumb", "entry": [1, 0, 0], "diameter_in": 1, "depth_in": 2 }], "pieces""#;
    let drilled = folder.write("drilled.ball.json", replaced(&three_piece(), "\"pieces\"", holes));
    let cover = json(&["cover", &drilled, "--json"]);
    let number = |pointer: &str| cover.pointer(pointer).and_then(Value::as_f64).expect(pointer);
    assert_eq!((&cover["holes"][0]["name"], &cover["holes"][0]["core_from_in"]), (&"hole 1".into(), &Value::Null));
    assert!((number("/holes/0/to_core_in") - 0.275).abs() <= number("/holes/0/error_in") + 1e-9);
    assert!((number("/holes/1/core_from_in") - 0.775).abs() < 1e-9 && number("/holes/1/to_core_in") == 0.0);
    assert_eq!(cover["webs"][0]["holes"], serde_json::json!(["hole 1", "thumb"]));
    let told = said(&["cover", &drilled]);
    for part in ["thinnest, in", "outer core, 0.87 g/cc", "thumb", "hole 1 and thumb", "common practice, no source"] {
        assert!(told.contains(part), "{told}");
    }
    let plain = folder.write(
        "plain.ball.json",
        r#"{ "format": "pithball.ball/1", "name": "plain", "diameter_in": 8.5,
        "cover": { "density_g_cc": 1.2 }, "pieces": [] }"#,
    );
    assert!(said(&["cover", &plain]).contains("Cover all through"));
    let cover = json(&["cover", &plain, "--json"]);
    assert_eq!((&cover["thinnest"], &cover["beside_usual"]), (&Value::Null, &"no_core".into()));
    refused(&["cover", &folder.write("no.ball.json", "{")], &["no.ball.json"]);
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
fn lessons_are_proved_sound_or_named_by_line() {
    let lessons = scenario("lessons");
    let puck = lessons.join("the-puck.lesson.md");
    let walked = json(&["lessons", "walk", &puck.to_string_lossy(), "--json"]);
    assert_eq!(walked["steps"].as_array().map(Vec::len), walked["about"]["steps"].as_array().map(Vec::len));
    assert_eq!(walked["steps"][2]["checked"]["passed"], Value::Bool(true));
    assert!(said(&["lessons", "walk", &puck.to_string_lossy()]).contains("Done: The differential is 0.04"));
    let disco = lessons.join("es/the-puck.lesson.md");
    assert!(said(&["lessons", "walk", &disco.to_string_lossy()]).contains("El diferencial es 0.04"));
    assert!(said(&["lessons", "names"]).contains("entry_angle_deg"));

    let folder = Folder::new();
    for part in ["balls/no-3-three-piece.ball.json", "shots/opening.shot.json"] {
        folder.write(part, fs::read(scenario(part)).expect("a file"));
    }
    let text = fs::read_to_string(&puck).expect("a lesson");
    let path = folder.write("lessons/the-puck.lesson.md", &text);
    let inside = Path::new(&path).parent().expect("a folder").to_string_lossy().into_owned();
    let sound = json(&["lessons", "check", &inside, "--json"]);
    assert_eq!(sound["lessons"][0]["id"], "the-puck");
    assert!(said(&["lessons", "check", &inside]).contains("The puck"));
    folder.write("lessons/the-puck.lesson.md", replaced(&text, ">= goal_in", ">= 9 in"));
    refused(
        &["lessons", "check", &inside],
        &["the-puck.lesson.md:", "steps[2].solution", "it must be at least 9.000 in"],
    );
    folder.write("lessons/the-puck.lesson.md", &text);
    folder.write("lessons/again.lesson.md", &text);
    refused(&["lessons", "check", &inside], &["The id \"the-puck\" is that of"]);
    refused(&["lessons", "check", "no-such-folder"], &["no-such-folder", "cannot be read"]);
    refused(&["lessons", "walk", "no-such.lesson.md"], &["no-such.lesson.md", "cannot be read"]);
}

#[test]
fn results_of_a_class_in_one_table() {
    let folder = Folder::new();
    let file = |name: &str, said: &str, outcome: &str, passed: bool| {
        let answer = format!(r#"{{ "outcome": "{outcome}", "said": "{said}", "number": 0.02 }}"#);
        let text = format!(
            r#"{{ "format": "pithball.progress/1", "learner": "{name}", "lessons": [ {{ "id": "the-puck", "title": "The puck",
               "of_steps": 2, "steps": [
               {{ "id": "a", "title": "Lift the puck", "passed": true, "answer": {answer} }},
               {{ "id": "b", "title": "Do it", "passed": {passed}, "tries": 2, "hints": 1 }} ] }} ] }}"#
        );
        folder.write(&format!("{name}.progress.json"), text)
    };
    let files = [file("Anna", "0.020 in", "low", true), file("Ben", "0.010 in", "low", false)];
    let told = json(&["lessons", "results", &files[0], &files[1], "--json"]);
    assert_eq!(told["lessons"][0]["finished"], 1);
    assert_eq!(told["learners"][1]["lessons"][0]["passed"], 1);
    assert_eq!(told["questions"][0]["wrong"][0]["count"], 2);
    assert_eq!(told["questions"][0]["wrong"][0]["said"], "too little, such as 0.020 in");
    assert_eq!(told["learners"][1]["lessons"][0]["tries"], 2);
    let task = &told["tasks"][0];
    assert_eq!(task["step"], "b");
    assert_eq!(["tries", "hints", "passed", "begun"].map(|key| task[key].as_u64()), [4, 2, 1, 2].map(Some));
    assert!(said(&["lessons", "results", &files[0]]).contains("2 of 2"));
    let wrong =
        folder.write("wrong.progress.json", r#"{ "format": "pithball.progress/1", "learner": 3, "lessons": [] }"#);
    refused(&["lessons", "results", &wrong], &["wrong.progress.json", "learner", "3"]);
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
