//! Lanes, oil and friction that cannot be.

use crate::support::{BALL, OIL, SHOT, check_ball, oil, shot, told, with};
use pithball_format::{BallFile, FrictionCurveDoc, OilFile, ShotFile, Throw};

#[test]
fn zones_that_do_not_cover_the_lane() {
    shot("\"from_ft\": 40", "\"from_ft\": 41", "lane.zones[1].from_ft", "41");
    shot("\"from_ft\": 40", "\"from_ft\": 39", "lane.zones[1].from_ft", "39");
    shot("\"from_ft\": 0", "\"from_ft\": 1", "lane.zones[0].from_ft", "1");
    shot("\"to_ft\": 63", "\"to_ft\": 60", "lane.zones[1].to_ft", "60");
    shot("\"to_ft\": 63", "\"to_ft\": 40", "lane.zones[1].to_ft", "40");
    shot(
        r#"[ { "from_ft": 0, "to_ft": 40, "mu": 0.04 }, { "from_ft": 40, "to_ft": 63, "mu": 0.20 } ]"#,
        "[]",
        "lane.zones",
        "a list of 0",
    );
}

#[test]
fn zones_may_stand_in_any_order() {
    let text = with(
        SHOT,
        r#"{ "from_ft": 0, "to_ft": 40, "mu": 0.04 }, { "from_ft": 40, "to_ft": 63, "mu": 0.20 }"#,
        r#"{ "from_ft": 40, "to_ft": 63, "mu": 0.20 }, { "from_ft": 0, "to_ft": 40, "mu": 0.04 }"#,
    );
    ShotFile::read(text.as_bytes()).expect("zones in another order");
}

#[test]
fn oil_that_cannot_be() {
    oil("oil/1", "oil/2", "format", "\"pithball.oil/2\"");
    oil("\"name\": \"House\",", "", "name", "nothing");
    oil("\"length_ft\": 40", "\"length_ft\": 64", "pattern.length_ft", "64");
    oil("\"volume_ml\": 24", "\"volume_ml\": -1", "pattern.volume_ml", "-1");
    oil("\"ratio\": 10", "\"ratio\": 101", "pattern.ratio", "101");
    oil("\"ratio\": 10", "\"ratio\": \"10:1\"", "pattern.ratio", "\"10:1\"");
    oil("\"thin_to_board\": 8", "\"thin_to_board\": 6", "pattern.thin_to_board", "6");
    oil("\"full_from_board\": 12", "\"full_from_board\": 8", "pattern.full_from_board", "8");
    oil("\"full_from_board\": 12", "\"full_from_board\": 19", "pattern.full_from_board", "19");
    oil("\"front_ft\": 8.5", "\"front_ft\": 40.5", "pattern.front_ft", "40.5");
    oil("\"end_share\": 0.3", "\"end_share\": 1.1", "pattern.end_share", "1.1");
    oil("\"buff_ft\": 3", "\"buff_ft\": 32", "pattern.buff_ft", "32");
    oil("\"buff_ft\": 3", "\"buff_ft\": 3, \"brush\": 1", "pattern.brush", "the unknown key \"brush\"");
    oil("\"length_ft\": 40, ", "", "pattern.length_ft", "nothing");
    oil("\"pattern\"", "\"patern\"", "patern", "the unknown key \"patern\"");
    oil("\"name\"", "\"film_um\": [], \"name\"", "", "pattern and film_um");
    let empty = r#"{ "format": "pithball.oil/1", "name": "x" }"#;
    let problem = OilFile::read(empty.as_bytes()).expect_err("no oil");
    assert_eq!(problem.found, "neither pattern nor film_um");
}

#[test]
fn oil_maps_that_cannot_be() {
    let map = |rows: &str| format!(r#"{{ "format": "pithball.oil/1", "name": "x", "film_um": {rows} }}"#);
    let row = |last: &str| format!("[{}{last}]", "1, ".repeat(38));
    let check = |rows: &str, place: &str, found: &str| {
        let problem = OilFile::read(map(rows).as_bytes()).expect_err("a mistake that goes unseen");
        told(&problem, place, found);
    };
    OilFile::read(map(&format!("[{}]", row("1"))).as_bytes()).and_then(|file| file.film()).expect("a map");
    OilFile::read(map("[]").as_bytes()).and_then(|file| file.film()).expect("a dry lane");
    check("1", "film_um", "1");
    check("[[1, 2]]", "film_um[0]", "a list of 2");
    check(&format!("[{}, 3]", row("1")), "film_um[1]", "3");
    check(&format!("[{}]", row("-0.5")), "film_um[0][38]", "-0.5");
    check(&format!("[{}]", row("100.5")), "film_um[0][38]", "100.5");
    check(&format!("[{}]", row("null")), "film_um[0][38]", "null");
    check(&format!("[{}]", vec![row("1"); 64].join(", ")), "film_um", "64 rows");
}

/// The lane of [`SHOT`] instead of its zones, read and made ready to roll on.
#[track_caller]
fn lane(lane: &str, place: &str, found: &str) {
    let zones =
        r#"{ "zones": [ { "from_ft": 0, "to_ft": 40, "mu": 0.04 }, { "from_ft": 40, "to_ft": 63, "mu": 0.20 } ] }"#;
    let text = with(SHOT, zones, lane);
    let cover = BallFile::read(BALL.as_bytes()).expect("the ball").cover;
    let problem = Throw::read(text.as_bytes()).and_then(|throw| throw.shot(&cover)).expect_err("a mistake");
    told(&problem, place, found);
}

#[test]
fn lanes_of_oil_that_cannot_be() {
    let with_oil = |friction: &str| format!(r#"{{ "oil": {OIL}, "friction": {friction} }}"#);
    lane("{}", "lane.zones", "nothing");
    lane("{ \"oil\": \"\" }", "lane.oil", "\"\"");
    lane("{ \"oil\": 3 }", "lane.oil", "3");
    lane("{ \"oil\": \"house.oil.json\" }", "lane.oil", "\"house.oil.json\"");
    lane("{ \"zones\": [], \"oil\": \"a\" }", "lane", "zones and oil");
    lane("{ \"zones\": [], \"friction\": {} }", "lane.friction", "the unknown key \"friction\"");
    lane(&format!("{{ \"oil\": {} }}", with(OIL, "40", "9")), "lane.oil.pattern.length_ft", "9");
    lane(&format!("{{ \"oil\": {} }}", with(OIL, "8.5", "39")), "lane.oil.pattern.buff_ft", "3");
    lane(&with_oil("{ \"mu_dry\": 0.33 }"), "lane.friction.mu_dry", "0.33");
    lane(&with_oil("{ \"mu_oil\": 0.3 }"), "lane.friction.mu_oil", "0.3");
    lane(&with_oil("{ \"film_half_um\": 0 }"), "lane.friction.film_half_um", "0");
    lane(&with_oil("{ \"mu\": 0.1 }"), "lane.friction.mu", "the unknown key \"mu\"");
    lane(&with_oil("3"), "lane.friction", "3");
}

#[test]
fn covers_and_friction_curves_that_cannot_be() {
    let cover = |more: &str| with(BALL, "\"density_g_cc\": 1.18", &format!("\"density_g_cc\": 1.18, {more}"));
    check_ball(&cover("\"family\": \"glass\""), "cover.family", "\"glass\"");
    check_ball(&cover("\"finish\": \"polish\""), "cover.finish", "\"polish\"");
    check_ball(&cover("\"finish\": {}"), "cover.finish.grit", "nothing");
    check_ball(&cover("\"finish\": { \"grit\": 50 }"), "cover.finish.grit", "50");
    check_ball(&cover("\"finish\": { \"grit\": 500, \"polished\": 1 }"), "cover.finish.polished", "1");
    let curve = |cover: &str, friction: &str| FrictionCurveDoc::read(cover.as_bytes(), friction.as_bytes());
    let good = r#"{ "density_g_cc": 1.2 }"#;
    assert_eq!(curve(good, "null").expect("a curve").points.first().map(|point| point.mu), Some(0.2));
    assert_eq!(curve("{}", "null").expect_err("no density").place, "cover.density_g_cc");
    assert_eq!(curve(good, "{ \"mu_oil\": 0.3 }").expect_err("above mu_dry").place, "friction.mu_oil");
}
