//! Round the axis: rays at many azimuths, refined where the error is largest
//! until the whole ball meets its bound.

use std::collections::BinaryHeap;

use nalgebra::{Matrix3, Vector3};
use smallvec::{SmallVec, smallvec};

use super::job::Job;
use super::ray::{Care, Caster, Radial, Ray};
use super::rule::rules;
use crate::ball::Ball;
use crate::moments::Moments;

/// Moments of every part (the cover first), and how wrong they may be.
#[derive(Debug)]
pub(super) struct Sum {
    pub(super) parts: Vec<Moments>,
    /// Bound on the error of the mass, kg.
    pub(super) mass_error_kg: f64,
    /// Bound on the error of any entry of the second moments, kg·m².
    pub(super) second_error_kg_m2: f64,
}

/// Lines after which the sum stops and reports the error it has reached.
const MOST_LINES: usize = 4_000_000;

/// A stretch of azimuth of one job.
struct Panel {
    job: usize,
    from: f64,
    to: f64,
    /// A whole turn, by the trapezoid or, where all turns about z, by one ray.
    whole: bool,
    care: Care,
    sums: SmallVec<[Moments; 4]>,
    /// Weighted error, in the job's own units of volume.
    error: f64,
    /// How much the error matters: what the heap is ordered by.
    matters: f64,
}

impl PartialEq for Panel {
    fn eq(&self, other: &Self) -> bool {
        self.matters == other.matters
    }
}
impl Eq for Panel {}
impl PartialOrd for Panel {
    fn partial_cmp(&self, other: &Self) -> Option<core::cmp::Ordering> {
        Some(self.cmp(other))
    }
}
impl Ord for Panel {
    fn cmp(&self, other: &Self) -> core::cmp::Ordering {
        self.matters.total_cmp(&other.matters)
    }
}

/// What is fixed about a job while it is summed.
struct Setting {
    /// Weight of each part in the error (densities).
    weight: SmallVec<[f64; 6]>,
    /// Length by which higher moments are made comparable.
    length: f64,
    /// Mass error per unit of the job's own error.
    to_kg: f64,
    /// Second-moment error per unit of the job's own error.
    to_kg_m2: f64,
    turns: bool,
}

pub(super) struct Summer<'a> {
    ball: &'a Ball,
    jobs: Vec<Job>,
    settings: Vec<Setting>,
    parts: Vec<Moments>,
    /// Sum of the sizes of all that was added and taken away: what rounding scales with.
    gross_kg: f64,
    open: BinaryHeap<Panel>,
    lines: usize,
}

impl<'a> Summer<'a> {
    pub(super) fn new(ball: &'a Ball) -> Self {
        let mut parts = vec![Moments::ZERO; ball.densities_kg_m3.len()];
        if let Some(whole) = ball.stack.solids[0].own_moments() {
            parts[0] = whole.moved(&ball.stack.solids[0].linear, &ball.stack.solids[0].at);
        }
        let gross_kg = parts[0].volume * ball.densities_kg_m3[0];
        let (jobs, settings, open) = (Vec::new(), Vec::new(), BinaryHeap::new());
        let mut summer = Self { ball, jobs, settings, parts, gross_kg, open, lines: 0 };
        for job in Job::all(ball) {
            match job.closed_form() {
                Some(moments) => summer.apply(&job, 0, &moments),
                None => {
                    summer.settings.push(Setting::new(&job, ball));
                    summer.jobs.push(job);
                }
            }
        }
        for n in 0..summer.jobs.len() {
            summer.begin(n);
        }
        summer
    }

    /// Moves `moments` of the job's k-th part to where the job moves them.
    fn apply(&mut self, job: &Job, k: usize, moments: &Moments) {
        let moved = moments.scaled(job.sign);
        let below = job.parts[k];
        self.parts[below] -= moved;
        self.gross_kg += moments.volume * self.ball.densities_kg_m3[below];
        if let Some(to) = job.to {
            self.parts[to] += moved;
            self.gross_kg += moments.volume * self.ball.densities_kg_m3[to];
        }
    }

    /// First panels of a job: the whole turn, cut where outlines begin and end.
    fn begin(&mut self, n: usize) {
        let setting = &self.settings[n];
        let whole_kg = self.parts[0].volume.abs() * self.ball.densities_kg_m3[0];
        let tolerance = if setting.turns { 1e-14 } else { 1e-9 } * whole_kg / setting.to_kg;
        let care = Care { fine: usize::from(setting.turns), tolerance };
        let tau = core::f64::consts::TAU;
        let mut cuts = Vec::new();
        if !setting.turns {
            for solid in &self.jobs[n].stack.solids[1..] {
                solid.azimuths(&mut cuts);
            }
        }
        cuts.retain(|a| a.is_finite());
        for a in &mut cuts {
            *a = a.rem_euclid(tau);
        }
        cuts.sort_unstable_by(f64::total_cmp);
        cuts.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
        let Some(first) = cuts.first().copied() else {
            let panel = self.panel(n, 0.0, tau, true, care);
            self.open.push(panel);
            return;
        };
        for k in 0..cuts.len() {
            let to = cuts.get(k + 1).copied().unwrap_or(first + tau);
            let panel = self.panel(n, cuts[k], to, false, care);
            self.open.push(panel);
        }
    }

    fn panel(&mut self, n: usize, from: f64, to: f64, whole: bool, care: Care) -> Panel {
        let (job, setting) = (&self.jobs[n], &self.settings[n]);
        let mut caster = Caster::new(job, &setting.weight, care);
        let mut sums: SmallVec<[Moments; 4]> = smallvec![Moments::ZERO; job.parts.len()];
        let mut difference: SmallVec<[Moments; 4]> = sums.clone();
        if setting.turns {
            let (coarse, fine) = (caster.cast(0.0, 1.0, 0), caster.cast(0.0, 1.0, 1));
            for (k, (coarse, fine)) in coarse.iter().zip(&fine).enumerate() {
                sums[k] = turned(fine);
                difference[k] = turned(fine);
                difference[k] -= turned(coarse);
            }
        } else {
            let (middle, half) = (0.5 * (from + to), 0.5 * (to - from));
            for &(x, large, small) in &(if whole { &rules().turn } else { &rules().stretch }).nodes {
                let (sin, cos) = libm::sincos(middle + half * x);
                let ray = caster.cast(sin, cos, usize::from(small == 0.0));
                for (k, wedge) in wedges(&ray, cos, sin).enumerate() {
                    sums[k] += wedge.scaled(half * large);
                    difference[k] += wedge.scaled(half * (large - small));
                }
            }
        }
        self.lines += caster.lines;
        let error = setting.size(&difference);
        let matters = error * setting.to_kg;
        Panel { job: n, from, to, whole, care, sums, error, matters }
    }

    /// Refines until `enough` says so of the sum, or the lines run out.
    pub(super) fn finish(mut self, enough: impl Fn(&Sum) -> bool) -> Sum {
        loop {
            let sum = self.sum();
            if enough(&sum) || self.lines >= MOST_LINES {
                return sum;
            }
            // Halve the worst panels, an eighth of the error at a time.
            let total: f64 = self.open.iter().map(|p| p.matters).sum();
            let mut left = 0.875 * total;
            let mut worst = Vec::new();
            while left > 0.0 {
                let Some(panel) = self.open.pop() else { break };
                left -= panel.matters;
                worst.push(panel);
                if worst.len() >= 64 {
                    break;
                }
            }
            if worst.is_empty() {
                return sum;
            }
            for p in worst {
                let care = Care { fine: p.care.fine + 1, tolerance: p.care.tolerance / 8.0 };
                if self.settings[p.job].turns || p.to - p.from < 1e-12 {
                    let again = self.panel(p.job, p.from, p.to, p.whole, care);
                    self.open.push(again);
                    continue;
                }
                let middle = 0.5 * (p.from + p.to);
                let (a, b) =
                    (self.panel(p.job, p.from, middle, false, care), self.panel(p.job, middle, p.to, false, care));
                self.open.extend([a, b]);
            }
        }
    }

    fn sum(&self) -> Sum {
        let mut parts = self.parts.clone();
        let mut gross_kg = self.gross_kg;
        let (mut mass_error_kg, mut second_error_kg_m2) = (0.0, 0.0);
        let density = &self.ball.densities_kg_m3;
        for panel in &self.open {
            let (job, setting) = (&self.jobs[panel.job], &self.settings[panel.job]);
            mass_error_kg += panel.error * setting.to_kg;
            second_error_kg_m2 += panel.error * setting.to_kg_m2;
            for (own, &below) in panel.sums.iter().zip(&job.parts) {
                let moments = own.moved(&job.frame.linear, &job.frame.at).scaled(job.sign);
                parts[below] -= moments;
                gross_kg += moments.volume.abs() * density[below];
                if let Some(to) = job.to {
                    parts[to] += moments;
                    gross_kg += moments.volume.abs() * density[to];
                }
            }
        }
        let rounding = 64.0 * f64::EPSILON * gross_kg;
        let radius = self.ball.radius_m;
        Sum {
            parts,
            mass_error_kg: mass_error_kg + rounding,
            second_error_kg_m2: second_error_kg_m2 + rounding * radius * radius,
        }
    }
}

impl Setting {
    fn new(job: &Job, ball: &Ball) -> Self {
        let density = &ball.densities_kg_m3;
        let gains = job.to.map_or(0.0, |to| density[to]);
        let weight = job.parts.iter().map(|&p| density[p] + gains).collect();
        let linear: &Matrix3<f64> = &job.frame.linear;
        let stretch = [0, 1, 2].map(|i| linear.column(i).norm()).into_iter().fold(0.0, f64::max);
        // All that is summed lies in the ball: lengths beyond it do not count.
        let reach = job.frame.reach.min(ball.radius_m + job.frame.at.norm());
        let far = job.frame.at.norm() + reach;
        let to_kg = linear.determinant().abs();
        Self { weight, length: reach / stretch, to_kg, to_kg_m2: to_kg * far * far, turns: job.turns() }
    }

    /// Weighted size of a difference of moments, as a volume.
    fn size(&self, difference: &[Moments]) -> f64 {
        let l = 1.0 / self.length;
        let largest = |m: &Moments| m.volume.abs().max(l * m.first.amax()).max(l * l * m.second.amax());
        difference.iter().zip(&self.weight).map(|(m, w)| w * largest(m)).sum()
    }
}

/// A ray's part of the moments, per radian of azimuth.
fn wedges(ray: &Ray, cos: f64, sin: f64) -> impl Iterator<Item = Moments> {
    ray.iter().map(move |r| {
        let (x, y, xy) = (cos * r[4], sin * r[4], cos * sin * r[5]);
        Moments {
            volume: r[0],
            first: Vector3::new(cos * r[3], sin * r[3], r[1]),
            second: Matrix3::new(cos * cos * r[5], xy, x, xy, sin * sin * r[5], y, x, y, r[2]),
        }
    })
}

/// What a ray turned once round the axis sweeps.
fn turned(r: &Radial) -> Moments {
    let pi = core::f64::consts::PI;
    Moments::diagonal(2.0 * pi * r[0], 2.0 * pi * r[1], [pi * r[5], pi * r[5], 2.0 * pi * r[2]])
}
