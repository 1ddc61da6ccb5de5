//! The scenarios, as the lessons' tests read them.

use std::fs;
use std::path::{Path, PathBuf};

use format::lesson::LessonProblem;
use pithball_lessons::{Files, Lesson};

struct Scenarios;

impl Files for Scenarios {
    fn read(&self, path: &str) -> Option<Vec<u8>> {
        fs::read(scenarios().join(path)).ok()
    }
}

pub(crate) fn scenarios() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios")
}

/// A lesson from its text, the files it names from the scenarios.
pub(crate) fn read(text: &str) -> Result<Lesson, Vec<LessonProblem>> {
    Lesson::read(text, Box::new(Scenarios))
}
