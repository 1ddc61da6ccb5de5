//! The text of a lesson as a tree of values, and where each of them stands.

use std::collections::BTreeMap;
use std::ops::Range;

use pulldown_cmark::{CodeBlockKind, Event, HeadingLevel, MetadataBlockKind, Options, Parser, Tag, TagEnd};
use serde::Serialize;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::not_toml::{line_of, not_toml};
use super::read::count_of_steps;
use super::{MAX_LESSON_BYTES, MAX_STEPS};
use crate::node::Step;
use crate::problem::Problem;
use crate::tree::{Tree, quote};
use crate::{Phrase, phrase};

/// A mistake in a lesson, with its line and column in the file.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct LessonProblem {
    /// Line, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
    /// What is wrong.
    #[serde(flatten)]
    pub problem: Problem,
}

/// Where every value of a lesson stands in its text.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Places {
    text: String,
    spans: BTreeMap<String, Range<usize>>,
}

impl Places {
    /// Puts a problem at its line: `within` characters into the value it is about.
    pub fn locate(&self, problem: Problem, within: usize) -> LessonProblem {
        let start = self.start(&problem.place, within);
        let before = self.text.get(..start).unwrap_or_default();
        let line = before.matches('\n').count() + 1;
        let column = before.rsplit('\n').next().unwrap_or_default().chars().count() + 1;
        LessonProblem { line, column, problem }
    }

    /// Position in the text of a character of a value; that of the nearest
    /// thing around it where the value is not there.
    fn start(&self, place: &str, within: usize) -> usize {
        if let Some(span) = self.spans.get(place) {
            let written = self.text.get(span.clone()).unwrap_or_default();
            // The marks round a TOML string are not part of it; other than by
            // them it stands as it is written, unless something is escaped.
            let marks = ["\"\"\"\n", "'''\n", "\"\"\"", "'''", "\"", "'"];
            let open = marks.iter().find(|mark| written.starts_with(**mark)).map_or(0, |mark| mark.len());
            let escaped = written.starts_with('"') && written.contains('\\');
            let inner = written.get(open..).unwrap_or_default();
            let skip = if escaped { 0 } else { inner.chars().take(within).map(char::len_utf8).sum() };
            return span.start + open + skip;
        }
        let parent = place.rfind(['.', '[']).and_then(|end| place.get(..end));
        parent.map_or(0, |parent| self.start(parent, 0))
    }
}

/// A lesson in its parts, and where everything stands in its text.
pub(super) struct Source {
    /// None where it is not TOML.
    pub(super) head: Option<Tree>,
    /// With heading and prose; none where the block is not TOML.
    pub(super) steps: Vec<Option<Tree>>,
    pub(super) places: Places,
    /// What is wrong with the parts that are none.
    pub(super) problems: Vec<LessonProblem>,
}

/// Splits a lesson into its head and steps.
pub(super) fn parse(text: &str) -> Result<Source, LessonProblem> {
    let mut places = Places { text: text.to_owned(), spans: BTreeMap::new() };
    if text.len() > MAX_LESSON_BYTES {
        let problem = Problem::new(
            "",
            phrase!("so-many-bytes", "{count} bytes", count = text.len()),
            phrase!("at-most-bytes", "at most {most} bytes", most = MAX_LESSON_BYTES),
        );
        return Err(places.locate(problem, 0));
    }
    let outline = Outline::of(text).map_err(|(at, problem)| places.at(at, problem))?;
    if outline.steps.len() > MAX_STEPS {
        return Err(places.locate(count_of_steps(outline.steps.len()), 0));
    }
    let mut problems = Vec::new();
    let head = places.table(text, outline.head, "").map_err(|problem| problems.push(problem)).ok();
    if let Some(span) = places.spans.get("steps") {
        let problem = Problem::new(
            "steps",
            phrase!("steps-in-head", "a key {key} in the head", key = "\"steps\""),
            phrase!("steps-below-headings", "steps below headings"),
        );
        return Err(places.at(span.start, problem));
    }
    let mut steps = Vec::new();
    for (n, part) in outline.steps.into_iter().enumerate() {
        let place = format!("steps[{n}]");
        places.spans.insert(place.clone(), part.block.clone());
        let table = places.table(text, part.block, &place);
        let Some(mut step) = table.map_err(|problem| problems.push(problem)).ok() else {
            steps.push(None);
            continue;
        };
        for (key, range) in [("title", part.title), ("text", part.prose)] {
            let slice = text.get(range.clone()).unwrap_or_default();
            let (lead, value) = (slice.len() - slice.trim_start().len(), slice.trim());
            places.spans.insert(format!("{place}.{key}"), range.start + lead..range.start + lead + value.len());
            if step.insert(key.to_owned(), Tree::Text(value.to_owned())).is_some() {
                let problem = Problem::new(
                    format!("{place}.{key}"),
                    phrase!("key-in-block", "the key in the block"),
                    phrase!("heading-and-prose", "the heading and the prose"),
                );
                return Err(places.locate(problem, 0));
            }
        }
        steps.push(Some(Tree::Object(step)));
    }
    Ok(Source { head: head.map(Tree::Object), steps, places, problems })
}

/// What stands where in the Markdown.
struct Outline {
    head: Range<usize>,
    steps: Vec<Part>,
}

struct Part {
    title: Range<usize>,
    block: Range<usize>,
    prose: Range<usize>,
}

impl Outline {
    fn of(text: &str) -> Result<Self, (usize, Problem)> {
        let mut head = None;
        let mut steps: Vec<Part> = Vec::new();
        // Of the heading that waits for its block.
        let mut waiting: Option<Range<usize>> = None;
        let mut events = Parser::new_ext(text, Options::ENABLE_PLUSES_DELIMITED_METADATA_BLOCKS).into_offset_iter();
        let mut depth = 0usize;
        while let Some((event, range)) = events.next() {
            match event {
                Event::Start(Tag::MetadataBlock(MetadataBlockKind::PlusesStyle))
                    if head.is_none() && range.start == 0 =>
                {
                    head = Some(inner(&mut events, &range));
                }
                Event::Start(Tag::Heading { level: HeadingLevel::H2, .. }) if depth == 0 => {
                    if let Some(title) = waiting.take() {
                        return Err((title.start, no_block()));
                    }
                    if let Some(last) = steps.last_mut() {
                        last.prose.end = range.start;
                    }
                    waiting = Some(inner(&mut events, &range));
                }
                Event::Start(Tag::CodeBlock(CodeBlockKind::Fenced(ref name)))
                    if depth == 0 && name.as_ref() == "step" =>
                {
                    let block = inner(&mut events, &range);
                    let Some(title) = waiting.take() else {
                        let problem = Problem::new(
                            "steps",
                            phrase!("lone-block", "a step block by itself"),
                            phrase!("one-block-each", "one step block right below each heading"),
                        );
                        return Err((range.start, problem));
                    };
                    steps.push(Part { title, block, prose: range.end..text.len() });
                }
                _ if waiting.is_some() => return Err((range.start, no_block())),
                Event::Start(_) if head.is_none() => break,
                Event::Start(_) if steps.is_empty() => {
                    let problem = Problem::new(
                        "steps",
                        phrase!("text-before", "text before the first heading"),
                        phrase!("heading-each", "a heading (##) for each step"),
                    );
                    return Err((range.start, problem));
                }
                Event::Start(_) => depth += 1,
                Event::End(_) => depth = depth.saturating_sub(1),
                _ => {}
            }
        }
        if let Some(title) = waiting {
            return Err((title.start, no_block()));
        }
        let head = head.ok_or_else(|| {
            let problem = Problem::new(
                "",
                phrase!("no-head", "no head"),
                phrase!("toml-head", "a head of TOML between two lines of +++"),
            )
            .saying(phrase!("lesson-begins", "A lesson begins with a head of TOML between two lines of +++."));
            (0, problem)
        })?;
        Ok(Self { head, steps })
    }
}

fn no_block() -> Problem {
    Problem::new(
        "steps",
        phrase!("heading-without", "a heading without it"),
        phrase!("block-each", "a step block (```step) right below each heading"),
    )
}

/// Reads on to the end of what `whole` began and says where its text stands.
fn inner<'a>(events: &mut impl Iterator<Item = (Event<'a>, Range<usize>)>, whole: &Range<usize>) -> Range<usize> {
    let mut found: Option<Range<usize>> = None;
    for (event, range) in events {
        match event {
            Event::End(TagEnd::MetadataBlock(_) | TagEnd::CodeBlock | TagEnd::Heading(_)) => break,
            _ => found = Some(found.map_or(range.clone(), |before| before.start..range.end.max(before.end))),
        }
    }
    found.unwrap_or(whole.end..whole.end)
}

impl Places {
    fn at(&self, start: usize, problem: Problem) -> LessonProblem {
        let mut places = self.clone();
        places.spans.insert(problem.place.clone(), start..start);
        places.locate(problem, 0)
    }

    /// Reads a stretch of TOML and notes where its values stand.
    fn table(&mut self, text: &str, range: Range<usize>, place: &str) -> Result<BTreeMap<String, Tree>, LessonProblem> {
        let base = range.start;
        let part = text.get(range).unwrap_or_default();
        let (table, errors) = DeTable::parse_recoverable(part);
        if let Some(first) = errors.first() {
            let at = base + first.span().map_or(0, |span| span.start);
            return Err(
                self.at(at, Problem::new(place, line_of(text, at), "TOML".into()).saying(not_toml(text, at, &errors)))
            );
        }
        self.entries(table.get_ref(), base, place)
    }

    fn entries(
        &mut self,
        table: &DeTable<'_>,
        base: usize,
        place: &str,
    ) -> Result<BTreeMap<String, Tree>, LessonProblem> {
        let mut object = BTreeMap::new();
        for (key, value) in table {
            let key = key.get_ref().to_string();
            let inner = Step { parent: place, key: &key }.to_string();
            let value = self.value(value, base, inner)?;
            object.insert(key, value);
        }
        Ok(object)
    }

    fn value(&mut self, value: &Spanned<DeValue<'_>>, base: usize, place: String) -> Result<Tree, LessonProblem> {
        let span = value.span();
        let start = base + span.start;
        self.spans.insert(place.clone(), start..base + span.end);
        let number = |text: &str| text.replace('_', "").parse::<f64>().ok().filter(|number| number.is_finite());
        let refused = |found: Phrase| {
            let accepted = phrase!("toml-value", "a text, a finite decimal number, true, false, a list or a table");
            Problem::new(&place, found, accepted)
        };
        Ok(match value.get_ref() {
            DeValue::String(text) => Tree::Text(text.to_string()),
            DeValue::Boolean(flag) => Tree::Flag(*flag),
            DeValue::Integer(whole) if whole.radix() == 10 => match number(whole.as_str()) {
                Some(number) => Tree::Number(number),
                None => return Err(self.at(start, refused(whole.as_str().into()))),
            },
            DeValue::Float(float) => match number(float.as_str()) {
                Some(number) => Tree::Number(number),
                None => return Err(self.at(start, refused(float.as_str().into()))),
            },
            DeValue::Array(items) => {
                let items = items.iter().enumerate();
                Tree::List(
                    items.map(|(n, item)| self.value(item, base, format!("{place}[{n}]"))).collect::<Result<_, _>>()?,
                )
            }
            DeValue::Table(table) => Tree::Object(self.entries(table, base, &place)?),
            // A number with another base, a date or a time.
            _ => {
                let written = self.text.get(start..base + span.end).unwrap_or_default();
                return Err(self.at(start, refused(quote(written).into())));
            }
        })
    }
}
