//! From words to an expression whose units go together.

use std::collections::{BTreeMap, BTreeSet};

use format::{Phrase, phrase};

use super::lex::{the_end, tokens};
use super::near::known;
use super::{At, Expr, ExprKind, Fault, Function, MAX_DEPTH, Op, Token, TokenKind, Type, quoted};
use crate::figure::{Figure, Index};
use crate::path::{Leg, Path};
use crate::quantity::Quantity;

/// The names that an expression may use beside the figures.
#[derive(Clone, Debug, Default)]
pub(crate) struct Names {
    /// Other balls and shots than the one on the bench; `start` is always one.
    pub(crate) states: BTreeSet<String>,
    /// Numbers that the lesson names.
    pub(crate) given: BTreeMap<String, Type>,
    /// Numbers of the learner's answer.
    pub(crate) locals: BTreeMap<&'static str, Quantity>,
}

/// Reads an expression.
pub(crate) fn parse(text: &str, names: &Names) -> Result<Expr, Fault> {
    let tokens = tokens(text)?;
    let mut parser = Parser { text, tokens: &tokens, at: 0, depth: 0, names };
    let expr = parser.either()?;
    match parser.peek() {
        None => Ok(expr),
        Some(_) => Err(parser.fault(phrase!("end-or-operator", "the end, or an operator such as + or <="))),
    }
}

struct Parser<'a> {
    text: &'a str,
    tokens: &'a [Token],
    at: usize,
    depth: usize,
    names: &'a Names,
}

type Read = Result<Expr, Fault>;

impl Parser<'_> {
    fn peek(&self) -> Option<&TokenKind> {
        self.tokens.get(self.at).map(|token| &token.kind)
    }

    fn chars_to(&self, token: usize) -> usize {
        let byte = self.tokens.get(token).map_or(self.text.len(), |token| token.span.start);
        self.text.get(..byte).unwrap_or_default().chars().count()
    }

    /// A fault at the word that is next.
    fn fault(&self, accepted: Phrase) -> Fault {
        self.fault_at(self.at, accepted)
    }

    fn fault_at(&self, token: usize, accepted: Phrase) -> Fault {
        let word = self.tokens.get(token).and_then(|token| self.text.get(token.span.clone()));
        Fault::new(self.chars_to(token), word.map_or_else(the_end, quoted), accepted)
    }

    fn eat(&mut self, mark: &str) -> bool {
        let found = matches!(self.peek(), Some(TokenKind::Mark(next)) if *next == mark);
        self.at += usize::from(found);
        found
    }

    fn eat_word(&mut self, word: &str) -> bool {
        let found = matches!(self.peek(), Some(TokenKind::Word(next)) if next == word);
        self.at += usize::from(found);
        found
    }

    fn need(&mut self, mark: &str) -> Result<(), Fault> {
        if self.eat(mark) { Ok(()) } else { Err(self.fault(quoted(mark))) }
    }

    fn either(&mut self) -> Read {
        self.depth += 1;
        if self.depth > MAX_DEPTH {
            return Err(self.fault(deepest()));
        }
        let mut left = self.both()?;
        while self.eat_word("or") {
            left = self.truths(Op::Or, left, Self::both)?;
        }
        self.depth -= 1;
        Ok(left)
    }

    fn both(&mut self) -> Read {
        let mut left = self.not()?;
        while self.eat_word("and") {
            left = self.truths(Op::And, left, Self::not)?;
        }
        Ok(left)
    }

    fn truths(&mut self, op: Op, left: Expr, next: fn(&mut Self) -> Read) -> Read {
        let before = self.at.saturating_sub(1);
        let right = next(self)?;
        if left.of != Type::Truth || right.of != Type::Truth {
            return Err(self.fault_at(before, phrase!("comparisons", "a comparison on either side")));
        }
        Ok(Expr { kind: ExprKind::Two(op, Box::new(left), Box::new(right)), of: Type::Truth })
    }

    fn not(&mut self) -> Read {
        let before = self.at;
        if !self.eat_word("not") {
            return self.compared();
        }
        let inner = self.compared()?;
        if inner.of != Type::Truth {
            return Err(self.fault_at(before, phrase!("comparison-after", "a comparison after \"not\"")));
        }
        Ok(Expr { kind: ExprKind::Not(Box::new(inner)), of: Type::Truth })
    }

    fn compared(&mut self) -> Read {
        const OPS: [(&str, Op); 6] = [
            ("<=", Op::AtMost),
            (">=", Op::AtLeast),
            ("!=", Op::Other),
            ("<", Op::Less),
            (">", Op::More),
            ("=", Op::Same),
        ];
        let left = self.sum()?;
        for (mark, op) in OPS {
            let mark_at = self.at;
            if self.eat(mark) {
                let right = self.sum()?;
                self.quantities(mark_at, &left, &right)?;
                return Ok(Expr { kind: ExprKind::Two(op, Box::new(left), Box::new(right)), of: Type::Truth });
            }
        }
        Ok(left)
    }

    /// The kinds of two numbers that must go together.
    fn quantities(&self, mark: usize, left: &Expr, right: &Expr) -> Result<[Quantity; 2], Fault> {
        let of = |expr: &Expr| match expr.of {
            Type::Number(quantity) => Ok(quantity),
            Type::Truth => Err(self.fault_at(mark, numbers())),
        };
        let both = [of(left)?, of(right)?];
        let [one, other] = both;
        if one.goes_with(other) {
            return Ok(both);
        }
        let accepted = phrase!(
            "one-unit",
            "two numbers of one unit, not {one} and {other}",
            one = one.unit_said(),
            other = other.unit_said()
        );
        Err(self.fault_at(mark, accepted))
    }

    fn sum(&mut self) -> Read {
        let mut left = self.product()?;
        loop {
            let mark = self.at;
            let op = if self.eat("+") {
                Op::Plus
            } else if self.eat("-") {
                Op::Minus
            } else {
                return Ok(left);
            };
            let right = self.product()?;
            let [one, other] = self.quantities(mark, &left, &right)?;
            // A typed number does not say how finely its kind is written.
            let of = Type::Number(if matches!(left.kind, ExprKind::Number(..)) { other } else { one });
            left = Expr { kind: ExprKind::Two(op, Box::new(left), Box::new(right)), of };
        }
    }

    fn product(&mut self) -> Read {
        let mut left = self.signed()?;
        loop {
            let mark = self.at;
            let op = if self.eat("*") {
                Op::Times
            } else if self.eat("/") {
                Op::Over
            } else {
                return Ok(left);
            };
            let right = self.signed()?;
            let of = match (op, left.of, right.of) {
                (_, Type::Number(one), Type::Number(other)) if other.unit().is_empty() => Type::Number(one),
                (Op::Over, Type::Number(one), Type::Number(other)) if one.goes_with(other) => {
                    Type::Number(Quantity::Ratio)
                }
                (Op::Times, Type::Number(one), Type::Number(other)) if one.unit().is_empty() => Type::Number(other),
                (_, Type::Number(_), Type::Number(_)) => {
                    let accepted = phrase!("plain-or-same", "a plain number on one side, or division by the same unit");
                    return Err(self.fault_at(mark, accepted));
                }
                _ => return Err(self.fault_at(mark, numbers())),
            };
            left = Expr { kind: ExprKind::Two(op, Box::new(left), Box::new(right)), of };
        }
    }

    fn signed(&mut self) -> Read {
        let mark = self.at;
        if !self.eat("-") {
            return self.value();
        }
        let inner = self.value()?;
        if inner.of == Type::Truth {
            return Err(self.fault_at(mark, phrase!("number-after-minus", "a number after the minus")));
        }
        Ok(Expr { of: inner.of, kind: ExprKind::Negated(Box::new(inner)) })
    }

    fn value(&mut self) -> Read {
        if self.eat("(") {
            let inner = self.either()?;
            self.need(")")?;
            return Ok(inner);
        }
        match self.peek().cloned() {
            Some(TokenKind::Number(value, unit, decimals)) => {
                self.at += 1;
                let of = Type::Number(unit.unwrap_or(Quantity::Count));
                Ok(Expr { kind: ExprKind::Number(value, decimals), of })
            }
            Some(TokenKind::Word(word)) => {
                let before = self.at;
                self.at += 1;
                let function = [
                    ("abs", Function::Abs),
                    ("min", Function::Min),
                    ("max", Function::Max),
                    ("power", Function::Power),
                ];
                match function.into_iter().find(|(name, _)| *name == word) {
                    Some((_, function)) if self.eat("(") => self.call(before, function),
                    _ => self.name(before, word),
                }
            }
            _ => Err(self.fault(phrase!("some-value", "a number with its unit, a name or a bracket"))),
        }
    }

    fn call(&mut self, name: usize, function: Function) -> Read {
        let mut inputs = vec![self.either()?];
        while self.eat(",") {
            let next = self.either()?;
            if function != Function::Power
                && let Some(first) = inputs.first()
            {
                self.quantities(name, first, &next)?;
            }
            inputs.push(next);
        }
        self.need(")")?;
        if function == Function::Power {
            return self.power(name, inputs);
        }
        let first = inputs.first().map_or(Type::Truth, |input| input.of);
        let fits = if function == Function::Abs { inputs.len() == 1 } else { inputs.len() >= 2 };
        if first == Type::Truth || !fits {
            let accepted = if function == Function::Abs {
                phrase!("one-in-brackets", "one number in brackets")
            } else {
                phrase!("two-in-brackets", "two numbers or more in brackets")
            };
            return Err(self.fault_at(name, accepted));
        }
        Ok(Expr { kind: ExprKind::Call(function, inputs), of: first })
    }

    /// A plain number or a share to the power of a plain number.
    fn power(&self, name: usize, inputs: Vec<Expr>) -> Read {
        let plain = |of: Type| matches!(of, Type::Number(quantity) if quantity.unit().is_empty());
        match inputs.as_slice() {
            [base, exponent] if plain(exponent.of) && (plain(base.of) || base.of == Type::Number(Quantity::Share)) => {
                Ok(Expr { kind: ExprKind::Call(Function::Power, inputs), of: Type::Number(Quantity::Ratio) })
            }
            _ => {
                let accepted = phrase!("power-of", "a plain number or a share, and a plain number, in brackets");
                Err(self.fault_at(name, accepted))
            }
        }
    }

    fn name(&mut self, before: usize, word: String) -> Read {
        let is_state = word == "start" || self.names.states.contains(&word);
        let (state, word, word_at) = if is_state {
            self.need(".")?;
            let Some(TokenKind::Word(inner)) = self.peek().cloned() else {
                return Err(self.fault(phrase!("name-of-number", "the name of a number")));
            };
            self.at += 1;
            (Some(word), inner, self.at - 1)
        } else {
            (None, word, before)
        };
        if word == "ball" || word == "shot" {
            return self.place(state, word);
        }
        if let Some(figure) = Figure::named(&word) {
            let at = self.index(figure)?;
            return Ok(Expr { kind: ExprKind::Figure { state, figure, at }, of: Type::Number(figure.quantity) });
        }
        if state.is_none() {
            if let Some(of) = self.names.given.get(&word) {
                return Ok(Expr { kind: ExprKind::Given(word), of: *of });
            }
            if let Some(quantity) = self.names.locals.get(word.as_str()) {
                return Ok(Expr { kind: ExprKind::Local(word), of: Type::Number(*quantity) });
            }
        }
        Err(self.fault_at(word_at, known(self.names, &word)))
    }

    fn index(&mut self, figure: &Figure) -> Result<At, Fault> {
        let Some(index) = figure.index else { return Ok(At::Nothing) };
        self.need("[")?;
        let at = match (index, self.peek().cloned()) {
            (Index::Piece, Some(TokenKind::Text(piece))) => {
                self.at += 1;
                At::Piece(piece)
            }
            (Index::Piece, _) => {
                return Err(self.fault(phrase!("name-of-piece", "the name of a piece in double quotes")));
            }
            (Index::Distance, _) => {
                let before = self.at;
                self.depth += 1;
                if self.depth > MAX_DEPTH {
                    return Err(self.fault(deepest()));
                }
                let distance = self.sum()?;
                self.depth -= 1;
                if distance.of != Type::Number(Quantity::Distance) {
                    return Err(self.fault_at(before, phrase!("distance-in-ft", "a distance in ft")));
                }
                At::Distance(Box::new(distance))
            }
        };
        self.need("]")?;
        Ok(at)
    }

    fn place(&mut self, state: Option<String>, root: String) -> Read {
        let mut path = Path(vec![Leg::Key(root)]);
        loop {
            if self.eat(".") {
                let Some(TokenKind::Word(key)) = self.peek().cloned() else {
                    return Err(self.fault(phrase!("a-key", "a key")));
                };
                self.at += 1;
                path.0.push(Leg::Key(key));
            } else if self.eat("[") {
                let leg = match self.peek().cloned() {
                    Some(TokenKind::Number(number, None, 0)) => Leg::Index(number as usize),
                    Some(TokenKind::Text(name)) => Leg::Named(name),
                    _ => {
                        let accepted =
                            phrase!("item-number", "the number of an item, from 0, or its name in double quotes");
                        return Err(self.fault(accepted));
                    }
                };
                self.at += 1;
                self.need("]")?;
                path.0.push(leg);
            } else {
                break;
            }
        }
        let of = Type::Number(Quantity::of_key(path.key()));
        Ok(Expr { kind: ExprKind::Place { state, path }, of })
    }
}

fn numbers() -> Phrase {
    phrase!("numbers", "a number on either side")
}

fn deepest() -> Phrase {
    phrase!("brackets-deep", "brackets at most {most} deep", most = MAX_DEPTH)
}
