//! The shelf file, `NAME.shelf.json`: shots that somebody keeps, each with its
//! ball inside.

use schemars::JsonSchema;
use serde::Serialize;

use crate::link::{most_chars, so_many_chars};
use crate::node::Node;
use crate::phrase;
use crate::problem::Problem;
use crate::shot::{BallRef, ShotFile};
use crate::tree::Tree;

/// Largest shelf file that is read, in bytes (32 MiB).
pub const MAX_SHELF_BYTES: usize = 32 << 20;
/// Most entries on a shelf.
pub const MAX_SHELF_ENTRIES: usize = 1_000;
/// Longest name of an entry, in characters.
pub const MAX_ENTRY_NAME_CHARS: usize = 200;
/// Longest note of an entry, in characters.
pub const MAX_ENTRY_NOTE_CHARS: usize = 4_000;

/// Which edition of the shelf file this is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub enum ShelfVersion {
    /// The first.
    #[serde(rename = "pithball.shelf/1")]
    V1,
}

/// A shelf as a file.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct ShelfFile {
    /// `pithball.shelf/1`.
    pub format: ShelfVersion,
    /// What stands on the shelf, in any order.
    #[schemars(length(max = MAX_SHELF_ENTRIES))]
    pub entries: Vec<ShelfEntry>,
}

/// One thing on the shelf.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct ShelfEntry {
    /// What it is called on the shelf.
    #[schemars(length(max = MAX_ENTRY_NAME_CHARS))]
    pub name: String,
    /// What its owner remarks on it.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(length(max = MAX_ENTRY_NOTE_CHARS))]
    pub note: Option<String>,
    /// When it was put there, universal time, such as `2026-03-01T18:30:00Z`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(regex(pattern = r"^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,9})?Z$"))]
    pub saved_at: Option<String>,
    /// The shot; its ball is in it, not beside it.
    pub shot: ShotFile,
}

/// A shelf file as far as it can be read.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ReadShelf {
    /// Those without a mistake, in the order of the file.
    pub entries: Vec<ShelfEntry>,
    /// Those with one.
    pub broken: Vec<BrokenEntry>,
}

/// An entry that cannot be taken.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BrokenEntry {
    /// Its name where that can be read.
    pub name: Option<String>,
    /// The first mistake in it; its place is one in the whole file.
    pub problem: Problem,
}

impl ReadShelf {
    /// Reads a shelf file from JSON text in UTF-8, entry by entry: a mistake in
    /// one leaves the others as they are.
    ///
    /// # Errors
    /// What is wrong with the file as a whole: no JSON, not a shelf, too large.
    pub fn read(json: &[u8]) -> Result<Self, Problem> {
        let tree = Tree::parse_up_to(json, MAX_SHELF_BYTES)?;
        let root = Node::root(&tree);
        root.key("format")?.choice(&[("pithball.shelf/1", ShelfVersion::V1)])?;
        let list = root.object(&["format", "entries"])?.get("entries")?;
        let nodes = list.items()?;
        if nodes.len() > MAX_SHELF_ENTRIES {
            return Err(list.problem(phrase!("most-entries", "at most {most} entries", most = MAX_SHELF_ENTRIES)));
        }
        let mut shelf = Self { entries: Vec::new(), broken: Vec::new() };
        for node in nodes {
            match ShelfEntry::read_node(&node) {
                Ok(entry) => shelf.entries.push(entry),
                Err(problem) => {
                    let name = node.key("name").and_then(|name| name.text()).ok();
                    shelf.broken.push(BrokenEntry { name, problem });
                }
            }
        }
        Ok(shelf)
    }
}

impl ShelfEntry {
    fn read_node(node: &Node<'_>) -> Result<Self, Problem> {
        let entry = node.object(&["name", "note", "saved_at", "shot"])?;
        let name = text_up_to(&entry.get("name")?, MAX_ENTRY_NAME_CHARS)?;
        let note = entry.find("note").map(|note| text_up_to(&note, MAX_ENTRY_NOTE_CHARS)).transpose()?;
        let saved_at = entry.find("saved_at").map(|time| instant(&time)).transpose()?;
        Ok(Self { name, note, saved_at, shot: whole_shot(&entry.get("shot")?)? })
    }
}

/// A shot with its ball inside, that can be built and thrown.
fn whole_shot(node: &Node<'_>) -> Result<ShotFile, Problem> {
    let shot = ShotFile::read_node(node)?;
    let within = |problem: Problem| problem.within(&node.place());
    let BallRef::Object(ball) = &shot.ball else {
        return Err(node.key("ball")?.problem(phrase!("ball-itself", "the ball itself")).saying(phrase!(
            "shelf-holds-ball",
            "A shelf holds the ball itself, and here is only the name of its file."
        )));
    };
    ball.build().map_err(|problem| within(problem.within("ball")))?;
    if let Some(laid) = shot.throw.laid() {
        laid.drill(ball).and_then(|drilled| drilled.file.build()).map_err(within)?;
    }
    shot.throw.shot(&ball.cover).map_err(within)?;
    Ok(shot)
}

pub(crate) fn text_up_to(node: &Node<'_>, most: usize) -> Result<String, Problem> {
    let text = node.text()?;
    match text.chars().count() {
        count if count > most => Err(node.problem_found(so_many_chars(count), most_chars(most))),
        _ => Ok(text),
    }
}

/// A moment of universal time after RFC 3339 section 5.6, its offset Z.
pub(crate) fn instant(node: &Node<'_>) -> Result<String, Problem> {
    let text = node.text()?;
    if is_instant(&text) {
        Ok(text)
    } else {
        Err(node.problem(phrase!(
            "universal-time",
            "a moment of universal time, such as {example}",
            example = "2026-03-01T18:30:00Z"
        )))
    }
}

fn is_instant(text: &str) -> bool {
    let Some((date, clock)) = text.strip_suffix('Z').and_then(|text| text.split_once('T')) else {
        return false;
    };
    let (seconds, fraction) = clock.split_once('.').unwrap_or((clock, "0"));
    let whole = |text: &str, digits: usize, from: u32, to: u32| {
        text.len() == digits
            && text.bytes().all(|b| b.is_ascii_digit())
            && text.parse().is_ok_and(|n: u32| (from..=to).contains(&n))
    };
    let fields = |text: &str, mark, checks: [(usize, u32, u32); 3]| {
        let parts: Vec<&str> = text.split(mark).collect();
        parts.len() == 3 && parts.iter().zip(checks).all(|(part, (digits, from, to))| whole(part, digits, from, to))
    };
    fields(date, '-', [(4, 0, 9999), (2, 1, 12), (2, 1, 31)])
        && fields(seconds, ':', [(2, 0, 23), (2, 0, 59), (2, 0, 60)])
        && (1..=9).contains(&fraction.len())
        && fraction.bytes().all(|b| b.is_ascii_digit())
}
