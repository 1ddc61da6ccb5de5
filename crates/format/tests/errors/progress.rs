//! Progress in lessons.

use crate::support::{told, with};
use pithball_format::ProgressFile;

/// A progress file with one stretch replaced.
#[track_caller]
fn progress(old: &str, new: &str, place: &str, found: &str) {
    const PROGRESS: &str = r#"{ "format": "pithball.progress/1", "learner": "Anna", "lessons": [
        { "id": "the-puck", "title": "The puck", "of_steps": 5, "finished_at": "2026-03-01T18:30:00Z", "steps": [
            { "id": "a", "title": "Lift it", "passed": true, "tries": 2, "hints": 1,
              "answer": { "outcome": "low", "said": "0.02 in", "option": 2, "number": 0.02, "path": [[20, 0]] } } ] } ] }"#;
    ProgressFile::read(PROGRESS.as_bytes()).expect("a progress file");
    let problem = ProgressFile::read(with(PROGRESS, old, new).as_bytes()).expect_err("a mistake that goes unseen");
    told(&problem, place, found);
}

#[test]
fn progress_files() {
    progress("progress/1", "progress/2", "format", "\"pithball.progress/2\"");
    progress("\"Anna\"", "7", "learner", "7");
    progress("\"of_steps\": 5", "\"of_steps\": 0", "lessons[0].of_steps", "0");
    progress("\"of_steps\": 5", "\"of_steps\": 2.5", "lessons[0].of_steps", "2.5");
    progress("2026-03-01T", "yesterday", "lessons[0].finished_at", "\"yesterday18:30:00Z\"");
    progress("\"passed\": true", "\"passed\": 1", "lessons[0].steps[0].passed", "1");
    progress("\"hints\": 1", "\"hints\": 4", "lessons[0].steps[0].hints", "4");
    progress("\"hints\": 1", "\"shown\": 1", "lessons[0].steps[0].shown", "1");
    progress("\"tries\": 2", "\"tires\": 2", "lessons[0].steps[0].tires", "the unknown key \"tires\"");
    progress("\"low\"", "\"lowest\"", "lessons[0].steps[0].answer.outcome", "\"lowest\"");
    progress("\"option\": 2", "\"option\": 8", "lessons[0].steps[0].answer.option", "8");
    let again = r#"] }, { "id": "the-puck", "title": "The puck", "of_steps": 5, "steps": [] } ] }"#;
    progress("] } ] }", again, "lessons[1].id", "\"the-puck\" again");
    progress("[20, 0]", "[20]", "lessons[0].steps[0].answer.path[0]", "a list of 1");
    progress("[20, 0]", "[20, null]", "lessons[0].steps[0].answer.path[0][1]", "null");
}
