//! Skid, hook and roll, the breakpoint, and the samples.
//!
//! The order of the phases: United States Bowling Congress, ball motion study.
//! Where the hook begins is Pithball's own definition, checked as stated.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod roll_support;

use pithball_physics::lane::Zone;
use pithball_physics::lane::{Friction, Hand, board_at};
use pithball_physics::roll::{CREEP, Phase, ShotError, roll, trace};
use pithball_physics::units::{M_PER_FT, M_PER_IN};
use roll_support::{Dice, ball, close, even_ball, lane, oiled, shot};

#[test]
fn hook_starts_where_oil_ends_sharply() {
    let summary = roll(&even_ball(0.38), &shot(17.0, 350.0, 40.0, 0.0, 1.5, oiled())).unwrap();
    close(summary.hook_start.unwrap().distance_m, 40.0 * M_PER_FT, 1e-12, "hook");
    assert!(summary.roll_start.unwrap().distance_m > 40.0 * M_PER_FT);
}

#[test]
fn hook_starts_at_once_on_one_friction() {
    let lane = lane(&[(0.0, 63.0, 0.1)]);
    let summary = roll(&even_ball(0.38), &shot(17.0, 300.0, 20.0, 0.0, 1.5, lane)).unwrap();
    close(summary.hook_start.unwrap().distance_m, 0.0, 0.0, "hook");
}

/// Where friction rises slowly, half-way up the sideways pull, worked out
/// again from the samples.
#[test]
fn hook_starts_half_way_up_a_slow_rise() {
    let mu = |ft: f64| (0.04 + 0.008 * (ft - 30.0)).clamp(0.04, 0.20);
    let mut zones = vec![Zone { from_m: 0.0, to_m: 30.0 * M_PER_FT, mu: 0.04 }];
    for i in 0..80 {
        let (from, to) = (30.0 + 0.25 * f64::from(i), 30.25 + 0.25 * f64::from(i));
        zones.push(Zone { from_m: from * M_PER_FT, to_m: to * M_PER_FT, mu: mu(from + 0.125) });
    }
    zones.push(Zone { from_m: 50.0 * M_PER_FT, to_m: 63.0 * M_PER_FT, mu: 0.20 });
    let shot = shot(17.0, 600.0, 45.0, 0.0, 2.0, Friction::from_zones(&zones).unwrap());
    let run = trace(&even_ball(0.4), &shot, 0.001).unwrap();
    let pulls: Vec<(f64, f64)> = (run.samples.iter())
        .map(|s| {
            let sideways = s.slip_m_s.perp(&s.velocity_m_s) / (s.slip_m_s.norm() * s.velocity_m_s.norm());
            (s.position_m.y / M_PER_FT, mu(s.position_m.y / M_PER_FT) * sideways.abs())
        })
        .take_while(|(_, pull)| pull.is_finite())
        .collect();
    let most = pulls.iter().map(|p| p.1).fold(0.0, f64::max);
    let (expected_ft, _) = pulls.iter().find(|p| p.1 >= most / 2.0).unwrap();
    // The zones' steps are a quarter of a foot.
    close(run.summary.hook_start.unwrap().distance_m / M_PER_FT, *expected_ft, 0.2, "hook");
    assert!((36.0..40.0).contains(expected_ft));
}

/// The centre of gravity off the centre makes dying slip swing sideways, where
/// the pull can pass all that the hook itself had.
#[test]
fn hook_does_not_wait_for_slip_to_die() {
    let summary =
        roll(&ball([2.5, 2.55, 2.55], [0.0, 0.0, 0.05]), &shot(15.0, 150.0, 25.0, 5.0, 0.5, oiled())).unwrap();
    close(summary.hook_start.unwrap().distance_m, 40.0 * M_PER_FT, 1e-12, "hook");
}

#[test]
fn a_straight_ball_has_no_hook() {
    let summary = roll(&even_ball(0.4), &shot(15.0, 0.0, 0.0, 0.0, 0.5, oiled())).unwrap();
    assert_eq!(summary.hook_start, None);
    assert!(summary.roll_start.is_some());
}

#[test]
fn phases_come_in_order_and_roll_is_for_good() {
    let mut dice = Dice(53);
    let mut all_three = 0;
    for _ in 0..40 {
        let (ball, shot) = (dice.ball(0.04), dice.shot());
        let run = match trace(&ball, &shot, 0.01) {
            Err(ShotError::Hops { .. }) => continue,
            run => run.unwrap(),
        };
        let order = |phase| [Phase::Skid, Phase::Hook, Phase::Roll].iter().position(|&p| p == phase).unwrap();
        assert!(run.samples.windows(2).all(|pair| order(pair[0].phase) <= order(pair[1].phase)));
        let rolls = run.samples.iter().filter(|s| s.phase == Phase::Roll);
        assert!(rolls.clone().all(|s| s.slip_m_s.norm() <= CREEP * s.velocity_m_s.norm()), "slip while rolling");
        let seen = |phase| run.samples.iter().any(|s| s.phase == phase);
        all_three += u32::from(seen(Phase::Skid) && seen(Phase::Hook) && seen(Phase::Roll));
        assert_eq!(roll(&ball, &shot).unwrap(), run.summary, "roll and trace tell the same");
    }
    assert!(all_three > 5, "only {all_three} shots had all phases");
}

#[test]
fn samples_are_even_in_time_and_end_with_the_run() {
    let shot = shot(17.0, 300.0, 45.0, 12.0, 1.5, oiled());
    let run = trace(&ball([2.53, 2.51, 2.48], [0.01, -0.01, 0.02]), &shot, 0.125).unwrap();
    let (last, even) = run.samples.split_last().unwrap();
    for (i, s) in even.iter().enumerate() {
        close(s.time_s, 0.125 * i as f64, 1e-12, "time");
    }
    close(last.time_s, run.summary.end_time_s, 0.0, "end");
    assert!(last.time_s - even.last().unwrap().time_s <= 0.125);
    close(last.position_m.y, 60.0 * M_PER_FT, 0.0, "at the pins");
    close(last.velocity_m_s.norm(), run.summary.at_pins.unwrap().speed_m_s, 0.0, "speed");
}

/// The breakpoint is the furthest point of the path, also between samples.
#[test]
fn breakpoint_is_the_furthest_to_the_bowlers_side() {
    let mut dice = Dice(59);
    for _ in 0..40 {
        let (ball, mut shot) = (dice.ball(0.04), dice.shot());
        if dice.between(0.0, 1.0) < 0.5 {
            shot.hand = Hand::Left;
        }
        let run = match trace(&ball, &shot, 0.002) {
            Err(ShotError::Hops { .. }) => continue,
            run => run.unwrap(),
        };
        let at = run.summary.breakpoint;
        let least = run.samples.iter().map(|s| board_at(shot.hand, s.position_m.x)).fold(f64::INFINITY, f64::min);
        assert!(at.board <= least + 2e-3, "{} is not the furthest: {least}", at.board);
        close(at.board, least, 5e-3, "board");
        let there = run
            .samples
            .iter()
            .min_by(|a, b| (a.position_m.y - at.distance_m).abs().total_cmp(&(b.position_m.y - at.distance_m).abs()));
        close(board_at(shot.hand, there.unwrap().position_m.x), at.board, 5e-3, "board at its distance");
    }
}

/// Common practice, no source: mass spread outward (a higher RG) goes longer
/// before it rolls than a dense inner piece, at the same weight and release.
#[test]
fn higher_rg_goes_longer() {
    let rolls_m = |rg| {
        let summary = roll(&ball([rg; 3], [0.0; 3]), &shot(16.0, 350.0, 25.0, 5.0, 1.5, oiled())).unwrap();
        summary.roll_start.unwrap().distance_m
    };
    assert!(rolls_m(2.70) > rolls_m(2.60) && rolls_m(2.60) > rolls_m(2.48));
}

/// Common practice, no source: more differential, more flare; and the pin on
/// the axis or a quarter turn away from it, least.
#[test]
fn flare_grows_with_differential() {
    let flare = |differential: f64, pin_to_pap_in: f64| {
        let mut shot = shot(17.0, 350.0, 40.0, 10.0, 1.5, oiled());
        shot.layout.pin_to_pap_m = pin_to_pap_in * M_PER_IN;
        let core = ball([2.48 + differential, 2.48 + differential, 2.48], [0.0; 3]);
        roll(&core, &shot).unwrap().flare_per_turn_m
    };
    assert!(flare(0.05, 3.375) > flare(0.03, 3.375) && flare(0.03, 3.375) > flare(0.01, 3.375));
    assert!(flare(0.05, 3.375) > flare(0.05, 1.0));
}
