//! What is an expression, what is none and where, and what is said of one that
//! does not hold.

#![allow(clippy::expect_used, clippy::panic, reason = "a check that fails stops its test")]

use std::collections::{BTreeMap, BTreeSet};

use proptest::prelude::*;
use serde_json::{Value, json};

use super::{Names, Scene, Type, parse, unmet};
use crate::bench::Bench;
use crate::quantity::Quantity;
use crate::said::plain;

fn names() -> Names {
    Names {
        states: BTreeSet::from(["other".to_owned()]),
        given: BTreeMap::from([("goal".to_owned(), Type::Number(Quantity::Size))]),
        locals: BTreeMap::new(),
    }
}

fn bench() -> Bench {
    let ball: Value =
        serde_json::from_str(include_str!("../../../../scenarios/balls/no-3-three-piece.ball.json")).expect("JSON");
    let mut shot: Value =
        serde_json::from_str(include_str!("../../../../scenarios/shots/opening.shot.json")).expect("JSON");
    shot.as_object_mut().expect("an object").remove("ball");
    Bench::new(json!({ "ball": ball, "shot": shot })).expect("a bench")
}

#[track_caller]
fn with_scene<T>(look: impl Fn(&Scene<'_>) -> T) -> T {
    let (now, start) = (bench(), bench());
    let states = BTreeMap::from([("other".to_owned(), bench())]);
    let goal = parse("2.50 in", &Names::default()).expect("a number");
    let given = BTreeMap::from([("goal".to_owned(), goal)]);
    let locals = BTreeMap::new();
    look(&Scene { now: &now, start: &start, states: &states, given: &given, first: &start, locals: &locals })
}

#[track_caller]
fn is(text: &str, expected: f64) {
    let expr = parse(text, &names()).unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
    let found = with_scene(|scene| scene.number(&expr)).expect("a number");
    assert!((found - expected).abs() <= 1e-9 * expected.abs().max(1.0), "{text} is {found}, not {expected}");
}

#[track_caller]
fn holds(text: &str, expected: bool) {
    let expr = parse(text, &names()).unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
    assert_eq!(with_scene(|scene| scene.truth(&expr)), Ok(expected), "{text}");
}

#[track_caller]
fn refused(text: &str, at: usize, found: &str) {
    let fault = parse(text, &names()).expect_err(text);
    assert_eq!((fault.at, fault.found.as_str()), (at, found), "{text}: {fault:?}");
    assert!(!fault.accepted.is_empty());
}

#[test]
fn arithmetic_is_as_written() {
    is("1 + 2 * 3 - 4 / 2", 5.0);
    is("-(1 - 3) * 2", 4.0);
    is("8 - 2 - 1", 5.0);
    is("3 in + 1.5 in", 4.5);
    is("3 in / 2 in", 1.5);
    is("min(3 ft, 2 ft) + max(1 ft, 4 ft)", 6.0);
    is("abs(2 lb - 5 lb)", 3.0);
    is("50 %", 0.5);
    is("power(100 % - 10 %, 2)", 0.81);
    is("shot.release.revs_rpm / start.shot.release.revs_rpm", 1.0);
    is("ball.pieces[2].at_in[2]", 2.95);
    is("ball.pieces[\"puck\"].density_g_cc", 3.0);
    is("goal", 2.5);
    is("path_board[0 ft]", 24.0);
}

#[test]
fn comparisons_and_words_between_them() {
    holds("rg_in > 2.5 in and rg_in < 2.6 in", true);
    holds("rg_in < 2.5 in or not weight_lb > 20 lb", true);
    holds("other.rg_in = rg_in", true);
    holds("rg_in != start.rg_in", false);
    holds("1 < 2 and (2 < 1 or 3 >= 3)", true);
}

#[test]
fn what_is_no_expression_is_refused_at_its_place() {
    refused("", 0, "the end");
    refused("rg_in <=", 8, "the end");
    refused("rg_in <= 2.5", 6, "\"<=\"");
    refused("rg_in <= 2.5 lb", 6, "\"<=\"");
    refused("rg_im <= 2.5 in", 0, "\"rg_im\"");
    refused("nobody.rg_in > 1 in", 0, "\"nobody\"");
    refused("rg_in * weight_lb", 6, "\"*\"");
    refused("rg_in # 2", 6, "'#'");
    refused("(rg_in", 6, "the end");
    refused("rg_in and 1 < 2", 6, "\"and\"");
    refused("not rg_in", 0, "\"not\"");
    refused("piece_weight_lb", 15, "the end");
    refused("piece_weight_lb[1]", 16, "\"1\"");
    refused("path_board[3 in]", 11, "\"3 in\"");
    refused("1 < 2 < 3", 6, "\"<\"");
    refused("abs(1, 2)", 0, "\"abs\"");
    refused("ball.pieces[1.5].density_g_cc", 12, "\"1.5\"");
    refused("é + 1", 0, "'é'");
    refused("1 in + é", 7, "'é'");
}

#[test]
fn depth_and_length_are_bounded() {
    let deep = format!("{}1{}", "(".repeat(200), ")".repeat(200));
    assert!(parse(&deep, &names()).expect_err("too deep").accepted.contains("deep"));
    let far = format!("{}3 ft{}", "path_board[".repeat(20), "]".repeat(20));
    assert!(parse(&far, &names()).is_err());
    let long = "1 + ".repeat(200);
    assert!(parse(&long, &names()).expect_err("too long").accepted.contains("characters"));
    // The longest chain that is let in is no deeper than its words.
    let chain = format!("{}1", "1+".repeat(249));
    is(&chain, 250.0);
}

#[test]
fn what_is_missing_is_said_in_words() {
    let said = |text: &str| {
        let expr = parse(text, &names()).expect("an expression");
        with_scene(|scene| unmet(&expr, scene).iter().map(|said| plain(said)).collect::<Vec<_>>())
    };
    assert_eq!(said("rg_in <= 2.50 in"), ["The RG is 2.535 in; it must be at most 2.500 in."]);
    assert_eq!(said("2.50 in >= rg_in"), ["The RG is 2.535 in; it must be at most 2.500 in."]);
    assert_eq!(said("rg_in <= goal"), ["The RG is 2.535 in; it must be at most 2.500 in."]);
    assert_eq!(
        said("rg_in < start.rg_in and weight_lb > 16 lb"),
        [
            "The RG is 2.535 in; it must be less than the RG at the start, 2.535 in.",
            "The weight of the ball is 15.04 lb; it must be more than 16.00 lb.",
        ]
    );
    assert_eq!(
        said("abs(board_at_pins - 20 boards) <= 1 board"),
        ["The board at the pins is 17.5; it must be within 1 board of 20.0."]
    );
    assert_eq!(
        said("ball.pieces[\"puck\"].density_g_cc > 3.5 g/cc"),
        ["The density of the puck is 3.00 g/cc; it must be more than 3.50 g/cc."]
    );
    assert_eq!(said("oil_length_ft > 3 ft"), ["The lane's friction is given in zones, without oil."]);
    assert_eq!(said("rg_in < 3 in"), Vec::<String>::new());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    /// Whatever is typed is read or refused at a place within it, and never panics.
    #[test]
    fn any_text_is_read_or_refused(text in "[ -~é]{0,60}") {
        if let Err(fault) = parse(&text, &names()) {
            prop_assert!(fault.at <= text.chars().count());
        }
    }

    #[test]
    fn any_words_are_read_or_refused(words in prop::collection::vec(prop::sample::select(vec![
        "rg_in", "start", ".", "other", "ball", "pieces", "[", "]", "0", "1.5 in", "2 lb", "(", ")", "<=", "<", "and", "or",
        "not", "+", "-", "*", "/", "abs", "min", ",", "\"puck\"", "path_board", "power", "goal", "=",
    ]), 0..40)) {
        let text = words.join(" ");
        if let Err(fault) = parse(&text, &names()) {
            prop_assert!(fault.at <= text.chars().count());
        }
    }
}
