//! What `why` prints: how two shots differ, and what each property adds.

use physics::roll::{End, SameHand, ShotError};
use physics::units::{KG_PER_LB, M_PER_FT, M_PER_IN, RAD_S_PER_RPM};
use physics::why::{Lanes, Outcome, Property, Unshared, WhyError, why};
use serde::Serialize;

use crate::problem::Problem;
use crate::weighed_shot::WeighedShot;
use crate::{Phrase, phrase};

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
    pub sentence: Phrase,
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
    pub reason: Option<Phrase>,
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
            sentence: Phrase::default(),
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

fn reason(unshared: Unshared, labels: [&str; 2]) -> Phrase {
    let label = |n: usize| format!("\"{}\"", labels[n]);
    let cannot = |error: ShotError| Problem::from(&error).message;
    let ends = |n: usize, end| match end {
        End::Gutter => phrase!(
            "why-gutter",
            "{shot} falls into the gutter, so there is nothing to compare at the pins.",
            shot = label(n)
        ),
        End::FoulLine => phrase!(
            "why-foul-line",
            "{shot} comes back over the foul line, so there is nothing to compare at the pins.",
            shot = label(n)
        ),
        End::TimeLimit | End::Pins => phrase!(
            "why-never",
            "{shot} never reaches the pins, so there is nothing to compare at the pins.",
            shot = label(n)
        ),
    };
    match unshared {
        Unshared::AEnds(end) => ends(0, end),
        Unshared::BEnds(end) => ends(1, end),
        Unshared::BCannot(error) => phrase!(
            "why-effort",
            "{shot} cannot be thrown with the same effort. {why}",
            shot = label(1),
            why = cannot(error)
        ),
        Unshared::MixtureEnds(End::Gutter) => phrase!(
            "why-mixture-gutter",
            "The difference cannot be shared out: a ball with some properties of the one and some of the other falls into the gutter."
        ),
        Unshared::MixtureEnds(End::FoulLine) => phrase!(
            "why-mixture-foul-line",
            "The difference cannot be shared out: a ball with some properties of the one and some of the other comes back over the foul line."
        ),
        Unshared::MixtureEnds(End::TimeLimit | End::Pins) => phrase!(
            "why-mixture-never",
            "The difference cannot be shared out: a ball with some properties of the one and some of the other never reaches the pins."
        ),
        Unshared::MixtureCannot(error) => phrase!(
            "why-mixture-cannot",
            "The difference cannot be shared out: a ball with some properties of the one and some of the other cannot be rolled. {why}",
            why = cannot(error)
        ),
    }
}

/// Below this a difference or a part is not worth words: boards, degrees, feet.
const LEAST: f64 = 0.05;

/// The difference in words, then what most of it comes from.
fn sentence(doc: &WhyDoc) -> Phrase {
    let (Some(whole), [a, b]) = (&doc.whole, [&doc.a.label, &doc.b.label]) else {
        return doc.reason.clone().unwrap_or_default();
    };
    let by = |difference: f64| format!("{:.1}", difference.abs());
    let mut said = Vec::new();
    let hook = whole.hook_boards;
    if hook >= LEAST {
        said.push(phrase!("why-hooks-more", "hooks {by} boards more", by = by(hook)));
    } else if hook <= -LEAST {
        said.push(phrase!("why-hooks-less", "hooks {by} boards less", by = by(hook)));
    }
    let angle = whole.entry_angle_deg;
    if angle >= LEAST {
        said.push(phrase!("why-steeper", "enters {by}° steeper", by = by(angle)));
    } else if angle <= -LEAST {
        said.push(phrase!("why-flatter", "enters {by}° flatter", by = by(angle)));
    }
    let turn = whole.breakpoint_ft;
    if turn >= LEAST {
        said.push(phrase!("why-later", "turns {by} ft later", by = by(turn)));
    } else if turn <= -LEAST {
        said.push(phrase!("why-earlier", "turns {by} ft earlier", by = by(turn)));
    }
    let Some(last) = said.pop() else {
        return phrase!(
            "why-alike",
            "{b} and {a} end alike: no board, degree or foot to tell them apart.",
            a = a,
            b = b
        );
    };
    let what = if said.is_empty() {
        last
    } else {
        phrase!("and", "{one} and {next}", one = Phrase::listed(said), next = last)
    };
    let head = phrase!("why-against", "{b}, against {a}, {what}.", a = a, b = b, what = what);
    let Some(parts) = &doc.parts else {
        return head.then(doc.reason.clone().unwrap_or_default());
    };
    let (of, what, sized): (fn(&OutcomeDoc) -> f64, _, WithSize) = if hook.abs() >= LEAST {
        (
            |part| part.hook_boards,
            phrase!("why-in-hook", "The difference in hook"),
            |what, size| phrase!("why-part-boards", "{what} ({size} boards)", what = what, size = size),
        )
    } else if angle.abs() >= LEAST {
        (
            |part| part.entry_angle_deg,
            phrase!("why-in-angle", "The difference in angle"),
            |what, size| phrase!("why-part-angle", "{what} ({size}°)", what = what, size = size),
        )
    } else {
        (
            |part| part.breakpoint_ft,
            phrase!("why-in-distance", "The difference in distance"),
            |what, size| phrase!("why-part-ft", "{what} ({size} ft)", what = what, size = size),
        )
    };
    head.then(sources(parts, of, of(whole), what, sized))
}

/// A part of the difference with its size.
type WithSize = fn(Phrase, String) -> Phrase;

/// What most of one difference comes from, and what works against it.
fn sources(parts: &[PartDoc], of: fn(&OutcomeDoc) -> f64, whole: f64, what: Phrase, sized: WithSize) -> Phrase {
    let way = whole.signum();
    let mut ranked: Vec<(&PartDoc, f64)> = parts.iter().map(|part| (part, way * of(&part.part))).collect();
    ranked.sort_by(|x, y| y.1.abs().total_cmp(&x.1.abs()));
    if let [(only, _)] = ranked.as_slice() {
        return phrase!("why-all-of-it", "All of it comes from {what}.", what = named(only));
    }
    let list = |pick: fn(f64) -> bool| {
        let said = ranked.iter().filter(|(_, part)| pick(*part)).take(3);
        Phrase::listed(said.map(|(part, size)| sized(named(part), format!("{:.1}", size.abs()))))
    };
    let (with, against) = (list(|part| part >= LEAST), list(|part| part <= -LEAST));
    match (with.is_empty(), against.is_empty()) {
        (true, _) => phrase!("why-none", "No one property stands out."),
        (false, true) => phrase!("why-comes-from", "{what} comes from {with}.", what = what, with = with),
        (false, false) => phrase!(
            "why-comes-against",
            "{what} comes from {with}; against it work {against}.",
            what = what,
            with = with,
            against = against
        ),
    }
}

/// A property in plain words, with the way it changed.
fn named(part: &PartDoc) -> Phrase {
    let more = part.to > part.from;
    match part.property {
        PropertyDoc::Rg if more => phrase!("why-rg-more", "the higher RG"),
        PropertyDoc::Rg => phrase!("why-rg-less", "the lower RG"),
        PropertyDoc::Differential if more => phrase!("why-diff-more", "the larger differential"),
        PropertyDoc::Differential => phrase!("why-diff-less", "the smaller differential"),
        PropertyDoc::IntermediateDifferential if more => {
            phrase!("why-intermediate-more", "the larger intermediate differential")
        }
        PropertyDoc::IntermediateDifferential => {
            phrase!("why-intermediate-less", "the smaller intermediate differential")
        }
        PropertyDoc::Weight if more => phrase!("why-weight-more", "the greater weight"),
        PropertyDoc::Weight => phrase!("why-weight-less", "the smaller weight"),
        PropertyDoc::Size if more => phrase!("why-size-more", "the larger size"),
        PropertyDoc::Size => phrase!("why-size-less", "the smaller size"),
        PropertyDoc::CentreOfGravity => phrase!("why-cg", "where the centre of gravity lies"),
        PropertyDoc::CoreAxes => phrase!("why-core-axes", "how the core lies in the ball"),
        PropertyDoc::Cover => phrase!("why-cover", "the cover"),
        PropertyDoc::Layout => phrase!("why-layout", "the layout"),
        PropertyDoc::Release => phrase!("why-release", "the release"),
        PropertyDoc::Lane => phrase!("why-lane", "the lane"),
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
