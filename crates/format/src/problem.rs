//! What is wrong with a file: where, what was found, what is accepted.

use std::fmt;

use serde::Serialize;

use crate::{Phrase, phrase};

/// A mistake in a file, with its place.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, thiserror::Error)]
pub struct Problem {
    /// Path in the file, such as `pieces[1].density_g_cc`; empty for the whole.
    pub place: String,
    /// What stands there, as a reader would see it.
    pub found: Phrase,
    /// What may stand there.
    pub accepted: Phrase,
    /// One plain sentence.
    pub message: Phrase,
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if !self.place.is_empty() {
            write!(f, "{}: ", self.place)?;
        }
        f.write_str(&self.message)?;
        // What the sentence says already is not said again.
        let unsaid = |what: &str| !what.is_empty() && !says(&self.message, what);
        match (unsaid(&self.found), unsaid(&self.accepted)) {
            (true, true) => write!(f, " (found: {}; accepted: {})", self.found, self.accepted),
            (true, false) => write!(f, " (found: {})", self.found),
            (false, true) => write!(f, " (accepted: {})", self.accepted),
            (false, false) => Ok(()),
        }
    }
}

/// Whether a sentence holds these words, and not only as part of a longer word or number.
fn says(sentence: &str, words: &str) -> bool {
    let part = |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || c == '-');
    sentence.match_indices(words).any(|(at, _)| {
        let (before, after) = (&sentence[..at], &sentence[at + words.len()..]);
        let mut next = after.chars();
        let decimal = after.starts_with('.') && next.nth(1).is_some_and(|c| c.is_ascii_digit());
        !part(before.chars().next_back()) && !before.ends_with('.') && !part(after.chars().next()) && !decimal
    })
}

impl Problem {
    /// A problem whose sentence is built from its parts.
    pub fn new(place: impl fmt::Display, found: Phrase, accepted: Phrase) -> Self {
        Self::at(place.to_string(), found, accepted)
    }

    #[inline(never)]
    fn at(place: String, found: Phrase, accepted: Phrase) -> Self {
        let message = phrase!(
            "must-be",
            "{subject} must be {accepted}, not {found}.",
            subject = subject(&place),
            accepted = accepted.clone(),
            found = found.clone(),
        );
        Self { place, found, accepted, message }
    }

    /// The same problem with a sentence of its own.
    #[must_use]
    #[inline(never)]
    pub fn saying(self, message: Phrase) -> Self {
        Self { message, ..self }
    }

    /// The same problem in a file that holds this one under `key`.
    pub fn within(self, key: &str) -> Self {
        let place = match self.place.as_str() {
            "" => key.to_owned(),
            inner => format!("{key}.{inner}"),
        };
        Self { place, ..self }
    }
}

/// The last key of a place as the subject of a sentence, with its unit; a key that
/// the file's writer chose as it is.
pub fn subject(place: &str) -> Phrase {
    if let Some((_, key)) = place.strip_suffix("\"]").and_then(|place| place.split_once("[\"")) {
        return format!("\"{key}\"").into();
    }
    let (parent, tail) = place.rsplit_once('.').unwrap_or(("", place));
    if matches!(parent, "given" | "states") {
        return format!("{tail:?}").into();
    }
    let (key, index) = match tail.split_once('[') {
        Some((key, _)) => (key, true),
        None => (tail, false),
    };
    let words = match key {
        "" => return Phrase::known("key", "file", "The file"),
        "mu" => return Phrase::known("key", key, "The friction coefficient (mu)"),
        "pieces" if index => return Phrase::known("item", key, "A piece"),
        "cuts" if index => return Phrase::known("item", key, "A cut"),
        "holes" if index => return Phrase::known("item", key, "A hole"),
        "zones" if index => return Phrase::known("item", key, "A zone"),
        "at_in" => "position (inches)".to_owned(),
        _ => with_unit(key),
    };
    if index {
        Phrase::known("item", key, &format!("A number of the {words}"))
    } else {
        Phrase::known("key", key, &format!("The {words}"))
    }
}

fn with_unit(key: &str) -> String {
    const UNITS: [(&str, &str); 10] = [
        ("_percent", "per cent"),
        ("_in", "inches"),
        ("_g_cc", "g/cc"),
        ("_deg", "degrees"),
        ("_mph", "miles per hour"),
        ("_rpm", "turns per minute"),
        ("_ft", "feet"),
        ("_oz", "ounces"),
        ("_um", "micrometres"),
        ("_ml", "millilitres"),
    ];
    for (suffix, unit) in UNITS {
        if let Some(stem) = key.strip_suffix(suffix) {
            return format!("{} ({unit})", stem.replace('_', " "));
        }
    }
    key.replace('_', " ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_the_sentence_says_is_not_said_again() {
        let shown = Problem::new("release.speed_mph", "41".into(), "a number up to 40".into()).to_string();
        assert_eq!(shown.matches("41").count(), 1, "{shown}");
        let problem = Problem::new("pieces[1].at", "1".into(), "2 numbers".into());
        let problem = problem.saying("The place of piece 10 is 1.5 or -1.".into());
        assert_eq!(
            problem.to_string(),
            "pieces[1].at: The place of piece 10 is 1.5 or -1. (found: 1; accepted: 2 numbers)"
        );
    }
}
