//! Release and layout: the state at the foul line, in words of the file format.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod roll_support;

use core::f64::consts::{FRAC_PI_2, PI};

use nalgebra::Vector3;
use pithball_physics::lane::Hand;
use pithball_physics::roll::{Sample, Shot, trace};
use pithball_physics::units::RAD_S_PER_RPM;
use roll_support::{Dice, R_M, ball, close, oiled, shot};

fn release(shot: &Shot) -> Sample {
    trace(&ball([2.53, 2.51, 2.47], [0.0; 3]), shot, 0.1).unwrap().samples[0]
}

fn pin(s: &Sample) -> Vector3<f64> {
    s.turn * Vector3::z()
}

/// Where the positive axis point is in the lane frame.
fn pap(s: &Sample, hand: Hand) -> Vector3<f64> {
    s.omega_rad_s.normalize() * if hand == Hand::Right { 1.0 } else { -1.0 }
}

#[track_caller]
fn same(found: Vector3<f64>, expected: Vector3<f64>, what: &str) {
    close((found - expected).norm(), 0.0, 1e-9, what);
}

#[test]
fn spin_is_as_the_format_states_it() {
    let mut shot = shot(17.0, 300.0, 45.0, 12.0, 1.5, oiled());
    let (a, t) = (45_f64.to_radians(), 12_f64.to_radians());
    let right = Vector3::new(-t.cos() * a.cos(), -t.cos() * a.sin(), t.sin()) * (300.0 * RAD_S_PER_RPM);
    same(release(&shot).omega_rad_s, right, "right-hander");
    shot.hand = Hand::Left;
    let left = Vector3::new(right.x, -right.y, -right.z);
    same(release(&shot).omega_rad_s, left, "left-hander");
    // A forward roll, then: the top of the ball moves down the lane.
    assert!(left.cross(&Vector3::z()).y > 0.0);
}

#[test]
fn pap_lies_where_the_layout_puts_it_and_the_pin_as_high_as_it_can() {
    let mut dice = Dice(43);
    for _ in 0..50 {
        let mut shot = dice.shot();
        shot.layout.start_turn_rad = 0.0;
        for hand in [Hand::Right, Hand::Left] {
            shot.hand = hand;
            let s = release(&shot);
            let side = if hand == Hand::Right { 1.0 } else { -1.0 };
            let (polar, azimuth) = (shot.layout.pin_to_pap_m / R_M, side * shot.layout.drilling_angle_rad);
            let in_ball = Vector3::new(polar.sin() * azimuth.cos(), polar.sin() * azimuth.sin(), polar.cos());
            same(s.turn * in_ball, pap(&s, hand), "PAP");
            same(s.axis_body, in_ball * side, "axis in the ball");
            let axis = pap(&s, hand);
            for turn in [-0.01, 0.01] {
                let turned = nalgebra::Rotation3::from_scaled_axis(axis * turn) * pin(&s);
                assert!(turned.z <= pin(&s).z, "the pin can be higher");
            }
        }
    }
}

#[test]
fn start_turn_is_right_handed_about_the_outward_pap() {
    let mut shot = shot(17.0, 300.0, 45.0, 12.0, 0.0, oiled());
    for hand in [Hand::Right, Hand::Left] {
        shot.hand = hand;
        shot.layout.start_turn_rad = 0.0;
        let still = release(&shot);
        shot.layout.start_turn_rad = 0.7;
        let turned = release(&shot);
        let turn = nalgebra::Rotation3::from_scaled_axis(pap(&still, hand) * 0.7);
        same(pin(&turned), turn * pin(&still), "pin");
        same(turned.turn * Vector3::x(), turn * (still.turn * Vector3::x()), "+x");
    }
}

#[test]
fn a_vertical_axis_points_the_pin_down_the_lane() {
    for (tilt, hand) in [(90.0, Hand::Right), (-90.0, Hand::Right), (90.0, Hand::Left)] {
        let mut shot = shot(17.0, 300.0, 45.0, tilt, 0.0, oiled());
        shot.hand = hand;
        shot.layout.pin_to_pap_m = R_M * FRAC_PI_2;
        same(pin(&release(&shot)), Vector3::y(), "pin");
    }
}

#[test]
fn a_pin_at_the_pap_points_x_down_the_lane() {
    for pin_to_pap_m in [0.0, R_M * PI] {
        let mut shot = shot(17.0, 300.0, 0.0, 12.0, 0.0, oiled());
        shot.layout.pin_to_pap_m = pin_to_pap_m;
        let s = release(&shot);
        same(pin(&s) * if pin_to_pap_m == 0.0 { 1.0 } else { -1.0 }, pap(&s, Hand::Right), "pin");
        same(s.turn * Vector3::x(), Vector3::y(), "+x");
        // Pin at the PAP, axis vertical, and both along the lane.
        shot.release.axis_tilt_rad = FRAC_PI_2;
        same(release(&shot).turn * Vector3::x(), Vector3::y(), "+x, axis vertical");
        shot.release.axis_tilt_rad = 0.0;
        shot.release.axis_rotation_rad = FRAC_PI_2;
        same(release(&shot).turn * Vector3::x(), Vector3::z(), "+x, axis along the lane");
    }
}

#[test]
fn a_ball_without_spin_has_its_pap_where_the_release_names_it() {
    let mut shot = shot(15.0, 300.0, 30.0, 10.0, 0.0, oiled());
    let spinning = release(&shot);
    shot.release.spin_rad_s = 0.0;
    let still = release(&shot);
    same(still.axis_body, spinning.axis_body, "axis");
    close(still.turn.angle_to(&spinning.turn), 0.0, 1e-12, "turn");
}
