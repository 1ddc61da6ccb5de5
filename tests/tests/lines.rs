//! A line through the ball meets each material exactly where the material rule
//! says it is: the stretches along a line against the rule at single points.

use nalgebra::Vector3;
use physics::ball::{Ball, Line};
use pithball_tests::random::{any_ball, direction};
use proptest::prelude::*;

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn stretches_agree_with_the_material_at_points(
        recipe in any_ball(),
        way in direction(),
        aside in direction(),
        far in 0.0..0.1,
    ) {
        let ball = Ball::new(&recipe).unwrap();
        let line = Line { origin_m: aside * far, direction: way };
        let runs = ball.runs(&line);
        let at = |t: f64| ball.part_at(&(line.origin_m + way * t));
        let mut end = -0.3;
        for run in &runs {
            prop_assert!(run.from_m >= end && run.to_m > run.from_m, "out of order: {runs:?}");
            // Rounding decides within a hair of a surface; nothing else may differ.
            let hair = (1e-12f64).max((run.to_m - run.from_m) * 1e-3);
            for t in [run.from_m + hair, 0.5 * (run.from_m + run.to_m), run.to_m - hair] {
                if run.to_m - run.from_m > 1e-9 {
                    prop_assert_eq!(at(t), Some(run.part), "at {} of {:?}", t, runs);
                }
            }
            if run.from_m - end > 1e-9 {
                prop_assert_eq!(at(0.5 * (run.from_m + end)), None, "gap before {:?} of {:?}", run, runs);
            }
            end = run.to_m;
        }
        prop_assert_eq!(at(0.5 * (end + 0.3)), None);
        // Points along the line, wherever they fall.
        for k in 0..200 {
            let t = -0.22 + 0.0022 * (k as f64 + 0.37);
            let inside = runs.iter().find(|r| r.from_m < t && t < r.to_m).map(|r| r.part);
            let near = runs.iter().any(|r| (r.from_m - t).abs() < 1e-11 || (r.to_m - t).abs() < 1e-11);
            prop_assert!(near || inside == at(t), "at {t}: {inside:?} or {:?} of {runs:?}", at(t));
        }
    }

    #[test]
    fn a_line_the_other_way_meets_the_same_stretches(recipe in any_ball(), way in direction(), aside in direction(), far in 0.0..0.1) {
        let ball = Ball::new(&recipe).unwrap();
        let origin_m: Vector3<f64> = aside * far;
        let there = ball.runs(&Line { origin_m, direction: way });
        let mut back = ball.runs(&Line { origin_m, direction: -way });
        back.reverse();
        let long = |r: &&physics::ball::Run| r.to_m - r.from_m > 1e-9;
        let (there, back): (Vec<_>, Vec<_>) = (there.iter().filter(long).collect(), back.iter().filter(long).collect());
        prop_assert_eq!(there.len(), back.len());
        for (a, b) in there.iter().zip(&back) {
            prop_assert_eq!(a.part, b.part);
            prop_assert!((a.from_m + b.to_m).abs() < 1e-9 && (a.to_m + b.from_m).abs() < 1e-9, "{a:?} {b:?}");
        }
    }
}
