//! Odd shots and odd balls: a right answer or a clear error, never NaN, never a hang.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod roll_support;

use core::f64::consts::{FRAC_PI_2, FRAC_PI_4, PI};

use pithball_physics::lane::{Friction, FrictionError, Hand, Zone};
use pithball_physics::roll::{End, Layout, ShotError, Summary, roll, trace};
use pithball_physics::units::{GRAVITY_M_S2, M_PER_FT, M_PER_IN, M_S_PER_MPH, RAD_S_PER_RPM};
use roll_support::{Dice, MASS_KG, R_M, ball, close, even_ball, lane, oiled, shot};

fn finite(summary: &Summary) {
    let mut numbers = vec![
        summary.end_time_s,
        summary.end_m.x,
        summary.end_m.y,
        summary.breakpoint.board,
        summary.breakpoint.distance_m,
        summary.flare_m,
        summary.flare_per_turn_m,
        summary.turns,
    ];
    numbers.extend(summary.hook_start.iter().chain(&summary.roll_start).flat_map(|m| [m.time_s, m.distance_m]));
    if let Some(pins) = &summary.at_pins {
        numbers.extend([pins.time_s, pins.board, pins.entry_angle_rad, pins.speed_m_s, pins.spin_rad_s]);
        numbers.extend([pins.board_error, pins.entry_angle_error_rad]);
        numbers.extend(pins.axis_migration_rad);
    }
    assert!(numbers.iter().all(|n| n.is_finite()), "{summary:?}");
}

/// Corners of every accepted range, together.
#[test]
fn any_accepted_shot_ends() {
    let mut dice = Dice(47);
    let mut ends = std::collections::BTreeMap::<String, u32>::new();
    for _ in 0..400 {
        let ball = dice.ball(0.05);
        let mut shot = dice.shot();
        let mut corner = |low: f64, high: f64| match dice.between(0.0, 6.0) as u32 {
            0 => low,
            1 => high,
            2 => 0.0_f64.clamp(low, high),
            _ => dice.between(low, high),
        };
        let r = &mut shot.release;
        r.speed_m_s = corner(0.05, 40.0) * M_S_PER_MPH;
        r.spin_rad_s = corner(0.0, 1000.0) * RAD_S_PER_RPM;
        r.axis_rotation_rad = corner(-PI, PI);
        r.axis_tilt_rad = corner(-FRAC_PI_2, FRAC_PI_2);
        r.launch_angle_rad = corner(-FRAC_PI_4, FRAC_PI_4) * 0.05;
        r.board = corner(0.5, 39.5);
        shot.layout.pin_to_pap_m = corner(0.0, PI * R_M);
        let (oil, dry) = (corner(0.0, 2.0), corner(0.0, 2.0));
        shot.lane = lane(&[(0.0, 40.0, oil), (40.0, 63.0, dry)]);
        let name = match roll(&ball, &shot) {
            Ok(summary) => {
                finite(&summary);
                format!("{:?}", summary.end)
            }
            Err(ShotError::Hops { .. }) => "hops".to_owned(),
            Err(error) => panic!("{error}: {ball:?} {shot:?}"),
        };
        *ends.entry(name).or_default() += 1;
    }
    for end in ["Pins", "Gutter", "FoulLine", "hops"] {
        assert!(ends.contains_key(end), "no shot ended so: {ends:?}");
    }
}

#[test]
fn a_rolling_ball_stays_rolling_whatever_the_friction() {
    let mut shot = shot(15.0, 0.0, 0.0, 0.0, 0.0, lane(&[(0.0, 20.0, 0.0), (20.0, 63.0, 0.3)]));
    shot.release.spin_rad_s = shot.release.speed_m_s / R_M;
    let summary = roll(&even_ball(0.38), &shot).unwrap();
    let pins = summary.at_pins.unwrap();
    close(summary.roll_start.unwrap().distance_m, 0.0, 0.0, "rolls from the release");
    close(pins.speed_m_s, shot.release.speed_m_s, 1e-12, "speed");
    close(pins.time_s, 60.0 * M_PER_FT / shot.release.speed_m_s, 1e-9, "time");
    assert_eq!(summary.hook_start, None);
}

#[test]
fn without_friction_a_slipping_ball_never_rolls_and_goes_straight() {
    let shot = shot(17.0, 300.0, 45.0, 12.0, 0.3, lane(&[(0.0, 63.0, 0.0)]));
    let summary = roll(&even_ball(0.38), &shot).unwrap();
    assert_eq!((summary.roll_start, summary.hook_start), (None, None));
    close(summary.at_pins.unwrap().entry_angle_rad, -0.3_f64.to_radians(), 1e-12, "angle");
}

/// Strong backspin on a slow ball: it comes back over the foul line with the
/// closed form's final velocity (v₀ + kRω₀×ẑ)/(1+k), which points backwards.
#[test]
fn backspin_brings_a_slow_ball_back() {
    let mut shot = shot(3.0, 500.0, 180.0, 0.0, 0.0, lane(&[(0.0, 63.0, 0.3)]));
    shot.release.axis_rotation_rad = PI;
    let run = trace(&even_ball(0.4), &shot, 0.05).unwrap();
    assert_eq!(run.summary.end, End::FoulLine);
    assert_eq!(run.summary.at_pins, None);
    let last = run.samples.last().unwrap();
    let expected = (shot.release.speed_m_s - 0.4 * R_M * shot.release.spin_rad_s) / 1.4;
    close(last.position_m.y, 0.0, 1e-12, "at the foul line");
    close(last.velocity_m_s.y, expected, 1e-9, "final velocity");
}

#[test]
fn a_ball_that_stops_ends_at_the_time_limit() {
    let mut shot = shot(3.0, 0.0, 180.0, 0.0, 0.0, lane(&[(0.0, 63.0, 0.3)]));
    shot.release.axis_rotation_rad = PI;
    // Backspin that just uses up the speed: v₀ = kRω₀.
    shot.release.spin_rad_s = shot.release.speed_m_s / (0.4 * R_M);
    let summary = roll(&even_ball(0.4), &shot).unwrap();
    assert_eq!(summary.end, End::TimeLimit);
    finite(&summary);
    let stops_m = shot.release.speed_m_s.powi(2) / (2.0 * 0.3 * GRAVITY_M_S2);
    close(summary.end_m.y, stops_m, 1e-5, "where it stops");
}

#[test]
fn a_spinning_top_without_sideways_spin_skids_straight() {
    for tilt in [90.0, -90.0] {
        let summary = roll(&even_ball(0.4), &shot(16.0, 400.0, 0.0, tilt, 0.0, oiled())).unwrap();
        let pins = summary.at_pins.unwrap();
        close(summary.end_m.x, 0.0, 1e-12, "x");
        // The spin about the vertical is untouched.
        assert!(pins.spin_rad_s > 400.0 * RAD_S_PER_RPM);
    }
}

#[test]
fn a_gutter_ball_ends_at_the_lanes_edge() {
    for (hand, launch) in [(Hand::Right, 3.0), (Hand::Left, 3.0), (Hand::Right, -5.0)] {
        let mut shot = shot(17.0, 0.0, 0.0, 0.0, launch, oiled());
        shot.hand = hand;
        let run = trace(&even_ball(0.4), &shot, 0.1).unwrap();
        assert_eq!(run.summary.end, End::Gutter);
        assert_eq!(run.summary.at_pins, None);
        close(run.summary.end_m.x.abs(), 20.75 * M_PER_IN, 1e-12, "edge");
        close(run.summary.end_m.y, 20.75 * M_PER_IN / launch.abs().to_radians().tan(), 1e-9, "distance");
        close(run.samples.last().unwrap().time_s, run.summary.end_time_s, 0.0, "last sample");
    }
}

#[test]
fn released_at_the_edge() {
    let mut shot = shot(17.0, 0.0, 0.0, 0.0, 1.0, oiled());
    shot.release.board = 0.5;
    let summary = roll(&even_ball(0.4), &shot).unwrap();
    assert_eq!(summary.end, End::Gutter);
    close(summary.end_m.y, 0.0, 1e-9, "at once");
    shot.release.launch_angle_rad = -shot.release.launch_angle_rad;
    assert_eq!(roll(&even_ball(0.4), &shot).unwrap().end, End::Pins);
}

/// Just after release the normal force is the coupled value: with the centre
/// of gravity at height h above the centre of a ball that spins about a level
/// axis at ω, a uniform tensor and no friction, N = mg − m·h·ω² (from the
/// equations of motion, taken at that instant by hand).
#[test]
fn normal_force_is_coupled_to_the_offset() {
    let (h_in, rpm): (f64, f64) = (0.05, 300.0);
    let mut shot = shot(17.0, rpm, 0.0, 0.0, 0.0, lane(&[(0.0, 63.0, 0.0)]));
    // Pin a quarter turn from the PAP and as high as it can be: on top.
    shot.layout.pin_to_pap_m = R_M * FRAC_PI_2;
    let run = trace(&ball([2.6; 3], [0.0, 0.0, h_in]), &shot, 0.1).unwrap();
    let omega = rpm * RAD_S_PER_RPM;
    let expected = MASS_KG * (GRAVITY_M_S2 - h_in * M_PER_IN * omega * omega);
    close(run.samples[0].normal_n, expected, 1e-9, "N");
}

#[test]
fn a_ball_that_would_hop_says_so() {
    let shot = shot(17.0, 600.0, 0.0, 0.0, 0.0, oiled());
    let error = roll(&ball([2.6; 3], [0.0, 0.5, 0.0]), &shot).unwrap_err();
    assert!(matches!(error, ShotError::Hops { .. }), "{error}");
    assert!(error.to_string().contains("hop off the lane"), "{error}");
}

#[test]
fn numbers_out_of_range_are_refused_by_name() {
    let good = shot(17.0, 300.0, 45.0, 12.0, 1.0, oiled());
    let core = ball([2.53, 2.53, 2.48], [0.0; 3]);
    let refused = |change: &dyn Fn(&mut pithball_physics::roll::Shot)| {
        let mut shot = good.clone();
        change(&mut shot);
        match roll(&core, &shot) {
            Err(ShotError::OutOfRange { quantity, .. }) => quantity,
            other => panic!("{other:?}"),
        }
    };
    for bad in [0.0, -1.0, 18.0, f64::NAN, f64::INFINITY] {
        assert_eq!(refused(&|s| s.release.speed_m_s = bad), "speed_m_s");
    }
    assert_eq!(refused(&|s| s.release.spin_rad_s = 105.0), "spin_rad_s");
    assert_eq!(refused(&|s| s.release.axis_rotation_rad = 3.2), "axis_rotation_rad");
    assert_eq!(refused(&|s| s.release.axis_tilt_rad = f64::NAN), "axis_tilt_rad");
    assert_eq!(refused(&|s| s.release.launch_angle_rad = 0.8), "launch_angle_rad");
    assert_eq!(refused(&|s| s.release.board = 0.4), "board");
    assert_eq!(refused(&|s| s.layout = Layout { pin_to_pap_m: -0.1, ..s.layout }), "pin_to_pap_m");
    let mut heavy = core;
    heavy.cg_m.x = 0.2;
    assert!(matches!(roll(&heavy, &good), Err(ShotError::OutOfRange { quantity: "cg_m", .. })));
    let mut flat = core;
    flat.inertia_kg_m2 *= nalgebra::Matrix3::from_diagonal(&nalgebra::Vector3::new(1.0, 1.0, 3.0));
    assert!(matches!(roll(&flat, &good), Err(ShotError::OutOfRange { quantity: "inertia_kg_m2", .. })));
    assert!(trace(&core, &good, 0.0).is_err() && trace(&core, &good, f64::NAN).is_err());
}

#[test]
fn zones_must_cover_the_lane_once() {
    let zone = |from: f64, to: f64, mu| Zone { from_m: from * M_PER_FT, to_m: to * M_PER_FT, mu };
    let of = |zones: &[Zone]| Friction::from_zones(zones).unwrap_err();
    assert!(matches!(of(&[]), FrictionError::Short { .. }));
    assert!(matches!(of(&[zone(0.0, 60.0, 0.1)]), FrictionError::Short { .. }));
    assert!(matches!(of(&[zone(0.0, 40.0, 0.1), zone(41.0, 63.0, 0.1)]), FrictionError::Join { zone: 1, .. }));
    assert!(matches!(of(&[zone(0.0, 40.0, 0.1), zone(39.0, 63.0, 0.1)]), FrictionError::Join { zone: 1, .. }));
    assert!(matches!(of(&[zone(1.0, 63.0, 0.1)]), FrictionError::Join { zone: 0, .. }));
    assert!(matches!(of(&[zone(0.0, 63.0, 2.1)]), FrictionError::Mu { zone: 0, .. }));
    assert!(matches!(of(&[zone(0.0, 63.0, f64::NAN)]), FrictionError::Mu { .. }));
    assert!(matches!(of(&[zone(0.0, f64::NAN, 0.1)]), FrictionError::Ends { .. }));
    let swapped = Friction::from_zones(&[zone(40.0, 63.0, 0.2), zone(0.0, 40.0, 0.04)]).unwrap();
    assert_eq!(swapped, oiled());
}
