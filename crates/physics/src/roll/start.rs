//! The state at the foul line: release and layout made into numbers.

use nalgebra::{Matrix3, Rotation3, Unit, UnitQuaternion, Vector3};

use super::body::State;
use super::shot::{Layout, Release, Shot};
use super::watch::NO_SPIN_RAD_S;
use crate::lane::{Hand, x_at_m};

/// A direction this close to another (sine of the angle) has no side to it.
const ALIGNED: f64 = 1e-9;

/// Direction of the spin at release, lane frame:
/// (−cos τ cos α, −cos τ sin α, sin τ) for a right-hander, its mirror image in
/// x = 0 for a left-hander.
pub(super) fn spin_direction(hand: Hand, release: &Release) -> Vector3<f64> {
    let (sin_a, cos_a) = libm::sincos(release.axis_rotation_rad);
    let (sin_t, cos_t) = libm::sincos(release.axis_tilt_rad);
    let side = hand.side();
    Vector3::new(-cos_t * cos_a, -side * cos_t * sin_a, side * sin_t)
}

/// Axis rotation and tilt of a spin in the lane frame, the inverse of
/// [`spin_direction`]; none where there is no spin.
pub(super) fn spin_angles(hand: Hand, spin: &Vector3<f64>) -> Option<(f64, f64)> {
    let side = hand.side();
    let level = (spin.x * spin.x + spin.y * spin.y).sqrt();
    let rotation = if level > 0.0 { libm::atan2(-side * spin.y, -spin.x) } else { 0.0 };
    (spin.norm() > NO_SPIN_RAD_S).then(|| (rotation, libm::atan2(side * spin.z, level)))
}

/// The part of `v` square to the unit vector `axis`, made a unit vector; none
/// where they are aligned.
fn square_to(axis: &Vector3<f64>, v: &Vector3<f64>) -> Option<Vector3<f64>> {
    let part = v - axis * axis.dot(v);
    let size = part.norm();
    (size > ALIGNED).then(|| part / size)
}

fn frame(axis: &Vector3<f64>, side: &Vector3<f64>) -> Matrix3<f64> {
    Matrix3::from_columns(&[*axis, *side, axis.cross(side)])
}

/// How the ball is turned at release: ball axes into lane axes.
///
/// The PAP goes where the spin leaves a right-hander's ball (a left-hander:
/// where it enters). The turn that is left over puts the pin as high as it
/// can be. Where the axis is vertical, the pin points as far down the lane as
/// it can; where pin and PAP coincide (or are opposite), the ball's +x does;
/// and where that axis points along the lane, +x points up.
pub(super) fn turn(hand: Hand, release: &Release, layout: &Layout, radius_m: f64) -> UnitQuaternion<f64> {
    let pap = spin_direction(hand, release) * hand.side();
    let (sin_p, cos_p) = libm::sincos(layout.pin_to_pap_m / radius_m);
    let (sin_d, cos_d) = libm::sincos(hand.side() * layout.drilling_angle_rad);
    let pap_ball = Vector3::new(sin_p * cos_d, sin_p * sin_d, cos_p);
    let (up, down_lane) = (Vector3::z(), Vector3::y());
    let toward =
        |first: &Vector3<f64>, second: &Vector3<f64>| square_to(&pap, first).or_else(|| square_to(&pap, second));
    let (marked, aim) = match square_to(&pap_ball, &Vector3::z()) {
        Some(pin) => (pin, toward(&up, &down_lane)),
        None => (square_to(&pap_ball, &Vector3::x()).unwrap_or_else(Vector3::x), toward(&down_lane, &up)),
    };
    let aim = aim.unwrap_or(up);
    let still = frame(&pap, &aim) * frame(&pap_ball, &marked).transpose();
    let start = about(&pap, layout.start_turn_rad);
    start * UnitQuaternion::from_rotation_matrix(&Rotation3::from_matrix_unchecked(still))
}

/// A turn about a unit vector, with the same bits on every platform.
fn about(axis: &Vector3<f64>, angle_rad: f64) -> UnitQuaternion<f64> {
    let (sin, cos) = libm::sincos(angle_rad / 2.0);
    let v = axis * sin;
    Unit::new_normalize(nalgebra::Quaternion::new(cos, v.x, v.y, v.z))
}

/// The state at release.
pub(super) fn state(shot: &Shot, radius_m: f64) -> State {
    let r = &shot.release;
    let (sin_l, cos_l) = libm::sincos(r.launch_angle_rad);
    let spin = spin_direction(shot.hand, r) * r.spin_rad_s;
    let q = turn(shot.hand, r, &shot.layout, radius_m);
    [
        x_at_m(shot.hand, r.board),
        0.0,
        r.speed_m_s * sin_l,
        r.speed_m_s * cos_l,
        spin.x,
        spin.y,
        spin.z,
        q.w,
        q.i,
        q.j,
        q.k,
        0.0,
    ]
}
