//! The rings that a shot leaves on the ball, and the holes they pass.
//!
//! The lane touches the ball along one line that winds round it. The ring of a
//! turn is the circle that the contact would draw if the ball went on spinning
//! about the axis it has at the beginning of that turn: the first at release,
//! one more after each whole turn. Rings part because the axis moves in the
//! ball; two of them cross at two places, and where the whole band is
//! narrowest is the bow-tie (common practice, no source; that the place is
//! found on the whole band is Pithball's choice).
//!
//! Everything follows from the samples of a [`Trace`]: between two of them the
//! ball turns evenly about an axis fixed in it, which for samples a hundredth
//! of a second apart is right to 0.01 in on the surface.

use core::f64::consts::{PI, TAU};

use nalgebra::Vector3;

use crate::check::unit;
use crate::recipe::Hole;
use crate::roll::{Sample, Trace};
use crate::units::M_PER_IN;

/// A ring that passes a hole's edge by less than this is close: an eighth of an
/// inch, about half the width of the band of oil a ring leaves (model choice).
pub const CLOSE_M: f64 = 0.125 * M_PER_IN;
/// Stretches of the contact's line that are taken as straight, in turn of the
/// ball: 3°, which is off by 0.0015 in at most.
const STRAIGHT_RAD: f64 = PI / 60.0;
/// Places round the band where its width is measured.
const PLACES: usize = 720;

/// A track ring: all points p of the unit sphere with p·axis = height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ring {
    /// Unit vector along the spin, in ball axes.
    pub axis: Vector3<f64>,
    /// From the ball's centre along the axis, in radii.
    pub height: f64,
    /// When the ring's turn begins.
    pub time_s: f64,
}

/// The width of the band of rings at one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Width {
    /// The middle of the band there, a unit vector in ball axes.
    pub at: Vector3<f64>,
    /// From a point of the first ring to the ring furthest from it on either
    /// side, along the surface and by the shortest way, both sides together.
    pub width_m: f64,
}

/// How near the track comes to a hole.
#[derive(Clone, Debug, PartialEq)]
pub struct Pass {
    /// The hole, by its place in the list.
    pub hole: usize,
    /// From the contact's line to the hole's edge along the surface where it is
    /// least; below 0: over the hole, by so much. Within 0.01 in up to 3 in, and
    /// to one part in fifty for a pitched hole; rougher beyond.
    pub clearance_m: f64,
    /// The turn in which that is, counted from 1.
    pub turn: u32,
    /// Every turn in which the contact's line goes over the hole.
    pub over: Vec<u32>,
}

/// The track of a shot.
#[derive(Clone, Debug, PartialEq)]
pub struct Track {
    /// The ring at release, then one after each whole turn.
    pub rings: Vec<Ring>,
    /// Where the band is widest; none for fewer than two rings. Two rings lie
    /// apart by the angle between their axes up to a right angle; a band is
    /// wider than the flare where rings stand out on both sides of the first or
    /// shrink, and narrower where the axis has moved by more than a right angle.
    pub widest: Option<Width>,
    /// Where the band is narrowest, on either side of the ball.
    pub bow_ties: Option<[Width; 2]>,
    /// The track beside every hole.
    pub passes: Vec<Pass>,
}

/// Measures the track of a shot on a ball of this radius and its holes.
pub fn track(trace: &Trace, radius_m: f64, holes: &[Hole]) -> Track {
    let rings = rings(&trace.samples);
    let (widest, bow_ties) = band(&rings, radius_m).unzip();
    Track { widest, bow_ties, passes: passes(&trace.samples, radius_m, holes), rings }
}

/// By how much the ball turns from one sample to the next.
fn turned_rad([a, b]: [&Sample; 2]) -> f64 {
    0.5 * (a.omega_rad_s.norm() + b.omega_rad_s.norm()) * (b.time_s - a.time_s)
}

fn pairs(samples: &[Sample]) -> impl Iterator<Item = [&Sample; 2]> {
    samples.iter().zip(samples.iter().skip(1)).map(|(a, b)| [a, b])
}

fn rings(samples: &[Sample]) -> Vec<Ring> {
    let mut rings = Vec::new();
    let mut angle_rad = 0.0;
    for [a, b] in pairs(samples) {
        let by_rad = turned_rad([a, b]);
        while by_rad > 0.0 && TAU * rings.len() as f64 <= angle_rad + by_rad {
            let part = ((TAU * rings.len() as f64 - angle_rad) / by_rad).clamp(0.0, 1.0);
            let mix = |of: fn(&Sample) -> f64| of(a) + (of(b) - of(a)) * part;
            rings.push(Ring {
                axis: unit(&(a.axis_body + (b.axis_body - a.axis_body) * part)).unwrap_or(a.axis_body),
                height: mix(|s| s.contact_body.dot(&s.axis_body)).clamp(-1.0, 1.0),
                time_s: mix(|s| s.time_s),
            });
        }
        angle_rad += by_rad;
    }
    rings
}

/// The point this far, as an angle, from the equator of `axis` towards it.
fn at(axis: &Vector3<f64>, out: &Vector3<f64>, angle_rad: f64) -> Vector3<f64> {
    let (sin, cos) = libm::sincos(angle_rad);
    out * cos + axis * sin
}

/// Where the band of rings is widest, and where it is narrowest on each half.
fn band(rings: &[Ring], radius_m: f64) -> Option<(Width, [Width; 2])> {
    let [first, _, ..] = rings else { return None };
    let a = first.axis;
    let x = if a.x.abs() < 0.6 { Vector3::x() } else { Vector3::y() };
    let x = (x - a * x.dot(&a)).normalize();
    let y = a.cross(&x);
    let widths = (0..PLACES).map(|n| {
        let (sin, cos) = libm::sincos(TAU * n as f64 / PLACES as f64);
        let out = x * cos + y * sin;
        // A point of the first ring, and how far each ring lies from it along the surface: the
        // angle between the point and the ring's axis, less that of the ring itself.
        let from = libm::asin(first.height);
        let point = at(&a, &out, from);
        let (mut low, mut high) = (0.0_f64, 0.0_f64);
        for ring in rings {
            let apart = libm::asin(ring.height) - libm::asin(point.dot(&ring.axis).clamp(-1.0, 1.0));
            (low, high) = (low.min(apart), high.max(apart));
        }
        Width { at: at(&a, &out, from + 0.5 * (low + high)), width_m: radius_m * (high - low) }
    });
    let widths: Vec<Width> = widths.collect();
    let most = (0..PLACES).reduce(|a, b| if widths[b].width_m > widths[a].width_m { b } else { a })?;
    // The two narrow places lie to the left and to the right of the widest.
    let narrowest = |from: usize| {
        let half = (0..PLACES / 2).map(|n| widths[(most + from + n) % PLACES]);
        half.reduce(|a, b| if b.width_m < a.width_m { b } else { a })
    };
    Some((widths[most], [narrowest(0)?, narrowest(PLACES / 2)?]))
}

/// A hole's edge as the contact meets it.
struct Rim {
    entry: Vector3<f64>,
    axis: Vector3<f64>,
    /// In radii of the ball.
    radius: f64,
}

impl Rim {
    fn new(hole: &Hole, radius_m: f64) -> Option<Self> {
        let (entry, axis) = (unit(&hole.entry)?, unit(&hole.axis)?);
        Some(Self { entry, axis, radius: (0.5 * hole.diameter_m / radius_m).min(1.0) })
    }

    /// Least distance of the stretch from `a` to `b` from the hole's axis, in
    /// radii; none where the stretch is on the ball's other side.
    fn distance(&self, a: &Vector3<f64>, b: &Vector3<f64>) -> Option<f64> {
        if a.dot(&self.entry) <= 0.0 {
            return None;
        }
        let beside = |point: &Vector3<f64>| {
            let from = point - self.entry;
            from - self.axis * self.axis.dot(&from)
        };
        let (from, to) = (beside(a), beside(b));
        let way = to - from;
        let long = way.norm_squared();
        let part = if long > 0.0 { (-from.dot(&way) / long).clamp(0.0, 1.0) } else { 0.0 };
        Some((from + way * part).norm())
    }
}

fn passes(samples: &[Sample], radius_m: f64, holes: &[Hole]) -> Vec<Pass> {
    let rims = holes.iter().enumerate().filter_map(|(n, hole)| Some((n, Rim::new(hole, radius_m)?)));
    let mut passes: Vec<(Rim, Pass)> =
        rims.map(|(hole, rim)| (rim, Pass { hole, clearance_m: f64::INFINITY, turn: 1, over: Vec::new() })).collect();
    if passes.is_empty() {
        return Vec::new();
    }
    let mut angle_rad = 0.0;
    for [a, b] in pairs(samples) {
        let by_rad = turned_rad([a, b]);
        let steps = (by_rad / STRAIGHT_RAD).ceil().max(1.0);
        let axis = unit(&(a.axis_body + b.axis_body)).unwrap_or(a.axis_body);
        // In the ball the contact goes round the other way.
        let at = |part: f64| about(&axis, -by_rad * part, &a.contact_body);
        let miss = b.contact_body - at(1.0);
        let mut last = a.contact_body;
        for n in 1..=steps as u32 {
            let part = f64::from(n) / steps;
            let next = (at(part) + miss * part).normalize();
            let turn = ((angle_rad + by_rad * part) / TAU) as u32 + 1;
            for (rim, pass) in &mut passes {
                let Some(distance) = rim.distance(&last, &next) else { continue };
                let arc = |chord: f64| libm::asin(chord.min(1.0));
                let clearance_m = radius_m * (arc(distance) - arc(rim.radius));
                if clearance_m < pass.clearance_m {
                    (pass.clearance_m, pass.turn) = (clearance_m, turn);
                }
                if clearance_m < 0.0 && pass.over.last() != Some(&turn) {
                    pass.over.push(turn);
                }
            }
            last = next;
        }
        angle_rad += by_rad;
    }
    // A track that stays on the other side of the ball clears by half the way round or more.
    let far_m = 0.5 * PI * radius_m;
    passes.into_iter().map(|(_, pass)| Pass { clearance_m: pass.clearance_m.min(far_m), ..pass }).collect()
}

/// `v` turned about a unit vector, right-handed.
fn about(axis: &Vector3<f64>, angle_rad: f64, v: &Vector3<f64>) -> Vector3<f64> {
    let (sin, cos) = libm::sincos(angle_rad);
    v * cos + axis.cross(v) * sin + axis * (axis.dot(v) * (1.0 - cos))
}

#[cfg(test)]
mod tests;
