//! The progress file, `NAME.progress.json`: what one learner did in lessons.

use std::collections::BTreeSet;

use schemars::JsonSchema;
use serde::Serialize;

use crate::limits::{ANY, Range};
use crate::node::{Node, Object};
use crate::phrase;
use crate::problem::Problem;
use crate::shelf::{instant, text_up_to};
use crate::tree::{Tree, quote};

/// Most lessons in a progress file.
pub const MAX_PROGRESS_LESSONS: usize = 500;
/// Most steps of a lesson in a progress file.
pub const MAX_PROGRESS_STEPS: usize = 100;
/// Longest name or text in a progress file, in characters.
pub const MAX_PROGRESS_CHARS: usize = 400;
/// Most points of a drawn path.
pub const MAX_PROGRESS_POINTS: usize = 500;

const STEPS: Range = Range { min: 1.0, above_min: false, max: MAX_PROGRESS_STEPS as f64 };
const TIMES: Range = Range { min: 0.0, above_min: false, max: 1e6 };
const HINTS: Range = Range { min: 0.0, above_min: false, max: 3.0 };

/// Which edition of the progress file this is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub enum ProgressVersion {
    /// The first.
    #[serde(rename = "pithball.progress/1")]
    V1,
}

/// What one learner did.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct ProgressFile {
    /// `pithball.progress/1`.
    pub format: ProgressVersion,
    /// What the learner wants to be called; may be empty.
    #[schemars(length(max = MAX_PROGRESS_CHARS))]
    pub learner: String,
    /// The lessons that were begun.
    #[schemars(length(max = MAX_PROGRESS_LESSONS))]
    pub lessons: Vec<LessonProgress>,
}

/// What a learner did in one lesson.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct LessonProgress {
    /// The lesson's id.
    #[schemars(length(max = MAX_PROGRESS_CHARS))]
    pub id: String,
    /// Its title.
    #[schemars(length(max = MAX_PROGRESS_CHARS))]
    pub title: String,
    /// How many steps it has.
    #[schemars(range(min = 1, max = MAX_PROGRESS_STEPS))]
    pub of_steps: u32,
    /// When the last step was passed, universal time; left out before.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(regex(pattern = r"^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,9})?Z$"))]
    pub finished_at: Option<String>,
    /// The steps that were begun, in any order.
    #[schemars(length(max = MAX_PROGRESS_STEPS))]
    pub steps: Vec<StepProgress>,
}

/// What a learner did in one step.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct StepProgress {
    /// The step's id.
    #[schemars(length(max = MAX_PROGRESS_CHARS))]
    pub id: String,
    /// Its heading.
    #[schemars(length(max = MAX_PROGRESS_CHARS))]
    pub title: String,
    /// Whether it is done.
    pub passed: bool,
    /// How often a check failed: a change of the learner's that was left standing and was not what is wanted.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(max = 1_000_000))]
    pub tries: Option<u32>,
    /// How many hints were opened.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(max = 3))]
    pub hints: Option<u32>,
    /// Whether the learner asked for the lesson's own way and was shown it; left out where not.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shown: Option<bool>,
    /// What was predicted.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub answer: Option<GivenAnswer>,
}

/// A prediction and what came of it.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct GivenAnswer {
    /// Right or wrong; of a number which way.
    pub outcome: GivenOutcome,
    /// What was said, as it is to be read: the option's text, the number with
    /// its unit, where a path breaks.
    #[schemars(length(max = MAX_PROGRESS_CHARS))]
    pub said: String,
    /// The option's number, from 0.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(max = 7))]
    pub option: Option<u32>,
    /// The number, in the trade's unit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub number: Option<f64>,
    /// The points `[board, ft]`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(length(max = MAX_PROGRESS_POINTS))]
    pub path: Option<Vec<[f64; 2]>>,
}

/// What came of a prediction.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum GivenOutcome {
    /// Right.
    Right,
    /// Wrong.
    Wrong,
    /// A number that is too small.
    Low,
    /// A number that is too large.
    High,
}

impl ProgressFile {
    /// Reads a progress file from JSON text in UTF-8.
    ///
    /// # Errors
    /// The first mistake in the file, with its place.
    pub fn read(json: &[u8]) -> Result<Self, Problem> {
        let tree = Tree::parse(json)?;
        let node = Node::root(&tree);
        let format = node.key("format")?.choice(&[("pithball.progress/1", ProgressVersion::V1)])?;
        let file = node.object(&["format", "learner", "lessons"])?;
        let lessons = list(&file.get("lessons")?, MAX_PROGRESS_LESSONS, LessonProgress::read)?;
        each_once(&lessons)?;
        Ok(Self { format, learner: text(&file, "learner")?, lessons })
    }
}

impl LessonProgress {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let lesson = node.object(&["id", "title", "of_steps", "finished_at", "steps"])?;
        Ok(Self {
            id: text(&lesson, "id")?,
            title: text(&lesson, "title")?,
            of_steps: lesson.get("of_steps")?.whole(&STEPS)?,
            finished_at: lesson.find("finished_at").map(|at| instant(&at)).transpose()?,
            steps: list(&lesson.get("steps")?, MAX_PROGRESS_STEPS, StepProgress::read)?,
        })
    }
}

impl StepProgress {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let step = node.object(&["id", "title", "passed", "tries", "hints", "shown", "answer"])?;
        Ok(Self {
            id: text(&step, "id")?,
            title: text(&step, "title")?,
            passed: step.get("passed")?.flag()?,
            tries: step.find("tries").map(|tries| tries.whole(&TIMES)).transpose()?,
            hints: step.find("hints").map(|hints| hints.whole(&HINTS)).transpose()?,
            shown: step.find("shown").map(|shown| shown.flag()).transpose()?,
            answer: step.find("answer").map(|answer| GivenAnswer::read(&answer)).transpose()?,
        })
    }
}

impl GivenAnswer {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        const OPTIONS: Range = Range { min: 0.0, above_min: false, max: 7.0 };
        let answer = node.object(&["outcome", "said", "option", "number", "path"])?;
        let outcome = answer.get("outcome")?.choice(&[
            ("right", GivenOutcome::Right),
            ("wrong", GivenOutcome::Wrong),
            ("low", GivenOutcome::Low),
            ("high", GivenOutcome::High),
        ])?;
        Ok(Self {
            outcome,
            said: text(&answer, "said")?,
            option: answer.find("option").map(|option| option.whole(&OPTIONS)).transpose()?,
            number: answer.find_number("number", &ANY)?,
            path: answer
                .find("path")
                .map(|path| list(&path, MAX_PROGRESS_POINTS, |at| at.numbers(&ANY)))
                .transpose()?,
        })
    }
}

/// What was done in a lesson is said in one place.
fn each_once(lessons: &[LessonProgress]) -> Result<(), Problem> {
    let mut known = BTreeSet::new();
    let Some(at) = lessons.iter().position(|lesson| !known.insert(lesson.id.as_str())) else { return Ok(()) };
    let id = quote(&lessons[at].id);
    let found = phrase!("again", "{what} again", what = &id);
    let accepted = phrase!("each-lesson-once", "each lesson once");
    Err(Problem::new(format!("lessons[{at}].id"), found, accepted).saying(phrase!(
        "lesson-twice",
        "The lesson {id} stands there twice.",
        id = id
    )))
}

fn text(object: &Object<'_>, key: &'static str) -> Result<String, Problem> {
    text_up_to(&object.get(key)?, MAX_PROGRESS_CHARS)
}

fn list<T>(node: &Node<'_>, most: usize, read: impl Fn(&Node<'_>) -> Result<T, Problem>) -> Result<Vec<T>, Problem> {
    let items = node.items()?;
    if items.len() > most {
        return Err(node.problem(phrase!("most-of-them", "at most {most} of them", most = most)));
    }
    items.map(|item| read(&item)).collect()
}
