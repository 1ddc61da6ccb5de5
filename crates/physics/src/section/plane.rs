//! A plane through the ball and its axes.

use nalgebra::Vector3;

use crate::ball::Line;

/// A plane: the points p with p · `normal` = `depth_m`.
///
/// Seen against the normal (from the side the normal points to), `u` runs to
/// the right and `v` up: u × v = normal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plane {
    /// Unit vector.
    pub normal: Vector3<f64>,
    /// Distance of the plane from the ball's centre along `normal`; may be negative.
    pub depth_m: f64,
    /// Unit vector to the right. For a plane square to the pin axis, the
    /// ball's +x; else square to the pin axis.
    pub u: Vector3<f64>,
    /// Unit vector up: as near to the pin (+z) as the plane allows.
    pub v: Vector3<f64>,
}

impl Plane {
    /// A plane square to `normal`, which may have any length above 0. `None`
    /// where a number is not finite or the normal has no direction.
    pub fn new(normal: Vector3<f64>, depth_m: f64) -> Option<Self> {
        let largest = normal.amax();
        if !(largest > 0.0 && largest.is_finite() && depth_m.is_finite()) {
            return None;
        }
        let normal = (normal / largest).normalize();
        let across = Vector3::z().cross(&normal);
        // Nearer to square than 1e-9 rad, the direction of "up" is rounding.
        let (u, v) = if across.norm() > 1e-9 {
            let u = across.normalize();
            (u, normal.cross(&u))
        } else {
            let v = normal.cross(&Vector3::x()).normalize();
            (v.cross(&normal), v)
        };
        Some(Self { normal, depth_m, u, v })
    }

    /// The point at plane coordinates (u, v).
    pub fn point(&self, u_m: f64, v_m: f64) -> Vector3<f64> {
        self.normal * self.depth_m + self.u * u_m + self.v * v_m
    }

    /// The line along +u at height `v_m`; its parameter is u.
    pub(crate) fn line(&self, v_m: f64) -> Line {
        Line { origin_m: self.point(0.0, v_m), direction: self.u }
    }
}
