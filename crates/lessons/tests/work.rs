//! One lesson worked through the right way and a wrong one, and every kind of
//! mistake in its text, with its line.

#![allow(clippy::expect_used, clippy::panic, reason = "a check that fails stops its test")]

mod common;
#[path = "../../../tests/shared/sayable.rs"]
mod sayable;

use std::fs;

use common::{read, scenarios};
use format::in_parts;
use format::lesson::LessonProblem;
use pithball_lessons::{Bench, Guess, Lesson, Outcome, Said, Truth, plain};
use sayable::assert_sayable;
use serde_json::json;

fn text(name: &str) -> String {
    fs::read_to_string(scenarios().join(format!("lessons/{name}.lesson.md"))).expect("a lesson")
}

fn lesson(name: &str) -> Lesson {
    read(&text(name)).unwrap_or_else(|problems| panic!("{problems:#?}"))
}

fn bench(doc: &serde_json::Value) -> Bench {
    Bench::new(doc.clone()).expect("a bench")
}

fn all(said: &[Vec<Said>]) -> String {
    said.iter().map(|said| plain(said)).collect::<Vec<_>>().join(" ")
}

const PUCK: &str = "the-puck";

#[test]
fn a_number_is_answered_with_the_learners_own() {
    let lesson = lesson(PUCK);
    let start = lesson.opens(1, None).expect("a bench");
    let answer = |number| lesson.answer(1, &start, &Guess::Number(number)).expect("an answer");
    let low = answer(0.02);
    assert_eq!(low.outcome, Outcome::Low);
    assert!(plain(&low.say).contains("You said 0.020 in, but it is more than that, 0.041 in,"), "{}", plain(&low.say));
    assert_eq!(answer(0.3).outcome, Outcome::High);
    let right = answer(0.041);
    assert_eq!(right.outcome, Outcome::Right);
    // What was asked about now stands on the bench.
    assert_eq!(right.doc["ball"]["pieces"][2]["at_in"][2], json!(2.95));
    let Truth::Number(Said::Value { value, .. }) = right.truth else { panic!("a number") };
    assert!((value - 0.0405).abs() < 1e-4);
    assert!(lesson.answer(1, &start, &Guess::Option(0)).is_err());
    assert!(lesson.answer(1, &start, &Guess::Number(f64::NAN)).is_err());
    assert!(lesson.answer(0, &start, &Guess::Number(1.0)).is_err());
    assert!(lesson.answer(9, &start, &Guess::Number(1.0)).is_err());
}

#[test]
fn a_check_says_what_is_missing_and_what_was_fixed() {
    let lesson = lesson(PUCK);
    let start = lesson.opens(2, None).expect("a bench");
    let at = |height: f64| {
        let mut doc = start.doc().clone();
        doc["ball"]["pieces"][2]["at_in"][2] = json!(height);
        lesson.check(2, &start, &bench(&doc)).expect("a check")
    };
    let short = at(2.5);
    assert!(!short.passed && short.wrong.is_none() && short.done.is_none());
    assert!(all(&short.missing).contains("it must be at least 0.040 in."), "{}", all(&short.missing));
    let wrong = at(1.0).wrong.expect("a word about the wrong way");
    assert!(plain(&wrong).starts_with("The differential fell from 0.0"), "{}", plain(&wrong));
    assert!(at(2.95).passed);

    let mut doc = start.doc().clone();
    doc["ball"]["pieces"][2]["at_in"][2] = json!(2.95);
    doc["ball"]["pieces"][1]["density_g_cc"] = json!(2.8);
    let fixed = lesson.check(2, &start, &bench(&doc)).expect("a check");
    assert_eq!(fixed.fixed, ["ball.pieces[1].density_g_cc"]);
    assert!(!fixed.passed);
    // Another name changes nothing.
    let mut doc = start.doc().clone();
    doc["ball"]["pieces"][2]["at_in"][2] = json!(2.95);
    doc["ball"]["name"] = json!("mine");
    assert!(lesson.check(2, &start, &bench(&doc)).expect("a check").passed);
}

#[test]
fn a_drawn_path_is_held_to_the_true_one() {
    let lesson = lesson("skid-hook-roll");
    let start = lesson.opens(1, None).expect("a bench");
    let draw = |points: &[[f64; 2]]| lesson.answer(1, &start, &Guess::Path(points.to_vec()));
    let straight = draw(&[[24.0, 0.0], [24.0, 60.0]]).expect("an answer");
    assert_eq!(straight.outcome, Outcome::Wrong);
    let Truth::Path(truth) = straight.truth else { panic!("a path") };
    assert_eq!(truth.len(), 61);
    assert!((truth[0][0] - 24.0).abs() < 1e-9);
    let good = draw(&truth).expect("an answer");
    assert_eq!(good.outcome, Outcome::Right);
    assert!(plain(&good.say).contains("0.0 boards off at most"), "{}", plain(&good.say));
    assert!(draw(&[[24.0, 0.0]]).is_err());
    assert!(draw(&[[24.0, 0.0], [24.0, 0.0]]).is_err());
    assert!(draw(&[[f64::NAN, 0.0], [24.0, 10.0]]).is_err());
}

/// A lesson with one stretch replaced: the first thing wrong, at the line of the
/// replacement.
#[track_caller]
fn wrong(old: &str, new: &str, place: &str, found: &str) {
    wrong_at(old, new, new, place, found);
}

/// The same at the line of another stretch.
#[track_caller]
fn wrong_at(old: &str, new: &str, at: &str, place: &str, found: &str) {
    let text = text(PUCK);
    assert_eq!(text.matches(old).count(), 1, "{old:?} is not once in the text");
    let text = text.replacen(old, new, 1);
    let line = line_of(&text, at);
    let problems = match read(&text) {
        Err(problems) => problems,
        Ok(lesson) => lesson.unsound(),
    };
    sayable(&problems);
    let first = problems.first().unwrap_or_else(|| panic!("nothing is wrong with {new:?}"));
    let of = &first.problem;
    assert_eq!((first.line, of.place.as_str(), of.found.as_str()), (line, place, found), "{problems:#?}");
}

#[track_caller]
fn sayable(problems: &[LessonProblem]) {
    problems.iter().for_each(|one| assert_sayable(&in_parts(|| json!(one))));
}

fn line_of(text: &str, stretch: &str) -> usize {
    let at = text.find(stretch).expect("the stretch");
    text[..at].matches('\n').count() + 1
}

#[test]
fn every_mistake_is_told_at_its_line() {
    wrong("pithball.lesson/1", "pithball.lesson/2", "format", "\"pithball.lesson/2\"");
    wrong("id = \"the-puck\"", "id = \"The Puck\"", "id", "\"The Puck\"");
    wrong("minutes = 10", "minutes = 10.5", "minutes", "10.5");
    wrong("minutes = 10", "minutes = nan", "minutes", "nan");
    wrong("minutes = 10", "minutes = ", "", "\"minutes =\"");
    wrong("[\"puck\", ", "[\"pock\", ", "words[0]", "\"pock\"");
    wrong("goal_in = \"0.040 in\"", "rg_in = \"0.040 in\"", "given.rg_in", "\"rg_in\"");
    wrong_at("no-3-three-piece", "no-9", "[start]", "start", "\"../balls/no-9.ball.json\"");
    wrong_at(
        "'ball.pieces[\"puck\"].at_in[2]' = 2.4",
        "'ball.peices[0]' = 2.4",
        "[start]",
        "start",
        "\"ball.peices[0]\"",
    );
    wrong("kind = \"explore\"", "kind = \"expiore\"", "steps[0].kind", "\"expiore\"");
    wrong("rooms = [\"lane\", \"scale\"]", "rooms = [\"attic\"]", "steps[3].rooms[0]", "\"attic\"");
    wrong("within = \"near_in\"", "withn = \"near_in\"", "steps[1].number.withn", "the unknown key \"withn\"");
    wrong(
        "want = \"differential_in >= goal_in\"",
        "want = \"differential_in >= \"",
        "steps[2].check[0].want",
        "the end",
    );
    wrong(
        "want = \"differential_in >= goal_in\"",
        "want = \"differential_in\"",
        "steps[2].check[0].want",
        "\"differential_in\"",
    );
    wrong_at(
        "want = \"differential_in >= goal_in\"",
        "want = \"differential_in >= 0 in\"",
        "[[check]]",
        "steps[2].check",
        "a check that holds at once",
    );
    wrong_at(
        "want = \"differential_in >= goal_in\"",
        "want = \"differential_in >= 1 in\"",
        "[solution.set]",
        "steps[2].solution",
        "a state that fails",
    );
    wrong("It weighs only {", "It weighs only 3 lb and {", "steps[0].text", "\"3 lb\"");
    wrong("It weighs only {", "It weighs only {{", "steps[0].text", "'{'");
    wrong("Today it is half", "Today it <b>is</b> half", "steps[0].text", "HTML");
    wrong("Today it is half", "Today [it](http://a.b) is half", "steps[0].text", "a link");
    wrong("has a [[puck]]", "has a [[pock]]", "steps[0].text", "\"pock\"");
    wrong("## A small heavy disc", "### A small heavy disc", "steps", "text before the first heading");
}

/// The mistakes that remain of a lesson with one stretch replaced, as place and what was found.
fn unsound(name: &str, old: &str, new: &str) -> Vec<(String, String)> {
    let text = text(name);
    assert_eq!(text.matches(old).count(), 1, "{old:?} is not once in the text");
    let lesson = read(&text.replacen(old, new, 1)).unwrap_or_else(|problems| panic!("{problems:#?}"));
    let problems = lesson.unsound();
    sayable(&problems);
    problems.into_iter().map(|told| (told.problem.place, told.problem.found.into_text())).collect()
}

#[test]
fn the_last_hint_reaches_what_is_wanted() {
    let revs = "revs-against-speed";
    assert_eq!(
        unsound(revs, "revs_rpm * 1.28", "revs_rpm * 1.25"),
        [("steps[2].hints[2]".to_owned(), "a number that fails".to_owned())]
    );
    // Where the places are told, their numbers are those that the hint names, and pass.
    let puck = "the-puck";
    let height = "'ball.pieces[\"puck\"].at_in[2]' = \"up_in\"";
    assert_eq!(
        unsound(puck, "up_in = \"2.95 in\"", "up_in = \"2.60 in\""),
        [("steps[2].hints[2]".to_owned(), "a number that fails".to_owned())]
    );
    assert_eq!(
        unsound(puck, height, &height.replace("up_in", "goal_in * 70")),
        [(
            "steps[2].hinted.ball.pieces[\"puck\"].at_in[2]".to_owned(),
            "a number that the hint does not name".to_owned()
        )]
    );
    assert_eq!(
        unsound(puck, &format!("[hinted]\n{height}\n"), ""),
        [("steps[2].hints[2]".to_owned(), "numbers of places that are not told".to_owned())]
    );
    // Hints stay what they were while the bench changes.
    let lesson = lesson(revs);
    let start = lesson.opens(2, None).expect("a bench");
    let end = lesson.ends(2, &start).expect("a bench");
    let hints = |now| lesson.shown(2, &start, now).expect("what is shown").hints;
    assert_eq!(hints(&start), hints(&end));
    assert!(all(&hints(&end)).contains("Try 384 rpm."), "{}", all(&hints(&end)));
}

#[test]
fn what_holds_where_a_question_is_skipped_is_nothing_to_do() {
    let own = "start = { set = { \"shot.release.speed_mph\" = 19 } }\n";
    assert_eq!(
        unsound("revs-against-speed", own, ""),
        [("steps[2].check".to_owned(), "a check that holds at once where no question is answered".to_owned())]
    );
}

#[test]
fn what_holds_by_itself_was_not_done() {
    let lesson = lesson(PUCK);
    let start = lesson.opens(2, None).expect("a bench");
    let end = lesson.ends(2, &start).expect("a bench");
    assert!(lesson.check(2, &start, &end).expect("a check").passed);
    let still = lesson.check(2, &end, &end).expect("a check");
    assert!(!still.passed && all(&still.missing).contains("changed nothing yet"), "{}", all(&still.missing));
}

#[test]
fn what_is_left_open_is_said_in_words() {
    let said = |old: &str, new: &str| {
        let text = text(PUCK);
        assert_eq!(text.matches(old).count(), 1, "{old:?} is not once in the text");
        let problems = read(&text.replacen(old, new, 1)).map(|_| ()).expect_err("a mistake");
        sayable(&problems);
        problems[0].problem.message.clone()
    };
    let weight = "only {piece_weight_lb[\"puck\"]}";
    assert_eq!(said(weight, "only {piece_weight_lb[\"puck\"]"), "This { is never closed: a } is missing.");
    assert_eq!(
        said(weight, "only {piece_weight_lb[\"puck]}"),
        "This quotation mark is never closed: a second one is missing."
    );
    let end = "A quotation mark is missing at the end of this line.";
    assert_eq!(said("title = \"The puck\"", "title = \"The puck"), end);
    assert_eq!(said("want = \"differential_in >= goal_in\"", "want = \"differential_in >= goal_in"), end);
    assert_eq!(said("words = [\"puck\", ", "words = [\"puck, "), "A quotation mark is missing on this line.");
    assert_eq!(
        said("want = \"differential_in >= goal_in\"", "want = \"differential_in >= gaol_in\""),
        "Here must be a name from the list of names, perhaps goal_in, not \"gaol_in\"."
    );
}

#[test]
fn a_path_that_never_turns_is_told_so() {
    let lesson = lesson("skid-hook-roll");
    let start = lesson.opens(1, None).expect("a bench");
    let said =
        |points: &[[f64; 2]]| plain(&lesson.answer(1, &start, &Guess::Path(points.to_vec())).expect("an answer").say);
    for points in [[[24.0, 0.0], [24.0, 60.0]], [[24.0, 0.0], [10.0, 60.0]], [[10.0, 0.0], [24.0, 60.0]]] {
        assert!(said(&points).contains("Your path never turns"), "{}", said(&points));
    }
    let turned = said(&[[24.0, 0.0], [2.0, 30.0], [24.0, 60.0]]);
    assert!(turned.contains("You put the turn at 30.0 ft."), "{turned}");
    assert!(turned.contains("boards off after"), "{turned}");
}

#[test]
fn a_watched_number_is_called_by_its_own_name() {
    let lesson = lesson("what-scrap-costs");
    let start = lesson.opens(2, None).expect("a bench");
    let shown = lesson.shown(2, &start, &start).expect("what is shown");
    assert_eq!(plain(&shown.watch[1].what), "what one good ball costs");
    wrong(
        "watch = [\"differential_in\", \"rg_in\",",
        "watch = [{ nme = \"a\" }, \"rg_in\",",
        "steps[2].watch[0].nme",
        "the unknown key \"nme\"",
    );
}

#[test]
fn the_column_is_that_of_the_character() {
    let text = text(PUCK).replacen("want = \"differential_in >= goal_in\"", "want = \"differential_in >= goal_im\"", 1);
    let problems = read(&text).map(|_| ()).expect_err("a name that is not known");
    assert_eq!((problems[0].line, problems[0].column), (line_of(&text, "goal_im"), 28));
    let text = text.replacen("goal_im", "goal_in", 1).replacen("weighs only {", "weighs only {12 + ", 1);
    let problems = read(&text).map(|_| ()).expect_err("units that do not go together");
    let at = line_of(&text, "{12 + ");
    let line = text.lines().nth(at - 1).expect("the line");
    assert_eq!((problems[0].line, problems[0].column), (at, line.find("{12 + ").expect("there") + 5));
}

#[test]
fn a_text_that_is_no_lesson_is_refused() {
    for text in [
        "",
        "hello",
        "+++\n+++\n",
        "+++\nid = 1\n+++\n## A\n",
        "## A\n```step\nkind = \"explore\"\n```\n",
        "```step\n```",
    ] {
        let problems = read(text).map(|_| ()).expect_err(text);
        sayable(&problems);
        assert!(problems.iter().all(|one| one.line > 0), "{text:?}: {problems:?}");
    }
    let long = "x".repeat(300_000);
    assert!(read(&long).map(|_| ()).expect_err("too long")[0].problem.accepted.contains("262144"));
}
