//! Many learners' progress in one table.

use std::collections::BTreeMap;

use format::{GivenAnswer, GivenOutcome, ProgressFile};
use serde::Serialize;

/// A class.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ClassDoc {
    /// The lessons that somebody began, by id.
    pub lessons: Vec<ClassLesson>,
    /// Who did what, in the order of the files.
    pub learners: Vec<ClassLearner>,
    /// Every question that somebody answered, the most often mistaken first.
    pub questions: Vec<ClassQuestion>,
    /// Every task that somebody began, the one with the most failed tries first.
    pub tasks: Vec<ClassTask>,
}

/// A lesson that somebody began.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ClassLesson {
    /// Its id.
    pub id: String,
    /// Its title.
    pub title: String,
    /// How many learners began it.
    pub begun: usize,
    /// How many finished it.
    pub finished: usize,
}

/// What one learner did.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ClassLearner {
    /// What the file is called.
    pub file: String,
    /// What the learner is called.
    pub learner: String,
    /// How many lessons are finished.
    pub finished: usize,
    /// One entry a lesson of the class, in its order; null where it was not begun.
    pub lessons: Vec<Option<ClassEntry>>,
}

/// How far a learner is in a lesson.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct ClassEntry {
    /// Steps done.
    pub passed: u32,
    /// Steps there are.
    pub of_steps: u32,
    /// Whether all of them are done.
    pub finished: bool,
    /// Predictions that were right.
    pub right: u32,
    /// Predictions made.
    pub predicted: u32,
    /// Hints opened.
    pub hints: u32,
    /// Checks that failed.
    pub tries: u32,
    /// Tasks whose own way was shown.
    pub shown: u32,
}

/// What a class did with one task.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ClassTask {
    /// The lesson's id.
    pub lesson: String,
    /// The lesson's title.
    pub lesson_title: String,
    /// The step's id.
    pub step: String,
    /// The step's heading.
    pub title: String,
    /// How many learners began it.
    pub begun: usize,
    /// How many did it.
    pub passed: usize,
    /// How often a check failed, all learners together.
    pub tries: u32,
    /// How many hints were opened, all learners together.
    pub hints: u32,
}

/// What a class answered to one question.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ClassQuestion {
    /// The lesson's id.
    pub lesson: String,
    /// The lesson's title.
    pub lesson_title: String,
    /// The step's id.
    pub step: String,
    /// The step's heading.
    pub title: String,
    /// How many answered.
    pub answered: usize,
    /// How many were right.
    pub right: usize,
    /// What the others said, the most frequent first: the option's text, or
    /// `too little`, `too much`, `another path` with one example.
    pub wrong: Vec<WrongSaid>,
}

/// A wrong answer.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WrongSaid {
    /// What was said.
    pub said: String,
    /// The answer itself; of several numbers or paths the first.
    pub answer: GivenAnswer,
    /// By how many.
    pub count: usize,
}

#[derive(Default)]
struct Tally {
    lesson_title: String,
    title: String,
    answered: usize,
    right: usize,
    wrong: BTreeMap<String, WrongSaid>,
}

impl ClassDoc {
    /// Puts files together, each with what it is called.
    pub fn new(files: &[(String, ProgressFile)]) -> Self {
        let mut titles: BTreeMap<&str, ClassLesson> = BTreeMap::new();
        let mut tallies: BTreeMap<(&str, &str), Tally> = BTreeMap::new();
        let mut tasks: BTreeMap<(&str, &str), ClassTask> = BTreeMap::new();
        for lesson in files.iter().flat_map(|(_, file)| &file.lessons) {
            let entry = titles.entry(&lesson.id).or_insert_with(|| ClassLesson {
                id: lesson.id.clone(),
                title: lesson.title.clone(),
                begun: 0,
                finished: 0,
            });
            entry.begun += 1;
            entry.finished += usize::from(entry_of(lesson).finished);
            for step in &lesson.steps {
                if step.tries.is_some() || step.hints.is_some() {
                    let task = tasks.entry((&lesson.id, &step.id)).or_insert_with(|| ClassTask {
                        lesson: lesson.id.clone(),
                        lesson_title: lesson.title.clone(),
                        step: step.id.clone(),
                        title: step.title.clone(),
                        begun: 0,
                        passed: 0,
                        tries: 0,
                        hints: 0,
                    });
                    task.begun += 1;
                    task.passed += usize::from(step.passed);
                    task.tries = task.tries.saturating_add(step.tries.unwrap_or_default());
                    task.hints = task.hints.saturating_add(step.hints.unwrap_or_default());
                }
                let Some(answer) = &step.answer else { continue };
                let tally = tallies.entry((&lesson.id, &step.id)).or_default();
                tally.lesson_title.clone_from(&lesson.title);
                tally.title.clone_from(&step.title);
                tally.answered += 1;
                // Numbers and paths are hardly ever the same: which way they miss counts.
                let (key, said) = match answer.outcome {
                    GivenOutcome::Right => {
                        tally.right += 1;
                        continue;
                    }
                    GivenOutcome::Low => ("too little".to_owned(), format!("too little, such as {}", answer.said)),
                    GivenOutcome::High => ("too much".to_owned(), format!("too much, such as {}", answer.said)),
                    GivenOutcome::Wrong if answer.path.is_some() => {
                        ("another path".to_owned(), format!("another path, such as {}", answer.said))
                    }
                    // One option is one answer, in whatever language it was read.
                    GivenOutcome::Wrong => {
                        let key =
                            answer.option.map_or_else(|| answer.said.clone(), |option| format!("option {option}"));
                        (key, answer.said.clone())
                    }
                };
                let first = WrongSaid { said, answer: answer.clone(), count: 0 };
                tally.wrong.entry(key).or_insert(first).count += 1;
            }
        }
        let lessons: Vec<ClassLesson> = titles.into_values().collect();
        let learners = files.iter().map(|(file, progress)| {
            let entries: Vec<Option<ClassEntry>> = lessons
                .iter()
                .map(|lesson| progress.lessons.iter().find(|one| one.id == lesson.id).map(entry_of))
                .collect();
            ClassLearner {
                file: file.clone(),
                learner: progress.learner.clone(),
                finished: entries.iter().flatten().filter(|entry| entry.finished).count(),
                lessons: entries,
            }
        });
        let learners = learners.collect();
        let mut questions: Vec<ClassQuestion> = tallies
            .into_iter()
            .map(|((lesson, step), tally)| {
                let mut wrong: Vec<WrongSaid> = tally.wrong.into_values().collect();
                wrong.sort_by_key(|said| std::cmp::Reverse(said.count));
                ClassQuestion {
                    lesson: lesson.to_owned(),
                    lesson_title: tally.lesson_title,
                    step: step.to_owned(),
                    title: tally.title,
                    answered: tally.answered,
                    right: tally.right,
                    wrong,
                }
            })
            .collect();
        questions.sort_by_key(|question| std::cmp::Reverse(question.answered - question.right));
        let mut tasks: Vec<ClassTask> = tasks.into_values().collect();
        tasks.sort_by_key(|task| std::cmp::Reverse(task.tries));
        Self { lessons, learners, questions, tasks }
    }
}

fn entry_of(lesson: &format::LessonProgress) -> ClassEntry {
    let count = |of: &dyn Fn(&format::StepProgress) -> bool| {
        u32::try_from(lesson.steps.iter().filter(|step| of(step)).count()).unwrap_or(u32::MAX)
    };
    let right =
        |step: &format::StepProgress| step.answer.as_ref().is_some_and(|answer| answer.outcome == GivenOutcome::Right);
    let passed = count(&|step| step.passed);
    ClassEntry {
        passed,
        of_steps: lesson.of_steps,
        finished: passed >= lesson.of_steps,
        right: count(&right),
        predicted: count(&|step| step.answer.is_some()),
        hints: lesson.steps.iter().filter_map(|step| step.hints).fold(0, u32::saturating_add),
        shown: count(&|step| step.shown == Some(true)),
        tries: lesson.steps.iter().filter_map(|step| step.tries).fold(0, u32::saturating_add),
    }
}
