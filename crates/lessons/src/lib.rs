//! Guided exercises: what a lesson file means.
//!
//! A lesson is read once ([`Lesson::read`]); then the page and the command line
//! ask it what stands on the bench as a step opens, what to say with the
//! learner's numbers filled in, whether a step is passed and what is missing,
//! and what to answer a prediction. Nothing here computes physics: every number
//! is read off a document of `format`.

mod bench;
mod class;
mod expr;
mod figure;
mod glossary;
mod lesson;
mod path;
mod prose;
mod quantity;
mod reader;
mod reading;
mod said;
mod sound;
mod typed;
mod work;

pub use bench::{Bench, Files};
pub use class::{ClassDoc, ClassEntry, ClassLearner, ClassLesson, ClassQuestion, ClassTask, WrongSaid};
pub use expr::{MAX_CHARS, MAX_DEPTH, Scene, place};
pub use figure::{FIGURES, Figure, Index};
pub use lesson::Lesson;
pub use quantity::Quantity;
pub use reading::grade;
pub use said::{Block, Said, plain};
pub use work::{
    AnsweredDoc, AsksDoc, CheckedStepDoc, Guess, LessonDoc, Outcome, ShownDoc, StepDoc, Truth, WalkedDoc, WatchedDoc,
};
