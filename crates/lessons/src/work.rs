//! Working through a lesson: what is shown, whether a step is passed, what is
//! missing, and what is answered.

use std::collections::BTreeMap;

use format::lesson::{Kind, Room};
use format::{Phrase, Problem, phrase};
use physics::lane::PINS_M;
use physics::units::M_PER_FT;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::bench::{Bench, is_free};
use crate::expr::{Type, describe, no_number, sentence, unmet};
use crate::figure::path_board;
use crate::lesson::{Lesson, Task};
use crate::quantity::Quantity;
use crate::said::{Block, Said, text, value};

/// A lesson before it is worked through.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LessonDoc {
    /// What progress files call it.
    pub id: String,
    /// What it is called.
    pub title: String,
    /// The course it belongs to.
    pub course: String,
    /// Its place there.
    pub order: u32,
    /// What the learner can do afterwards.
    pub aim: Vec<Block>,
    /// About how long it takes.
    pub minutes: u32,
    /// The trade words it introduces.
    pub words: Vec<String>,
    /// What a teacher should know.
    pub teacher: Vec<Block>,
    /// Its steps, in order.
    pub steps: Vec<StepDoc>,
}

/// A step before it is worked through.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StepDoc {
    /// What progress files call it.
    pub id: String,
    /// Its heading.
    pub title: String,
    /// `explore`, `predict`, `do`, `observe` or `explain`.
    pub kind: &'static str,
    /// The rooms that are shown; all where it is null.
    pub rooms: Option<Vec<Room>>,
    /// The only places that may be changed, with what lies below each; null:
    /// everything.
    pub free: Option<Vec<String>>,
    /// What is asked; null where nothing is.
    pub asks: Option<AsksDoc>,
}

/// What kind of answer a question wants.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum AsksDoc {
    /// One of several.
    Option {
        /// How many there are.
        options: usize,
    },
    /// A number.
    Number {
        /// Of this kind.
        quantity: Quantity,
    },
    /// A path on the lane.
    Path,
}

/// A step with the numbers on the bench filled in.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ShownDoc {
    /// The prose.
    pub text: Vec<Block>,
    /// Numbers to set beside their first ones.
    pub watch: Vec<WatchedDoc>,
    /// What may be chosen, in order; empty where nothing is.
    pub options: Vec<Vec<Said>>,
    /// Three hints, or none where there is nothing to do; their numbers are those of the bench as the
    /// step opened, so that they stay the same while the learner changes it.
    pub hints: Vec<Vec<Said>>,
}

/// A number as it was when the step opened and as it is.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WatchedDoc {
    /// What it is.
    pub what: Vec<Said>,
    /// Then.
    pub start: Said,
    /// Now.
    pub now: Said,
}

/// Whether a step is passed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CheckedStepDoc {
    /// Whether everything holds and nothing fixed was changed.
    pub passed: bool,
    /// What is missing, a sentence each.
    pub missing: Vec<Vec<Said>>,
    /// What to say of the way taken; null where nothing fits.
    pub wrong: Option<Vec<Said>>,
    /// Places that were changed and may not be.
    pub fixed: Vec<String>,
    /// What to say once it is passed; null before.
    pub done: Option<Vec<Said>>,
}

/// A learner's answer.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Guess {
    /// The number of the option, from 0.
    Option(usize),
    /// In the trade's unit; a share as a part of 1.
    Number(f64),
    /// Points `[board, ft]` from the foul line down the lane.
    Path(Vec<[f64; 2]>),
}

/// What came of an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// Right.
    Right,
    /// Wrong.
    Wrong,
    /// A number that is too small.
    Low,
    /// A number that is too large.
    High,
}

/// An answer answered.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct AnsweredDoc {
    /// What came of it.
    pub outcome: Outcome,
    /// What to say.
    pub say: Vec<Said>,
    /// The right answer.
    pub truth: Truth,
    /// What stands on the bench afterwards.
    pub doc: Value,
}

/// The right answer to a question.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Truth {
    /// The number of the option.
    Option(Option<usize>),
    /// The number.
    Number(Said),
    /// Points `[board, ft]`, one a foot.
    Path(Vec<[f64; 2]>),
}

/// A step worked through as the lesson has it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WalkedDoc {
    /// The bench as it opens.
    pub start: Value,
    /// What it shows then.
    pub shown: ShownDoc,
    /// The bench as it ends.
    pub end: Value,
    /// The check at the end.
    pub checked: CheckedStepDoc,
}

/// Most points of a drawn path.
const MAX_POINTS: usize = 500;

impl Lesson {
    /// What the lesson is, its texts filled in for its start.
    pub fn about(&self) -> LessonDoc {
        let none = BTreeMap::new();
        let scene = self.scene(&self.start, &self.start, &none);
        let file = &self.file;
        let step = |(step, stage): (&format::lesson::Step, &crate::lesson::Stage)| StepDoc {
            id: step.id.clone(),
            title: step.title.clone(),
            kind: match step.kind {
                Kind::Explore => "explore",
                Kind::Predict(_) => "predict",
                Kind::Do(_) => "do",
                Kind::Observe => "observe",
                Kind::Explain => "explain",
            },
            rooms: step.rooms.clone(),
            free: stage.free.as_ref().map(|free| free.iter().map(ToString::to_string).collect()),
            asks: match &stage.task {
                Task::Look | Task::Reach { .. } => None,
                Task::Choose(options) => Some(AsksDoc::Option { options: options.len() }),
                Task::Number { value, .. } => match value.of {
                    Type::Number(quantity) => Some(AsksDoc::Number { quantity }),
                    Type::Truth => None,
                },
                Task::Draw { .. } => Some(AsksDoc::Path),
            },
        };
        LessonDoc {
            id: file.id.clone(),
            title: file.title.clone(),
            course: file.course.clone(),
            order: file.order,
            aim: self.aim.fill(&scene),
            minutes: file.minutes,
            words: file.words.clone(),
            teacher: self.teacher.fill(&scene),
            steps: file.steps.iter().zip(&self.stages).map(step).collect(),
        }
    }

    /// What a step shows.
    ///
    /// # Errors
    /// A step that is not there.
    pub fn shown(&self, step: usize, start: &Bench, now: &Bench) -> Result<ShownDoc, Problem> {
        let none = BTreeMap::new();
        let start = self.before(step, start)?;
        let scene = self.scene(start, now, &none);
        let before = self.scene(start, start, &none);
        let stage = self.stage(step)?;
        let (options, hints) = match &stage.task {
            Task::Choose(options) => (options.iter().map(|option| option.text.fill(&scene)).collect(), Vec::new()),
            Task::Reach { hints, .. } => (Vec::new(), hints.iter().map(|hint| hint.fill(&before)).collect()),
            Task::Look | Task::Number { .. } | Task::Draw { .. } => (Vec::new(), Vec::new()),
        };
        let watch = stage.watch.iter().map(|(name, expr)| WatchedDoc {
            what: named(name.as_deref(), describe(expr, &scene)),
            start: before.said(expr, None),
            now: scene.said(expr, None),
        });
        Ok(ShownDoc { text: stage.text.fill(&scene), watch: watch.collect(), options, hints })
    }

    /// Whether a step is passed, and what is missing. A step with nothing to do
    /// is passed as it is.
    ///
    /// # Errors
    /// A step that is not there.
    pub fn check(&self, step: usize, start: &Bench, now: &Bench) -> Result<CheckedStepDoc, Problem> {
        let none = BTreeMap::new();
        let scene = self.scene(start, now, &none);
        let stage = self.stage(step)?;
        let fixed = stage.free.as_ref().map(|free| {
            let changed = now.differences(start).into_iter();
            let fixed = changed.filter(|place| !is_free(place, free, start.doc()) && !is_free(place, free, now.doc()));
            fixed.map(|place| place.to_string()).collect::<Vec<_>>()
        });
        let fixed = fixed.unwrap_or_default();
        let Task::Reach { check, wrong, done, .. } = &stage.task else {
            return Ok(CheckedStepDoc {
                passed: true,
                missing: Vec::new(),
                wrong: None,
                fixed: Vec::new(),
                done: None,
            });
        };
        let mut missing = Vec::new();
        for (want, say) in check {
            let unmet = unmet(want, &scene);
            match say {
                Some(say) if !unmet.is_empty() => missing.push(say.fill(&scene)),
                _ => missing.extend(unmet),
            }
        }
        for place in &fixed {
            missing.push(vec![text(phrase!(
                "left-as-it-was",
                "This step leaves {place} as it was; put it back.",
                place = place
            ))]);
        }
        // What holds by itself was not done.
        if missing.is_empty() && now.differences(start).is_empty() {
            missing.push(vec![text(phrase!("holds-already", "This holds already, but you have changed nothing yet."))]);
        }
        let passed = missing.is_empty();
        let wrong = if passed { None } else { wrong.iter().find(|(when, _)| scene.truth(when) == Ok(true)) };
        Ok(CheckedStepDoc {
            passed,
            missing,
            wrong: wrong.map(|(_, say)| say.fill(&scene)),
            fixed,
            done: passed.then(|| done.fill(&scene)),
        })
    }

    /// Answers a prediction; `start` is what stood on the bench as it was made.
    ///
    /// # Errors
    /// A step that asks nothing, an answer of another kind, a number that is
    /// none, a ball that cannot be thrown.
    pub fn answer(&self, step: usize, start: &Bench, guess: &Guess) -> Result<AnsweredDoc, Problem> {
        let after = self.ends(step, start)?;
        let mut locals = BTreeMap::new();
        let (outcome, say, truth) = match (&self.stage(step)?.task, guess) {
            (Task::Choose(options), Guess::Option(chosen)) => {
                let scene = self.scene(start, &after, &locals);
                let option = options.get(*chosen).ok_or_else(|| refused((*chosen).into(), option_number()))?;
                let right = scene.truth(&option.right).map_err(unknown)?;
                let truth = options.iter().position(|option| scene.truth(&option.right) == Ok(true));
                let outcome = if right { Outcome::Right } else { Outcome::Wrong };
                (outcome, option.say.fill(&scene), Truth::Option(truth))
            }
            (Task::Number { value: wanted, within, right, low, high }, Guess::Number(number)) => {
                if !number.is_finite() {
                    return Err(refused((*number).into(), phrase!("number-finite", "a finite number")));
                }
                locals.insert("guess", *number);
                let scene = self.scene(start, &after, &locals);
                let is = scene.number(wanted).map_err(unknown)?;
                let room = scene.number(within).map_err(unknown)?;
                let (outcome, say) = match number - is {
                    // A share typed as 12.3 is not the very same number as 0.123.
                    off if off.abs() <= room * (1.0 + 1e-9) => (Outcome::Right, right),
                    off if off < 0.0 => (Outcome::Low, low),
                    _ => (Outcome::High, high),
                };
                let Type::Number(quantity) = wanted.of else { return Err(unknown(no_number())) };
                (outcome, say.fill(&scene), Truth::Number(value(is, quantity, None)))
            }
            (Task::Draw { within, right, wrong, no_turn }, Guess::Path(points)) => {
                let truth = true_path(&after)?;
                locals = drawn(points, &truth)?;
                let scene = self.scene(start, &after, &locals);
                let room = scene.number(within).map_err(unknown)?;
                let near = locals.get("miss_board").is_some_and(|miss| *miss <= room);
                let (outcome, say) = match no_turn {
                    _ if near => (Outcome::Right, right),
                    Some(no_turn) if !turns(points) => (Outcome::Wrong, no_turn),
                    _ => (Outcome::Wrong, wrong),
                };
                (outcome, say.fill(&scene), Truth::Path(truth))
            }
            (Task::Choose(_), _) => return Err(refused(another(), option_number())),
            (Task::Number { .. }, _) => return Err(refused(another(), phrase!("a-number", "a number"))),
            (Task::Draw { .. }, _) => return Err(refused(another(), phrase!("a-path-drawn", "a path"))),
            (Task::Look | Task::Reach { .. }, _) => {
                return Err(refused(
                    phrase!("some-answer", "an answer"),
                    phrase!("asks-nothing", "none: the step asks nothing"),
                ));
            }
        };
        Ok(AnsweredDoc { outcome, say, truth, doc: after.doc().clone() })
    }

    /// What `start` means in a step: the bench as it opened; where one only
    /// looks back, the lesson's own.
    pub(crate) fn before<'a>(&'a self, step: usize, start: &'a Bench) -> Result<&'a Bench, Problem> {
        Ok(match self.step(step)?.kind {
            Kind::Observe | Kind::Explain => &self.start,
            Kind::Explore | Kind::Predict(_) | Kind::Do(_) => start,
        })
    }

    /// Works every step through as the lesson has it.
    ///
    /// # Errors
    /// A change that does not fit what stands on the bench.
    pub fn walk(&self) -> Result<Vec<WalkedDoc>, Problem> {
        let mut left = None;
        let mut walked = Vec::new();
        for step in 0..self.file.steps.len() {
            let start = self.opens(step, left.take())?;
            let end = self.ends(step, &start)?;
            walked.push(WalkedDoc {
                start: start.doc().clone(),
                shown: self.shown(step, &start, &start)?,
                end: end.doc().clone(),
                checked: self.check(step, &start, &end)?,
            });
            left = Some(end);
        }
        Ok(walked)
    }

    pub(crate) fn stage(&self, step: usize) -> Result<&crate::lesson::Stage, Problem> {
        self.step(step)?;
        self.stages.get(step).ok_or_else(|| refused(step.into(), phrase!("a-step", "a step of the lesson")))
    }
}

/// What a watched number is called; its own name leads to the word that the words worked out lead to.
fn named(name: Option<&str>, described: Vec<Said>) -> Vec<Said> {
    let Some(name) = name else { return described };
    let word = described.into_iter().find_map(|said| match said {
        Said::Term { word, .. } => Some(word),
        _ => None,
    });
    vec![word.map_or_else(|| text(name), |word| Said::Term { word, text: name.into() })]
}

fn another() -> Phrase {
    phrase!("another-answer", "another")
}

fn option_number() -> Phrase {
    phrase!("option-number", "the number of an option")
}

fn refused(found: Phrase, accepted: Phrase) -> Problem {
    Problem::new("answer", found, accepted)
}

fn unknown(why: Phrase) -> Problem {
    let accepted = phrase!("answerable", "a question that has an answer");
    Problem::new("answer", why.clone(), accepted).saying(sentence(why))
}

/// The path foot by foot as far as the ball goes.
fn true_path(bench: &Bench) -> Result<Vec<[f64; 2]>, Problem> {
    let feet = (PINS_M / M_PER_FT) as u32;
    bench.rolled()?;
    let at = |ft: u32| path_board(bench, f64::from(ft)).ok().map(|board| [board, f64::from(ft)]);
    Ok((0..=feet).map_while(at).collect())
}

/// Whether a drawn path goes out and comes back: somewhere between its ends it
/// is further out than at both.
fn turns(points: &[[f64; 2]]) -> bool {
    let [[first, _], between @ .., [last, _]] = points else { return false };
    between.iter().any(|[board, _]| board < first && board < last)
}

/// What a drawn path is like beside the true one.
fn drawn(points: &[[f64; 2]], truth: &[[f64; 2]]) -> Result<BTreeMap<&'static str, f64>, Problem> {
    let down = points.windows(2).all(|pair| matches!(pair, [a, b] if a[1] < b[1]));
    let sound = points.iter().all(|[board, ft]| (-40.0..=80.0).contains(board) && (-1.0..=70.0).contains(ft));
    if !(2..=MAX_POINTS).contains(&points.len()) || !down || !sound {
        return Err(refused(
            phrase!("so-many-points", "{count} points", count = points.len()),
            phrase!("a-drawn-path", "2 to 500 points [board, ft] on the lane, one beyond the other"),
        ));
    }
    let board = |ft: f64| {
        let after = points.iter().position(|point| point[1] >= ft).unwrap_or(points.len() - 1).max(1);
        let (Some(a), Some(b)) = (points.get(after - 1), points.get(after)) else { return f64::NAN };
        // Beyond its ends a drawing stays on its board.
        let part = ((ft - a[1]) / (b[1] - a[1])).clamp(0.0, 1.0);
        a[0] + part * (b[0] - a[0])
    };
    let misses = truth.iter().map(|[is, ft]| ((board(*ft) - is).abs(), *ft));
    let (miss, miss_ft) = misses.fold((0.0, 0.0), |worst, next| if next.0 > worst.0 { next } else { worst });
    let out = points.iter().fold([f64::INFINITY, 0.0], |out, point| if point[0] < out[0] { *point } else { out });
    Ok(BTreeMap::from([
        ("miss_board", miss),
        ("miss_ft", miss_ft),
        ("guess_board_at_pins", board(PINS_M / M_PER_FT)),
        ("guess_breakpoint_board", out[0]),
        ("guess_breakpoint_ft", out[1]),
    ]))
}
