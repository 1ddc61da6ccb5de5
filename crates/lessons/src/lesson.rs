//! A lesson whose every expression makes sense and whose every state can be
//! built.

use std::collections::BTreeMap;

use format::lesson::{Answer, Change, Kind, LessonFile, LessonProblem, Places, ReadLesson, Step};
use format::{Problem, phrase};

use crate::bench::{Bench, Files};
use crate::expr::{Expr, Fault, Names, OPEN_BRACE, OPEN_QUOTE, Scene, Type, parse};
use crate::glossary;
use crate::path::Path;
use crate::prose::{Line, Prose};
use crate::quantity::Quantity;
use crate::typed::typed_number;

/// A lesson, ready to be worked through.
pub struct Lesson {
    pub(crate) file: LessonFile,
    pub(crate) places: Places,
    pub(crate) files: Box<dyn Files>,
    pub(crate) start: Bench,
    pub(crate) states: BTreeMap<String, Bench>,
    pub(crate) given: BTreeMap<String, Expr>,
    pub(crate) aim: Prose,
    pub(crate) teacher: Prose,
    pub(crate) stages: Vec<Stage>,
}

/// A step with its texts and expressions read.
pub(crate) struct Stage {
    pub(crate) text: Prose,
    /// With its name, where it has one of its own.
    pub(crate) watch: Vec<(Option<String>, Expr)>,
    /// None: everything.
    pub(crate) free: Option<Vec<Path>>,
    pub(crate) task: Task,
}

pub(crate) enum Task {
    Look,
    Choose(Vec<Choosable>),
    Number {
        value: Expr,
        within: Expr,
        right: Line,
        low: Line,
        high: Line,
    },
    Draw {
        within: Expr,
        right: Line,
        wrong: Line,
        no_turn: Option<Line>,
    },
    Reach {
        check: Vec<(Expr, Option<Line>)>,
        wrong: Vec<(Expr, Line)>,
        hints: [Line; 3],
        /// What the last hint says to set, place by place.
        hinted: Vec<(Path, Expr)>,
        done: Line,
    },
}

pub(crate) struct Choosable {
    pub(crate) text: Line,
    pub(crate) right: Expr,
    pub(crate) say: Line,
}

/// Most problems that are told of one lesson.
const MAX_PROBLEMS: usize = 50;

impl Lesson {
    /// Reads a lesson and everything that it names.
    ///
    /// # Errors
    /// Every mistake in it, each with its line; one alone where its form is wrong.
    pub fn read(text: &str, files: Box<dyn Files>) -> Result<Self, Vec<LessonProblem>> {
        let ReadLesson { file, places } = ReadLesson::read(text).map_err(|problem| vec![problem])?;
        let mut reader = Reader { places: &places, names: Names::default(), problems: Vec::new() };
        let start = match Bench::begun(&file.start, files.as_ref()) {
            Ok(start) => start,
            Err(problem) => return Err(vec![places.locate(in_change("start", problem), 0)]),
        };
        let states = reader.states(&file, &start, files.as_ref());
        let given = reader.given(&file.given);
        reader.words(&file);
        let aim = reader.prose(&file.aim, "aim");
        let teacher = reader.prose(&file.teacher, "teacher");
        let stages =
            file.steps.iter().enumerate().map(|(n, step)| reader.stage(step, &format!("steps[{n}]"))).collect();
        let mut problems = reader.problems;
        if problems.is_empty() {
            return Ok(Self { file, places, files, start, states, given, aim, teacher, stages });
        }
        problems.sort_by_key(|problem| (problem.line, problem.column));
        problems.truncate(MAX_PROBLEMS);
        Err(problems)
    }

    /// The lesson as its file has it.
    pub fn file(&self) -> &LessonFile {
        &self.file
    }

    /// What stands on the bench as a step opens; `left` is what the step before
    /// left there, for the first step nothing.
    ///
    /// # Errors
    /// A step that is not there; a change that does not fit.
    pub fn opens(&self, step: usize, left: Option<Bench>) -> Result<Bench, Problem> {
        match (&self.step(step)?.start, left) {
            (Some(change), _) => self.start.changed(change, self.files.as_ref()),
            (None, Some(left)) => Ok(left),
            (None, None) => Bench::new(self.start.doc().clone()),
        }
    }

    /// What stands on the bench as a step ends that went as the lesson has it.
    ///
    /// # Errors
    /// A change that does not fit what stands there.
    pub fn ends(&self, step: usize, start: &Bench) -> Result<Bench, Problem> {
        let change = match &self.step(step)?.kind {
            Kind::Do(deed) => Some(&deed.solution),
            Kind::Predict(predict) => predict.then.as_ref(),
            Kind::Explore | Kind::Observe | Kind::Explain => None,
        };
        start.changed(change.unwrap_or(&Change::default()), self.files.as_ref())
    }

    pub(crate) fn step(&self, step: usize) -> Result<&Step, Problem> {
        self.file.steps.get(step).ok_or_else(|| {
            let last = self.file.steps.len().saturating_sub(1);
            Problem::new("step", step.into(), phrase!("step-from-0", "a step from 0 to {last}", last = last))
                .saying(phrase!("no-step", "The lesson has no step {step}.", step = step))
        })
    }

    pub(crate) fn scene<'a>(
        &'a self,
        start: &'a Bench,
        now: &'a Bench,
        locals: &'a BTreeMap<&'static str, f64>,
    ) -> Scene<'a> {
        Scene { now, start, states: &self.states, given: &self.given, first: &self.start, locals }
    }
}

/// A problem in what comes of a change, at the change itself.
pub(crate) fn in_change(place: &str, problem: Problem) -> Problem {
    Problem {
        place: place.to_owned(),
        message: phrase!("at-place", "{message} ({place})", message = problem.message, place = problem.place),
        ..problem
    }
}

struct Reader<'a> {
    places: &'a Places,
    names: Names,
    problems: Vec<LessonProblem>,
}

impl Reader<'_> {
    fn add(&mut self, place: &str, fault: Fault) {
        let Fault { at, found, accepted } = fault;
        let message = match found.as_str() {
            OPEN_BRACE => "This { is never closed: a } is missing.".to_owned(),
            OPEN_QUOTE => "This quotation mark is never closed: a second one is missing.".to_owned(),
            _ => format!("Here must be {accepted}, not {found}."),
        };
        self.problem(
            Problem {
                place: place.to_owned(),
                found: found.into(),
                accepted: accepted.into(),
                message: message.into(),
            },
            at,
        );
    }

    fn problem(&mut self, problem: Problem, at: usize) {
        self.problems.push(self.places.locate(problem, at));
    }

    fn states(&mut self, file: &LessonFile, start: &Bench, files: &dyn Files) -> BTreeMap<String, Bench> {
        let mut states = BTreeMap::new();
        for (name, change) in &file.states {
            let place = format!("states.{name}");
            self.name(name, &place);
            match start.changed(change, files) {
                Ok(state) => drop(states.insert(name.clone(), state)),
                Err(problem) => self.problem(in_change(&place, problem), 0),
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
            let accepted = "a name of lower-case letters, digits and _ that means nothing else".to_owned();
            self.add(place, Fault { at: 0, found: format!("{name:?}"), accepted });
        }
    }

    fn given(&mut self, given: &BTreeMap<String, String>) -> BTreeMap<String, Expr> {
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

    fn words(&mut self, file: &LessonFile) {
        for (n, word) in file.words.iter().enumerate() {
            if !glossary::knows(word) {
                let fault = Fault { at: 0, found: format!("{word:?}"), accepted: "a word of the glossary".to_owned() };
                self.add(&format!("words[{n}]"), fault);
            }
        }
        let titles = file.steps.iter().enumerate().map(|(n, step)| (format!("steps[{n}].title"), &step.title));
        let head = [("title".to_owned(), &file.title), ("course".to_owned(), &file.course)];
        for (place, title) in head.into_iter().chain(titles) {
            if let Some(typed) = typed_number(title) {
                let found = format!("{:?}", title.get(typed).unwrap_or_default());
                self.add(&place, Fault { at: 0, found, accepted: "a title without numbers with a unit".to_owned() });
            }
        }
    }

    fn prose(&mut self, text: &str, place: &str) -> Prose {
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
        self.expression(text, place, "a number", |of| matches!(of, Type::Number(_)))
    }

    fn truth(&mut self, text: &str, place: &str) -> Expr {
        let read = self.expression(text, place, "a comparison, which is true or false", |of| of == Type::Truth);
        read.unwrap_or(NOTHING)
    }

    fn expression(&mut self, text: &str, place: &str, accepted: &str, fits: fn(Type) -> bool) -> Option<Expr> {
        match parse(text, &self.names) {
            Ok(expr) if fits(expr.of) => return Some(expr),
            Ok(_) => self.add(place, Fault { at: 0, found: format!("{text:?}"), accepted: accepted.to_owned() }),
            Err(fault) => self.add(place, fault),
        }
        None
    }

    fn stage(&mut self, step: &Step, place: &str) -> Stage {
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
            let accepted = "one room at least, or no key \"rooms\" for those of the step before".to_owned();
            self.add(&format!("{place}.rooms"), Fault { at: 0, found: "none".to_owned(), accepted });
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
                let accepted = "a place such as shot.release.revs_rpm or ball.pieces[1].density_g_cc".to_owned();
                self.add(place, Fault { at: 0, found: format!("{key:?}"), accepted });
                continue;
            };
            let Some(expr) = self.number(text, &format!("{place}.{key}")) else { continue };
            if let Type::Number(of) = expr.of
                && !Quantity::of_key(path.key()).goes_with(of)
            {
                let accepted = format!("a number of {}", Quantity::of_key(path.key()).unit());
                self.add(&format!("{place}.{key}"), Fault { at: 0, found: of.unit().to_owned(), accepted });
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
                    let accepted = "a place such as shot.release.revs_rpm or ball.pieces[1]".to_owned();
                    let fault = Fault { at: 0, found: format!("{text:?}"), accepted };
                    self.add(&format!("{place}.free[{n}]"), fault);
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
                        let (found, accepted) = (other.unit().to_owned(), format!("a number of {}", one.unit()));
                        self.add(&format!("{inner}.within"), Fault { at: 0, found, accepted });
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
                let within = self.number(&path.within, &format!("{inner}.within")).unwrap_or(NOTHING);
                if within.of != Type::Number(Quantity::Board) {
                    let (found, accepted) = (format!("{:?}", path.within), "a number of boards".to_owned());
                    self.add(&format!("{inner}.within"), Fault { at: 0, found, accepted });
                }
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

/// Stands where an expression could not be read.
const NOTHING: Expr = Expr { kind: crate::expr::ExprKind::Number(0.0, 0), of: Type::Number(Quantity::Count) };

/// What a drawn path is asked for.
const LOCALS: [(&str, Quantity); 5] = [
    ("miss_board", Quantity::Board),
    ("miss_ft", Quantity::Distance),
    ("guess_board_at_pins", Quantity::Board),
    ("guess_breakpoint_board", Quantity::Board),
    ("guess_breakpoint_ft", Quantity::Distance),
];
