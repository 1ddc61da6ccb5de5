//! Scatter, levers and seek on a ball of nested spheres against scipy on the
//! spheres' closed forms (tests/reference/maker_scipy.py): its own Sobol points,
//! its `sobol_indices`, its derivatives and its least squares.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a check that cannot be set up must fail loudly")]

use format::{BallFile, FiguresDoc, LeverDoc, Scatter, ScatteredDoc, Seeker, TargetFile, TolerancesFile};
use pithball_tests::{reference, reference_path};
use serde_json::Value;

fn file(name: &str) -> Vec<u8> {
    std::fs::read(reference_path(&format!("maker/spheres.{name}.json"))).unwrap()
}

fn ball() -> BallFile {
    BallFile::read(&file("ball")).unwrap()
}

fn scattered() -> ScatteredDoc {
    let scatter = Scatter::new(&ball(), &TolerancesFile::read(&file("tolerances")).unwrap()).unwrap();
    scatter.merge(&scatter.run(0, scatter.units())).unwrap()
}

fn number(of: &Value) -> f64 {
    of.as_f64().unwrap_or_else(|| panic!("no number: {of}"))
}

/// The reference has a million balls, we sixteen thousand: what a sample of
/// ours, taken as independent, may be off by is allowed, which for points as
/// even as these is ample.
#[test]
fn balls_spread_as_in_scipy() {
    let (got, want) = (scattered(), reference("maker_scipy.json"));
    let numbers = want["scatter"]["numbers"].as_object().unwrap();
    assert_eq!(numbers.len(), 8);
    for (name, want) in numbers {
        let own = got.numbers.iter().find(|own| own.number == name).unwrap_or_else(|| panic!("{name} is missing"));
        let (mean, deviation) = (number(&want["mean"]), number(&want["deviation"]));
        let by_chance = deviation / (own.count as f64).sqrt();
        assert!((own.mean - mean).abs() < by_chance, "{name}: mean {} for {mean}", own.mean);
        assert!((own.deviation / deviation - 1.0).abs() < 0.01, "{name}: {} for {deviation}", own.deviation);
        let quantiles: Vec<f64> = want["quantiles"].as_array().unwrap().iter().map(number).collect();
        assert_eq!(quantiles.len(), own.quantiles.len());
        let own_error = own.error;
        for (own, want) in own.quantiles.iter().zip(quantiles) {
            assert!(
                (own.at - want).abs() < own_error + 0.05 * deviation,
                "{name}: {} % at {} for {want}",
                own.percent,
                own.at
            );
        }
    }
}

#[test]
fn as_many_pass_as_in_scipy() {
    let (got, want) = (scattered(), reference("maker_scipy.json"));
    let passed = number(&want["scatter"]["passed"]);
    let [from, to] = got.passed.wilson_95;
    assert!((from..=to).contains(&passed), "{passed} of scipy's pass, {from} to {to} of ours");
    assert_eq!(got.scrap.count, 0);
}

/// Ours from 1,024 points, as close as scipy's from 32,768.
#[test]
fn what_costs_most_is_as_in_scipy() {
    let (got, want) = (scattered(), reference("maker_scipy.json"));
    let names: Vec<String> = ball().pieces.iter().map(|piece| piece.name.clone()).collect();
    let costs = want["scatter"]["costs"].as_array().unwrap();
    assert_eq!(costs.len(), got.costs.len());
    for cost in costs {
        let own = got.costs.iter().find(|own| match cost["of"].as_str() {
            Some(place) => own.place == place,
            None => {
                let name = &names[cost["of"][0].as_u64().unwrap() as usize];
                own.part.as_ref() == Some(name) && own.place.ends_with(cost["of"][1].as_str().unwrap())
            }
        });
        let own = own.unwrap_or_else(|| panic!("{} is missing", cost["of"]));
        for (name, want) in cost["total"].as_object().unwrap() {
            let of = own.of.iter().find(|of| of.number == name).unwrap();
            for (got, want) in [(of.first, &cost["first"][name]), (of.total, want)] {
                let (got, want) = (got.unwrap(), number(want));
                assert!((got - want).abs() < 0.01, "{} {name}: {got} for {want}", cost["of"]);
            }
        }
    }
}

fn figure(of: &FiguresDoc, name: &str) -> f64 {
    match name {
        "weight_lb" => of.weight_lb,
        "low_rg_in" => of.low_rg_in,
        "differential_in" => of.differential_in,
        "top_weight_oz" => of.top_weight_oz,
        _ => panic!("no figure {name}"),
    }
}

/// To what we say they may be wrong by, which is little of what they are.
#[test]
fn levers_are_scipys_derivatives() {
    let ball = ball();
    let levers: Vec<LeverDoc> = ball.lever_docs(0, ball.controls()).unwrap();
    let want = reference("maker_scipy.json");
    let wanted = want["levers"].as_array().unwrap();
    assert_eq!(wanted.len(), 12);
    for want in wanted {
        let control = want["control"].as_str().unwrap();
        let own = levers.iter().find(|own| own.control.control == control);
        let own = own.unwrap_or_else(|| panic!("{control} is missing"));
        let raised = own.raised.unwrap_or_else(|| panic!("{control} cannot be raised"));
        for (name, per_unit) in want["per_unit"].as_object().unwrap() {
            let want = number(per_unit) * own.step;
            let (by, error) = (figure(&raised.by, name), figure(&raised.error, name));
            let off = (by - want).abs();
            assert!(off <= error + 1e-9 * want.abs(), "{control} {name}: {by} for {want}, error {error}");
            assert!(error <= 1e-3 * want.abs() + 1e-7, "{control} {name}: {by} may be wrong by {error}");
        }
    }
}

/// scipy found one core, and it is the one that every start of ours finds.
#[test]
fn seek_finds_scipys_core() {
    let seeker = Seeker::new(&ball(), &TargetFile::read(&file("target")).unwrap()).unwrap();
    let sought = seeker.merge(&seeker.run(0, seeker.units())).unwrap();
    let want = reference("maker_scipy.json");
    let [core] = &want["seek"].as_array().unwrap()[..] else { panic!("more than one core") };
    assert_eq!(sought.met, sought.tried);
    let [answer] = &sought.answers[..] else { panic!("{} answers", sought.answers.len()) };
    for (own, want) in answer.values.iter().zip(core.as_array().unwrap()) {
        // As far as what counts as met lets a density or a place drift.
        let want = number(want);
        assert!((own.value / want - 1.0).abs() < 1e-3, "{}: {} for {want}", own.control.control, own.value);
    }
}
