//! Sphere-symmetric balls against closed results.
//!
//! Source: L. Euler, "De la percussion des corps" (1745) and
//! G.-G. Coriolis, Théorie mathématique des effets du jeu de billard (1835):
//! while a uniform sphere slips, the slip keeps its direction, so the path is
//! a parabola; slip ends at t = |u₀|·k/[(1+k)·μg] with k = (RG/R)²; the final
//! velocity is v₀ − u₀·k/(1+k) … = (v₀ + kRω₀×ẑ)/(1+k), whatever the friction.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod roll_support;

use nalgebra::Vector2;
use pithball_physics::roll::{End, Shot, roll, trace};
use pithball_physics::units::{GRAVITY_M_S2, M_PER_FT, M_PER_IN};
use roll_support::{Dice, MASS_KG, R_M, close, energy, even_ball, lane, oiled, shot};

/// v₀ and Rω₀ × ẑ of a shot's release.
fn start(shot: &Shot) -> (Vector2<f64>, Vector2<f64>) {
    let r = &shot.release;
    let (sin_a, cos_a) = r.axis_rotation_rad.sin_cos();
    let spin = r.spin_rad_s * r.axis_tilt_rad.cos();
    (
        Vector2::new(r.launch_angle_rad.sin(), r.launch_angle_rad.cos()) * r.speed_m_s,
        Vector2::new(-sin_a, cos_a) * (spin * R_M),
    )
}

/// The table was computed from the closed form, apart from this code. Its
/// first rows give the axis rotation from the direction of travel; a shot's
/// is from the lane, hence less by the launch angle.
#[test]
fn the_table_of_releases_to_its_printed_digits() {
    let first = 45.0 - 1.8;
    let all = || lane(&[(0.0, 63.0, 0.12)]);
    // Printed as 0.3384: an RG of 2.50 in.
    let low_rg = (2.50_f64 / 4.2975).powi(2);
    for (mph, rpm, rotation, launch, lane, k, x_in, entry_deg, speed, time_s, rolls_ft) in [
        (17.9, 416.0, first, 1.8, oiled(), 0.4, 15.67, 6.388, 6.745, 2.450, Some(52.13)),
        (17.9, 416.0, first, 1.8, oiled(), low_rg, 13.61, 5.297, 6.882, 2.442, Some(49.99)),
        (19.0, 220.0, 80.0, 0.0, oiled(), 0.4, 19.03, 5.976, 6.371, 2.338, None),
        (15.0, 0.0, 0.0, 0.0, oiled(), 0.4, 0.0, 0.0, 4.790, 3.128, Some(50.42)),
        (17.9, 416.0, first, 1.8, all(), 0.4, 49.21, 6.388, 6.745, 2.594, Some(33.55)),
    ] {
        let mut shot = shot(mph, rpm, rotation, 0.0, launch, lane);
        // Room for 49 in of hook: the closed form knows no gutter.
        let room_in: f64 = if x_in > 20.0 { 20.7 } else { 0.0 };
        shot.release.board = 20.0 - room_in / (41.5 / 39.0);
        let summary = roll(&even_ball(k), &shot).unwrap();
        let Some(pins) = summary.at_pins else {
            assert!(x_in - room_in > 20.75, "{summary:?}");
            continue;
        };
        close((20.0 - shot.release.board) * 41.5 / 39.0 - summary.end_m.x / M_PER_IN, x_in, 0.005, "x");
        close(pins.entry_angle_rad.to_degrees(), entry_deg, 0.0005, "entry");
        close(pins.speed_m_s, speed, 0.0005, "speed");
        close(pins.time_s, time_s, 0.0005, "time");
        match (rolls_ft, summary.roll_start) {
            (Some(expected), Some(at)) => close(at.distance_m / M_PER_FT, expected, 0.005, "rolls"),
            (None, None) => {}
            other => panic!("{other:?}"),
        }
    }
}

/// The rows of the table whose hook is wider than the lane leave it; until
/// then the path is the closed form's.
#[test]
fn wide_hooks_follow_the_closed_form_into_the_gutter() {
    for (mph, rpm, rotation) in [(18.0, 325.0, 70.0), (19.0, 520.0, 60.0)] {
        let mut shot = shot(mph, rpm, rotation, 0.0, 0.0, oiled());
        shot.release.board = 20.0;
        let run = trace(&even_ball(0.4), &shot, 0.05).unwrap();
        assert_eq!(run.summary.end, End::Gutter);
        let (v0, spin) = start(&shot);
        let way = (v0 - spin).normalize();
        for s in run.samples.iter().filter(|s| s.position_m.y < 40.0 * M_PER_FT) {
            let expected = v0 * s.time_s - way * (0.5 * 0.04 * GRAVITY_M_S2 * s.time_s * s.time_s);
            close((s.position_m - expected).norm(), 0.0, 1e-9, "path in oil");
        }
        let entered = run.samples.iter().find(|s| s.position_m.y > 40.0 * M_PER_FT).unwrap();
        close(entered.slip_m_s.normalize().dot(&way), 1.0, 1e-12, "slip keeps its direction");
    }
}

#[test]
fn any_release_and_any_k_on_one_friction() {
    let mut dice = Dice(3);
    let mut rolled = 0;
    for _ in 0..200 {
        let k = dice.between(0.15, 0.66);
        let mu = dice.between(0.03, 0.5);
        let mut shot = shot(
            dice.between(8.0, 20.0),
            dice.between(0.0, 500.0),
            dice.between(-40.0, 40.0),
            dice.between(-60.0, 60.0),
            dice.between(-1.0, 1.0),
            lane(&[(0.0, 63.0, mu)]),
        );
        shot.layout.start_turn_rad = dice.between(-3.0, 3.0);
        let ball = even_ball(k);
        let run = trace(&ball, &shot, 0.02).unwrap();
        let (v0, spin) = start(&shot);
        let slip = v0 - spin;
        let ends_s = slip.norm() * k / ((1.0 + k) * mu * GRAVITY_M_S2);
        let final_velocity = (v0 + spin * k) / (1.0 + k);
        for s in &run.samples {
            if s.time_s < ends_s {
                let t = s.time_s;
                let path = v0 * t - slip.normalize() * (0.5 * mu * GRAVITY_M_S2 * t * t);
                let from = run.samples[0].position_m;
                close((s.position_m - from - path).norm(), 0.0, 1e-8, "parabola");
            } else {
                close((s.velocity_m_s - final_velocity).norm(), 0.0, 1e-7, "final velocity");
            }
            close(s.normal_n, MASS_KG * GRAVITY_M_S2, 1e-9, "normal force");
        }
        if let Some(at) = run.summary.roll_start {
            close(at.time_s, ends_s, 1e-7, "slip ends");
            let lost = energy(&ball, &run.samples[0]) - energy(&ball, run.samples.last().unwrap());
            let expected = 0.5 * MASS_KG * k / (1.0 + k) * slip.norm_squared();
            close(lost, expected, 1e-6 * expected, "energy lost");
            rolled += 1;
        }
    }
    assert!(rolled > 60, "only {rolled} rolled");
}

#[test]
fn final_velocity_does_not_depend_on_the_pattern() {
    let velocity = |lane| {
        let summary = roll(&even_ball(0.37), &shot(14.0, 250.0, 15.0, 10.0, 1.0, lane)).unwrap();
        assert!(summary.roll_start.is_some());
        let pins = summary.at_pins.unwrap();
        (pins.speed_m_s, pins.entry_angle_rad)
    };
    let one = velocity(oiled());
    let other = velocity(lane(&[(0.0, 20.0, 0.08), (20.0, 30.0, 0.0), (30.0, 63.0, 0.3)]));
    close(one.0, other.0, 1e-8, "speed");
    close(one.1, other.1, 1e-8, "angle");
}

/// Same release, both roll: a lower RG rolls earlier and enters at a smaller
/// angle, for it stores less spin momentum (from the final velocity above).
#[test]
fn lower_rg_rolls_earlier_at_a_smaller_angle() {
    let of = |k| roll(&even_ball(k), &shot(16.0, 350.0, 25.0, 0.0, 1.5, oiled())).unwrap();
    let (low, high) = (of(0.33), of(0.42));
    assert!(low.roll_start.unwrap().distance_m < high.roll_start.unwrap().distance_m);
    assert!(low.at_pins.unwrap().entry_angle_rad < high.at_pins.unwrap().entry_angle_rad);
}
