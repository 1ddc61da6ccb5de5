//! A stretch of azimuth of one job: rays at the nodes of a rule, their sum,
//! and what it may be wrong by.

use nalgebra::{Matrix3, Vector3};
use smallvec::{SmallVec, smallvec};

use super::dip::Dip;
use super::job::Job;
use super::ray::{Care, Caster, Near, Radial, Ray};
use super::rule::{Nested, rules};
use crate::ball::Ball;
use crate::moments::Moments;

/// Moments by part of a job.
pub(super) type Parts = SmallVec<[Moments; 3]>;

const TURN: f64 = core::f64::consts::TAU;
/// Widest stretch to begin with.
const WIDEST_RAD: f64 = 2.2;

/// What is fixed about a job while it is summed.
#[derive(Debug)]
pub(super) struct Setting {
    pub(super) job: Job,
    /// Densities by part: what a volume counts for.
    weight: SmallVec<[f64; 6]>,
    /// Radius of the ball, by which higher moments are made comparable.
    radius_m: f64,
    /// Real volume per volume in the job's own coordinates.
    pub(super) to_kg: f64,
    turns: bool,
}

/// How a panel is summed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Way {
    /// All turns about the axis: one ray.
    Ray,
    /// A whole turn by the trapezoid.
    Turn,
    /// A stretch by the n-th rule.
    Stretch(usize),
}

#[derive(Debug)]
pub(super) struct Panel {
    from: f64,
    to: f64,
    way: Way,
    care: Care,
    pub(super) sums: Parts,
    /// Error of the rule round the axis and of the rules across, weighted, in
    /// the job's own units of volume.
    around: f64,
    across: f64,
    /// Azimuths between which the rays pass different pictures.
    events: Vec<[f64; 2]>,
    /// The rays at the nodes of the rule, ascending.
    rays: Vec<Seen>,
}

/// A ray of a panel.
#[derive(Clone, Debug)]
struct Seen {
    azimuth: f64,
    print: u64,
    near: Near,
    wedges: Parts,
}

impl Panel {
    /// Weighted error, in the job's own units of volume.
    pub(super) fn error(&self) -> f64 {
        self.around + self.across
    }
}

impl Setting {
    pub(super) fn new(job: Job, ball: &Ball) -> Self {
        let density = &ball.densities_kg_m3;
        let gains = job.to.map_or(0.0, |to| density[to]);
        let weight = job.parts.iter().map(|&p| density[p] + gains).collect();
        let (to_kg, turns) = (job.frame.linear.determinant().abs(), job.turns());
        Self { job, weight, radius_m: ball.radius_m, to_kg, turns }
    }

    /// First panels: a whole turn where every ray passes the same pictures,
    /// else the stretches between the places where that changes.
    pub(super) fn begin(&self, tolerance_kg: f64, lines: &mut usize) -> Vec<Panel> {
        let mut care = Care { fine: 0, tolerance: tolerance_kg / self.to_kg };
        if self.turns {
            // One ray is all: it may as well be close to rounding.
            care = Care { fine: 2, tolerance: 1e-5 * care.tolerance };
            return vec![self.panel(0.0, TURN, Way::Ray, care, None, lines)];
        }
        let turn = self.panel(-0.5 * TURN, 0.5 * TURN, Way::Turn, care, None, lines);
        let mut caster = Caster::new(&self.job, &self.weight, care);
        let mut stops: Vec<f64> = Vec::new();
        for &event in &turn.events {
            stops.push(self.find_event(&mut caster, &turn, event, care.tolerance));
        }
        // Walls along the axis turn their corners unseen by lines along it.
        for solid in &self.job.stack.solids {
            solid.upright_corners(&mut stops);
        }
        // Something narrow enough to stand between the rays of the turn.
        stops.extend(self.narrow_views(&mut caster, TURN / 16.0));
        *lines += caster.lines;
        if stops.is_empty() {
            return vec![turn];
        }
        stops.sort_unstable_by(f64::total_cmp);
        stops.dedup_by(|a, b| (*a - *b).abs() < 1e-12);
        stops.push(stops[0] + TURN);
        self.stretches(&stops, care, lines)
    }

    /// Panels between neighbouring stops, none too wide.
    fn stretches(&self, stops: &[f64], care: Care, lines: &mut usize) -> Vec<Panel> {
        let mut panels = Vec::new();
        for pair in stops.windows(2) {
            let width = pair[1] - pair[0];
            let pieces = (width / WIDEST_RAD).ceil();
            for n in 0..pieces as usize {
                let at = |n: usize| pair[0] + width * n as f64 / pieces;
                panels.push(self.panel(at(n), at(n + 1), Way::Stretch(0), care, None, lines));
            }
        }
        panels
    }

    /// Azimuths at which outlines begin and end, where they lie closer than
    /// `step` and a ray between them passes other pictures than one outside.
    fn narrow_views(&self, caster: &mut Caster, step: f64) -> Vec<f64> {
        let mut ends = Vec::new();
        for solid in &self.job.stack.solids[1..] {
            solid.azimuths(&mut ends);
        }
        ends.retain(|a| a.is_finite());
        ends.sort_unstable_by(f64::total_cmp);
        ends.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
        let mut print = |azimuth: f64| {
            let (sin, cos) = libm::sincos(azimuth);
            caster.cast(sin, cos, 0).print
        };
        let mut stops = Vec::new();
        for pair in ends.windows(2).filter(|p| p[1] - p[0] < step) {
            let width = pair[1] - pair[0];
            let within = print(pair[0] + 0.5 * width);
            if within != print(pair[0] - 0.5 * width) || within != print(pair[1] + 0.5 * width) {
                stops.extend_from_slice(pair);
            }
        }
        stops
    }

    /// Sums a panel; `known` is the same one by the rule of half the steps.
    fn panel(&self, from: f64, to: f64, way: Way, care: Care, known: Option<&Panel>, lines: &mut usize) -> Panel {
        let mut caster = Caster::new(&self.job, &self.weight, care);
        let panel = match way {
            Way::Ray => self.one_ray(from, to, care, &mut caster),
            Way::Turn => self.rays(from, to, way, &rules().turn, known, &mut caster),
            Way::Stretch(n) => self.rays(from, to, way, &rules().stretch[n], known, &mut caster),
        };
        *lines += caster.lines;
        panel
    }

    fn one_ray(&self, from: f64, to: f64, care: Care, caster: &mut Caster) -> Panel {
        let [coarse, fine] = [0, 1].map(|which| caster.cast(0.0, 1.0, which));
        let sums: Parts = fine.sums.iter().map(turned).collect();
        let mut apart = sums.clone();
        for (a, b) in apart.iter_mut().zip(&coarse.sums) {
            *a -= turned(b);
        }
        Panel {
            from,
            to,
            way: Way::Ray,
            care,
            sums,
            around: 0.0,
            across: self.size(&apart) + TURN * care.tolerance,
            events: Vec::new(),
            rays: Vec::new(),
        }
    }

    fn rays(&self, from: f64, to: f64, way: Way, rule: &Nested, known: Option<&Panel>, caster: &mut Caster) -> Panel {
        let (middle, half) = (0.5 * (from + to), 0.5 * (to - from));
        let mut nested: [Parts; 3] = core::array::from_fn(|_| smallvec![Moments::ZERO; self.weight.len()]);
        let mut across = known.map_or(0.0, |panel| panel.across);
        let mut rays: Vec<Seen> = Vec::with_capacity(rule.nodes.len() + 1);
        // What the rules across may be wrong by, on three rays for all.
        let checked = [1, 2, 3].map(|quarter| quarter * rule.nodes.len() / 4);
        for (n, &(x, weights)) in rule.nodes.iter().enumerate() {
            // Every other node is one of the rule of half the steps.
            let ray = match known {
                Some(panel) if n % 2 == 1 => panel.rays[n / 2].clone(),
                _ => self.ray(middle + half * x, caster),
            };
            if known.is_none() && checked.contains(&n) {
                let (sin, cos) = libm::sincos(ray.azimuth);
                let apart = self.apart(&ray.wedges, &wedges(&caster.cast(sin, cos, 0), sin, cos));
                across = across.max(2.0 * half * (apart + caster.care.tolerance));
            }
            for (sums, weight) in nested.iter_mut().zip(weights) {
                for (sum, wedge) in sums.iter_mut().zip(&ray.wedges) {
                    *sum += wedge.scaled(half * weight);
                }
            }
            rays.push(ray);
        }
        if way == Way::Turn {
            rays.push(Seen { azimuth: rays[0].azimuth + TURN, ..rays[0].clone() });
        }
        let (found, missed) = self.look_between(&rays, caster);
        let mut prints: Vec<(f64, u64)> = rays.iter().chain(&found).map(|ray| (ray.azimuth, ray.print)).collect();
        prints.sort_unstable_by(|a, b| a.0.total_cmp(&b.0));
        let events = prints.windows(2).filter(|p| p[0].1 != p[1].1).map(|p| [p[0].0, p[1].0]).collect();
        let [sums, by_half, by_quarter] = &nested;
        let (last, before) = (self.apart(sums, by_half), self.apart(by_half, by_quarter));
        // Each rule of twice the steps about squares the error of a smooth
        // stretch; counted on here is that it falls as it last did, and by no
        // more than to a tenth where the coarsest rule is a single ray.
        let least = if way == Way::Stretch(0) { 0.1 } else { 0.0 };
        let around = missed + if before > last { last * (last / before).max(least) } else { last };
        let care = caster.care;
        Panel { from, to, way, care, sums: nested[0].clone(), around, across, events, rays }
    }

    fn ray(&self, azimuth: f64, caster: &mut Caster) -> Seen {
        let (sin, cos) = libm::sincos(azimuth);
        let ray = caster.cast(sin, cos, 1);
        let wedges = wedges(&ray, sin, cos);
        Seen { azimuth, print: ray.print, near: ray.near, wedges }
    }

    /// Casts rays where surfaces come nearest to one another between those of a
    /// panel: those that pass other pictures, and about what the panel misses
    /// for them.
    fn look_between(&self, seen: &[Seen], caster: &mut Caster) -> (Vec<Seen>, f64) {
        let (mut found, mut missed) = (Vec::new(), 0.0);
        for rays in seen.windows(3) {
            let [a, b, c] = [0, 1, 2].map(|n| &rays[n]);
            if a.print != b.print || b.print != c.print {
                continue;
            }
            for (key, distance) in &b.near {
                let same = |other: &Seen| other.near.iter().find(|n| n.0 == *key).map(|n| n.1);
                let (Some(before), Some(after)) = (same(a), same(c)) else { continue };
                let dip = Dip::through([a.azimuth, b.azimuth, c.azimuth], [before, *distance, after]);
                let Some(azimuth) = dip.filter(|dip| dip.may_cross).map(|dip| dip.at) else { continue };
                let ray = self.ray(azimuth, caster);
                if ray.print != b.print {
                    missed += (c.azimuth - a.azimuth) * self.apart(&ray.wedges, &b.wedges);
                    found.push(ray);
                }
            }
        }
        (found, missed)
    }

    /// The same stretch, summed more closely.
    pub(super) fn refine(&self, panel: &Panel, lines: &mut usize) -> Vec<Panel> {
        let Panel { from, to, way, mut care, .. } = *panel;
        if panel.across > panel.around {
            care.tolerance /= 8.0;
            let finest = rules().across.len() - 1;
            if care.fine == finest && way != Way::Ray {
                // What one ray cannot settle weighs less in a narrower panel.
                return self.stretches(&[from, 0.5 * (from + to), to], care, lines);
            }
            care.fine = (care.fine + 1).min(finest);
            return vec![self.panel(from, to, way, care, None, lines)];
        }
        match way {
            Way::Ray => vec![self.panel(from, to, way, care, None, lines)],
            Way::Turn | Way::Stretch(_) => {
                let mut caster = Caster::new(&self.job, &self.weight, care);
                let mut stops = vec![from];
                let tolerance = care.tolerance.min(1e-3 * panel.around);
                stops.extend(panel.events.iter().map(|&event| self.find_event(&mut caster, panel, event, tolerance)));
                // An event at the very end was found before, as closely as it mattered.
                let room = 1e-6 * (to - from);
                stops.retain(|&s| s == from || (s > from + room && s < to - room));
                *lines += caster.lines;
                match way {
                    Way::Stretch(n) if stops.len() == 1 && n + 1 < rules().stretch.len() => {
                        return vec![self.panel(from, to, Way::Stretch(n + 1), care, Some(panel), lines)];
                    }
                    _ if stops.len() == 1 => stops.push(0.5 * (from + to)),
                    _ => {}
                }
                stops.push(to);
                self.stretches(&stops, care, lines)
            }
        }
    }

    /// A place between two azimuths where the pictures a ray passes change, as
    /// closely as it matters.
    fn find_event(&self, caster: &mut Caster, panel: &Panel, [a, b]: [f64; 2], tolerance: f64) -> f64 {
        let mut cast = |azimuth: f64| match panel.rays.iter().find(|ray| ray.azimuth == azimuth) {
            Some(ray) => ray.clone(),
            None => self.ray(azimuth, caster),
        };
        let (mut a, mut b) = (cast(a), cast(b));
        // What a misplaced kink counts for is how far the rays bend about it.
        let mut bend = self.apart(&a.wedges, &b.wedges);
        loop {
            let (width, middle) = (b.azimuth - a.azimuth, 0.5 * (a.azimuth + b.azimuth));
            if width * bend <= tolerance || middle <= a.azimuth || middle >= b.azimuth {
                return middle;
            }
            let here = cast(middle);
            bend = self.bend(&a.wedges, &here.wedges, &b.wedges).max(0.25 * bend);
            if here.print == a.print { a = here } else { b = here }
        }
    }

    /// How far the middle one of three lies from the line between the others.
    fn bend(&self, a: &Parts, middle: &Parts, b: &Parts) -> f64 {
        let mut bend = middle.clone();
        for ((m, a), b) in bend.iter_mut().zip(a).zip(b) {
            *m -= a.scaled(0.5);
            *m -= b.scaled(0.5);
        }
        self.size(&bend)
    }

    fn apart(&self, a: &Parts, b: &Parts) -> f64 {
        let mut apart = a.clone();
        for (a, b) in apart.iter_mut().zip(b) {
            *a -= *b;
        }
        self.size(&apart)
    }

    /// Weighted size of a difference of moments, in the job's own units of
    /// volume: the larger of the volume and, seen in the ball's frame, of the
    /// first moment over R and of the second over R².
    fn size(&self, difference: &[Moments]) -> f64 {
        let (frame, r) = (&self.job.frame, 1.0 / self.radius_m);
        let largest = |own: &Moments| {
            let m = own.moved(&frame.linear, &frame.at);
            m.volume.abs().max(r * m.first.amax()).max(r * r * m.second.amax())
        };
        difference.iter().zip(&self.weight).map(|(m, w)| w * largest(m)).sum::<f64>() / self.to_kg
    }
}

/// A ray's part of the moments, per radian of azimuth.
fn wedges(ray: &Ray, sin: f64, cos: f64) -> Parts {
    let wedge = |r: &Radial| {
        let (x, y, xy) = (cos * r[4], sin * r[4], cos * sin * r[5]);
        Moments {
            volume: r[0],
            first: Vector3::new(cos * r[3], sin * r[3], r[1]),
            second: Matrix3::new(cos * cos * r[5], xy, x, xy, sin * sin * r[5], y, x, y, r[2]),
        }
    };
    ray.sums.iter().map(wedge).collect()
}

/// What a ray turned once round the axis sweeps.
fn turned(r: &Radial) -> Moments {
    let pi = core::f64::consts::PI;
    Moments::diagonal(2.0 * pi * r[0], 2.0 * pi * r[1], [pi * r[5], pi * r[5], 2.0 * pi * r[2]])
}
