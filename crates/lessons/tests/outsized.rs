//! Lessons that are as large as a lesson may be and wrong all over: they end in
//! a few mistakes that can be told.

#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

mod common;

use std::fs;

use common::{read, scenarios};
use format::in_parts;
use format::lesson::{LessonProblem, MAX_LESSON_BYTES, MAX_MISTAKES};

fn puck() -> String {
    fs::read_to_string(scenarios().join("lessons/the-puck.lesson.md")).expect("a lesson")
}

fn replaced(old: &str, new: &str) -> String {
    let text = puck();
    assert!(text.contains(old), "{old:?} is not in the lesson");
    let text = text.replacen(old, new, 1);
    assert!(text.len() <= MAX_LESSON_BYTES);
    text
}

/// As the page is told of them; each mistake holds its place in the text a few times at most.
fn told(problems: &[LessonProblem]) -> usize {
    assert!((1..=MAX_MISTAKES).contains(&problems.len()), "{} mistakes", problems.len());
    in_parts(|| serde_json::to_string(problems)).expect("JSON").len()
}

#[test]
fn a_hint_of_very_many_numbers() {
    let text = replaced("Set the height of the puck to {up_in}.", &"{rg_in}".repeat(30_000));
    // A height that does not pass, so that the whole hint is quoted.
    let text = text.replacen("at_in[2]' = \"up_in\"", "at_in[2]' = \"rg_in\"", 1);
    let problems = read(&text).expect("a lesson").unsound();
    assert!(told(&problems) < 200 * MAX_LESSON_BYTES);
    assert!(problems.iter().any(|told| told.problem.place.ends_with("hints[2]")), "{problems:?}");
}

#[test]
fn very_many_steps() {
    let text = puck() + &"\n## a\n\n```step\nx\n```\n".repeat(10_000);
    let problems = read(&text).err().expect("mistakes");
    assert_eq!(problems.len(), 1);
    assert!(problems.iter().all(|told| told.problem.accepted.contains("40 steps")), "{problems:?}");
}

#[test]
fn very_many_keys_that_are_none() {
    let keys: String = (0..20_000).map(|n| format!("k{n} = 1\n")).collect();
    let text = replaced("hints = [", &format!("{keys}hints = ["));
    let problems = read(&text).err().expect("mistakes");
    assert!(told(&problems) < MAX_LESSON_BYTES);
}

#[test]
fn prose_with_very_many_faults() {
    let text = puck() + "\n\n" + &"<b> 3 lb }\n\n".repeat(15_000);
    let problems = read(&text).err().expect("mistakes");
    assert!(told(&problems) < MAX_LESSON_BYTES);
    assert!(problems.iter().all(|told| told.problem.place.ends_with(".text")), "{problems:?}");
}
