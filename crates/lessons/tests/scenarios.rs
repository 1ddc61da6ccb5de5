//! The lessons of Harbour Street Lanes are sound, and easy to read.

#![allow(clippy::expect_used, clippy::panic, reason = "a check that fails stops its test")]

mod common;

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;

use common::{read, scenarios};
use pithball_lessons::{AsksDoc, Guess, Lesson, Outcome, Said, grade, plain};

fn lessons() -> Vec<Lesson> {
    let entries = fs::read_dir(scenarios().join("lessons")).expect("the folder of lessons");
    let paths = entries.map(|entry| entry.expect("an entry").path());
    let mut paths: Vec<PathBuf> = paths.filter(|path| path.is_file()).collect();
    paths.sort();
    let read = |path: &PathBuf| {
        let text = fs::read_to_string(path).expect("a lesson");
        read(&text).unwrap_or_else(|problems| panic!("{}: {problems:#?}", path.display()))
    };
    paths.iter().map(read).collect()
}

#[test]
fn every_lesson_is_sound_and_reads_at_an_age_of_about_13() {
    let lessons = lessons();
    for lesson in &lessons {
        assert_eq!(lesson.unsound(), [], "{}", lesson.file().title);
        let grade = grade(&lesson.words_read());
        assert!(grade <= 8.0, "{}: grade {grade:.1}", lesson.file().title);
    }
    let courses: BTreeSet<&str> = lessons.iter().map(|lesson| lesson.file().course.as_str()).collect();
    assert!(lessons.len() >= 14 && courses.len() == 3, "{} lessons in {courses:?}", lessons.len());
    let places: BTreeSet<_> = lessons.iter().map(|lesson| (&lesson.file().course, lesson.file().order)).collect();
    assert_eq!(places.len(), lessons.len(), "two lessons at one place of a course");
}

/// Whoever chooses wrongly is told a number of what was on the bench.
#[test]
fn every_answer_has_a_number_of_its_own() {
    for lesson in lessons() {
        let mut left = None;
        for (n, step) in lesson.about().steps.iter().enumerate() {
            let start = lesson.opens(n, left.take()).expect("a bench");
            if let Some(AsksDoc::Option { options }) = step.asks {
                for option in 0..options {
                    let answer = lesson.answer(n, &start, &Guess::Option(option)).expect("an answer");
                    let say = answer.say;
                    // What is right is told to a room too, which may have said something else.
                    let praise = answer.outcome == Outcome::Right && plain(&say).starts_with("Yes");
                    assert!(!praise, "{}: {}: option {option}", lesson.file().title, step.title);
                    let number = say.iter().any(|said| matches!(said, Said::Value { .. }));
                    assert!(number, "{}: {}: option {option}", lesson.file().title, step.title);
                }
            }
            left = Some(lesson.ends(n, &start).expect("a bench"));
        }
    }
}

/// Against the formula worked out by hand.
#[test]
fn grade_is_the_published_formula() {
    // 6 words, 1 sentence, 6 syllables.
    let simple = 0.39 * 6.0 + 11.8 * 1.0 - 15.59;
    assert!((grade("The cat sat on the mat.") - simple).abs() < 1e-12);
    // 5 words, 2 sentences, 2 + 1 + 3 + 1 + 2 syllables: a silent e, a number.
    let hard = 0.39 * 5.0 / 2.0 + 11.8 * 9.0 / 5.0 - 15.59;
    assert!((grade("Heavy core: rotation made easy.") - hard).abs() < 1e-12);
    // 4 words, 1 sentence; then a "No." that is one of 2: 3 words.
    let ball = 0.39 * 4.0 + 11.8 * 5.0 / 4.0 - 15.59;
    assert!((grade("Ball No. 3 rolls.") - ball).abs() < 1e-12);
    let answer = 0.39 * 3.0 / 2.0 + 11.8 * 1.0 - 15.59;
    assert!((grade("No. It rolls.") - answer).abs() < 1e-12);
    assert_eq!(grade(""), 0.0);
}
