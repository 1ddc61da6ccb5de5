//! What an expression comes to, and what to say of one that does not hold.

use std::collections::BTreeMap;

use format::{Phrase, phrase};

use super::{At, Expr, ExprKind, Function, Op, Type};
use crate::bench::Bench;
use crate::path::{Leg, Path};
use crate::quantity::Quantity;
use crate::said::{Said, text, value};

/// What expressions look at.
#[derive(Clone, Copy)]
pub struct Scene<'a> {
    /// The bench as it is.
    pub now: &'a Bench,
    /// The bench as the step opened.
    pub start: &'a Bench,
    pub(crate) states: &'a BTreeMap<String, Bench>,
    pub(crate) given: &'a BTreeMap<String, Expr>,
    /// The lesson's start, over which the given numbers are worked out.
    pub(crate) first: &'a Bench,
    pub(crate) locals: &'a BTreeMap<&'static str, f64>,
}

/// A value, or the end of a sentence that says why there is none.
type Found<T> = Result<T, Phrase>;

impl Scene<'_> {
    fn bench(&self, state: Option<&str>) -> &Bench {
        match state {
            None => self.now,
            Some("start") => self.start,
            Some(name) => self.states.get(name).unwrap_or(self.now),
        }
    }

    /// Whether an expression has a value at all.
    pub(crate) fn known(&self, expr: &Expr) -> Found<()> {
        match expr.of {
            Type::Truth => self.truth(expr).map(|_| ()),
            Type::Number(_) => self.number(expr).map(|_| ()),
        }
    }

    pub(crate) fn truth(&self, expr: &Expr) -> Found<bool> {
        Ok(match &expr.kind {
            ExprKind::Not(inner) => !self.truth(inner)?,
            ExprKind::Two(Op::Or, left, right) => self.truth(left)? || self.truth(right)?,
            ExprKind::Two(Op::And, left, right) => self.truth(left)? && self.truth(right)?,
            ExprKind::Two(op, left, right) => holds(*op, self.number(left)?, self.number(right)?),
            _ => return Err(phrase!("neither-truth", "this is neither true nor false")),
        })
    }

    pub(crate) fn number(&self, expr: &Expr) -> Found<f64> {
        match &expr.kind {
            ExprKind::Number(number, _) => Ok(*number),
            ExprKind::Figure { state, figure, at } => {
                let bench = self.bench(state.as_deref());
                match at {
                    At::Nothing => figure.of(bench),
                    At::Piece(piece) => figure.of_piece(bench, piece),
                    At::Distance(distance) => figure.at_ft(bench, self.number(distance)?),
                }
            }
            ExprKind::Place { state, path } => {
                let found = path.get(self.bench(state.as_deref()).doc()).and_then(serde_json::Value::as_f64);
                found.ok_or_else(|| phrase!("no-number-at", "there is no number at {place}", place = path.to_string()))
            }
            ExprKind::Given(name) => match self.given.get(name) {
                Some(given) => Scene { now: self.first, start: self.first, ..*self }.number(given),
                None => Err(phrase!("gives-no", "the lesson gives no {name}", name = name)),
            },
            ExprKind::Local(name) => self
                .locals
                .get(name.as_str())
                .copied()
                .ok_or_else(|| phrase!("no-answer-yet", "there is no answer yet")),
            ExprKind::Negated(inner) => Ok(-self.number(inner)?),
            ExprKind::Two(op, left, right) => arithmetic(*op, self.number(left)?, self.number(right)?),
            ExprKind::Call(function, inputs) => {
                let values = inputs.iter().map(|input| self.number(input)).collect::<Found<Vec<f64>>>()?;
                let fold = |pick: fn(f64, f64) -> f64| values.iter().copied().reduce(pick).unwrap_or(f64::NAN);
                Ok(match function {
                    Function::Abs => fold(f64::min).abs(),
                    Function::Min => fold(f64::min),
                    Function::Max => fold(f64::max),
                    // The same bits natively and in WebAssembly.
                    Function::Power => match values.as_slice() {
                        [base, exponent] => finite(libm::pow(*base, *exponent))?,
                        _ => return Err(no_number()),
                    },
                })
            }
            ExprKind::Not(_) => Err(no_number()),
        }
    }

    /// How many decimals a number was typed with, in the check or among the given.
    fn typed(&self, expr: &Expr) -> Option<u8> {
        match &expr.kind {
            ExprKind::Number(_, decimals) => Some((*decimals).min(6)),
            ExprKind::Given(name) => self.given.get(name).and_then(|given| self.typed(given)),
            _ => None,
        }
    }

    /// The two numbers of a difference.
    fn between(&self, expr: &Expr) -> Option<[f64; 2]> {
        let ExprKind::Two(Op::Minus, left, right) = &expr.kind else { return None };
        Some([self.number(left).ok()?, self.number(right).ok()?])
    }

    /// A number with what it is a number of; none of a comparison.
    pub(crate) fn said(&self, expr: &Expr, decimals: Option<u8>) -> Said {
        let Type::Number(quantity) = expr.of else { return text(phrase!("none", "none")) };
        let decimals = decimals.or_else(|| self.typed(expr));
        match self.number(expr) {
            Ok(number) => Said::Value { value: number, quantity, decimals, between: self.between(expr) },
            Err(_) => text(phrase!("none", "none")),
        }
    }
}

fn arithmetic(op: Op, left: f64, right: f64) -> Found<f64> {
    let result = match op {
        Op::Plus => left + right,
        Op::Minus => left - right,
        Op::Times => left * right,
        Op::Over => left / right,
        _ => return Err(no_number()),
    };
    finite(result)
}

fn finite(result: f64) -> Found<f64> {
    if result.is_finite() { Ok(result) } else { Err(phrase!("by-nothing", "this divides by nothing")) }
}

fn holds(op: Op, left: f64, right: f64) -> bool {
    // Equal but for the rounding of a sum or two.
    let same = (left - right).abs() <= 1e-9 * left.abs().max(right.abs());
    match op {
        Op::Less => left < right,
        Op::AtMost => left <= right,
        Op::More => left > right,
        Op::AtLeast => left >= right,
        Op::Same => same,
        Op::Other => !same,
        _ => false,
    }
}

/// What keeps an expression from being true, a sentence for each thing; empty
/// where it is true.
pub(crate) fn unmet(expr: &Expr, scene: &Scene<'_>) -> Vec<Vec<Said>> {
    match scene.truth(expr) {
        Ok(true) => return Vec::new(),
        Ok(false) => {}
        Err(why) => return vec![vec![text(sentence(why))]],
    }
    match &expr.kind {
        ExprKind::Two(Op::And, left, right) => [unmet(left, scene), unmet(right, scene)].concat(),
        ExprKind::Two(Op::Or, left, right) => {
            let mut said = vec![text(phrase!("either-must-change", "Either of two things must change. "))];
            for part in [unmet(left, scene), unmet(right, scene)].concat() {
                said.extend(part);
                said.push(text(" "));
            }
            vec![said]
        }
        ExprKind::Two(op, left, right) => vec![compared(*op, left, right, scene)],
        _ => vec![vec![text(phrase!("so-and-must-not", "This is so, and must not be."))]],
    }
}

fn compared(op: Op, left: &Expr, right: &Expr, scene: &Scene<'_>) -> Vec<Said> {
    let typed = |expr: &Expr| matches!(expr.kind, ExprKind::Number(..) | ExprKind::Given(_));
    if typed(left) && !typed(right) {
        return compared(turned(op), right, left, scene);
    }
    if let Some(said) = near(op, left, right, scene) {
        return said;
    }
    let must = match op {
        Op::Less => phrase!("must-less", "; it must be less than "),
        Op::AtMost => phrase!("must-at-most", "; it must be at most "),
        Op::More => phrase!("must-more", "; it must be more than "),
        Op::AtLeast => phrase!("must-at-least", "; it must be at least "),
        Op::Other => phrase!("must-other", "; it must be other than "),
        _ => phrase!("must-same", "; it must be "),
    };
    let (Type::Number(quantity), Ok(is), Ok(wanted)) = (left.of, scene.number(left), scene.number(right)) else {
        return Vec::new();
    };
    let decimals = telling(quantity, is, wanted);
    let mut said = capital(describe(left, scene));
    said.extend([text(is_now()), value(is, quantity, Some(decimals)), text(must)]);
    if !typed(right) {
        said.extend(describe(right, scene));
        said.push(text(", "));
    }
    said.extend([
        value(wanted, quantity, Some(scene.typed(right).map_or(decimals, |typed| typed.max(decimals)))),
        text("."),
    ]);
    said
}

/// `abs(a - b) < c` reads better as "within c of b".
fn near(op: Op, left: &Expr, right: &Expr, scene: &Scene<'_>) -> Option<Vec<Said>> {
    let ExprKind::Call(Function::Abs, inputs) = &left.kind else { return None };
    let [Expr { kind: ExprKind::Two(Op::Minus, a, b), .. }] = inputs.as_slice() else { return None };
    if !matches!(op, Op::Less | Op::AtMost) {
        return None;
    }
    let (Type::Number(quantity), Type::Number(within)) = (a.of, right.of) else { return None };
    let (is, wanted, room) = (scene.number(a).ok()?, scene.number(b).ok()?, scene.number(right).ok()?);
    let decimals = telling(quantity, is, wanted);
    let mut said = capital(describe(a, scene));
    said.extend([
        text(is_now()),
        value(is, quantity, Some(decimals)),
        text(phrase!("must-within", "; it must be within ")),
    ]);
    let boards = match (within, room == 1.0) {
        (Quantity::Board, true) => phrase!("one-board-of", " board of "),
        (Quantity::Board, false) => phrase!("boards-of", " boards of "),
        _ => phrase!("within-of", " of "),
    };
    said.extend([value(room, within, scene.typed(right)), text(boards)]);
    if !matches!(b.kind, ExprKind::Number(..) | ExprKind::Given(_)) {
        said.extend(describe(b, scene));
        said.push(text(", "));
    }
    said.extend([
        value(wanted, quantity, Some(scene.typed(b).map_or(decimals, |typed| typed.max(decimals)))),
        text("."),
    ]);
    Some(said)
}

fn turned(op: Op) -> Op {
    match op {
        Op::Less => Op::More,
        Op::AtMost => Op::AtLeast,
        Op::More => Op::Less,
        Op::AtLeast => Op::AtMost,
        other => other,
    }
}

/// Decimals enough to tell two numbers apart.
fn telling(quantity: Quantity, one: f64, other: f64) -> u8 {
    let usual = quantity.decimals();
    (usual..usual + 4)
        .find(|decimals| quantity.digits(one, *decimals) != quantity.digits(other, *decimals))
        .unwrap_or(usual)
}

/// What an expression is, in words, as a part of a sentence.
pub(crate) fn describe(expr: &Expr, scene: &Scene<'_>) -> Vec<Said> {
    match &expr.kind {
        ExprKind::Figure { state, figure, at } => {
            let mut said = vec![term(figure.word(), figure.said())];
            match at {
                At::Nothing => {}
                At::Piece(piece) => said.push(text(phrase!("called", " called {name}", name = piece))),
                At::Distance(distance) => {
                    said.extend([text(phrase!("at-distance", " at ")), scene.said(distance, None)])
                }
            }
            said.push(text(of_state(state.as_deref())));
            said
        }
        ExprKind::Place { state, path } => {
            let words = place_words(path, scene.bench(state.as_deref()));
            let said = vec![term(place_word(path.key()), words)];
            let of = of_state(state.as_deref());
            if of.is_empty() { said } else { [said, vec![text(of)]].concat() }
        }
        ExprKind::Two(op, left, right) => {
            let between = match op {
                Op::Plus => phrase!("op-plus", " and "),
                Op::Minus => phrase!("op-minus", " less "),
                Op::Times => phrase!("op-times", " times "),
                Op::Over => phrase!("op-over", " over "),
                _ => phrase!("op-beside", " beside "),
            };
            let mut said = describe(left, scene);
            said.push(text(between));
            said.extend(describe(right, scene));
            said
        }
        ExprKind::Call(Function::Abs, inputs) => {
            let mut said = vec![text(phrase!("size-of", "the size of "))];
            said.extend(inputs.iter().flat_map(|input| describe(input, scene)));
            said
        }
        ExprKind::Call(function, inputs) => {
            let (opening, closing) = match function {
                Function::Min => (phrase!("least-of", "the least of "), phrase!("op-plus", " and ")),
                Function::Power => (Phrase::default(), phrase!("to-the-power", " to the power of ")),
                _ => (phrase!("most-of", "the most of "), phrase!("op-plus", " and ")),
            };
            let mut said = vec![text(opening)];
            for (n, input) in inputs.iter().enumerate() {
                if n > 0 {
                    said.push(text(if n + 1 == inputs.len() { closing.clone() } else { ", ".into() }));
                }
                said.extend(describe(input, scene));
            }
            said
        }
        ExprKind::Local(name) if name == "guess" => vec![text(phrase!("your-answer", "your answer"))],
        ExprKind::Local(_) => vec![text(phrase!("your-drawing", "your drawing"))],
        ExprKind::Negated(inner) | ExprKind::Not(inner) => describe(inner, scene),
        ExprKind::Number(..) | ExprKind::Given(_) => vec![scene.said(expr, None)],
    }
}

/// Words that lead to a word of the glossary, where there is one.
fn term(word: Option<&'static str>, text: Phrase) -> Said {
    match word {
        Some(word) => Said::Term { word: word.to_owned(), text },
        None => Said::Text { text },
    }
}

/// The word of the glossary that explains what stands at a key of a file.
fn place_word(key: &str) -> Option<&'static str> {
    Some(match key {
        "density_g_cc" => "density",
        "at_in" | "turn_deg" => "position",
        "squash" => "squash",
        "diameter_in" | "height_in" | "size_in" => "piece",
        "speed_mph" => "speed",
        "revs_rpm" => "rev rate",
        "axis_rotation_deg" => "axis rotation",
        "axis_tilt_deg" => "axis tilt",
        "launch_angle_deg" => "launch angle",
        "board" => "board",
        "pin_to_pap_in" => "PAP",
        "drilling_angle_deg" => "drilling angle",
        "start_turn_deg" => "start turn",
        "val_angle_deg" => "VAL angle",
        "mu" => "friction",
        "length_ft" | "volume_ml" => "oil pattern",
        "ratio" => "oil ratio",
        "grit" => "grit",
        _ => return None,
    })
}

fn of_state(state: Option<&str>) -> Phrase {
    match state {
        None => Phrase::default(),
        Some("start") => phrase!("at-the-start", " at the start"),
        Some(name) => phrase!("of-state", " of {name}", name = name.replace('_', " ")),
    }
}

/// The number of a file's key, in words: "the density".
pub fn place(key: &str) -> Phrase {
    let endings = ["_g_cc", "_in", "_deg", "_mph", "_rpm", "_ft", "_lb", "_oz", "_um", "_ml"];
    let plain = endings.iter().find_map(|ending| key.strip_suffix(ending)).unwrap_or(key);
    let plain = match plain {
        "at" => "place".to_owned(),
        "mu" => "friction".to_owned(),
        "board" => "board at the foul line".to_owned(),
        "pin_to_pap" => "pin-to-PAP distance".to_owned(),
        other => other.replace('_', " "),
    };
    Phrase::known("place", key, &format!("the {plain}"))
}

/// `ball.pieces[1].density_g_cc` as "the density of the puck".
fn place_words(path: &Path, bench: &Bench) -> Phrase {
    let key = path.key();
    let what = match path.0.last() {
        Some(Leg::Index(n)) if ["at_in", "size_in", "turn_deg"].contains(&key) => {
            let axis = ["x", "y", "z"].get(*n).copied().unwrap_or_default();
            phrase!("along", "{what} along {axis}", what = place(key), axis = axis)
        }
        _ => place(key),
    };
    let keys: Vec<&str> =
        path.0.iter().filter_map(|leg| if let Leg::Key(key) = leg { Some(key.as_str()) } else { None }).collect();
    match (path.owner(bench.doc()), keys.as_slice()) {
        (Some(owner), _) => phrase!("of-part", "{what} of the {owner}", what = what, owner = owner),
        (None, ["ball", "cover", ..]) => phrase!("of-cover", "{what} of the cover", what = what),
        (None, ["ball", _]) => phrase!("of-ball", "{what} of the ball", what = what),
        _ => what,
    }
}

fn capital(mut said: Vec<Said>) -> Vec<Said> {
    if let Some(Said::Text { text } | Said::Term { text, .. }) = said.first_mut() {
        *text = std::mem::take(text).capital();
    }
    said
}

fn is_now() -> Phrase {
    phrase!("is-now", " is ")
}

pub(crate) fn no_number() -> Phrase {
    phrase!("no-number", "this is no number")
}

/// The end of a sentence as a sentence of its own.
pub(crate) fn sentence(why: Phrase) -> Phrase {
    let whole = why.ends_with('.');
    let said = why.capital();
    if whole { said } else { phrase!("full-stop", "{said}.", said = said) }
}
