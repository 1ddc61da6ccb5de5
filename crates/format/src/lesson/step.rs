//! A step of a lesson.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::Serialize;

use super::HINTS;
use super::change::Change;

/// One step: its heading, its `step` block and the prose below.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Step {
    /// What progress files call it; the heading in lower case with hyphens where the block says nothing.
    pub id: String,
    /// The heading.
    pub title: String,
    /// The prose: Markdown with values. `start` is the bench as the step opened;
    /// in `observe` and `explain`, which look back, as the lesson opened.
    pub text: String,
    /// The rooms that are shown, the one that matters first; where it is left out those of the step before, all if none named any.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub rooms: Option<Vec<Room>>,
    /// The only places that may be changed, whole branches with a place that
    /// others lie below; all where it is left out, none where it is empty.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub free: Option<Vec<String>>,
    /// Values to set beside what they were at `start`.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub watch: Vec<Watch>,
    /// What the bench holds as the step opens, as it differs from the lesson's
    /// start; what the step before left there where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub start: Option<Change>,
    /// What kind of step, and what belongs to it.
    #[serde(flatten)]
    pub kind: Kind,
}

/// A value to watch.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(untagged)]
pub enum Watch {
    /// An expression; it is called by what it is made of.
    Plain(String),
    /// An expression with a name of its own.
    Named(NamedValue),
}

/// A value and what it is called.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct NamedValue {
    /// What it is called, as a row of a table.
    pub name: String,
    /// An expression.
    pub value: String,
}

/// What kind of step it is.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Kind {
    /// Look round and try.
    Explore,
    /// Say what will happen before it is seen.
    Predict(Box<Predict>),
    /// Reach a state.
    Do(Box<Deed>),
    /// Look at what came of it.
    Observe,
    /// Why.
    Explain,
}

/// A room of the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Room {
    /// Where the ball is built.
    Bench,
    /// Where it is cut open.
    Saw,
    /// Where it is weighed.
    Scale,
    /// Where it is rolled.
    Lane,
}

/// A question asked before the answer can be seen.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Predict {
    /// How it is answered.
    #[serde(flatten)]
    pub answer: Answer,
    /// What changes on the bench once it is answered; expressions of the answer
    /// see the bench after it, and the bench before as `start`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub then: Option<Change>,
}

/// How a question is answered.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Answer {
    /// One of several.
    Option(#[schemars(length(min = 2, max = 8))] Vec<Choice>),
    /// A number with a unit.
    Number(NumberAnswer),
    /// A path drawn on the lane.
    Path(PathAnswer),
}

/// One of several answers.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Choice {
    /// What it says; a text with values.
    pub text: String,
    /// Whether it is right, an expression; exactly one of them is.
    pub right: String,
    /// What to tell whoever takes it; a text with values.
    pub say: String,
}

/// A number as the answer.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct NumberAnswer {
    /// The right one, an expression; its unit is that of the answer.
    pub value: String,
    /// How far off is still right, an expression in the same unit.
    pub within: String,
    /// What to tell whoever is right; `guess` is the learner's number.
    pub right: String,
    /// What to tell whoever says too little.
    pub low: String,
    /// What to tell whoever says too much.
    pub high: String,
}

/// A path on the lane as the answer.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct PathAnswer {
    /// How far off at the worst place is still right, an expression in boards.
    pub within: String,
    /// What to tell whoever is right; `miss_board` is how far off at the worst
    /// place, `miss_ft` where that is, `guess_board_at_pins`,
    /// `guess_breakpoint_board` and `guess_breakpoint_ft` what was drawn.
    pub right: String,
    /// What to tell the others.
    pub wrong: String,
    /// What to tell those of the others whose path never comes back from
    /// outside: its furthest place out is one of its ends.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub no_turn: Option<String>,
}

/// A state to reach.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Deed {
    /// What must hold, all of it.
    #[schemars(length(min = 1, max = 16))]
    pub check: Vec<Check>,
    /// What to tell whoever is on a wrong way; the first that fits.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub wrong: Vec<Wrong>,
    /// Three, from a nudge to nearly the answer; texts with values, all of the bench as the step opened.
    /// Following the last one must pass: see `hinted`.
    pub hints: [String; HINTS],
    /// What the last hint says to set, place by place, each an expression of the bench as the step
    /// opened; a number that the hint names is taken as it is written there. It may be left out where the
    /// hint names no number, or where single numbers alone are free and it ends in theirs, in their order.
    #[serde(skip_serializing_if = "BTreeMap::is_empty", default)]
    pub hinted: BTreeMap<String, String>,
    /// One way to do it, as it differs from what the bench holds as the step opens.
    pub solution: Change,
    /// What to tell whoever has done it; a text with values.
    pub done: String,
}

/// Something that must hold.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Check {
    /// An expression that is true or false.
    pub want: String,
    /// What to say while it does not hold, a text with values; worked out from
    /// the expression where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub say: Option<String>,
}

/// An answer to a wrong way.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Wrong {
    /// When it fits, an expression that is true or false.
    pub when: String,
    /// What to say; a text with values.
    pub say: String,
}

impl Watch {
    /// The expression.
    pub fn value(&self) -> &str {
        match self {
            Self::Plain(value) => value,
            Self::Named(named) => &named.value,
        }
    }

    /// What it is called, where it has a name of its own.
    pub fn name(&self) -> Option<&str> {
        match self {
            Self::Plain(_) => None,
            Self::Named(named) => Some(&named.name),
        }
    }
}
