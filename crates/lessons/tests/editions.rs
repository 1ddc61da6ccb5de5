//! A lesson in another language is the same lesson: it differs in words alone.

#![allow(clippy::expect_used, clippy::panic, reason = "a check that fails stops its test")]

mod common;

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use common::{read, scenarios};
use pithball_lessons::Lesson;
use serde_json::Value;

/// The lessons of a folder of `scenarios/`, by the names of their files.
fn lessons(folder: &str) -> Vec<(String, Lesson)> {
    let entries = fs::read_dir(scenarios().join(folder)).expect("a folder of lessons");
    let mut paths: Vec<_> =
        entries.map(|entry| entry.expect("an entry").path()).filter(|path| path.is_file()).collect();
    paths.sort();
    let name = |path: &Path| path.file_name().expect("a name").to_string_lossy().into_owned();
    let lesson = |path: &Path| {
        let text = fs::read_to_string(path).expect("a lesson");
        read(&text).unwrap_or_else(|problems| panic!("{}: {problems:#?}", path.display()))
    };
    paths.iter().map(|path| (name(path), lesson(path))).collect()
}

/// Whether a key is of what the learner or the teacher reads.
fn is_said(place: &str) -> bool {
    let key = place.rsplit('.').next().unwrap_or_default();
    let key = key.split('[').next().unwrap_or_default();
    match key {
        "title" | "course" | "aim" | "teacher" | "text" | "say" | "hints" | "done" | "low" | "high" | "wrong"
        | "no_turn" => true,
        // Of an option it is the expression that tells whether it is right.
        "right" => !place.contains(".option["),
        // Of a value to watch, not of a piece of a ball.
        "name" => place.contains(".watch["),
        _ => false,
    }
}

/// What stands in a text between marks.
fn between<'a>(text: &'a str, open: &str, close: &str) -> BTreeSet<&'a str> {
    text.split(open).skip(1).filter_map(|rest| rest.split_once(close)).map(|(inside, _)| inside).collect()
}

/// The values that a text tells and the trade words that it explains.
fn computed(text: &str) -> (BTreeSet<&str>, BTreeSet<&str>) {
    let words = between(text, "[[", "]]");
    (between(text, "{", "}"), words.into_iter().map(|word| word.split('|').next().unwrap_or(word)).collect())
}

fn same_but_for_words(one: &Value, other: &Value, place: &str) {
    match (one, other) {
        (Value::Object(one), Value::Object(other)) => {
            assert_eq!(one.keys().collect::<Vec<_>>(), other.keys().collect::<Vec<_>>(), "{place}");
            one.iter().for_each(|(key, value)| same_but_for_words(value, &other[key], &format!("{place}.{key}")));
        }
        (Value::Array(one), Value::Array(other)) => {
            assert_eq!(one.len(), other.len(), "{place}");
            let pairs = one.iter().zip(other).enumerate();
            pairs.for_each(|(n, (one, other))| same_but_for_words(one, other, &format!("{place}[{n}]")));
        }
        (Value::String(one), Value::String(other)) if is_said(place) => {
            assert_eq!(computed(one), computed(other), "{place}");
            assert_ne!(one, other, "{place} is in the same language");
        }
        // The other edition lies a folder deeper.
        (Value::String(one), Value::String(other)) if one.starts_with("../") => {
            assert_eq!(&format!("../{one}"), other, "{place}");
        }
        _ => assert_eq!(one, other, "{place}"),
    }
}

#[test]
fn every_lesson_has_a_spanish_edition_that_differs_in_words_alone() {
    let (english, spanish) = (lessons("lessons"), lessons("lessons/es"));
    let names = |lessons: &[(String, Lesson)]| lessons.iter().map(|(name, _)| name.clone()).collect::<Vec<_>>();
    assert_eq!(names(&english), names(&spanish));
    let mut courses = BTreeSet::new();
    for ((name, english), (_, spanish)) in english.iter().zip(&spanish) {
        let json = |lesson: &Lesson| serde_json::to_value(lesson.file()).expect("JSON");
        same_but_for_words(&json(english), &json(spanish), name);
        assert_eq!(spanish.unsound(), [], "{name}");
        courses.insert((&english.file().course, &spanish.file().course));
    }
    let named: BTreeSet<_> = courses.iter().map(|(_, spanish)| spanish).collect();
    assert_eq!((courses.len(), named.len()), (3, 3), "{courses:?}");
}
