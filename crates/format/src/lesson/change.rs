//! What a lesson puts on the bench, and what it changes there.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::Serialize;
use serde_json::Value;

use crate::node::Node;
use crate::phrase;
use crate::problem::Problem;

/// A ball and a shot, or what changes on those that are there. First `ball`,
/// `shot` and `layout` take the place of what is there, then `set`, then `remove`.
///
/// A place reads as in an error message: `ball.pieces[1].density_g_cc`,
/// `ball.pieces["puck"].at_in[2]`, `shot.release.revs_rpm`. To set the item
/// after the last of a list adds it.
#[derive(Clone, Debug, Default, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Change {
    /// Another ball.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub ball: Option<Given>,
    /// Another shot. Its ball comes along only where there is none yet.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shot: Option<Given>,
    /// Another layout with its grip: what a layout file says, put into the shot.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub layout: Option<Given>,
    /// New values by place.
    #[serde(skip_serializing_if = "BTreeMap::is_empty", default)]
    pub set: BTreeMap<String, Value>,
    /// Places to take away.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub remove: Vec<String>,
}

/// A file by its path from the lesson, or what would stand in it.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(untagged)]
pub enum Given {
    /// A path from the lesson's folder.
    Path(String),
    /// The object itself.
    Object(BTreeMap<String, Value>),
}

impl Change {
    pub(super) fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let change = node.object(&["ball", "shot", "layout", "set", "remove"])?;
        let set = change.find("set").map(|set| set.map_of(|value| Ok(value.json()))).transpose()?;
        Ok(Self {
            ball: change.find("ball").map(|ball| Given::read(&ball)).transpose()?,
            shot: change.find("shot").map(|shot| Given::read(&shot)).transpose()?,
            layout: change.find("layout").map(|layout| Given::read(&layout)).transpose()?,
            set: set.unwrap_or_default(),
            remove: change.find("remove").map(|list| super::read::texts(&list)).transpose()?.unwrap_or_default(),
        })
    }
}

impl Given {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        if node.is_text() {
            return node.text().map(Self::Path);
        }
        let object = node.map_of(|value| Ok(value.json()));
        object.map(Self::Object).map_err(|_| {
            node.problem(phrase!("path-or-object", "a path from the lesson's folder, or the object itself"))
        })
    }
}
