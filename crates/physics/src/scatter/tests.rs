use core::f64::consts::PI;

use super::{
    Distribution, Number, Plan, Reason, Scatter, ScatterError, Scattered, Source, Spread, Tolerance, Window, Windows,
    sample, sensitivity,
};
use crate::ball::Ball;
use crate::recipe::{Piece, Recipe, Shape, Solid};
use crate::units::{KG_PER_LB, M_PER_IN};
use crate::weigh::weigh;

fn piece(density_kg_m3: f64, shape: Shape, z_in: f64) -> Piece {
    let solid = Solid { shape, squash: [1.0; 2], turn_rad: [0.0; 3], at_m: [0.0, 0.0, z_in * M_PER_IN].into() };
    Piece { density_kg_m3, solid, cuts: vec![] }
}

fn sphere(diameter_in: f64) -> Shape {
    Shape::Sphere { diameter_m: diameter_in * M_PER_IN }
}

fn ball(pieces: Vec<Piece>) -> Recipe {
    Recipe { diameter_m: 8.55 * M_PER_IN, cover_density_kg_m3: 1180.0, pieces, holes: vec![] }
}

fn plan(tolerances: &[(Source, f64)]) -> Plan {
    Plan {
        tolerances: tolerances.iter().map(|(source, within)| Tolerance { source: *source, within: *within }).collect(),
        spread: Spread::Even,
        windows: Windows::default(),
        balls: 4096,
        seed: 7,
    }
}

fn done(scatter: &Scatter) -> Scattered {
    let results: Vec<f64> = (0..scatter.units()).flat_map(|unit| scatter.run(unit)).collect();
    scatter.merge(&results).expect("the results of all units")
}

fn scattered(recipe: &Recipe, plan: Plan) -> Scattered {
    done(&Scatter::new(recipe, plan).expect("a plan that makes sense"))
}

fn number(scattered: &Scattered, number: Number) -> &Distribution {
    scattered.distributions.iter().find(|one| one.number == number).expect("a number of the ball")
}

#[test]
fn indices_of_ishigamis_function() {
    // f = sin x + 7 sin² y + 0.1 z⁴ sin x on (−π, π)³ (Ishigami and Homma,
    // ISUMA 1990), whose indices are known: Saltelli et al., Sensitivity
    // Analysis in Practice, Wiley 2004.
    let (a, b): (f64, f64) = (7.0, 0.1);
    let f = |u: &[f64]| {
        let [x, y, z] = [0, 1, 2].map(|n| PI * u[n]);
        [x.sin() + a * y.sin().powi(2) + b * z.powi(4) * x.sin()]
    };
    let uniform = plan(&[(Source::CoverDensity, 0.1); 3]);
    let mut results = Vec::new();
    for n in 0..4096 {
        sensitivity::base_point(&sample::pair(&uniform, n, 3), f, &mut results);
    }
    let found = sensitivity::indices(&results, 3, 1, 0).expect("a function that varies");
    let variance = a * a / 8.0 + b * PI.powi(4) / 5.0 + b * b * PI.powi(8) / 18.0 + 0.5;
    let v1 = 0.5 * (1.0 + b * PI.powi(4) / 5.0).powi(2);
    let v13 = b * b * PI.powi(8) * (1.0 / 18.0 - 1.0 / 50.0);
    let first = [v1, a * a / 8.0, 0.0].map(|v| v / variance);
    let total = [v1 + v13, a * a / 8.0, v13].map(|v| v / variance);
    for n in 0..3 {
        assert!((found[n].first - first[n]).abs() < 0.02, "{n}: {:?}, {}", found[n], first[n]);
        assert!(
            (found[n].total - total[n]).abs() < found[n].total_error.max(0.003) * 2.0,
            "{n}: {:?}, {}",
            found[n],
            total[n]
        );
    }
}

#[test]
fn a_share_that_can_be_worked_out() {
    // Only the core's density strays, evenly: the weight is a straight line in it.
    let recipe = ball(vec![piece(1900.0, sphere(4.0), 0.0)]);
    let weighed = weigh(&Ball::new(&recipe).expect("a ball"));
    let core_lb = weighed.shares[1].mass_kg / KG_PER_LB;
    let weight_lb = weighed.mass_kg / KG_PER_LB;
    let mut plan = plan(&[(Source::Density(0), 0.04)]);
    // Good from half the tolerance below to a quarter of it above.
    plan.windows[Number::Weight as usize] =
        Window { at_least: Some(weight_lb - 0.02 * core_lb), at_most: Some(weight_lb + 0.01 * core_lb) };
    let scattered = scattered(&recipe, plan);
    assert!((scattered.passed.share - 0.375).abs() < 2e-3, "{:?}", scattered.passed);
    assert!((scattered.seconds.share - 0.625).abs() < 2e-3 && scattered.scrap.count == 0);
    let interval = scattered.passed.wilson;
    assert!(interval[0] <= 0.375 && 0.375 <= interval[1], "{interval:?}");
    let weight = number(&scattered, Number::Weight);
    // An even spread to ±4 %: standard deviation 0.04/√3.
    assert!((weight.deviation / (0.04 * core_lb / 3.0_f64.sqrt()) - 1.0).abs() < 1e-3);
    assert!((weight.quantiles[1] - (weight_lb - 0.9 * 0.04 * core_lb)).abs() < 1e-3 * core_lb);
    assert_eq!(weight.bins.iter().map(|bin| bin.count).sum::<usize>(), 4096);
    let cost = scattered.costs[0].indices.last().and_then(|dear| dear.index).expect("passing varies");
    assert!((cost.first - 1.0).abs() < 0.05 && (cost.total - 1.0).abs() < 0.05, "{cost:?}");
}

#[test]
fn the_same_seed_gives_the_same_bits_however_the_units_are_shared_out() {
    let recipe = ball(vec![piece(900.0, sphere(6.5), 0.0), piece(2400.0, sphere(2.0), 1.5)]);
    let plan = |seed| Plan {
        seed,
        spread: Spread::Bell,
        balls: 1000,
        ..plan(&[
            (Source::At(1, 0), 0.001),
            (Source::Size(1), 0.01),
            (Source::Tilt(1, 1), 0.02),
            (Source::Diameter, 1e-4),
        ])
    };
    let one = Scatter::new(&recipe, plan(1)).expect("a plan");
    let other = Scatter::new(&recipe, plan(1)).expect("a plan");
    let mut units: Vec<(usize, Vec<f64>)> = (0..one.units())
        .rev()
        .map(|unit| (unit, if unit % 2 == 0 { one.run(unit) } else { other.run(unit) }))
        .collect();
    units.sort_by_key(|(unit, _)| *unit);
    let results: Vec<f64> = units.into_iter().flat_map(|(_, results)| results).collect();
    let merged = one.merge(&results).expect("all results");
    assert_eq!(merged, done(&other));
    assert_ne!(merged, done(&Scatter::new(&recipe, plan(2)).expect("a plan")));
    assert_eq!(one.merge(&results[1..]), None);
}

#[test]
fn the_fit_is_as_near_to_weighing_as_it_says() {
    let mut squashed = piece(2500.0, Shape::Cylinder { diameter_m: 0.09, height_m: 0.08 }, 0.2);
    squashed.solid.squash = [0.9, 1.1];
    let ring = Shape::Ring { ring_diameter_m: 0.095, tube_diameter_m: 0.02 };
    let recipe = ball(vec![piece(900.0, sphere(7.0), 0.0), squashed, piece(1800.0, ring, -0.3)]);
    let mut tolerances = vec![(Source::CoverDensity, 0.01), (Source::Diameter, 1e-4), (Source::CoreShift(1), 4e-4)];
    for n in 0..3 {
        tolerances.extend([(Source::Density(n), 0.01), (Source::Size(n), 0.004)]);
        tolerances.extend((0..3).map(|axis| (Source::At(n, axis), 4e-4)));
        tolerances.extend((0..2).map(|axis| (Source::Tilt(n, axis), 0.01)));
    }
    let plan = plan(&tolerances);
    let scatter = Scatter::new(&recipe, plan.clone()).expect("a plan");
    let nominal = &scatter.deviations.nominal;
    for n in 0..40 {
        let off = sample::ball(&plan, n);
        let made = super::apply::made(&recipe, &plan.tolerances, &off);
        let exact = super::numbers::values(&weigh(&Ball::new(&made).expect("a ball")), nominal);
        let fitted = super::numbers::values(&scatter.deviations.fitted(&made, &off), nominal);
        for (k, (exact, fitted)) in exact.iter().zip(fitted).enumerate() {
            assert!((exact - fitted).abs() <= scatter.deviations.error[k], "{k}: {exact} {fitted}");
        }
    }
    assert!(scatter.deviations.error[Number::Differential as usize] < 2e-4, "{:?}", scatter.deviations.error);
}

#[test]
fn spoiled_balls_are_scrap_with_their_reason() {
    let count = |scattered: &Scattered, reason: Reason| {
        scattered.reasons.iter().find(|(other, _)| *other == reason).map_or(0, |(_, count)| *count)
    };
    // The outer core ends 0.775 in under the surface; the upper sphere 0.05 in above the lower one.
    let recipe =
        ball(vec![piece(900.0, sphere(7.0), 0.0), piece(2000.0, sphere(2.0), 0.0), piece(2600.0, sphere(1.0), 1.55)]);
    // Half of the way down it touches, one in four balls.
    let touching = scattered(&recipe, plan(&[(Source::At(2, 2), 0.1 * M_PER_IN)]));
    let share = count(&touching, Reason::Touches) as f64 / 4096.0;
    assert!((share - 0.25).abs() < 2e-3 && touching.scrap.count == count(&touching, Reason::Touches), "{share}");
    // Up 1.95 in to 3.5 in less its radius: 1.45 in of 2 in are free of the outer core.
    let out = scattered(&recipe, plan(&[(Source::At(2, 1), 4.0 * M_PER_IN)]));
    let free = (3.0_f64.powi(2) - 1.55 * 1.55).sqrt() / 4.0;
    let in_ball = (3.775_f64.powi(2) - 1.55 * 1.55).sqrt() / 4.0;
    let share = count(&out, Reason::BreaksOut) as f64 / 4096.0;
    assert!((share - (in_ball - free)).abs() < 2e-3, "{share}");
    let share = count(&out, Reason::SticksOut) as f64 / 4096.0;
    assert!((share - (1.0 - in_ball)).abs() < 2e-3, "{share}");
    assert_eq!(
        number(&out, Number::Weight).count,
        4096 - count(&out, Reason::SticksOut) - count(&out, Reason::BreaksOut)
    );
}

#[test]
fn plans_that_make_no_sense() {
    let recipe = ball(vec![piece(1900.0, sphere(4.0), 0.0)]);
    let refused = |plan: Plan| Scatter::new(&recipe, plan).expect_err("a plan that makes no sense");
    assert_eq!(refused(plan(&[])), ScatterError::Tolerances { found: 0 });
    assert_eq!(refused(plan(&[(Source::Diameter, 1e-4); 129])), ScatterError::Tolerances { found: 129 });
    assert_eq!(refused(Plan { balls: 99, ..plan(&[(Source::Diameter, 1e-4)]) }), ScatterError::Balls { found: 99 });
    for (source, within) in [
        (Source::Density(0), 1.0),
        (Source::Density(1), 0.1),
        (Source::At(0, 3), 0.1),
        (Source::Tilt(0, 2), 0.1),
        (Source::Diameter, 0.3),
        (Source::Size(0), -0.1),
        (Source::CoreShift(0), f64::NAN),
    ] {
        assert_eq!(refused(plan(&[(source, within)])), ScatterError::Tolerance { place: 0 }, "{source:?}");
    }
}
