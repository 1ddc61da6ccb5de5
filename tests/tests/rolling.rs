//! Where a ball comes to roll follows its release without a jump.
//!
//! The phases as published follow one another, skid, hook, roll (United States Bowling Congress,
//! ball motion study, as reported): a ball that has come to roll is not said to skid again by slip
//! too small to count.

#![allow(clippy::unwrap_used, reason = "a check that cannot be set up must fail loudly")]

use std::fs;
use std::path::PathBuf;

use format::{BallFile, Lane, OilFile, OilRef, OiledLane, ShotFile};
use physics::roll::{CREEP, Phase, RigidBall, Shot, Summary, roll, trace};
use physics::units::{M_PER_FT, M_S_PER_MPH, RAD_S_PER_RPM};
use physics::weigh::weigh;

fn read(path: &str) -> Vec<u8> {
    fs::read(PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../scenarios").join(path)).unwrap()
}

/// The three-piece ball, whose centre of gravity is off the centre, on the house pattern.
fn house() -> (RigidBall, Shot) {
    let file = BallFile::read(&read("balls/no-3-three-piece.ball.json")).unwrap();
    let mut throw = ShotFile::read(&read("shots/house-pattern.shot.json")).unwrap().throw;
    let oil = OilFile::read(&read("oil/house.oil.json")).unwrap();
    throw.lane = Lane::Oiled(OiledLane { oil: OilRef::Object(Box::new(oil)), friction: None });
    (RigidBall::from(&weigh(&file.build().unwrap())), throw.shot(&file.cover).unwrap())
}

/// Where it rolls, or where it ends while it slips.
fn rolls_ft(summary: &Summary) -> f64 {
    summary.roll_start.map_or(summary.end_m.y, |at| at.distance_m) / M_PER_FT
}

#[test]
fn five_revs_more_move_the_start_of_the_roll_by_inches() {
    let (ball, house) = house();
    let mut compared = 0;
    for mph in [15.0, 16.5, 18.0, 18.5, 19.5] {
        for tilt_deg in [0.0_f64, 6.0, 12.0, 18.0, 24.0] {
            for rotation_deg in [20.0_f64, 45.0] {
                let mut last: Option<Summary> = None;
                for rpm in (200..=400).step_by(5) {
                    let mut shot = house.clone();
                    shot.release.speed_m_s = mph * M_S_PER_MPH;
                    shot.release.spin_rad_s = f64::from(rpm) * RAD_S_PER_RPM;
                    shot.release.axis_tilt_rad = tilt_deg.to_radians();
                    shot.release.axis_rotation_rad = rotation_deg.to_radians();
                    let summary = roll(&ball, &shot).unwrap();
                    if let Some(last) = last.filter(|last| last.end == summary.end) {
                        let (from, to) = (rolls_ft(&last), rolls_ft(&summary));
                        let what = format!(
                            "{mph} mph, tilt {tilt_deg}, rotation {rotation_deg}, {rpm} rpm: {from} to {to} ft"
                        );
                        assert!((to - from).abs() < MOST_STEP_FT, "{what}");
                        compared += 1;
                    }
                    last = Some(summary);
                }
            }
        }
    }
    assert!(compared > 1500, "{compared}");
}

/// Five more revs a minute turn the ball by a fortieth of a turn more on its way, so what its core
/// does to dying slip comes at another place by inches, not by feet.
const MOST_STEP_FT: f64 = 0.75;

#[test]
fn a_ball_that_rolls_creeps_at_most() {
    let (ball, mut shot) = house();
    let mut crept = 0;
    for rpm in (200..=400).step_by(20) {
        shot.release.spin_rad_s = f64::from(rpm) * RAD_S_PER_RPM;
        let traced = trace(&ball, &shot, 0.002).unwrap();
        let rolling = traced.samples.iter().filter(|s| s.phase == Phase::Roll);
        let most = rolling.map(|s| s.slip_m_s.norm() / s.velocity_m_s.norm()).fold(0.0, f64::max);
        assert!(most <= CREEP, "{rpm} rpm: {most}");
        crept += u32::from(most > 0.0);
    }
    assert!(crept > 4, "only {crept} balls let go of the lane again");
}
