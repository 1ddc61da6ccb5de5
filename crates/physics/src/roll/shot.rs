//! A shot as it is set up: the ball as a rigid body, the release, how the
//! ball sits in the hand, the lane. Plain data, and what is accepted of it.

use core::f64::consts::{FRAC_PI_2, FRAC_PI_4, PI};

use nalgebra::{Matrix3, Vector3};

use super::ShotError;
use crate::lane::{Friction, Hand};
use crate::units::{M_S_PER_MPH, RAD_S_PER_RPM};
use crate::weigh::Weighed;

/// Rounding allowed at the ends of an accepted range, relative.
const SLACK: f64 = 1e-12;

/// All of a ball that its motion depends on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RigidBall {
    /// Mass, above 0.
    pub mass_kg: f64,
    /// Radius, above 0.
    pub radius_m: f64,
    /// Centre of gravity from the geometric centre, in ball axes; inside the ball.
    pub cg_m: Vector3<f64>,
    /// Inertia tensor about the centre of gravity, in ball axes: symmetric,
    /// positive, no principal moment above the sum of the other two.
    pub inertia_kg_m2: Matrix3<f64>,
}

impl From<&Weighed> for RigidBall {
    fn from(ball: &Weighed) -> Self {
        Self { mass_kg: ball.mass_kg, radius_m: ball.radius_m, cg_m: ball.cg_m, inertia_kg_m2: ball.inertia_kg_m2 }
    }
}

/// The ball's state at the foul line, already on the lane.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Release {
    /// Speed of the geometric centre, above 0 and up to 40 mph (17.8816 m/s).
    pub speed_m_s: f64,
    /// Rate of spin, 0 to 1,000 rev/min (104.72 rad/s).
    pub spin_rad_s: f64,
    /// Axis rotation, −180° to 180°.
    pub axis_rotation_rad: f64,
    /// Axis tilt, −90° to 90°.
    pub axis_tilt_rad: f64,
    /// Direction of the velocity from +y, positive towards +x for both hands, −45° to 45°.
    pub launch_angle_rad: f64,
    /// Board under the ball's centre, 0.5 to 39.5.
    pub board: f64,
}

/// How the ball sits in the hand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layout {
    /// Arc on the ball's surface from pin (+z of the ball) to the positive
    /// axis point, 0 to half the circumference.
    pub pin_to_pap_m: f64,
    /// Angle at the pin from the ball's +x to the arc pin → PAP, −360° to 360°.
    pub drilling_angle_rad: f64,
    /// Turn about the outward PAP direction at release, right-handed for both
    /// hands, −360° to 360°; at 0 the pin is as high as the axis allows.
    pub start_turn_rad: f64,
}

/// A ball thrown.
#[derive(Clone, Debug, PartialEq)]
pub struct Shot {
    /// Right- or left-handed.
    pub hand: Hand,
    /// State at the foul line.
    pub release: Release,
    /// How the ball sits in the hand.
    pub layout: Layout,
    /// Friction, by zone or by oil.
    pub lane: Friction,
}

fn within(quantity: &'static str, found: f64, low: f64, high: f64, accepted: &'static str) -> Result<(), ShotError> {
    let slack = SLACK * low.abs().max(high.abs());
    if (low - slack..=high + slack).contains(&found) {
        Ok(())
    } else {
        Err(ShotError::OutOfRange { quantity, found, accepted })
    }
}

impl RigidBall {
    /// Checks that this can be a ball.
    pub(super) fn check(&self) -> Result<(), ShotError> {
        let positive = |quantity, found: f64| within(quantity, found, f64::MIN_POSITIVE, 1e6, "above 0");
        positive("mass_kg", self.mass_kg)?;
        positive("radius_m", self.radius_m)?;
        let offset_m = self.cg_m.norm();
        if offset_m.is_nan() || offset_m >= self.radius_m {
            return Err(ShotError::OutOfRange {
                quantity: "cg_m",
                found: offset_m,
                accepted: "an offset smaller than the ball's radius",
            });
        }
        let i = &self.inertia_kg_m2;
        let scale = i.trace();
        let skew = (i - i.transpose()).abs().max();
        // x·I·x > 0 by Sylvester's minors; the triangle inequality of moments
        // is that ½tr(I)·1 − I, the second moments of mass, is not negative.
        let minors = |a: &Matrix3<f64>| [a.m11, a.m11 * a.m22 - a.m12 * a.m12, a.determinant()];
        let second = Matrix3::identity() * (scale / 2.0) - i;
        let [a, b, c] = minors(&second);
        let real = skew <= 1e-9 * scale
            && minors(i).iter().all(|&minor| minor > 0.0)
            && a >= -1e-9 * scale
            && b >= -1e-9 * scale * scale
            && c >= -1e-9 * scale * scale * scale;
        if real {
            Ok(())
        } else {
            Err(ShotError::OutOfRange {
                quantity: "inertia_kg_m2",
                found: scale,
                accepted: "a symmetric positive tensor, no principal moment above the sum of the other two",
            })
        }
    }
}

impl Shot {
    /// Checks release and layout against what is accepted.
    pub(super) fn check(&self, radius_m: f64) -> Result<(), ShotError> {
        let r = &self.release;
        within("speed_m_s", r.speed_m_s, f64::MIN_POSITIVE, 40.0 * M_S_PER_MPH, "above 0 and up to 17.8816 (40 mph)")?;
        if r.speed_m_s <= 0.0 {
            return Err(ShotError::OutOfRange {
                quantity: "speed_m_s",
                found: r.speed_m_s,
                accepted: "above 0 and up to 17.8816 (40 mph)",
            });
        }
        within("spin_rad_s", r.spin_rad_s, 0.0, 1000.0 * RAD_S_PER_RPM, "0 to 104.72 (1,000 rev/min)")?;
        within("axis_rotation_rad", r.axis_rotation_rad, -PI, PI, "-π to π")?;
        within("axis_tilt_rad", r.axis_tilt_rad, -FRAC_PI_2, FRAC_PI_2, "-π/2 to π/2")?;
        within("launch_angle_rad", r.launch_angle_rad, -FRAC_PI_4, FRAC_PI_4, "-π/4 to π/4")?;
        within("board", r.board, 0.5, 39.5, "0.5 to 39.5")?;
        let l = &self.layout;
        within("pin_to_pap_m", l.pin_to_pap_m, 0.0, PI * radius_m, "0 to half the ball's circumference")?;
        within("drilling_angle_rad", l.drilling_angle_rad, -2.0 * PI, 2.0 * PI, "-2π to 2π")?;
        within("start_turn_rad", l.start_turn_rad, -2.0 * PI, 2.0 * PI, "-2π to 2π")
    }
}
