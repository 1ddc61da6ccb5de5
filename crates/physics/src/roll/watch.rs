//! What is noticed along the way, step by step: breakpoint, where the hook
//! starts, track rings. Nothing here feeds back into the motion.

use core::f64::consts::TAU;

use nalgebra::Vector3;
use smallvec::SmallVec;

use super::body::{Body, Contact, State, omega};
use super::report::Moment;
use crate::units::GRAVITY_M_S2;

/// Least turn by friction that counts as a hook, 0.1° in radians.
const HOOK_TURN_RAD: f64 = core::f64::consts::PI / 1800.0;
/// Share of the fastest slip so far below which the pull no longer counts: as
/// slip dies away its direction, and the pull with it, can swing wide.
const DYING_SLIP: f64 = 0.1;
/// Spin below this has no axis.
pub(super) const NO_SPIN_RAD_S: f64 = 1e-9;

/// One end of a step.
#[derive(Clone, Copy)]
pub(super) struct Point<'a> {
    pub(super) time_s: f64,
    pub(super) y: &'a State,
    /// Rates of change there.
    pub(super) d: &'a State,
}

/// Value at `part` (0 to 1) of a step of length `h` of the cubic through both
/// ends' values and rates (Hermite).
pub(super) fn cubic(part: f64, h: f64, a: f64, da: f64, b: f64, db: f64) -> f64 {
    let rest = 1.0 - part;
    (a * (1.0 + 2.0 * part) + h * da * part) * rest * rest + (b * (1.0 + 2.0 * rest) - h * db * rest) * part * part
}

/// A stretch over which the sideways pull rises above all before it.
#[derive(Clone, Copy)]
struct Rise {
    from: (Moment, f64),
    to: (Moment, f64),
}

pub(super) struct Watch {
    /// +1 where the bowler's own side is +x.
    side: f64,
    /// Furthest to the own side: side·x and y.
    furthest: (f64, f64),
    rises: SmallVec<[Rise; 16]>,
    pulled: Option<(Moment, f64)>,
    most_slip_m_s: f64,
    turn_rad: f64,
    most_turned_rad: f64,
    first_axis: Option<Vector3<f64>>,
    next_ring_rad: f64,
    /// Largest square of the chord between the first ring's axis and a later one's.
    widest_chord2: f64,
    per_turn: f64,
}

impl Watch {
    pub(super) fn new(side: f64, body: &Body, y: &State) -> Self {
        let mut watch = Self {
            side,
            furthest: (side * y[0], y[1]),
            rises: SmallVec::new(),
            pulled: None,
            most_slip_m_s: 0.0,
            turn_rad: 0.0,
            most_turned_rad: 0.0,
            first_axis: None,
            next_ring_rad: TAU,
            widest_chord2: 0.0,
            per_turn: 0.0,
        };
        let spin = omega(y);
        if spin.norm() > NO_SPIN_RAD_S {
            watch.ring(body, &Body::in_ball(y, &spin));
        }
        watch
    }

    /// Takes note of a finished step.
    pub(super) fn step(&mut self, body: &Body, contact: &Contact<'_>, from: Point, to: Point) {
        self.look_for_breakpoint(&from, &to);
        self.pull(body, contact, &from);
        self.pull(body, contact, &to);
        if to.y[11] >= self.next_ring_rad {
            self.rings(body, &from, &to);
        }
    }

    fn look_for_breakpoint(&mut self, from: &Point, to: &Point) {
        let h = to.time_s - from.time_s;
        let (a, b) = (self.side * from.y[2], self.side * to.y[2]);
        if a > 0.0 && b < 0.0 {
            // Where the cubic's slope, a quadratic, falls through zero.
            let rise = self.side * (to.y[0] - from.y[0]) / h;
            let (p, q) = (3.0 * (a + b) - 6.0 * rise, 6.0 * rise - 4.0 * a - 2.0 * b);
            let root = (q * q - 4.0 * p * a).max(0.0).sqrt();
            let part = (-2.0 * a / (q - root)).clamp(0.0, 1.0);
            let at = |i: usize| cubic(part, h, from.y[i], from.d[i], to.y[i], to.d[i]);
            self.reach(self.side * at(0), at(1));
        }
        self.reach(self.side * to.y[0], to.y[1]);
    }

    fn reach(&mut self, out_m: f64, distance_m: f64) {
        if out_m > self.furthest.0 {
            self.furthest = (out_m, distance_m);
        }
    }

    /// Notes the friction that acts sideways, per weight.
    fn pull(&mut self, body: &Body, contact: &Contact<'_>, at: &Point) {
        let Contact::Slip { on } = contact else {
            self.pulled = None;
            return;
        };
        let mu = on.mu(at.y);
        let (slip, speed) = (body.slip(at.y), (at.y[2] * at.y[2] + at.y[3] * at.y[3]).sqrt());
        let size = slip.norm() * speed;
        let sideways = if size > 0.0 { mu * (at.y[2] * slip.y - at.y[3] * slip.x) / size } else { 0.0 };
        let now = Moment { time_s: at.time_s, distance_m: at.y[1] };
        let new = (now, sideways.abs());
        let old = self.pulled.map_or(new, |(moment, pull)| {
            // Where the path's direction has turned to by friction, roughly:
            // only to tell a hook from none.
            let h = now.time_s - moment.time_s;
            if speed > 0.0 {
                self.turn_rad += h * 0.5 * (sideways + pull) * GRAVITY_M_S2 / speed;
            }
            (moment, pull.abs())
        });
        self.most_turned_rad = self.most_turned_rad.max(self.turn_rad.abs());
        self.most_slip_m_s = self.most_slip_m_s.max(slip.norm());
        let lively = slip.norm() >= DYING_SLIP * self.most_slip_m_s;
        if lively && self.rises.last().is_none_or(|last| new.1 > last.to.1) {
            self.rises.push(Rise { from: old, to: new });
            let half = new.1 / 2.0;
            let idle = self.rises.iter().take_while(|rise| rise.to.1 < half).count();
            self.rises.drain(..idle);
        }
        self.pulled = Some((now, sideways));
    }

    fn rings(&mut self, body: &Body, from: &Point, to: &Point) {
        let axes = |p: &Point| {
            let alpha = Vector3::new(p.d[4], p.d[5], p.d[6]);
            (Body::in_ball(p.y, &omega(p.y)), Body::in_ball(p.y, &alpha))
        };
        let ((a, da), (b, db)) = (axes(from), axes(to));
        let h = to.time_s - from.time_s;
        while to.y[11] >= self.next_ring_rad {
            let part = (self.next_ring_rad - from.y[11]) / (to.y[11] - from.y[11]);
            self.ring(body, &Vector3::from_fn(|i, _| cubic(part, h, a[i], da[i], b[i], db[i])));
            self.next_ring_rad += TAU;
        }
    }

    /// A track ring square to a spin given in ball axes.
    fn ring(&mut self, body: &Body, spin: &Vector3<f64>) {
        let axis = spin / spin.norm();
        let first = *self.first_axis.get_or_insert(axis);
        self.widest_chord2 = self.widest_chord2.max((axis - first).norm_squared());
        let drift = body.free_spin_rate(&axis);
        self.per_turn = self.per_turn.max((drift - axis * axis.dot(&drift)).norm());
    }

    pub(super) fn furthest(&self) -> (f64, f64) {
        (self.side * self.furthest.0, self.furthest.1)
    }

    /// Where the sideways pull first reaches half of the most it has been while slip was lively.
    pub(super) fn hook_start(&self) -> Option<Moment> {
        if self.most_turned_rad < HOOK_TURN_RAD {
            return None;
        }
        let half = self.rises.last()?.to.1 / 2.0;
        let Rise { from: (a, low), to: (b, high) } = *self.rises.iter().find(|r| r.to.1 >= half)?;
        if low >= half {
            return Some(a);
        }
        let part = (half - low) / (high - low);
        Some(Moment {
            time_s: a.time_s + part * (b.time_s - a.time_s),
            distance_m: a.distance_m + part * (b.distance_m - a.distance_m),
        })
    }

    /// Greatest angle between the first ring's axis and a later one's.
    pub(super) fn band_rad(&self) -> f64 {
        2.0 * libm::asin((self.widest_chord2.sqrt() / 2.0).min(1.0))
    }

    /// Greatest angle a free axis drifts in one turn.
    pub(super) fn per_turn_rad(&self) -> f64 {
        TAU * self.per_turn
    }
}
