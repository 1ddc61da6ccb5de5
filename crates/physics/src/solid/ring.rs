//! The torus about z.

use nalgebra::Vector3;

use super::{Hits, roots::quadratic, roots::quartic_in};
use crate::moments::Moments;

/// A torus: tube of radius `tube` around the circle of radius `ring`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Ring {
    pub(crate) ring: f64,
    pub(crate) tube: f64,
}

impl Ring {
    pub(super) fn contains(&self, p: &Vector3<f64>) -> bool {
        let out = (p.x * p.x + p.y * p.y).sqrt() - self.ring;
        out * out + p.z * p.z <= self.tube * self.tube
    }

    /// Where the line `p + t d` crosses the torus.
    ///
    /// Source: (|x|² + R² − a²)² = 4R²(x² + y²), a quartic in t, with t
    /// measured from the point of the line nearest the centre.
    pub(super) fn cross(&self, p: &Vector3<f64>, d: &Vector3<f64>, hits: &mut Hits) {
        if d.x == 0.0 && d.y == 0.0 {
            // Along the axis: the tube's own circle, free of the quartic's rounding.
            let out = (p.x * p.x + p.y * p.y).sqrt() - self.ring;
            let half = self.tube * self.tube - out * out;
            if half > 0.0 {
                let (half, middle) = (half.sqrt() / d.z.abs(), -p.z / d.z);
                hits.extend([(middle - half, 0), (middle + half, 0)]);
            }
            return;
        }
        let dd = d.norm_squared();
        let nearest = -p.dot(d) / dd;
        let p = p + d * nearest;
        let reach = self.ring + self.tube;
        let pp = p.norm_squared();
        if pp > reach * reach || (p.z.abs() > self.tube && d.z == 0.0) {
            return;
        }
        // Unit of length along the line so that coefficients stay near 1.
        let speed = dd.sqrt();
        let n = d / speed;
        let k = pp + self.ring * self.ring - self.tube * self.tube;
        let four = 4.0 * self.ring * self.ring;
        let c = [
            k * k - four * (p.x * p.x + p.y * p.y),
            -2.0 * four * (p.x * n.x + p.y * n.y),
            2.0 * k - four * (n.x * n.x + n.y * n.y),
            0.0,
            1.0,
        ];
        let roots = quartic_in(c, -1.001 * reach, 1.001 * reach);
        let at = |s: f64| nearest + s / speed;
        // Only stretches that are really inside: a tube wider than its ring
        // has a second sheet within the solid.
        for pair in roots.windows(2) {
            if self.contains(&(p + n * (0.5 * (pair[0] + pair[1])))) {
                super::push_stretch(hits, (at(pair[0]), 0), (at(pair[1]), 0));
            }
        }
    }

    /// Closed form (FACTS: torus; Pappus): `None` where the tube closes the hole.
    pub(super) fn moments(&self) -> Option<Moments> {
        let (r, a) = (self.ring, self.tube);
        if a > r {
            return None;
        }
        let volume = 2.0 * core::f64::consts::PI.powi(2) * r * a * a;
        // I_z/m = R² + ¾a² = (∫x² + ∫y²)/V and ∫z²/V = a²/4.
        let across = 0.5 * volume * (r * r + 0.75 * a * a);
        Some(Moments::diagonal(volume, 0.0, [across, across, 0.25 * volume * a * a]))
    }

    /// Distances along `u` at which lines parallel to `d`, through `b + r u`,
    /// may meet the torus differently. Exact where `d` runs along the axis,
    /// a fine enough set of stops otherwise.
    pub(super) fn breaks(&self, b: &Vector3<f64>, u: &Vector3<f64>, d: &Vector3<f64>, out: &mut Vec<f64>) {
        if d.x == 0.0 && d.y == 0.0 {
            for radius in [self.ring - self.tube, self.ring + self.tube] {
                let c = b.x * b.x + b.y * b.y - radius * radius;
                if let Some((from, to)) = quadratic(u.x * u.x + u.y * u.y, b.x * u.x + b.y * u.y, c) {
                    out.extend([from, to]);
                }
            }
            return;
        }
        let across = |w: &Vector3<f64>| w - d * (w.dot(d) / d.norm_squared());
        let (b, u) = (across(b), across(u));
        let reach = self.ring + self.tube;
        if let Some((from, to)) = quadratic(u.norm_squared(), b.dot(&u), b.norm_squared() - reach * reach) {
            let steps = 8 + (2.0 * self.ring / self.tube).min(40.0) as usize;
            out.extend((0..=steps).map(|n| from + (to - from) * n as f64 / steps as f64));
        }
    }
}
