use super::{Block, Free, Seek, SeekError, Sought, Target};
use crate::ball::Ball;
use crate::control::Control;
use crate::figures::{FIGURES, Figures};
use crate::recipe::{Piece, Recipe, Shape, Solid};
use crate::units::{KG_PER_LB, M_PER_IN};
use crate::weigh::weigh;

/// A cover, a light outer core, an ellipsoid and a small sphere on top.
fn template() -> Recipe {
    let piece = |density_kg_m3: f64, shape: Shape, z_in: f64| Piece {
        density_kg_m3,
        solid: Solid { shape, squash: [1.0; 2], turn_rad: [0.0; 3], at_m: [0.0, 0.0, z_in * M_PER_IN].into() },
        cuts: vec![],
    };
    let sphere = |diameter_in: f64| Shape::Sphere { diameter_m: diameter_in * M_PER_IN };
    let core = Shape::Ellipsoid { size_m: [3.2, 3.6, 4.4].map(|inches| inches * M_PER_IN) };
    Recipe {
        diameter_m: 8.55 * M_PER_IN,
        cover_density_kg_m3: 1180.0,
        pieces: vec![piece(900.0, sphere(7.0), 0.0), piece(2300.0, core, 0.2), piece(2600.0, sphere(0.8), 2.9)],
        holes: vec![],
    }
}

fn free() -> Vec<Free> {
    let inches = |control, from: f64, to: f64| Free { control, from: from * M_PER_IN, to: to * M_PER_IN };
    use crate::control::Size::Edge;
    vec![
        Free { control: Control::Density(0), from: 600.0, to: 1100.0 },
        Free { control: Control::Density(1), from: 1500.0, to: 3500.0 },
        inches(Control::Size(1, Edge(0)), 2.4, 4.2),
        inches(Control::Size(1, Edge(1)), 2.4, 4.2),
        inches(Control::Size(1, Edge(2)), 3.0, 5.4),
        inches(Control::At(1, 2), -0.3, 0.5),
    ]
}

fn target(want: [f64; FIGURES], starts: usize) -> Target {
    Target { want: want.map(Some), free: free(), starts, ..Target::default() }
}

fn sought(target: &Target) -> Sought {
    let seek = Seek::new(&template(), target.clone()).expect("something to seek");
    let results: Vec<f64> = (0..seek.units()).flat_map(|start| seek.run(start)).collect();
    seek.merge(&results).expect("results of every start")
}

fn figures(recipe: &Recipe) -> [f64; FIGURES] {
    Figures::from(&weigh(&Ball::new(recipe).expect("a ball that can be made"))).array()
}

#[test]
fn two_hundred_targets_that_can_be_reached_are_met() {
    let free = free();
    let mut met = 0;
    for n in 0..200 {
        let set = |recipe: Recipe, (k, free): (usize, &Free)| {
            let part = f64::from(sobol_burley::sample(n, k as u32, 99));
            free.control.with(&recipe, free.from + part * (free.to - free.from)).expect("its control")
        };
        let wanted = figures(&free.iter().enumerate().fold(template(), set));
        // Stops at the first start that leads there, as someone who waits would.
        let seek = Seek::new(&template(), target(wanted, 12)).expect("something to seek");
        let found = (0..seek.units()).find_map(|start| seek.merge(&seek.run(start))?.answers.into_iter().next());
        let Some(answer) = found else { continue };
        let got = figures(&answer.recipe);
        let near = (got[0] - wanted[0]).abs() <= 0.02 * KG_PER_LB
            && (1..4).all(|k| (got[k] - wanted[k]).abs() <= 0.001 * M_PER_IN);
        assert!(near, "said to be met: {got:?} {wanted:?}");
        let inside = |(free, value): (&Free, &f64)| (free.from..=free.to).contains(value);
        assert!(free.iter().zip(&answer.values).all(inside), "{:?}", answer.values);
        met += 1;
    }
    assert!(met >= 190, "{met} of 200");
}

#[test]
fn a_recipe_is_found_again_from_its_numbers() {
    // Three densities decide weight, RG and top weight: there is one answer.
    let mut target = Target {
        free: [0, 1, 2].map(|n| Free { control: Control::Density(n), from: 500.0, to: 3800.0 }).to_vec(),
        starts: 6,
        ..Target::default()
    };
    let mut recipe = template();
    for (piece, density) in recipe.pieces.iter_mut().zip([780.0, 2650.0, 1900.0]) {
        piece.density_kg_m3 = density;
    }
    let wanted = figures(&recipe);
    for n in [0, 1, 4] {
        target.want[n] = Some(wanted[n]);
    }
    let sought = sought(&target);
    assert!(sought.met == 6 && sought.answers.len() == 1, "{} {}", sought.met, sought.answers.len());
    for (found, density) in sought.answers[0].values.iter().zip([780.0, 2650.0, 1900.0]) {
        assert!((found - density).abs() < 1.0, "{found} {density}");
    }
}

#[test]
fn different_cores_that_do_the_same_job() {
    let mut target = target([0.0; FIGURES], 24);
    let wanted = figures(&template());
    target.want = [Some(wanted[0]), Some(wanted[1]), None, None, None];
    let sought = sought(&target);
    assert!(sought.answers.len() >= 3, "{}", sought.answers.len());
    assert!(sought.nearest.is_none() && sought.blocks.is_empty());
    // The recipe itself is one of them, and the nearest.
    assert_eq!(sought.answers[0].start, 0);
}

#[test]
fn what_stands_in_the_way() {
    let wanted = figures(&template());
    // No heavier core than 3.5 g/cc: too light a ball.
    let mut heavy = target(wanted, 4);
    heavy.want = [Some(20.0 * KG_PER_LB), None, None, None, None];
    heavy.free.truncate(2);
    let found = sought(&heavy);
    assert!(found.answers.is_empty() && found.nearest.is_some());
    assert_eq!(found.blocks, [Block::UpperBound(0), Block::UpperBound(1)]);
    // The published limit, though the bounds would allow it.
    let mut limited = target(wanted, 4);
    limited.want = [Some(16.5 * KG_PER_LB), None, None, None, None];
    limited.free[1].to = 4500.0;
    limited.within_limits = true;
    let found = sought(&limited);
    assert!(found.answers.is_empty() && found.blocks.contains(&Block::Weight), "{:?}", found.blocks);
    // A cover that the outer core leaves no room for.
    let mut thick = target(wanted, 4);
    thick.want = [None; FIGURES];
    thick.cover_at_least_m = Some(1.0 * M_PER_IN);
    let found = sought(&thick);
    assert!(found.answers.is_empty() && found.blocks.contains(&Block::Room(0)), "{:?}", found.blocks);
    // With the outer core free it is met.
    thick.free.push(Free { control: Control::Scale(0), from: 0.5, to: 1.2 });
    thick.free.push(Free { control: Control::At(2, 2), from: 1.0 * M_PER_IN, to: 3.2 * M_PER_IN });
    let found = sought(&thick);
    assert!(found.answers[0].cover_m >= 0.999 * M_PER_IN, "{:?}", found.answers[0].cover_m);
}

#[test]
fn the_results_of_starts_go_together_in_any_order() {
    let target = target(figures(&template()), 4);
    let seek = Seek::new(&template(), target).expect("something to seek");
    let mut one: Vec<Vec<f64>> = (0..4).rev().map(|start| seek.run(start)).collect();
    one.reverse();
    let other: Vec<f64> = (0..4).flat_map(|start| seek.run(start)).collect();
    assert_eq!(seek.merge(&one.concat()), seek.merge(&other));
    assert_eq!(seek.merge(&other[1..]), None);
}

#[test]
fn targets_that_make_no_sense() {
    let refused = |target: Target| Seek::new(&template(), target).expect_err("nothing to seek");
    let good = target([1.0; FIGURES], 1);
    assert_eq!(refused(Target { want: [None; FIGURES], ..good.clone() }), SeekError::NothingWanted);
    assert_eq!(refused(Target { free: vec![], ..good.clone() }), SeekError::Free { found: 0 });
    assert_eq!(refused(Target { starts: 0, ..good.clone() }), SeekError::Starts { found: 0 });
    for bad in [
        Free { control: Control::Density(7), from: 1.0, to: 2.0 },
        Free { control: Control::Density(0), from: 2.0, to: 2.0 },
        Free { control: Control::Density(0), from: 1.0, to: f64::NAN },
    ] {
        assert_eq!(refused(Target { free: vec![bad], ..good.clone() }), SeekError::Control { place: 0 });
    }
    let twice = Target { free: vec![good.free[0], good.free[0]], ..good };
    assert_eq!(refused(twice), SeekError::Control { place: 1 });
}
