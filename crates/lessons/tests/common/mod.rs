//! The scenarios, as the lessons' tests read them.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

use format::lesson::LessonProblem;
use pithball_lessons::Lesson;

/// Every file that a lesson may name, as the page has them.
static FILES: LazyLock<BTreeMap<String, Vec<u8>>> = LazyLock::new(|| {
    let mut files = BTreeMap::new();
    for folder in ["balls", "shots", "layouts", "oil"] {
        for entry in fs::read_dir(scenarios().join(folder)).expect("a folder of the scenarios") {
            let entry = entry.expect("an entry");
            let path = format!("{folder}/{}", entry.file_name().to_string_lossy());
            files.insert(path, fs::read(entry.path()).expect("a file"));
        }
    }
    files
});

pub(crate) fn scenarios() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios")
}

/// A lesson from its text, the files it names from the scenarios.
pub(crate) fn read(text: &str) -> Result<Lesson, Vec<LessonProblem>> {
    Lesson::read(text, Box::new(FILES.clone()))
}
