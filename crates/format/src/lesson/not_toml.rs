//! What to say of a stretch that is not TOML: the reader of TOML says it in
//! English alone, and not for people.

use toml::de::Error;

use crate::tree::quote;
use crate::{Phrase, phrase};

/// What to say of a stretch; `at` is where in the text its first error stands.
pub(super) fn not_toml(text: &str, at: usize, errors: &[Error]) -> Phrase {
    let (line, after) = (line_at(text, at), text.get(at..).unwrap_or_default());
    if let Some(said) = missing_quote(line, after) {
        return said;
    }
    // A list that is not closed runs on into the next key.
    if errors.iter().any(|error| error.message().starts_with("unexpected `=` in array")) {
        return phrase!("toml-list-open", "Before this a ] is missing.");
    }
    errors.first().map_or_else(Phrase::default, |first| what(first.message(), line, after))
}

/// The line of an error, as what is found there.
pub(super) fn line_of(text: &str, at: usize) -> Phrase {
    match line_at(text, at).trim() {
        "" => phrase!("nothing", "nothing"),
        line => quote(line).into(),
    }
}

fn line_at(text: &str, at: usize) -> &str {
    let start = text.get(..at).and_then(|before| before.rfind('\n')).map_or(0, |end| end + 1);
    text.get(start..).and_then(|rest| rest.lines().next()).unwrap_or_default()
}

/// What to say of a line where a quotation mark has no other.
fn missing_quote(line: &str, after: &str) -> Option<Phrase> {
    let marks = line.matches('"').count() - line.matches("\\\"").count();
    if marks.is_multiple_of(2) || line.contains("\"\"\"") || line.contains('\'') {
        return None;
    }
    let at_end = after.is_empty() || after.starts_with(['\n', '\r']);
    Some(if at_end {
        phrase!("quote-missing-at-end", "A quotation mark is missing at the end of this line.")
    } else {
        phrase!("quote-missing", "A quotation mark is missing on this line.")
    })
}

/// What the reader of TOML means; `after` is what stands where it stopped.
fn what(said: &str, line: &str, after: &str) -> Phrase {
    let says = |starts: &[&str]| starts.iter().any(|start| said.starts_with(start));
    let ends_here = after.lines().next().is_none_or(|rest| rest.trim().is_empty());
    // It takes nothing for a text without quotation marks.
    let nothing = says(&["string values must be quoted"]) && ends_here;
    let no_text = says(&["invalid literal string"]) && !line.contains('\'');
    if says(&["missing value"]) || nothing || no_text {
        return phrase!("toml-no-value", "A value is missing here.");
    }
    if says(&["string values must be quoted", "invalid boolean"]) {
        return phrase!("toml-unquoted", "A text must stand in quotation marks.");
    }
    if says(&["key with no value"]) {
        return phrase!("toml-key-alone", "After this key an = and a value are missing.");
    }
    if says(&["duplicate key"]) {
        return phrase!("toml-key-twice", "This key is given twice.");
    }
    if says(&["unclosed inline table"]) {
        return never_closed("}");
    }
    if says(&["unclosed"]) {
        return never_closed("]");
    }
    if says(&["missing comma", "extra assignment"]) {
        return phrase!("toml-no-comma", "A comma is missing here.");
    }
    if says(&["extra comma"]) {
        return phrase!("toml-comma", "There is a comma too many here.");
    }
    if says(&["missing assignment"]) {
        return phrase!("toml-no-equals", "An = is missing here.");
    }
    if says(&["extra `=`"]) {
        return phrase!("toml-equals", "There is an = too many here.");
    }
    if says(&["invalid unquoted key", "unquoted keys", "keys cannot", "missing key"]) {
        return phrase!("toml-key", "Here must be a key: letters, digits, - and _.");
    }
    if says(&["missing escaped value", "too few unicode", "invalid value"]) {
        return phrase!("toml-escape", "A backslash in a text between two \" must be written twice.");
    }
    if says(&["unexpected key or value", "unexpected content", "invalid key-value pair"]) {
        return phrase!("toml-more", "The line must end before this.");
    }
    if says(&["missing opening quote", "invalid basic", "invalid literal", "invalid multi-line"]) {
        return phrase!("toml-text", "This text is never closed, or has something in it that must not be there.");
    }
    if says(&["missing array", "missing inline", "missing table"]) {
        return phrase!("toml-closes-nothing", "This closes nothing that was opened.");
    }
    const NUMBERS: [&str; 12] = [
        "invalid float",
        "invalid exponent",
        "invalid mantissa",
        "invalid fraction",
        "invalid integer",
        "invalid date",
        "unexpected leading zero",
        "unexpected sign",
        "redundant",
        "radix",
        "integers",
        "`_`",
    ];
    if says(&NUMBERS) {
        return phrase!(
            "toml-number",
            "TOML does not write a number like this, and a text must stand in quotation marks."
        );
    }
    phrase!("not-toml", "This is not TOML.")
}

fn never_closed(close: &str) -> Phrase {
    phrase!("toml-open", "This is never closed: a {close} is missing.", close = close)
}
