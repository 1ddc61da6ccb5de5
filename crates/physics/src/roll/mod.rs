//! A shot: the weighed ball slips, hooks and rolls down the lane.
//!
//! The model: a rigid ball with its full inertia tensor and the offset of its
//! centre of gravity; its geometric sphere stays on a flat lane; gravity;
//! Coulomb friction at the one contact point, by zone or by the oil there,
//! opposite to the slip while it slips, and whatever keeps the contact at rest, as long as that needs at
//! most μN, once slip has stopped. No rolling resistance, no spin friction,
//! no air, no bounce.
//!
//! Accuracy: at the pins within 0.001 board and 0.001° of the true solution of
//! that model, by a margin of five or more on thousands of random shots (the
//! tests repeat some hundreds of them at a tolerance far tighter). Every run
//! returns its own estimate of a bound, which is cautious: mostly ten times
//! the real error, and more where slip ends and begins again on every turn.
//!
//! The integrator is this crate's own (one step of Dormand and Prince's
//! method of order 8) and not an ODE crate's, because the law changes at
//! events that must not be stepped over (slip's direction has no meaning
//! where slip ends), because an event and a sample are both met by the same
//! step taken shorter, because ten thousand shots a second leave no time for
//! allocation, and because native and WebAssembly must give the same bits.

#[cfg(test)]
mod accuracy;
mod body;
mod control;
mod dop853;
mod effort;
mod events;
mod report;
mod run;
mod shot;
mod start;
mod watch;

pub use effort::{SameHand, release_inertia_kg_m2};
pub use report::{AtPins, Breakpoint, End, Moment, Phase, Sample, ShotError, Stretch, Summary, Trace};
pub use run::{CREEP, STEP_LIMIT, TIME_LIMIT_S};
pub use shot::{Layout, Release, RigidBall, Shot};

pub use crate::lane::{Friction, FrictionError, Hand, Zone};

use nalgebra::{Quaternion, Unit, UnitQuaternion, Vector2, Vector3};
use smallvec::SmallVec;

use crate::lane::{BOARD_M, board_at};
use body::{Body, State, omega};
use run::{Leg, Run};
use watch::NO_SPIN_RAD_S;

/// Shortest interval of samples.
const LEAST_INTERVAL_S: f64 = 1e-4;
/// Most samples of a trace.
const MOST_SAMPLES: f64 = 1e5;

/// Follows a shot to its end.
///
/// # Errors
/// [`ShotError`] where a number is out of its range, or where the ball would
/// hop or jam, which the model does not cover.
pub fn roll(ball: &RigidBall, shot: &Shot) -> Result<Summary, ShotError> {
    follow(ball, shot, &mut |_, _, _| {})
}

/// Follows a shot to its end and keeps the ball's state every `interval_s`
/// (0.1 ms at least, at most 100,000 samples) and at the end.
///
/// # Errors
/// As [`roll`], and where `interval_s` is not accepted.
pub fn trace(ball: &RigidBall, shot: &Shot, interval_s: f64) -> Result<Trace, ShotError> {
    let outline = roll(ball, shot)?;
    let least_s = LEAST_INTERVAL_S.max(outline.end_time_s / MOST_SAMPLES);
    if !(interval_s >= least_s && interval_s.is_finite()) {
        return Err(ShotError::OutOfRange {
            quantity: "interval_s",
            found: interval_s,
            accepted: "0.0001 or more, and at most 100,000 samples in all",
        });
    }
    let named = start::spin_direction(shot.hand, &shot.release);
    let mut samples = Vec::new();
    let roll_s = outline.roll_start.map_or(outline.end_time_s, |at| at.time_s);
    let hook_s = outline.hook_start.map_or(roll_s, |at| at.time_s.min(roll_s));
    let mut borders: SmallVec<[Sample; 2]> = SmallVec::new();
    let summary = follow(ball, shot, &mut |run, leg, last| {
        loop {
            let time_s = samples.len() as f64 * interval_s;
            if time_s > run.time_s - if last { 1e-9 } else { 0.0 } {
                break;
            }
            samples.push(leg.sample(run.body, time_s, &named));
        }
        while let Some(time_s) = [hook_s, roll_s].get(borders.len()).filter(|at| last || **at <= run.time_s) {
            borders.push(leg.sample(run.body, *time_s, &named));
        }
        if last {
            samples.push(sample(run.body, run.time_s, &run.y, &run.now, &run.contact, &named));
        }
    })?;
    for sample in &mut samples {
        sample.phase = phase(&summary, sample.time_s);
        sample.curvature_per_m *= shot.hand.side();
        let angles = start::spin_angles(shot.hand, &sample.omega_rad_s);
        sample.axis_rotation_rad = angles.map(|(rotation, _)| rotation);
        sample.axis_tilt_rad = angles.map(|(_, tilt)| tilt);
    }
    let phases = stretches(shot.hand, &samples, &borders);
    Ok(Trace { phases, summary, samples })
}

/// The phases between the first sample, the borders and the last sample.
fn stretches(hand: Hand, samples: &[Sample], borders: &[Sample]) -> Vec<Stretch> {
    let marks: SmallVec<[&Sample; 4]> = samples.first().into_iter().chain(borders).chain(samples.last()).collect();
    let stretch = |(phase, ends): (Phase, &[&Sample])| {
        let (from, to) = (ends[0], ends[1]);
        let moment = |at: &Sample| Moment { time_s: at.time_s, distance_m: at.position_m.y };
        let (v, w) = (from.velocity_m_s, to.velocity_m_s);
        (to.time_s > from.time_s).then(|| Stretch {
            phase,
            from: moment(from),
            to: moment(to),
            speed_m_s: [v.norm(), w.norm()],
            spin_rad_s: [from.omega_rad_s.norm(), to.omega_rad_s.norm()],
            turned_rad: hand.side() * libm::atan2(v.perp(&w), v.dot(&w)),
        })
    };
    [Phase::Skid, Phase::Hook, Phase::Roll].into_iter().zip(marks.windows(2)).filter_map(stretch).collect()
}

fn phase(summary: &Summary, time_s: f64) -> Phase {
    if summary.roll_start.is_some_and(|at| time_s >= at.time_s) {
        Phase::Roll
    } else if summary.hook_start.is_some_and(|at| time_s >= at.time_s) {
        Phase::Hook
    } else {
        Phase::Skid
    }
}

/// Follows a shot, showing each finished step (and whether it was the last).
fn follow(ball: &RigidBall, shot: &Shot, see: &mut dyn FnMut(&Run<'_>, &Leg<'_>, bool)) -> Result<Summary, ShotError> {
    ball.check()?;
    shot.check(ball.radius_m)?;
    let body = Body::new(ball);
    let start = start::state(shot, ball.radius_m);
    let tolerance = if shot.lane.oil().is_some() { control::ON_OIL } else { control::STANDARD };
    once(&body, shot, &start, tolerance, see)
}

fn once(
    body: &Body,
    shot: &Shot,
    start: &State,
    tolerance: f64,
    see: &mut dyn FnMut(&Run<'_>, &Leg<'_>, bool),
) -> Result<Summary, ShotError> {
    let mut run = Run::new(body, &shot.lane, shot.hand.side(), *start, tolerance)?;
    for _ in 0..STEP_LIMIT {
        let (leg, end) = run.advance()?;
        see(&run, &leg, end.is_some());
        if let Some(end) = end {
            return Ok(summarise(&run, shot.hand, start, end));
        }
    }
    Err(ShotError::TooManySteps { time_s: run.time_s, distance_m: run.y[body::Y] })
}

fn summarise(run: &Run<'_>, hand: Hand, start: &State, end: End) -> Summary {
    let y = &run.y;
    let at_pins = (end == End::Pins).then(|| {
        let (position_m, velocity_m_s) = run.control.bounds(run.time_s);
        let speed_m_s = (y[2] * y[2] + y[3] * y[3]).sqrt();
        AtPins {
            time_s: run.time_s,
            board: board_at(hand, y[0]),
            entry_angle_rad: libm::atan2(-hand.side() * y[2], y[3]),
            speed_m_s,
            spin_rad_s: omega(y).norm(),
            axis_migration_rad: angle_between(&spin_in_ball(start), &spin_in_ball(y)),
            board_error: position_m / BOARD_M,
            entry_angle_error_rad: velocity_m_s / speed_m_s,
        }
    });
    let (x_m, distance_m) = run.watch.furthest();
    Summary {
        end,
        end_time_s: run.time_s,
        end_m: Vector2::new(y[0], y[1]),
        at_pins,
        breakpoint: Breakpoint { board: board_at(hand, x_m), distance_m },
        hook_start: run.watch.hook_start(),
        roll_start: run.rolling_since,
        flare_m: run.body.radius * run.watch.band_rad(),
        flare_per_turn_m: run.body.radius * run.watch.per_turn_rad(),
        turns: y[11] / core::f64::consts::TAU,
    }
}

fn spin_in_ball(y: &State) -> Vector3<f64> {
    Body::in_ball(y, &omega(y))
}

/// Angle between two spins, none where one of them is no spin.
fn angle_between(a: &Vector3<f64>, b: &Vector3<f64>) -> Option<f64> {
    (a.norm() > NO_SPIN_RAD_S && b.norm() > NO_SPIN_RAD_S).then(|| libm::atan2(a.cross(b).norm(), a.dot(b)))
}

impl Leg<'_> {
    /// The state within this step, by the same step taken shorter.
    fn sample(&self, body: &Body, time_s: f64, named: &Vector3<f64>) -> Sample {
        let h = time_s - self.time_s;
        let step = dop853::step(&self.y, &self.rates.d, h, |y| body.rates(&self.contact, y));
        sample(body, time_s, &step.state, &step.rates, &self.contact, named)
    }
}

fn sample(
    body: &Body,
    time_s: f64,
    y: &State,
    now: &body::Rates,
    contact: &body::Contact<'_>,
    named: &Vector3<f64>,
) -> Sample {
    let spin = omega(y);
    let on = contact.ground();
    let way = if spin.norm() > NO_SPIN_RAD_S { spin } else { *named };
    let (velocity, acceleration) = (Vector2::new(y[2], y[3]), Vector2::new(now.d[2], now.d[3]));
    let cubed = velocity.norm_squared() * velocity.norm();
    Sample {
        time_s,
        position_m: Vector2::new(y[0], y[1]),
        velocity_m_s: Vector2::new(y[2], y[3]),
        slip_m_s: match contact {
            body::Contact::Slip { .. } => body.slip(y),
            body::Contact::Roll { .. } => Vector2::zeros(),
        },
        omega_rad_s: spin,
        axis_body: Body::in_ball(y, &way).normalize(),
        contact_body: Body::in_ball(y, &-Vector3::z()),
        mu: on.mu(y),
        film_m: match on {
            body::Ground::Even(_) => None,
            body::Ground::Oiled(lane) => Some(lane.film.at_m(y[0], y[1])),
        },
        normal_n: now.normal_n,
        // The hand's side is not known here: see `trace`.
        curvature_per_m: if cubed > 0.0 { velocity.perp(&acceleration) / cubed } else { 0.0 },
        axis_rotation_rad: None,
        axis_tilt_rad: None,
        phase: Phase::Skid,
        turn: turn(y),
    }
}

fn turn(y: &State) -> UnitQuaternion<f64> {
    Unit::new_normalize(Quaternion::new(y[7], y[8], y[9], y[10]))
}
