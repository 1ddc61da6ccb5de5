//! Relations that hold for any ball: turned, mirrored, drawn larger, moved,
//! made of heavier stuff, split and poured twice. Both sides carry their own
//! error, and may differ by no more than what they say of it.

use nalgebra::{Matrix3, Vector3};
use physics::ball::{Ball, Part};
use physics::recipe::Recipe;
use physics::weigh::Weighed;
use pithball_tests::body::{Body, bounded};
use pithball_tests::close::{tensors_within, vectors_within, within};
use pithball_tests::make::{Place, cuboid};
use pithball_tests::random::{any_ball, direction, plain_ball, rotation, undrilled};
use pithball_tests::turned::{mirrored, moved, scaled, turned};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

/// The same balls every time, unless PROPTEST_RNG_SEED asks for others.
fn cases(cases: u32) -> ProptestConfig {
    let usual = ProptestConfig::default();
    let rng_seed = match usual.rng_seed {
        RngSeed::Random => RngSeed::Fixed(1),
        asked => asked,
    };
    ProptestConfig { cases, rng_seed, max_shrink_iters: 4, failure_persistence: None, ..usual }
}

/// Rounding of the comparison itself.
const ROUNDING: f64 = 1e-13;

/// Holds one weighing against what another one says it should be.
#[track_caller]
fn hold(what: &str, got: &Weighed, want: &Body, wants_own: f64) {
    let allowed = got.relative_error + wants_own + ROUNDING;
    within(&format!("{what}: mass"), got.mass_kg, want.mass_kg, allowed * want.mass_kg);
    vectors_within(&format!("{what}: centre"), &got.cg_m, &want.cg_m, allowed * got.radius_m);
    let largest = want.inertia_kg_m2.amax();
    tensors_within(&format!("{what}: tensor"), &got.inertia_kg_m2, &want.inertia_kg_m2, allowed * largest);
    for (n, rg) in got.rg_m.iter().enumerate() {
        assert!(rg.is_finite() && *rg > 0.0, "{what}: RG {n} is {rg}");
    }
}

#[track_caller]
fn hold_shares(what: &str, got: &[f64], want: &[f64], allowed_m3: f64) {
    assert_eq!(got.len(), want.len());
    for (n, (a, b)) in got.iter().zip(want).enumerate() {
        within(&format!("{what}: volume of part {n}"), *a, *b, allowed_m3);
    }
}

fn volumes(w: &Weighed) -> Vec<f64> {
    w.shares.iter().map(|s| s.volume_m3).collect()
}

fn volume(recipe: &Recipe) -> f64 {
    core::f64::consts::PI / 6.0 * recipe.diameter_m.powi(3)
}

/// The same pieces, each cut in two by a plane of its own frame.
fn split(recipe: &Recipe, at_in: f64) -> Recipe {
    let mut recipe = recipe.clone();
    let halves = |piece: &physics::recipe::Piece| {
        [-1.0, 1.0].map(|side| {
            let mut half = piece.clone();
            half.cuts.push(cuboid(20.0, 20.0, 20.0).at([0.0, 0.0, at_in + side * 10.0]));
            half
        })
    };
    recipe.pieces = recipe.pieces.iter().flat_map(halves).collect();
    recipe
}

proptest! {
    #![proptest_config(cases(12))]

    #[test]
    fn a_ball_turned_weighs_the_same_turned(recipe in plain_ball(), turn in rotation()) {
        let (plain, other) = (bounded(&recipe), bounded(&turned(&recipe, &turn)));
        hold("turned", &other, &Body::from(&plain).turned(&turn), plain.relative_error);
        let allowed = (plain.relative_error + other.relative_error + ROUNDING) * volume(&recipe);
        hold_shares("turned", &volumes(&other), &volumes(&plain), allowed);
    }

    #[test]
    fn a_ball_in_the_mirror(recipe in plain_ball()) {
        let (plain, other) = (bounded(&recipe), bounded(&mirrored(&recipe)));
        let flip = Matrix3::from_diagonal(&Vector3::new(-1.0, 1.0, 1.0));
        let want = Body {
            mass_kg: plain.mass_kg,
            cg_m: flip * plain.cg_m,
            inertia_kg_m2: flip * plain.inertia_kg_m2 * flip,
        };
        hold("mirrored", &other, &want, plain.relative_error);
    }

    #[test]
    fn a_ball_drawn_larger(recipe in plain_ball(), factor in 0.5..1.35) {
        let (plain, other) = (bounded(&recipe), bounded(&scaled(&recipe, factor)));
        let want = Body {
            mass_kg: plain.mass_kg * factor.powi(3),
            cg_m: plain.cg_m * factor,
            inertia_kg_m2: plain.inertia_kg_m2 * factor.powi(5),
        };
        hold("scaled", &other, &want, plain.relative_error);
        let allowed = plain.relative_error + other.relative_error + ROUNDING;
        for (a, b) in other.shares.iter().zip(&plain.shares) {
            // A share of the trace: three tensor entries, and the mass through the centre of gravity.
            within("share of the RG", a.rg_share, b.rg_share, 10.0 * allowed);
        }
    }

    #[test]
    fn heavier_stuff(recipe in plain_ball(), factor in 0.3..3.0) {
        let plain = bounded(&recipe);
        let mut heavy = recipe.clone();
        heavy.cover_density_kg_m3 *= factor;
        heavy.pieces.iter_mut().for_each(|p| p.density_kg_m3 *= factor);
        let other = bounded(&heavy);
        hold("heavier", &other, &Body::from(&plain).times(factor), plain.relative_error);
        for (a, b) in other.rg_m.iter().zip(plain.rg_m) {
            within("RG", *a, b, (plain.relative_error + other.relative_error + ROUNDING) * 2.0 * b);
        }
    }

    #[test]
    fn pieces_moved_within_the_cover(recipe in undrilled(2.6), way in direction(), far in 0.0..0.042) {
        // What the pieces add to a ball of cover alone moves with them (parallel axes).
        let by = way * far;
        let (plain, other) = (bounded(&recipe), bounded(&moved(&recipe, &by)));
        let solid = Body::sphere(recipe.cover_density_kg_m3, recipe.diameter_m / 2.0);
        // Second moments about the ball's centre, not products: stays good where the pieces add nothing.
        let about_centre = |b: &Body| pithball_tests::body::parallel(b.mass_kg, &b.cg_m) + b.inertia_kg_m2;
        let plain_body = Body::from(&plain);
        let (added_kg, first) = (plain.mass_kg - solid.mass_kg, plain.cg_m * plain.mass_kg);
        let dot = 2.0 * first.dot(&by) + added_kg * by.norm_squared();
        let cross = first * by.transpose() + by * first.transpose() + by * by.transpose() * added_kg;
        let cg_m = (first + by * added_kg) / plain.mass_kg;
        let inertia_kg_m2 = about_centre(&plain_body) + Matrix3::identity() * dot - cross
            - pithball_tests::body::parallel(plain.mass_kg, &cg_m);
        let want = Body { mass_kg: plain.mass_kg, cg_m, inertia_kg_m2 };
        // The prediction uses mass and centre of gravity as well as the tensor.
        hold("moved", &other, &want, 4.0 * plain.relative_error);
    }

    #[test]
    fn a_piece_split_weighs_what_the_whole_does(recipe in plain_ball(), at_in in -0.8..0.8) {
        let (plain, other) = (bounded(&recipe), bounded(&split(&recipe, at_in)));
        hold("split", &other, &Body::from(&plain), plain.relative_error);
        let (whole, halves) = (volumes(&plain), volumes(&other));
        let merged: Vec<f64> = core::iter::once(halves[0]).chain(halves[1..].chunks(2).map(|h| h[0] + h[1])).collect();
        let allowed = (plain.relative_error + 2.0 * other.relative_error + ROUNDING) * volume(&recipe);
        hold_shares("split", &merged, &whole, allowed);
    }

    #[test]
    fn a_piece_poured_twice_is_poured_once(recipe in plain_ball()) {
        let plain = bounded(&recipe);
        let mut twice = recipe.clone();
        twice.pieces = recipe.pieces.iter().flat_map(|p| [p.clone(), p.clone()]).collect();
        let other = bounded(&twice);
        hold("twice", &other, &Body::from(&plain), plain.relative_error);
        for pair in other.shares[1..].chunks(2) {
            within("the first of two equal pieces is hidden", pair[0].volume_m3, 0.0, (other.relative_error + ROUNDING) * volume(&recipe));
        }
    }

    #[test]
    fn shares_add_up(recipe in plain_ball()) {
        let got = bounded(&recipe);
        within("masses", got.shares.iter().map(|s| s.mass_kg).sum(), got.mass_kg, (got.relative_error + ROUNDING) * got.mass_kg);
        within("shares", got.shares.iter().map(|s| s.rg_share).sum(), 1.0, 1e-12);
        let trace: f64 = got.rg_m.iter().map(|rg| got.mass_kg * rg * rg).sum();
        within("trace", trace, got.inertia_kg_m2.trace(), 1e-12 * trace);
    }
}

proptest! {
    #![proptest_config(cases(12))]

    #[test]
    fn any_ball_is_weighed_to_a_millionth(recipe in any_ball()) {
        let got = bounded(&recipe);
        prop_assert!(got.relative_error <= 1e-6, "bound {:e}", got.relative_error);
    }
}

proptest! {
    #![proptest_config(cases(6))]

    /// The slowest way there is: the material rule at one point of each cell of a grid.
    #[test]
    fn points_counted_one_by_one(recipe in plain_ball(), turn in rotation()) {
        const SIDE: i32 = 56;
        let (ball, got) = (Ball::new(&recipe).unwrap(), bounded(&recipe));
        let cell = recipe.diameter_m  * 1.02 / f64::from(SIDE);
        let mut counts = vec![0.0; got.shares.len()];
        for i in 0..SIDE {
            for j in 0..SIDE {
                for k in 0..SIDE {
                    let centre = [i, j, k].map(|n| (f64::from(n) + 0.5 - f64::from(SIDE) / 2.0) * cell);
                    match ball.part_at(&(turn * Vector3::from(centre))) {
                        Some(Part::Cover) => counts[0] += 1.0,
                        Some(Part::Piece(n)) => counts[n + 1] += 1.0,
                        None => {}
                    }
                }
            }
        }
        // A turned grid: cells on a surface of a few square balls err by a third each, at random.
        let allowed = 5.0 * 0.3 * (12.0 * f64::from(SIDE * SIDE)).sqrt() * cell.powi(3);
        let counted: Vec<f64> = counts.iter().map(|n| n * cell.powi(3)).collect();
        hold_shares("counted", &counted, &volumes(&got), allowed);
    }
}
