//! Published limits and worked figures, each beside its source.
//!
//! "USBC": United States Bowling Congress, Equipment Specifications and
//! Certifications, as read from its notices and pages that quote it. The current
//! edition always decides.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a check that cannot be set up must fail loudly")]

use core::f64::consts::PI;
use std::path::PathBuf;

use physics::ball::Ball;
use physics::lane::{BOARD_M, BOARDS, EDGE_M, Hand, PINS_M, WIDTH_M, board_at, x_at_m};
use physics::roll::{Friction, Layout, Release, RigidBall, Shot, Zone, roll};
use physics::units::{KG_M3_PER_G_CC, KG_PER_LB, M_PER_FT, M_PER_IN, M_S_PER_MPH, RAD_S_PER_RPM};
use physics::weigh::weigh;
use pithball_tests::body::weighed;
use pithball_tests::close::within;
use pithball_tests::make::ball;

/// USBC: diameter, 8.500 in to 8.595 in.
const DIAMETER_IN: [f64; 2] = [8.500, 8.595];

#[test]
fn circumference_limits_are_the_diameter_limits() {
    // USBC: 26.704 in to 27.002 in; the smaller is the rounded-up circumference of 8.500 in.
    for (diameter_in, circumference_in) in DIAMETER_IN.into_iter().zip([26.704, 27.002]) {
        within("circumference", PI * diameter_in, circumference_in, 6e-4);
    }
}

#[test]
#[allow(clippy::approx_constant, reason = "an RG, not the base of logarithms")]
fn a_uniform_ball() {
    // RG = √(2/5)·R (any mechanics handbook) at both published diameters, to four places.
    for (diameter_in, rg_in) in DIAMETER_IN.into_iter().zip([2.6879, 2.7180]) {
        let got = weighed(&ball(diameter_in, 1.2));
        for rg in got.rg_m {
            within("RG", rg / M_PER_IN, rg_in, 5e-5);
        }
        within("differential", got.differential_m() / M_PER_IN, 0.0, 1e-12);
        // Below the published highest RG of 2.800 in, above the lowest of 2.460 in (USBC, 13 lb and up).
        assert!(rg_in > 2.460 && rg_in < 2.800);
    }
}

#[test]
fn the_heaviest_ball_that_floats() {
    // Archimedes: the weight of a ball of water at 1.000 g/cc.
    for (diameter_in, weight_lb) in DIAMETER_IN.into_iter().zip([11.617, 12.011]) {
        within("weight", weighed(&ball(diameter_in, 1.0)).mass_kg / KG_PER_LB, weight_lb, 5e-4);
    }
}

#[test]
fn the_density_of_sixteen_pounds() {
    // USBC: at most 16.00 lb. Between the two diameters that is 1.377 down to 1.332 g/cc all through.
    for (diameter_in, density_g_cc) in DIAMETER_IN.into_iter().zip([1.377, 1.332]) {
        let unit = weighed(&ball(diameter_in, 1.0)).mass_kg;
        within("density", 16.0 * KG_PER_LB / unit, density_g_cc, 5e-4);
    }
}

#[test]
fn top_weight_of_a_ball_is_what_balances_it() {
    // Our own convention, stated in the file format: m·cg_z/R, set on the far pole.
    let core = pithball_tests::make::sphere(3.0);
    let recipe =
        pithball_tests::make::Build::pour(ball(8.55, 1.2), 2.0, pithball_tests::make::Place::at(core, [0.0, 0.0, 0.5]));
    let got = weighed(&recipe);
    let moment_oz_in = (2.0 - 1.2) * KG_M3_PER_G_CC * PI / 6.0 * (3.0 * M_PER_IN).powi(3) / (KG_PER_LB / 16.0) * 0.5;
    within("top weight", got.top_weight_oz(), moment_oz_in / 4.275, 1e-9);
}

#[test]
fn the_lane() {
    // USBC: 60 ft from foul line to head-pin centre, 41.5 in wide (41 to 42), 39 boards.
    within("to the head pin, ft", PINS_M / M_PER_FT, 60.0, 1e-12);
    within("width, in", WIDTH_M / M_PER_IN, 41.5, 1e-12);
    within("boards", BOARDS, 39.0, 0.0);
    // Computed: a straight line from the lane's edge at the foul line to the head pin's centre: 1.65°.
    within("steepest straight line", (EDGE_M / PINS_M).atan().to_degrees(), 1.65, 5e-3);
    // Computed: 2.5 boards off centre is 2.66 in, the aim at board 17.5.
    within("pocket", x_at_m(Hand::Right, 17.5) / M_PER_IN, 2.66, 5e-3);
    within("pocket of a left-hander", x_at_m(Hand::Left, 17.5) / M_PER_IN, -2.66, 5e-3);
    within("centre", board_at(Hand::Right, 0.0), 20.0, 0.0);
    within("one board", board_at(Hand::Right, BOARD_M), 19.0, 1e-12);
    // USBC: pins 12 in apart in a triangle of 36 in: rows 12·√3/2 in deep, four rows from the head pin
    // to the pit less than the 62 ft 10 3/16 in of lane.
    let last_row_in = 60.0 * 12.0 + 3.0 * 12.0 * 3.0_f64.sqrt() / 2.0;
    assert!(last_row_in < 62.0 * 12.0 + 10.0 + 3.0 / 16.0);
}

/// Closed form for a ball that is alike in all directions (Coriolis 1835, Euler): while it slips the
/// direction of slip is constant and the path a parabola wherever friction is constant; it rolls
/// when u₀ = μg(1 + 1/k)t; then v = (v₀ + kRω₀×ẑ)/(1 + k). Figures worked out from that, for a ball
/// of 4.2975 in, friction 0.04 to 40 ft, then 0.20.
#[test]
fn worked_shots_of_a_uniform_ball() {
    struct Row {
        mph: f64,
        rpm: f64,
        rotation_deg: f64,
        launch_deg: f64,
        k: f64,
        dry: bool,
        x_in: f64,
        entry_deg: f64,
        speed_m_s: f64,
        time_s: f64,
        rolls_ft: Option<f64>,
    }
    #[rustfmt::skip]
    let row = |mph, rpm, rotation_deg, launch_deg, k, dry, x_in, entry_deg, speed_m_s, time_s, rolls_ft| Row {
        mph, rpm, rotation_deg, launch_deg, k, dry, x_in, entry_deg, speed_m_s, time_s, rolls_ft,
    };
    // In the first rows the axis stands at 45° to the launched direction, which is 1.8° outward.
    let rows = [
        row(17.9, 416.0, 43.2, 1.8, 0.4, false, 15.67, 6.388, 6.745, 2.450, Some(52.13)),
        row(17.9, 416.0, 43.2, 1.8, 0.3384, false, 13.61, 5.297, 6.882, 2.442, Some(49.99)),
        row(19.0, 220.0, 80.0, 0.0, 0.4, false, 19.03, 5.976, 6.371, 2.338, None),
        row(18.0, 325.0, 70.0, 0.0, 0.4, false, 33.09, 9.270, 6.192, 2.475, Some(57.79)),
        row(19.0, 520.0, 60.0, 0.0, 0.4, false, 41.48, 12.006, 7.071, 2.286, Some(59.80)),
        row(15.0, 0.0, 0.0, 0.0, 0.4, false, 0.0, 0.0, 4.790, 3.128, Some(50.42)),
        row(17.9, 416.0, 43.2, 1.8, 0.4, true, 49.21, 6.388, 6.745, 2.594, Some(33.55)),
    ];
    for r in rows {
        let (mass_kg, radius_m) = (6.8, 4.2975 * M_PER_IN);
        let ball = RigidBall {
            mass_kg,
            radius_m,
            cg_m: nalgebra::Vector3::zeros(),
            inertia_kg_m2: nalgebra::Matrix3::identity() * (r.k * mass_kg * radius_m * radius_m),
        };
        let zone = |from: f64, to: f64, mu| Zone { from_m: from * M_PER_FT, to_m: to * M_PER_FT, mu };
        let zones =
            if r.dry { vec![zone(0.0, 63.0, 0.12)] } else { vec![zone(0.0, 40.0, 0.04), zone(40.0, 63.0, 0.20)] };
        // The widest hook that stays on the lane needs all of it.
        let start = if r.x_in > 40.0 && !r.dry { 0.505 } else { 5.5 };
        let shot = Shot {
            hand: Hand::Right,
            release: Release {
                speed_m_s: r.mph * M_S_PER_MPH,
                spin_rad_s: r.rpm * RAD_S_PER_RPM,
                axis_rotation_rad: r.rotation_deg.to_radians(),
                axis_tilt_rad: 0.0,
                launch_angle_rad: r.launch_deg.to_radians(),
                board: start,
            },
            layout: Layout { pin_to_pap_m: 0.1, drilling_angle_rad: 0.0, start_turn_rad: 0.0 },
            lane: Friction::from_zones(&zones).unwrap(),
        };
        let got = roll(&ball, &shot).unwrap();
        let Some(pins) = got.at_pins else {
            // Only the shot that hooks farther than the lane is wide may leave it.
            assert!(r.dry && r.x_in > WIDTH_M / M_PER_IN, "{} mph left the lane", r.mph);
            within("rolls at, ft", got.roll_start.unwrap().distance_m / M_PER_FT, r.rolls_ft.unwrap(), 6e-3);
            continue;
        };
        within("hook, in", (pins.board - start) * BOARD_M / M_PER_IN, r.x_in, 6e-3);
        within("entry, degrees", pins.entry_angle_rad.to_degrees(), r.entry_deg, 6e-4);
        within("speed, m/s", pins.speed_m_s, r.speed_m_s, 6e-4);
        within("time, s", pins.time_s, r.time_s, 6e-4);
        assert_eq!(got.roll_start.is_some(), r.rolls_ft.is_some(), "{} mph, {} rpm", r.mph, r.rpm);
        if let (Some(at), Some(rolls_ft)) = (got.roll_start, r.rolls_ft) {
            within("rolls at, ft", at.distance_m / M_PER_FT, rolls_ft, 6e-3);
        }
    }
}

#[test]
fn every_ball_of_the_house_keeps_the_published_limits() {
    // USBC: at most 16.00 lb, 8.500 to 8.595 in, any piece at most 3.80 g/cc; RG 2.460 to 2.800 in
    // (13 lb and up), differential at most 0.060 in.
    let folder: PathBuf = [env!("CARGO_MANIFEST_DIR"), "..", "scenarios", "balls"].iter().collect();
    let mut count = 0;
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = path.display().to_string();
        let file = format::BallFile::read(&std::fs::read(&path).unwrap()).unwrap_or_else(|e| panic!("{name}: {e}"));
        let recipe = file.recipe();
        let got = weigh(&Ball::new(&recipe).unwrap());
        let (weight_lb, diameter_in) = (got.mass_kg / KG_PER_LB, recipe.diameter_m / M_PER_IN);
        let [low, middle, high] = got.rg_m.map(|rg| rg / M_PER_IN);
        let sizes = (DIAMETER_IN[0] - 1e-9..=DIAMETER_IN[1] + 1e-9).contains(&diameter_in);
        assert!(sizes, "{name}: diameter {diameter_in} in");
        assert!((12.0..=16.0).contains(&weight_lb), "{name}: {weight_lb} lb");
        assert!(low >= 2.460 && high <= 2.800, "{name}: RG {low}, {middle}, {high} in");
        assert!(high - low <= 0.060, "{name}: differential {} in", high - low);
        let densities = recipe.pieces.iter().map(|p| p.density_kg_m3).chain([recipe.cover_density_kg_m3]);
        for density in densities {
            assert!(density <= 3.80 * KG_M3_PER_G_CC, "{name}: {density} kg/m³");
        }
        count += 1;
    }
    assert!(count >= 6, "{count} balls");
}
