//! Expressions over computed values: `rg_in <= 2.50 in`,
//! `differential_in > start.differential_in`, `abs(board_at_pins - pocket_board) < 1 board`.
//!
//! ```text
//! either   = both { "or" both }            truth
//! both     = not { "and" not }
//! not      = [ "not" ] compared
//! compared = sum [ ("<" | "<=" | ">" | ">=" | "=" | "!=") sum ]
//! sum      = product { ("+" | "-") product }
//! product  = signed { ("*" | "/") signed }
//! signed   = [ "-" ] value
//! value    = number [ unit ] | name | ("abs" | "min" | "max" | "power") "(" sum { "," sum } ")" | "(" either ")"
//! name     = [ state "." ] ( figure [ "[" sum or "piece" "]" ] | ("ball" | "shot") way | given or answer )
//! ```
//!
//! Every number has a unit, and what does not go together is refused before
//! anything is computed. A state is `start` (the bench as the step opened) or
//! one that the lesson names.

mod eval;
mod lex;
mod near;
mod parse;
#[cfg(test)]
mod tests;

pub use eval::{Scene, place};
pub(crate) use eval::{describe, no_number, sentence, unmet};
pub(crate) use parse::{Names, parse};

use std::ops::Range;

use format::{Phrase, phrase};

use crate::figure::Figure;
use crate::path::Path;
use crate::quantity::Quantity;

/// Longest expression, in characters.
pub const MAX_CHARS: usize = 500;
/// Deepest nesting of an expression.
pub const MAX_DEPTH: usize = 24;

/// What an expression is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Type {
    Number(Quantity),
    Truth,
}

/// An expression that makes sense.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Expr {
    pub(crate) kind: ExprKind,
    pub(crate) of: Type,
}

#[derive(Clone, Debug, PartialEq)]
pub(crate) enum ExprKind {
    /// As it was typed, with how many decimals.
    Number(f64, u8),
    Figure {
        state: Option<String>,
        figure: &'static Figure,
        at: At,
    },
    Place {
        state: Option<String>,
        path: Path,
    },
    Given(String),
    Local(String),
    Negated(Box<Expr>),
    Not(Box<Expr>),
    Two(Op, Box<Expr>, Box<Expr>),
    Call(Function, Vec<Expr>),
}

/// What stands in a figure's brackets.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum At {
    Nothing,
    Piece(String),
    Distance(Box<Expr>),
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Op {
    Or,
    And,
    Less,
    AtMost,
    More,
    AtLeast,
    Same,
    Other,
    Plus,
    Minus,
    Times,
    Over,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Function {
    Abs,
    Min,
    Max,
    Power,
}

/// Why a text is no expression.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Fault {
    /// Where, in characters from its beginning.
    pub(crate) at: usize,
    /// What stands there.
    pub(crate) found: Phrase,
    /// What may stand there.
    pub(crate) accepted: Phrase,
    /// One plain sentence.
    pub(crate) message: Phrase,
}

impl Fault {
    /// A fault whose sentence is built from its parts.
    pub(crate) fn new(at: usize, found: Phrase, accepted: Phrase) -> Self {
        let message = here_must_be(accepted.clone(), found.clone());
        Self { at, found, accepted, message }
    }

    /// The same with a sentence of its own.
    pub(crate) fn saying(self, message: Phrase) -> Self {
        Self { message, ..self }
    }
}

/// What a place in a lesson must have instead of what it has.
pub(crate) fn here_must_be(accepted: Phrase, found: Phrase) -> Phrase {
    phrase!("here-must-be", "Here must be {accepted}, not {found}.", accepted = accepted, found = found)
}

/// A text as it was written, in quotes.
pub(crate) fn quoted(text: &str) -> Phrase {
    format!("{text:?}").into()
}

/// A word of an expression and where it stands, in bytes.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Token {
    pub(crate) kind: TokenKind,
    pub(crate) span: Range<usize>,
}

#[derive(Clone, Debug, PartialEq)]
pub(crate) enum TokenKind {
    /// With its unit, and how many decimals were typed.
    Number(f64, Option<Quantity>, u8),
    Word(String),
    Text(String),
    Mark(&'static str),
}
