//! Text to a tree of JSON values, with the checks that hold for any file:
//! size, encoding, nesting, repeated keys, finite numbers.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::fmt;

use serde::de::{Deserialize, DeserializeSeed, Deserializer, Error, MapAccess, SeqAccess, Visitor};
use serde_json::{Value, json};
use serde_path_to_error::Segment;

use crate::json::not_json;
use crate::limits;
use crate::node::Step;
use crate::problem::Problem;
use crate::{MAX_FILE_BYTES, MAX_NESTING};
use crate::{Phrase, phrase};

/// A JSON value whose numbers are finite and whose keys are unique.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Tree {
    Null,
    Flag(bool),
    Number(f64),
    Text(String),
    List(Vec<Tree>),
    Object(BTreeMap<String, Tree>),
}

impl Tree {
    /// Reads a whole file.
    pub(crate) fn parse(bytes: &[u8]) -> Result<Self, Problem> {
        Self::parse_up_to(bytes, MAX_FILE_BYTES)
    }

    /// The same for a file of another kind, up to as many bytes, whole MiB.
    pub(crate) fn parse_up_to(bytes: &[u8], most: usize) -> Result<Self, Problem> {
        if bytes.len() > most {
            return Err(Problem::new(
                "",
                phrase!("so-many-bytes", "{count} bytes", count = bytes.len()),
                phrase!("at-most-mib", "at most {most} bytes ({mib} MiB)", most = most, mib = most >> 20),
            ));
        }
        let text = std::str::from_utf8(bytes).map_err(|e| {
            let found = phrase!("no-utf8", "a byte that is not UTF-8 at position {at}", at = e.valid_up_to());
            Problem::new("", found, phrase!("json-in-utf8", "JSON text in UTF-8"))
        })?;
        // RFC 8259 section 8.1 lets a reader ignore a byte order mark.
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);

        let fault = RefCell::new(None);
        let seed = Seed { depth: 0, fault: &fault };
        let mut json = serde_json::Deserializer::from_str(text);
        let mut track = serde_path_to_error::Track::new();
        let read = seed.deserialize(serde_path_to_error::Deserializer::new(&mut json, &mut track));
        let tree = match read {
            Ok(tree) => tree,
            Err(e) => return Err(explain(text, &track.path(), fault.take(), &e)),
        };
        json.end().map_err(|e| no_tree(&e))?;
        Ok(tree)
    }

    /// The same as plain JSON; a whole number is one there too.
    pub(crate) fn json(&self) -> Value {
        const EXACT: f64 = 9_007_199_254_740_992.0;
        match self {
            Self::Null => Value::Null,
            Self::Flag(flag) => json!(flag),
            Self::Number(number) if number.fract() == 0.0 && number.abs() < EXACT => json!(*number as i64),
            Self::Number(number) => json!(number),
            Self::Text(text) => json!(text),
            Self::List(items) => items.iter().map(Self::json).collect(),
            Self::Object(map) => map.iter().map(|(key, tree)| (key.clone(), tree.json())).collect(),
        }
    }

    /// What stands here, as a reader would see it.
    pub(crate) fn describe(&self) -> Phrase {
        match self {
            Self::Null => "null".into(),
            Self::Flag(flag) => flag.to_string().into(),
            Self::Number(number) => short(*number).into(),
            Self::Text(text) => quote(text).into(),
            Self::List(items) => phrase!("list-of", "a list of {count}", count = items.len()),
            Self::Object(_) => phrase!("some-object", "an object"),
        }
    }
}

/// A number as written, in few characters even where it is very large or small.
pub(crate) fn short(number: f64) -> String {
    if number != 0.0 && !(1e-4..1e9).contains(&number.abs()) {
        return format!("{number:e}");
    }
    number.to_string()
}

/// To seven significant digits: what was computed, without rounding's tail.
pub(crate) fn rounded(number: f64) -> f64 {
    format!("{number:.6e}").parse().unwrap_or(number)
}

/// A number that was computed, as it is read: to a thousandth, a smaller one to two digits.
pub(crate) fn read_off(number: f64) -> String {
    if number.abs() < 0.01 {
        return short(format!("{number:.1e}").parse().unwrap_or(number));
    }
    short(format!("{number:.3}").parse().unwrap_or(number))
}

/// How many characters of a text from a file are told.
const LONGEST: usize = 60;

/// Whether a text is told only in part.
pub(crate) fn is_long(text: &str) -> bool {
    text.chars().nth(LONGEST).is_some()
}

/// A text in quotes, cut short where it is long.
pub(crate) fn quote(text: &str) -> String {
    if is_long(text) {
        let start: String = text.chars().take(LONGEST).collect();
        format!("{start:?}…")
    } else {
        format!("{text:?}")
    }
}

/// Mistakes that the JSON reader itself lets pass.
enum Fault {
    TooDeep,
    Repeated(String),
}

fn explain(text: &str, path: &serde_path_to_error::Path, fault: Option<Fault>, e: &serde_json::Error) -> Problem {
    let place = place_of(path);
    match fault {
        Some(Fault::TooDeep) => Problem::new(
            "",
            phrase!("too-deep", "more than {most} levels at line {line}", most = MAX_NESTING, line = e.line()),
            phrase!("at-most-deep", "lists and objects nested at most {most} deep", most = MAX_NESTING),
        ),
        Some(Fault::Repeated(key)) => {
            let whole = Step { parent: &place, key: &key };
            let key = quote(&key);
            let found = phrase!("key-twice", "the key {key} twice", key = &key);
            Problem::new(whole, found, phrase!("each-key-once", "each key once")).saying(phrase!(
                "key-given-twice",
                "The key {key} is given twice at line {line}.",
                key = key,
                line = e.line()
            ))
        }
        None if e.to_string().starts_with("number out of range") => {
            Problem::new(place, number_before(text, e), limits::ANY.words())
        }
        None => no_tree(e),
    }
}

/// A place, cut short where its keys are many and long: nothing is known of them yet.
fn place_of(path: &serde_path_to_error::Path) -> String {
    const LONGEST_PLACE: usize = 200;
    let whole = path.iter().fold(String::new(), |parent, segment| match segment {
        Segment::Seq { index } => format!("{parent}[{index}]"),
        Segment::Map { key } => Step { parent: &parent, key }.to_string(),
        Segment::Enum { .. } | Segment::Unknown => parent,
    });
    match whole.char_indices().nth(LONGEST_PLACE) {
        Some((end, _)) => format!("{}…", whole.get(..end).unwrap_or_default()),
        None => whole,
    }
}

fn no_tree(e: &serde_json::Error) -> Problem {
    let why = not_json(e);
    Problem::new("", why.clone(), phrase!("json-text", "JSON text")).saying(phrase!(
        "not-json",
        "The file is not JSON: {why}.",
        why = why
    ))
}

/// The number that ends where the error stands.
fn number_before(text: &str, e: &serde_json::Error) -> Phrase {
    let line = text.lines().nth(e.line().saturating_sub(1)).unwrap_or("");
    let part_of_number = |b: &u8| b.is_ascii_digit() || b"+-.eE".contains(b);
    let bytes = line.as_bytes();
    let at = e.column().min(bytes.len());
    let start = at - bytes[..at].iter().rev().take_while(|b| part_of_number(b)).count();
    let end = at + bytes[at..].iter().take_while(|b| part_of_number(b)).count();
    let number = line.get(start..end).unwrap_or("").trim();
    if number.is_empty() || number.len() > 60 {
        phrase!("number-out-of-range", "a number out of range at line {line}", line = e.line())
    } else {
        number.into()
    }
}

struct Seed<'f> {
    depth: usize,
    fault: &'f RefCell<Option<Fault>>,
}

impl Seed<'_> {
    fn inner<E: Error>(&self) -> Result<Self, E> {
        if self.depth == MAX_NESTING {
            self.fault.replace(Some(Fault::TooDeep));
            return Err(E::custom("nested too deep"));
        }
        Ok(Seed { depth: self.depth + 1, fault: self.fault })
    }
}

impl<'de> DeserializeSeed<'de> for Seed<'_> {
    type Value = Tree;
    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<Tree, D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Seed<'_> {
    type Value = Tree;
    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }
    fn visit_unit<E>(self) -> Result<Tree, E> {
        Ok(Tree::Null)
    }
    fn visit_bool<E>(self, flag: bool) -> Result<Tree, E> {
        Ok(Tree::Flag(flag))
    }
    fn visit_u64<E>(self, number: u64) -> Result<Tree, E> {
        Ok(Tree::Number(number as f64))
    }
    fn visit_i64<E>(self, number: i64) -> Result<Tree, E> {
        Ok(Tree::Number(number as f64))
    }
    fn visit_f64<E>(self, number: f64) -> Result<Tree, E> {
        Ok(Tree::Number(number))
    }
    fn visit_str<E>(self, text: &str) -> Result<Tree, E> {
        Ok(Tree::Text(text.to_owned()))
    }
    fn visit_seq<A: SeqAccess<'de>>(self, mut seq: A) -> Result<Tree, A::Error> {
        let mut items = Vec::new();
        while let Some(item) = seq.next_element_seed(self.inner()?)? {
            items.push(item);
        }
        Ok(Tree::List(items))
    }
    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Tree, A::Error> {
        let mut object = BTreeMap::new();
        let inner_depth = self.inner::<A::Error>()?.depth;
        while let Some(Key(key)) = map.next_key()? {
            if object.contains_key(&key) {
                self.fault.replace(Some(Fault::Repeated(key)));
                return Err(A::Error::custom("a key given twice"));
            }
            let seed = Seed { depth: inner_depth, fault: self.fault };
            let value = map.next_value_seed(seed)?;
            object.insert(key, value);
        }
        Ok(Tree::Object(object))
    }
}

struct Key(String);

impl<'de> Deserialize<'de> for Key {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        String::deserialize(deserializer).map(Key)
    }
}
