//! Weighing, checking and measuring the cover of a ball.

use serde_json::Value;

use crate::support::{Folder, json, refused, replaced, said, scenario, three_piece};

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
