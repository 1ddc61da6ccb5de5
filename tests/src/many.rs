//! Very many random recipes through weigh: each ends, in finite numbers, within
//! the error it promises; a sample of them is held against a slower evaluation
//! that shares nothing of weigh but where a line meets a surface.

use nalgebra::{Matrix3, Rotation3, Vector3};
use physics::ball::{Ball, Line, Part};
use physics::recipe::Recipe;
use physics::weigh::{TOLERANCE, Weighed, weigh};
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};

use crate::random::{any_ball, nested_ball, plain_ball};

/// The `n`-th recipe, always the same one: of a thousand, two may have everything
/// ([`any_ball`]), thirty-one have pieces that cross, a cut and a hole
/// ([`plain_ball`]), and the rest are as cores mostly are ([`nested_ball`]).
pub fn recipe(n: u64) -> Recipe {
    let mut seed = [0; 32];
    seed[..8].copy_from_slice(&n.to_le_bytes());
    let rng = TestRng::from_seed(RngAlgorithm::ChaCha, &seed);
    let mut runner = TestRunner::new_with_rng(Config::default(), rng);
    // Pieces that cross each other take a thousand times as long as such that lie in one another.
    let strategy = match n % 1000 {
        0 | 500 => any_ball().boxed(),
        k if k % 33 == 1 => plain_ball().boxed(),
        _ => nested_ball().boxed(),
    };
    strategy.new_tree(&mut runner).expect("no recipe is rejected").current()
}

/// Weighs a recipe; every number of the result is finite.
///
/// # Errors
/// What is wrong with the result, in words.
pub fn finite(recipe: &Recipe) -> Result<(Ball, Weighed), String> {
    let ball = Ball::new(recipe).map_err(|error| format!("it is refused: {error:?}"))?;
    let got = weigh(&ball);
    let shares = got.shares.iter().flat_map(|s| [s.volume_m3, s.mass_kg, s.rg_share]);
    let all = got.rg_m.iter().chain(&got.cg_m).chain(&got.inertia_kg_m2).copied();
    let axes = got.axes.iter().flat_map(|axis| axis.iter().copied());
    if !shares.chain(all).chain(axes).chain([got.mass_kg, got.relative_error]).all(f64::is_finite) {
        return Err(format!("a number is not finite: {got:?}"));
    }
    Ok((ball, got))
}

/// As [`finite`], and within the error that weighing aims at.
///
/// # Errors
/// What is wrong with the result, in words.
pub fn weigh_and_check(recipe: &Recipe) -> Result<(Ball, Weighed), String> {
    let (ball, got) = finite(recipe)?;
    // A ball that holes leave nothing of has no relative error.
    if got.mass_kg > 0.0 && got.relative_error > TOLERANCE {
        return Err(format!("its error bound is {:e}", got.relative_error));
    }
    Ok((ball, got))
}

/// Mass and tensor about the ball's centre, with the standard error of each.
struct Slow {
    mass_kg: [f64; 2],
    inertia_kg_m2: [Matrix3<f64>; 2],
}

/// Sums exact stretches along parallel lines in a direction of no meaning to
/// the ball. The lines stand on a randomly shifted lattice of rank 1 over a disc
/// as large as the ball (R. Cranley and T. N. L. Patterson, SIAM J. Numer.
/// Anal. 13, 1976); the scatter between shifts tells the error. The generator is
/// the golden ratio's, as Fibonacci lattices use it.
fn slowly(recipe: &Recipe, ball: &Ball, n: u64) -> Slow {
    const SHIFTS: usize = 16;
    const LINES: usize = 6_000;
    const GOLDEN: f64 = 0.618_033_988_749_894_9;
    let turn = Rotation3::from_euler_angles(0.3 + n as f64, 1.1 + 0.7 * n as f64, 0.0);
    let [side, other, way] = [Vector3::x(), Vector3::y(), Vector3::z()].map(|axis| turn * axis);
    let radius_m = ball.radius_m();
    let each = core::f64::consts::PI * radius_m * radius_m / LINES as f64;
    let mut sums = [(0.0, Matrix3::zeros()); SHIFTS];
    for (shift, (mass, inertia)) in sums.iter_mut().enumerate() {
        let [u0, v0] = [0.754_877_666, 0.569_840_291].map(|step: f64| (step * (shift as f64 + 0.5)).fract());
        for line in 0..LINES {
            let u = (line as f64 / LINES as f64 + u0).fract();
            let v = (line as f64 * GOLDEN + v0).fract();
            let (across_m, angle) = (radius_m * u.sqrt(), core::f64::consts::TAU * v);
            let origin_m = side * (across_m * angle.cos()) + other * (across_m * angle.sin());
            for run in ball.runs(&Line { origin_m, direction: way }) {
                let density = match run.part {
                    Part::Cover => recipe.cover_density_kg_m3,
                    Part::Piece(n) => recipe.pieces[n].density_kg_m3,
                };
                let (a, b) = (run.from_m, run.to_m);
                let moment = |power: i32| (b.powi(power + 1) - a.powi(power + 1)) / f64::from(power + 1);
                let [zeroth, first, second] = [moment(0), moment(1), moment(2)];
                // ∫ r rᵀ along the stretch, r = origin + t·way.
                let outer = origin_m * origin_m.transpose() * zeroth
                    + (origin_m * way.transpose() + way * origin_m.transpose()) * first
                    + way * way.transpose() * second;
                *mass += density * each * zeroth;
                *inertia += (Matrix3::identity() * outer.trace() - outer) * (density * each);
            }
        }
    }
    let count = SHIFTS as f64;
    let mean_mass = sums.iter().map(|(mass, _)| mass).sum::<f64>() / count;
    let mean = sums.iter().map(|(_, inertia)| inertia).sum::<Matrix3<f64>>() / count;
    let spread = |sum: f64| (sum / (count - 1.0) / count).sqrt();
    let mass_error = spread(sums.iter().map(|(mass, _)| (mass - mean_mass).powi(2)).sum());
    let error = sums.iter().map(|(_, inertia)| (inertia - mean).map(|x| x * x)).sum::<Matrix3<f64>>().map(spread);
    Slow { mass_kg: [mean_mass, mass_error], inertia_kg_m2: [mean, error] }
}

/// Holds a weighing against the slow evaluation: within the bound that weigh
/// gives and ten standard errors of the other. Returns the larger of the two
/// relative standard errors: how sharp the comparison was.
///
/// # Errors
/// Which number differs, and by how much.
pub fn hold_against_slow(recipe: &Recipe, ball: &Ball, got: &Weighed, n: u64) -> Result<f64, String> {
    const SIGMAS: f64 = 10.0;
    let slow = slowly(recipe, ball, n);
    let [mass, mass_error] = slow.mass_kg;
    let allowed = got.relative_error * got.mass_kg + SIGMAS * mass_error;
    if (got.mass_kg - mass).abs() > allowed {
        return Err(format!("mass {} kg, slowly {mass} ± {mass_error:e}", got.mass_kg));
    }
    let [inertia, error] = slow.inertia_kg_m2;
    let cg = got.cg_m;
    let about_centre =
        got.inertia_kg_m2 + (Matrix3::identity() * cg.norm_squared() - cg * cg.transpose()) * got.mass_kg;
    let off = (about_centre - inertia).abs();
    let allowed = error * SIGMAS + Matrix3::repeat(2.0 * got.relative_error * about_centre.amax());
    if (0..9).any(|k| off[k] > allowed[k]) {
        return Err(format!("tensor off by {off}, allowed {allowed}"));
    }
    Ok((mass_error / mass).max(error.amax() / inertia.amax()))
}
