//! The trade's words, as scenarios/glossary.json has them.

use std::sync::LazyLock;

use format::{Phrase, phrase};
use serde_json::Value;

static GLOSSARY: LazyLock<Value> = LazyLock::new(|| {
    // A list that cannot be read knows no word; a test reads it.
    serde_json::from_str(include_str!("../../../scenarios/glossary.json")).unwrap_or_default()
});

/// What a trade word must be.
pub(crate) fn word() -> Phrase {
    phrase!("glossary-word", "a word of the glossary")
}

/// Whether the glossary explains a word.
pub(crate) fn knows(word: &str) -> bool {
    GLOSSARY["words"].get(word).is_some()
}
