//! Joining the sides of a sweep into closed outlines.

use crate::ball::Part;

use super::CHORD_TOLERANCE_M;
use super::sweep::Slab;

/// Ends on one line closer together than this are one corner, in metres.
const SNAP_M: f64 = 1e-5;
/// Points this close to a chord are left out, in metres.
const STRAIGHT_M: f64 = CHORD_TOLERANCE_M / 4.0;

/// A directed stretch of outline between two corners, material to its left.
struct Side {
    from: usize,
    to: usize,
    /// Points strictly between the corners.
    between: Vec<[f64; 2]>,
}

/// The closed outlines of one part.
pub(super) fn loops(slabs: &[Slab], part: Part) -> Vec<Vec<[f64; 2]>> {
    let mut corners: Vec<[f64; 2]> = Vec::new();
    let mut sides: Vec<Side> = Vec::new();
    let mut below: Vec<[usize; 2]> = Vec::new();
    for place in 0..=slabs.len() {
        let under = place.checked_sub(1).map(|p| &slabs[p]);
        let over = slabs.get(place);
        let ends = |scan: Option<&super::sweep::Scan>| -> Vec<[f64; 2]> {
            scan.map_or(&[][..], |scan| &scan.stretches)
                .iter()
                .filter(|s| s.part == part)
                .map(|s| [s.left_m, s.right_m])
                .collect()
        };
        let lower = ends(under.and_then(|s| s.last()));
        let upper = ends(over.and_then(|s| s.first()));
        let v_m = over.map_or_else(|| under.and_then(|s| s.last()).map_or(0.0, |scan| scan.v_m), |slab| slab[0].v_m);
        let knots = Knots::new(&lower, &upper, v_m, &mut corners);
        let lower = knots.corners_of(&lower);
        let upper = knots.corners_of(&upper);
        level_sides(&knots, &lower, &upper, &mut sides);
        if let Some(slab) = under {
            upright_sides(slab, part, &below, &lower, &mut sides);
        }
        below = upper;
    }
    joined(&corners, sides)
}

/// The corners on one height, in order of u.
struct Knots {
    first: usize,
    u_m: Vec<f64>,
}

impl Knots {
    fn new(lower: &[[f64; 2]], upper: &[[f64; 2]], v_m: f64, corners: &mut Vec<[f64; 2]>) -> Self {
        let mut ends: Vec<f64> = lower.iter().chain(upper).flatten().copied().collect();
        ends.sort_by(f64::total_cmp);
        let mut u_m: Vec<f64> = Vec::new();
        for end in ends {
            if u_m.last().is_none_or(|last| end - last > SNAP_M) {
                u_m.push(end);
            }
        }
        let first = corners.len();
        corners.extend(u_m.iter().map(|&u| [u, v_m]));
        Self { first, u_m }
    }

    /// The knot of an end: the last one not to its right.
    fn of(&self, end_m: f64) -> usize {
        self.first + self.u_m.partition_point(|&u| u <= end_m).saturating_sub(1)
    }

    fn corners_of(&self, stretches: &[[f64; 2]]) -> Vec<[usize; 2]> {
        stretches.iter().map(|s| s.map(|end| self.of(end))).collect()
    }
}

/// Level stretches: where material lies only below, or only above.
fn level_sides(knots: &Knots, lower: &[[usize; 2]], upper: &[[usize; 2]], sides: &mut Vec<Side>) {
    let covers =
        |stretches: &[[usize; 2]], knot: usize| stretches.iter().any(|&[left, right]| (left..right).contains(&knot));
    for left in knots.first..(knots.first + knots.u_m.len()).saturating_sub(1) {
        let (from, to) = match (covers(lower, left), covers(upper, left)) {
            (true, false) => (left + 1, left),
            (false, true) => (left, left + 1),
            _ => continue,
        };
        sides.push(Side { from, to, between: Vec::new() });
    }
}

/// The left sides (downwards) and right sides (upwards) of one slab.
fn upright_sides(slab: &Slab, part: Part, bottom: &[[usize; 2]], top: &[[usize; 2]], sides: &mut Vec<Side>) {
    let places = (0..slab[0].stretches.len()).filter(|&p| slab[0].stretches[p].part == part);
    for ((place, bottom), top) in places.zip(bottom).zip(top) {
        let inner = &slab[1..slab.len() - 1];
        let left = inner.iter().rev().map(|s| [s.stretches[place].left_m, s.v_m]).collect();
        let right = inner.iter().map(|s| [s.stretches[place].right_m, s.v_m]).collect();
        sides.push(Side { from: top[0], to: bottom[0], between: left });
        sides.push(Side { from: bottom[1], to: top[1], between: right });
    }
}

/// Follows sides from corner to corner until each closes.
fn joined(corners: &[[f64; 2]], mut sides: Vec<Side>) -> Vec<Vec<[f64; 2]>> {
    let mut leaving: Vec<Vec<usize>> = vec![Vec::new(); corners.len()];
    for (index, side) in sides.iter().enumerate() {
        leaving[side.from].push(index);
    }
    let mut loops = Vec::new();
    for start in 0..corners.len() {
        while let Some(mut index) = leaving[start].pop() {
            let mut path = vec![corners[start]];
            loop {
                let side = &mut sides[index];
                path.append(&mut side.between);
                let corner = side.to;
                if corner == start {
                    break;
                }
                path.push(corners[corner]);
                // Every corner is left as often as it is reached.
                let Some(next) = leaving[corner].pop() else { break };
                index = next;
            }
            // A sliver may be thinner than what thinning leaves out.
            let thin = thinned(&path);
            let kept = if thin.len() > 2 { thin } else { path };
            if kept.len() > 2 {
                loops.push(kept);
            }
        }
    }
    loops
}

/// A closed path without the points it can do without (Douglas and Peucker,
/// "Algorithms for the reduction of the number of points…", Cartographica 10,
/// 1973): what is left out lies within [`STRAIGHT_M`] of what is kept.
fn thinned(path: &[[f64; 2]]) -> Vec<[f64; 2]> {
    let Some(&first) = path.first() else { return Vec::new() };
    let off = |p: &[f64; 2]| (p[0] - first[0]).hypot(p[1] - first[1]);
    let far = (0..path.len()).max_by(|&a, &b| off(&path[a]).total_cmp(&off(&path[b]))).unwrap_or(0);
    let mut kept = vec![first];
    let closed: Vec<[f64; 2]> = path.iter().copied().chain([first]).collect();
    // Halves still to be thinned, the next one last.
    let mut spans = vec![(far, path.len()), (0, far)];
    while let Some((from, to)) = spans.pop() {
        let worst = (from + 1..to)
            .map(|at| (off_chord_m(closed[from], closed[at], closed[to]), at))
            .max_by(|a, b| a.0.total_cmp(&b.0));
        match worst {
            Some((off_m, at)) if off_m > STRAIGHT_M => spans.extend([(at, to), (from, at)]),
            _ => kept.push(closed[to]),
        }
    }
    kept.pop();
    kept
}

fn off_chord_m(a: [f64; 2], p: [f64; 2], b: [f64; 2]) -> f64 {
    let (du, dv) = (b[0] - a[0], b[1] - a[1]);
    let (pu, pv) = (p[0] - a[0], p[1] - a[1]);
    let along = (pu * du + pv * dv) / (du * du + dv * dv);
    let along = if along.is_finite() { along.clamp(0.0, 1.0) } else { 0.0 };
    (pu - along * du).hypot(pv - along * dv)
}
