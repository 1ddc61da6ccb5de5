//! Across a half-plane: lines along z, exact along each, summed over the
//! distance r from the axis between the places where the picture changes.

use nalgebra::Vector3;
use smallvec::{SmallVec, smallvec};

use super::dip::Dip;
use super::job::Job;
use super::rule::{Gauss, rules};
use crate::ball::Face;
use crate::walk::{Crossings, Stretch, Stretches};

/// ∫ over r of r·L₀, r·L₁, r·L₂, r²·L₀, r²·L₁, r³·L₀, where Lₙ = ∫zⁿdz along
/// the lines: all that the moments of a wedge need.
pub(super) type Radial = [f64; 6];
/// Sums by part of the job.
type Sums = SmallVec<[Radial; 4]>;

/// What one ray sums to, and a fingerprint of the pictures it passes.
#[derive(Clone, Debug)]
pub(super) struct Ray {
    pub(super) sums: Sums,
    pub(super) print: u64,
    /// By which surfaces: how near they come without meeting.
    pub(super) near: Near,
    /// The last picture counted in `print`.
    last: u64,
}

/// Distances of near misses, each under a fingerprint of what misses what.
pub(super) type Near = SmallVec<[(u64, f64); 8]>;
/// A line: distance from the axis, and what is met there.
type Line = (f64, Picture);
/// Lines of a panel.
type Seen = SmallVec<[Line; 16]>;

/// Splittings a stretch of r may go through for changes of picture.
const MOST_DEPTH: u32 = 40;

/// How closely to sum.
#[derive(Clone, Copy, Debug)]
pub(super) struct Care {
    /// Which rules across: higher is closer.
    pub(super) fine: usize,
    /// Largest weighted mass per radian that the place of a change may be wrong by.
    pub(super) tolerance: f64,
}

/// Sums rays of one job.
pub(super) struct Caster<'a> {
    job: &'a Job,
    /// Densities by part: what a length counts for.
    weight: &'a [f64],
    pub(super) care: Care,
    /// Lines walked so far.
    pub(super) lines: usize,
    across: Vector3<f64>,
    /// Where the solid of the job ends on the present ray.
    outer: f64,
    crossings: Crossings,
    stretches: Stretches,
    breaks: Vec<f64>,
}

/// What a line meets: a fingerprint, and how much of each part, by mass.
#[derive(Clone, Debug)]
struct Picture {
    print: u64,
    lengths: SmallVec<[f64; 6]>,
    /// All that is crossed, seen or not: where, and which surface, the how
    /// manieth time.
    crossings: SmallVec<[(f64, u64); 12]>,
}

impl Picture {
    /// Mass per length along the ray by which two lines differ.
    fn apart(&self, other: &Self) -> f64 {
        self.lengths.iter().zip(&other.lengths).map(|(a, b)| (a - b).abs()).sum()
    }

    /// Where between this line (0) and another (1) a gap closes that is open
    /// here and turned about there, if it closes evenly.
    fn swap(&self, other: &Self) -> Option<f64> {
        self.crossings.windows(2).find_map(|pair| {
            let (here, there) = (pair[1].0 - pair[0].0, other.gap(pair[0].1, pair[1].1)?);
            (there < 0.0).then(|| here / (here - there))
        })
    }

    /// Whether the lines cross the same surfaces in the same order.
    fn same_order(&self, other: &Self) -> bool {
        self.crossings.iter().map(|c| c.1).eq(other.crossings.iter().map(|c| c.1))
    }

    /// How far one crossing lies above another, where the line has both.
    fn gap(&self, low: u64, high: u64) -> Option<f64> {
        let at = |face: u64| self.crossings.iter().find(|c| c.1 == face).map(|c| c.0);
        Some(at(high)? - at(low)?)
    }
}

impl<'a> Caster<'a> {
    pub(super) fn new(job: &'a Job, weight: &'a [f64], care: Care) -> Self {
        let (crossings, stretches, breaks) = (Crossings::new(), Stretches::new(), Vec::new());
        Self { job, weight, care, lines: 0, across: Vector3::x(), outer: 0.0, crossings, stretches, breaks }
    }

    /// The ray at one azimuth, by the coarser (0) or finer (1) rule of the pair.
    pub(super) fn cast(&mut self, sin: f64, cos: f64, which: usize) -> Ray {
        self.across = Vector3::new(cos, sin, 0.0);
        let mut ray = Ray { sums: smallvec![[0.0; 6]; self.weight.len()], print: SEED, near: Near::new(), last: SEED };
        let mut breaks = core::mem::take(&mut self.breaks);
        breaks.clear();
        let (own, others) = self.job.stack.solids.split_at(1);
        own[0].breaks(&self.across, &mut breaks);
        let outer = breaks.iter().copied().filter(|r| r.is_finite()).fold(0.0, f64::max);
        self.outer = outer;
        if outer > 0.0 {
            for (n, solid) in others.iter().enumerate() {
                let first = breaks.len();
                solid.breaks(&self.across, &mut breaks);
                let beyond = breaks[first..].iter().filter(|r| **r > outer).fold(f64::INFINITY, |a, r| a.min(*r));
                ray.near.push((mixed(OUTSIDE, n as u64), beyond - outer));
            }
            breaks.retain(|r| *r > 0.0 && *r < outer);
            breaks.sort_unstable_by(f64::total_cmp);
            let pairs = &rules().across;
            let [coarse, fine] = &pairs[self.care.fine.min(pairs.len() - 1)];
            let pair = if which == 0 { [coarse, fine] } else { [fine, coarse] };
            self.between(&breaks, outer, pair, &mut ray);
        }
        self.breaks = breaks;
        ray
    }

    /// Joins neighbouring stretches of r over which the lines cross the same
    /// surfaces in the same order, seen or not, then sums each.
    fn between(&mut self, breaks: &[f64], outer: f64, pair: [&Gauss; 2], ray: &mut Ray) {
        let (mut from, mut last) = (0.0, 0.0);
        let mut before: Option<Line> = None;
        for &to in breaks.iter().chain([&outer]) {
            if to - last <= 1e-14 * outer {
                continue;
            }
            let r = 0.5 * (last + to);
            let here = self.look(r);
            if let Some(line) = before
                && (line.1.print != here.print || !line.1.same_order(&here))
            {
                self.panel(from, last, &line, pair, 0, ray);
                from = last;
            }
            before = Some((r, here));
            last = to;
        }
        if let Some(line) = before {
            self.panel(from, last, &line, pair, 0, ray);
        }
    }

    /// Walks the line at r.
    fn look(&mut self, r: f64) -> Picture {
        self.lines += 1;
        self.job.stack.walk(&(self.across * r), &Vector3::z(), &mut self.crossings, &mut self.stretches);
        let mut lengths: SmallVec<[f64; 6]> = smallvec![0.0; self.weight.len()];
        for s in &self.stretches {
            lengths[s.part] += r * (s.to - s.from) * self.weight[s.part];
        }
        let mut crossings: SmallVec<[(f64, u64); 12]> = SmallVec::new();
        for &(z, solid, surface) in &self.crossings {
            let face = u64::from(solid) << 32 | u64::from(surface) << 16;
            let before = crossings.iter().filter(|c| c.1 & !0xffff == face).count();
            crossings.push((z, face | before as u64));
        }
        Picture { print: fingerprint(&self.stretches), lengths, crossings }
    }

    /// Sums a stretch of r. One of its lines is known.
    fn panel(&mut self, from: f64, to: f64, known: &Line, pair: [&Gauss; 2], depth: u32, ray: &mut Ray) {
        let (middle, half) = (0.5 * (from + to), 0.5 * (to - from));
        let mut sums: Sums = smallvec![[0.0; 6]; self.weight.len()];
        let mut masses: SmallVec<[f64; 6]> = smallvec![0.0; self.weight.len()];
        let mut seen = Seen::new();
        let print = known.1.print;
        let mut same = true;
        for &(x, weight) in &pair[0].nodes {
            let r = middle + half * x;
            let picture = self.look(r);
            same &= picture.print == print;
            for (mass, length) in masses.iter_mut().zip(&picture.lengths) {
                *mass += half * weight * length;
            }
            seen.push((r, picture));
            for s in &self.stretches {
                add(&mut sums[s.part], half * weight, &radial(r, s));
            }
        }
        let place = seen.iter().position(|line| line.0 >= known.0).unwrap_or(seen.len());
        seen.insert(place, known.clone());
        let may_split = depth < MOST_DEPTH;
        if may_split && same && self.look_in_gaps(&mut seen, &mut ray.near) {
            same = false;
        }
        let matters = |pair: &[Line]| {
            let [a, b] = pair else { return false };
            a.1.print != b.1.print && (b.0 - a.0) * a.1.apart(&b.1) > self.care.tolerance
        };
        if may_split && !same && seen.windows(2).any(matters) {
            return self.split_at_changes(from, to, &seen, pair, depth, ray);
        }
        let mass: f64 = masses.iter().sum();
        if may_split
            && self.care.fine > 0
            && mass > self.care.tolerance
            && self.disagree(middle, half, pair[1], &masses)
        {
            self.panel(from, middle, &seen[0], pair, depth + 1, ray);
            return self.panel(middle, to, &seen[seen.len() - 1], pair, depth + 1, ray);
        }
        // Pictures too thin to count, and the same one twice, are no news.
        let counts = if print == SEED { to - from > THIN * self.outer } else { mass > self.care.tolerance };
        if counts && ray.last != print {
            ray.print = mixed(ray.print, print);
            ray.last = print;
        }
        for (sum, here) in ray.sums.iter_mut().zip(&sums) {
            add(sum, 1.0, here);
        }
    }

    /// Looks where surfaces come nearest to one another between the lines of a
    /// panel; lines that show another picture join `seen`.
    fn look_in_gaps(&mut self, seen: &mut Seen, near: &mut Near) -> bool {
        let mut found = Seen::new();
        for lines in seen.windows(3) {
            let [a, b, c] = [0, 1, 2].map(|n| &lines[n].1);
            let at = [lines[0].0, lines[1].0, lines[2].0];
            for pair in b.crossings.windows(2) {
                let (low, high, gap) = (pair[0].1, pair[1].1, pair[1].0 - pair[0].0);
                let (Some(before), Some(after)) = (a.gap(low, high), c.gap(low, high)) else { continue };
                let Some(dip) = Dip::through(at, [before, gap, after]) else { continue };
                let mut least = dip.least;
                if dip.may_cross && gap > 1e-9 * self.outer {
                    let picture = self.look(dip.at);
                    least = picture.gap(low, high).unwrap_or(least);
                    if picture.print != b.print && (at[2] - at[0]) * picture.apart(b) > self.care.tolerance {
                        found.push((dip.at, picture));
                    }
                }
                near.push((mixed(mixed(SEED, low), high), least));
            }
        }
        let any = !found.is_empty();
        seen.extend(found);
        seen.sort_unstable_by(|a, b| a.0.total_cmp(&b.0));
        any
    }

    /// Whether another rule gives other masses than these, by more than the tolerance.
    fn disagree(&mut self, middle: f64, half: f64, rule: &Gauss, masses: &[f64]) -> bool {
        let mut apart: SmallVec<[f64; 6]> = masses.into();
        for &(x, weight) in &rule.nodes {
            let picture = self.look(middle + half * x);
            for (mass, length) in apart.iter_mut().zip(&picture.lengths) {
                *mass -= half * weight * length;
            }
        }
        apart.iter().map(|m| m.abs()).sum::<f64>() > self.care.tolerance
    }

    /// Finds where between neighbouring nodes the picture changes, and sums
    /// the parts apart.
    fn split_at_changes(&mut self, from: f64, to: f64, seen: &[Line], pair: [&Gauss; 2], depth: u32, ray: &mut Ray) {
        let mut start = from;
        for next in seen.windows(2) {
            if next[0].1.print == next[1].1.print {
                continue;
            }
            let change = self.find_change(&next[0], &next[1]);
            self.panel(start, change, &next[0], pair, depth + 1, ray);
            start = change;
        }
        if let Some(last) = seen.last() {
            self.panel(start, to, last, pair, depth + 1, ray);
        }
    }

    /// A place between `a` and `b` where the picture ceases to be `a`'s, as
    /// closely as it matters: a kink needs less than a step.
    fn find_change(&mut self, a: &Line, b: &Line) -> f64 {
        let (mut a, mut b) = (a.clone(), b.clone());
        let mut slow = 0;
        loop {
            let width = b.0 - a.0;
            let middle = 0.5 * (a.0 + b.0);
            if middle <= a.0 || middle >= b.0 || a.1.apart(&b.1) * width <= self.care.tolerance {
                return middle;
            }
            let r = match a.1.swap(&b.1) {
                // Where a gap would close if it were straight; when that keeps
                // coming from one side, beyond it, to close in from the other.
                Some(share) if slow < 2 => a.0 + width * share.clamp(1e-6, 1.0 - 1e-6),
                Some(share) if slow < 6 && share < 0.5 => a.0 + width * (5.0 * share).clamp(1e-6, 0.5),
                Some(share) if slow < 6 => b.0 - width * (5.0 * (1.0 - share)).clamp(1e-6, 0.5),
                _ => middle,
            };
            let picture = self.look(r);
            if picture.print == a.1.print {
                a = (r, picture)
            } else {
                b = (r, picture)
            }
            // Steps in a row that have not halved the stretch.
            slow = if b.0 - a.0 > 0.5 * width { slow + 1 } else { 0 };
        }
    }
}

fn add(sum: &mut Radial, weight: f64, values: &Radial) {
    for (a, b) in sum.iter_mut().zip(values) {
        *a += weight * b;
    }
}

fn radial(r: f64, s: &Stretch) -> Radial {
    let (a, b) = (s.from, s.to);
    let length = b - a;
    let l1 = 0.5 * length * (a + b);
    let l2 = length * (a * a + a * b + b * b) / 3.0;
    [r * length, r * l1, r * l2, r * r * length, r * r * l1, r * r * r * length]
}

/// Width of an empty stretch, relative to the ray, that is too thin to count.
const THIN: f64 = 1e-4;
/// The picture of a line that meets nothing, and where fingerprints begin.
const SEED: u64 = 0xcbf2_9ce4_8422_2325;
/// Where fingerprints of solids beyond the end of a ray begin.
const OUTSIDE: u64 = 0x9e37_79b9_7f4a_7c15;

/// One step of FNV-1a.
fn mixed(hash: u64, v: u64) -> u64 {
    (hash ^ v).wrapping_mul(0x0000_0100_0000_01b3)
}

/// Which faces and parts a line meets, in order.
fn fingerprint(stretches: &[Stretch]) -> u64 {
    stretches.iter().fold(SEED, |hash, s| {
        let face = |f: Face| u64::from(f.solid) << 16 | u64::from(f.surface);
        mixed(mixed(mixed(hash, s.part as u64), face(s.from_face)), face(s.to_face))
    })
}
