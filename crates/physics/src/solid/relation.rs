//! Sure answers to "apart?" and "inside?", so that what cannot matter is left
//! out. Where the answer is not sure it is no, and the walk along lines decides.

use nalgebra::Vector3;

use super::{Form, Placed, cube, farthest::farthest};

/// Room for rounding when a piece exactly fills its container.
const TOUCH: f64 = 1e-13;
/// Directions round an axis; a polygon of so many sides around a circle
/// reaches 1/cos(π/n) times its radius.
const AROUND: usize = 32;

impl Placed {
    /// Support function: the largest `n`·x over the solid.
    pub(crate) fn support(&self, n: &Vector3<f64>) -> f64 {
        let m = self.linear.tr_mul(n);
        let across = (m.x * m.x + m.y * m.y).sqrt();
        let own = match &self.form {
            Form::Sphere => m.norm(),
            Form::Cube => m.x.abs() + m.y.abs() + m.z.abs(),
            Form::Lathe(lathe) => {
                lathe.rims.iter().map(|[r, z]| r * across + z * m.z).fold(f64::NEG_INFINITY, f64::max)
            }
            Form::Ring(ring) => ring.ring * across + ring.tube * m.norm(),
        };
        n.dot(&self.at) + own
    }

    /// Whether the solids surely share no volume: a plane lies between them.
    pub(crate) fn surely_apart(&self, other: &Self) -> bool {
        let between = other.at - self.at;
        if between.norm() >= self.reach + other.reach {
            return true;
        }
        let split =
            |n: Vector3<f64>| self.support(&n) <= -other.support(&-n) || other.support(&n) <= -self.support(&-n);
        let own = |s: &Self| [0, 1, 2].map(|i| s.inverse.row(i).transpose());
        // Concentric solids have no direction between them.
        (between != Vector3::zeros() && split(between))
            || own(self).into_iter().any(split)
            || own(other).into_iter().any(split)
            || self.surely_passed_through(other)
            || other.surely_passed_through(self)
    }

    /// Whether this solid is a ring and `other` surely lies within the
    /// cylinder round its axis that the tube does not reach.
    fn surely_passed_through(&self, other: &Self) -> bool {
        let Form::Ring(ring) = &self.form else { return false };
        let free = (ring.ring - ring.tube) * libm::cos(core::f64::consts::PI / AROUND as f64);
        let inner = other.seen_from(self);
        free > 0.0
            && (0..AROUND).all(|k| {
                let (s, c) = libm::sincos(k as f64 * core::f64::consts::TAU / AROUND as f64);
                inner.support(&Vector3::new(c, s, 0.0)) <= free
            })
    }

    /// Whether some point of `other` surely lies outside this solid's hull.
    pub(crate) fn surely_lets_out(&self, other: &Self) -> bool {
        const OUT: f64 = 1e-9;
        let inner = other.seen_from(self);
        if matches!(self.form, Form::Sphere) {
            return inner.at.norm() + inner.reach > 1.0 + OUT && farthest(&inner) > 1.0 + OUT;
        }
        let own = Self::with(self.form.clone(), nalgebra::Matrix3::identity(), Vector3::zeros());
        let out = |n: Vector3<f64>| inner.support(&n) > own.support(&n) + OUT * own.reach;
        let across = match &self.form {
            Form::Lathe(lathe) => lathe.edges().iter().map(|e| e.normal).collect(),
            _ => vec![[1.0, 0.0]],
        };
        out(Vector3::z())
            || out(-Vector3::z())
            || (0..AROUND).any(|k| {
                let (s, c) = libm::sincos(k as f64 * core::f64::consts::TAU / AROUND as f64);
                across.iter().any(|[nr, nz]| out(Vector3::new(nr * c, nr * s, *nz)))
            })
    }

    /// Whether `other` surely lies inside this solid (touching counts as inside).
    pub(crate) fn surely_holds(&self, other: &Self) -> bool {
        let inner = other.seen_from(self);
        match &self.form {
            Form::Sphere => {
                inner.at.norm() + inner.reach <= 1.0 + TOUCH
                    || (matches!(inner.form, Form::Lathe(_) | Form::Cube) && farthest(&inner) <= 1.0 + TOUCH)
            }
            Form::Cube => cube::sides().all(|n| inner.support(&n) <= 1.0 + TOUCH),
            Form::Lathe(lathe) if lathe.convex => {
                let slack = TOUCH * (lathe.radius + lathe.z[1] - lathe.z[0]);
                let round = inner.turns_about_z();
                lathe.edges().iter().all(|e| {
                    let [nr, nz] = e.normal;
                    if round || nr == 0.0 {
                        return inner.support(&Vector3::new(nr, 0.0, nz)) <= e.k + slack;
                    }
                    let nr = nr / libm::cos(core::f64::consts::PI / AROUND as f64);
                    (0..AROUND).all(|k| {
                        let (s, c) = libm::sincos(k as f64 * core::f64::consts::TAU / AROUND as f64);
                        inner.support(&Vector3::new(nr * c, nr * s, nz)) <= e.k
                    })
                })
            }
            Form::Lathe(_) | Form::Ring(_) => false,
        }
    }
}
