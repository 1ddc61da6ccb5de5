//! A ball on a lane without friction, its centre of gravity in the middle, is
//! a body free of torque.
//!
//! Source: L. D. Landau, E. M. Lifshitz, Mechanics, §§ 33, 36 and 37 (free
//! symmetric top; Euler's equations; the free asymmetric top's period).

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]
#![allow(clippy::approx_constant, reason = "0.318 in is a flare, not 1/π")]

mod roll_support;

use core::f64::consts::{PI, TAU};

use nalgebra::Vector3;
use pithball_physics::roll::{Sample, roll, trace};
use pithball_physics::units::M_PER_IN;
use roll_support::{Dice, R_M, ball, close, lane, shot, spin_momentum};

fn spin_in_ball(s: &Sample) -> Vector3<f64> {
    s.turn.inverse() * s.omega_rad_s
}

#[test]
fn symmetric_top_precesses_at_the_textbook_rates() {
    let ball = ball([2.53, 2.53, 2.47], [0.0; 3]);
    let (i1, i3) = (ball.inertia_kg_m2.m11, ball.inertia_kg_m2.m33);
    let run = trace(&ball, &shot(10.0, 400.0, 50.0, 20.0, 0.0, lane(&[(0.0, 63.0, 0.0)])), 0.05).unwrap();
    let first = &run.samples[0];
    let (w0, l0) = (spin_in_ball(first), spin_momentum(&ball, first));
    let body_rate = (i3 - i1) / i1 * w0.z;
    let space_rate = l0.norm() / i1;
    let pin = |s: &Sample| s.turn * Vector3::z();
    let along = l0.normalize();
    let square = |v: Vector3<f64>| v - along * along.dot(&v);
    for s in &run.samples {
        let w = spin_in_ball(s);
        close(w.z, w0.z, 5e-5 * w0.norm(), "spin about the pin");
        let azimuth = w0.y.atan2(w0.x) + body_rate * s.time_s;
        let expected = Vector3::new(azimuth.cos(), azimuth.sin(), 0.0) * w0.xy().norm();
        close((w.xy() - expected.xy()).norm(), 0.0, 5e-5 * w0.norm(), "drift of the axis in the ball");
        let turned = nalgebra::Rotation3::from_scaled_axis(along * (space_rate * s.time_s)) * square(pin(first));
        close((square(pin(s)) - turned).norm(), 0.0, 5e-5, "precession of the pin about L");
        close((spin_momentum(&ball, s) - l0).norm(), 0.0, 1e-5 * l0.norm(), "L");
    }
}

/// Period 4K(k²)/n with n² = (I₂−I₁)(2TI₃−L²)/(I₁I₂I₃): 10.07179126 s for RGs
/// 2.47, 2.50, 2.53 in and this spin.
#[test]
fn asymmetric_top_returns_after_its_period() {
    const PERIOD_S: f64 = 10.071_791_26;
    let ball = ball([2.47, 2.50, 2.53], [0.0; 3]);
    let (sin45, cos50, sin50) = (45_f64.to_radians().sin(), 50_f64.to_radians().cos(), 50_f64.to_radians().sin());
    let way = Vector3::new(45_f64.to_radians().cos(), sin45 * cos50, sin45 * sin50);
    let mut shot = shot(2.0, 300.0, 30.0, 10.0, 0.0, lane(&[(0.0, 63.0, 0.0)]));
    shot.release.spin_rad_s = 31.416;
    shot.layout.pin_to_pap_m = way.z.acos() * R_M;
    shot.layout.drilling_angle_rad = way.y.atan2(way.x);
    let run = trace(&ball, &shot, PERIOD_S / 8.0).unwrap();
    let of = |i: usize| spin_in_ball(&run.samples[i]);
    close((of(0) - way * 31.416).norm(), 0.0, 1e-12 * 31.416, "the spin asked for");
    // How the ball is turned drifts by some 1e-5 in the two seconds of a shot.
    close((of(8) - of(0)).norm() / 31.416, 0.0, 1e-4, "back after one period");
    assert!((of(4) - of(0)).norm() / 31.416 > 0.3, "far away after half");
}

#[test]
fn energy_and_momentum_of_a_free_ball_stay() {
    let mut dice = Dice(17);
    for _ in 0..20 {
        let ball = dice.ball(0.0);
        let mut shot = dice.shot();
        shot.lane = lane(&[(0.0, 63.0, 0.0)]);
        let run = trace(&ball, &shot, 0.1).unwrap();
        let l0 = spin_momentum(&ball, &run.samples[0]);
        let twice_t = |s: &Sample| s.omega_rad_s.dot(&spin_momentum(&ball, s));
        for s in &run.samples {
            close((spin_momentum(&ball, s) - l0).norm(), 0.0, 1e-5 * l0.norm(), "L");
            let t0 = twice_t(&run.samples[0]);
            close(twice_t(s), t0, 1e-6 * t0, "2T");
        }
        assert_eq!(run.summary.roll_start, None);
    }
}

/// Flare per turn 2πR[1−(low/high)²]·sin θ·cos θ, and the whole band: the
/// axis goes round the pin by 2π[1−(low/high)²]·cos θ in each turn.
#[test]
fn flare_of_a_free_symmetric_core() {
    for (low, high, per_turn_in) in [
        (2.46, 2.52, [0.449, 0.635, 0.449]),
        (2.48, 2.53, [0.374, 0.528, 0.374]),
        (2.50, 2.53, [0.225, 0.318, 0.225]),
        (2.69, 2.70, [0.071, 0.100, 0.071]),
    ] {
        for (pin_to_pap_in, expected_in) in [1.6875, 3.375, 5.0625].into_iter().zip(per_turn_in) {
            let mut shot = shot(17.0, 300.0, 45.0, 12.0, 0.0, lane(&[(0.0, 63.0, 0.0)]));
            shot.layout.pin_to_pap_m = pin_to_pap_in * M_PER_IN;
            let summary = roll(&ball([high, high, low], [0.0; 3]), &shot).unwrap();
            close(summary.flare_per_turn_m / M_PER_IN, expected_in, 0.000_6, "per turn");
            let theta = pin_to_pap_in * M_PER_IN / R_M;
            let round = TAU * (1.0 - (low / high) * (low / high)) * theta.cos();
            let widest = (1..=summary.turns as i32)
                .map(|n| 2.0 * (theta.sin() * (f64::from(n) * round / 2.0).sin().abs()).asin())
                .fold(0.0, f64::max);
            close(summary.flare_m, R_M * widest, 1e-4 * M_PER_IN, "whole band");
        }
    }
}

#[test]
fn no_flare_with_the_pin_on_the_axis_or_a_quarter_turn_away() {
    for pin_to_pap_m in [0.0, R_M * PI / 2.0] {
        let mut shot = shot(17.0, 300.0, 45.0, 12.0, 0.0, lane(&[(0.0, 63.0, 0.0)]));
        shot.layout.pin_to_pap_m = pin_to_pap_m;
        let summary = roll(&ball([2.53, 2.53, 2.47], [0.0; 3]), &shot).unwrap();
        close(summary.flare_per_turn_m, 0.0, 1e-12, "per turn");
        close(summary.flare_m, 0.0, 1e-7, "whole band");
    }
}
