use super::Levers;
use crate::control::{Control, Size};
use crate::recipe::{Piece, Recipe, Shape, Solid};
use crate::units::{KG_PER_OZ, M_PER_IN};

const BALL_M: f64 = 8.55 * M_PER_IN;

fn with(shape: Shape, at_m: [f64; 3]) -> Recipe {
    let solid = Solid { shape, squash: [1.0; 2], turn_rad: [0.0; 3], at_m: at_m.into() };
    let pieces = vec![Piece { density_kg_m3: 1900.0, solid, cuts: vec![] }];
    Recipe { diameter_m: BALL_M, cover_density_kg_m3: 1180.0, pieces, holes: vec![] }
}

/// Mass, low RG, differential and top weight of a ball with a sphere of
/// diameter d and density ρ at height z: closed forms of two spheres.
fn two_spheres([rho, d, z]: [f64; 3]) -> [f64; 4] {
    let sphere = |density: f64, d: f64| core::f64::consts::PI / 6.0 * density * d * d * d;
    let (ball, extra) = (sphere(1180.0, BALL_M), sphere(rho - 1180.0, d));
    let mass = ball + extra;
    let along = 0.1 * (ball * BALL_M * BALL_M + extra * d * d);
    let across = along + extra * z * z - extra * extra * z * z / mass;
    let (low, high) = ((along / mass).sqrt(), (across / mass).sqrt());
    [mass, low, high - low, extra * z / (0.5 * BALL_M) / KG_PER_OZ]
}

#[test]
fn derivatives_of_two_spheres() {
    let here = [1900.0, 0.1, 0.03];
    let levers = Levers::new(&with(Shape::Sphere { diameter_m: here[1] }, [0.0, 0.0, here[2]])).expect("a ball");
    let controls = [Control::Density(0), Control::Size(0, Size::Diameter), Control::At(0, 2)];
    for (n, control) in controls.into_iter().enumerate() {
        let lever = levers.lever(control).expect("it has that control");
        // Five-point differences of the closed form over a small step: about 1e-12.
        let at = |by: f64| {
            let mut there = here;
            there[n] += by * 0.1 * lever.step;
            two_spheres(there)
        };
        let (raised, lowered) = (lever.raised.expect("it can be raised"), lever.lowered.expect("and lowered"));
        for (k, figure) in [0, 1, 2, 4].into_iter().enumerate() {
            let exact = 10.0 * (at(-2.0)[k] - 8.0 * at(-1.0)[k] + 8.0 * at(1.0)[k] - at(2.0)[k]) / 12.0;
            let (found, error) = (raised.by.array()[figure], raised.error.array()[figure]);
            assert!((found - exact).abs() <= error + 1e-9 * exact.abs(), "{control:?} {k}: {found} {exact} {error}");
            assert!(error <= 0.02 * exact.abs() + 1e-10, "{control:?} {k}: {found} {error}");
            assert!((found + lowered.by.array()[figure]).abs() < 1e-12 + 1e-6 * found.abs());
        }
    }
}

#[test]
fn a_squash_of_a_round_core_moves_the_differential_either_way() {
    let levers = Levers::new(&with(Shape::Cylinder { diameter_m: 0.08, height_m: 0.12 }, [0.0; 3])).expect("a ball");
    let lever = levers.lever(Control::Squash(0, 0)).expect("it has a squash");
    let (raised, lowered) = (lever.raised.expect("up"), lever.lowered.expect("down"));
    let [up, down] = [raised, lowered].map(|moved| moved.by.intermediate_differential_m);
    assert!(up > 1e-6 && down > 1e-6 && (up / down - 1.0).abs() < 0.05, "{up} {down}");
    // The weight has no kink.
    assert!((raised.by.mass_kg + lowered.by.mass_kg).abs() < 1e-9);
}

#[test]
fn a_piece_at_the_surface_moves_one_way_only() {
    let touching = with(Shape::Sphere { diameter_m: 0.05 }, [0.0, 0.0, 0.5 * BALL_M - 0.025]);
    let levers = Levers::new(&touching).expect("a ball");
    let lever = levers.lever(Control::At(0, 2)).expect("it has a place");
    assert!(lever.raised.is_none() && lever.lowered.is_some());
    let moved = lever.lowered.expect("it can be lowered");
    let extra_kg = core::f64::consts::PI / 6.0 * 720.0 * 0.05_f64.powi(3);
    let exact_oz = -extra_kg * lever.step / (0.5 * BALL_M) / KG_PER_OZ;
    assert!((moved.by.top_weight_oz - exact_oz).abs() <= moved.error.top_weight_oz + 1e-12, "{moved:?} {exact_oz}");
    assert_eq!(levers.lever(Control::Density(1)), None);
}

#[test]
fn every_control_has_its_value_and_takes_another() {
    let mut recipe = with(Shape::Lathe { profile_m: vec![[0.0, -0.03], [0.02, 0.0], [0.0, 0.03]] }, [0.0; 3]);
    for shape in [
        Shape::Ellipsoid { size_m: [0.02, 0.03, 0.04] },
        Shape::Frustum { bottom_diameter_m: 0.02, top_diameter_m: 0.03, height_m: 0.04 },
        Shape::Ring { ring_diameter_m: 0.04, tube_diameter_m: 0.01 },
    ] {
        let piece = recipe.pieces[0].clone();
        recipe.pieces.push(Piece { solid: Solid { shape, ..piece.solid }, ..piece });
    }
    for control in Control::all(&recipe) {
        let value = control.value(&recipe).expect("a control of the recipe");
        assert_eq!(control.with(&recipe, value).as_ref(), Some(&recipe), "{control:?}");
        let changed = control.with(&recipe, value + 0.001).expect("another value");
        assert_ne!(changed, recipe, "{control:?}");
    }
}
