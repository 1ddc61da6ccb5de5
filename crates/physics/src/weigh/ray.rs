//! Across a half-plane: lines along z, exact along each, summed over the
//! distance r from the axis between the places where the picture changes.

use nalgebra::Vector3;
use smallvec::{SmallVec, smallvec};

use super::job::Job;
use super::rule::{Gauss, rules};
use crate::ball::Face;
use crate::walk::{Stretch, Stretches};

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
    /// The last picture counted in `print`.
    last: u64,
}

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
    stretches: Stretches,
    breaks: Vec<f64>,
}

/// What a line meets: a fingerprint, and how much of each part, by mass.
#[derive(Clone, Debug)]
struct Picture {
    print: u64,
    lengths: SmallVec<[f64; 6]>,
}

impl<'a> Caster<'a> {
    pub(super) fn new(job: &'a Job, weight: &'a [f64], care: Care) -> Self {
        let (across, stretches, breaks) = (Vector3::x(), Stretches::new(), Vec::new());
        Self { job, weight, care, lines: 0, across, stretches, breaks }
    }

    /// The ray at one azimuth, by the coarser (0) or finer (1) rule of the pair.
    pub(super) fn cast(&mut self, sin: f64, cos: f64, which: usize) -> Ray {
        self.across = Vector3::new(cos, sin, 0.0);
        let mut ray = Ray { sums: smallvec![[0.0; 6]; self.weight.len()], print: SEED, last: 0 };
        let mut breaks = core::mem::take(&mut self.breaks);
        breaks.clear();
        let (own, others) = self.job.stack.solids.split_at(1);
        own[0].breaks(&self.across, &mut breaks);
        let outer = breaks.iter().copied().filter(|r| r.is_finite()).fold(0.0, f64::max);
        if outer > 0.0 {
            for solid in others {
                solid.breaks(&self.across, &mut breaks);
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

    /// Joins neighbouring stretches of r that show the same picture, then sums each.
    fn between(&mut self, breaks: &[f64], outer: f64, pair: [&Gauss; 2], ray: &mut Ray) {
        let (mut from, mut last) = (0.0, 0.0);
        let mut print = None;
        for &to in breaks.iter().chain([&outer]) {
            if to - last <= 1e-14 * outer {
                continue;
            }
            let here = self.look(0.5 * (last + to)).print;
            if let Some(p) = print
                && p != here
            {
                self.panel(from, last, p, pair, 0, ray);
                from = last;
            }
            print = Some(here);
            last = to;
        }
        if let Some(p) = print {
            self.panel(from, last, p, pair, 0, ray);
        }
    }

    /// Walks the line at r.
    fn look(&mut self, r: f64) -> Picture {
        self.lines += 1;
        self.job.stack.walk(&(self.across * r), &Vector3::z(), &mut self.stretches);
        let mut lengths: SmallVec<[f64; 6]> = smallvec![0.0; self.weight.len()];
        for s in &self.stretches {
            lengths[s.part] += r * (s.to - s.from) * self.weight[s.part];
        }
        Picture { print: fingerprint(&self.stretches), lengths }
    }

    fn panel(&mut self, from: f64, to: f64, print: u64, pair: [&Gauss; 2], depth: u32, ray: &mut Ray) {
        let (middle, half) = (0.5 * (from + to), 0.5 * (to - from));
        let mut sums: Sums = smallvec![[0.0; 6]; self.weight.len()];
        let mut masses: SmallVec<[f64; 6]> = smallvec![0.0; self.weight.len()];
        let mut seen: SmallVec<[(f64, Picture); 16]> = SmallVec::new();
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
        let mass: f64 = masses.iter().sum();
        let splits = depth < MOST_DEPTH && mass > self.care.tolerance;
        if splits && !same {
            return self.split_at_changes(from, to, &seen, pair, depth, ray);
        }
        if splits && self.care.fine > 0 && self.disagree(middle, half, pair[1], &masses) {
            self.panel(from, middle, print, pair, depth + 1, ray);
            return self.panel(middle, to, print, pair, depth + 1, ray);
        }
        // Pictures too thin to count, and the same one twice, are no news.
        if mass > self.care.tolerance && ray.last != print {
            ray.print = mixed(ray.print, print);
            ray.last = print;
        }
        for (sum, here) in ray.sums.iter_mut().zip(&sums) {
            add(sum, 1.0, here);
        }
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
    fn split_at_changes(
        &mut self,
        from: f64,
        to: f64,
        seen: &[(f64, Picture)],
        pair: [&Gauss; 2],
        depth: u32,
        ray: &mut Ray,
    ) {
        let mut start = from;
        for next in seen.windows(2) {
            if next[0].1.print == next[1].1.print {
                continue;
            }
            let change = self.find_change(&next[0], &next[1]);
            self.panel(start, change, next[0].1.print, pair, depth + 1, ray);
            start = change;
        }
        let last = seen.last().map_or(0, |s| s.1.print);
        self.panel(start, to, last, pair, depth + 1, ray);
    }

    /// A place between `a` and `b` where the picture ceases to be `a`'s, as
    /// closely as it matters: a kink needs less than a step.
    fn find_change(&mut self, a: &(f64, Picture), b: &(f64, Picture)) -> f64 {
        let (mut a, mut b) = (a.clone(), b.clone());
        loop {
            let apart: f64 = a.1.lengths.iter().zip(&b.1.lengths).map(|(a, b)| (a - b).abs()).sum();
            let r = 0.5 * (a.0 + b.0);
            if r <= a.0 || r >= b.0 || apart * (b.0 - a.0) <= self.care.tolerance {
                return r;
            }
            let picture = self.look(r);
            if picture.print == a.1.print { a = (r, picture) } else { b = (r, picture) }
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

const SEED: u64 = 0xcbf2_9ce4_8422_2325;

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
