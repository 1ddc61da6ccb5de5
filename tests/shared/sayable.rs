//! What a reader is shown can be said in every language of the page: each phrase
//! has an id that is listed in both languages, and what has none is the same in
//! all of them: a number, a name in quotes, a key, a place.

use serde_json::Value;

const ENGLISH: &str = include_str!("../../www/locales/en/said.ftl");
const SPANISH: &str = include_str!("../../www/locales/es/said.ftl");

/// A problem as the page receives it.
#[track_caller]
pub(crate) fn assert_sayable(problem: &Value) {
    for key in ["found", "accepted", "message"] {
        let said = &problem[key];
        assert!(said.is_object() || said.as_str().is_some_and(is_data), "{key} is English alone: {problem:#}");
        parts(said, problem);
    }
}

#[track_caller]
fn parts(said: &Value, problem: &Value) {
    let Some(id) = said["id"].as_str() else { return };
    // The page itself begins a sentence with a capital.
    let listed = |list: &str| id == "capital" || list.contains(&format!("\nsaid-{id} = "));
    assert!(listed(ENGLISH) && listed(SPANISH), "{id} is not listed: {problem:#}");
    for (name, part) in said["args"].as_object().expect("its parts") {
        // The writer's own words in the writer's own language.
        if name == "hint" {
            continue;
        }
        assert!(part.is_object() || part.as_str().is_some_and(no_sentence), "{id}: {name} is English: {problem:#}");
        parts(part, problem);
    }
}

/// Whether a text is the same in every language.
fn is_data(text: &str) -> bool {
    const WORDS: [&str; 8] = ["", "true", "false", "null", "HTML", "TOML", "in", "lb"];
    let written = |c: char| c.is_ascii_alphanumeric() || "_.[],-+% ".contains(c);
    let plain = unquoted(text);
    let place = plain.chars().all(written) && plain.contains(['_', '.', '[']) && !plain.trim().contains(' ');
    let list = text.starts_with('[') && text.ends_with(']');
    WORDS.contains(&plain.as_str()) || plain.parse::<f64>().is_ok() || place || list
}

/// Whether a text is no words of a language: keys, names and numbers.
fn no_sentence(text: &str) -> bool {
    let plain = unquoted(text);
    let word = |word: &str| word.contains(char::is_alphabetic) && !word.contains('_');
    plain.split(", ").all(|item| {
        let mut words = item.split_whitespace();
        // A number may have a unit after it.
        let number = words.next().is_some_and(|first| first.trim_end_matches(['.', ';']).parse::<f64>().is_ok());
        item.split_whitespace().count() < 2 || number && words.count() == 1 || !item.split_whitespace().any(word)
    })
}

/// A text without what stands in quotes.
fn unquoted(text: &str) -> String {
    let mut plain = String::new();
    let mut open = None;
    let mut escaped = false;
    for c in text.chars() {
        match open {
            Some(mark) if c == mark && !escaped => open = None,
            None if c == '"' || c == '\'' => open = Some(c),
            None if c != '…' => plain.push(c),
            _ => {}
        }
        escaped = c == '\\' && !escaped;
    }
    plain
}
