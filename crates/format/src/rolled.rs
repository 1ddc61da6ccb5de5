//! What `roll` prints.

use nalgebra::Vector3;
use physics::roll::{AtPins, Breakpoint, End, Phase, Sample, Stretch, Summary, Trace};
use physics::units::{M_PER_FT, M_PER_IN, M_S_PER_MPH, RAD_S_PER_RPM};
use serde::Serialize;

use crate::ball::BallFile;
use crate::oil::M_PER_UM;
use crate::tracked::TrackDoc;

/// Time between two samples. A ball at 500 turns a minute turns by 30° in it:
/// near enough to draw what lies between.
pub const SAMPLE_INTERVAL_S: f64 = 0.01;

/// A shot in the trade's units.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RolledDoc {
    /// What the shot did.
    pub summary: SummaryDoc,
    /// The phases there are, in order.
    pub phases: Vec<PhaseSpanDoc>,
    /// The ball along its way, evenly in time, and at the end.
    pub samples: Vec<SampleDoc>,
    /// The rings the lane leaves on the ball.
    pub track: TrackDoc,
}

/// What a shot did. What happens at the pins is `null` where the ball does not
/// reach them.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SummaryDoc {
    /// From release to the pins.
    pub time_s: Option<f64>,
    /// Board under the ball's centre at 60 ft.
    pub board_at_pins: Option<f64>,
    /// Direction there from straight ahead, positive towards the pocket side.
    pub entry_angle_deg: Option<f64>,
    /// Speed there.
    pub speed_at_pins_mph: Option<f64>,
    /// Turns a minute there.
    pub revs_at_pins_rpm: Option<f64>,
    /// The point of the path furthest to the bowler's own side.
    pub breakpoint: BreakpointDoc,
    /// Where the hook begins; `null` if the ball has no hook.
    pub hook_start_ft: Option<f64>,
    /// Where slip ends, or is below a fiftieth of the ball's speed for good; `null` if it never is.
    pub roll_start_ft: Option<f64>,
    /// Angle in the ball between the spin axis at release and at the pins.
    pub axis_migration_deg: Option<f64>,
    /// How far the spin axis moves over the ball from release to the start of any later turn: the
    /// greatest arc between the two. The width of the band of rings is in `track`.
    pub flare_in: f64,
    /// Widest distance between two neighbouring track rings.
    pub flare_per_turn_in: f64,
    /// How many turns the ball made.
    pub turns: f64,
    /// Whether the ball fell into the gutter.
    pub gutter: bool,
    /// How the run ended.
    pub end: EndDoc,
    /// Where the run ended.
    pub end_ft: f64,
    /// Bounds on the error of board and angle at the pins; 0 where the ball
    /// does not reach them and there is nothing to be wrong.
    pub error: ErrorDoc,
}

/// How a run ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum EndDoc {
    /// At the pins.
    Pins,
    /// In the gutter.
    Gutter,
    /// Back over the foul line.
    FoulLine,
    /// Still on the lane when the time was up.
    TimeLimit,
}

/// The point of the path furthest to the bowler's own side.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct BreakpointDoc {
    /// Board under the ball's centre.
    pub board: f64,
    /// From the foul line.
    pub distance_ft: f64,
}

/// Bounds on the error at the pins.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ErrorDoc {
    /// In boards.
    pub board: f64,
    /// In degrees.
    pub angle_deg: f64,
}

/// The ball at one moment.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SampleDoc {
    /// From the release.
    pub t_s: f64,
    /// Across the lane, from its centre line to the right.
    pub x_in: f64,
    /// Down the lane.
    pub y_ft: f64,
    /// Speed of the ball's centre.
    pub speed_mph: f64,
    /// Speed of the contact point over the lane; 0 where it is at rest.
    pub slip_mph: f64,
    /// Spin in lane axes.
    pub omega_rad_s: [f64; 3],
    /// Unit vector along the spin in ball axes.
    pub axis_body: [f64; 3],
    /// Unit vector from the ball's centre to the contact in ball axes.
    pub contact_body: [f64; 3],
    /// Force of the lane on the ball, upwards.
    pub normal_n: f64,
    /// Coefficient of friction under the contact.
    pub mu: f64,
    /// Thickness of the oil under the contact, in micrometres; `null` where
    /// friction is given in zones.
    pub film_um: Option<f64>,
    /// How sharply the path bends: degrees a foot of path, positive towards the
    /// pocket side.
    pub curvature_deg_ft: f64,
    /// Axis rotation now, measured as at the release; `null` without spin.
    pub axis_rotation_deg: Option<f64>,
    /// Axis tilt now; `null` without spin.
    pub axis_tilt_deg: Option<f64>,
    /// Part of the path.
    pub phase: PhaseDoc,
    /// Unit quaternion `[w, x, y, z]` that turns ball axes into lane axes.
    pub turn: [f64; 4],
}

/// One phase of the shot.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct PhaseSpanDoc {
    /// Which.
    pub phase: PhaseDoc,
    /// Where it begins, from the foul line.
    pub from_ft: f64,
    /// Where it ends.
    pub to_ft: f64,
    /// How long it is down the lane.
    pub length_ft: f64,
    /// How long it lasts.
    pub time_s: f64,
    /// Speed lost in it.
    pub speed_lost_mph: f64,
    /// Turns a minute gained in it.
    pub revs_gained_rpm: f64,
    /// How far the path turns in it, positive towards the pocket side.
    pub turned_deg: f64,
}

/// Part of the path.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum PhaseDoc {
    /// Slips and is not turned much.
    Skid,
    /// Slips and friction turns it.
    Hook,
    /// The contact point is at rest, or creeps by less than a fiftieth of the ball's speed.
    Roll,
}

impl RolledDoc {
    /// Puts a shot of the ball in this file into the trade's units.
    pub fn new(file: &BallFile, trace: &Trace) -> Self {
        Self {
            summary: SummaryDoc::from(&trace.summary),
            phases: trace.phases.iter().map(PhaseSpanDoc::from).collect(),
            samples: trace.samples.iter().map(SampleDoc::from).collect(),
            track: TrackDoc::new(file, trace),
        }
    }
}

impl From<&Stretch> for PhaseSpanDoc {
    fn from(stretch: &Stretch) -> Self {
        let (from_ft, to_ft) = (stretch.from.distance_m / M_PER_FT, stretch.to.distance_m / M_PER_FT);
        Self {
            phase: stretch.phase.into(),
            from_ft,
            to_ft,
            length_ft: to_ft - from_ft,
            time_s: stretch.to.time_s - stretch.from.time_s,
            speed_lost_mph: (stretch.speed_m_s[0] - stretch.speed_m_s[1]) / M_S_PER_MPH,
            revs_gained_rpm: (stretch.spin_rad_s[1] - stretch.spin_rad_s[0]) / RAD_S_PER_RPM,
            turned_deg: stretch.turned_rad.to_degrees(),
        }
    }
}

impl From<&Summary> for SummaryDoc {
    fn from(summary: &Summary) -> Self {
        let pins = summary.at_pins;
        let at_pins = |of: fn(&AtPins) -> f64| pins.as_ref().map(of);
        Self {
            time_s: at_pins(|pins| pins.time_s),
            board_at_pins: at_pins(|pins| pins.board),
            entry_angle_deg: at_pins(|pins| pins.entry_angle_rad.to_degrees()),
            speed_at_pins_mph: at_pins(|pins| pins.speed_m_s / M_S_PER_MPH),
            revs_at_pins_rpm: at_pins(|pins| pins.spin_rad_s / RAD_S_PER_RPM),
            breakpoint: BreakpointDoc::from(summary.breakpoint),
            hook_start_ft: summary.hook_start.map(|at| at.distance_m / M_PER_FT),
            roll_start_ft: summary.roll_start.map(|at| at.distance_m / M_PER_FT),
            axis_migration_deg: pins.and_then(|pins| pins.axis_migration_rad).map(f64::to_degrees),
            flare_in: summary.flare_m / M_PER_IN,
            flare_per_turn_in: summary.flare_per_turn_m / M_PER_IN,
            turns: summary.turns,
            gutter: summary.end == End::Gutter,
            end: summary.end.into(),
            end_ft: summary.end_m.y / M_PER_FT,
            error: ErrorDoc {
                board: pins.map_or(0.0, |pins| pins.board_error),
                angle_deg: pins.map_or(0.0, |pins| pins.entry_angle_error_rad.to_degrees()),
            },
        }
    }
}

impl From<End> for EndDoc {
    fn from(end: End) -> Self {
        match end {
            End::Pins => Self::Pins,
            End::Gutter => Self::Gutter,
            End::FoulLine => Self::FoulLine,
            End::TimeLimit => Self::TimeLimit,
        }
    }
}

impl From<Breakpoint> for BreakpointDoc {
    fn from(breakpoint: Breakpoint) -> Self {
        Self { board: breakpoint.board, distance_ft: breakpoint.distance_m / M_PER_FT }
    }
}

impl From<&Sample> for SampleDoc {
    fn from(sample: &Sample) -> Self {
        let array = |vector: Vector3<f64>| -> [f64; 3] { vector.into() };
        let turn = &sample.turn;
        Self {
            t_s: sample.time_s,
            x_in: sample.position_m.x / M_PER_IN,
            y_ft: sample.position_m.y / M_PER_FT,
            speed_mph: sample.velocity_m_s.norm() / M_S_PER_MPH,
            slip_mph: sample.slip_m_s.norm() / M_S_PER_MPH,
            omega_rad_s: array(sample.omega_rad_s),
            axis_body: array(sample.axis_body),
            contact_body: array(sample.contact_body),
            normal_n: sample.normal_n,
            mu: sample.mu,
            film_um: sample.film_m.map(|film_m| film_m / M_PER_UM),
            curvature_deg_ft: sample.curvature_per_m.to_degrees() * M_PER_FT,
            axis_rotation_deg: sample.axis_rotation_rad.map(f64::to_degrees),
            axis_tilt_deg: sample.axis_tilt_rad.map(f64::to_degrees),
            phase: sample.phase.into(),
            turn: [turn.w, turn.i, turn.j, turn.k],
        }
    }
}

impl From<Phase> for PhaseDoc {
    fn from(phase: Phase) -> Self {
        match phase {
            Phase::Skid => Self::Skid,
            Phase::Hook => Self::Hook,
            Phase::Roll => Self::Roll,
        }
    }
}
