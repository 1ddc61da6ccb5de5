//! Sweeping a plane with parallel lines.

use crate::ball::{Part, Run};

use super::CHORD_TOLERANCE_M;

/// Heights closer together than this count as one, in metres.
pub(super) const BRACKET_M: f64 = 4e-11;

/// Stretches shorter than this are rounding, in metres.
const SLIVER_M: f64 = 1e-9;

/// One line of the sweep.
#[derive(Clone, Debug)]
pub(super) struct Scan {
    pub(super) v_m: f64,
    pub(super) stretches: Vec<Stretch>,
}

/// A stretch of a line in one part.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Stretch {
    pub(super) part: Part,
    pub(super) left_m: f64,
    pub(super) right_m: f64,
}

/// Neighbouring lines that meet the same parts in the same order; two at least.
pub(super) type Slab = Vec<Scan>;

/// The runs of a line, leaving out slivers thinner than [`SLIVER_M`] (two
/// surfaces that coincide but for rounding), runs of one part joined.
pub(super) fn merged(runs: impl IntoIterator<Item = Run>) -> Vec<Stretch> {
    let mut stretches: Vec<Stretch> = Vec::new();
    for run in runs {
        if run.to_m - run.from_m < SLIVER_M {
            continue;
        }
        match stretches.last_mut() {
            Some(last) if last.part == run.part && run.from_m - last.right_m < SLIVER_M => {
                last.right_m = run.to_m;
            }
            _ => stretches.push(Stretch { part: run.part, left_m: run.from_m, right_m: run.to_m }),
        }
    }
    stretches
}

/// Sweeps upwards through `levels` (ascending heights), adding lines between
/// them wherever a chord would leave its curve or the parts change.
pub(super) fn sweep(levels: &[f64], cross: impl Fn(f64) -> Vec<Stretch>) -> Vec<Slab> {
    let scan = |v_m: f64| Scan { v_m, stretches: cross(v_m) };
    let Some(&first) = levels.first() else { return Vec::new() };
    let mut slabs = vec![vec![scan(first)]];
    let mut below = scan(first);
    for &v_m in &levels[1..] {
        let above = scan(v_m);
        refine(&mut slabs, &scan, &below, &above);
        below = above;
    }
    // A lone line has no height.
    slabs.retain(|slab| slab.len() > 1);
    slabs
}

fn refine(slabs: &mut Vec<Slab>, scan: &impl Fn(f64) -> Scan, below: &Scan, above: &Scan) {
    let gap_m = above.v_m - below.v_m;
    let alike = alike(below, above);
    if gap_m <= BRACKET_M {
        match slabs.last_mut() {
            Some(slab) if alike && largest_jump_m(below, above) < CHORD_TOLERANCE_M => {
                slab.push(above.clone());
            }
            _ => slabs.push(vec![above.clone()]),
        }
        return;
    }
    let middle = scan(f64::midpoint(below.v_m, above.v_m));
    if alike && self::alike(below, &middle) && bend_m(below, &middle, above) < CHORD_TOLERANCE_M {
        if let Some(slab) = slabs.last_mut() {
            slab.push(middle);
            slab.push(above.clone());
        }
        return;
    }
    refine(slabs, scan, below, &middle);
    refine(slabs, scan, &middle, above);
}

fn alike(a: &Scan, b: &Scan) -> bool {
    a.stretches.len() == b.stretches.len() && a.stretches.iter().zip(&b.stretches).all(|(a, b)| a.part == b.part)
}

fn ends(scan: &Scan) -> impl Iterator<Item = f64> + '_ {
    scan.stretches.iter().flat_map(|s| [s.left_m, s.right_m])
}

fn largest_jump_m(a: &Scan, b: &Scan) -> f64 {
    ends(a).zip(ends(b)).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max)
}

/// How far the middle line's ends lie from the chords between the outer two.
fn bend_m(below: &Scan, middle: &Scan, above: &Scan) -> f64 {
    let rise_m = above.v_m - below.v_m;
    ends(below)
        .zip(ends(middle))
        .zip(ends(above))
        .map(|((a, m), b)| (m - f64::midpoint(a, b)).abs() * rise_m / rise_m.hypot(b - a))
        .fold(0.0, f64::max)
}
