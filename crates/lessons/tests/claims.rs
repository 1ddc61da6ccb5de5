//! What lessons say of their numbers is true of them, whatever the learner made.

#![allow(clippy::expect_used, clippy::panic, reason = "a check that fails stops its test")]

mod common;

use std::fs;

use common::{read, scenarios};
use pithball_lessons::{Bench, Block, Lesson, Said, plain};
use serde_json::json;

fn lesson(name: &str) -> Lesson {
    let text = fs::read_to_string(scenarios().join(format!("lessons/{name}.lesson.md"))).expect("a lesson");
    read(&text).unwrap_or_else(|problems| panic!("{problems:#?}"))
}

/// Every ball that passes the task rolls sooner, and by what the text says, as
/// it shows both places.
#[test]
fn weight_brought_in_rolls_sooner() {
    let lesson = lesson("why-a-house-ball-goes-long");
    let start = lesson.opens(2, None).expect("a bench");
    let mut passed = 0;
    for (diameter_in, height_in, body_g_cc) in [
        (2.4, 4.0, 1.12),
        (3.0, 3.0, 1.09),
        (3.0, 4.0, 1.03),
        (3.6, 2.0, 1.10),
        (3.6, 3.0, 1.0),
        (3.6, 4.0, 0.89),
        (4.0, 2.0, 1.06),
        (4.0, 4.0, 0.77),
        (4.6, 2.0, 0.97),
        (5.2, 1.0, 1.09),
        (5.2, 2.0, 0.87),
    ] {
        let mut doc = start.doc().clone();
        doc["ball"]["pieces"][1]["shape"]["diameter_in"] = json!(diameter_in);
        doc["ball"]["pieces"][1]["shape"]["height_in"] = json!(height_in);
        doc["ball"]["pieces"][0]["density_g_cc"] = json!(body_g_cc);
        let bench = Bench::new(doc).expect("a bench");
        let ball = format!("{diameter_in} by {height_in}, {body_g_cc}");
        let checked = lesson.check(2, &start, &bench).expect("a check");
        assert!(checked.passed, "{ball}: {:?}", checked.missing);
        let shown = lesson.shown(3, &bench, &bench).expect("a text");
        let Some(Block::Paragraph { said }) = shown.text.first() else { panic!("a paragraph") };
        let values: Vec<&Said> = said.iter().filter(|said| matches!(said, Said::Value { .. })).collect();
        let [flat_ft, flat_in, rg_in, roll_ft, sooner_ft] = values[..] else { panic!("{values:?}") };
        let number = |said: &Said| -> f64 {
            let text = plain(std::slice::from_ref(said));
            text.split(' ').next().expect("a number").parse().expect("a number")
        };
        assert!(number(rg_in) < number(flat_in), "{ball}");
        assert!(number(roll_ft) < number(flat_ft), "{ball}");
        assert!((number(flat_ft) - number(roll_ft) - number(sooner_ft)).abs() < 1e-9, "{ball}");
        passed += 1;
    }
    assert_eq!(passed, 11);
}

/// 15.04 less 14.51 is 0.53, as both are shown, though the numbers behind them differ by less.
#[test]
fn a_difference_is_that_of_the_numbers_shown() {
    let lesson = lesson("why-a-house-ball-goes-long");
    let start = lesson.opens(1, None).expect("a bench");
    let shown = lesson.shown(1, &start, &start).expect("a text");
    let Some(Block::Paragraph { said }) = shown.text.first() else { panic!("a paragraph") };
    let text = plain(said);
    assert!(text.contains("15.04 lb. That is 0.53 lb more"), "{text}");
    assert!(text.contains("which has 14.51 lb"), "{text}");
}
