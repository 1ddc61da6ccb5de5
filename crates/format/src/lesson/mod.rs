//! The lesson file, `NAME.lesson.md`: a guided exercise. Markdown prose; what
//! is structured stands as TOML between `+++` lines at its head and in one
//! `step` block below the heading of each step.
//!
//! Expressions over computed values, and prose with `{expressions}` in it, are
//! kept as text here; the crate `lessons` knows what they mean.

mod change;
mod located;
mod mistakes;
mod not_toml;
mod read;
mod read_step;
mod source;
mod step;

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::Serialize;

pub use change::{Change, Given};
pub use located::Located;
pub use read::ReadLesson;
pub use source::{LessonProblem, Places};
pub use step::{Answer, Check, Choice, Deed, Kind, NumberAnswer, PathAnswer, Predict, Room, Step, Wrong};

/// Largest lesson that is read, in bytes (256 KiB).
pub const MAX_LESSON_BYTES: usize = 256 << 10;
/// Most steps of a lesson.
pub const MAX_STEPS: usize = 40;
/// Most mistakes that are told of one lesson at once.
pub const MAX_MISTAKES: usize = 50;
/// Hints of a step: from a nudge to nearly the answer.
pub const HINTS: usize = 3;

/// Which edition of the lesson file this is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub enum LessonVersion {
    /// The first.
    #[serde(rename = "pithball.lesson/1")]
    V1,
}

/// A lesson. The file itself is Markdown: the head holds every key but
/// `steps`, and each second-level heading begins a step.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct LessonFile {
    /// `pithball.lesson/1`.
    pub format: LessonVersion,
    /// What progress files call it: lower-case letters, digits and hyphens; never changed.
    #[schemars(regex(pattern = r"^[a-z0-9]+(-[a-z0-9]+)*$"), length(max = 80))]
    pub id: String,
    /// What it is called.
    pub title: String,
    /// The course it belongs to.
    pub course: String,
    /// Its place in the course, from 1.
    #[schemars(range(min = 1, max = 999))]
    pub order: u32,
    /// What the learner can do afterwards; a text with values.
    pub aim: String,
    /// About how long it takes.
    #[schemars(range(min = 1, max = 240))]
    pub minutes: u32,
    /// The trade words it introduces, as the glossary spells them.
    pub words: Vec<String>,
    /// What a teacher should know; a text with values.
    pub teacher: String,
    /// The ball and shot on the bench as the lesson opens.
    pub start: Change,
    /// Numbers with a name: each an expression over the lesson's start. Prose
    /// and checks say the name, so that they cannot disagree.
    #[serde(skip_serializing_if = "BTreeMap::is_empty", default)]
    pub given: BTreeMap<String, String>,
    /// Other balls and shots that expressions may name, each as it differs
    /// from the lesson's start.
    #[serde(skip_serializing_if = "BTreeMap::is_empty", default)]
    pub states: BTreeMap<String, Change>,
    /// What the learner does, in order.
    #[schemars(length(min = 1, max = MAX_STEPS))]
    pub steps: Vec<Step>,
}
