//! A lesson whose every expression makes sense and whose every state can be
//! built.

use std::collections::BTreeMap;

use format::lesson::{Change, Kind, LessonFile, LessonProblem, Places, ReadLesson, Step};
use format::{Problem, phrase};

use crate::bench::{Bench, Files};
use crate::expr::{Expr, Scene};
use crate::path::Path;
use crate::prose::{Line, Prose};
use crate::reader::Reader;

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

impl Lesson {
    /// Reads a lesson and everything that it names.
    ///
    /// # Errors
    /// The mistakes in it, `MAX_MISTAKES` of them at most, each with its line; those of its form alone where there are any.
    pub fn read(text: &str, files: Box<dyn Files>) -> Result<Self, Vec<LessonProblem>> {
        let ReadLesson { file, places } = ReadLesson::read(text)?;
        let mut reader = Reader::new(&places);
        let start = reader.start(&file.start, files.as_ref());
        let states = reader.states(&file, start.as_ref(), files.as_ref());
        let given = reader.given(&file.given);
        reader.words(&file);
        let aim = reader.prose(&file.aim, "aim");
        let teacher = reader.prose(&file.teacher, "teacher");
        let stages =
            file.steps.iter().enumerate().map(|(n, step)| reader.stage(step, &format!("steps[{n}]"))).collect();
        let located = reader.located;
        if let Some(start) = start
            && located.is_empty()
        {
            return Ok(Self { file, places, files, start, states, given, aim, teacher, stages });
        }
        Err(located.in_order())
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
