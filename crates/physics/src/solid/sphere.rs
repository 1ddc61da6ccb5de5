//! The unit sphere: every sphere and ellipsoid is one, scaled.

use nalgebra::Vector3;

use super::{Hits, roots::quadratic};
use crate::moments::Moments;

/// Where the line `p + t d` crosses the unit sphere.
pub(super) fn cross(p: &Vector3<f64>, d: &Vector3<f64>, hits: &mut Hits) {
    if let Some((from, to)) = quadratic(d.norm_squared(), p.dot(d), p.norm_squared() - 1.0) {
        hits.extend([(from, 0), (to, 0)]);
    }
}

/// Moments of the unit ball: ∫x² = 4π/15.
pub(super) fn moments() -> Moments {
    let second = 4.0 * core::f64::consts::PI / 15.0;
    Moments::diagonal(4.0 * core::f64::consts::PI / 3.0, 0.0, [second; 3])
}

/// Distances along `u` at which lines parallel to `d`, through `b + r u`, touch the sphere.
pub(super) fn breaks(b: &Vector3<f64>, u: &Vector3<f64>, d: &Vector3<f64>, out: &mut Vec<f64>) {
    let across = |w: &Vector3<f64>| w - d * (w.dot(d) / d.norm_squared());
    let (b, u) = (across(b), across(u));
    if let Some((from, to)) = quadratic(u.norm_squared(), b.dot(&u), b.norm_squared() - 1.0) {
        out.extend([from, to]);
    }
}
