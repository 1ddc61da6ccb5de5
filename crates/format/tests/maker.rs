//! What a maker sees in the balls of the house.

#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use std::fs;
use std::path::Path;

use physics::weigh::weigh;
use pithball_format::{BallFile, Scatter, ScatteredDoc, TolerancesFile};

fn ball(name: &str) -> BallFile {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios/balls").join(format!("{name}.ball.json"));
    BallFile::read(&fs::read(path).expect("a file")).expect("a ball")
}

/// With the usual tolerances, the same for every piece of every ball.
fn scattered(ball: &BallFile, balls: u32) -> ScatteredDoc {
    let weighed = weigh(&ball.build().expect("a ball that can be made"));
    let tolerances = TolerancesFile { balls: Some(balls), ..TolerancesFile::usual(&weighed) };
    let scatter = Scatter::new(ball, &tolerances).expect("tolerances for this ball");
    scatter.merge(&scatter.run(0, scatter.units())).expect("all units")
}

#[test]
fn a_one_piece_core_is_more_robust_than_a_five_piece_one() {
    // More pieces, more chances for scrap (common practice, no source).
    let (one, five) = (scattered(&ball("no-5-thick-cover"), 4000), scattered(&ball("no-6-five-piece"), 4000));
    assert!(one.passed.wilson_95[0] > five.passed.wilson_95[1], "{:?} {:?}", one.passed, five.passed);
    let spread = |doc: &ScatteredDoc, word: &str| {
        doc.numbers.iter().find(|one| one.number == word).expect("a number of the ball").deviation
    };
    for word in ["weight_lb", "low_rg_in", "differential_in", "top_weight_oz", "pin_to_cg_in"] {
        assert!(spread(&one, word) < spread(&five, word), "{word}");
    }
}

#[test]
fn usual_tolerances_are_a_file_that_can_be_read() {
    for name in ["no-1-simple", "no-3-three-piece", "no-4-nested-core"] {
        let ball = ball(name);
        let usual = TolerancesFile::usual(&weigh(&ball.build().expect("a ball")));
        let text = serde_json::to_string(&usual).expect("JSON");
        assert_eq!(TolerancesFile::read(text.as_bytes()).expect("a file"), usual);
        let doc = scattered(&ball, 1000);
        assert_eq!(doc.passed.count + doc.seconds.count + doc.scrap.count, 1000);
        // A house ball as its recipe has it is a good one.
        assert!(doc.passed.share > 0.9, "{name}: {:?}", doc.passed);
    }
}

#[test]
fn the_five_piece_ball_is_the_dearest_to_pour_and_every_house_ball_can_be_poured() {
    // More pieces, more cost (common practice, no source).
    let names = [
        "no-1-simple",
        "no-2-two-piece",
        "no-3-three-piece",
        "no-4-nested-core",
        "no-5-thick-cover",
        "no-6-five-piece",
    ];
    let poured = names.map(|name| ball(name).pour(None).expect("a ball that can be made"));
    for doc in &poured {
        assert!(doc.pourable, "{}: {:?}", doc.ball, doc.faults);
        assert!(doc.cautions.is_empty(), "{}: {:?}", doc.ball, doc.cautions);
        let sum: f64 = doc.cost.iter().map(|part| part.cost).sum();
        assert!((sum - doc.cost_index).abs() < 1e-12);
    }
    let (five, others) = poured.split_last().expect("six balls");
    assert_eq!(five.pours.len(), 6);
    for other in others {
        assert!(five.cost_index > other.cost_index + 1.0, "{} {}", other.ball, other.cost_index);
        // And for that reason: more pours in more moulds.
        assert!(five.cost[0].cost > other.cost[0].cost && five.cost[1].cost > other.cost[1].cost);
    }
}

#[test]
fn what_stands_in_the_way_of_pouring() {
    let mut heavy = ball("no-2-two-piece");
    heavy.pieces[1].density_g_cc = 3.9;
    heavy.pieces[1].at_in = Some([0.0, 0.0, 0.4]);
    let doc = heavy.pour(Some(0.1)).expect("a ball that can be made");
    assert!(
        !doc.pourable && doc.faults[0].contains("3.9 g/cc is over the published limit of 3.80"),
        "{:?}",
        doc.faults
    );
    assert_eq!(heavy.pour(Some(1.0)).expect_err("all is lost").place, "waste");
}

#[test]
fn a_control_turned_is_the_file_with_that_number() {
    let nested = ball("no-4-nested-core");
    let turned = nested.turned("pieces[1].density_g_cc", 2.25).expect("a control");
    assert_eq!(turned.pieces[1].density_g_cc, 2.25);
    assert_eq!(BallFile { pieces: nested.pieces.clone(), ..turned.clone() }, nested);
    // A factor of 1 changes nothing; the same twice is the file itself.
    assert_eq!(nested.turned("pieces[1].scale", 1.0).expect("a control"), nested);
    assert_eq!(turned.turned("pieces[1].density_g_cc", 2.25).expect("a control"), turned);
    assert_eq!(nested.turned("pieces[9].scale", 1.0).expect_err("no such piece").place, "control");
    assert_eq!(nested.turned("pieces[1].scale", f64::NAN).expect_err("no number").place, "value");
}
