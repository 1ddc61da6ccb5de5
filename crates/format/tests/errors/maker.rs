//! The maker's files.

use crate::support::{BALL, told, with};
use pithball_format::{BallFile, Problem, TargetFile, TolerancesFile};

const TOLERANCES: &str = r#"{
  "format": "pithball.tolerances/1",
  "seed": 7,
  "cover": { "density_percent": 0.5, "core_shift_in": [0.02, 0.02, 0.02] },
  "every_piece": { "density_percent": 1 },
  "pieces": [ { "piece": "inner core", "at_in": [0.01, 0.01, 0.02], "tilt_deg": 0.5 } ],
  "accept": { "weight_lb": { "at_least": 14.9, "at_most": 15.1 } }
}"#;

/// The problem, which must not be in the ball's file.
fn of_tolerances(problem: pithball_format::ScatterProblem) -> Problem {
    let in_ball = matches!(problem, pithball_format::ScatterProblem::Ball(_));
    assert!(!in_ball, "{problem:?}");
    let problem = Problem::from(problem);
    // As it stands in the tolerances file by itself.
    let place = problem.place.strip_prefix("tolerances").expect("its file").trim_start_matches('.').to_owned();
    Problem { place, ..problem }
}

/// [`TOLERANCES`] for [`BALL`] with one stretch replaced.
#[track_caller]
fn tolerances(old: &str, new: &str, place: &str, found: &str) {
    let ball = BallFile::read(BALL.as_bytes()).expect("the ball");
    let read = TolerancesFile::read(with(TOLERANCES, old, new).as_bytes());
    let made = read.map(|file| pithball_format::Scatter::new(&ball, &file).expect_err("a mistake that goes unseen"));
    let problem = made.map_or_else(|problem| problem, of_tolerances);
    told(&problem, place, found);
}

#[test]
fn a_tolerances_file() {
    tolerances("/1", "/2", "format", "\"pithball.tolerances/2\"");
    tolerances("\"seed\": 7,", "", "seed", "nothing");
    tolerances("7", "0.5", "seed", "0.5");
    tolerances("7,", "7, \"balls\": 10,", "balls", "10");
    tolerances("0.5, \"core", "101, \"core", "cover.density_percent", "101");
    tolerances("0.02] }", "-0.02] }", "cover.core_shift_in[2]", "-0.02");
    tolerances("inner core", "heart", "pieces[0].piece", "\"heart\"");
    tolerances(
        "{ \"piece\": \"inner core\", ",
        "{ \"piece\": \"inner core\", \"tilt_deg\": 1 }, { \"piece\": \"inner core\", ",
        "pieces[1].piece",
        "\"inner core\" again",
    );
    tolerances("0.5 }", "\"half\" }", "pieces[0].tilt_deg", "\"half\"");
    tolerances("14.9", "15.9", "accept.weight_lb", "at_least 15.9 and at_most 15.1");
    tolerances("at_most", "most", "accept.weight_lb.most", "the unknown key \"most\"");
    let none = "\"density_percent\": 0.5, \"core_shift_in\": [0.02, 0.02, 0.02]";
    let text = with(TOLERANCES, none, "")
        .replace("\"density_percent\": 1", "")
        .replace("\"at_in\": [0.01, 0.01, 0.02], \"tilt_deg\": 0.5", "\"tilt_deg\": 0");
    let ball = BallFile::read(BALL.as_bytes()).expect("the ball");
    let file = TolerancesFile::read(text.as_bytes()).expect("it can be read");
    let problem = of_tolerances(pithball_format::Scatter::new(&ball, &file).expect_err("nothing strays"));
    assert_eq!((problem.place.as_str(), problem.found.as_str()), ("", "no tolerance above 0"));
}

const TARGET: &str = r#"{
  "format": "pithball.target/1",
  "want": { "weight_lb": 15, "rg_in": 2.5, "cover_at_least_in": 0.75 },
  "free": [
    { "control": "pieces[0].density_g_cc", "from": 0.7, "to": 1.1 },
    { "control": "pieces[1].shape.wide", "from": 0.8, "to": 1.2 }
  ]
}"#;

/// [`TARGET`] for [`BALL`] with one stretch replaced.
#[track_caller]
fn target(old: &str, new: &str, place: &str, found: &str) {
    let ball = BallFile::read(BALL.as_bytes()).expect("the ball");
    let read = TargetFile::read(with(TARGET, old, new).as_bytes());
    let made = read.map(|file| pithball_format::Seeker::new(&ball, &file).expect_err("a mistake that goes unseen"));
    let problem = made.map_or_else(
        |problem| problem,
        |problem| {
            let problem = Problem::from(problem);
            let place = problem.place.strip_prefix("target.").expect("its file").to_owned();
            Problem { place, ..problem }
        },
    );
    told(&problem, place, found);
}

#[test]
fn a_target_file() {
    target("/1", "/2", "format", "\"pithball.target/2\"");
    target("15,", "0,", "want.weight_lb", "0");
    target("2.5,", "\"low\",", "want.rg_in", "\"low\"");
    target("0.75", "-0.75", "want.cover_at_least_in", "-0.75");
    target("\"weight_lb\": 15, \"rg_in\": 2.5, \"cover_at_least_in\": 0.75", "", "want", "no wanted number");
    target("rg_in", "rg", "want.rg", "the unknown key \"rg\"");
    target("0.7,", "1.1,", "free[0]", "from 1.1 to 1.1");
    target("pieces[1].shape.wide", "pieces[0].shape.wide", "free[1].control", "\"pieces[0].shape.wide\"");
    target("pieces[1].shape.wide", "pieces[0].density_g_cc", "free[1]", "a control that is free already");
    target("\"want\"", "\"starts\": 1001, \"want\"", "starts", "1001");
    target("\"want\"", "\"within_limits\": \"yes\", \"want\"", "within_limits", "\"yes\"");
}
