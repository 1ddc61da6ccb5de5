//! Principal axes, named and pointed the same way every time.

use nalgebra::{Matrix3, Vector3};

/// Principal moments in ascending order with unit axes: the low axis points to
/// +z, the high axis to +x (each as far as it can), and low × high = middle.
/// Where two moments agree within `same` (relative to the largest), their axes
/// are free: then low is as near to z, and high as near to x, as it may be.
pub(super) fn principal(tensor: &Matrix3<f64>, same: f64) -> ([f64; 3], [Vector3<f64>; 3]) {
    let (values, vectors) = jacobi(*tensor);
    let mut order = [0, 1, 2];
    order.sort_by(|&a, &b| values[a].total_cmp(&values[b]));
    let moments = order.map(|n| values[n]);
    let axes = order.map(|n| vectors.column(n).into_owned());
    let close = |a: f64, b: f64| (a - b).abs() <= same * moments[2].abs();
    let (low, high) = match (close(moments[0], moments[1]), close(moments[1], moments[2])) {
        (true, true) => (Vector3::z(), Vector3::x()),
        (true, false) => (nearest_across(&axes[2], &Vector3::z(), &Vector3::x()), towards(&axes[2], &Vector3::x())),
        (false, true) => (towards(&axes[0], &Vector3::z()), nearest_across(&axes[0], &Vector3::x(), &Vector3::y())),
        (false, false) => (towards(&axes[0], &Vector3::z()), towards(&axes[2], &Vector3::x())),
    };
    (moments, [low, low.cross(&high), high])
}

/// `axis` or its opposite, whichever leans towards `to`.
fn towards(axis: &Vector3<f64>, to: &Vector3<f64>) -> Vector3<f64> {
    let lean = axis.dot(to);
    // Across `to`, the first of y, z, x that decides.
    let decides = if lean.abs() > 1e-12 {
        lean
    } else {
        [axis.y, axis.z, axis.x].into_iter().find(|v| v.abs() > 1e-12).unwrap_or(1.0)
    };
    if decides < 0.0 { -axis } else { *axis }
}

/// The unit vector across `axis` nearest to `wish`; to `other` where `wish` lies along the axis.
fn nearest_across(axis: &Vector3<f64>, wish: &Vector3<f64>, other: &Vector3<f64>) -> Vector3<f64> {
    let flat = |w: &Vector3<f64>| w - axis * axis.dot(w);
    let first = flat(wish);
    if first.norm() > 1e-6 { first.normalize() } else { flat(other).normalize() }
}

/// Eigenvalues and eigenvectors (columns) of a symmetric matrix by Jacobi's
/// rotations (Press et al., Numerical Recipes, 3rd ed., 11.1): square roots
/// only, so that every machine gives the same bits.
fn jacobi(mut a: Matrix3<f64>) -> (Vector3<f64>, Matrix3<f64>) {
    let mut v = Matrix3::identity();
    for _ in 0..40 {
        let off = a[(0, 1)].abs() + a[(0, 2)].abs() + a[(1, 2)].abs();
        if off <= 1e-20 * a.diagonal().amax() {
            break;
        }
        for (p, q) in [(0, 1), (0, 2), (1, 2)] {
            if a[(p, q)] == 0.0 {
                continue;
            }
            let theta = (a[(q, q)] - a[(p, p)]) / (2.0 * a[(p, q)]);
            let t = if theta.abs() > 1e150 {
                0.5 / theta
            } else {
                theta.signum() / (theta.abs() + (theta * theta + 1.0).sqrt())
            };
            let c = 1.0 / (t * t + 1.0).sqrt();
            let mut turn = Matrix3::identity();
            turn[(p, p)] = c;
            turn[(q, q)] = c;
            turn[(p, q)] = t * c;
            turn[(q, p)] = -t * c;
            a = turn.transpose() * a * turn;
            a[(p, q)] = 0.0;
            a[(q, p)] = 0.0;
            v *= turn;
        }
    }
    (a.diagonal(), v)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn axes_diagonalise_and_point_the_agreed_way() {
        let tensor = Matrix3::new(3.0, 0.2, -0.1, 0.2, 2.5, 0.3, -0.1, 0.3, 2.0);
        let (moments, axes) = principal(&tensor, 1e-12);
        for (moment, axis) in moments.iter().zip(&axes) {
            assert!((tensor * axis - axis * *moment).norm() < 1e-14);
        }
        assert!(moments[0] < moments[1] && moments[1] < moments[2]);
        assert!(axes[0].z > 0.0 && axes[2].x > 0.0);
        assert!((axes[2].cross(&axes[1]) - axes[0]).norm() < 1e-14);
    }

    #[test]
    fn equal_moments_leave_the_frame_as_it_is() {
        let (_, axes) = principal(&Matrix3::from_diagonal_element(2.0), 1e-12);
        assert_eq!(axes, [Vector3::z(), Vector3::y(), Vector3::x()]);
        let (_, axes) = principal(&Matrix3::from_diagonal(&Vector3::new(2.0, 2.0, 1.0)), 1e-12);
        assert_eq!(axes, [Vector3::z(), Vector3::y(), Vector3::x()]);
    }
}
