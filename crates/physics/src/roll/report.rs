//! What a shot did: the summary, the samples, and what can go wrong.

use nalgebra::{UnitQuaternion, Vector2, Vector3};

/// Part of the path.
///
/// The order skid, hook, roll is that of the United States Bowling Congress's
/// ball motion study. Where each begins is Pithball's choice:
/// - hook: the friction that acts sideways to the path, per weight
///   (μ·|sin| of the angle between slip and travel), first reaches half of the
///   greatest value it has before the pins while slip is more than a tenth of
///   its fastest (dying slip swings about). On one friction
///   throughout a ball hooks from the release; where oil ends sharply it
///   hooks from there; where friction rises slowly, half-way up the rise.
///   A ball whose direction friction turns by less than 0.1° has no hook.
/// - roll: slip has ended, or is so small that it no longer counts
///   ([`super::CREEP`]), and stays so to the pins.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Phase {
    /// The ball slips and is not turned much.
    Skid,
    /// The ball slips and friction turns it.
    Hook,
    /// The contact point is at rest on the lane, or creeps.
    Roll,
}

/// How a run ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum End {
    /// The ball's centre reached 60 ft.
    Pins,
    /// The ball's centre passed the lane's edge.
    Gutter,
    /// The ball came back over the foul line (strong backspin).
    FoulLine,
    /// The ball was still on the lane at [`super::TIME_LIMIT_S`].
    TimeLimit,
}

/// A moment of the shot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moment {
    /// From the release.
    pub time_s: f64,
    /// From the foul line.
    pub distance_m: f64,
}

/// The point of the path furthest to the bowler's own side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Breakpoint {
    /// Board under the ball's centre.
    pub board: f64,
    /// From the foul line.
    pub distance_m: f64,
}

/// The ball as its centre crosses 60 ft.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AtPins {
    /// From the release.
    pub time_s: f64,
    /// Board under the ball's centre.
    pub board: f64,
    /// Direction of the centre's velocity from +y, positive towards the
    /// pocket side (−x for a right-hander, +x for a left-hander).
    pub entry_angle_rad: f64,
    /// Speed of the geometric centre.
    pub speed_m_s: f64,
    /// Rate of spin.
    pub spin_rad_s: f64,
    /// Angle, in the ball's frame, between the spin axis at release and here;
    /// none where the ball did not spin at one of them.
    pub axis_migration_rad: Option<f64>,
    /// Bound on the error of `board`, in boards.
    pub board_error: f64,
    /// Bound on the error of `entry_angle_rad`.
    pub entry_angle_error_rad: f64,
}

/// What a shot did.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Summary {
    /// How the run ended.
    pub end: End,
    /// When it ended.
    pub end_time_s: f64,
    /// Where the ball's centre was then.
    pub end_m: Vector2<f64>,
    /// The ball at the pins; none unless `end` is [`End::Pins`].
    pub at_pins: Option<AtPins>,
    /// The point of the path furthest to the bowler's own side.
    pub breakpoint: Breakpoint,
    /// Where the hook begins (see [`Phase`]); none if the ball has no hook.
    pub hook_start: Option<Moment>,
    /// Where slip ends, or stops falling with no more than [`super::CREEP`] of the
    /// ball's speed left, if it then stays below that; none if it does not.
    pub roll_start: Option<Moment>,
    /// How far the spin axis has moved over the ball: the greatest arc on its
    /// surface from where the axis leaves the ball at release to where it does
    /// one or more whole turns later. 0 for a ball that ends before its first
    /// whole turn. Within 0.01 in. The width of the band of rings that this
    /// leaves is measured on the rings, [`crate::track::Track::widest`].
    ///
    /// What is called track flare in the trade (common practice, no source);
    /// that the axis is measured is Pithball's choice.
    pub flare_m: f64,
    /// The widest distance between two neighbouring rings, from the rate at
    /// which the ball's own shape carries the axis over its surface:
    /// 2πR·|I⁻¹(a × Ia)| for the axis a of each ring, largest over the rings.
    /// For a symmetric core this is the textbook rate of a free top,
    /// 2πR·(1 − (low RG/high RG)²)·sin θ·cos θ with θ from pin to axis.
    pub flare_per_turn_m: f64,
    /// How many turns the ball made.
    pub turns: f64,
}

/// The ball at one moment.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sample {
    /// From the release.
    pub time_s: f64,
    /// The geometric centre across and down the lane.
    pub position_m: Vector2<f64>,
    /// Its velocity.
    pub velocity_m_s: Vector2<f64>,
    /// Velocity of the ball's contact point over the lane; zero while rolling.
    pub slip_m_s: Vector2<f64>,
    /// Spin in the lane frame.
    pub omega_rad_s: Vector3<f64>,
    /// Unit vector along the spin in the ball frame. For a ball that does not
    /// spin, where the axis would be that the release names.
    pub axis_body: Vector3<f64>,
    /// Unit vector from the ball's centre to the contact, in the ball frame.
    pub contact_body: Vector3<f64>,
    /// Force of the lane on the ball, upwards.
    pub normal_n: f64,
    /// Coefficient of friction under the contact.
    pub mu: f64,
    /// Thickness of the oil under the contact; none where friction is given
    /// in zones.
    pub film_m: Option<f64>,
    /// How sharply the path of the centre bends, in radians a metre of path:
    /// (v × a)/|v|³, positive towards the pocket side. 0 for a ball at rest.
    pub curvature_per_m: f64,
    /// Axis rotation now, measured as at the release (from the lane, not from
    /// the path); none for a ball that does not spin.
    pub axis_rotation_rad: Option<f64>,
    /// Axis tilt now; none for a ball that does not spin.
    pub axis_tilt_rad: Option<f64>,
    /// Part of the path.
    pub phase: Phase,
    /// Turns ball axes into lane axes.
    pub turn: UnitQuaternion<f64>,
}

/// One phase of a shot, from its beginning to its end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Which.
    pub phase: Phase,
    /// Where it begins.
    pub from: Moment,
    /// Where it ends.
    pub to: Moment,
    /// Speed at its beginning and end.
    pub speed_m_s: [f64; 2],
    /// Rate of spin at its beginning and end.
    pub spin_rad_s: [f64; 2],
    /// How far the direction of travel turns in it, positive towards the
    /// pocket side.
    pub turned_rad: f64,
}

/// A shot and its samples.
#[derive(Clone, Debug, PartialEq)]
pub struct Trace {
    /// The phases there are, in order: each begins where the one before it ends.
    pub phases: Vec<Stretch>,
    /// What the shot did; the very numbers of [`super::roll`].
    pub summary: Summary,
    /// Evenly in time from the release, and the end.
    pub samples: Vec<Sample>,
}

/// Why a shot could not be computed.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum ShotError {
    /// A number of the ball, release or layout is not accepted.
    #[error("{quantity} is {found}; accepted: {accepted}")]
    OutOfRange {
        /// Which field.
        quantity: &'static str,
        /// Its value.
        found: f64,
        /// What is accepted.
        accepted: &'static str,
    },
    /// The lane would have to pull the ball down: it hops, which the motion
    /// "its sphere stays on the lane" does not cover.
    #[error(
        "the ball would hop off the lane {time_s} s after release, {distance_m} m down: its centre of gravity is too far out for this spin"
    )]
    Hops {
        /// When.
        time_s: f64,
        /// Where.
        distance_m: f64,
    },
    /// Friction and the offset of the centre of gravity lock each other: no
    /// force meets Coulomb's law (Painlevé's paradox).
    #[error(
        "the ball jams {time_s} s after release, {distance_m} m down: friction is too high for a centre of gravity so far out"
    )]
    Jams {
        /// When.
        time_s: f64,
        /// Where.
        distance_m: f64,
    },
    /// The motion needs more steps than [`super::STEP_LIMIT`].
    #[error("the motion could not be followed beyond {time_s} s, {distance_m} m down, within 1,000,000 steps")]
    TooManySteps {
        /// How far it got in time.
        time_s: f64,
        /// How far it got down the lane.
        distance_m: f64,
    },
}
