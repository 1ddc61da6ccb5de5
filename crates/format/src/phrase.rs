//! What Rust says to a reader: English as it stands in the code, and beside it
//! the id and the parts by which the page says the same in another language.

use std::borrow::Cow;
use std::cell::Cell;
use std::fmt;
use std::ops::Deref;

use serde::ser::{Serialize, SerializeMap, SerializeStruct, Serializer};

/// A sentence or a part of one. In JSON it is its English text; within
/// [`in_parts`] what can be said in another language is `{ text, id, args }`.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Phrase(Box<Said>);

#[derive(Clone, Debug, Default, PartialEq, Eq)]
struct Said {
    text: String,
    /// Empty for what is the same in every language: numbers, names, keys.
    id: Cow<'static, str>,
    args: Vec<(&'static str, Phrase)>,
}

/// A [`Phrase`]: its id, its English with `{name}` for each part, the parts by
/// their names. `www/locales/en/said.ftl` lists all of them.
#[macro_export]
macro_rules! phrase {
    ($id:literal, $text:literal $(, $name:ident = $value:expr)* $(,)?) => {{
        // The compiler holds text and parts together.
        const _: fn() = || { let _ = format_args!($text $(, $name = "")*); };
        $crate::Phrase::new($id, $text, vec![$((stringify!($name), $crate::Phrase::from($value))),*])
    }};
}

impl Phrase {
    /// Made by [`phrase!`].
    // Out of line, here and below: what is said is many, and the module is to be small.
    #[inline(never)]
    pub fn new(id: &'static str, text: &'static str, args: Vec<(&'static str, Phrase)>) -> Self {
        let mut said = String::with_capacity(text.len());
        let mut rest = text;
        while let Some((before, after)) = rest.split_once('{') {
            let (name, after) = after.split_once('}').unwrap_or((after, ""));
            said += before;
            said += args.iter().find(|(known, _)| *known == name).map_or("", |(_, arg)| arg.as_str());
            rest = after;
        }
        said += rest;
        Self(Box::new(Said { text: said, id: Cow::Borrowed(id), args }))
    }

    /// A fixed English text that is known by what it is of: `kind`, and `key`
    /// with a hyphen for what is no letter or digit.
    #[inline(never)]
    pub fn known(kind: &str, key: &str, text: &str) -> Self {
        let (mut id, key) = (kind.to_owned(), key.replace('π', "pi"));
        for word in key.split(|c: char| !c.is_ascii_alphanumeric() && c != '_').filter(|word| !word.is_empty()) {
            id.push('-');
            id.push_str(word);
        }
        Self(Box::new(Said { text: text.to_owned(), id: Cow::Owned(id), args: Vec::new() }))
    }

    /// Some phrases with commas between them.
    pub fn listed(phrases: impl IntoIterator<Item = Phrase>) -> Self {
        let list = |list, next| phrase!("list", "{list}, {next}", list = list, next = next);
        phrases.into_iter().reduce(list).unwrap_or_default()
    }

    /// The same as the beginning of a sentence. In other languages the page does as much.
    #[must_use]
    pub fn capital(self) -> Self {
        let mut chars = self.chars();
        let text = chars.next().map(|first| first.to_uppercase().chain(chars).collect()).unwrap_or_default();
        match self.0.id.as_ref() {
            "" => Self::from(text),
            _ => Self(Box::new(Said { text, id: Cow::Borrowed("capital"), args: vec![("said", self)] })),
        }
    }

    /// Two sentences, one after the other.
    #[must_use]
    #[inline(never)]
    pub fn then(self, next: Phrase) -> Self {
        phrase!("sentences", "{one} {next}", one = self, next = next)
    }

    /// The English text.
    pub fn as_str(&self) -> &str {
        &self.0.text
    }

    /// The same, without its parts.
    pub fn into_text(self) -> String {
        self.0.text
    }

    /// Its id and those of its parts, for tests; none of what is the same in every language.
    pub fn ids(&self) -> Vec<&str> {
        let own = Some(self.0.id.as_ref()).filter(|id| !id.is_empty());
        own.into_iter().chain(self.0.args.iter().flat_map(|(_, arg)| arg.ids())).collect()
    }
}

/// What is the same in every language.
impl From<String> for Phrase {
    #[inline(never)]
    fn from(text: String) -> Self {
        Self(Box::new(Said { text, ..Said::default() }))
    }
}

impl From<&str> for Phrase {
    #[inline(never)]
    fn from(text: &str) -> Self {
        text.to_owned().into()
    }
}

impl From<&String> for Phrase {
    fn from(text: &String) -> Self {
        text.clone().into()
    }
}

macro_rules! from_numbers {
    ($($number:ty),*) => {$(
        impl From<$number> for Phrase {
            #[inline(never)]
            fn from(number: $number) -> Self {
                number.to_string().into()
            }
        }
    )*};
}
from_numbers!(f64, usize, u32);

impl Deref for Phrase {
    type Target = str;
    fn deref(&self) -> &str {
        self.as_str()
    }
}

impl fmt::Display for Phrase {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(self.as_str())
    }
}

impl PartialEq<str> for Phrase {
    fn eq(&self, other: &str) -> bool {
        self.as_str() == other
    }
}

impl PartialEq<&str> for Phrase {
    fn eq(&self, other: &&str) -> bool {
        self.as_str() == *other
    }
}

thread_local! {
    static IN_PARTS: Cell<bool> = const { Cell::new(false) };
}

/// Writes phrases with their ids and parts for as long as `write` runs: for the page alone.
pub fn in_parts<T>(write: impl FnOnce() -> T) -> T {
    let before = IN_PARTS.replace(true);
    let written = write();
    IN_PARTS.set(before);
    written
}

impl Serialize for Phrase {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let Said { text, id, args } = self.0.as_ref();
        if id.is_empty() || !IN_PARTS.get() {
            return serializer.serialize_str(text);
        }
        let mut phrase = serializer.serialize_struct("Phrase", 3)?;
        phrase.serialize_field("text", text)?;
        phrase.serialize_field("id", id)?;
        phrase.serialize_field("args", &Args(args))?;
        phrase.end()
    }
}

struct Args<'a>(&'a [(&'static str, Phrase)]);

impl Serialize for Args<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        self.0.iter().try_for_each(|(name, arg)| map.serialize_entry(name, arg))?;
        map.end()
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[test]
    fn a_phrase_is_its_text_and_for_the_page_its_parts() {
        let inner = phrase!("test-range", "a number up to {most}", most = 2.5);
        let said = phrase!("test-must", "\"{name}\" must be {what}.", name = "No. 4", what = inner);
        assert_eq!(said, "\"No. 4\" must be a number up to 2.5.");
        assert_eq!(json!(said), json!("\"No. 4\" must be a number up to 2.5."));
        let what = json!({ "text": "a number up to 2.5", "id": "test-range", "args": { "most": "2.5" } });
        let parts = in_parts(|| json!(said));
        assert_eq!(parts["args"], json!({ "name": "No. 4", "what": what }));
        assert_eq!(said.ids(), ["test-must", "test-range"]);
        assert_eq!(json!(said), json!("\"No. 4\" must be a number up to 2.5."));
    }

    #[test]
    fn a_fixed_text_is_known_by_its_words() {
        assert_eq!(Phrase::known("accepted", "above 0, up to 25", "").ids(), ["accepted-above-0-up-to-25"]);
    }
}
