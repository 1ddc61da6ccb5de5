//! Places in what stands on the bench, such as `ball.pieces[1].density_g_cc`
//! or `ball.pieces["puck"].at_in[2]`.

use std::fmt;

use serde_json::{Map, Value};

/// Longest list that `set` may make: more than any list of a file holds.
const MAX_INDEX: usize = 10_000;

/// A step of the way to a place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Leg {
    Key(String),
    Index(usize),
    /// The item of a list with this name.
    Named(String),
}

/// The way from the whole to a place.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Path(pub(crate) Vec<Leg>);

impl fmt::Display for Path {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (n, leg) in self.0.iter().enumerate() {
            match leg {
                Leg::Key(key) if n == 0 => f.write_str(key)?,
                Leg::Key(key) => write!(f, ".{key}")?,
                Leg::Index(index) => write!(f, "[{index}]")?,
                Leg::Named(name) => write!(f, "[{name:?}]")?,
            }
        }
        Ok(())
    }
}

impl Path {
    /// Reads a place of the ball or the shot; none where it is none.
    pub(crate) fn parse(text: &str) -> Option<Self> {
        let mut legs = Vec::new();
        let mut rest = text;
        while !rest.is_empty() {
            if let Some(inside) = rest.strip_prefix('[') {
                let (leg, after) = match inside.strip_prefix('"') {
                    Some(name) => name.split_once("\"]").map(|(name, after)| (Leg::Named(name.to_owned()), after))?,
                    None => {
                        let (digits, after) = inside.split_once(']')?;
                        (Leg::Index(digits.parse().ok()?), after)
                    }
                };
                legs.push(leg);
                rest = after;
                continue;
            }
            let key = if legs.is_empty() { rest } else { rest.strip_prefix('.')? };
            let end = key.find(['.', '[']).unwrap_or(key.len());
            let (word, after) = key.split_at(end);
            if word.is_empty() || !word.chars().all(|c| c.is_ascii_alphanumeric() || c == '_') {
                return None;
            }
            legs.push(Leg::Key(word.to_owned()));
            rest = after;
        }
        let known = matches!(legs.first(), Some(Leg::Key(key)) if key == "ball" || key == "shot");
        known.then_some(Self(legs))
    }

    /// The last key on the way: what the number there is called.
    pub(crate) fn key(&self) -> &str {
        let keys = self.0.iter().rev();
        keys.filter_map(|leg| if let Leg::Key(key) = leg { Some(key.as_str()) } else { None })
            .next()
            .unwrap_or_default()
    }

    /// The name of the piece or hole on the way, where a place names one.
    pub(crate) fn owner(&self, doc: &Value) -> Option<String> {
        let owner = self.0.iter().rposition(|leg| matches!(leg, Leg::Key(key) if key == "pieces" || key == "holes"))?;
        let until = Self(self.0.get(..owner + 2)?.to_vec());
        until.get(doc)?.get("name")?.as_str().map(str::to_owned)
    }

    pub(crate) fn get<'a>(&self, doc: &'a Value) -> Option<&'a Value> {
        self.0.iter().try_fold(doc, |at, leg| match leg {
            Leg::Key(key) => at.get(key),
            Leg::Index(index) => at.get(index),
            Leg::Named(name) => at.as_array()?.iter().find(|item| item["name"] == name.as_str()),
        })
    }

    /// Puts a value there. A key that is not there is made, and so is the item
    /// after the last of a list.
    pub(crate) fn set(&self, doc: &mut Value, value: Value) -> Option<()> {
        let (last, way) = self.0.split_last()?;
        let at = way.iter().try_fold(doc, |at, leg| down(at, leg, true))?;
        match last {
            Leg::Key(key) => {
                at.as_object_mut()?.insert(key.clone(), value);
            }
            Leg::Index(index) if *index < MAX_INDEX => {
                let list = at.as_array_mut()?;
                if *index == list.len() { list.push(value) } else { *list.get_mut(*index)? = value }
            }
            Leg::Index(_) => return None,
            Leg::Named(_) => *down(at, last, false)? = value,
        }
        Some(())
    }

    /// Takes away what stands there.
    pub(crate) fn remove(&self, doc: &mut Value) -> Option<()> {
        let (last, way) = self.0.split_last()?;
        let at = way.iter().try_fold(doc, |at, leg| down(at, leg, false))?;
        match last {
            Leg::Key(key) => drop(at.as_object_mut()?.remove(key)?),
            Leg::Index(index) => {
                let list = at.as_array_mut()?;
                if *index >= list.len() {
                    return None;
                }
                list.remove(*index);
            }
            Leg::Named(name) => {
                let list = at.as_array_mut()?;
                let index = list.iter().position(|item| item["name"] == name.as_str())?;
                list.remove(index);
            }
        }
        Some(())
    }

    /// The same way with the numbers of the items in place of their names, as
    /// `doc` has them.
    pub(crate) fn numbered(&self, doc: &Value) -> Option<Self> {
        let mut numbered = Self::default();
        for leg in &self.0 {
            let leg = match leg {
                Leg::Named(name) => {
                    let list = numbered.get(doc)?.as_array()?;
                    Leg::Index(list.iter().position(|item| item["name"] == name.as_str())?)
                }
                other => other.clone(),
            };
            numbered.0.push(leg);
        }
        Some(numbered)
    }

    pub(crate) fn begins(&self, other: &Self) -> bool {
        other.0.starts_with(&self.0)
    }
}

fn down<'a>(at: &'a mut Value, leg: &Leg, make: bool) -> Option<&'a mut Value> {
    match leg {
        Leg::Key(key) if make => {
            let object = at.as_object_mut()?;
            Some(object.entry(key.clone()).or_insert_with(|| Value::Object(Map::new())))
        }
        Leg::Key(key) => at.get_mut(key),
        Leg::Index(index) => at.get_mut(index),
        Leg::Named(name) => at.as_array_mut()?.iter_mut().find(|item| item["name"] == name.as_str()),
    }
}

/// Every place where two documents differ, as deep as they have the same form.
pub(crate) fn differences(a: &Value, b: &Value) -> Vec<Path> {
    let mut found = Vec::new();
    differ(a, b, &mut Path::default(), &mut found);
    found
}

fn differ(a: &Value, b: &Value, at: &mut Path, found: &mut Vec<Path>) {
    let mut inner = |leg: Leg, a: &Value, b: &Value| {
        at.0.push(leg);
        differ(a, b, at, found);
        at.0.pop();
    };
    match (a, b) {
        (Value::Object(one), Value::Object(other)) => {
            for (key, value) in one {
                inner(Leg::Key(key.clone()), value, other.get(key).unwrap_or(&Value::Null));
            }
            for (key, value) in other.iter().filter(|(key, _)| !one.contains_key(*key)) {
                inner(Leg::Key(key.clone()), &Value::Null, value);
            }
        }
        (Value::Array(one), Value::Array(other)) => {
            for index in 0..one.len().max(other.len()) {
                let item = |list: &[Value]| list.get(index).cloned().unwrap_or_default();
                inner(Leg::Index(index), &item(one), &item(other));
            }
        }
        // 1 and 1.0 are the same number.
        (Value::Number(one), Value::Number(other)) if one.as_f64() == other.as_f64() => {}
        _ if a == b => {}
        _ => found.push(at.clone()),
    }
}
