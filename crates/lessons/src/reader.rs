//! From a lesson's file to its expressions, prose and states: every mistake with
//! its line.

use std::collections::BTreeMap;

use format::lesson::{Answer, Change, Kind, LessonFile, Located, Places, Step};
use format::{Phrase, Problem, phrase};

use crate::bench::{Bench, Files};
use crate::expr::{Expr, ExprKind, Fault, Names, Type, parse, quoted};
use crate::glossary;
use crate::lesson::{Choosable, Stage, Task, in_change};
use crate::path::Path;
use crate::prose::{Line, Prose};
use crate::quantity::Quantity;
use crate::typed::typed_number;

/// Reads the parts of a lesson.
pub(crate) struct Reader<'a> {
    names: Names,
    pub(crate) located: Located<'a>,
}

impl<'a> Reader<'a> {
    pub(crate) fn new(places: &'a Places) -> Self {
        Self { names: Names::default(), located: Located::new(places) }
    }

    fn add(&mut self, place: &str, fault: Fault) {
        let Fault { at, found, accepted, message } = fault;
        self.problem(Problem { place: place.to_owned(), found, accepted, message }, at);
    }

    /// A fault of a whole value.
    fn refuse(&mut self, place: &str, found: Phrase, accepted: Phrase) {
        self.add(place, Fault::new(0, found, accepted));
    }

    fn problem(&mut self, problem: Problem, at: usize) {
        self.located.add(problem, at);
    }

    pub(crate) fn start(&mut self, change: &Change, files: &dyn Files) -> Option<Bench> {
        Bench::begun(change, files).map_err(|problem| self.problem(in_change("start", problem), 0)).ok()
    }

    pub(crate) fn states(
        &mut self,
        file: &LessonFile,
        start: Option<&Bench>,
        files: &dyn Files,
    ) -> BTreeMap<String, Bench> {
        let mut states = BTreeMap::new();
        for (name, change) in &file.states {
            let place = format!("states.{name}");
            self.name(name, &place);
            match start.map(|start| start.changed(change, files)) {
                Some(Ok(state)) => drop(states.insert(name.clone(), state)),
                Some(Err(problem)) => self.problem(in_change(&place, problem), 0),
                None => {}
            }
        }
        self.names.states = file.states.keys().cloned().collect();
        states
    }

    /// A name that expressions can tell from every other.
    fn name(&mut self, name: &str, place: &str) {
        const TAKEN: [&str; 10] = ["start", "ball", "shot", "and", "or", "not", "abs", "min", "max", "power"];
        let plain = name.starts_with(|c: char| c.is_ascii_lowercase())
            && name.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '_');
        let taken = TAKEN.contains(&name)
            || crate::figure::Figure::named(name).is_some()
            || Quantity::of_unit(name).is_some()
            || LOCALS.iter().any(|(local, _)| *local == name)
            || name == "guess";
        if !plain || taken {
            let accepted = phrase!("new-name", "a name of lower-case letters, digits and _ that means nothing else");
            self.refuse(place, quoted(name), accepted);
        }
    }

    pub(crate) fn given(&mut self, given: &BTreeMap<String, String>) -> BTreeMap<String, Expr> {
        let mut read = BTreeMap::new();
        for (name, text) in given {
            let place = format!("given.{name}");
            self.name(name, &place);
            // It knows the states, but no other given number: they have no order.
            if let Some(expr) = self.number(text, &place) {
                read.insert(name.clone(), expr);
            }
        }
        self.names.given = read.iter().map(|(name, expr)| (name.clone(), expr.of)).collect();
        read
    }

    pub(crate) fn words(&mut self, file: &LessonFile) {
        for (n, word) in file.words.iter().enumerate() {
            if !glossary::knows(word) {
                self.refuse(&format!("words[{n}]"), quoted(word), glossary::word());
            }
        }
        let titles = file.steps.iter().enumerate().map(|(n, step)| (format!("steps[{n}].title"), &step.title));
        let head = [("title".to_owned(), &file.title), ("course".to_owned(), &file.course)];
        for (place, title) in head.into_iter().chain(titles) {
            if let Some(typed) = typed_number(title) {
                let found = quoted(title.get(typed).unwrap_or_default());
                self.refuse(&place, found, phrase!("plain-title", "a title without numbers with a unit"));
            }
        }
    }

    pub(crate) fn prose(&mut self, text: &str, place: &str) -> Prose {
        Prose::parse(text, &self.names).unwrap_or_else(|faults| {
            faults.into_iter().for_each(|fault| self.add(place, fault));
            Prose::default()
        })
    }

    fn line(&mut self, text: &str, place: String) -> Line {
        Line::parse(text, &self.names).unwrap_or_else(|faults| {
            faults.into_iter().for_each(|fault| self.add(&place, fault));
            Line::default()
        })
    }

    fn number(&mut self, text: &str, place: &str) -> Option<Expr> {
        self.expression(text, place, phrase!("a-number", "a number"), |of| matches!(of, Type::Number(_)))
    }

    fn truth(&mut self, text: &str, place: &str) -> Expr {
        let accepted = phrase!("truth", "a comparison, which is true or false");
        self.expression(text, place, accepted, |of| of == Type::Truth).unwrap_or(NOTHING)
    }

    fn expression(&mut self, text: &str, place: &str, accepted: Phrase, fits: fn(Type) -> bool) -> Option<Expr> {
        match parse(text, &self.names) {
            Ok(expr) if fits(expr.of) => return Some(expr),
            Ok(_) => self.refuse(place, quoted(text), accepted),
            Err(fault) => self.add(place, fault),
        }
        None
    }

    pub(crate) fn stage(&mut self, step: &Step, place: &str) -> Stage {
        let text = self.prose(&step.text, &format!("{place}.text"));
        let watch = step.watch.iter().enumerate();
        let watch = watch.filter_map(|(n, watch)| {
            let inner = format!("{place}.watch[{n}]");
            let inner = if watch.name().is_some() { format!("{inner}.value") } else { inner };
            Some((watch.name().map(str::to_owned), self.number(watch.value(), &inner)?))
        });
        let watch = watch.collect();
        let free = step.free.as_ref().map(|list| self.free(list, place));
        if step.rooms.as_ref().is_some_and(Vec::is_empty) {
            let accepted = phrase!(
                "one-room",
                "one room at least, or no key {key} for those of the step before",
                key = "\"rooms\""
            );
            self.refuse(&format!("{place}.rooms"), phrase!("none", "none"), accepted);
        }
        // To predict is to leave things as they are.
        let free = if matches!(step.kind, Kind::Predict(_)) { Some(free.unwrap_or_default()) } else { free };
        let task = match &step.kind {
            Kind::Explore | Kind::Observe | Kind::Explain => Task::Look,
            Kind::Predict(predict) => self.question(&predict.answer, place),
            Kind::Do(deed) => Task::Reach {
                check: (deed.check.iter().enumerate())
                    .map(|(n, check)| {
                        let inner = format!("{place}.check[{n}]");
                        let say = check.say.as_ref().map(|say| self.line(say, format!("{inner}.say")));
                        (self.truth(&check.want, &format!("{inner}.want")), say)
                    })
                    .collect(),
                wrong: (deed.wrong.iter().enumerate())
                    .map(|(n, wrong)| {
                        let inner = format!("{place}.wrong[{n}]");
                        (
                            self.truth(&wrong.when, &format!("{inner}.when")),
                            self.line(&wrong.say, format!("{inner}.say")),
                        )
                    })
                    .collect(),
                hints: [0, 1, 2].map(|n| self.line(&deed.hints[n], format!("{place}.hints[{n}]"))),
                hinted: self.hinted(&deed.hinted, &format!("{place}.hinted")),
                done: self.line(&deed.done, format!("{place}.done")),
            },
        };
        Stage { text, watch, free, task }
    }

    fn hinted(&mut self, table: &BTreeMap<String, String>, place: &str) -> Vec<(Path, Expr)> {
        let mut read = Vec::new();
        for (key, text) in table {
            let Some(path) = Path::parse(key) else {
                self.refuse(place, quoted(key), place_such_as("ball.pieces[1].density_g_cc"));
                continue;
            };
            let Some(expr) = self.number(text, &format!("{place}.{key}")) else { continue };
            if let Type::Number(of) = expr.of
                && !Quantity::of_key(path.key()).goes_with(of)
            {
                let accepted = Quantity::of_key(path.key()).number_said();
                self.refuse(&format!("{place}.{key}"), of.unit_said(), accepted);
            }
            read.push((path, expr));
        }
        read
    }

    fn free(&mut self, list: &[String], place: &str) -> Vec<Path> {
        let mut paths = Vec::new();
        for (n, text) in list.iter().enumerate() {
            match Path::parse(text) {
                Some(path) => paths.push(path),
                None => {
                    self.refuse(&format!("{place}.free[{n}]"), quoted(text), place_such_as("ball.pieces[1]"));
                }
            }
        }
        paths
    }

    fn question(&mut self, answer: &Answer, place: &str) -> Task {
        let task = match answer {
            Answer::Option(options) => {
                let read = options.iter().enumerate().map(|(n, option)| {
                    let inner = format!("{place}.option[{n}]");
                    Choosable {
                        text: self.line(&option.text, format!("{inner}.text")),
                        right: self.truth(&option.right, &format!("{inner}.right")),
                        say: self.line(&option.say, format!("{inner}.say")),
                    }
                });
                Task::Choose(read.collect())
            }
            Answer::Number(number) => {
                let inner = format!("{place}.number");
                let value = self.number(&number.value, &format!("{inner}.value")).unwrap_or(NOTHING);
                let within = self.number(&number.within, &format!("{inner}.within")).unwrap_or(NOTHING);
                if let (Type::Number(one), Type::Number(other)) = (value.of, within.of) {
                    if !one.goes_with(other) {
                        self.refuse(&format!("{inner}.within"), other.unit_said(), one.number_said());
                    }
                    self.names.locals = BTreeMap::from([("guess", one)]);
                }
                Task::Number {
                    value,
                    within,
                    right: self.line(&number.right, format!("{inner}.right")),
                    low: self.line(&number.low, format!("{inner}.low")),
                    high: self.line(&number.high, format!("{inner}.high")),
                }
            }
            Answer::Path(path) => {
                let inner = format!("{place}.path");
                let place = format!("{inner}.within");
                let within = self.number(&path.within, &place);
                if within.as_ref().is_some_and(|within| within.of != Type::Number(Quantity::Board)) {
                    self.refuse(&place, quoted(&path.within), Quantity::Board.number_said());
                }
                let within = within.unwrap_or(NOTHING);
                self.names.locals = BTreeMap::from(LOCALS);
                Task::Draw {
                    within,
                    right: self.line(&path.right, format!("{inner}.right")),
                    wrong: self.line(&path.wrong, format!("{inner}.wrong")),
                    no_turn: path.no_turn.as_ref().map(|line| self.line(line, format!("{inner}.no_turn"))),
                }
            }
        };
        self.names.locals.clear();
        task
    }
}

/// What a place of the ball or the shot looks like.
fn place_such_as(other: &str) -> Phrase {
    phrase!("place-such-as", "a place such as {one} or {other}", one = "shot.release.revs_rpm", other = other)
}

/// Stands where an expression could not be read.
const NOTHING: Expr = Expr { kind: ExprKind::Number(0.0, 0), of: Type::Number(Quantity::Count) };

/// What a drawn path is asked for.
const LOCALS: [(&str, Quantity); 5] = [
    ("miss_board", Quantity::Board),
    ("miss_ft", Quantity::Distance),
    ("guess_board_at_pins", Quantity::Board),
    ("guess_breakpoint_board", Quantity::Board),
    ("guess_breakpoint_ft", Quantity::Distance),
];
