//! The cube from −1 to 1: every box is one, scaled.

use nalgebra::Vector3;

use super::Hits;
use crate::moments::Moments;

/// Where the line `p + t d` crosses the cube. Surface 2i is the side at −1 on
/// axis i, 2i + 1 the side at +1.
pub(super) fn cross(p: &Vector3<f64>, d: &Vector3<f64>, hits: &mut Hits) {
    let mut from = (f64::NEG_INFINITY, 0);
    let mut to = (f64::INFINITY, 0);
    for axis in 0..3 {
        if d[axis] == 0.0 {
            if p[axis].abs() > 1.0 {
                return;
            }
            continue;
        }
        let low = ((-1.0 - p[axis]) / d[axis], 2 * axis as u16);
        let high = ((1.0 - p[axis]) / d[axis], 2 * axis as u16 + 1);
        let (enter, leave) = if d[axis] > 0.0 { (low, high) } else { (high, low) };
        if enter.0 > from.0 {
            from = enter;
        }
        if leave.0 < to.0 {
            to = leave;
        }
    }
    if from.0 < to.0 {
        hits.extend([from, to]);
    }
}

/// Moments of the cube: volume 8, ∫x² = 8/3.
pub(super) fn moments() -> Moments {
    Moments::diagonal(8.0, 0.0, [8.0 / 3.0; 3])
}

/// The eight corners.
pub(super) fn corners() -> impl Iterator<Item = Vector3<f64>> {
    (0..8).map(|n| {
        let side = |bit: u8| if n & bit == 0 { -1.0 } else { 1.0 };
        Vector3::new(side(1), side(2), side(4))
    })
}

/// Distances along `u` at which lines parallel to `d`, through `b + r u`, meet an edge.
pub(super) fn breaks(b: &Vector3<f64>, u: &Vector3<f64>, d: &Vector3<f64>, out: &mut Vec<f64>) {
    // The line b + r u + t d meets the edge along axis k at (i, j) = (±1, ±1):
    // two linear equations for r and t.
    for k in 0..3 {
        let (i, j) = ((k + 1) % 3, (k + 2) % 3);
        let det = u[i] * d[j] - u[j] * d[i];
        if det == 0.0 {
            continue;
        }
        for (x, y) in [(-1.0, -1.0), (-1.0, 1.0), (1.0, -1.0), (1.0, 1.0)] {
            let r = ((x - b[i]) * d[j] - (y - b[j]) * d[i]) / det;
            let t = (u[i] * (y - b[j]) - u[j] * (x - b[i])) / det;
            if (b[k] + r * u[k] + t * d[k]).abs() <= 1.0 + 1e-9 {
                out.push(r);
            }
        }
    }
}

/// Outward unit vectors of the six sides.
pub(super) fn sides() -> impl Iterator<Item = Vector3<f64>> {
    (0..6).map(|n| {
        let mut side = Vector3::zeros();
        side[n / 2] = if n % 2 == 0 { -1.0 } else { 1.0 };
        side
    })
}
