//! What is told of the way: curvature, axis rotation and tilt, the phases.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod roll_support;

use pithball_physics::lane::Hand;
use pithball_physics::roll::{Phase, trace};
use pithball_physics::units::GRAVITY_M_S2;
use roll_support::*;

/// Where friction is even, an even ball's path is a parabola whose acceleration is μg along the
/// slip (FACTS: slip keeps its direction), so curvature is μg·sin(slip to travel)/v².
#[test]
fn curvature_is_that_of_the_parabola() {
    let mut thrown = shot(17.0, 300.0, 45.0, 0.0, 1.0, lane(&[(0.0, 63.0, 0.08)]));
    for hand in [Hand::Right, Hand::Left] {
        thrown.hand = hand;
        thrown.release.launch_angle_rad = hand.side() * 0.02;
        let traced = trace(&even_ball(0.38), &thrown, 0.05).unwrap();
        for s in traced.samples.iter().filter(|s| s.phase != Phase::Roll) {
            let (v, u) = (s.velocity_m_s, s.slip_m_s.normalize());
            let expected = hand.side() * 0.08 * GRAVITY_M_S2 * v.perp(&-u) / (v.norm_squared() * v.norm());
            close(s.curvature_per_m, expected, 1e-9, "curvature");
            assert!(s.curvature_per_m > 0.0, "it bends towards the pocket");
        }
    }
}

/// Curvature summed along the path is how far the path turns: the trapezium rule against the
/// directions themselves.
#[test]
fn curvature_sums_to_the_turn_of_the_path() {
    let mut dice = Dice(77);
    for _ in 0..6 {
        let (ball, thrown) = (dice.ball(0.05), dice.shot());
        let traced = trace(&ball, &thrown, 1e-3).unwrap();
        let bend = |s: &pithball_physics::roll::Sample| s.curvature_per_m * s.velocity_m_s.norm();
        let turned: f64 =
            traced.samples.windows(2).map(|w| 0.5 * (bend(&w[0]) + bend(&w[1])) * (w[1].time_s - w[0].time_s)).sum();
        let said: f64 = traced.phases.iter().map(|phase| phase.turned_rad).sum();
        close(turned, said, 2e-4, "turn of the path");
    }
}

#[test]
fn the_axis_at_release_is_the_release_s_own_for_both_hands() {
    for hand in [Hand::Right, Hand::Left] {
        for (rotation, tilt) in [(45.0, 12.0), (-30.0, 60.0), (120.0, -20.0), (0.0, 0.0), (80.0, 0.0)] {
            let mut thrown = shot(17.0, 250.0, rotation, tilt, 0.0, oiled());
            thrown.hand = hand;
            let traced = trace(&even_ball(0.38), &thrown, 0.1).unwrap();
            let first = &traced.samples[0];
            close(first.axis_rotation_rad.unwrap().to_degrees(), rotation, 1e-9, "axis rotation");
            close(first.axis_tilt_rad.unwrap().to_degrees(), tilt, 1e-9, "axis tilt");
        }
    }
    let still = trace(&even_ball(0.38), &shot(17.0, 0.0, 45.0, 0.0, 0.0, oiled()), 0.1).unwrap();
    assert_eq!(still.samples[0].axis_rotation_rad, None);
}

/// An even ball that rolls turns square to its travel: its axis rotation is its direction.
#[test]
fn once_it_rolls_the_axis_is_square_to_the_path() {
    let traced = trace(&even_ball(0.34), &shot(17.0, 350.0, 40.0, 0.0, 0.0, oiled()), 0.05).unwrap();
    let last = traced.samples.last().unwrap();
    assert_eq!(last.phase, Phase::Roll);
    let way = libm::atan2(-last.velocity_m_s.x, last.velocity_m_s.y);
    close(last.axis_rotation_rad.unwrap(), way, 1e-9, "axis rotation");
}

#[test]
fn phases_join_and_add_up_to_the_shot() {
    let mut dice = Dice(5);
    for _ in 0..20 {
        let (ball, thrown) = (dice.ball(0.05), dice.shot());
        let traced = trace(&ball, &thrown, 0.02).unwrap();
        let (first, last) = (traced.samples[0], *traced.samples.last().unwrap());
        let phases = &traced.phases;
        assert_eq!(phases[0].from.time_s, 0.0);
        close(phases.last().unwrap().to.time_s, last.time_s, 1e-12, "end");
        for pair in phases.windows(2) {
            assert_eq!(pair[0].to, pair[1].from);
            assert_eq!(pair[0].speed_m_s[1], pair[1].speed_m_s[0]);
        }
        let sum = |of: fn(&pithball_physics::roll::Stretch) -> f64| phases.iter().map(of).sum::<f64>();
        close(
            sum(|p| p.speed_m_s[1] - p.speed_m_s[0]),
            last.velocity_m_s.norm() - first.velocity_m_s.norm(),
            1e-12,
            "speed",
        );
        close(
            sum(|p| p.spin_rad_s[1] - p.spin_rad_s[0]),
            last.omega_rad_s.norm() - first.omega_rad_s.norm(),
            1e-12,
            "spin",
        );
        if let Some(at) = traced.summary.roll_start {
            let roll = phases.iter().find(|p| p.phase == Phase::Roll).unwrap();
            close(roll.from.distance_m, at.distance_m, 1e-6, "where it rolls");
        }
        for s in &traced.samples {
            let inside = phases.iter().any(|p| p.phase == s.phase && (p.from.time_s..=p.to.time_s).contains(&s.time_s));
            assert!(inside, "{s:?}");
        }
    }
}
