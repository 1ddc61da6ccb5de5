//! Heights at which a sweep must not miss what happens: where the outline of
//! a single solid on the plane has a corner or turns back. (Where outlines of
//! two solids cross, the sweep finds the change by itself.)

use core::f64::consts::{PI, TAU};

use nalgebra::{Matrix3, Vector3};

use crate::solid::{Form, Placed};

use super::Plane;

/// Half the bracket laid around every such height, in metres.
const ASIDE_M: f64 = 1e-11;
/// Evenly spread lines that start the sweep.
const BASE_LINES: usize = 32;
/// Above this many heights, only one in each 2,048th of the disc is kept.
const MANY: usize = 1024;

/// The heights to sweep through, ascending, within a disc of radius `half_m`.
pub(super) fn levels(solids: &[Placed], plane: &Plane, half_m: f64) -> Vec<f64> {
    let top_m = half_m - ASIDE_M;
    if top_m <= 0.0 {
        return Vec::new();
    }
    let mut marks = Marks { plane, heights_m: Vec::new() };
    for solid in solids {
        marks.solid(solid);
    }
    let mut heights_m = marks.heights_m;
    heights_m.retain(|v_m| v_m.abs() < top_m);
    heights_m.sort_by(f64::total_cmp);
    let apart_m = if heights_m.len() > MANY { half_m / 1024.0 } else { ASIDE_M };
    heights_m.dedup_by(|b, a| *b - *a < apart_m);
    let mut levels: Vec<f64> = heights_m.iter().flat_map(|v_m| [v_m - ASIDE_M, v_m + ASIDE_M]).collect();
    for line in 0..=BASE_LINES {
        let turn = PI * (line as f64 / BASE_LINES as f64 - 0.5);
        levels.push(top_m * libm::sin(turn));
    }
    levels.retain(|v_m| v_m.abs() <= top_m);
    levels.sort_by(f64::total_cmp);
    levels.dedup();
    levels
}

/// x²·xx + y²·yy + z²·zz + z·z1 + k = 0, for z between `from` and `to`.
struct Quadric {
    squares: Vector3<f64>,
    z1: f64,
    k: f64,
    from: f64,
    to: f64,
}

struct Marks<'a> {
    plane: &'a Plane,
    heights_m: Vec<f64>,
}

impl Marks<'_> {
    fn solid(&mut self, solid: &Placed) {
        let (axes, at_m) = (&solid.linear, solid.at);
        match &solid.form {
            Form::Sphere => {
                let unit = Quadric { squares: Vector3::repeat(1.0), z1: 0.0, k: -1.0, from: -1.0, to: 1.0 };
                self.quadric(&unit, axes, at_m);
            }
            Form::Cube => self.cube(axes, at_m),
            Form::Lathe(lathe) => self.lathe(&lathe.rims, axes, at_m),
            Form::Ring(ring) => {
                for step in 0..32 {
                    let (sin, cos) = libm::sincos(TAU * f64::from(step) / 32.0);
                    self.circle(ring.ring + ring.tube * cos, ring.tube * sin, axes, at_m);
                }
            }
        }
    }

    fn lathe(&mut self, profile_m: &[[f64; 2]], axes: &Matrix3<f64>, at_m: Vector3<f64>) {
        let Some(&[mut r0, mut z0]) = profile_m.last() else { return };
        for &[r1, z1] in profile_m {
            self.circle(r1, z1, axes, at_m);
            if z1 != z0 {
                // r = r0 + slope (z − z0)
                let slope = (r1 - r0) / (z1 - z0);
                let base = r0 - slope * z0;
                let cone = Quadric {
                    squares: Vector3::new(1.0, 1.0, -slope * slope),
                    z1: -2.0 * slope * base,
                    k: -base * base,
                    from: z0.min(z1),
                    to: z0.max(z1),
                };
                self.quadric(&cone, axes, at_m);
            }
            (r0, z0) = (r1, z1);
        }
    }

    /// Where a circle about the local axis crosses the plane.
    fn circle(&mut self, r: f64, z: f64, axes: &Matrix3<f64>, at_m: Vector3<f64>) {
        let normal = axes.transpose() * self.plane.normal;
        let level = self.plane.depth_m - self.plane.normal.dot(&at_m) - normal.z * z;
        let reach = r * normal.x.hypot(normal.y);
        if level.abs() > reach || reach == 0.0 {
            return;
        }
        let middle = libm::atan2(normal.y, normal.x);
        let aside = libm::acos(level / reach);
        for turn in [middle - aside, middle + aside] {
            let local = Vector3::new(r * libm::cos(turn), r * libm::sin(turn), z);
            self.heights_m.push(self.plane.v.dot(&(axes * local + at_m)));
        }
    }

    fn cube(&mut self, axes: &Matrix3<f64>, at_m: Vector3<f64>) {
        let Plane { normal, depth_m, v, .. } = *self.plane;
        for along in 0..3 {
            for (a, b) in [(-1.0, -1.0), (-1.0, 1.0), (1.0, -1.0), (1.0, 1.0)] {
                let mut corner = Vector3::zeros();
                corner[(along + 1) % 3] = a;
                corner[(along + 2) % 3] = b;
                let middle = axes * corner + at_m;
                let edge: Vector3<f64> = axes.column(along).into();
                let t = (depth_m - normal.dot(&middle)) / normal.dot(&edge);
                if t.abs() <= 1.0 {
                    self.heights_m.push(v.dot(&(middle + edge * t)));
                }
            }
        }
    }

    /// Heights where the conic in which the plane cuts the quadric turns back:
    /// with the conic a·u² + b·u·v + c·v² + d·u + e·v + f, where the
    /// discriminant in u vanishes.
    fn quadric(&mut self, quadric: &Quadric, axes: &Matrix3<f64>, at_m: Vector3<f64>) {
        let Some(inverse) = axes.try_inverse() else { return };
        let u = inverse * self.plane.u;
        let v = inverse * self.plane.v;
        let o = inverse * (self.plane.normal * self.plane.depth_m - at_m);
        let form = |p: &Vector3<f64>, q: &Vector3<f64>| quadric.squares.dot(&p.component_mul(q));
        let (a, b, c) = (form(&u, &u), 2.0 * form(&u, &v), form(&v, &v));
        let d = 2.0 * form(&u, &o) + quadric.z1 * u.z;
        let e = 2.0 * form(&v, &o) + quadric.z1 * v.z;
        let f = form(&o, &o) + quadric.z1 * o.z + quadric.k;
        let flat = a.abs() <= 1e-12 * quadric.squares.amax();
        let heights = if flat {
            roots(c, e, f)
        } else {
            roots(b * b - 4.0 * a * c, 2.0 * b * d - 4.0 * a * e, d * d - 4.0 * a * f)
        };
        let slack = 1e-9 + 1e-9 * (quadric.to - quadric.from);
        for height in heights.into_iter().flatten() {
            let z = o.z + height * v.z - if flat { 0.0 } else { (b * height + d) / (2.0 * a) * u.z };
            if flat || (quadric.from - slack..=quadric.to + slack).contains(&z) {
                self.heights_m.push(height);
            }
        }
    }
}

/// Real roots of a·x² + b·x + c, by the form that does not cancel.
fn roots(a: f64, b: f64, c: f64) -> [Option<f64>; 2] {
    let discriminant = b * b - 4.0 * a * c;
    if discriminant.is_nan() || discriminant < 0.0 {
        return [None, None];
    }
    let q = -0.5 * (b + discriminant.sqrt().copysign(b));
    [q / a, c / q].map(|x| Some(x).filter(|x| x.is_finite()))
}
