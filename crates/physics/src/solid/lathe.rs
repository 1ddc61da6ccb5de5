//! A polygon of revolution about z: cylinders, frusta and lathe profiles.

use nalgebra::Vector3;

use super::{Hits, push_stretch, roots::quadratic};
use crate::moments::Moments;

/// A closed polygon in the half-plane r ≥ 0, revolved about z.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Lathe {
    /// Edges that are not on the axis and not points.
    edges: Vec<Edge>,
    /// Corners (r, z): the rims of the solid.
    pub(crate) rims: Vec<[f64; 2]>,
    /// Largest radius.
    pub(crate) radius: f64,
    /// Lowest and highest z.
    pub(crate) z: [f64; 2],
    /// Whether the solid is convex, so that a line meets it once.
    pub(crate) convex: bool,
}

/// One side of the profile, n_r r + n_z z = k with a unit normal that points
/// out of the solid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Edge {
    pub(crate) from: [f64; 2],
    pub(crate) to: [f64; 2],
    pub(crate) normal: [f64; 2],
    pub(crate) k: f64,
}

impl Lathe {
    /// From a profile in either order round.
    pub(crate) fn new(profile: &[[f64; 2]]) -> Self {
        let around = || profile.iter().zip(profile.iter().cycle().skip(1));
        let area: f64 = around().map(|(a, b)| a[0] * b[1] - b[0] * a[1]).sum();
        // Anticlockwise in (r, z) the outside is on the right of each edge.
        let side = if area < 0.0 { -1.0 } else { 1.0 };
        let mut edges = Vec::new();
        for (a, b) in around() {
            let (dr, dz) = (b[0] - a[0], b[1] - a[1]);
            let length = (dr * dr + dz * dz).sqrt();
            if length == 0.0 || (a[0] == 0.0 && b[0] == 0.0) {
                continue;
            }
            let normal = [side * dz / length, -side * dr / length];
            edges.push(Edge { from: *a, to: *b, normal, k: normal[0] * a[0] + normal[1] * a[1] });
        }
        let (low, high) =
            profile.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), p| (l.min(p[1]), h.max(p[1])));
        let mut lathe = Self {
            edges,
            rims: profile.to_vec(),
            radius: profile.iter().fold(0.0, |r, p| p[0].max(r)),
            z: [low, high],
            convex: false,
        };
        // Convex exactly when every corner lies behind every side, and no side
        // faces the axis.
        let slack = 1e-12 * (lathe.radius + (high - low));
        lathe.convex = profile.len() <= 32
            && lathe.edges.iter().all(|e| {
                e.normal[0] >= -1e-15
                    && lathe.rims.iter().all(|p| e.normal[0] * p[0] + e.normal[1] * p[1] <= e.k + slack)
            });
        lathe
    }

    /// Sides that bound the solid.
    pub(crate) fn edges(&self) -> &[Edge] {
        &self.edges
    }

    /// Even–odd rule on the profile.
    pub(super) fn contains(&self, p: &Vector3<f64>) -> bool {
        let (r, z) = ((p.x * p.x + p.y * p.y).sqrt(), p.z);
        let mut inside = false;
        for e in &self.edges {
            if (e.from[1] > z) != (e.to[1] > z) {
                let at = e.from[0] + (z - e.from[1]) / (e.to[1] - e.from[1]) * (e.to[0] - e.from[0]);
                // Towards larger r: edges on the axis never count.
                if at > r {
                    inside = !inside;
                }
            }
        }
        inside
    }

    /// Where the line `p + t d` crosses the solid. Candidates come from every
    /// side; which stretches lie inside is decided by their middles, so a line
    /// through a corner cannot go astray.
    pub(super) fn cross(&self, p: &Vector3<f64>, d: &Vector3<f64>, hits: &mut Hits) {
        let (dxy, pxy, dp) = (d.x * d.x + d.y * d.y, p.x * p.x + p.y * p.y, p.x * d.x + p.y * d.y);
        // Nearest distance to the axis already outside: no crossing.
        let apart = if dxy > 0.0 { pxy - dp * dp / dxy } else { pxy };
        if apart > self.radius * self.radius * (1.0 + 1e-12) {
            return;
        }
        if d.z == 0.0 && (p.z < self.z[0] || p.z > self.z[1]) {
            return;
        }
        let mut found: Hits = Hits::new();
        for (n, e) in self.edges.iter().enumerate() {
            let reach = e.from[0].max(e.to[0]);
            if apart > reach * reach * (1.0 + 1e-12) {
                continue;
            }
            e.cross(p, d, [dxy, dp, pxy], n as u16, &mut found);
        }
        if found.len() < 2 {
            return;
        }
        found.sort_unstable_by(|a, b| a.0.total_cmp(&b.0));
        if self.convex {
            hits.extend([found[0], found[found.len() - 1]]);
            return;
        }
        for pair in found.windows(2) {
            if pair[1].0 > pair[0].0 && self.contains(&(p + d * (0.5 * (pair[0].0 + pair[1].0)))) {
                push_stretch(hits, pair[0], pair[1]);
            }
        }
    }

    /// Closed form: Σ over the sides of π∫r²dz, π∫r²z dz, π∫r²z²dz and
    /// (π/4)∫r⁴dz, each a polynomial of degree ≤ 4 that three Gauss points
    /// integrate exactly (any solid of revolution, FACTS §5).
    pub(super) fn moments(&self) -> Moments {
        let pi = core::f64::consts::PI;
        // Gauss–Legendre, 3 points on [0, 1].
        let off = 0.5 * (0.6_f64).sqrt();
        let gauss = [(0.5 - off, 5.0 / 18.0), (0.5, 8.0 / 18.0), (0.5 + off, 5.0 / 18.0)];
        let (mut volume, mut first, mut across, mut along) = (0.0, 0.0, 0.0, 0.0);
        for e in &self.edges {
            // Outward normal towards +r counts positive, whichever way round.
            let dz = (e.to[1] - e.from[1]).abs().copysign(e.normal[0]);
            for (s, w) in gauss {
                let r = e.from[0] + s * (e.to[0] - e.from[0]);
                let z = e.from[1] + s * (e.to[1] - e.from[1]);
                let rr = pi * w * dz * r * r;
                volume += rr;
                first += rr * z;
                along += rr * z * z;
                across += 0.25 * rr * r * r;
            }
        }
        Moments::diagonal(volume, first, [across, across, along])
    }

    /// Distances along `u` at which lines parallel to `d`, through `b + r u`,
    /// meet a rim or touch a side.
    pub(super) fn breaks(&self, b: &Vector3<f64>, u: &Vector3<f64>, d: &Vector3<f64>, out: &mut Vec<f64>) {
        for &[radius, z] in &self.rims {
            if d.z == 0.0 {
                // Lines across the axis: the whole flat face comes at once.
                if u.z != 0.0 {
                    out.push((z - b.z) / u.z);
                }
            } else {
                // In the rim's plane the line is at b + r u + t d with z fixed.
                let (bx, by) = (b.x + (z - b.z) / d.z * d.x, b.y + (z - b.z) / d.z * d.y);
                let (ux, uy) = (u.x - u.z / d.z * d.x, u.y - u.z / d.z * d.y);
                let found = quadratic(ux * ux + uy * uy, bx * ux + by * uy, bx * bx + by * by - radius * radius);
                if let Some((from, to)) = found {
                    out.extend([from, to]);
                }
            }
        }
        if d.x == 0.0 && d.y == 0.0 {
            return;
        }
        for e in &self.edges {
            e.touches(b, u, d, out);
        }
    }
}

impl Edge {
    /// Crossings with this side alone, by n_r²(x² + y²) = (k − n_z z)², then
    /// one Newton step on the unsquared form, which keeps nearly flat cones exact.
    fn cross(&self, p: &Vector3<f64>, d: &Vector3<f64>, [dxy, dp, pxy]: [f64; 3], id: u16, found: &mut Hits) {
        let [nr, nz] = self.normal;
        let (low, high) =
            if self.from[1] < self.to[1] { (self.from[1], self.to[1]) } else { (self.to[1], self.from[1]) };
        let slack = 1e-13 * (low.abs() + high.abs());
        if high - low <= 1e-300 {
            // A flat face: an annulus at z.
            if d.z != 0.0 {
                let t = (low - p.z) / d.z;
                let rr = pxy + t * (2.0 * dp + t * dxy);
                let (a, b) =
                    if self.from[0] < self.to[0] { (self.from[0], self.to[0]) } else { (self.to[0], self.from[0]) };
                if rr >= a * a * (1.0 - 1e-13) && rr <= b * b * (1.0 + 1e-13) {
                    found.push((t, id));
                }
            }
            return;
        }
        let rest = self.k - nz * p.z;
        let (a, b, c) =
            (nr * nr * dxy - nz * nz * d.z * d.z, nr * nr * dp + nz * d.z * rest, nr * nr * pxy - rest * rest);
        let Some((t1, t2)) = quadratic(a, b, c) else { return };
        let push = |t: f64, found: &mut Hits| {
            let z = p.z + t * d.z;
            if z < low - slack || z > high + slack {
                return;
            }
            found.push((self.polished(t, p, d), id));
        };
        push(t1, found);
        if t2 != t1 {
            push(t2, found);
        }
    }

    fn polished(&self, t: f64, p: &Vector3<f64>, d: &Vector3<f64>) -> f64 {
        let [nr, nz] = self.normal;
        if nr.abs() > 1e-3 {
            return t;
        }
        let (x, y, z) = (p.x + t * d.x, p.y + t * d.y, p.z + t * d.z);
        let r = (x * x + y * y).sqrt();
        if r == 0.0 {
            return t;
        }
        let slope = nr * (x * d.x + y * d.y) / r + nz * d.z;
        let next = t - (nr * r + nz * z - self.k) / slope;
        if next.is_finite() { next } else { t }
    }

    /// Where the discriminant of [`Edge::cross`] vanishes along `b + r u`.
    fn touches(&self, b: &Vector3<f64>, u: &Vector3<f64>, d: &Vector3<f64>, out: &mut Vec<f64>) {
        let [nr, nz] = self.normal;
        if nr == 0.0 {
            return;
        }
        let (nr2, dxy) = (nr * nr, d.x * d.x + d.y * d.y);
        let lead = nr2 * dxy - nz * nz * d.z * d.z;
        // Half-linear term B(r) = b0 + b1 r, constant term C(r) = c0 + 2 c1 r + c2 r².
        let (k0, k1) = (self.k - nz * b.z, -nz * u.z);
        let b0 = nr2 * (b.x * d.x + b.y * d.y) + nz * d.z * k0;
        let b1 = nr2 * (u.x * d.x + u.y * d.y) + nz * d.z * k1;
        let c0 = nr2 * (b.x * b.x + b.y * b.y) - k0 * k0;
        let c1 = nr2 * (b.x * u.x + b.y * u.y) - k0 * k1;
        let c2 = nr2 * (u.x * u.x + u.y * u.y) - k1 * k1;
        if let Some((from, to)) = quadratic(b1 * b1 - lead * c2, b0 * b1 - lead * c1, b0 * b0 - lead * c0) {
            out.extend([from, to]);
        }
    }
}
