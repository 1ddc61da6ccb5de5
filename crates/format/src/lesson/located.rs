//! The mistakes of a lesson as they are told, each at its line.

use super::{LessonProblem, MAX_MISTAKES, Places};
use crate::problem::Problem;

/// The first mistakes that are found, [`MAX_MISTAKES`] at most: locating one reads the text up to it.
#[derive(Clone, Debug)]
pub struct Located<'a> {
    places: &'a Places,
    found: Vec<LessonProblem>,
}

impl<'a> Located<'a> {
    /// None so far, of the lesson whose values stand at `places`.
    pub fn new(places: &'a Places) -> Self {
        Self { places, found: Vec::new() }
    }

    /// One more, `within` characters into the value it is about.
    pub fn add(&mut self, problem: Problem, within: usize) {
        if self.found.len() < MAX_MISTAKES {
            self.found.push(self.places.locate(problem, within));
        }
    }

    /// Whether there is a mistake at a place.
    pub fn is_at(&self, place: &str) -> bool {
        self.found.iter().any(|found| found.problem.place == place)
    }

    /// Whether there is none.
    pub fn is_empty(&self) -> bool {
        self.found.is_empty()
    }

    /// All of them in the order of their lines.
    pub fn in_order(mut self) -> Vec<LessonProblem> {
        self.found.sort_by_key(|found| (found.line, found.column));
        self.found
    }
}

impl Extend<LessonProblem> for Located<'_> {
    fn extend<T: IntoIterator<Item = LessonProblem>>(&mut self, located: T) {
        let room = MAX_MISTAKES.saturating_sub(self.found.len());
        self.found.extend(located.into_iter().take(room));
    }
}
