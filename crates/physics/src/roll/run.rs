//! A shot followed from release to its end, event by event.
//!
//! The contact's law and the friction are fixed during a step. A step that
//! passes an event (a zone's edge, the pins, the lane's edge, the end of
//! rolling) is taken again from its start, just long enough to end on it, so
//! that an event is met with the accuracy of a full step and no law is used
//! beyond where it holds. Slip's end cannot be passed: its law has no
//! meaning beyond. Steps approach it, each taking most of what is left.

use nalgebra::Vector2;

use super::ShotError;
use super::body::{Body, Contact, Rates, State, Y};
use super::control::Control;
use super::dop853::{Step, step};
use super::report::{End, Moment};
use super::watch::{Point, Watch, cubic};
use crate::lane::{EDGE_M, PINS_M, Zone};

/// A run is given up after this time: 10 minutes. A ball at a twentieth of
/// walking pace reaches the pins in less.
pub const TIME_LIMIT_S: f64 = 600.0;
/// A run is given up after this many steps.
pub const STEP_LIMIT: u32 = 1_000_000;

/// Most the ball may turn in one step, for what is noticed along the way.
const STEP_TURN_RAD: f64 = 3.0;
/// First step.
const FIRST_STEP_S: f64 = 5e-3;
/// First step of slip that has just begun.
const ONSET_STEP_S: f64 = 1e-3;
/// Least step.
const LEAST_STEP_S: f64 = 1e-7;
/// Slip below this part of the speed has ended.
const STILL: f64 = 1e-7;
/// The same when the ball hardly moves.
const STILL_M_S: f64 = 1e-9;
/// Part of what is left of the slip that one step may take.
const APPROACH: f64 = 0.8;
/// A step ends on a line if it is this close.
const ON_LINE_M: f64 = 1e-10;
/// What is left to a line is covered in a straight line below this time.
const STRAIGHT_S: f64 = 1e-6;
/// How closely the end of rolling is found.
const LET_GO_S: f64 = 2e-6;

/// What a step ended on.
#[derive(Clone, Copy, PartialEq)]
enum Event {
    None,
    Slips,
    ZoneEnd,
    ZoneStart,
    Edge,
}

/// A ball on its way.
pub(super) struct Run<'a> {
    pub(super) body: &'a Body,
    zones: &'a [Zone],
    zone: usize,
    pub(super) contact: Contact,
    pub(super) time_s: f64,
    pub(super) y: State,
    pub(super) now: Rates,
    next_s: f64,
    pub(super) control: Control,
    pub(super) watch: Watch,
    pub(super) rolling_since: Option<Moment>,
}

/// A finished step, for samples within it.
pub(super) struct Leg {
    pub(super) contact: Contact,
    pub(super) time_s: f64,
    pub(super) y: State,
    pub(super) rates: Rates,
}

impl<'a> Run<'a> {
    pub(super) fn new(
        body: &'a Body,
        zones: &'a [Zone],
        side: f64,
        y: State,
        tolerance: f64,
    ) -> Result<Self, ShotError> {
        let mu = zones.first().map_or(0.0, |zone| zone.mu);
        let contact = Contact::Slip { mu, onset_m_s: Vector2::zeros() };
        let mut run = Self {
            body,
            zones,
            zone: 0,
            contact,
            time_s: 0.0,
            y,
            now: body.rates(&contact, &y),
            next_s: FIRST_STEP_S,
            control: Control::new(tolerance, body.radius, body.unevenness),
            watch: Watch::new(side, body, &y),
            rolling_since: None,
        };
        run.settle();
        run.check()?;
        Ok(run)
    }

    fn moment(&self) -> Moment {
        Moment { time_s: self.time_s, distance_m: self.y[Y] }
    }

    /// Slip below which it has ended.
    fn still_m_s(&self) -> f64 {
        (STILL * (self.y[2] * self.y[2] + self.y[3] * self.y[3]).sqrt()).max(STILL_M_S)
    }

    /// Refuses a state in which no force would do.
    fn check(&self) -> Result<(), ShotError> {
        if self.now.normal_n > 0.0 {
            return Ok(());
        }
        let (time_s, distance_m) = (self.time_s, self.y[Y]);
        Err(if self.now.normal_n.is_nan() {
            ShotError::Jams { time_s, distance_m }
        } else {
            ShotError::Hops { time_s, distance_m }
        })
    }

    fn rates(&self, y: &State) -> Rates {
        self.body.rates(&self.contact, y)
    }

    #[inline(never)]
    fn step(&self, h: f64) -> Step {
        step(&self.y, &self.now.d, h, |y| self.rates(y))
    }

    /// Where slip has ended and friction can hold the contact, rolling begins.
    fn settle(&mut self) {
        let Contact::Slip { mu, onset_m_s } = self.contact else {
            return;
        };
        let (slip, still) = (self.body.slip(&self.y), self.still_m_s());
        if slip.norm() > still {
            if onset_m_s != Vector2::zeros() && slip.norm() > 100.0 * still {
                self.contact = Contact::Slip { mu, onset_m_s: Vector2::zeros() };
                self.now = self.rates(&self.y);
            }
            return;
        }
        let gripped = self.body.grip(&self.y);
        let rolling = Contact::Roll { mu };
        let rates = self.body.rates(&rolling, &gripped);
        if rates.margin_n >= 0.0 && rates.normal_n > 0.0 {
            self.control.add_velocity(self.time_s, slip.norm());
            self.contact = rolling;
            self.y = gripped;
            self.now = rates;
            self.rolling_since = Some(self.moment());
        } else if slip.norm() == 0.0 && onset_m_s == Vector2::zeros() {
            self.let_go(mu, rates.friction_n);
        }
    }

    /// Slip begins, against the friction that would have been needed.
    fn let_go(&mut self, mu: f64, needed_n: Vector2<f64>) {
        let size = needed_n.norm();
        let way = if size > 0.0 { needed_n / -size } else { Vector2::zeros() };
        self.contact = Contact::Slip { mu, onset_m_s: way * self.still_m_s() };
        self.now = self.rates(&self.y);
        self.next_s = self.next_s.min(ONSET_STEP_S);
        self.rolling_since = None;
    }

    /// Goes one step on. The step just taken, and how the run ended if it did.
    pub(super) fn advance(&mut self) -> Result<(Leg, Option<End>), ShotError> {
        let mut taken = self.attempt()?;
        let mut event = Event::None;
        if taken.least_margin_n < 0.0 {
            (taken, event) = self.hold(taken);
        }
        let zone = self.zones[self.zone];
        let (start_m, end_m) = (zone.from_m, zone.to_m.min(PINS_M));
        for (i, line_m, side, passed) in [
            (Y, end_m, 1.0, Event::ZoneEnd),
            (Y, start_m, -1.0, Event::ZoneStart),
            (0, EDGE_M, 1.0, Event::Edge),
            (0, -EDGE_M, -1.0, Event::Edge),
        ] {
            let beyond = |step: &Step| side * (step.state[i] - line_m);
            if beyond(&taken) >= 0.0 && side * taken.state[i] > side * self.y[i] {
                taken = self.land(taken, i, line_m);
                event = passed;
            }
        }
        let leg = Leg { contact: self.contact, time_s: self.time_s, y: self.y, rates: self.now };
        self.time_s += taken.length_s;
        self.watch.step(
            self.body,
            &self.contact,
            Point { time_s: leg.time_s, y: &leg.y, d: &leg.rates.d },
            Point { time_s: self.time_s, y: &taken.state, d: &taken.rates.d },
        );
        self.y = taken.state;
        self.now = taken.rates;
        self.check()?;
        let end = self.meet(event);
        if end.is_none() {
            self.settle();
            self.check()?;
        }
        Ok((leg, end))
    }

    /// What an event changes.
    fn meet(&mut self, event: Event) -> Option<End> {
        match event {
            Event::None if self.time_s >= TIME_LIMIT_S => return Some(End::TimeLimit),
            Event::None => {}
            Event::Edge => return Some(End::Gutter),
            Event::ZoneEnd if self.y[Y] >= PINS_M => return Some(End::Pins),
            Event::ZoneStart if self.zone == 0 => return Some(End::FoulLine),
            Event::ZoneEnd | Event::ZoneStart => {
                self.zone = if event == Event::ZoneEnd { self.zone + 1 } else { self.zone - 1 };
                let mu = self.zones[self.zone].mu;
                self.contact = match self.contact {
                    Contact::Slip { onset_m_s, .. } => Contact::Slip { mu, onset_m_s },
                    Contact::Roll { .. } => Contact::Roll { mu },
                };
                self.now = self.rates(&self.y);
                self.let_go_if_weak();
            }
            Event::Slips => self.let_go_if_weak(),
        }
        None
    }

    fn let_go_if_weak(&mut self) {
        if let Contact::Roll { mu } = self.contact
            && self.now.margin_n < 0.0
        {
            self.let_go(mu, self.now.friction_n);
        }
    }

    /// Longest step that may be tried, and whether slip is about to end.
    fn longest(&self) -> f64 {
        let spin = self.now.d[11];
        let mut longest = (TIME_LIMIT_S - self.time_s).min(STEP_TURN_RAD / spin.max(0.1));
        if let Contact::Slip { .. } = self.contact {
            let slip = self.body.slip(&self.y);
            let size = slip.norm();
            let closing = -slip.dot(&self.body.slip_rate(&self.now.d));
            if closing > 0.0 {
                longest = longest.min((APPROACH * size * size / closing).max(LEAST_STEP_S));
            }
        }
        longest
    }

    /// A step within its tolerance.
    fn attempt(&mut self) -> Result<Step, ShotError> {
        let longest = self.longest();
        let mut h = self.next_s.min(longest);
        let slip = self.body.slip(&self.y);
        let still = 100.0 * self.still_m_s();
        loop {
            let taken = self.step(h);
            let (norm, share) = self.control.norm(&self.y, &taken);
            let reversed = slip.norm() > still
                && matches!(self.contact, Contact::Slip { .. })
                && slip.dot(&self.body.slip(&taken.state)) < 0.0;
            let sound = taken.least_normal_n > 0.0 && !reversed;
            if h <= LEAST_STEP_S || (sound && norm <= 1.0) {
                self.control.add(self.time_s, &self.y, &taken, share);
                // What cut this step short says nothing of the next.
                self.next_s = (h * Control::factor(norm)).max(if h < longest { 0.0 } else { self.next_s.min(4.0 * h) });
                return Ok(taken);
            }
            h = (h * if sound { Control::factor(norm) } else { 0.25 }).max(LEAST_STEP_S);
        }
    }

    /// Cuts a step short at the moment friction no longer holds the contact.
    fn hold(&self, taken: Step) -> (Step, Event) {
        let mut taken = taken;
        // A stage may say so while the end does not: look more closely.
        while taken.rates.margin_n >= 0.0 {
            let shorter = taken.length_s / 2.0;
            if shorter * self.now.d[11] < 0.1 * STEP_TURN_RAD {
                return (taken, Event::None);
            }
            taken = self.step(shorter);
            if taken.least_margin_n >= 0.0 {
                return (taken, Event::None);
            }
        }
        // Regula falsi, Illinois variant, between margins of opposite sign.
        let (mut low, mut low_n) = (0.0, self.now.margin_n.max(0.0));
        let (mut high, mut high_n) = (taken.length_s, taken.rates.margin_n);
        while high - low > LET_GO_S {
            let part = low_n / (low_n - high_n);
            let h = (low + part * (high - low)).clamp(low + 0.4 * LET_GO_S, high - 0.4 * LET_GO_S);
            let tried = self.step(h);
            if tried.rates.margin_n < 0.0 {
                (high, high_n) = (h, tried.rates.margin_n);
                low_n *= 0.5;
                taken = tried;
            } else {
                (low, low_n) = (h, tried.rates.margin_n);
                high_n *= 0.5;
            }
        }
        (taken, Event::Slips)
    }

    /// Cuts a step short where a component reaches a line.
    fn land(&self, taken: Step, i: usize, line_m: f64) -> Step {
        let way = (taken.state[i] - self.y[i]).signum();
        let (mut low, mut high) = (0.0, taken.length_s);
        let mut h = self.first_guess(&taken, i, line_m);
        let mut taken = taken;
        for _ in 0..60 {
            taken = self.step(h);
            let left = line_m - taken.state[i];
            let rest = left / taken.rates.d[i];
            if left.abs() <= ON_LINE_M || rest.abs() < STRAIGHT_S {
                if rest.abs() < STRAIGHT_S {
                    for (value, rate) in taken.state.iter_mut().zip(&taken.rates.d) {
                        *value += rest * rate;
                    }
                    taken.length_s += rest;
                }
                break;
            }
            if way * left > 0.0 {
                low = h;
            } else {
                high = h;
            }
            let newton = h + rest;
            h = if newton > low && newton < high { newton } else { 0.5 * (low + high) };
        }
        taken.state[i] = line_m;
        taken.rates = self.rates(&taken.state);
        taken
    }

    /// Where the cubic through a step reaches a line.
    fn first_guess(&self, taken: &Step, i: usize, line_m: f64) -> f64 {
        let h = taken.length_s;
        let way = (taken.state[i] - self.y[i]).signum();
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..20 {
            let part = 0.5 * (low + high);
            let at = cubic(part, h, self.y[i], self.now.d[i], taken.state[i], taken.rates.d[i]);
            if way * (line_m - at) > 0.0 {
                low = part;
            } else {
                high = part;
            }
        }
        0.5 * (low + high) * h
    }
}
