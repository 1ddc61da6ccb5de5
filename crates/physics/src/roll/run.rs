//! A shot followed from release to its end, event by event.
//!
//! The contact's law and the friction are fixed during a step. A step that
//! passes an event (a zone's edge, the pins, the lane's edge, the end of
//! rolling) is taken again from its start, just long enough to end on it, so
//! that an event is met with the accuracy of a full step and no law is used
//! beyond where it holds. Slip's end cannot be passed: its law has no
//! meaning beyond. Steps approach it, each taking most of what is left.

use super::ShotError;
use super::body::{Body, Contact, Ground, Rates, State, Y};
use super::control::Control;
use super::dop853::{Step, step};
use super::report::{End, Moment};
use super::watch::{Point, Watch};
use crate::lane::{EDGE_M, Friction, PINS_M, Zone};

/// A run is given up after this time: 10 minutes. A ball at a twentieth of
/// walking pace reaches the pins in less.
pub const TIME_LIMIT_S: f64 = 600.0;
/// A run is given up after this many steps.
pub const STEP_LIMIT: u32 = 1_000_000;

/// Most the ball may turn in one step, for what is noticed along the way.
const STEP_TURN_RAD: f64 = 3.0;
/// Furthest the ball may go in one step over oil, lest a step see nothing of
/// a narrow streak.
const OIL_STEP_M: f64 = 0.9;
/// What the estimate of a step's error is multiplied by over oil: the film has
/// no third derivative at the cells' middles, which the method's estimate
/// takes for granted, and an error of place changes the friction.
const OIL_DOUBT: f64 = 4.0;
/// First step.
const FIRST_STEP_S: f64 = 5e-3;
/// First step of slip that has just begun.
const ONSET_STEP_S: f64 = 1e-3;
/// Least step.
const LEAST_STEP_S: f64 = 1e-8;
/// Slip below this has ended even when the ball hardly moves.
const STILL_M_S: f64 = 1e-6;
/// Part of what is left of the slip that one step may take.
const APPROACH: f64 = 0.9;
/// Error of the slip a late beginning is given, by the turn meanwhile.
const PUSH_ERROR: f64 = 0.1;
/// How much of an error a slip turned about makes its own.
const TURN_ERROR: f64 = 0.3;
/// Slip that counts as sliding, by the ball's speed. A ball whose contact creeps
/// by less rolls: where its centre of gravity is off the centre it lets go of
/// the lane and grips again on every turn, by a hundredth of its speed or less
/// on all but wild throws. The phases as published follow one another, skid,
/// hook, roll (United States Bowling Congress, ball motion study); how much slip
/// is none is not said there, so the fiftieth is a model choice.
pub const CREEP: f64 = 0.02;
/// Tries at the moment of least slip: each leaves half of what the one before it
/// missed, or far less.
const LEAST_SLIP_TRIES: u32 = 12;
/// Where slip begins at once and at full strength, the time in which the first
/// of it is given.
const SEED_S: f64 = 1e-6;

/// What a step ended on.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Event {
    None,
    Slips,
    ZoneEnd,
    ZoneStart,
    Edge,
}

/// A ball on its way.
pub(super) struct Run<'a> {
    pub(super) body: &'a Body,
    lane: &'a Friction,
    zones: &'a [Zone],
    zone: usize,
    pub(super) contact: Contact<'a>,
    pub(super) time_s: f64,
    pub(super) y: State,
    pub(super) now: Rates,
    next_s: f64,
    /// Last step that nothing but its error held back.
    free_s: f64,
    pub(super) control: Control,
    pub(super) watch: Watch,
    /// Since when the ball rolls, see [`CREEP`].
    pub(super) rolling_since: Option<Moment>,
}

/// A finished step, for samples within it.
pub(super) struct Leg<'a> {
    pub(super) contact: Contact<'a>,
    pub(super) time_s: f64,
    pub(super) y: State,
    pub(super) rates: Rates,
}

/// Friction of a stretch of the lane.
fn ground(lane: &Friction, stretch: usize) -> Ground<'_> {
    match lane.oil() {
        Some(oiled) => Ground::Oiled(oiled),
        None => Ground::Even(lane.stretches().get(stretch).map_or(0.0, |zone| zone.mu)),
    }
}

impl<'a> Run<'a> {
    pub(super) fn new(
        body: &'a Body,
        lane: &'a Friction,
        side: f64,
        y: State,
        tolerance: f64,
    ) -> Result<Self, ShotError> {
        let contact = Contact::Slip { on: ground(lane, 0) };
        let mut run = Self {
            body,
            lane,
            zones: lane.stretches(),
            zone: 0,
            contact,
            time_s: 0.0,
            y,
            now: body.rates(&contact, &y),
            next_s: FIRST_STEP_S,
            free_s: FIRST_STEP_S,
            control: Control::new(tolerance, body.radius, body.unevenness),
            watch: Watch::new(side, body, &y),
            rolling_since: None,
        };
        run.settle();
        run.check()?;
        Ok(run)
    }

    /// Slip below which it has ended.
    fn still_m_s(&self) -> f64 {
        (self.control.still() * (self.y[2] * self.y[2] + self.y[3] * self.y[3]).sqrt()).max(STILL_M_S)
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

    pub(super) fn rates(&self, y: &State) -> Rates {
        self.body.rates(&self.contact, y)
    }

    #[inline(never)]
    pub(super) fn step(&self, h: f64) -> Step {
        step(&self.y, &self.now.d, h, |y| self.rates(y))
    }

    /// Where slip has all but ended and friction can hold the contact, rolling
    /// begins. The impulse that is still needed is given at once; what that
    /// changes is of second order in the time it would have taken.
    fn settle(&mut self) {
        let Contact::Slip { on } = self.contact else { return };
        let slip = self.body.slip(&self.y);
        let (size, still) = (slip.norm(), self.still_m_s());
        if size > still {
            return;
        }
        let closing = -slip.dot(&self.body.slip_rate(&self.now.d));
        let left_s = if closing > 0.0 { size * size / closing } else { 0.0 };
        let error = size * (left_s * self.now.d[11]).min(1.0);
        if closing > 0.0 && error > 0.01 * still && size > 0.01 * still {
            return;
        }
        let gripped = self.body.grip(&self.y);
        let rolling = Contact::Roll { on };
        let rates = self.body.rates(&rolling, &gripped);
        if rates.margin_n >= 0.0 && rates.normal_n > 0.0 {
            self.control.add_velocity(self.time_s, error);
            self.rolling_since
                .get_or_insert(Moment { time_s: self.time_s + left_s, distance_m: self.y[Y] + left_s * self.y[3] });
            self.contact = rolling;
            self.y = gripped;
            self.now = rates;
            self.next_s = self.next_s.max(self.free_s);
        } else if size == 0.0 {
            self.now = rates;
            self.let_go(on, SEED_S);
        }
    }

    /// Slip begins, against the friction that would have been needed; `late_s`
    /// is how long it has lacked so much, by which there is some slip already.
    fn let_go(&mut self, on: Ground<'a>, late_s: f64) {
        let size = self.now.friction_n.norm();
        if size > 0.0 {
            let push = self.now.friction_n * (self.now.margin_n / size * late_s);
            self.y = self.body.push(&self.y, &push);
            let given = self.body.slip_per_push * push.norm();
            self.control.add_velocity(self.time_s, PUSH_ERROR * given * late_s * self.now.d[11]);
        }
        self.contact = Contact::Slip { on };
        self.now = self.rates(&self.y);
        let size = self.body.slip(&self.y).norm();
        let stiff_s = size / (self.body.slip_per_push * self.now.friction_n.norm());
        self.next_s = (4.0 * stiff_s).clamp(LEAST_STEP_S, ONSET_STEP_S);
    }

    /// Goes one step on. The step just taken, and how the run ended if it did.
    pub(super) fn advance(&mut self) -> Result<(Leg<'a>, Option<End>), ShotError> {
        let mut taken = self.attempt();
        let mut event = Event::None;
        if let Contact::Roll { .. } = self.contact {
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
            self.watch_slip(&leg);
            self.watch_creep(&leg);
            self.settle();
            self.check()?;
        }
        Ok((leg, end))
    }

    /// Where slip is so small that its direction turns faster than the ball,
    /// the next step changes with it; and where slip shrinks, is turned about
    /// and grows again, an error of its direction grows too.
    fn watch_slip(&mut self, leg: &Leg<'_>) {
        let (Contact::Slip { .. }, Contact::Slip { .. }) = (leg.contact, self.contact) else { return };
        let (was, is) = (self.body.slip(&leg.y), self.body.slip(&self.y));
        let (before, after) = (was.norm(), is.norm());
        let rate = self.body.slip_rate(&self.now.d);
        let small = self.body.slip_per_push * self.now.friction_n.norm() / self.now.d[11].max(1.0);
        if before == 0.0 || before.max(after) > small {
            return;
        }
        self.next_s = (self.next_s * (after / before).clamp(0.1, 2.0)).max(LEAST_STEP_S);
        if was.dot(&self.body.slip_rate(&leg.rates.d)) < 0.0 && is.dot(&rate) > 0.0 {
            // However wrong the direction, friction has changed the velocity
            // by no more than the slip it took away and gave.
            self.control.grow(self.time_s, TURN_ERROR * small / before.min(after), before + after);
        }
    }

    /// Slip that has dwindled to creep and grows again does not keep the ball
    /// from rolling; creep that has grown to slip does.
    fn watch_creep(&mut self, leg: &Leg<'_>) {
        let (Contact::Slip { .. }, Contact::Slip { .. }) = (leg.contact, self.contact) else { return };
        let slip = self.body.slip(&self.y);
        if slip.norm_squared() > CREEP * CREEP * (self.y[2] * self.y[2] + self.y[3] * self.y[3]) {
            self.rolling_since = None;
            return;
        }
        // Half the rate of the slip's square: from falling to growing.
        let fell = self.body.slip(&leg.y).dot(&self.body.slip_rate(&leg.rates.d));
        let grows = slip.dot(&self.body.slip_rate(&self.now.d));
        if self.rolling_since.is_none() && grows >= 0.0 {
            self.rolling_since = Some(self.least_slip(leg, fell, grows));
        }
    }

    /// Where in a step slip stops falling: half the rate of its square, `fell` at
    /// the step's start and `grows` at its end, passes through zero (regula
    /// falsi, Illinois variant, on the step taken shorter).
    fn least_slip(&self, leg: &Leg<'_>, fell: f64, grows: f64) -> Moment {
        let h = self.time_s - leg.time_s;
        let (mut low, mut high) = ((0.0, fell), (h, grows));
        let mut at = (h, self.y[Y]);
        for _ in 0..LEAST_SLIP_TRIES {
            if low.1 >= 0.0 || high.1 <= 0.0 {
                break;
            }
            let tried_s = low.0 - low.1 * (high.0 - low.0) / (high.1 - low.1);
            let there = step(&leg.y, &leg.rates.d, tried_s, |y| self.rates(y));
            let rate = self.body.slip(&there.state).dot(&self.body.slip_rate(&there.rates.d));
            at = (tried_s, there.state[Y]);
            if rate < 0.0 {
                low = (tried_s, rate);
                high.1 *= 0.5;
            } else {
                high = (tried_s, rate);
                low.1 *= 0.5;
            }
        }
        Moment { time_s: leg.time_s + at.0, distance_m: at.1 }
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
                let on = ground(self.lane, self.zone);
                self.contact = match self.contact {
                    Contact::Slip { .. } => Contact::Slip { on },
                    Contact::Roll { .. } => Contact::Roll { on },
                };
                self.now = self.rates(&self.y);
                if self.now.margin_n < 0.0 {
                    self.let_go(on, SEED_S);
                }
            }
            Event::Slips => {
                let late_s = self.lacking_since_s();
                self.let_go(self.contact.ground(), late_s / 2.0);
            }
        }
        None
    }

    /// How long friction has not sufficed, from the rate at which the lack grows.
    fn lacking_since_s(&self) -> f64 {
        const BACK_S: f64 = 1e-5;
        let mut before = self.y;
        for (value, rate) in before.iter_mut().zip(&self.now.d) {
            *value -= BACK_S * rate;
        }
        let growth = (self.rates(&before).margin_n - self.now.margin_n) / BACK_S;
        if growth > 0.0 { (-self.now.margin_n / growth).min(2.0 * self.control.late_s()) } else { 0.0 }
    }

    /// Longest step that may be tried, and whether slip is about to end.
    fn longest(&self) -> f64 {
        let spin = self.now.d[11];
        let mut longest = (TIME_LIMIT_S - self.time_s).min(STEP_TURN_RAD / spin.max(0.1));
        if let Ground::Oiled(_) = self.contact.ground() {
            longest = longest.min(OIL_STEP_M / (self.y[2] * self.y[2] + self.y[3] * self.y[3]).sqrt());
        }
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
    fn attempt(&mut self) -> Step {
        let longest = self.longest();
        let mut h = self.next_s.min(longest);
        let slip = self.body.slip(&self.y);
        let slips = matches!(self.contact, Contact::Slip { .. }) && slip.norm() > self.still_m_s();
        loop {
            let taken = self.step(h);
            let (norm, share) = self.control.norm(&self.y, &taken);
            let reversed = slips && slip.dot(&self.body.slip(&taken.state)) < 0.0;
            let sound = taken.least_normal_n > 0.0 && !reversed;
            if h <= LEAST_STEP_S || (sound && norm <= 1.0) {
                let doubt = if let Ground::Oiled(_) = self.contact.ground() { OIL_DOUBT } else { 1.0 };
                self.control.add(self.time_s, &self.y, &taken, share * doubt);
                let next_s = h * Control::factor(norm);
                // A step cut short says nothing of the next.
                self.next_s = if h < longest { next_s } else { next_s.max(self.next_s) };
                self.free_s = if slips { self.free_s.max(h) } else { h };
                return taken;
            }
            h = (h * if sound { Control::factor(norm) } else { 0.25 }).max(LEAST_STEP_S);
        }
    }
}
