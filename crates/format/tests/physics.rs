//! What physics refuses is told at its place in the file, in the file's units and
//! in every language of the page.

#![allow(clippy::expect_used, clippy::panic, reason = "a check that fails stops its test")]

#[path = "../../../tests/shared/sayable.rs"]
mod sayable;

use physics::roll::ShotError;
use pithball_format::{
    BallFile, Lane, Oil, OilFile, OilRef, OiledLane, Problem, ShotFile, Throw, Zone, ZonedLane, in_parts,
};
use sayable::assert_sayable;
use serde_json::json;

#[track_caller]
fn told(problem: &Problem, place: &str, found: &str) {
    assert_eq!((problem.place.as_str(), problem.found.as_str()), (place, found), "{problem}");
    assert_sayable(&in_parts(|| json!(problem)));
}

#[test]
fn a_shot_that_cannot_be_followed() {
    let told = |error: ShotError, found: &str| told(&Problem::from(&error), "", found);
    told(ShotError::Hops { time_s: 1.0, distance_m: 6.096 }, "a hop at 20.0 ft");
    told(ShotError::Jams { time_s: 1.0, distance_m: 6.096 }, "a jam at 20.0 ft");
    told(ShotError::TooManySteps { time_s: 1.0, distance_m: 6.096 }, "too many steps");
}

#[test]
fn a_number_of_a_shot_that_is_out_of_range() {
    let out = |quantity, found| ShotError::OutOfRange { quantity, found, accepted: "a finite number" };
    told(&Problem::from(&out("speed_m_s", 20.0)), "release.speed_mph", "44.73873");
    told(&Problem::from(&out("axis_tilt_rad", f64::NAN)), "release.axis_tilt_deg", "NaN");
}

const SHOT: &str = include_str!("../../../scenarios/shots/opening.shot.json");
const BALL: &str = include_str!("../../../scenarios/balls/no-1-simple.ball.json");
const OIL: &str = include_str!("../../../scenarios/oil/house.oil.json");

fn thrown() -> (Throw, BallFile) {
    let shot = ShotFile::read(SHOT.as_bytes()).expect("a shot");
    (shot.throw, BallFile::read(BALL.as_bytes()).expect("a ball"))
}

/// Zones that were put together by a program: a file is checked as it is read.
#[test]
fn zones_that_do_not_make_a_lane() {
    let (mut throw, ball) = thrown();
    let Lane::Zoned(ZonedLane { zones }) = throw.lane.clone() else { panic!("zones") };
    let mut told = |change: fn(&mut Vec<Zone>), place: &str, found: &str| {
        let mut zones = zones.clone();
        change(&mut zones);
        throw.lane = Lane::Zoned(ZonedLane { zones });
        told(&throw.shot(&ball.cover).expect_err("no lane"), place, found);
    };
    told(|zones| zones[0].mu = 3.0, "lane.zones[0].mu", "3");
    told(|zones| zones[0].to_ft = -1.0, "lane.zones[0].to_ft", "-1");
    told(|zones| zones[1].from_ft += 1.0, "lane.zones[1].from_ft", "41");
    told(|zones| zones.truncate(1), "lane.zones", "zones that end at 40 ft");
}

#[test]
fn a_map_that_is_no_film() {
    let mut oil = OilFile::read(OIL.as_bytes()).expect("oil");
    let mut film_um = vec![vec![0.0; 39]; 3];
    film_um[2][4] = 150.0;
    oil.oil = Oil::Map { film_um };
    told(&oil.film().expect_err("too thick"), "film_um[2][4]", "150");
    let (mut throw, ball) = thrown();
    oil.oil = Oil::Map { film_um: vec![vec![0.0; 39]; 64] };
    throw.lane = Lane::Oiled(OiledLane { oil: OilRef::Object(Box::new(oil)), friction: None });
    told(&throw.shot(&ball.cover).expect_err("too long"), "lane.oil.film_um", "64 rows");
}
