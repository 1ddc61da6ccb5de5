//! What the trade holds to be so (common practice, no source), shown by whole
//! balls of our own: how the place of a mass changes RG, differential, flare
//! and the roll.

#![allow(clippy::unwrap_used, reason = "a check that cannot be set up must fail loudly")]

use nalgebra::Vector3;
use physics::ball::{Ball, Part};
use physics::recipe::Recipe;
use physics::roll::{Friction, Hand, Layout, Release, RigidBall, Shot, Summary, Zone, roll};
use physics::section::{Plane, section};
use physics::units::{KG_PER_LB, M_PER_FT, M_PER_IN, M_S_PER_MPH, RAD_S_PER_RPM};
use physics::weigh::Weighed;
use pithball_tests::body::weighed;
use pithball_tests::close::within;
use pithball_tests::make::*;

/// The same league release for all: 17 mph, 300 rev/min, axis rotation 45°, tilt 12°.
fn thrown(ball: &Weighed, pin_to_pap_in: f64) -> Summary {
    let zone = |from: f64, to: f64, mu| Zone { from_m: from * M_PER_FT, to_m: to * M_PER_FT, mu };
    let shot = Shot {
        hand: Hand::Right,
        release: Release {
            speed_m_s: 17.0 * M_S_PER_MPH,
            spin_rad_s: 300.0 * RAD_S_PER_RPM,
            axis_rotation_rad: 45_f64.to_radians(),
            axis_tilt_rad: 12_f64.to_radians(),
            launch_angle_rad: 3_f64.to_radians(),
            board: 25.0,
        },
        layout: Layout { pin_to_pap_m: pin_to_pap_in * M_PER_IN, drilling_angle_rad: 0.0, start_turn_rad: 0.0 },
        lane: Friction::from_zones(&[zone(0.0, 40.0, 0.04), zone(40.0, 63.0, 0.2)]).unwrap(),
    };
    roll(&RigidBall::from(ball), &shot).unwrap()
}

/// The ball made `weight_lb` heavy by the density of one piece, as a maker does.
fn by_piece(recipe: &Recipe, piece: usize, weight_lb: f64) -> Recipe {
    let now = weighed(recipe);
    let mut recipe = recipe.clone();
    let missing_kg = weight_lb * KG_PER_LB - now.mass_kg;
    recipe.pieces[piece].density_kg_m3 += missing_kg / now.shares[piece + 1].volume_m3;
    within("weight", weighed(&recipe).mass_kg / KG_PER_LB, weight_lb, 1e-5);
    recipe
}

fn low_in(w: &Weighed) -> f64 {
    w.rg_m[0] / M_PER_IN
}

fn differential_in(w: &Weighed) -> f64 {
    w.differential_m() / M_PER_IN
}

/// Two balls of 15 lb with cores alike in all directions: mass in the cover, or in the heart.
#[test]
fn mass_outward_gives_a_higher_rg_and_a_later_roll_than_a_dense_inner_piece() {
    let outward = weighed(&by_piece(&ball(8.55, 1.35).pour(1.0, sphere(6.8)).pour(1.0, sphere(3.5)), 0, 15.0));
    let inward = weighed(&by_piece(&ball(8.55, 1.12).pour(1.2, sphere(6.8)).pour(2.9, sphere(3.5)), 1, 15.0));
    assert!(low_in(&outward) > low_in(&inward) + 0.05, "{} {}", low_in(&outward), low_in(&inward));
    let at = |w| thrown(w, 4.0).roll_start.unwrap().distance_m / M_PER_FT;
    let (late, early) = (at(&outward), at(&inward));
    assert!(late > early + 0.5, "rolls at {late} ft and {early} ft");
}

#[test]
fn a_dense_inner_piece_lowers_rg() {
    let mut last = f64::INFINITY;
    for density in [1.2, 1.7, 2.2, 2.7, 3.2] {
        let start = ball(8.55, 1.18).pour(1.2, sphere(7.0)).pour(density, ellipsoid(3.2, 3.2, 4.0));
        let rg = low_in(&weighed(&by_piece(&start, 0, 15.0)));
        assert!(rg < last, "{rg} in after {last} in at {density} g/cc");
        last = rg;
    }
}

/// A core in one piece spread through the ball, against a compact core and a dense disc set apart
/// above it, both 15 lb.
#[test]
fn a_piece_set_apart_on_top_raises_differential_and_flare_below_the_rg_of_the_solid_one() {
    let solid = weighed(&by_piece(&ball(8.55, 1.2).pour(1.36, ellipsoid(6.4, 6.4, 7.0)), 0, 15.0));
    let apart = ball(8.55, 1.12).pour(1.1, sphere(7.0)).pour(2.2, ellipsoid(3.6, 3.6, 4.0));
    let apart = weighed(&by_piece(&apart.pour(3.0, cylinder(1.8, 0.7).at([0.0, 0.0, 2.7])), 1, 15.0));
    let without = ball(8.55, 1.12).pour(1.1, sphere(7.0)).pour(2.2, ellipsoid(3.6, 3.6, 4.0));
    let without = weighed(&by_piece(&without, 1, 15.0));
    for plain in [&solid, &without] {
        assert!(
            differential_in(&apart) > differential_in(plain) + 0.005,
            "{} {}",
            differential_in(&apart),
            differential_in(plain)
        );
        let (more, less) = (thrown(&apart, 3.375).flare_per_turn_m, thrown(plain, 3.375).flare_per_turn_m);
        assert!(more > less, "flare a turn {more} m and {less} m");
    }
    assert!(low_in(&apart) < low_in(&solid) && apart.rg_m[2] < solid.rg_m[2], "{:?} {:?}", apart.rg_m, solid.rg_m);
}

/// A dense piece within the inner core of a 15 lb ball lowers the RG further; the core's outer
/// shape keeps the differential.
#[test]
fn a_piece_nested_in_the_inner_core_lowers_rg_and_keeps_the_differential() {
    let outer = ball(8.55, 1.18).pour(1.1, sphere(7.0));
    let core = lathe(&[[0.0, -2.2], [1.5, -1.9], [1.2, 0.2], [1.6, 1.3], [0.0, 1.9]]);
    let one = weighed(&by_piece(&outer.clone().pour(2.0, core.clone()), 0, 15.0));
    let nested = outer.pour(2.0, core).pour(3.6, ellipsoid(1.4, 1.4, 2.2).at([0.0, 0.0, -0.2]));
    let nested = weighed(&by_piece(&nested, 0, 15.0));
    assert!(low_in(&nested) < low_in(&one) - 0.005, "{} {}", low_in(&nested), low_in(&one));
    let (kept, had) = (differential_in(&nested), differential_in(&one));
    assert!(kept >= 0.95 * had, "differential {kept} in, was {had} in");
}

/// Weights of 15, 14 and 13 lb of one ball, by lightening the outer piece or the inner one.
#[test]
fn lighter_weights_are_made_by_lightening_one_piece() {
    let start = ball(8.55, 1.18).pour(1.0, sphere(7.0)).pour(2.6, ellipsoid(3.6, 3.6, 5.0));
    let start = by_piece(&start, 0, 15.0);
    let made = |piece: usize| {
        [15.0, 14.0, 13.0].map(|weight_lb| {
            let recipe = by_piece(&start, piece, weight_lb);
            // Each is a ball that may be made: any piece at most 3.80 g/cc, RG 2.460 to 2.800 in
            // (United States Bowling Congress, Equipment Specifications and Certifications).
            assert!((300.0..3800.0).contains(&recipe.pieces[piece].density_kg_m3), "{recipe:?}");
            let got = weighed(&recipe);
            assert!(low_in(&got) > 2.46 && got.rg_m[2] / M_PER_IN < 2.8, "{weight_lb} lb: {:?}", got.rg_m);
            got
        })
    };
    // A lighter filler leaves the core's own difference of inertia to a lighter ball.
    assert!(made(0).windows(2).all(|w| differential_in(&w[1]) > differential_in(&w[0])));
    // A lighter core leaves the mass further out, and sets the axes less apart.
    let by_core = made(1);
    assert!(by_core.windows(2).all(|w| low_in(&w[1]) > low_in(&w[0])));
    assert!(by_core.windows(2).all(|w| differential_in(&w[1]) < differential_in(&w[0])));
}

/// One core, two looks: cut along the plane x = 0 a squashed, double-lobed core is broad, along
/// y = 0 it is slim, and both are the same piece.
#[test]
fn one_core_looks_different_cut_along_another_plane() {
    let lobes = lathe(&[[0.0, -2.4], [1.5, -1.7], [0.7, 0.0], [1.5, 1.7], [0.0, 2.4]]).squash([0.7, 1.3]);
    let made = Ball::new(&ball(8.55, 1.18).pour(2.2, lobes)).unwrap();
    let seen = |normal: Vector3<f64>| {
        let cut = section(&made, Plane::new(normal, 0.0).unwrap());
        cut.regions.iter().find(|r| r.part == Part::Piece(0)).unwrap().area_m2 / (M_PER_IN * M_PER_IN)
    };
    // Areas of the polygon, mirrored, times the squash across: 2·∫r dz = 10.3 in² unsquashed.
    let flat = 2.0 * (0.5 * 1.5 * 0.7 + 0.5 * (1.5 + 0.7) * 1.7) * 2.0;
    within("along x = 0, in²", seen(Vector3::x()), flat * 1.3, 1e-3 * flat);
    within("along y = 0, in²", seen(Vector3::y()), flat * 0.7, 1e-3 * flat);
    // Across the waist and across a lobe: an ellipse each, four times and more apart.
    let across = |depth_in: f64| {
        let cut = section(&made, Plane::new(Vector3::z(), depth_in * M_PER_IN).unwrap());
        cut.regions.iter().find(|r| r.part == Part::Piece(0)).unwrap().area_m2 / (M_PER_IN * M_PER_IN)
    };
    within("waist, in²", across(0.0), core::f64::consts::PI * 0.49 * 0.91, 1e-3);
    assert!(across(1.7) > 4.0 * across(0.0));
}
