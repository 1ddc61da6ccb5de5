//! What is said to the learner: text with numbers in it that keep their kind,
//! so that a page shows them in the reader's units.

use format::{Phrase, phrase};
use serde::Serialize;

use crate::quantity::Quantity;

/// A part of a sentence.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Said {
    /// Words as they stand.
    Text {
        /// The words.
        text: Phrase,
    },
    /// A computed number.
    Value {
        /// In the trade's unit of its kind; a share as a part of 1.
        value: f64,
        /// What it is a number of.
        quantity: Quantity,
        /// Decimals in the trade's unit; those of its kind where it is none.
        decimals: Option<u8>,
        /// Of a difference the two numbers, the second taken from the first: each is
        /// rounded as it is shown, so that the three agree.
        #[serde(skip_serializing_if = "Option::is_none")]
        between: Option<[f64; 2]>,
    },
    /// A trade word that the glossary explains.
    Term {
        /// As the glossary spells it.
        word: String,
        /// As it stands here.
        text: Phrase,
    },
    /// Of more weight.
    Strong {
        /// What.
        said: Vec<Said>,
    },
    /// Stressed.
    Emphasis {
        /// What.
        said: Vec<Said>,
    },
}

/// A stretch of prose.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Block {
    /// A paragraph.
    Paragraph {
        /// What it says.
        said: Vec<Said>,
    },
    /// A list.
    List {
        /// Whether its items are numbered.
        ordered: bool,
        /// Its items.
        items: Vec<Vec<Said>>,
    },
}

pub(crate) fn text(words: impl Into<Phrase>) -> Said {
    Said::Text { text: words.into() }
}

pub(crate) fn value(value: f64, quantity: Quantity, decimals: Option<u8>) -> Said {
    Said::Value { value, quantity, decimals, between: None }
}

/// The same as plain text in the trade's units.
pub fn plain(said: &[Said]) -> String {
    parts(said).map(Phrase::into_text).collect()
}

/// The same as one phrase, its numbers in the trade's units.
pub(crate) fn in_one(said: &[Said]) -> Phrase {
    let mut all: Vec<Phrase> = parts(said).collect();
    // In pairs, and pairs of these, so that many parts are not nested deep.
    while all.len() > 1 {
        let join = |pair: &[Phrase]| match pair {
            [one, next] => phrase!("joined", "{one}{next}", one = one.clone(), next = next.clone()),
            rest => rest.first().cloned().unwrap_or_default(),
        };
        all = all.chunks(2).map(join).collect();
    }
    all.pop().unwrap_or_default()
}

fn parts(said: &[Said]) -> impl Iterator<Item = Phrase> {
    said.iter().map(|part| match part {
        Said::Text { text } | Said::Term { text, .. } => text.clone(),
        Said::Value { value, quantity, decimals, between } => {
            let decimals = decimals.unwrap_or_else(|| quantity.decimals());
            quantity.text(between.map_or(*value, |two| quantity.difference(two, decimals)), decimals).into()
        }
        Said::Strong { said } | Said::Emphasis { said } => in_one(said),
    })
}
