//! The outline a solid throws on the plane across a job's z axis: where, going
//! round the axis, a ray begins or ceases to meet it.

use nalgebra::{Matrix2, Vector2, Vector3};

use super::{Form, Placed, cube};

impl Placed {
    /// Azimuths of the corners of walls that run along the z axis, which lines
    /// along it pass unseen: of a box, and of the flat faces of a lathe lying down.
    pub(crate) fn upright_corners(&self, out: &mut Vec<f64>) {
        let up = self.inverse * Vector3::z();
        let level = |v: f64| v.abs() <= 1e-6 * up.amax();
        let upright = match &self.form {
            Form::Cube => up.iter().any(|v| level(*v)),
            Form::Lathe(_) => level(up.z),
            Form::Sphere | Form::Ring(_) => false,
        };
        if upright {
            self.azimuths(out);
        }
    }

    /// Azimuths (radians, any turn) at which a ray from the z axis touches the
    /// solid's outline or passes a corner of it.
    pub(crate) fn azimuths(&self, out: &mut Vec<f64>) {
        let [x, y, z] = [0, 1, 2].map(|i| self.linear.column(i).into_owned());
        match &self.form {
            Form::Cube => {
                let corners = cube::corners().map(|c| self.at + self.linear * c);
                out.extend(corners.filter(|c| c.x != 0.0 || c.y != 0.0).map(|c| libm::atan2(c.y, c.x)));
            }
            Form::Sphere => ellipse(&self.at, &[x, y, z], out),
            Form::Lathe(lathe) => {
                for &[r, h] in lathe.rims.iter().filter(|p| p[0] > 0.0).take(64) {
                    ellipse(&(self.at + z * h), &[x * r, y * r], out);
                }
            }
            Form::Ring(ring) => {
                for radius in [ring.ring - ring.tube, ring.ring, ring.ring + ring.tube] {
                    ellipse(&self.at, &[x * radius, y * radius], out);
                }
            }
        }
    }
}

/// Tangents from the origin to the shadow of `c` + Σ uᵢ `axes`ᵢ, |u| = 1, on
/// the plane z = 0: unit normals n with (n·c)² = nᵀQn, Q = Σ axes axesᵀ.
fn ellipse(c: &Vector3<f64>, axes: &[Vector3<f64>], out: &mut Vec<f64>) {
    let c = c.xy();
    let spread: Matrix2<f64> = axes.iter().map(|a| a.xy() * a.xy().transpose()).sum();
    let q = c * c.transpose() - spread;
    // n = (cos ψ, sin ψ): q_xx cos² + 2 q_xy cos sin + q_yy sin² = 0, in double angles.
    let (mean, half, cross) = (0.5 * (q.m11 + q.m22), 0.5 * (q.m11 - q.m22), q.m12);
    let size = (half * half + cross * cross).sqrt();
    if size == 0.0 || mean.abs() > size {
        return;
    }
    let (middle, swing) = (libm::atan2(cross, half), libm::acos(-mean / size));
    for psi in [0.5 * (middle + swing), 0.5 * (middle - swing)] {
        let (s, k) = libm::sincos(psi);
        let along = Vector2::new(-s, k);
        let along = if along.dot(&c) < 0.0 { -along } else { along };
        out.push(libm::atan2(along.y, along.x));
    }
}
