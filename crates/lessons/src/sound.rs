//! Proves a lesson sound: worked through by its own solutions, every check
//! fails first and passes then, every question has one right answer, and every
//! number that is quoted can be computed where it is quoted.

use std::collections::BTreeMap;

use format::lesson::{Kind, LessonProblem, Located};
use format::{Phrase, Problem, phrase};

use crate::bench::Bench;
use crate::expr::Expr;
use crate::lesson::{Lesson, Task, in_change};
use crate::path::Path;
use crate::prose::Line;
use crate::quantity::Quantity;
use crate::said::{Said, in_one};
use crate::work::Guess;

impl Lesson {
    /// What is unsound, each with its line, `MAX_MISTAKES` at most; empty for a sound lesson.
    pub fn unsound(&self) -> Vec<LessonProblem> {
        let mut proof = Proof { lesson: self, located: Located::new(&self.places) };
        proof.head();
        let mut left = None;
        // What a learner has left there who skipped the questions.
        let mut skipped = None;
        for step in 0..self.file.steps.len() {
            match proof.step(step, left.take()) {
                Some(end) => left = Some(end),
                None => break,
            }
            skipped = proof.skipped(step, skipped.take());
        }
        proof.located.in_order()
    }
}

struct Proof<'a> {
    lesson: &'a Lesson,
    located: Located<'a>,
}

impl Proof<'_> {
    fn problem(&mut self, place: String, found: Phrase, accepted: Phrase, message: Phrase) {
        self.add(Problem { place, found, accepted, message });
    }

    fn add(&mut self, problem: Problem) {
        self.located.add(problem, 0);
    }

    /// A number that has no value where it stands.
    fn no_value(&mut self, place: String, why: Phrase) {
        let message = phrase!("not-computed", "A number here cannot be computed: {why}.", why = why.clone());
        self.problem(place, why, phrase!("computable", "a number that can be computed here"), message);
    }

    /// A place that is not there; `message` says what for.
    fn nowhere(&mut self, place: String, path: &Path, message: Phrase) {
        let found = path.to_string().into();
        self.problem(place, found, phrase!("place-there", "a place that is there"), message);
    }

    /// Every one of these has a value.
    fn values<'a>(&mut self, place: &str, exprs: impl IntoIterator<Item = &'a Expr>, start: &Bench, now: &Bench) {
        let none = BTreeMap::new();
        let lesson = self.lesson;
        let scene = lesson.scene(start, now, &none);
        for expr in exprs {
            if let Err(why) = scene.known(expr) {
                self.no_value(place.to_owned(), why);
            }
        }
    }

    fn head(&mut self) {
        let lesson = self.lesson;
        for (name, expr) in &lesson.given {
            self.values(&format!("given.{name}"), [expr], &lesson.start, &lesson.start);
        }
        self.values("aim", lesson.aim.values(), &lesson.start, &lesson.start);
        self.values("teacher", lesson.teacher.values(), &lesson.start, &lesson.start);
        let steps = &lesson.file.steps;
        let asks = steps.iter().any(|step| matches!(step.kind, Kind::Predict(_)));
        let does = steps.iter().any(|step| matches!(step.kind, Kind::Do(_)));
        if !asks || !does {
            self.problem(
                "steps".to_owned(),
                phrase!("none-of-kind", "none of one kind"),
                phrase!("both-kinds", "one {one} and one {other} at least", one = "\"predict\"", other = "\"do\""),
                phrase!("predict-and-do", "A lesson has a step to predict and a step to do."),
            );
        }
    }

    /// Works a step through; returns what stands on the bench at its end.
    fn step(&mut self, n: usize, left: Option<Bench>) -> Option<Bench> {
        let lesson = self.lesson;
        let place = format!("steps[{n}]");
        let start = match lesson.opens(n, left) {
            Ok(start) => start,
            Err(problem) => {
                self.add(in_change(&format!("{place}.start"), problem));
                return None;
            }
        };
        let end = match lesson.ends(n, &start) {
            Ok(end) => end,
            Err(problem) => {
                let key = if matches!(lesson.file.steps.get(n)?.kind, Kind::Do(_)) { "solution" } else { "then" };
                self.add(in_change(&format!("{place}.{key}"), problem));
                return None;
            }
        };
        let stage = lesson.stages.get(n)?;
        let before = lesson.before(n, &start).ok()?;
        self.values(&format!("{place}.text"), stage.text.values(), before, &start);
        for (k, (_, watched)) in stage.watch.iter().enumerate() {
            self.values(&format!("{place}.watch[{k}]"), [watched], before, &start);
            self.values(&format!("{place}.watch[{k}]"), [watched], before, before);
        }
        for (k, free) in stage.free.iter().flatten().enumerate() {
            let known = free.numbered(start.doc()).is_some_and(|way| reachable(&way, &start) || reachable(&way, &end));
            if !known {
                let message =
                    phrase!("nothing-to-free", "There is nothing at {place} to set free.", place = free.to_string());
                self.nowhere(format!("{place}.free[{k}]"), free, message);
            }
        }
        self.task(n, &place, &stage.task, &start, &end);
        Some(end)
    }

    fn task(&mut self, n: usize, place: &str, task: &Task, start: &Bench, end: &Bench) {
        let lesson = self.lesson;
        let none = BTreeMap::new();
        match task {
            Task::Look => {}
            Task::Choose(options) => {
                let scene = lesson.scene(start, end, &none);
                let mut right = 0;
                for (k, option) in options.iter().enumerate() {
                    let inner = format!("{place}.option[{k}]");
                    self.values(&format!("{inner}.text"), option.text.values(), start, start);
                    self.values(&format!("{inner}.say"), option.say.values(), start, end);
                    self.values(&format!("{inner}.right"), [&option.right], start, end);
                    right += usize::from(scene.truth(&option.right) == Ok(true));
                }
                if right != 1 {
                    self.problem(
                        format!("{place}.option"),
                        phrase!("right-ones", "{count} right ones", count = right),
                        phrase!("one-right", "exactly one right one"),
                        phrase!(
                            "so-many-right",
                            "Of the options {count} are right, and exactly one must be.",
                            count = right
                        ),
                    );
                }
            }
            Task::Number { value, within, right, low, high } => {
                let inner = format!("{place}.number");
                self.values(&format!("{inner}.value"), [value], start, end);
                self.values(&format!("{inner}.within"), [within], start, end);
                let scene = lesson.scene(start, end, &none);
                if let (Ok(is), Ok(room)) = (scene.number(value), scene.number(within)) {
                    let locals = BTreeMap::from([("guess", is - room)]);
                    let told = lesson.scene(start, end, &locals);
                    for (key, line) in [("right", right), ("low", low), ("high", high)] {
                        for expr in line.values() {
                            if let Err(why) = told.known(expr) {
                                self.no_value(format!("{inner}.{key}"), why);
                            }
                        }
                    }
                }
            }
            Task::Draw { .. } => {
                for drawn in [vec![[20.0, 0.0], [17.5, 60.0]], vec![[20.0, 0.0], [-30.0, 40.0], [17.5, 60.0]]] {
                    let Err(problem) = lesson.answer(n, start, &Guess::Path(drawn)) else { continue };
                    self.add(in_change(&format!("{place}.path"), problem));
                }
            }
            Task::Reach { check, wrong, hints, hinted, done } => {
                for (k, (want, say)) in check.iter().enumerate() {
                    let inner = format!("{place}.check[{k}]");
                    if let Some(say) = say {
                        self.values(&format!("{inner}.say"), say.values(), start, start);
                    }
                    self.values(&format!("{inner}.want"), [want], start, end);
                }
                for (k, (when, say)) in wrong.iter().enumerate() {
                    let inner = format!("{place}.wrong[{k}]");
                    self.values(&format!("{inner}.when"), [when], start, start);
                    self.values(&format!("{inner}.say"), say.values(), start, start);
                }
                for (k, hint) in hints.iter().enumerate() {
                    self.values(&format!("{place}.hints[{k}]"), hint.values(), start, start);
                }
                for (path, expr) in hinted {
                    self.values(&format!("{place}.hinted.{path}"), [expr], start, start);
                }
                self.values(&format!("{place}.done"), done.values(), start, end);
                if self.reached(n, place, start, end) {
                    let [_, _, last] = hints;
                    self.followed(n, place, last, hinted, start);
                }
            }
        }
    }

    /// What a step leaves that opens where no question was answered: a check
    /// fails at first there too.
    fn skipped(&mut self, n: usize, left: Option<Bench>) -> Option<Bench> {
        let lesson = self.lesson;
        let start = lesson.opens(n, left).ok()?;
        match lesson.file.steps.get(n)?.kind {
            Kind::Do(_) => {
                let place = format!("steps[{n}].check");
                let told = self.located.is_at(&place);
                if !told && self.holds(n, &start) {
                    self.problem(
                        place,
                        phrase!("holds-unanswered", "a check that holds at once where no question is answered"),
                        fails_at_first(),
                        phrase!(
                            "nothing-where-skipped",
                            "There is nothing to do for whoever skips the question before: the bench passes the check as it was before the answer. Give the step a start of its own."
                        ),
                    );
                }
                // A solution may lean on what an answer put there.
                lesson.ends(n, &start).ok().or(Some(start))
            }
            Kind::Explore | Kind::Predict(_) | Kind::Observe | Kind::Explain => Some(start),
        }
    }

    /// Whether the bench passes every check as the step opens.
    fn holds(&self, n: usize, start: &Bench) -> bool {
        let none = BTreeMap::new();
        let scene = self.lesson.scene(start, start, &none);
        let stage = self.lesson.stages.get(n);
        stage.is_some_and(|stage| match &stage.task {
            Task::Reach { check, .. } => check.iter().all(|(want, _)| scene.truth(want) == Ok(true)),
            Task::Look | Task::Choose(_) | Task::Number { .. } | Task::Draw { .. } => false,
        })
    }

    /// Whoever does what the last hint says passes: every number that it names is
    /// set as it is written.
    fn followed(&mut self, n: usize, place: &str, hint: &Line, hinted: &[(Path, Expr)], start: &Bench) -> Option<()> {
        let lesson = self.lesson;
        let none = BTreeMap::new();
        let scene = lesson.scene(start, start, &none);
        let said = hint.fill(&scene);
        let named: Vec<_> = said
            .iter()
            .filter_map(|said| match said {
                Said::Value { value, quantity, decimals, between } => {
                    let shown = |two| quantity.difference(two, decimals.unwrap_or_else(|| quantity.decimals()));
                    Some((between.map_or(*value, shown), *quantity, *decimals))
                }
                _ => None,
            })
            .collect();
        let written = |(value, quantity, decimals): &(f64, Quantity, Option<u8>)| -> Option<f64> {
            quantity.digits(*value, decimals.unwrap_or_else(|| quantity.decimals())).parse().ok()
        };
        let mut doc = start.doc().clone();
        if hinted.is_empty() {
            if named.is_empty() {
                return None;
            }
            let free = lesson.stages.get(n)?.free.as_ref().filter(|free| !free.is_empty());
            let last = free.and_then(|free| named.get(named.len().checked_sub(free.len())?..));
            let set = free.zip(last).and_then(|(free, last)| {
                free.iter().zip(last).try_for_each(|(path, one)| {
                    path.get(&doc)?.as_f64().filter(|_| Quantity::of_key(path.key()).goes_with(one.1))?;
                    path.set(&mut doc, written(one)?.into())
                })
            });
            if set.is_none() {
                self.problem(
                    format!("{place}.hints[2]"),
                    phrase!("numbers-untold", "numbers of places that are not told"),
                    phrase!("hinted-table", "a table {key}", key = "\"hinted\""),
                    phrase!(
                        "hint-untold",
                        "The last hint names numbers, and nothing says what they are to be set to. Say it in a table {key}: each place, and the expression of its number.",
                        key = "\"hinted\""
                    ),
                );
                return None;
            }
        }
        for (path, expr) in hinted {
            let number = scene.number(expr).ok()?;
            let as_written = named.iter().find(|(value, ..)| (value - number).abs() <= 1e-9 * number.abs());
            if !named.is_empty() && as_written.is_none() {
                self.problem(
                    format!("{place}.hinted.{path}"),
                    phrase!("unnamed-number", "a number that the hint does not name"),
                    phrase!("named-one", "one that it names"),
                    phrase!(
                        "hint-names-none",
                        "The last hint does not name the number that is to be set at {place}.",
                        place = path.to_string()
                    ),
                );
                return None;
            }
            let put = as_written.and_then(written).unwrap_or(number);
            if path.set(&mut doc, put.into()).is_none() {
                let message =
                    phrase!("nothing-to-set", "There is nothing at {place} to set.", place = path.to_string());
                self.nowhere(format!("{place}.hinted.{path}"), path, message);
                return None;
            }
        }
        let passes = Bench::new(doc).and_then(|now| lesson.check(n, start, &now)).is_ok_and(|checked| checked.passed);
        if !passes {
            self.problem(
                format!("{place}.hints[2]"),
                phrase!("failing-number", "a number that fails"),
                phrase!("passing-number", "a number that passes"),
                phrase!("hint-fails", "What the last hint names does not pass the check: {hint}", hint = in_one(&said)),
            );
        }
        Some(())
    }

    /// The bench as it opens fails the check, the solution passes it; whether the solution does.
    fn reached(&mut self, n: usize, place: &str, start: &Bench, end: &Bench) -> bool {
        let lesson = self.lesson;
        if self.holds(n, start) {
            self.problem(
                format!("{place}.check"),
                phrase!("holds-at-once", "a check that holds at once"),
                fails_at_first(),
                phrase!("nothing-to-do", "There is nothing to do: the bench passes the check as the step opens."),
            );
        }
        let Ok(checked) = lesson.check(n, start, end) else { return false };
        if !checked.passed {
            let fails = phrase!("solution-fails", "The solution does not pass the check.");
            self.problem(
                format!("{place}.solution"),
                phrase!("failing-state", "a state that fails"),
                phrase!("passing-state", "a state that passes every check"),
                checked.missing.iter().map(|said| in_one(said)).fold(fails, Phrase::then),
            );
        }
        checked.passed
    }
}

fn fails_at_first() -> Phrase {
    phrase!("fails-at-first", "a check that fails at first")
}

/// Whether there is something at a place, or could be: a key that may be left out.
fn reachable(way: &Path, bench: &Bench) -> bool {
    let mut parent = way.clone();
    parent.0.pop();
    way.get(bench.doc()).is_some() || parent.get(bench.doc()).is_some_and(serde_json::Value::is_object)
}
