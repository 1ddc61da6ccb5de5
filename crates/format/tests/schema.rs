//! The published schemas are those of the code, and say what the reader says.

#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use pithball_format::{
    BallFile, LayoutFile, OilFile, ShotFile, TargetFile, TolerancesFile, ball_schema, layout_schema, lesson_schema,
    oil_schema, progress_schema, shelf_schema, shot_schema, target_schema, tolerances_schema,
};
use serde_json::Value;

const BALL: &str = include_str!("../../../schemas/ball.schema.json");
const SHOT: &str = include_str!("../../../schemas/shot.schema.json");
const LAYOUT: &str = include_str!("../../../schemas/layout.schema.json");
const TARGET: &str = include_str!("../../../schemas/target.schema.json");
const TOLERANCES: &str = include_str!("../../../schemas/tolerances.schema.json");
const LESSON: &str = include_str!("../../../schemas/lesson.schema.json");
const PROGRESS: &str = include_str!("../../../schemas/progress.schema.json");
const OIL: &str = include_str!("../../../schemas/oil.schema.json");
const SHELF: &str = include_str!("../../../schemas/shelf.schema.json");

#[test]
fn the_published_schemas_are_those_of_the_code() {
    for (published, generated) in [
        (BALL, ball_schema()),
        (SHOT, shot_schema()),
        (LAYOUT, layout_schema()),
        (LESSON, lesson_schema()),
        (PROGRESS, progress_schema()),
        (OIL, oil_schema()),
        (TARGET, target_schema()),
        (TOLERANCES, tolerances_schema()),
        (SHELF, shelf_schema()),
    ] {
        let published: Value = serde_json::from_str(published).expect("a schema is JSON");
        assert_eq!(published, generated, "print it again with `pithball schema`");
    }
}

/// A ball file with one stretch replaced: refused by the schema and by the reader.
#[track_caller]
fn refused(old: &str, new: &str) {
    const FILE: &str = include_str!("../../../scenarios/balls/no-4-nested-core.ball.json");
    assert!(FILE.contains(old), "{old:?} is not in the text");
    let text = FILE.replacen(old, new, 1);
    let json: Value = serde_json::from_str(&text).expect("still JSON");
    let validator = jsonschema::validator_for(&ball_schema()).expect("a schema");
    assert!(!validator.is_valid(&json), "the schema accepts {new:?}");
    assert!(BallFile::read(text.as_bytes()).is_err(), "the reader accepts {new:?}");
}

#[test]
fn the_ball_schema_refuses_what_the_reader_refuses() {
    refused("pithball.ball/1", "pithball.ball/2");
    refused("\"diameter_in\": 8.57", "\"diameter_in\": 3.9");
    refused("\"diameter_in\": 8.57", "\"diameter_in\": \"8.57\"");
    refused("\"diameter_in\": 8.57,", "");
    refused("\"diameter_in\": 8.57", "\"diameter_in\": 8.57, \"weight_lb\": 15");
    refused("\"density_g_cc\": 1.16", "\"density_g_cc\": 0");
    refused("\"density_g_cc\": 1.16", "\"density_g_cc\": 25.5");
    refused("\"density_g_cc\": 1.16", "\"density_g_cc\": null");
    refused("\"kind\": \"sphere\"", "\"kind\": \"blob\"");
    refused("\"kind\": \"sphere\"", "\"kind\": \"sphere\", \"height_in\": 1");
    refused("\"kind\": \"sphere\"", "\"kind\": \"sphere\", \"squash\": [0.01, 1]");
    refused("\"kind\": \"sphere\", \"diameter_in\": 7.1", "\"kind\": \"sphere\", \"diameter_in\": -1");
    refused("\"size_in\": [2.2, 2.2, 4.4]", "\"size_in\": [2.2, 0, 4.4]");
    refused("\"size_in\": [2.2, 2.2, 4.4]", "\"size_in\": [2.2, 2.2]");
    refused("\"size_in\": [2.2, 2.2, 4.4]", "\"diameter_in\": 2");
    refused("[0, -3]", "[-1, -3]");
    refused("[0, -3]", "[0, -3, 0]");
    refused("\"note\": \"", "\"note\": 1, \"x\": \"");
    refused("\"cuts\": [", "\"cuts\": [1, ");
    refused("\"pieces\": [", "\"parts\": [");
    refused("\"family\": \"reactive\"", "\"family\": \"glass\"");
    refused("\"grit\": 1000", "\"grit\": 99");
    refused("\"grit\": 1000", "\"grit\": 1000, \"polished\": \"yes\"");
    refused("{ \"grit\": 1000 }", "\"polish\"");
}

/// The same for a shot file.
#[track_caller]
fn shot_refused(old: &str, new: &str) {
    const FILE: &str = include_str!("../../../scenarios/shots/opening.shot.json");
    assert!(FILE.contains(old), "{old:?} is not in the text");
    let text = FILE.replacen(old, new, 1);
    let json: Value = serde_json::from_str(&text).expect("still JSON");
    let validator = jsonschema::validator_for(&shot_schema()).expect("a schema");
    assert!(!validator.is_valid(&json), "the schema accepts {new:?}");
    assert!(ShotFile::read(text.as_bytes()).is_err(), "the reader accepts {new:?}");
}

#[test]
fn the_shot_schema_refuses_what_the_reader_refuses() {
    shot_refused("pithball.shot/1", "pithball.ball/1");
    shot_refused("\"hand\": \"right\"", "\"hand\": \"Right\"");
    shot_refused("\"hand\": \"right\",", "");
    shot_refused("\"hand\": \"right\"", "\"hand\": \"right\", \"foot\": \"left\"");
    shot_refused("\"speed_mph\": 17.5", "\"speed_mph\": 0");
    shot_refused("\"speed_mph\": 17.5", "\"speed_mph\": 40.5");
    shot_refused("\"revs_rpm\": 300", "\"revs_rpm\": -1");
    shot_refused("\"board\": 24", "\"board\": 40");
    shot_refused("\"board\": 24", "\"board\": 24, \"arrow\": 3");
    shot_refused("\"pin_to_pap_in\": 4.5", "\"pin_to_pap_in\": -1");
    shot_refused("\"mu\": 0.2", "\"mu\": 2.5");
    shot_refused("\"mu\": 0.2", "\"oil\": 0.2");
    shot_refused("\"../balls/no-3-three-piece.ball.json\"", "3");
    shot_refused("\"../balls/no-3-three-piece.ball.json\"", "{}");
    shot_refused("\"../balls/no-3-three-piece.ball.json\"", "\"\"");
}

#[test]
fn the_shot_schema_accepts_a_ball_in_the_shot() {
    let ball: Value =
        serde_json::from_str(include_str!("../../../scenarios/balls/no-6-five-piece.ball.json")).expect("JSON");
    let mut shot: Value =
        serde_json::from_str(include_str!("../../../scenarios/shots/opening.shot.json")).expect("JSON");
    shot["ball"] = ball;
    assert!(jsonschema::validator_for(&shot_schema()).expect("a schema").is_valid(&shot));
    ShotFile::read(shot.to_string().as_bytes()).expect("the reader takes it too");
}

/// The same for a layout file.
#[track_caller]
fn layout_refused(old: &str, new: &str) {
    const FILE: &str = include_str!("../../../scenarios/layouts/league-right.layout.json");
    assert!(FILE.contains(old), "{old:?} is not in the text");
    let text = FILE.replacen(old, new, 1);
    let json: Value = serde_json::from_str(&text).expect("still JSON");
    let validator = jsonschema::validator_for(&layout_schema()).expect("a schema");
    assert!(!validator.is_valid(&json), "the schema accepts {new:?}");
    assert!(LayoutFile::read(text.as_bytes()).is_err(), "the reader accepts {new:?}");
}

#[test]
fn the_layout_schema_refuses_what_the_reader_refuses() {
    layout_refused("pithball.layout/1", "pithball.shot/1");
    layout_refused("\"hand\": \"right\",", "");
    layout_refused("\"pin_to_pap_in\": 4.5", "\"pin_to_pap_in\": 21");
    layout_refused("\"val_angle_deg\": 35", "\"val_angle_deg\": 400");
    layout_refused("\"bridge_in\": 0.3125", "\"bridge_in\": 4");
    layout_refused("\"wall_in\": 0.0625", "\"wall_in\": 0");
    layout_refused("\"diameter_in\": 0.75", "\"diameter_in\": 3.5");
    layout_refused("\"depth_in\": 2.5", "\"depth_in\": 0");
    layout_refused("\"ring_span_in\": 3.9375", "\"ring_span_in\": 7");
    layout_refused("\"side_pitch_in\": 0.125", "\"side_pitch_in\": 3");
    layout_refused("\"side_pitch_in\": 0.125", "\"side_pitch_in\": 0.1, \"oval_in\": 0.1");
    layout_refused("\"drilling\": {", "\"drilling\": { \"holes\": [],");
}

/// The same for an oil file.
#[track_caller]
fn oil_refused(old: &str, new: &str) {
    const FILE: &str = include_str!("../../../scenarios/oil/house.oil.json");
    assert!(FILE.contains(old), "{old:?} is not in the text");
    let text = FILE.replacen(old, new, 1);
    let json: Value = serde_json::from_str(&text).expect("still JSON");
    let validator = jsonschema::validator_for(&oil_schema()).expect("a schema");
    assert!(!validator.is_valid(&json), "the schema accepts {new:?}");
    assert!(OilFile::read(text.as_bytes()).is_err(), "the reader accepts {new:?}");
}

#[test]
fn the_oil_schema_refuses_what_the_reader_refuses() {
    oil_refused("pithball.oil/1", "pithball.oil/2");
    oil_refused("\"length_ft\": 40", "\"length_ft\": 9");
    oil_refused("\"volume_ml\": 24", "\"volume_ml\": 61");
    oil_refused("\"ratio\": 10", "\"ratio\": 0.5");
    oil_refused("\"end_share\": 0.3,", "");
    oil_refused("\"end_share\": 0.3", "\"end_share\": 0.3, \"colour\": 1");
    oil_refused("\"pattern\"", "\"patern\"");
    oil_refused("\"name\": \"House\"", "\"name\": \"House\", \"film\": 3");
}

#[test]
fn the_schemas_accept_a_map_and_a_lane_with_oil() {
    let row = vec![1.5; 39];
    let map = serde_json::json!({ "format": "pithball.oil/1", "name": "Map", "film_um": [row, row] });
    let oil = jsonschema::validator_for(&oil_schema()).expect("a schema");
    assert!(oil.is_valid(&map));
    let short = serde_json::json!({ "format": "pithball.oil/1", "name": "Map", "film_um": [[1.0, 2.0]] });
    assert!(!oil.is_valid(&short));
    let mut shot: Value =
        serde_json::from_str(include_str!("../../../scenarios/shots/opening.shot.json")).expect("JSON");
    let friction = serde_json::json!({ "mu_dry": 0.25 });
    let validator = jsonschema::validator_for(&shot_schema()).expect("a schema");
    for lane in [
        serde_json::json!({ "oil": "house.oil.json" }),
        serde_json::json!({ "oil": map }),
        serde_json::json!({ "oil": map, "friction": friction }),
    ] {
        shot["lane"] = lane;
        assert!(validator.is_valid(&shot), "{:?}", validator.iter_errors(&shot).next());
        ShotFile::read(shot.to_string().as_bytes()).expect("the reader takes it too");
    }
    for lane in [
        serde_json::json!({}),
        serde_json::json!({ "oil": 3 }),
        serde_json::json!({ "oil": "" }),
        serde_json::json!({ "friction": friction }),
        serde_json::json!({ "oil": map, "friction": { "mu_dry": 0.4 } }),
        serde_json::json!({ "zones": [{ "from_ft": 0, "to_ft": 63, "mu": 0.1 }], "friction": friction }),
    ] {
        shot["lane"] = lane;
        assert!(!validator.is_valid(&shot), "{}", shot["lane"]);
        assert!(ShotFile::read(shot.to_string().as_bytes()).is_err(), "{}", shot["lane"]);
    }
}

#[test]
fn the_tolerances_schema_refuses_what_the_reader_refuses() {
    const FILE: &str = r#"{ "format": "pithball.tolerances/1", "seed": 3, "balls": 1000, "spread": "bell",
        "cover": { "density_percent": 1, "diameter_in": 0.01, "core_shift_in": [0.1, 0, 0] },
        "every_piece": { "size_percent": 0.5 },
        "pieces": [{ "piece": "heart", "tilt_deg": 2 }],
        "accept": { "weight_lb": { "at_most": 15.1 }, "rg_within_in": 0.01 } }"#;
    let validator = jsonschema::validator_for(&tolerances_schema()).expect("a schema");
    TolerancesFile::read(FILE.as_bytes()).expect("it is good");
    assert!(validator.is_valid(&serde_json::from_str(FILE).expect("JSON")));
    for (old, new) in [
        ("tolerances/1", "tolerances/2"),
        ("\"seed\": 3,", ""),
        ("3,", "-1,"),
        ("3,", "3.5,"),
        ("3,", "4294967296,"),
        ("1000", "99"),
        ("1000", "1000001"),
        ("bell", "flat"),
        ("\"density_percent\": 1", "\"density_percent\": 100"),
        ("0.01, ", "-0.01, "),
        ("[0.1, 0, 0]", "[0.1, 0]"),
        ("[0.1, 0, 0]", "[13, 0, 0]"),
        ("\"size_percent\": 0.5", "\"size_percent\": \"0.5\""),
        ("\"piece\": \"heart\", ", ""),
        ("2 }", "91 }"),
        ("15.1", "null"),
        ("at_most", "below"),
        ("0.01 }", "-0.01 }"),
    ] {
        assert!(FILE.contains(old), "{old:?} is not in the text");
        let text = FILE.replacen(old, new, 1);
        let json: Value = serde_json::from_str(&text).expect("still JSON");
        assert!(!validator.is_valid(&json), "the schema accepts {new:?}");
        assert!(TolerancesFile::read(text.as_bytes()).is_err(), "the reader accepts {new:?}");
    }
}

#[test]
fn the_target_schema_refuses_what_the_reader_refuses() {
    const FILE: &str = include_str!("../../../scenarios/targets/lower-rg.target.json");
    let validator = jsonschema::validator_for(&target_schema()).expect("a schema");
    TargetFile::read(FILE.as_bytes()).expect("it is good");
    assert!(validator.is_valid(&serde_json::from_str(FILE).expect("JSON")));
    for (old, new) in [
        ("target/1", "target/2"),
        ("\"weight_lb\": 15", "\"weight_lb\": 0"),
        ("\"weight_lb\": 15", "\"weight_kg\": 7"),
        ("\"rg_in\": 2.55", "\"rg_in\": null"),
        ("\"differential_in\": 0.035", "\"differential_in\": -0.01"),
        ("\"from\": 0.6, ", ""),
        ("\"from\": 0.6", "\"from\": \"0.6\""),
        ("\"starts\": 16", "\"starts\": 0"),
        ("\"starts\": 16", "\"starts\": 1.5"),
        ("\"starts\": 16", "\"within_limits\": 1"),
        ("\"free\"", "\"fixed\""),
    ] {
        assert!(FILE.contains(old), "{old:?} is not in the text");
        let text = FILE.replacen(old, new, 1);
        let json: Value = serde_json::from_str(&text).expect("still JSON");
        assert!(!validator.is_valid(&json), "the schema accepts {new:?}");
        assert!(TargetFile::read(text.as_bytes()).is_err(), "the reader accepts {new:?}");
    }
}
