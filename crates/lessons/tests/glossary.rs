//! The glossary's pictures are of files that are there, one for each word that
//! the page explains.

#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use std::collections::BTreeSet;
use std::path::Path;

use serde_json::Value;

const GLOSSARY: &str = include_str!("../../../scenarios/glossary.json");
const WORDS: &str = include_str!("../../../www/src/words.ts");
const ENGLISH: &str = include_str!("../../../www/locales/en/words.ftl");
const SPANISH: &str = include_str!("../../../www/locales/es/words.ftl");
const ENGLISH_SHOWN: &str = include_str!("../../../www/locales/en/shown.ftl");
const SPANISH_SHOWN: &str = include_str!("../../../www/locales/es/shown.ftl");

#[test]
fn every_word_of_the_page_has_a_picture_of_a_file_that_is_there() {
    let glossary: Value = serde_json::from_str(GLOSSARY).expect("JSON");
    let words = glossary["words"].as_object().expect("the words");
    let (_, list) = WORDS.split_once("WORDS = {").expect("the page's words");
    let (list, _) = list.split_once("} as const").expect("their end");
    let keys: BTreeSet<&str> =
        list.lines().filter_map(|line| line.split_once(':')).map(|(key, _)| key.trim().trim_matches('"')).collect();
    assert!(keys.len() > 40, "{keys:?}");
    assert_eq!(words.keys().map(String::as_str).collect::<BTreeSet<_>>(), keys);
    let scenarios = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios");
    for (word, entry) in words {
        let picture = entry["picture"].as_object().expect("a picture");
        let kind = picture["kind"].as_str().expect("a kind");
        let of: &[&str] = match kind {
            "section" | "cover" | "scatter" => &["ball"],
            "lane" | "track" => &["shot"],
            "oil" => &["oil"],
            "layout" => &["ball", "layout"],
            _ => &[],
        };
        assert!(!of.is_empty(), "{word}: {kind:?}");
        for key in of {
            let path = scenarios.join(picture[*key].as_str().expect("a path"));
            assert!(path.is_file(), "{word}: {}", path.display());
        }
    }
}

#[test]
fn every_word_is_named_and_explained_in_both_languages() {
    let glossary: Value = serde_json::from_str(GLOSSARY).expect("JSON");
    let id = |word: &str| {
        let plain = word.to_lowercase().replace(|c: char| !c.is_ascii_alphanumeric(), " ");
        plain.split_whitespace().collect::<Vec<_>>().join("-")
    };
    for word in glossary["words"].as_object().expect("the words").keys() {
        let id = id(word);
        // What a word means and, on the line below, what it is called.
        let told = |phrases: &str| {
            let (_, told) = phrases.split_once(&format!("\nword-{id} = ")).expect(word);
            let (meaning, below) = told.split_once('\n').expect(word);
            let name = below.lines().next().and_then(|line| line.strip_prefix("    .name = ")).expect(word).to_owned();
            (meaning.to_owned(), name)
        };
        let ((english, name), (spanish, _)) = (told(ENGLISH), told(SPANISH));
        assert_eq!(&name, word);
        assert!(WORDS.contains(&format!(": \"word-{id}\",")), "{word}");
        assert_ne!(english, spanish, "{word}");
        // What its picture shows.
        let shows = |phrases: &'static str| {
            let (_, shows) = phrases.split_once(&format!("\nshows-{id} = ")).expect(word);
            shows.lines().next().filter(|shows| shows.ends_with('.')).expect(word)
        };
        assert_ne!(shows(ENGLISH_SHOWN), shows(SPANISH_SHOWN), "{word}");
    }
}

#[test]
fn every_number_of_lessons_leads_to_a_word() {
    let glossary: Value = serde_json::from_str(GLOSSARY).expect("JSON");
    for figure in pithball_lessons::FIGURES {
        // How long the lane is needs no picture.
        let Some(word) = figure.word() else {
            assert_eq!(figure.name, "lane_ft");
            continue;
        };
        assert!(glossary["words"].get(word).is_some(), "{}: {word:?}", figure.name);
    }
}
