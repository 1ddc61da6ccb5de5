//! Prose: a little Markdown with `{expressions}` in it, `{rg_in}` or
//! `{rg_in:4}` with four decimals, and trade words as `[[differential]]` or
//! `[[puck|pucks]]`.
//!
//! Paragraphs, lists, stress and weight, nothing else: no HTML, no links, no
//! pictures, and no number with a unit that was typed by hand.

use std::ops::Range;

use format::lesson::MAX_MISTAKES;
use format::{Phrase, phrase};
use pulldown_cmark::{Event, Options, Parser, Tag, TagEnd, TextMergeWithOffset};

use crate::expr::{Expr, Fault, Names, Scene, Type, parse, quoted};
use crate::glossary;
use crate::said::{Block, Said};
use crate::typed::typed_number;

/// Prose whose expressions make sense.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Prose(Vec<Stretch>);

#[derive(Clone, Debug, PartialEq)]
enum Stretch {
    Paragraph(Vec<Part>),
    List { ordered: bool, items: Vec<Vec<Part>> },
}

/// A line of text with expressions.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Line(Vec<Part>);

#[derive(Clone, Debug, PartialEq)]
enum Part {
    Text(String),
    Value(Expr, Option<u8>),
    Term { word: String, text: String },
    Strong(Vec<Part>),
    Emphasis(Vec<Part>),
}

impl Prose {
    /// Reads prose; every fault in it, in characters from its beginning.
    pub(crate) fn parse(text: &str, names: &Names) -> Result<Self, Vec<Fault>> {
        let mut reader = Reader {
            source: text,
            names,
            faults: Vec::new(),
            blocks: Vec::new(),
            parts: vec![Vec::new()],
            lists: Vec::new(),
            term: None,
        };
        let options = Options::ENABLE_WIKILINKS;
        for (event, range) in TextMergeWithOffset::new(Parser::new_ext(text, options).into_offset_iter()) {
            reader.take(event, range);
        }
        if reader.faults.is_empty() { Ok(Self(reader.blocks)) } else { Err(reader.faults) }
    }

    pub(crate) fn fill(&self, scene: &Scene<'_>) -> Vec<Block> {
        let fill = |parts: &Vec<Part>| fill(parts, scene);
        let stretch = |stretch: &Stretch| match stretch {
            Stretch::Paragraph(parts) => Block::Paragraph { said: fill(parts) },
            Stretch::List { ordered, items } => {
                Block::List { ordered: *ordered, items: items.iter().map(fill).collect() }
            }
        };
        self.0.iter().map(stretch).collect()
    }

    pub(crate) fn values(&self) -> Vec<&Expr> {
        let mut found = Vec::new();
        for stretch in &self.0 {
            match stretch {
                Stretch::Paragraph(parts) => values(parts, &mut found),
                Stretch::List { items, .. } => items.iter().for_each(|parts| values(parts, &mut found)),
            }
        }
        found
    }
}

impl Line {
    /// Reads a text that is one paragraph.
    pub(crate) fn parse(text: &str, names: &Names) -> Result<Self, Vec<Fault>> {
        let mut prose = Prose::parse(text, names)?.0;
        match (prose.pop(), prose.is_empty()) {
            (Some(Stretch::Paragraph(parts)), true) => Ok(Self(parts)),
            _ => Err(vec![Fault::new(
                0,
                phrase!("no-paragraph", "none, several or a list"),
                phrase!("one-paragraph", "one paragraph"),
            )]),
        }
    }

    pub(crate) fn fill(&self, scene: &Scene<'_>) -> Vec<Said> {
        fill(&self.0, scene)
    }

    pub(crate) fn values(&self) -> Vec<&Expr> {
        let mut found = Vec::new();
        values(&self.0, &mut found);
        found
    }
}

fn fill(parts: &[Part], scene: &Scene<'_>) -> Vec<Said> {
    let part = |part: &Part| match part {
        Part::Text(text) => Said::Text { text: text.into() },
        Part::Value(expr, decimals) => scene.said(expr, *decimals),
        Part::Term { word, text } => Said::Term { word: word.clone(), text: text.into() },
        Part::Strong(parts) => Said::Strong { said: fill(parts, scene) },
        Part::Emphasis(parts) => Said::Emphasis { said: fill(parts, scene) },
    };
    parts.iter().map(part).collect()
}

fn values<'a>(parts: &'a [Part], found: &mut Vec<&'a Expr>) {
    for part in parts {
        match part {
            Part::Value(expr, _) => found.push(expr),
            Part::Strong(parts) | Part::Emphasis(parts) => values(parts, found),
            Part::Text(_) | Part::Term { .. } => {}
        }
    }
}

struct Reader<'a> {
    source: &'a str,
    names: &'a Names,
    faults: Vec<Fault>,
    blocks: Vec<Stretch>,
    /// What is being collected, the innermost last.
    parts: Vec<Vec<Part>>,
    lists: Vec<(bool, Vec<Vec<Part>>)>,
    /// The trade word that is being read.
    term: Option<String>,
}

impl Reader<'_> {
    /// Characters before a byte.
    fn chars_to(&self, byte: usize) -> usize {
        self.source.get(..byte).unwrap_or_default().chars().count()
    }

    fn fault(&mut self, byte: usize, found: Phrase, accepted: Phrase) {
        if self.faults.len() < MAX_MISTAKES {
            self.faults.push(Fault::new(self.chars_to(byte), found, accepted));
        }
    }

    /// Whether the fault before was of this.
    fn told(&self, found: &Phrase) -> bool {
        self.faults.last().is_some_and(|last| last.found == *found)
    }

    fn take(&mut self, event: Event<'_>, range: Range<usize>) {
        match event {
            Event::Start(Tag::Paragraph) | Event::End(TagEnd::Item) => {}
            Event::Start(Tag::Item) => self.parts.push(Vec::new()),
            Event::End(TagEnd::Paragraph) if self.lists.is_empty() => {
                let parts = self.parts.last_mut().map(std::mem::take).unwrap_or_default();
                self.blocks.push(Stretch::Paragraph(parts));
            }
            Event::End(TagEnd::Paragraph) => {}
            Event::Start(Tag::List(first)) if self.lists.is_empty() => {
                self.lists.push((first.is_some(), Vec::new()));
            }
            Event::End(TagEnd::List(_)) => {
                let items = self.parts.split_off(1.min(self.parts.len()));
                if let Some((ordered, _)) = self.lists.pop() {
                    self.blocks.push(Stretch::List { ordered, items });
                }
            }
            Event::Start(Tag::Strong | Tag::Emphasis) => self.parts.push(Vec::new()),
            Event::End(end @ (TagEnd::Strong | TagEnd::Emphasis)) => {
                let inner = self.parts.pop().unwrap_or_default();
                self.push(if end == TagEnd::Strong { Part::Strong(inner) } else { Part::Emphasis(inner) });
            }
            Event::Start(Tag::Link { link_type: pulldown_cmark::LinkType::WikiLink { .. }, dest_url, .. }) => {
                if !glossary::knows(&dest_url) {
                    self.fault(range.start, quoted(&dest_url), glossary::word());
                }
                self.term = Some(dest_url.to_string());
            }
            Event::End(TagEnd::Link) => self.term = None,
            Event::Text(text) => match self.term.clone() {
                Some(word) => self.push(Part::Term { word, text: text.to_string() }),
                None => self.text(&text, range),
            },
            Event::SoftBreak | Event::HardBreak => self.push(Part::Text(" ".to_owned())),
            // Its beginning is told already.
            Event::InlineHtml(tag) if tag.starts_with("</") && self.told(&html()) => {}
            other => self.fault(range.start, words(&other), allowed()),
        }
    }

    fn push(&mut self, part: Part) {
        if let Some(last) = self.parts.last_mut() {
            last.push(part);
        }
    }

    /// Text with values in braces.
    fn text(&mut self, text: &str, range: Range<usize>) {
        // Where nothing is escaped it stands in the source as it is.
        let same = self.source.get(range.clone()) == Some(text);
        let byte = |within: usize| if same { range.start + within } else { range.start };
        let mut rest = text;
        while let Some((before, inside)) = rest.split_once('{') {
            let open = text.len() - rest.len() + before.len();
            self.words(before, byte(text.len() - rest.len()));
            let Some((expression, after)) = inside.split_once('}') else {
                let found = phrase!("open-brace", "a {open} that is never closed", open = "{");
                self.faults.push(Fault::new(self.chars_to(byte(open)), found, both_braces()).saying(phrase!(
                    "close-brace",
                    "This {open} is never closed: a {close} is missing.",
                    open = "{",
                    close = "}"
                )));
                return;
            };
            self.value(expression, byte(open) + 1, same);
            rest = after;
        }
        if let Some(at) = rest.find('}') {
            let found = phrase!("closing-brace", "a closing brace");
            self.fault(byte(text.len() - rest.len() + at), found, both_braces());
        }
        self.words(rest, byte(text.len() - rest.len()));
    }

    fn words(&mut self, words: &str, byte: usize) {
        if let Some(typed) = typed_number(words) {
            let at = byte + typed.start;
            let found = words.get(typed).unwrap_or_default();
            let accepted = phrase!(
                "computed-number",
                "a number with a unit that is computed, as {open}an expression{close}",
                open = "{",
                close = "}"
            );
            self.fault(at, quoted(found), accepted);
        }
        if !words.is_empty() {
            self.push(Part::Text(words.to_owned()));
        }
    }

    fn value(&mut self, written: &str, byte: usize, exact: bool) {
        let (expression, decimals) = match written.rsplit_once(':') {
            Some((expression, digits)) => match digits.trim().parse::<u8>() {
                Ok(decimals) if decimals <= 6 => (expression, Some(decimals)),
                _ => {
                    let found = phrase!("after-colon", "{what} after a colon", what = quoted(digits));
                    return self.fault(byte, found, phrase!("some-decimals", "a number of decimals, 0 to 6"));
                }
            },
            None => (written, None),
        };
        match parse(expression, self.names) {
            Ok(expr) if matches!(expr.of, Type::Number(_)) => self.push(Part::Value(expr, decimals)),
            Ok(_) => self.fault(
                byte,
                phrase!("a-comparison", "a comparison"),
                phrase!("number-expression", "an expression that is a number"),
            ),
            Err(fault) => {
                let at = self.chars_to(byte);
                self.faults.push(Fault { at: if exact { at + fault.at } else { at }, ..fault });
            }
        }
    }
}

fn html() -> Phrase {
    "HTML".into()
}

fn both_braces() -> Phrase {
    phrase!("both-braces", "{open}an expression{close} with both braces", open = "{", close = "}")
}

fn allowed() -> Phrase {
    phrase!(
        "prose-of",
        "paragraphs, lists, *stress*, **weight**, [[trade words]] and {open}values{close}",
        open = "{",
        close = "}"
    )
}

fn words(event: &Event<'_>) -> Phrase {
    match event {
        Event::Html(_) | Event::InlineHtml(_) | Event::Start(Tag::HtmlBlock) | Event::End(TagEnd::HtmlBlock) => html(),
        Event::Start(Tag::Link { .. }) => phrase!("md-link", "a link"),
        Event::Start(Tag::Image { .. }) | Event::End(TagEnd::Image) => phrase!("md-picture", "a picture"),
        Event::Start(Tag::Heading { .. }) | Event::End(TagEnd::Heading(_)) => phrase!("md-heading", "a heading"),
        Event::Start(Tag::List(_)) => phrase!("md-list", "a list within a list"),
        Event::Code(_) | Event::Start(Tag::CodeBlock(_)) | Event::End(TagEnd::CodeBlock) => phrase!("md-code", "code"),
        Event::Start(Tag::BlockQuote(_)) | Event::End(TagEnd::BlockQuote(_)) => phrase!("md-quotation", "a quotation"),
        Event::Rule => phrase!("md-rule", "a rule"),
        _ => phrase!("md-other", "something else"),
    }
}
