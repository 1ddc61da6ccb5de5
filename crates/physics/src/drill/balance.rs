//! What drilling did: static weights and where the axes went.

use nalgebra::Vector3;

use super::{Marks, arc_rad};
use crate::units::KG_PER_OZ;
use crate::weigh::Weighed;

/// Static weights of a drilled ball about its grip: what a balance scale with
/// an arm of one ball radius would need on the other side, in ounces.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Statics {
    /// Top weight towards the grip centre; below 0: bottom weight.
    pub top_oz: f64,
    /// Finger weight; below 0: thumb weight.
    pub finger_oz: f64,
    /// Side weight towards the PAP's side (positive side); below 0: negative side.
    pub side_oz: f64,
    /// Bound on the error of each.
    pub error_oz: f64,
}

/// Static weights about a grip. The centre of gravity's moment m·cg/R, as a
/// weight, along grip centre, fingers and positive side.
pub fn statics(weighed: &Weighed, marks: &Marks) -> Statics {
    let moment_oz = weighed.cg_m * (weighed.mass_kg / weighed.radius_m / KG_PER_OZ);
    Statics {
        top_oz: moment_oz.dot(&marks.grip_centre),
        finger_oz: moment_oz.dot(&marks.up),
        side_oz: moment_oz.dot(&marks.over),
        // No point of the ball is farther than R out: R times the error of the mass.
        error_oz: weighed.relative_error * weighed.mass_kg / KG_PER_OZ,
    }
}

/// An axis of the ball before and after drilling. None where the ball has no
/// one such axis: the RGs beside it are as large.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AxisMove {
    /// Unit vector before.
    pub before: Option<Vector3<f64>>,
    /// Unit vector after, at the end nearer to `before`.
    pub after: Option<Vector3<f64>>,
    /// The angle between the two.
    pub moved_rad: Option<f64>,
}

impl AxisMove {
    /// Angle from a point to the axis's nearer end after drilling.
    pub fn to_rad(&self, point: &Vector3<f64>) -> Option<f64> {
        self.after.map(|axis| arc_rad(&axis, point).min(arc_rad(&-axis, point)))
    }
}

/// An axis known less well than this is not told: 1°.
const LEAST_KNOWN_RAD: f64 = core::f64::consts::PI / 180.0;

/// Where the axis of lowest (0), middle (1) or highest (2) RG went.
pub fn axis_move(undrilled: &Weighed, drilled: &Weighed, which: usize) -> AxisMove {
    let known = |ball: &Weighed| {
        let error_rad = ball.axis_error_rad(which)?;
        (error_rad < LEAST_KNOWN_RAD).then_some(ball.axes[which])
    };
    let (before, after) = (known(undrilled), known(drilled));
    let after = match (before, after) {
        (Some(a), Some(b)) if a.dot(&b) < 0.0 => Some(-b),
        _ => after,
    };
    let moved_rad = before.zip(after).map(|(a, b)| arc_rad(&a, &b));
    AxisMove { before, after, moved_rad }
}
