//! How far a solid reaches: bounds used to leave out what cannot matter.

use nalgebra::Matrix3;

use super::Form;

/// Radius of a sphere about the solid's origin that holds `linear` · form.
pub(super) fn reach(form: &Form, linear: &Matrix3<f64>) -> f64 {
    let axes = [0, 1, 2].map(|i| linear.column(i).norm());
    let across = axes[0].max(axes[1]);
    match form {
        // The columns of a turned diagonal are orthogonal; of any other matrix
        // their root sum of squares still bounds the largest stretch.
        Form::Sphere => orthogonal_or_sum(linear, axes),
        Form::Cube => (axes[0] * axes[0] + axes[1] * axes[1] + axes[2] * axes[2]).sqrt() * skew(linear, axes),
        Form::Lathe(lathe) => {
            lathe.rims.iter().map(|[r, z]| (r * across).hypot(z * axes[2])).fold(0.0, f64::max) * skew(linear, axes)
        }
        Form::Ring(ring) => ((ring.ring + ring.tube) * across).hypot(ring.tube * axes[2]) * skew(linear, axes),
    }
}

fn is_orthogonal(l: &Matrix3<f64>, axes: [f64; 3]) -> bool {
    [(0, 1), (0, 2), (1, 2)].iter().all(|&(i, j)| l.column(i).dot(&l.column(j)).abs() <= 1e-12 * axes[i] * axes[j])
}

fn skew(l: &Matrix3<f64>, axes: [f64; 3]) -> f64 {
    if is_orthogonal(l, axes) { 1.0 } else { 3.0_f64.sqrt() }
}

fn orthogonal_or_sum(l: &Matrix3<f64>, axes: [f64; 3]) -> f64 {
    if is_orthogonal(l, axes) { axes[0].max(axes[1]).max(axes[2]) } else { l.norm() }
}
