//! The words of an expression.

use format::{Phrase, phrase};
use winnow::LocatingSlice;
use winnow::ascii::multispace0;
use winnow::combinator::{alt, delimited, opt, preceded, repeat, terminated};
use winnow::prelude::*;
use winnow::token::{one_of, take_while};

use super::{Fault, MAX_CHARS, Token, TokenKind};
use crate::quantity::Quantity;

type Input<'a> = LocatingSlice<&'a str>;

/// Splits a text into its words.
pub(super) fn tokens(text: &str) -> Result<Vec<Token>, Fault> {
    if text.chars().count() > MAX_CHARS {
        let found = phrase!("so-many-chars", "{count} characters", count = text.chars().count());
        return Err(Fault::new(0, found, phrase!("most-chars", "at most {most} characters", most = MAX_CHARS)));
    }
    let word = alt((number, name, quoted, mark));
    let token = word.with_span().map(|(kind, span)| Token { kind, span });
    let mut all = preceded(multispace0, repeat(0.., terminated(token, multispace0)));
    all.parse(LocatingSlice::new(text)).map_err(|error| {
        let (before, rest) = text.split_at_checked(error.offset()).unwrap_or((text, ""));
        let at = before.chars().count();
        if rest.starts_with('"') {
            let found = phrase!("open-quote", "a quotation mark that is never closed");
            return Fault::new(at, found, phrase!("quoted-name", "a name between two quotation marks"))
                .saying(phrase!("close-quote", "This quotation mark is never closed: a second one is missing."));
        }
        let found = rest.chars().next().map_or_else(the_end, |c| format!("{c:?}").into());
        let accepted = phrase!(
            "some-token",
            "a number with its unit, a name, one of {marks}",
            marks = "+ - * / ( ) < <= > >= = != [ ] . ,"
        );
        Fault::new(at, found, accepted)
    })
}

/// What is found where nothing follows.
pub(super) fn the_end() -> Phrase {
    phrase!("the-end", "the end")
}

fn digits<'a>(input: &mut Input<'a>) -> winnow::Result<&'a str> {
    take_while(1.., |c: char| c.is_ascii_digit()).parse_next(input)
}

fn number(input: &mut Input<'_>) -> winnow::Result<TokenKind> {
    let written: &str = (digits, opt(('.', digits))).take().parse_next(input)?;
    // Digits with a point at most once are always a number.
    let value: f64 = written.parse().unwrap_or_default();
    let decimals = written.split_once('.').map_or(0, |(_, after)| u8::try_from(after.len()).unwrap_or(u8::MAX));
    let unit = opt(preceded(take_while(0..=3, ' '), unit)).parse_next(input)?;
    // A share is kept as a part of 1.
    let value = if unit == Some(Quantity::Share) { value / 100.0 } else { value };
    Ok(TokenKind::Number(value, unit, decimals))
}

fn unit(input: &mut Input<'_>) -> winnow::Result<Quantity> {
    let letters = take_while(1.., |c: char| c.is_ascii_alphabetic() || c == '_');
    alt(("g/cc", "%", letters)).verify_map(Quantity::of_unit).parse_next(input)
}

fn name(input: &mut Input<'_>) -> winnow::Result<TokenKind> {
    let first = one_of(|c: char| c.is_ascii_alphabetic() || c == '_');
    let more = take_while(0.., |c: char| c.is_ascii_alphanumeric() || c == '_');
    (first, more).take().map(|word: &str| TokenKind::Word(word.to_owned())).parse_next(input)
}

fn quoted(input: &mut Input<'_>) -> winnow::Result<TokenKind> {
    let text = delimited('"', take_while(0.., |c: char| c != '"'), '"');
    text.map(|text: &str| TokenKind::Text(text.to_owned())).parse_next(input)
}

fn mark(input: &mut Input<'_>) -> winnow::Result<TokenKind> {
    let compare = alt(("<=", ">=", "!=", "<", ">", "="));
    let other = one_of(|c: char| "+-*/()[].,".contains(c)).take();
    alt((compare, other)).map(|mark: &str| TokenKind::Mark(known(mark))).parse_next(input)
}

/// The same mark for as long as the program runs.
fn known(mark: &str) -> &'static str {
    const MARKS: [&str; 16] = ["<=", ">=", "!=", "<", ">", "=", "+", "-", "*", "/", "(", ")", "[", "]", ".", ","];
    MARKS.into_iter().find(|known| *known == mark).unwrap_or_default()
}
