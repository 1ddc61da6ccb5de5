//! All steps of a ball summed, refined where the error matters most until the
//! whole meets its bound.

use std::collections::BinaryHeap;

use super::job::Job;
use super::panel::{Panel, Setting};
use crate::ball::Ball;
use crate::moments::Moments;

/// Moments of every part (the cover first), and how wrong they may be.
#[derive(Clone, Debug)]
pub(crate) struct Sum {
    pub(crate) parts: Vec<Moments>,
    /// Bound on the error of the mass, kg.
    pub(crate) mass_error_kg: f64,
    /// Bound on the error of any entry of the second moments, kg·m².
    pub(crate) second_error_kg_m2: f64,
    /// Lines walked: the cost, whatever the machine.
    #[cfg(test)]
    pub(super) lines: usize,
}

/// Lines after which the sum stops and reports the error it has reached.
const MOST_LINES: usize = 8_000_000;
/// Panels refined between two looks at the whole.
const AT_A_TIME: usize = 64;
/// Share of the error allowed that panels may keep while others are refined.
const LEAVE: f64 = 0.7;
/// Mass per radian, relative to the cover's, that a place may be wrong by at
/// first, for each unit of the relative error aimed at.
const FIRST_TOLERANCE: f64 = 2.5e-3;

/// A panel, ordered by how much its error matters.
struct Open {
    job: usize,
    panel: Panel,
    matters: f64,
}

impl PartialEq for Open {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other).is_eq()
    }
}
impl Eq for Open {}
impl PartialOrd for Open {
    fn partial_cmp(&self, other: &Self) -> Option<core::cmp::Ordering> {
        Some(self.cmp(other))
    }
}
impl Ord for Open {
    fn cmp(&self, other: &Self) -> core::cmp::Ordering {
        self.matters.total_cmp(&other.matters)
    }
}

pub(super) struct Summer<'a> {
    ball: &'a Ball,
    settings: Vec<Setting>,
    /// What the closed forms give.
    parts: Vec<Moments>,
    /// Mass of all that was added and taken away: what rounding scales with.
    gross_kg: f64,
    open: BinaryHeap<Open>,
    lines: usize,
}

impl<'a> Summer<'a> {
    pub(super) fn new(ball: &'a Ball, tolerance: f64) -> Self {
        let mut parts = vec![Moments::ZERO; ball.densities_kg_m3.len()];
        let sphere = &ball.stack.solids[0];
        if let Some(whole) = sphere.own_moments() {
            parts[0] = whole.moved(&sphere.linear, &sphere.at);
        }
        let gross_kg = parts[0].volume * ball.densities_kg_m3[0];
        let mut summer = Self { ball, settings: Vec::new(), parts, gross_kg, open: BinaryHeap::new(), lines: 0 };
        for job in Job::all(ball) {
            match job.closed_form() {
                Some(moments) => {
                    summer.gross_kg += moved(ball, &mut summer.parts, &job, 0, &moments);
                }
                None => summer.settings.push(Setting::new(job, ball)),
            }
        }
        let tolerance_kg = FIRST_TOLERANCE * tolerance * gross_kg;
        for job in 0..summer.settings.len() {
            let panels = summer.settings[job].begin(tolerance_kg, &mut summer.lines);
            summer.push(job, panels);
        }
        summer
    }

    fn push(&mut self, job: usize, panels: Vec<Panel>) {
        let to_kg = self.settings[job].to_kg;
        self.open.extend(panels.into_iter().map(|panel| Open { job, matters: panel.error() * to_kg, panel }));
    }

    /// Refines until the relative error that `judge` sees in the sum is at most
    /// `tolerance`, or the lines run out.
    pub(super) fn finish(mut self, tolerance: f64, judge: impl Fn(&Sum) -> f64) -> Sum {
        loop {
            let sum = self.sum();
            let relative_error = judge(&sum);
            if relative_error <= tolerance || self.lines >= MOST_LINES || self.open.is_empty() {
                return sum;
            }
            // The worst panels, until what the others hold is well within bounds.
            let all: f64 = self.open.iter().map(|open| open.matters).sum();
            let mut left = all * (1.0 - LEAVE * tolerance / relative_error);
            let mut worst = Vec::new();
            while left > 0.0 && worst.len() < AT_A_TIME {
                let Some(open) = self.open.pop() else { break };
                left -= open.matters;
                worst.push(open);
            }
            for open in worst {
                let panels = self.settings[open.job].refine(&open.panel, &mut self.lines);
                self.push(open.job, panels);
            }
        }
    }

    fn sum(&self) -> Sum {
        let (mut parts, mut gross_kg) = (self.parts.clone(), self.gross_kg);
        let mut error_kg = 0.0;
        for Open { job, panel, .. } in &self.open {
            let setting = &self.settings[*job];
            error_kg += panel.error() * setting.to_kg;
            let frame = &setting.job.frame;
            for (k, own) in panel.sums.iter().enumerate() {
                let moments = own.moved(&frame.linear, &frame.at);
                gross_kg += moved(self.ball, &mut parts, &setting.job, k, &moments);
            }
        }
        // Errors of the second moments are measured over R².
        let mass_error_kg = error_kg + 64.0 * f64::EPSILON * gross_kg;
        let second_error_kg_m2 = mass_error_kg * self.ball.radius_m * self.ball.radius_m;
        Sum {
            parts,
            mass_error_kg,
            second_error_kg_m2,
            #[cfg(test)]
            lines: self.lines,
        }
    }
}

/// Moves `moments` of the job's k-th part to where the job moves them; returns
/// the mass that was taken and added.
fn moved(ball: &Ball, parts: &mut [Moments], job: &Job, k: usize, moments: &Moments) -> f64 {
    let (signed, below) = (moments.scaled(job.sign), job.parts[k]);
    parts[below] -= signed;
    let mut gross_kg = moments.volume.abs() * ball.densities_kg_m3[below];
    if let Some(to) = job.to {
        parts[to] += signed;
        gross_kg += moments.volume.abs() * ball.densities_kg_m3[to];
    }
    gross_kg
}
