//! Reading typed values off a tree, each mistake with its place.

use std::collections::BTreeMap;
use std::fmt;

use crate::limits::Range;
use crate::problem::Problem;
use crate::tree::{Tree, is_long, quote};
use crate::{Phrase, phrase};

/// Where a value stands in its file.
#[derive(Clone, Copy)]
pub(crate) enum Place<'a> {
    Root,
    Key(&'a Place<'a>, &'a str),
    Index(&'a Place<'a>, usize),
}

impl fmt::Display for Place<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Root => Ok(()),
            Self::Key(parent, key) => write!(f, "{}", Step { parent: &parent.to_string(), key }),
            Self::Index(parent, index) => write!(f, "{parent}[{index}]"),
        }
    }
}

/// A key after its parent's place; in brackets and quotes where it is no
/// plain word, and cut short where it is long.
pub(crate) struct Step<'a> {
    pub(crate) parent: &'a str,
    pub(crate) key: &'a str,
}

impl fmt::Display for Step<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { parent, key } = self;
        let plain = key.chars().all(|c| c.is_alphanumeric() || c == '_');
        let word = !key.is_empty() && plain && !is_long(key);
        match (word, parent.is_empty()) {
            (false, _) => write!(f, "{parent}[{}]", quote(key)),
            (true, true) => f.write_str(key),
            (true, false) => write!(f, "{parent}.{key}"),
        }
    }
}

/// Any of these, as a reader would write them.
pub(crate) fn one_of(names: &[String]) -> Phrase {
    phrase!("one-of", "one of {names}", names = names.join(", "))
}

/// A value and its place.
pub(crate) struct Node<'a> {
    tree: &'a Tree,
    place: Place<'a>,
}

impl<'a> Node<'a> {
    pub(crate) fn root(tree: &'a Tree) -> Self {
        Self { tree, place: Place::Root }
    }

    /// A value that stands there.
    pub(crate) fn at(tree: &'a Tree, place: Place<'a>) -> Self {
        Self { tree, place }
    }

    /// Where this stands in its file.
    pub(crate) fn place(&self) -> String {
        self.place.to_string()
    }

    /// A problem with what stands here.
    pub(crate) fn problem(&self, accepted: Phrase) -> Problem {
        Problem::new(self.place, self.tree.describe(), accepted)
    }

    /// A problem here, in other words than what stands here.
    pub(crate) fn problem_found(&self, found: Phrase, accepted: Phrase) -> Problem {
        Problem::new(self.place, found, accepted)
    }

    pub(crate) fn number(&self, range: &Range) -> Result<f64, Problem> {
        match self.tree {
            Tree::Number(number) if range.holds(*number) => Ok(*number),
            _ => Err(self.problem(range.words())),
        }
    }

    /// A whole number.
    pub(crate) fn whole(&self, range: &Range) -> Result<u32, Problem> {
        let number = self.number(range)?;
        if number.fract() != 0.0 {
            let accepted =
                phrase!("whole-from-to", "a whole number from {min} to {max}", min = range.min, max = range.max);
            return Err(self.problem(accepted));
        }
        Ok(number as u32)
    }

    pub(crate) fn text(&self) -> Result<String, Problem> {
        match self.tree {
            Tree::Text(text) => Ok(text.clone()),
            _ => Err(self.problem(phrase!("text-in-quotes", "a text in quotes"))),
        }
    }

    /// True or false.
    pub(crate) fn flag(&self) -> Result<bool, Problem> {
        match self.tree {
            Tree::Flag(flag) => Ok(*flag),
            _ => Err(self.problem(phrase!("true-or-false", "true or false"))),
        }
    }

    /// One of the given texts, each with what it stands for.
    pub(crate) fn choice<T: Copy>(&self, choices: &[(&str, T)]) -> Result<T, Problem> {
        if let Tree::Text(text) = self.tree
            && let Some((_, value)) = choices.iter().find(|(name, _)| name == text)
        {
            return Ok(*value);
        }
        let names: Vec<String> = choices.iter().map(|(name, _)| quote(name)).collect();
        Err(self.problem(match names.as_slice() {
            [one] => one.into(),
            _ => one_of(&names),
        }))
    }

    /// Exactly `N` numbers.
    pub(crate) fn numbers<const N: usize>(&self, range: &Range) -> Result<[f64; N], Problem> {
        let accepted = || phrase!("list-of-numbers", "a list of {count} numbers", count = N);
        let Tree::List(items) = self.tree else {
            return Err(self.problem(accepted()));
        };
        if items.len() != N {
            return Err(self.problem(accepted()));
        }
        let mut numbers = [0.0; N];
        for (number, item) in numbers.iter_mut().zip(self.items()?) {
            *number = item.number(range)?;
        }
        Ok(numbers)
    }

    pub(crate) fn items(&self) -> Result<impl ExactSizeIterator<Item = Node<'_>>, Problem> {
        match self.tree {
            Tree::List(items) => {
                Ok(items.iter().enumerate().map(|(index, tree)| Node { tree, place: Place::Index(&self.place, index) }))
            }
            _ => Err(self.problem(phrase!("a-list", "a list"))),
        }
    }

    /// An object with no other keys than these.
    pub(crate) fn object(&'a self, keys: &'static [&'static str]) -> Result<Object<'a>, Problem> {
        let object = self.open()?;
        let unknown = object.unknown(keys).next();
        match unknown {
            Some(problem) => Err(problem),
            None => Ok(object),
        }
    }

    /// An object, whatever its keys are.
    pub(crate) fn open(&'a self) -> Result<Object<'a>, Problem> {
        Ok(Object { node: self, map: self.map()? })
    }

    /// Every key of an object, whatever the keys are, with its value as it is read.
    pub(crate) fn map_of<T>(
        &self,
        read: impl Fn(&Node<'_>) -> Result<T, Problem>,
    ) -> Result<BTreeMap<String, T>, Problem> {
        let one = |(key, tree): (&String, _)| {
            let node = Node { tree, place: Place::Key(&self.place, key) };
            Ok((key.clone(), read(&node)?))
        };
        self.map()?.iter().map(one).collect()
    }

    /// What stands here as plain JSON.
    pub(crate) fn json(&self) -> serde_json::Value {
        self.tree.json()
    }

    /// The value of one key of an object, before its other keys are looked at.
    pub(crate) fn key(&'a self, key: &'static str) -> Result<Node<'a>, Problem> {
        self.open()?.get(key)
    }

    pub(crate) fn is_text(&self) -> bool {
        matches!(self.tree, Tree::Text(_))
    }

    pub(crate) fn is_object(&self) -> bool {
        matches!(self.tree, Tree::Object(_))
    }

    fn map(&self) -> Result<&'a BTreeMap<String, Tree>, Problem> {
        match self.tree {
            Tree::Object(map) => Ok(map),
            _ => Err(self.problem(phrase!("an-object", "an object in braces"))),
        }
    }
}

/// An object and its place.
pub(crate) struct Object<'a> {
    node: &'a Node<'a>,
    map: &'a BTreeMap<String, Tree>,
}

impl<'a> Object<'a> {
    /// A problem for each key that is none of these.
    pub(crate) fn unknown(&self, keys: &'static [&'static str]) -> impl Iterator<Item = Problem> {
        let unknown = self.map.keys().filter(|key| !keys.contains(&key.as_str()));
        unknown.map(|key| {
            Problem::new(
                Place::Key(&self.node.place, key),
                phrase!("unknown-key", "the unknown key {key}", key = quote(key)),
                phrase!("known-keys", "the keys {keys}", keys = keys.join(", ")),
            )
            .saying(phrase!("key-not-known", "The key {key} is not known here.", key = quote(key)))
        })
    }

    /// The value of a key that must be there.
    pub(crate) fn get(&self, key: &'static str) -> Result<Node<'a>, Problem> {
        self.find(key).ok_or_else(|| {
            Problem::new(
                Place::Key(&self.node.place, key),
                phrase!("nothing", "nothing"),
                phrase!("needed-key", "the key {key}, which must be given", key = quote(key)),
            )
            .saying(phrase!("key-missing", "The key {key} is missing.", key = quote(key)))
        })
    }

    /// The value of a key that may be left out.
    pub(crate) fn find(&self, key: &'static str) -> Option<Node<'a>> {
        self.map.get(key).map(|tree| Node { tree, place: Place::Key(&self.node.place, key) })
    }

    pub(crate) fn find_text(&self, key: &'static str) -> Result<Option<String>, Problem> {
        self.find(key).map(|node| node.text()).transpose()
    }

    pub(crate) fn find_numbers<const N: usize>(
        &self,
        key: &'static str,
        range: &Range,
    ) -> Result<Option<[f64; N]>, Problem> {
        self.find(key).map(|node| node.numbers(range)).transpose()
    }

    pub(crate) fn find_number(&self, key: &'static str, range: &Range) -> Result<Option<f64>, Problem> {
        self.find(key).map(|node| node.number(range)).transpose()
    }

    pub(crate) fn get_number(&self, key: &'static str, range: &Range) -> Result<f64, Problem> {
        self.get(key)?.number(range)
    }
}
