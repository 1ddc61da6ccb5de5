//! What is said of each kind of mistake in a lesson, in one plain sentence that
//! every language of the page has.

#![allow(clippy::expect_used, clippy::panic, reason = "a check that fails stops its test")]

mod common;
#[path = "../../../tests/shared/sayable.rs"]
mod sayable;

use std::fs;

use common::{read, scenarios};
use format::in_parts;
use format::lesson::LessonProblem;
use sayable::assert_sayable;
use serde_json::json;

fn text(name: &str) -> String {
    fs::read_to_string(scenarios().join(format!("lessons/{name}.lesson.md"))).expect("a lesson")
}

/// All that is wrong with a lesson, each sayable.
#[track_caller]
fn problems(text: &str) -> Vec<LessonProblem> {
    let problems = match read(text) {
        Err(problems) => problems,
        Ok(lesson) => lesson.unsound(),
    };
    problems.iter().for_each(|one| assert_sayable(&in_parts(|| json!(one))));
    problems
}

#[track_caller]
fn with(text: &str, old: &str, new: &str) -> String {
    assert_eq!(text.matches(old).count(), 1, "{old:?} is not once in the text");
    text.replacen(old, new, 1)
}

/// What is said first of a lesson with one stretch replaced.
#[track_caller]
fn says_in(name: &str, old: &str, new: &str, said: &str) {
    let problems = problems(&with(&text(name), old, new));
    let first = problems.first().unwrap_or_else(|| panic!("nothing is wrong with {new:?}"));
    assert_eq!(first.problem.message, said, "{problems:#?}");
}

#[track_caller]
fn says(old: &str, new: &str, said: &str) {
    says_in("the-puck", old, new, said);
}

/// The same of the expression of a check.
#[track_caller]
fn check(expression: &str, said: &str) {
    says("want = \"differential_in >= goal_in\"", &format!("want = '{expression}'"), said);
}

#[test]
fn expressions() {
    check("", "Here must be a number with its unit, a name or a bracket, not the end.");
    check("rg_in", "Here must be a comparison, which is true or false, not \"rg_in\".");
    check("rg_in <= 2.5 lb", "Here must be two numbers of one unit, not in and lb, not \"<=\".");
    check("rg_in <= 2.5", "Here must be two numbers of one unit, not in and a plain number, not \"<=\".");
    check("rg_in <= 2.5 in in", "Here must be the end, or an operator such as + or <=, not \"in\".");
    check(
        "rg_in # 2 in",
        "Here must be a number with its unit, a name, one of + - * / ( ) < <= > >= = != [ ] . ,, not '#'.",
    );
    check("(rg_in < 2 in", "Here must be \")\", not the end.");
    check("rg_in and 1 < 2", "Here must be a comparison on either side, not \"and\".");
    check("not rg_in", "Here must be a comparison after \"not\", not \"not\".");
    check("(1 < 2) + 3 < 4", "Here must be a number on either side, not \"+\".");
    check("(1 < 2) * 3 < 4", "Here must be a number on either side, not \"*\".");
    check("-(1 < 2) < 4", "Here must be a number after the minus, not \"-\".");
    check(
        "rg_in * weight_lb < 1 in",
        "Here must be a plain number on one side, or division by the same unit, not \"*\".",
    );
    check("abs(1, 2) < 1", "Here must be one number in brackets, not \"abs\".");
    check("min(1) < 1", "Here must be two numbers or more in brackets, not \"min\".");
    check(
        "power(rg_in, 2) < 1",
        "Here must be a plain number or a share, and a plain number, in brackets, not \"power\".",
    );
    check("start.1 < 1", "Here must be the name of a number, not \"1\".");
    check("piece_weight_lb[1] < 1 lb", "Here must be the name of a piece in double quotes, not \"1\".");
    check("path_board[3 in] < 1 board", "Here must be a distance in ft, not \"3 in\".");
    check("ball.1 < 1", "Here must be a key, not \"1\".");
    check(
        "ball.pieces[1.5].density_g_cc < 1 g/cc",
        "Here must be the number of an item, from 0, or its name in double quotes, not \"1.5\".",
    );
    check("zzzzzzzzzz < 1", "Here must be a name from the list of names, not \"zzzzzzzzzz\".");
    check("holez < 1", "Here must be a name from the list of names, perhaps holes, not \"holez\".");
    check("piece_weight_lb[\"puck] < 1 lb", "This quotation mark is never closed: a second one is missing.");
    check(&format!("{}1{} < 2", "(".repeat(30), ")".repeat(30)), "Here must be brackets at most 24 deep, not \"(\".");
    check(&"1 + ".repeat(200), "Here must be at most 500 characters, not 800 characters.");
    check(
        "ball.pieces[0].nothing < 1",
        "A number here cannot be computed: there is no number at ball.pieces[0].nothing.",
    );
    check("rg_in / (rg_in - rg_in) < 1", "A number here cannot be computed: this divides by nothing.");
    check(
        "oil_length_ft < 1 ft",
        "A number here cannot be computed: the lane's friction is given in zones, without oil.",
    );
    check(
        "piece_weight_lb[\"nobody\"] < 1 lb",
        "A number here cannot be computed: the ball has no piece called \"nobody\".",
    );
}

#[test]
fn prose() {
    let disc = |new: &str, said: &str| says("Today it is half", new, said);
    let allowed = "paragraphs, lists, *stress*, **weight**, [[trade words]] and {values}";
    for (written, what) in [
        ("<b>It</b> is", "HTML"),
        ("[It](http://a.b) is", "a link"),
        ("![It](a.png) is", "a picture"),
        ("\n\n### It\n\nis", "a heading"),
        ("\n\n- a\n  - b\n\nis", "a list within a list"),
        ("`it` is", "code"),
        ("\n\n> It\n\nis", "a quotation"),
        ("\n\n***\n\nIt is", "a rule"),
    ] {
        disc(written, &format!("Here must be {allowed}, not {what}."));
    }
    disc("It is {", "This { is never closed: a } is missing.");
    disc("It is } half", "Here must be {an expression} with both braces, not a closing brace.");
    disc("It is 3 lb half", "Here must be a number with a unit that is computed, as {an expression}, not \"3 lb\".");
    disc("It is {rg_in:9} half", "Here must be a number of decimals, 0 to 6, not \"9\" after a colon.");
    disc("It is {1 < 2} half", "Here must be an expression that is a number, not a comparison.");
    disc("A [[pock]] is half", "Here must be a word of the glossary, not \"pock\".");
    says("done = \"The", "done = \"One.\\n\\nThe", "Here must be one paragraph, not none, several or a list.");
    says(
        "title = \"The puck\"",
        "title = \"The 3 in puck\"",
        "Here must be a title without numbers with a unit, not \"3 in\".",
    );
    // Typed in Spanish.
    disc(
        "Son tres pulgadas",
        "Here must be a number with a unit that is computed, as {an expression}, not \"tres pulgadas\".",
    );
    disc(
        "Es la tabla 17, no",
        "Here must be a number with a unit that is computed, as {an expression}, not \"tabla 17\".",
    );
}

#[test]
fn names_places_and_files() {
    let name = "a name of lower-case letters, digits and _ that means nothing else";
    says("goal_in = \"", "rg_in = \"", &format!("Here must be {name}, not \"rg_in\"."));
    says("goal_in = \"0.040 in\"", "goal_in = 3", "\"goal_in\" must be a text in quotes, not 3.");
    says("[given]", "[states]\nother = 3\n\n[given]", "\"other\" must be an object in braces, not 3.");
    says("words = [\"puck\", ", "words = [\"pock\", ", "Here must be a word of the glossary, not \"pock\".");
    says(
        "free = [\"ball.pieces[2].at_in\"]",
        "free = [\"the puck\"]",
        "Here must be a place such as shot.release.revs_rpm or ball.pieces[1], not \"the puck\".",
    );
    says(
        "free = [\"ball.pieces[2].at_in\"]",
        "free = [\"ball.pieces[7].at_in\"]",
        "There is nothing at ball.pieces[7].at_in to set free.",
    );
    let hinted = "'ball.pieces[\"puck\"].at_in[2]' = \"up_in\"";
    says(
        hinted,
        "puck = \"up_in\"",
        "Here must be a place such as shot.release.revs_rpm or ball.pieces[1].density_g_cc, not \"puck\".",
    );
    says(
        hinted,
        "'ball.pieces[\"puck\"].at_in[2]' = 3",
        r#""ball.pieces[\"puck\"].at_in[2]" must be a text in quotes, not 3."#,
    );
    says(hinted, &hinted.replace("up_in", "3 lb"), "Here must be a number of in, not lb.");
    says(
        "rooms = [\"lane\", \"scale\"]",
        "rooms = []",
        "Here must be one room at least, or no key \"rooms\" for those of the step before, not none.",
    );
    says("within = \"near_in\"", "within = \"1 lb\"", "Here must be a number of in, not lb.");
    says_in(
        "skid-hook-roll",
        "within = \"near_board\"",
        "within = \"4 lb\"",
        "Here must be a number of boards, not \"4 lb\".",
    );
    says(
        "no-3-three-piece",
        "no-9",
        "Here must be the path of a file that is there, not \"../balls/no-9.ball.json\". (start)"
            .replace(". (start)", ". (ball)")
            .as_str(),
    );
    says(
        "'ball.pieces[\"puck\"].at_in[2]' = 2.4",
        "'ball.nothing[0]' = 2.4",
        "Here must be a place that is there, such as ball.pieces[0].density_g_cc or shot.release.revs_rpm, not \
         \"ball.nothing[0]\". (set[\"ball.nothing[0]\"])",
    );
    says(
        "'ball.pieces[\"puck\"].at_in[2]' = 2.4",
        "'ball.cover.density_g_cc' = 99",
        "The density (g/cc) must be a number above 0 and up to 25, not 99. (ball.cover.density_g_cc)",
    );
}

#[test]
fn soundness() {
    let want = "want = \"differential_in >= goal_in\"";
    says(
        want,
        "want = \"differential_in >= 0 in\"",
        "There is nothing to do: the bench passes the check as the step opens.",
    );
    let problems = problems(&with(&text("the-puck"), want, "want = \"differential_in >= 1 in\""));
    let solution = problems.iter().find(|one| one.problem.place == "steps[2].solution").expect("the solution");
    let message = &solution.problem.message;
    let said = "The solution does not pass the check. The differential is 0.041 in; it must be at least 1.000 in.";
    assert_eq!(message, said);
    says_in(
        "revs-against-speed",
        "start = { set = { \"shot.release.speed_mph\" = 19 } }\n",
        "",
        "There is nothing to do for whoever skips the question before: the bench passes the check as it was before the \
         answer. Give the step a start of its own.",
    );
    let hinted = "'ball.pieces[\"puck\"].at_in[2]' = \"up_in\"";
    says(
        &format!("[hinted]\n{hinted}\n"),
        "",
        "The last hint names numbers, and nothing says what they are to be set to. Say it in a table \"hinted\": each \
         place, and the expression of its number.",
    );
    says(
        hinted,
        &hinted.replace("up_in", "goal_in * 70"),
        "The last hint does not name the number that is to be set at ball.pieces[\"puck\"].at_in[2].",
    );
    says(hinted, "'ball.pieces[7].at_in[2]' = \"up_in\"", "There is nothing at ball.pieces[7].at_in[2] to set.");
    says(
        "up_in = \"2.95 in\"",
        "up_in = \"2.60 in\"",
        "What the last hint names does not pass the check: Set the height of the puck to 2.60 in.",
    );
    says("kind = \"predict\"\n", "kind = \"explore\"\n", "The key \"number\" is not known here.");
}

#[test]
fn options_of_which_one_is_right() {
    let two = "[[option]]\ntext = \"a {rg_in}\"\nright = \"1 < 2\"\nsay = \"b\"\n\n";
    let number = text("the-puck");
    let (before, rest) = number.split_once("[number]").expect("the question");
    let (_, after) = rest.split_once("[then.set]").expect("what changes");
    let problems = problems(&format!("{before}{two}{two}[then.set]{after}"));
    assert_eq!(problems[0].problem.message, "Of the options 2 are right, and exactly one must be.");
    assert_eq!(problems[0].problem.found, "2 right ones");
}

#[test]
fn toml() {
    let minutes = |new: &str, said: &str| says("minutes = 10", new, said);
    minutes("minutes = ", "A value is missing here.");
    minutes("minutes = ten", "A text must stand in quotation marks.");
    minutes("minutes", "After this key an = and a value are missing.");
    minutes("minutes = 10\nminutes = 11", "This key is given twice.");
    minutes("minutes = = 10", "There is an = too many here.");
    minutes("minutes 10", "After this key an = and a value are missing.");
    minutes("minutes = 10 mph", "A text must stand in quotation marks.");
    minutes("minutes = \"10\" \"20\"", "The line must end before this.");
    minutes("mi?nutes = 10", "Here must be a key: letters, digits, - and _.");
    minutes("minutes = [\"a\" \"b\"]", "A comma is missing here.");
    minutes("minutes = [10,, 20]", "There is a comma too many here.");
    minutes("minutes = { a = 1 b = 2 }", "A comma is missing here.");
    minutes("minutes = { a }", "A value is missing here.");
    minutes("minutes = { a \"b\" }", "An = is missing here.");
    minutes("minutes = ]", "This closes nothing that was opened.");
    minutes("minutes = \"a\\qb\"", "A backslash in a text between two \" must be written twice.");
    let number = "TOML does not write a number like this, and a text must stand in quotation marks.";
    for written in ["010", "0.5in", "1.2.3", ".5", "5.", "1e", "1__0"] {
        minutes(&format!("minutes = {written}"), number);
    }
    minutes(
        "minutes = 2026-01-01",
        "The minutes must be a text, a finite decimal number, true, false, a list or a table, not \"2026-01-01\".",
    );
    minutes(
        "minutes = 0x10",
        "The minutes must be a text, a finite decimal number, true, false, a list or a table, not \"0x10\".",
    );
    minutes("minutes = 10\nnot", "After this key an = and a value are missing.");
    says("[start]", "[start", "This is never closed: a ] is missing.");
    says("words = [\"puck\", \"differential\", \"top weight\"]", "words = [\"puck\"", "Before this a ] is missing.");
    says("title = \"The puck\"", "title = \"The puck", "A quotation mark is missing at the end of this line.");
    says("words = [\"puck\", ", "words = [\"puck, ", "A quotation mark is missing on this line.");
}

#[test]
fn the_form() {
    says(
        "pithball.lesson/1",
        "pithball.lesson/2",
        "The format must be \"pithball.lesson/1\", not \"pithball.lesson/2\".",
    );
    says("course = \"What's inside\"\n", "", "The key \"course\" is missing.");
    says("course =", "curse =", "The key \"course\" is missing.");
    says(
        "id = \"the-puck\"",
        "id = \"The Puck\"",
        "The id must be lower-case letters, digits and single hyphens, at most 80, not \"The Puck\".",
    );
    says(
        "## Lift the puck\n",
        "## A small heavy disc\n",
        "The id must be a name that no other step has, not \"a-small-heavy-disc\" again.",
    );
    says(
        "## Why\n",
        "## ?\n",
        "A number of the steps must be a heading with letters or digits, or a key \"id\", not \"?\".",
    );
    says(
        "kind = \"explore\"",
        "kind = \"expiore\"",
        "The kind must be one of \"explore\", \"predict\", \"do\", \"observe\", \"explain\", not \"expiore\".",
    );
    says("[number]", "[nmber]", "A prediction is either a choice, a number or a path.");
    says(
        "kind = \"explore\"",
        "title = 3\nkind = \"explore\"",
        "The title must be the heading and the prose, not the key in the block.",
    );
    for text in
        ["", "+++\n+++\n", "+++\nid = 1\n+++\n## A\n", "+++\n+++\nhello", "+++\nsteps = 1\n+++\n", &"x".repeat(300_000)]
    {
        assert!(!problems(text).is_empty(), "{text:?}");
    }
}

/// A mistake hides no other of the form, and none of the numbers another of them.
#[test]
fn several_mistakes_are_told_at_once() {
    let wrong = text("the-puck");
    let wrong = with(&wrong, "minutes = 10", "minutes = 0");
    let wrong = with(&wrong, "order = 3", "ordre = 3");
    let wrong = with(&wrong, "rooms = [\"lane\", \"scale\"]", "rooms = [\"attic\", \"lane\", \"cellar\"]");
    let wrong = with(&wrong, "within = \"near_in\"", "withn = \"near_in\"");
    let wrong = with(&wrong, "want = \"differential_in >= goal_in\"", "want = ");
    let told: Vec<(usize, String)> = problems(&wrong).into_iter().map(|one| (one.line, one.problem.place)).collect();
    let line = |stretch: &str| wrong[..wrong.find(stretch).expect("the stretch")].matches('\n').count() + 1;
    let expected = [
        (1, "order".to_owned()),
        (line("ordre"), "ordre".to_owned()),
        (line("minutes = 0"), "minutes".to_owned()),
        (line("withn"), "steps[1].number.withn".to_owned()),
        (line("want ="), "steps[2]".to_owned()),
        (line("\"attic\""), "steps[3].rooms[0]".to_owned()),
        (line("\"attic\""), "steps[3].rooms[2]".to_owned()),
    ];
    assert_eq!(told, expected);

    let wrong = with(&text("the-puck"), "no-3-three-piece", "no-9");
    let wrong = with(&wrong, "title = \"The puck\"", "title = \"The 3 in puck\"");
    let wrong = with(&wrong, "want = \"differential_in >= goal_in\"", "want = \"differential_in >= gaol_in\"");
    let places: Vec<String> = problems(&wrong).into_iter().map(|one| one.problem.place).collect();
    assert_eq!(places, ["title", "start", "steps[2].check[0].want"]);
}
