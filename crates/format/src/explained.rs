//! What `why` prints: how two shots differ, and what each property adds.

use physics::roll::{End, SameHand, ShotError};
use physics::units::{KG_PER_LB, M_PER_FT, M_PER_IN, RAD_S_PER_RPM};
use physics::why::{Lanes, Outcome, Property, Unshared, WhyError, why};
use serde::Serialize;

use crate::problem::Problem;
use crate::weighed_shot::WeighedShot;

/// What a shot came to, or by how much two differ.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct OutcomeDoc {
    /// Boards from breakpoint to pins.
    pub hook_boards: f64,
    /// Board at the pins.
    pub board_at_pins: f64,
    /// Entry angle, positive towards the pocket side.
    pub entry_angle_deg: f64,
    /// Board of the breakpoint.
    pub breakpoint_board: f64,
    /// Distance of the breakpoint from the foul line.
    pub breakpoint_ft: f64,
}

/// One of the two shots.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ShotDoc {
    /// What the sentence calls it.
    pub label: String,
    /// The ball's name.
    pub ball: String,
    /// Revs it leaves the hand with.
    pub revs_rpm: f64,
    /// What it came to; null where it does not reach the pins.
    pub outcome: Option<OutcomeDoc>,
}

/// What one property adds to the difference.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PartDoc {
    /// Which.
    pub property: PropertyDoc,
    /// What the first shot has, where it is one number.
    pub from: Option<f64>,
    /// What the second has.
    pub to: Option<f64>,
    /// The unit of both.
    pub unit: Option<&'static str>,
    /// Its part.
    pub part: OutcomeDoc,
}

/// What two shots can differ in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum PropertyDoc {
    /// Low RG.
    Rg,
    /// High minus low RG.
    Differential,
    /// High minus middle RG.
    IntermediateDifferential,
    /// Weight of the ball.
    Weight,
    /// Diameter.
    Size,
    /// Where the centre of gravity lies.
    CentreOfGravity,
    /// How the core's axes lie in the ball.
    CoreAxes,
    /// Coverstock and finish.
    Cover,
    /// How the ball sits in the hand.
    Layout,
    /// How it is let go.
    Release,
    /// What it rolls on.
    Lane,
}

/// Which reading of "the same hand" holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum HandDoc {
    /// The same revs.
    Revs,
    /// The same effort: a model choice.
    Effort,
}

/// How two shots differ, and why.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WhyDoc {
    /// One or two sentences that say it all.
    pub sentence: String,
    /// Which reading of "the same hand" holds.
    pub hand: HandDoc,
    /// The first shot.
    pub a: ShotDoc,
    /// The second.
    pub b: ShotDoc,
    /// The second less the first; null where one does not reach the pins.
    pub whole: Option<OutcomeDoc>,
    /// The part of each property that differs; they sum to `whole`. Null where
    /// that cannot be told.
    pub parts: Option<Vec<PartDoc>>,
    /// What stands in the way of telling.
    pub reason: Option<String>,
}

/// A mistake in one of the two shots.
#[derive(Clone, Debug, PartialEq)]
pub enum WhyProblem {
    /// In the first.
    A(Problem),
    /// In the second.
    B(Problem),
}

impl WhyDoc {
    /// Tells why the second shot differs from the first; `labels` are what the
    /// sentence calls them.
    ///
    /// # Errors
    /// A mistake in one of the shots.
    pub fn new(a: &WeighedShot, b: &WeighedShot, hand: SameHand, labels: [&str; 2]) -> Result<Self, WhyProblem> {
        let (from, to) = (a.thrown().map_err(WhyProblem::A)?, b.thrown().map_err(WhyProblem::B)?);
        let under = |lane: &WeighedShot, cover: &WeighedShot| {
            lane.throw.lane.friction(&cover.ball.cover).map_err(|problem| problem.within("lane"))
        };
        let (a_under_b, b_under_a) = (under(a, b).map_err(WhyProblem::A)?, under(b, a).map_err(WhyProblem::B)?);
        let lanes = Lanes { a_under_b: &a_under_b, b_under_a: &b_under_a };
        let told = why(&from, &to, lanes, hand).map_err(|error| match error {
            WhyError::A(error) => WhyProblem::A(Problem::from(&error)),
            WhyError::B(error) => WhyProblem::B(Problem::from(&error)),
        })?;
        let shot = |label: &str, shot: &WeighedShot, spin_rad_s: f64, outcome: Option<Outcome>| ShotDoc {
            label: label.to_owned(),
            ball: shot.ball.name.clone(),
            revs_rpm: spin_rad_s / RAD_S_PER_RPM,
            outcome: outcome.as_ref().map(OutcomeDoc::from),
        };
        let part = |(property, part): &(Property, Outcome)| {
            let (value, unit) = number_of(*property);
            let [from, to] = [&a.weighed, &b.weighed].map(|weighed| value.map(|value| value(weighed)));
            PartDoc { property: (*property).into(), from, to, unit, part: part.into() }
        };
        let mut doc = Self {
            sentence: String::new(),
            hand: match hand {
                SameHand::Revs => HandDoc::Revs,
                SameHand::Effort => HandDoc::Effort,
            },
            a: shot(labels[0], a, from.shot.release.spin_rad_s, told.a),
            b: shot(labels[1], b, told.b_spin_rad_s, told.b),
            whole: told.whole.as_ref().map(OutcomeDoc::from),
            parts: told.parts.as_ref().map(|parts| parts.iter().map(part).collect()),
            reason: told.unshared.map(|unshared| reason(unshared, labels)),
        };
        doc.sentence = sentence(&doc);
        Ok(doc)
    }
}

type Number = fn(&physics::weigh::Weighed) -> f64;

/// The number a property is, in the file's unit, where it is one.
fn number_of(property: Property) -> (Option<Number>, Option<&'static str>) {
    let inches: Number = match property {
        Property::Rg => |w| w.rg_m[0] / M_PER_IN,
        Property::Differential => |w| w.differential_m() / M_PER_IN,
        Property::IntermediateDifferential => |w| w.intermediate_differential_m() / M_PER_IN,
        Property::Size => |w| 2.0 * w.radius_m / M_PER_IN,
        Property::Weight => return (Some(|w| w.mass_kg / KG_PER_LB), Some("lb")),
        _ => return (None, None),
    };
    (Some(inches), Some("in"))
}

fn reason(unshared: Unshared, labels: [&str; 2]) -> String {
    let ends = |end| match end {
        End::Gutter => "falls into the gutter",
        End::FoulLine => "comes back over the foul line",
        End::TimeLimit | End::Pins => "never reaches the pins",
    };
    let cannot = |error: ShotError| Problem::from(&error).message;
    match unshared {
        Unshared::AEnds(end) => format!("\"{}\" {}, so there is nothing to compare at the pins.", labels[0], ends(end)),
        Unshared::BEnds(end) => format!("\"{}\" {}, so there is nothing to compare at the pins.", labels[1], ends(end)),
        Unshared::BCannot(error) => {
            format!("\"{}\" cannot be thrown with the same effort. {}", labels[1], cannot(error))
        }
        Unshared::MixtureEnds(end) => format!(
            "The difference cannot be shared out: a ball with some properties of the one and some of the other {}.",
            ends(end)
        ),
        Unshared::MixtureCannot(error) => format!(
            "The difference cannot be shared out: a ball with some properties of the one and some of the other cannot be rolled. {}",
            cannot(error)
        ),
    }
}

/// Below this a difference or a part is not worth words: boards, degrees, feet.
const LEAST: f64 = 0.05;

/// The difference in words, then what most of it comes from.
fn sentence(doc: &WhyDoc) -> String {
    let (Some(whole), [a, b]) = (&doc.whole, [&doc.a.label, &doc.b.label]) else {
        return doc.reason.clone().unwrap_or_default();
    };
    let mut said = Vec::new();
    let mut say = |difference: f64, more: &str, less: &str, unit: &str| {
        if difference.abs() >= LEAST {
            let (does, how) = (if difference > 0.0 { more } else { less }).split_once('|').unwrap_or((more, ""));
            said.push(format!("{does} {:.1}{unit} {how}", difference.abs()));
        }
    };
    say(whole.hook_boards, "hooks|more", "hooks|less", " boards");
    say(whole.entry_angle_deg, "enters|steeper", "enters|flatter", "°");
    say(whole.breakpoint_ft, "turns|later", "turns|earlier", " ft");
    let head = match said.as_slice() {
        [] => return format!("{b} and {a} end alike: no board, degree or foot to tell them apart."),
        [one] => format!("{b}, against {a}, {one}."),
        [one, two] => format!("{b}, against {a}, {one} and {two}."),
        [one, two, rest @ ..] => format!("{b}, against {a}, {one}, {two} and {}.", rest.join(" and ")),
    };
    let Some(parts) = &doc.parts else {
        return format!("{head} {}", doc.reason.as_deref().unwrap_or_default());
    };
    let (of, what, unit): (fn(&OutcomeDoc) -> f64, _, _) = if whole.hook_boards.abs() >= LEAST {
        (|part| part.hook_boards, "hook", " boards")
    } else if whole.entry_angle_deg.abs() >= LEAST {
        (|part| part.entry_angle_deg, "angle", "°")
    } else {
        (|part| part.breakpoint_ft, "distance", " ft")
    };
    format!("{head}{}", sources(parts, of, of(whole), what, unit))
}

/// What most of one difference comes from, and what works against it.
fn sources(parts: &[PartDoc], of: fn(&OutcomeDoc) -> f64, whole: f64, what: &str, unit: &str) -> String {
    let way = whole.signum();
    let mut ranked: Vec<(&PartDoc, f64)> = parts.iter().map(|part| (part, way * of(&part.part))).collect();
    ranked.sort_by(|x, y| y.1.abs().total_cmp(&x.1.abs()));
    if let [(only, _)] = ranked.as_slice() {
        return format!(" All of it comes from {}.", named(only));
    }
    let list = |pick: fn(f64) -> bool| {
        let said = ranked.iter().filter(|(_, part)| pick(*part)).take(3);
        said.map(|(part, size)| format!("{} ({:.1}{unit})", named(part), size.abs())).collect::<Vec<_>>().join(", ")
    };
    let (with, against) = (list(|part| part >= LEAST), list(|part| part <= -LEAST));
    match (with.is_empty(), against.is_empty()) {
        (true, _) => " No one property stands out.".to_owned(),
        (false, true) => format!(" The difference in {what} comes from {with}."),
        (false, false) => format!(" The difference in {what} comes from {with}; against it work {against}."),
    }
}

/// A property in plain words, with the way it changed.
fn named(part: &PartDoc) -> String {
    let more = part.to > part.from;
    let pick = |up: &str, down: &str| (if more { up } else { down }).to_owned();
    match part.property {
        PropertyDoc::Rg => pick("the higher RG", "the lower RG"),
        PropertyDoc::Differential => pick("the larger differential", "the smaller differential"),
        PropertyDoc::IntermediateDifferential => {
            pick("the larger intermediate differential", "the smaller intermediate differential")
        }
        PropertyDoc::Weight => pick("the greater weight", "the smaller weight"),
        PropertyDoc::Size => pick("the larger size", "the smaller size"),
        PropertyDoc::CentreOfGravity => "where the centre of gravity lies".to_owned(),
        PropertyDoc::CoreAxes => "how the core lies in the ball".to_owned(),
        PropertyDoc::Cover => "the cover".to_owned(),
        PropertyDoc::Layout => "the layout".to_owned(),
        PropertyDoc::Release => "the release".to_owned(),
        PropertyDoc::Lane => "the lane".to_owned(),
    }
}

impl From<&Outcome> for OutcomeDoc {
    fn from(outcome: &Outcome) -> Self {
        Self {
            hook_boards: outcome.hook_boards,
            board_at_pins: outcome.board_at_pins,
            entry_angle_deg: outcome.entry_angle_rad.to_degrees(),
            breakpoint_board: outcome.breakpoint_board,
            breakpoint_ft: outcome.breakpoint_m / M_PER_FT,
        }
    }
}

impl From<Property> for PropertyDoc {
    fn from(property: Property) -> Self {
        match property {
            Property::Rg => Self::Rg,
            Property::Differential => Self::Differential,
            Property::IntermediateDifferential => Self::IntermediateDifferential,
            Property::Weight => Self::Weight,
            Property::Size => Self::Size,
            Property::CentreOfGravity => Self::CentreOfGravity,
            Property::CoreAxes => Self::CoreAxes,
            Property::Cover => Self::Cover,
            Property::Layout => Self::Layout,
            Property::Release => Self::Release,
            Property::Lane => Self::Lane,
        }
    }
}
