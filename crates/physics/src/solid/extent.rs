//! How far a solid reaches: bounds used to leave out what cannot matter, and
//! the farthest point, which decides whether a piece sticks out.

use nalgebra::{Matrix3, Vector3};

use super::{Form, Placed, cube};

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

/// Largest distance from the frame's origin to a point of the solid.
pub(crate) fn farthest(solid: &Placed) -> f64 {
    let l = &solid.linear;
    let (x, y, z) = (l.column(0).into_owned(), l.column(1).into_owned(), l.column(2).into_owned());
    match &solid.form {
        Form::Cube => cube::corners().map(|c| (solid.at + l * c).norm()).fold(0.0, f64::max),
        Form::Lathe(lathe) => {
            lathe.rims.iter().map(|&[r, h]| rim_farthest(&(solid.at + z * h), &(x * r), &(y * r))).fold(0.0, f64::max)
        }
        Form::Sphere => climb(solid, |n| n.normalize()),
        Form::Ring(ring) => climb(solid, |n| {
            let flat = n.x.hypot(n.y);
            let out = if flat > 0.0 { Vector3::new(n.x / flat, n.y / flat, 0.0) } else { Vector3::x() };
            out * ring.ring + n.normalize() * ring.tube
        }),
    }
}

/// Largest |c + a cos φ + b sin φ|: the better of two climbs from a sampled
/// start. The square is a trigonometric polynomial of degree 2, so it has at
/// most two hills and 16 samples see both.
fn rim_farthest(c: &Vector3<f64>, a: &Vector3<f64>, b: &Vector3<f64>) -> f64 {
    let square = |phi: f64| {
        let (s, k) = libm::sincos(phi);
        (c + a * k + b * s).norm_squared()
    };
    let step = core::f64::consts::TAU / 16.0;
    let at: [f64; 16] = core::array::from_fn(|n| square(n as f64 * step));
    let mut best: f64 = 0.0;
    for n in 0..16 {
        if at[n] < at[(n + 1) % 16] || at[n] < at[(n + 15) % 16] {
            continue;
        }
        let mut phi = n as f64 * step;
        for _ in 0..8 {
            let (s, k) = libm::sincos(phi);
            let (p, dp) = (c + a * k + b * s, b * k - a * s);
            let slope = p.dot(&dp);
            let bend = dp.norm_squared() - p.dot(&(a * k + b * s));
            if bend >= 0.0 {
                break;
            }
            phi -= (slope / bend).clamp(-step, step);
        }
        best = best.max(at[n]).max(square(phi));
    }
    best.sqrt()
}

/// Largest distance over a convex hull by its support points: each step goes
/// to the point farthest along the present direction, which never comes nearer.
fn climb(solid: &Placed, support: impl Fn(&Vector3<f64>) -> Vector3<f64>) -> f64 {
    let mut best: f64 = 0.0;
    let lt = solid.linear.transpose();
    for i in -1..=1 {
        for j in -1..=1 {
            for k in -1..=1 {
                if i == 0 && j == 0 && k == 0 {
                    continue;
                }
                let mut n = Vector3::new(f64::from(i), f64::from(j), f64::from(k));
                let mut far = 0.0;
                for _ in 0..200 {
                    let point = solid.at + solid.linear * support(&(lt * n));
                    let distance = point.norm();
                    n = point;
                    if distance <= far * (1.0 + 1e-14) || distance == 0.0 {
                        break;
                    }
                    far = distance;
                }
                best = best.max(far);
            }
        }
    }
    best
}
