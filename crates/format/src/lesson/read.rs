//! From the text of a lesson to its types.

use super::change::Change;
use super::source::{LessonProblem, Places, parse};
use super::step::Step;
use super::{LessonFile, LessonVersion, MAX_STEPS};
use crate::limits::Range;
use crate::node::{Node, Object};
use crate::phrase;
use crate::problem::Problem;

const ORDER: Range = Range { min: 1.0, above_min: false, max: 999.0 };
const MINUTES: Range = Range { min: 1.0, above_min: false, max: 240.0 };
const MAX_ID_CHARS: usize = 80;

/// A lesson and where in its text everything stands.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadLesson {
    /// The lesson.
    pub file: LessonFile,
    /// Where its values stand.
    pub places: Places,
}

impl ReadLesson {
    /// Reads a lesson from Markdown text.
    ///
    /// # Errors
    /// The first mistake in its form, with line and column. Expressions and
    /// prose are not looked into.
    pub fn read(text: &str) -> Result<Self, LessonProblem> {
        let (tree, places) = parse(text)?;
        match LessonFile::read(&Node::root(&tree)) {
            Ok(file) => Ok(Self { file, places }),
            Err(problem) => Err(places.locate(problem, 0)),
        }
    }
}

impl LessonFile {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let format = node.key("format")?.choice(&[("pithball.lesson/1", LessonVersion::V1)])?;
        let lesson = node.object(&[
            "format", "id", "title", "course", "order", "aim", "minutes", "words", "teacher", "start", "given",
            "states", "steps",
        ])?;
        let given = lesson.find("given").map(|given| given.map_of(|value| value.text())).transpose()?;
        let states = lesson.find("states").map(|states| states.map_of(Change::read)).transpose()?;
        let list = lesson.get("steps")?;
        let steps: Vec<Step> = list.items()?.map(|step| Step::read(&step)).collect::<Result<_, _>>()?;
        if !(1..=MAX_STEPS).contains(&steps.len()) {
            return Err(list.problem(phrase!("so-many-steps", "1 to {most} steps", most = MAX_STEPS)));
        }
        for (n, step) in steps.iter().enumerate() {
            if steps.iter().take(n).any(|before| before.id == step.id) {
                let found = format!("{:?} a second time", step.id);
                return Err(Problem::new(
                    format!("steps[{n}].id"),
                    found.into(),
                    phrase!("own-name", "a name that no other step has"),
                ));
            }
        }
        Ok(Self {
            format,
            id: id(&lesson.get("id")?)?,
            title: lesson.get("title")?.text()?,
            course: lesson.get("course")?.text()?,
            order: lesson.get("order")?.whole(&ORDER)?,
            aim: lesson.get("aim")?.text()?,
            minutes: lesson.get("minutes")?.whole(&MINUTES)?,
            words: texts(&lesson.get("words")?)?,
            teacher: lesson.get("teacher")?.text()?,
            start: Change::read(&lesson.get("start")?)?,
            given: given.unwrap_or_default(),
            states: states.unwrap_or_default(),
            steps,
        })
    }
}

pub(super) fn texts(node: &Node<'_>) -> Result<Vec<String>, Problem> {
    node.items()?.map(|item| item.text()).collect()
}

pub(super) fn optional_text(object: &Object<'_>, key: &'static str) -> Result<Option<String>, Problem> {
    object.find(key).map(|node| node.text()).transpose()
}

/// A name for progress files.
pub(super) fn id(node: &Node<'_>) -> Result<String, Problem> {
    let text = node.text()?;
    match id_of(&text) {
        Some(id) if id == text && text.len() <= MAX_ID_CHARS => Ok(text),
        _ => Err(node.problem(phrase!("plain-id", "lower-case letters, digits and single hyphens, at most 80"))),
    }
}

/// A heading as such a name; none where it has neither letters nor digits.
pub(super) fn id_of(heading: &str) -> Option<String> {
    let plain: String = heading
        .chars()
        .filter(|c| *c != '\'' && *c != '’')
        .map(|c| if c.is_ascii_alphanumeric() { c.to_ascii_lowercase() } else { ' ' })
        .collect();
    let id = plain.split_whitespace().collect::<Vec<_>>().join("-");
    (!id.is_empty()).then(|| id.chars().take(MAX_ID_CHARS).collect::<String>().trim_end_matches('-').to_owned())
}
