//! Guided exercises. Everything is given as plain objects and comes back as
//! plain objects; a bench is `{ ball, shot }`, what the page calls its Doc.

use std::cell::RefCell;
use std::collections::{BTreeMap, VecDeque};
use std::rc::Rc;

use format::lesson::LessonProblem;
use format::{Phrase, Problem, ProgressFile, not_json, phrase};
use lessons::{Bench, ClassDoc, FIGURES, Guess};
use serde::Serialize;
use serde_json::Value;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::wire::{json_text, thrown, to_page};

/// A lesson that can be worked through. It remembers the benches it saw last, so
/// that nothing is weighed and rolled twice; they are what their text says, so
/// that this shows nowhere but in the time.
#[wasm_bindgen]
pub struct Lesson {
    lesson: lessons::Lesson,
    seen: RefCell<VecDeque<(String, Rc<Bench>)>>,
}

/// A step's start, the bench as it is, and one of each before.
const SEEN: usize = 4;

#[wasm_bindgen]
impl Lesson {
    /// Reads the text of a lesson. `files` has the balls, shots, layouts and
    /// oil that it may name, each by its path, such as `balls/no-1-simple.ball.json`.
    ///
    /// # Errors
    /// A list of `LessonProblem`: every mistake with its line.
    #[wasm_bindgen(constructor)]
    pub fn new(text: &str, files: &JsValue) -> Result<Lesson, JsValue> {
        Ok(Self { lesson: lesson(text, files)?, seen: RefCell::default() })
    }

    /// What the lesson is, as a `LessonDoc`.
    ///
    /// # Errors
    /// None in practice: only where the page cannot take an object.
    pub fn about(&self) -> Result<JsValue, JsValue> {
        to_page(&self.lesson.about())
    }

    /// The bench as a step opens, as a `Doc`; `left` is what the step before
    /// left there, null for the first.
    ///
    /// # Errors
    /// A `Problem`: no such step, or the bench does not take its changes.
    pub fn opens(&self, step: usize, left: &JsValue) -> Result<JsValue, JsValue> {
        let keeps = self.lesson.file().steps.get(step).is_some_and(|step| step.start.is_none());
        if keeps && !left.is_null() && !left.is_undefined() {
            return to_page(self.bench(left)?.doc());
        }
        to_page(self.lesson.opens(step, None).map_err(thrown)?.doc())
    }

    /// The bench as a step ends that went as the lesson has it, as a `Doc`.
    ///
    /// # Errors
    /// A `Problem`: no such step, or the bench does not take its changes.
    pub fn ends(&self, step: usize, start: &JsValue) -> Result<JsValue, JsValue> {
        let start = self.bench(start)?;
        to_page(self.lesson.ends(step, &start).map_err(thrown)?.doc())
    }

    /// What a step shows with these benches, as a `Shown`.
    ///
    /// # Errors
    /// A `Problem`: no such step, or a bench that cannot be built.
    pub fn shown(&self, step: usize, start: &JsValue, now: &JsValue) -> Result<JsValue, JsValue> {
        let (start, now) = (self.bench(start)?, self.bench(now)?);
        to_page(&self.lesson.shown(step, &start, &now).map_err(thrown)?)
    }

    /// Whether a step is passed, and what is missing, as a `CheckedStep`.
    ///
    /// # Errors
    /// A `Problem`: no such step, or a bench that cannot be built.
    pub fn check(&self, step: usize, start: &JsValue, now: &JsValue) -> Result<JsValue, JsValue> {
        let (start, now) = (self.bench(start)?, self.bench(now)?);
        to_page(&self.lesson.check(step, &start, &now).map_err(thrown)?)
    }

    /// Answers a `Guess`, as an `Answered`; `start` is the bench it was made over.
    ///
    /// # Errors
    /// A `Problem`: no such step, or an answer of another kind.
    pub fn answer(&self, step: usize, start: &JsValue, guess: &JsValue) -> Result<JsValue, JsValue> {
        let guess: Guess = serde_json::from_str(&json_text(guess)?).map_err(|error| {
            let accepted = phrase!("an-answer", "an option, a number or a path");
            let problem = Problem::new("answer", not_json(&error), accepted);
            thrown(problem.saying(phrase!("no-answer", "This is no answer.")))
        })?;
        let start = self.bench(start)?;
        to_page(&self.lesson.answer(step, &start, &guess).map_err(thrown)?)
    }
}

impl Lesson {
    fn bench(&self, doc: &JsValue) -> Result<Rc<Bench>, JsValue> {
        let text = json_text(doc)?;
        let mut seen = self.seen.borrow_mut();
        if let Some((_, bench)) = seen.iter().find(|(known, _)| *known == text) {
            return Ok(Rc::clone(bench));
        }
        // What is no JSON is no bench either, and says so itself.
        let bench = Rc::new(Bench::new(serde_json::from_str(&text).unwrap_or_default()).map_err(thrown)?);
        seen.truncate(SEEN - 1);
        seen.push_front((text, Rc::clone(&bench)));
        Ok(bench)
    }
}

/// Everything that is wrong with a lesson, its soundness too, as a list of
/// `LessonProblem`; empty for a sound one.
///
/// # Errors
/// A `Problem` where `files` is no object of files.
#[wasm_bindgen]
pub fn lesson_problems(text: &str, files: &JsValue) -> Result<JsValue, JsValue> {
    let read = lessons::Lesson::read(text, Box::new(table(files)?));
    let problems: Vec<LessonProblem> = read.map_or_else(|problems| problems, |lesson| lesson.unsound());
    to_page(&problems)
}

/// The names that a lesson's expressions know, as a list of `{ name, unit, words }`.
///
/// # Errors
/// None in practice: only where the page cannot take an object.
#[wasm_bindgen]
pub fn lesson_names() -> Result<JsValue, JsValue> {
    #[derive(Serialize)]
    struct Name {
        name: String,
        unit: &'static str,
        words: Phrase,
    }
    let names = FIGURES.iter().map(|figure| Name {
        name: figure.written(),
        unit: figure.quantity.unit(),
        words: figure.said(),
    });
    to_page(&names.collect::<Vec<_>>())
}

/// Checks a progress file, given as text or object, and returns it as an object.
///
/// # Errors
/// A `Problem` where the file is wrong.
#[wasm_bindgen]
pub fn read_progress(file: &JsValue) -> Result<JsValue, JsValue> {
    to_page(&ProgressFile::read(json_text(file)?.as_bytes()).map_err(thrown)?)
}

/// Progress files put together, as a `ClassTable`: a list of names and a list
/// of files of the same length.
///
/// # Errors
/// A `Problem` with the first file that is wrong, its place under its name.
#[wasm_bindgen]
pub fn class_table(names: Vec<String>, files: Vec<JsValue>) -> Result<JsValue, JsValue> {
    let read = |(name, file): (String, JsValue)| {
        let progress = ProgressFile::read(json_text(&file)?.as_bytes());
        progress.map(|progress| (name.clone(), progress)).map_err(|problem| thrown(problem.within(&name)))
    };
    let read: Vec<_> = names.into_iter().zip(files).map(read).collect::<Result<_, _>>()?;
    to_page(&ClassDoc::new(&read))
}

fn lesson(text: &str, files: &JsValue) -> Result<lessons::Lesson, JsValue> {
    lessons::Lesson::read(text, Box::new(table(files)?))
        .map_err(|problems| to_page(&problems).unwrap_or_else(|error| error))
}

fn table(files: &JsValue) -> Result<BTreeMap<String, Vec<u8>>, JsValue> {
    let read: Result<BTreeMap<String, Value>, _> = serde_json::from_str(&json_text(files)?);
    let read = read.map_err(|error| {
        let accepted = phrase!("files-by-path", "an object of files by their paths");
        let problem = Problem::new("files", not_json(&error), accepted);
        thrown(problem.saying(phrase!("files-no-object", "The files of a lesson are an object.")))
    })?;
    Ok(read.into_iter().map(|(path, file)| (path, file.to_string().into_bytes())).collect())
}
