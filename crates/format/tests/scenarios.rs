//! The files of Harbour Street Lanes: every one is read, kept as it is, weighs
//! within the published limits, and rolls.

#![allow(clippy::expect_used, clippy::panic, reason = "a check that fails stops its test")]

use std::fs;
use std::path::{Path, PathBuf};

use nalgebra::Vector3;
use physics::ball::Part;
use physics::roll::{RigidBall, trace};
use physics::units::{M_PER_FT, M_PER_IN};
use physics::weigh::weigh;
use pithball_format::{
    BallFile, BallRef, DrilledDoc, Form, Lane, LayoutFile, Oil, OilFile, OilMapDoc, OilRef, OiledLane, Pattern,
    RolledDoc, SAMPLE_INTERVAL_S, ShotFile, SummaryDoc, WeighedDoc, ball_schema, oil_schema, shot_schema,
};
use serde_json::Value;

fn folder(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios").join(name)
}

fn files(name: &str) -> Vec<PathBuf> {
    let mut files: Vec<PathBuf> = fs::read_dir(folder(name))
        .expect("the folder is there")
        .map(|entry| entry.expect("the folder can be read").path())
        .collect();
    files.sort();
    files
}

fn ball(file: &str) -> BallFile {
    let json = fs::read(folder("balls").join(file)).expect("the file is there");
    BallFile::read(&json).expect("a ball")
}

fn balls() -> Vec<BallFile> {
    files("balls").iter().map(|path| BallFile::read(&fs::read(path).expect("a file")).expect("a ball")).collect()
}

fn weighed(file: &BallFile) -> WeighedDoc {
    WeighedDoc::new(file, &weigh(&file.build().expect("it can be made")))
}

fn shot(path: &Path) -> (ShotFile, SummaryDoc) {
    let mut shot = ShotFile::read(&fs::read(path).expect("the file is there")).expect("a shot");
    let beside = |name: &str| fs::read(path.parent().expect("a folder").join(name)).expect("its file is there");
    let BallRef::Path(name) = &shot.ball else { panic!("its ball has a file of its own") };
    let file = BallFile::read(&beside(name)).expect("its ball");
    let file = shot.throw.laid().map_or(file.clone(), |laid| laid.drill(&file).expect("it can be drilled").file);
    let ball = file.build().expect("its ball");
    if let Lane::Oiled(lane) = &mut shot.throw.lane {
        let OilRef::Path(name) = &lane.oil else { panic!("its oil has a file of its own") };
        lane.oil = OilRef::Object(Box::new(OilFile::read(&beside(name)).expect("its oil")));
    }
    let set = shot.throw.shot(&file.cover).expect("it can be thrown");
    let traced = trace(&RigidBall::from(&weigh(&ball)), &set, SAMPLE_INTERVAL_S).expect("it rolls");
    (shot, RolledDoc::new(&file, &traced).summary)
}

/// Whole numbers may be written with or without a point.
fn same_content(a: &Value, b: &Value) -> bool {
    match (a, b) {
        (Value::Number(a), Value::Number(b)) => a.as_f64() == b.as_f64(),
        (Value::Array(a), Value::Array(b)) => a.len() == b.len() && a.iter().zip(b).all(|(a, b)| same_content(a, b)),
        (Value::Object(a), Value::Object(b)) => {
            a.len() == b.len() && a.iter().all(|(key, a)| b.get(key).is_some_and(|b| same_content(a, b)))
        }
        _ => a == b,
    }
}

#[test]
fn what_is_read_is_written_with_the_same_content() {
    for path in files("balls").iter().chain(&files("shots")).chain(&files("layouts")).chain(&files("oil")) {
        let json = fs::read(path).expect("a file");
        let written = if path.to_string_lossy().ends_with(".layout.json") {
            serde_json::to_value(LayoutFile::read(&json).expect("a layout"))
        } else if path.to_string_lossy().ends_with(".ball.json") {
            serde_json::to_value(BallFile::read(&json).expect("a ball"))
        } else if path.to_string_lossy().ends_with(".oil.json") {
            serde_json::to_value(OilFile::read(&json).expect("an oil file"))
        } else {
            serde_json::to_value(ShotFile::read(&json).expect("a shot"))
        };
        let read: Value = serde_json::from_slice(&json).expect("JSON");
        assert!(same_content(&read, &written.expect("it can be written")), "{}", path.display());
    }
}

#[test]
fn the_schemas_accept_every_file() {
    for (name, schema) in [("balls", ball_schema()), ("shots", shot_schema()), ("oil", oil_schema())] {
        let validator = jsonschema::validator_for(&schema).expect("a schema");
        for path in files(name) {
            let json: Value = serde_json::from_slice(&fs::read(&path).expect("a file")).expect("JSON");
            assert!(validator.is_valid(&json), "{}: {:?}", path.display(), validator.iter_errors(&json).next());
        }
    }
}

/// Source of all: United States Bowling Congress, Equipment Specifications and
/// Certifications, as published up to 2020.
#[test]
fn every_ball_is_within_the_published_limits() {
    let balls = balls();
    assert_eq!(balls.len(), 6);
    for file in balls {
        let name = &file.name;
        let ball = weighed(&file);
        assert!(ball.weight_lb <= 16.0, "{name}: {} lb", ball.weight_lb);
        assert!((8.500..=8.595).contains(&file.diameter_in), "{name}");
        assert!((2.460..=2.800).contains(&ball.rg_in.low), "{name}: RG {}", ball.rg_in.low);
        assert!((2.460..=2.800).contains(&ball.rg_in.high), "{name}: RG {}", ball.rg_in.high);
        assert!(ball.differential_in <= 0.060, "{name}: {} in", ball.differential_in);
        assert!(file.cover.density_g_cc <= 3.80, "{name}");
        assert!(file.pieces.iter().all(|piece| piece.density_g_cc <= 3.80), "{name}");
        // The low-RG axis leaves the ball within 1 in of the pin, which is at +z.
        let [x, y, z] = ball.axes.low;
        assert!(z > 0.0 && x.hypot(y) * file.diameter_in / 2.0 < 1.0, "{name}: {:?}", ball.axes.low);
    }
}

/// Common practice, no source: 14 to 16 lb, top weight 2 to 4 oz, cover ½ to
/// 1 in or more where there is no outer core, differential .01 and up.
#[test]
fn every_ball_is_an_ordinary_one() {
    for file in balls() {
        let name = &file.name;
        let ball = weighed(&file);
        assert!((14.0..=16.0).contains(&ball.weight_lb), "{name}: {} lb", ball.weight_lb);
        assert!((2.0..=4.0).contains(&ball.top_weight_oz), "{name}: {} oz", ball.top_weight_oz);
        assert!(ball.differential_in >= 0.010, "{name}: {} in", ball.differential_in);
        assert!(file.holes.is_none(), "{name} is not drilled yet");
        let built = file.build().expect("it can be made");
        let under_cover = |in_from_top: f64| {
            let z_m = (file.diameter_in / 2.0 - in_from_top) * M_PER_IN;
            built.part_at(&Vector3::new(0.0, 0.0, z_m)) != Some(Part::Cover)
        };
        assert!(!under_cover(0.5), "{name}: cover of at least ½ in");
        assert!(under_cover(1.0) != name.starts_with("No. 5"), "{name}: cover of 1 in");
    }
}

#[test]
fn the_six_are_what_their_names_say() {
    let names = |file: &BallFile| file.pieces.iter().map(|piece| piece.name.clone()).collect::<Vec<_>>();
    assert_eq!(names(&ball("no-1-simple.ball.json")), ["body", "pancake"]);
    assert_eq!(names(&ball("no-2-two-piece.ball.json")), ["outer core", "inner core"]);
    assert_eq!(names(&ball("no-3-three-piece.ball.json")), ["outer core", "inner core", "puck"]);
    assert_eq!(names(&ball("no-4-nested-core.ball.json")), ["outer core", "inner core", "heart"]);
    assert_eq!(names(&ball("no-5-thick-cover.ball.json")), ["core"]);
    assert_eq!(names(&ball("no-6-five-piece.ball.json")), ["outer core", "inner core", "collar", "heart", "cap"]);
}

#[test]
fn the_heart_of_the_nested_ball_lies_within_its_inner_core() {
    let mut file = ball("no-4-nested-core.ball.json");
    let heart = file.pieces.pop().expect("the heart");
    let Form::Ellipsoid { size_in } = heart.shape.form else { panic!("an ellipsoid") };
    let at_in = Vector3::from(heart.at_in.unwrap_or_default());
    let without = file.build().expect("it can be made");
    for axis in 0..3 {
        for side in [-0.5, 0.5] {
            let mut tip_in = at_in;
            tip_in[axis] += side * size_in[axis];
            assert_eq!(without.part_at(&(tip_in * M_PER_IN)), Some(Part::Piece(1)), "{tip_in:?}");
        }
    }
}

#[test]
fn the_channel_of_the_nested_ball_is_filled_by_its_outer_core() {
    let file = ball("no-4-nested-core.ball.json");
    let inner = &file.pieces[1];
    let cut = &inner.cuts.as_ref().expect("cuts")[0];
    let Form::Ring { ring_diameter_in, tube_diameter_in } = cut.shape.form else { panic!("a ring") };
    let z_in = inner.at_in.unwrap_or_default()[2] + cut.at_in.unwrap_or_default()[2];
    let part = |r_in: f64| file.build().expect("a ball").part_at(&(Vector3::new(r_in, 0.0, z_in) * M_PER_IN));
    let deepest_in = (ring_diameter_in - tube_diameter_in) / 2.0;
    assert_eq!(part(deepest_in + 0.01), Some(Part::Piece(0)));
    assert_eq!(part(deepest_in - 0.01), Some(Part::Piece(1)));
}

#[test]
fn the_core_of_the_thick_cover_has_two_lobes() {
    let file = ball("no-5-thick-cover.ball.json");
    let Form::Lathe { profile_in } = &file.pieces[0].shape.form else { panic!("a lathe") };
    let radii: Vec<f64> = profile_in.iter().map(|point| point[0]).collect();
    let lobes = radii.windows(3).filter(|r| r[0] < r[1] && r[1] > r[2]).count();
    assert_eq!(lobes, 2, "{radii:?}");
}

/// "Asymmetric" is a middle RG further below the high one than a twentieth of
/// the differential (common practice, no source).
#[test]
fn one_ball_is_asymmetric_and_the_rgs_go_from_low_to_high() {
    let all: Vec<WeighedDoc> = balls().iter().map(weighed).collect();
    let asymmetric = all.iter().filter(|ball| ball.intermediate_differential_in > 0.05 * ball.differential_in);
    assert_eq!(asymmetric.count(), 1);
    let five = weighed(&ball("no-6-five-piece.ball.json"));
    assert!((0.010..=0.020).contains(&five.intermediate_differential_in));
    assert!(five.axes.high[0] > 0.99, "the mass bias is at +x: {:?}", five.axes.high);
    let low = |with: &dyn Fn(f64) -> bool| all.iter().any(|ball| with(ball.rg_in.low));
    assert!(low(&|rg| rg < 2.52) && low(&|rg| (2.52..2.58).contains(&rg)) && low(&|rg| rg > 2.58));
    let differential = |with: &dyn Fn(f64) -> bool| all.iter().any(|ball| with(ball.differential_in));
    assert!(differential(&|d| d < 0.02) && differential(&|d| d >= 0.05));
}

#[test]
fn most_shots_meet_the_pocket_and_one_the_gutter() {
    let summaries: Vec<(String, SummaryDoc)> = files("shots")
        .iter()
        .map(|path| {
            let (file, summary) = shot(path);
            (file.name.expect("a name"), summary)
        })
        .collect();
    assert!(summaries.len() >= 8);
    let pocket = |summary: &SummaryDoc| summary.board_at_pins.is_some_and(|board| (17.0..=18.5).contains(&board));
    let near = summaries.iter().filter(|(_, summary)| pocket(summary)).count();
    assert!(near + 2 >= summaries.len(), "{near} of {}", summaries.len());
    let gutter: Vec<&String> = summaries.iter().filter(|(_, summary)| summary.gutter).map(|(name, _)| name).collect();
    assert_eq!(gutter, ["School club, a first throw"]);
}

fn patterns() -> Vec<(OilFile, Pattern)> {
    files("oil")
        .iter()
        .map(|path| {
            let file = OilFile::read(&fs::read(path).expect("a file")).expect("an oil file");
            let Oil::Pattern { pattern } = file.oil else { panic!("a pattern") };
            (file, pattern)
        })
        .collect()
}

/// Lengths 33 to 48 ft, house 39 to 42; volume about 20 to 27 mL; inside to
/// outside 8:1 and more on a house pattern, 4:1 and less on a sport one (as
/// published, and common practice). The dry lane has less oil than any.
#[test]
fn every_pattern_is_an_ordinary_one() {
    let patterns = patterns();
    assert_eq!(patterns.len(), 6);
    for (file, pattern) in &patterns {
        let film = file.film().expect("it can be laid");
        let doc = OilMapDoc::new(file, &film);
        let name = file.name.as_str();
        assert!((doc.volume_ml - pattern.volume_ml).abs() < 1e-9, "{name}: {} mL", doc.volume_ml);
        assert!((doc.ratio.expect("oil outside") - pattern.ratio).abs() < 1e-9, "{name}: {:?}", doc.ratio);
        assert!((33.0..=48.0).contains(&doc.length_ft), "{name}: {} ft", doc.length_ft);
        assert!((film.length_m() / M_PER_FT - doc.length_ft).abs() < 2.0, "{name}: {} m", film.length_m());
        assert_eq!((20.0..=27.0).contains(&doc.volume_ml), name != "Dry", "{name}: {} mL", doc.volume_ml);
        match name {
            "House" => assert!((39.0..=42.0).contains(&doc.length_ft) && doc.ratio >= Some(8.0)),
            "Wet-dry" => assert!(doc.ratio >= Some(8.0)),
            "Dry" => assert!(doc.volume_ml < 10.0),
            _ => assert!(doc.ratio <= Some(4.0 + 1e-9), "{name} is a sport pattern: {:?}", doc.ratio),
        }
    }
    let of = |name: &str| patterns.iter().find(|(file, _)| file.name == name).expect(name).1.length_ft;
    assert!(patterns.iter().all(|(file, pattern)| file.name == "Dry" || pattern.length_ft >= of("Short")));
    assert!(patterns.iter().all(|(_, pattern)| pattern.length_ft <= of("Long")));
}

/// A house pattern holds the line (common practice, no source): a ball sent a
/// little further out comes back, so that neighbouring lines end closer
/// together than on a flat pattern.
#[test]
fn the_house_pattern_steers_the_ball_back_and_the_flat_one_does_not() {
    let path = folder("shots").join("house-pattern.shot.json");
    let (file, _) = shot(&path);
    let ball = ball("no-3-three-piece.ball.json");
    let body = RigidBall::from(&weigh(&ball.build().expect("a ball")));
    let spread = |oil: &str| {
        let (oil, _) = patterns().into_iter().find(|(file, _)| file.name == oil).expect(oil);
        let mut throw = file.throw.clone();
        throw.lane = Lane::Oiled(OiledLane { oil: OilRef::Object(Box::new(oil)), friction: None });
        let mut board = |more_deg: f64| {
            throw.release.launch_angle_deg = file.throw.release.launch_angle_deg + more_deg;
            let traced = trace(&body, &throw.shot(&ball.cover).expect("a shot"), SAMPLE_INTERVAL_S).expect("it rolls");
            traced.summary.at_pins.expect("it reaches the pins").board
        };
        (board(-0.1) - board(0.3)).abs()
    };
    let (house, flat) = (spread("House"), spread("Flat"));
    assert!(house < 0.6 * flat, "{house} boards on house, {flat} on flat");
}

#[test]
fn the_opening_shot_hooks_into_the_pocket() {
    let (_, summary) = shot(&folder("shots").join("opening.shot.json"));
    let board = summary.board_at_pins.expect("it reaches the pins");
    let angle_deg = summary.entry_angle_deg.expect("it reaches the pins");
    let hook_ft = summary.hook_start_ft.expect("it hooks");
    assert!((17.2..=17.8).contains(&board), "board {board}");
    assert!((4.0..=6.0).contains(&angle_deg), "{angle_deg} degrees");
    assert!((37.0..=41.0).contains(&hook_ft), "{hook_ft} ft");
    assert!(summary.roll_start_ft.is_some_and(|feet| feet < 60.0));
}

#[test]
fn materials_are_ranges_with_their_source() {
    let json = fs::read(folder("materials.json")).expect("the file is there");
    let file: Value = serde_json::from_slice(&json).expect("JSON");
    for list in ["materials", "fillers"] {
        for material in file[list].as_array().expect("a list") {
            let name = material["name"].as_str().expect("a name");
            let range: Vec<f64> = material["density_g_cc"]
                .as_array()
                .expect("a range")
                .iter()
                .map(|end| end.as_f64().expect("a number"))
                .collect();
            assert!(range.len() == 2 && range[0] > 0.0 && range[0] <= range[1], "{name}");
            let source = material["source"].as_str().expect("a source");
            assert!("SPTMC".contains(&source[..1]), "{name}: {source}");
        }
    }
    // Every material a ball names is in the list, and the ball keeps to its range.
    let list = file["materials"].as_array().expect("a list");
    for ball in balls() {
        let pieces = ball.pieces.iter().map(|piece| (&piece.material, piece.density_g_cc));
        for (material, density) in pieces.chain([(&ball.cover.material, ball.cover.density_g_cc)]) {
            let name = material.as_deref().expect("a material");
            let known = list.iter().find(|known| known["name"] == name).expect(name);
            let within = known["density_g_cc"][0].as_f64() <= Some(density)
                && Some(density) <= known["density_g_cc"][1].as_f64();
            assert!(within, "{}: {name} at {density}", ball.name);
        }
    }
}

#[test]
fn the_layouts_drill_every_ball_within_the_rules() {
    let layouts = files("layouts");
    assert!(layouts.len() >= 2);
    for path in layouts {
        let layout = LayoutFile::read(&fs::read(&path).expect("a file")).expect("a layout");
        for file in balls() {
            let drilled = layout.laid.drill(&file).expect("it can be drilled");
            let [before, after] = [&file, &drilled.file].map(|file| weigh(&file.build().expect("it can be made")));
            let doc = DrilledDoc::new(&file, &before, &drilled, &after);
            assert!(doc.conflicts.is_empty(), "{}: {:?}", file.name, doc.conflicts);
            assert_eq!(doc.statics.verdicts, ["pass"; 3], "{}: {:?}", file.name, doc.statics);
            assert!(doc.rules.iter().all(|rule| rule.verdict != "fail"), "{}", file.name);
            // Pieces are named in order, inserts after what was there.
            let names: Vec<&str> = doc.after.pieces.iter().map(|piece| piece.name.as_str()).collect();
            assert_eq!(names.len(), 1 + file.pieces.len() + doc.inserts.len());
            assert_eq!(names.last(), doc.inserts.last().map(|insert| &insert.name));
            let shares: f64 = doc.after.pieces.iter().map(|piece| piece.rg_share).sum();
            assert!((shares - 1.0).abs() < 1e-9);
        }
    }
}
