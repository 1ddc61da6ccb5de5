#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use core::f64::consts::PI;

use nalgebra::Vector3;

use super::*;
use crate::ball::Ball;
use crate::recipe::{Hole, Piece, Shape, Solid};
use crate::weigh::weigh;

fn uniform(diameter_in: f64, density_g_cc: f64) -> Recipe {
    let cover_density_kg_m3 = density_g_cc * KG_M3_PER_G_CC;
    Recipe { diameter_m: diameter_in * M_PER_IN, cover_density_kg_m3, pieces: vec![], holes: vec![] }
}

/// A uniform ball that weighs this much: ρ = m / (π d³/6).
fn weighing(weight_lb: f64) -> Recipe {
    let mut recipe = uniform(8.55, 1.0);
    recipe.cover_density_kg_m3 = weight_lb * KG_PER_LB / (PI / 6.0 * recipe.diameter_m.powi(3));
    recipe
}

/// A ball with an upright egg of this density and semi-axes (in) in it.
fn with_core(density_g_cc: f64, semi_in: [f64; 3], turn_rad: [f64; 3]) -> Recipe {
    let shape = Shape::Ellipsoid { size_m: semi_in.map(|a| 2.0 * a * M_PER_IN) };
    let solid = Solid { shape, squash: [1.0; 2], turn_rad, at_m: Vector3::zeros() };
    let mut recipe = uniform(8.55, 1.1);
    recipe.pieces.push(Piece { density_kg_m3: density_g_cc * KG_M3_PER_G_CC, solid, cuts: vec![] });
    recipe
}

fn weighed(recipe: &Recipe) -> Weighed {
    weigh(&Ball::new(recipe).expect("a ball that can be made"))
}

fn finding(recipe: &Recipe, id: RuleId) -> Finding {
    check(recipe, &weighed(recipe), None)
        .into_iter()
        .find(|finding| finding.rule.id == id)
        .expect("every rule is there")
}

#[track_caller]
fn verdict(recipe: &Recipe, id: RuleId, expected: Verdict) {
    let finding = finding(recipe, id);
    assert_eq!(finding.verdict, expected, "{finding:?}");
}

#[test]
fn every_rule_once_each_with_its_words() {
    let findings = check(&weighing(15.0), &weighed(&weighing(15.0)), None);
    for (n, finding) in findings.iter().enumerate() {
        assert_eq!(findings.iter().filter(|other| other.rule.id == finding.rule.id).count(), 1);
        assert!(!finding.rule.name.is_empty() && !finding.rule.edition.is_empty(), "rule {n}");
        if finding.verdict == Verdict::NotComputed {
            assert!(!finding.rule.otherwise.is_empty(), "{} says what would tell", finding.rule.name);
        }
        for text in [finding.rule.name, finding.rule.otherwise, finding.rule.edition] {
            assert!(!text.contains("approve") && !text.contains("certif"), "{text}");
        }
    }
}

#[test]
fn weight_and_diameter_at_their_limits() {
    // USBC: at most 16.00 lb; 8.500 to 8.595 in, the limits themselves allowed.
    verdict(&weighing(16.0), RuleId::Weight, Verdict::Pass);
    verdict(&weighing(16.001), RuleId::Weight, Verdict::Fail);
    verdict(&weighing(1.0), RuleId::Weight, Verdict::Pass);
    for (diameter_in, expected) in
        [(8.5, Verdict::Pass), (8.595, Verdict::Pass), (8.4999, Verdict::Fail), (8.5951, Verdict::Fail)]
    {
        verdict(&uniform(diameter_in, 1.2), RuleId::Diameter, expected);
    }
}

#[test]
fn the_densest_part_counts() {
    let heavy = with_core(3.8, [0.5, 0.5, 0.5], [0.0; 3]);
    let found = finding(&heavy, RuleId::Density);
    assert_eq!((found.verdict, found.part), (Verdict::Pass, Some(Part::Piece(0))));
    assert!((found.found.expect("a value") - 3.8).abs() < 1e-12);
    verdict(&with_core(3.801, [0.5, 0.5, 0.5], [0.0; 3]), RuleId::Density, Verdict::Fail);
    assert_eq!(finding(&weighing(15.0), RuleId::Density).part, Some(Part::Cover));
}

#[test]
fn rg_is_for_thirteen_pounds_and_up() {
    for (weight_lb, expected) in [(12.99, Verdict::NotApplicable), (13.0, Verdict::Pass), (16.0, Verdict::Pass)] {
        verdict(&weighing(weight_lb), RuleId::LowRg, expected);
        verdict(&weighing(weight_lb), RuleId::HighRg, expected);
    }
    // A shell as heavy as lead about a light middle: RG near √(2/3)·R.
    let mut hollow = with_core(0.3, [3.9, 3.9, 3.9], [0.0; 3]);
    hollow.cover_density_kg_m3 = 3700.0;
    assert!(weighed(&hollow).mass_kg > 13.0 * KG_PER_LB);
    verdict(&hollow, RuleId::HighRg, Verdict::Fail);
    // A dense small middle in a light ball: RG far below 2.460 in.
    let mut dense = with_core(3.8, [2.3, 2.3, 2.3], [0.0; 3]);
    dense.cover_density_kg_m3 = 700.0;
    assert!(weighed(&dense).mass_kg > 13.0 * KG_PER_LB);
    verdict(&dense, RuleId::LowRg, Verdict::Fail);
    verdict(&dense, RuleId::HighRg, Verdict::Pass);
}

#[test]
fn a_verdict_within_the_error_is_no_verdict() {
    let recipe = with_core(2.0, [1.5, 1.5, 2.5], [0.0; 3]);
    let mut near = weighed(&recipe);
    let verdict = |weighed: &Weighed, id| {
        check(&recipe, weighed, None).into_iter().find(|f| f.rule.id == id).expect("every rule is there").verdict
    };
    near.relative_error = 5e-7;
    near.mass_kg = 16.0 * KG_PER_LB * (1.0 - 4e-7);
    assert_eq!(verdict(&near, RuleId::Weight), Verdict::TooClose);
    near.mass_kg = 16.0 * KG_PER_LB * (1.0 + 4e-7);
    assert_eq!(verdict(&near, RuleId::Weight), Verdict::TooClose);
    near.mass_kg = 16.0 * KG_PER_LB * (1.0 + 6e-7);
    assert_eq!(verdict(&near, RuleId::Weight), Verdict::Fail);
    // The error of a difference of two RGs is that of both.
    near.rg_m = [2.5, 2.52, 2.56 + 2e-6].map(|rg| rg * M_PER_IN);
    assert_eq!(verdict(&near, RuleId::Differential), Verdict::TooClose);
    near.rg_m[2] = (2.56 + 4e-6) * M_PER_IN;
    assert_eq!(verdict(&near, RuleId::Differential), Verdict::Fail);
    // Whether the RG rule is for the ball at all.
    near.mass_kg = 13.0 * KG_PER_LB * (1.0 - 4e-7);
    near.rg_m[0] = 2.4 * M_PER_IN;
    assert_eq!(verdict(&near, RuleId::LowRg), Verdict::TooClose);
}

#[test]
fn the_low_rg_axis_is_measured_from_the_pin() {
    // An egg stood a turned away from the pin: its low axis is its long axis, a·R from the pin.
    for turn_rad in [0.0, 0.1, 0.3] {
        let recipe = with_core(2.2, [1.5, 1.5, 2.5], [turn_rad, 0.0, 0.0]);
        let found = finding(&recipe, RuleId::LowRgMark);
        assert!((found.found.expect("a value") - 4.275 * turn_rad).abs() <= found.error + 1e-9, "{found:?}");
        // 0.3 rad is 1.28 in, over the 1 in allowed (USBC, 31 January 2012).
        assert_eq!(found.verdict, if turn_rad > 0.2 { Verdict::Fail } else { Verdict::Pass });
    }
    // No one low axis: a uniform ball, and a flat core, low all round its rim.
    verdict(&weighing(15.0), RuleId::LowRgMark, Verdict::NotComputed);
    verdict(&with_core(0.5, [1.5, 1.5, 2.5], [0.0; 3]), RuleId::LowRgMark, Verdict::NotComputed);
}

#[test]
fn a_drilled_ball_has_rules_of_its_own() {
    let hole = |x: f64| {
        let entry = Vector3::new(x, 0.2, 1.0);
        Hole { entry, axis: -entry, diameter_m: 0.025, depth_m: 0.06 }
    };
    let mut recipe = with_core(2.2, [1.5, 1.5, 2.5], [0.0; 3]);
    for id in [RuleId::StaticBalance, RuleId::Holes, RuleId::BalanceHole] {
        verdict(&recipe, id, Verdict::NotApplicable);
    }
    recipe.holes = vec![hole(0.0)];
    verdict(&recipe, RuleId::StaticBalance, Verdict::Pass);
    verdict(&recipe, RuleId::Holes, Verdict::Pass);
    verdict(&recipe, RuleId::BalanceHole, Verdict::NotComputed);
    let worst = finding(&recipe, RuleId::StaticBalance).found.expect("a value");
    // One hole alone: the ball lacks π r² t of cover, so it is that much lighter there.
    let taken_oz = 1100.0 * PI * 0.0125_f64.powi(2) * 0.06 / KG_PER_OZ;
    assert!(worst > 0.5 * taken_oz && worst < taken_oz, "{worst} of {taken_oz}");
    recipe.holes = (0..6).map(|n| Hole { diameter_m: 0.05, ..hole(0.05 * f64::from(n)) }).collect();
    verdict(&recipe, RuleId::Holes, Verdict::Fail);
    verdict(&recipe, RuleId::StaticBalance, Verdict::NotComputed);
}
