//! From the text of a lesson to its types.

use super::change::Change;
use super::mistakes::Mistakes;
use super::source::{LessonProblem, Places, Source, parse};
use super::step::Step;
use super::{LessonFile, LessonVersion, Located, MAX_STEPS};
use crate::limits::Range;
use crate::node::{Node, Place};
use crate::phrase;
use crate::problem::Problem;
use crate::tree::{Tree, quote};

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
    /// The mistakes in its form, [`super::MAX_MISTAKES`] of them at most, with line and column, in their
    /// order; one alone where head and steps cannot be told apart. Expressions and prose are not looked into.
    pub fn read(text: &str) -> Result<Self, Vec<LessonProblem>> {
        let Source { head, steps, places, problems } = parse(text).map_err(|problem| vec![problem])?;
        let mut all = Mistakes::default();
        let steps = steps_of(&steps, &mut all);
        let file = head.and_then(|head| LessonFile::read(&Node::root(&head), steps, &mut all));
        let mut located = Located::new(&places);
        located.extend(problems);
        all.into_problems().into_iter().for_each(|problem| located.add(problem, 0));
        match file {
            Some(file) if located.is_empty() => Ok(Self { file, places }),
            _ => Err(located.in_order()),
        }
    }
}

/// There are none, or too many.
pub(super) fn count_of_steps(count: usize) -> Problem {
    let found = phrase!("list-of", "a list of {count}", count = count);
    Problem::new("steps", found, phrase!("so-many-steps", "1 to {most} steps", most = MAX_STEPS))
}

fn steps_of(trees: &[Option<Tree>], all: &mut Mistakes) -> Option<Vec<Step>> {
    let place = Place::Key(&Place::Root, "steps");
    let read = trees.iter().enumerate().map(|(n, tree)| {
        let step = Step::read(&Node::at(tree.as_ref()?, Place::Index(&place, n)), all)?;
        Some((n, step))
    });
    let read: Vec<Option<(usize, Step)>> = read.collect();
    if trees.is_empty() {
        all.push(count_of_steps(0));
    }
    for (at, (n, step)) in read.iter().flatten().enumerate() {
        if read.iter().flatten().take(at).any(|(_, before)| before.id == step.id) {
            all.push(Problem::new(
                format!("steps[{n}].id"),
                phrase!("again", "{what} again", what = quote(&step.id)),
                phrase!("own-name", "a name that no other step has"),
            ));
        }
    }
    read.into_iter().map(|step| step.map(|(_, step)| step)).collect()
}

impl LessonFile {
    /// The head, and the steps as far as they could be read.
    fn read(node: &Node<'_>, steps: Option<Vec<Step>>, all: &mut Mistakes) -> Option<Self> {
        // What else may stand in the head is this edition's.
        let editions = [("pithball.lesson/1", LessonVersion::V1)];
        let format = all.keep(node.key("format").and_then(|format| format.choice(&editions)))?;
        let lesson = all.object(
            node,
            &[
                "format", "id", "title", "course", "order", "aim", "minutes", "words", "teacher", "start", "given",
                "states",
            ],
        )?;
        let id = all.need(&lesson, "id", id);
        let title = all.need(&lesson, "title", text);
        let course = all.need(&lesson, "course", text);
        let order = all.need(&lesson, "order", |order| order.whole(&ORDER));
        let aim = all.need(&lesson, "aim", text);
        let minutes = all.need(&lesson, "minutes", |minutes| minutes.whole(&MINUTES));
        let words = all.list(&lesson, "words", text);
        let teacher = all.need(&lesson, "teacher", text);
        let start = all.need(&lesson, "start", Change::read);
        let given = all.may(&lesson, "given", |given| given.map_of(|value| value.text()));
        let states = all.may(&lesson, "states", |states| states.map_of(Change::read));
        Some(Self {
            format,
            id: id?,
            title: title?,
            course: course?,
            order: order?,
            aim: aim?,
            minutes: minutes?,
            words: words?,
            teacher: teacher?,
            start: start?,
            given: given?.unwrap_or_default(),
            states: states?.unwrap_or_default(),
            steps: steps?,
        })
    }
}

pub(super) fn text(node: &Node<'_>) -> Result<String, Problem> {
    node.text()
}

pub(super) fn texts(node: &Node<'_>) -> Result<Vec<String>, Problem> {
    node.items()?.map(|item| item.text()).collect()
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
