//! What to say of a text that is not JSON: the reader of JSON says it in English
//! alone, and not for people.

use serde_json::Error;

use crate::{Phrase, phrase};

/// What is wrong with a text that is not JSON, and where, as the end of a sentence.
pub fn not_json(error: &Error) -> Phrase {
    if !error.is_syntax() && !error.is_eof() {
        // It is JSON, but not of what was asked for: a mistake of a program, not of a person.
        return error.to_string().into();
    }
    if error.is_eof() && error.column() == 0 && error.line() <= 1 {
        return phrase!("json-empty", "it is empty");
    }
    let (line, column) = (error.line(), error.column());
    phrase!("at-line-column", "{what} (line {line}, column {column})", what = what(error), line = line, column = column)
}

fn what(error: &Error) -> Phrase {
    if error.is_eof() {
        return phrase!("json-ends", "it ends too early");
    }
    let said = error.to_string();
    let says = |starts: &[&str]| starts.iter().any(|start| said.starts_with(start));
    if says(&["expected `,` or `]`"]) {
        return comma_or("]");
    }
    if says(&["expected `,` or `}`"]) {
        return comma_or("}");
    }
    if says(&["expected `:`"]) {
        return phrase!("json-colon", "a colon is missing");
    }
    if says(&["expected value", "expected ident"]) {
        return phrase!("json-value", "a value is missing, or is not one that JSON knows");
    }
    if says(&["key must be a string", "expected `\"`"]) {
        return phrase!("json-key", "a key is not in double quotes");
    }
    if says(&["trailing comma"]) {
        return phrase!("json-comma", "a comma has nothing after it");
    }
    if says(&["trailing characters"]) {
        return phrase!("json-more", "more follows after its end");
    }
    if says(&["invalid number"]) {
        return phrase!("json-number", "a number is not written as JSON writes numbers");
    }
    if says(&["control character"]) {
        return phrase!("json-control", "a text has a line break or another control character in it");
    }
    if says(&["invalid escape", "lone leading", "unexpected end of hex", "invalid unicode"]) {
        return phrase!("json-escape", "a backslash in a text is followed by what JSON does not know");
    }
    phrase!("json-other", "it has something in it that JSON does not allow")
}

fn comma_or(close: &str) -> Phrase {
    phrase!("json-comma-or", "a comma or {close} is missing", close = close)
}
