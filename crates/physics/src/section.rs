//! The flat cut: which material shows where on any plane through the ball.
//!
//! The plane is swept by parallel lines; along each one [`Ball::runs`] says
//! exactly where one material ends and the next begins. Lines are added until
//! straight chords between neighbouring lines lie within
//! [`CHORD_TOLERANCE_M`] of the true curves, and the heights at which the
//! sequence of materials changes are bracketed to 4e-11 m, so corners,
//! tangencies, coincident surfaces and slivers all come from the same
//! exact crossings and every outline is closed.

mod label;
mod levels;
mod outline;
mod plane;
mod sweep;

pub use plane::Plane;

use crate::ball::{Ball, Part};

/// Outlines stay this close to the true curves, in metres (0.002 in); smooth
/// curves stay within half of it.
pub const CHORD_TOLERANCE_M: f64 = 5.08e-5;

/// A flat cut through a ball. Empty where the plane misses the ball.
#[derive(Clone, Debug, PartialEq)]
pub struct Section {
    /// Where the cut is.
    pub plane: Plane,
    /// One region for each part that shows, the cover first, then pieces in
    /// recipe order.
    pub regions: Vec<Region>,
}

/// Where one part shows on the cut: any number of islands, with their holes.
#[derive(Clone, Debug, PartialEq)]
pub struct Region {
    /// Whose material this is.
    pub part: Part,
    /// Closed outlines in plane coordinates (u, v) in metres; the last point
    /// joins the first. Material lies to the left, so outer loops turn
    /// anticlockwise and holes clockwise.
    pub loops: Vec<Vec<[f64; 2]>>,
    /// The same region as strips without overlap, for filling.
    pub strips: Vec<Strip>,
    /// Area, relative error below 1e-3.
    pub area_m2: f64,
    /// A point well inside the region: a place for its label.
    pub label_at_m: [f64; 2],
}

/// A stack of trapezoids: between neighbouring rungs both sides are straight.
#[derive(Clone, Debug, PartialEq)]
pub struct Strip {
    /// From low v to high v; at least two.
    pub rungs: Vec<Rung>,
}

/// One horizontal stretch of a strip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rung {
    /// Height in the plane.
    pub v_m: f64,
    /// Smaller u.
    pub left_m: f64,
    /// Larger u.
    pub right_m: f64,
}

/// Cuts `ball` along `plane`.
pub fn section(ball: &Ball, plane: Plane) -> Section {
    let radius_m = ball.radius_m;
    let half_m = (radius_m * radius_m - plane.depth_m * plane.depth_m).max(0.0).sqrt();
    let levels = levels::levels(&ball.stack.solids, &plane, half_m);
    let slabs = sweep::sweep(&levels, |v_m| sweep::merged(ball.runs(&plane.line(v_m))));
    Section { plane, regions: regions(&slabs) }
}

fn regions(slabs: &[sweep::Slab]) -> Vec<Region> {
    let mut parts: Vec<Part> = Vec::new();
    for slab in slabs {
        for stretch in &slab[0].stretches {
            if let Err(place) = parts.binary_search(&stretch.part) {
                parts.insert(place, stretch.part);
            }
        }
    }
    parts.into_iter().filter_map(|part| region(slabs, part)).collect()
}

fn region(slabs: &[sweep::Slab], part: Part) -> Option<Region> {
    let strips = strips(slabs, part);
    let area_m2: f64 = strips.iter().map(Strip::area_m2).sum();
    let loops = outline::loops(slabs, part);
    if loops.is_empty() {
        return None;
    }
    let label_at_m = label::place(&strips, &loops);
    Some(Region { part, loops, strips, area_m2, label_at_m })
}

fn strips(slabs: &[sweep::Slab], part: Part) -> Vec<Strip> {
    let mut strips = Vec::new();
    for slab in slabs {
        for (place, stretch) in slab[0].stretches.iter().enumerate() {
            if stretch.part != part {
                continue;
            }
            let rungs = slab
                .iter()
                .map(|scan| {
                    let s = &scan.stretches[place];
                    Rung { v_m: scan.v_m, left_m: s.left_m, right_m: s.right_m }
                })
                .collect();
            strips.push(Strip { rungs });
        }
    }
    strips
}

impl Strip {
    /// Area under the curves the rungs stand for: Simpson's rule over equal
    /// steps, where the sweep halved a smooth stretch, else trapezoids.
    fn area_m2(&self) -> f64 {
        let width_m = |rung: &Rung| rung.right_m - rung.left_m;
        let mut area_m2 = 0.0;
        let mut rest = &self.rungs[..];
        while let [a, b, more @ ..] = rest {
            let step_m = b.v_m - a.v_m;
            match more.first() {
                Some(c) if (c.v_m - b.v_m - step_m).abs() < 1e-6 * step_m => {
                    area_m2 += step_m / 3.0 * (width_m(a) + 4.0 * width_m(b) + width_m(c));
                    rest = &rest[2..];
                }
                _ => {
                    area_m2 += step_m / 2.0 * (width_m(a) + width_m(b));
                    rest = &rest[1..];
                }
            }
        }
        area_m2
    }
}

impl Region {
    /// Whether a point of the plane lies in the region (even-odd rule).
    pub fn contains(&self, at_m: [f64; 2]) -> bool {
        let mut inside = false;
        for path in &self.loops {
            let Some(mut last) = path.last().copied() else { continue };
            for &next in path {
                if (last[1] > at_m[1]) != (next[1] > at_m[1]) {
                    let t = (at_m[1] - last[1]) / (next[1] - last[1]);
                    if at_m[0] < last[0] + t * (next[0] - last[0]) {
                        inside = !inside;
                    }
                }
                last = next;
            }
        }
        inside
    }
}

#[cfg(test)]
mod tests;
