//! What is wrong with holes as they lie.

use nalgebra::Vector3;

use crate::check::unit;
use crate::recipe::Hole;
use crate::units::M_PER_IN;

/// Thinner webs between two holes are worth a caution: an eighth of an inch
/// (common practice, no source).
pub const THIN_WEB_M: f64 = 0.125 * M_PER_IN;

/// Something wrong with a hole or two, each by its place in the list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Conflict {
    /// Two holes meet.
    Meet {
        /// Which.
        holes: [usize; 2],
        /// How far they reach into each other.
        by_m: f64,
    },
    /// Little is left between two holes, less than [`THIN_WEB_M`].
    ThinWeb {
        /// Which.
        holes: [usize; 2],
        /// What is left between them at the thinnest place.
        web_m: f64,
    },
    /// A hole comes out of the ball.
    LeavesBall {
        /// Which.
        hole: usize,
        /// How far its bottom edge reaches beyond the surface.
        by_m: f64,
    },
    /// A hole takes away the pin's mark.
    OverPin {
        /// Which.
        hole: usize,
    },
}

/// A hole as a stretch of axis with a radius.
struct Bit {
    entry_m: Vector3<f64>,
    axis: Vector3<f64>,
    depth_m: f64,
    radius_m: f64,
}

/// Everything wrong with holes in a ball of this radius, in their order.
///
/// Between two holes counts the least distance of their axes, from entry to
/// bottom, less both radii: exact where they run side by side, and never more
/// than what is left where a bottom's edge is nearest.
pub fn conflicts(radius_m: f64, holes: &[Hole]) -> Vec<Conflict> {
    let bits: Vec<Option<Bit>> = holes.iter().map(|hole| Bit::new(radius_m, hole)).collect();
    let mut found = Vec::new();
    for (n, bit) in bits.iter().enumerate() {
        let Some(bit) = bit else { continue };
        let by_m = bit.reach_m() - radius_m;
        if by_m > 0.0 {
            found.push(Conflict::LeavesBall { hole: n, by_m });
        }
        let pin = Vector3::z() * radius_m;
        if bit.entry_m.z > 0.0 && (pin - bit.entry_m).cross(&bit.axis).norm() < bit.radius_m {
            found.push(Conflict::OverPin { hole: n });
        }
        for (m, other) in bits.iter().enumerate().skip(n + 1) {
            let Some(other) = other else { continue };
            let web_m = bit.gap_m(other) - bit.radius_m - other.radius_m;
            if web_m < 0.0 {
                found.push(Conflict::Meet { holes: [n, m], by_m: -web_m });
            } else if web_m < THIN_WEB_M {
                found.push(Conflict::ThinWeb { holes: [n, m], web_m });
            }
        }
    }
    found
}

impl Bit {
    fn new(radius_m: f64, hole: &Hole) -> Option<Self> {
        let (entry, axis) = (unit(&hole.entry)?, unit(&hole.axis)?);
        Some(Self { entry_m: entry * radius_m, axis, depth_m: hole.depth_m, radius_m: 0.5 * hole.diameter_m })
    }

    /// How far from the ball's centre the edge of the flat bottom reaches.
    fn reach_m(&self) -> f64 {
        let bottom = self.entry_m + self.axis * self.depth_m;
        let along = bottom.dot(&self.axis);
        libm::hypot(along, (bottom - self.axis * along).norm() + self.radius_m)
    }

    /// Least distance of two axes between entry and bottom: two straight
    /// stretches, after Ericson, Real-Time Collision Detection, 2005, section 5.1.9.
    fn gap_m(&self, other: &Self) -> f64 {
        let (p, q, r) = (self.axis * self.depth_m, other.axis * other.depth_m, self.entry_m - other.entry_m);
        let (a, e, f) = (p.norm_squared(), q.norm_squared(), q.dot(&r));
        let (b, c) = (p.dot(&q), p.dot(&r));
        let det = a * e - b * b;
        let s = if det > 1e-12 * a * e { ((b * f - c * e) / det).clamp(0.0, 1.0) } else { 0.0 };
        let t = (b * s + f) / e;
        let (s, t) = if t < 0.0 {
            ((-c / a).clamp(0.0, 1.0), 0.0)
        } else if t > 1.0 {
            (((b - c) / a).clamp(0.0, 1.0), 1.0)
        } else {
            (s, t)
        };
        (r + p * s - q * t).norm()
    }
}
