#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use nalgebra::{Matrix3, UnitQuaternion, Vector2};

use super::*;
use crate::lane::{Friction, Hand, Zone};
use crate::roll::{self, Layout, Phase, Release, RigidBall, Shot};
use crate::units::M_S_PER_MPH;

const R: f64 = 4.2975 * M_PER_IN;

/// A ball of these RGs about x, y and z let go on ice with no tilt, the PAP
/// this far from the pin.
fn on_ice(rg_in: [f64; 3], pin_to_pap_in: f64) -> Trace {
    let mass_kg = 6.8;
    let ball = RigidBall {
        mass_kg,
        radius_m: R,
        cg_m: Vector3::zeros(),
        inertia_kg_m2: Matrix3::from_diagonal(&Vector3::from(rg_in.map(|rg| mass_kg * (rg * M_PER_IN).powi(2)))),
    };
    let shot = Shot {
        hand: Hand::Right,
        release: Release {
            speed_m_s: 17.0 * M_S_PER_MPH,
            spin_rad_s: 10.0 * PI,
            axis_rotation_rad: 0.5,
            axis_tilt_rad: 0.0,
            launch_angle_rad: 0.0,
            board: 20.0,
        },
        layout: Layout { pin_to_pap_m: pin_to_pap_in * M_PER_IN, drilling_angle_rad: 0.7, start_turn_rad: 0.0 },
        lane: Friction::from_zones(&[Zone { from_m: 0.0, to_m: 20.0, mu: 0.0 }]).expect("a lane"),
    };
    roll::trace(&ball, &shot, 0.01).expect("a shot")
}

#[test]
fn neighbouring_rings_lie_as_far_apart_as_a_free_top_says() {
    // FACTS on flare per turn: s = 2πR·(1 − (low/high)²)·sin θ·cos θ; the table's
    // rows of RG low/high in inches and pin to PAP.
    for (low, high, pin_to_pap_in, table_in) in [
        (2.46, 2.52, 1.6875, 0.449),
        (2.46, 2.52, 3.375, 0.635),
        (2.48, 2.53, 3.375, 0.528),
        (2.50, 2.53, 5.0625, 0.225),
        (2.69, 2.70, 3.375, 0.100),
    ] {
        let track = track(&on_ice([high, high, low], pin_to_pap_in), R, &[]);
        assert!(track.rings.len() > 8, "{}", track.rings.len());
        let theta = pin_to_pap_in * M_PER_IN / R;
        let rate = TAU * (1.0 - (low / high).powi(2)) * theta.cos();
        // The chord of the axis's circle about the pin, once a turn.
        let exact = 2.0 * R * (theta.sin() * (0.5 * rate).sin()).asin();
        for pair in track.rings.windows(2) {
            let apart = R * pair[0].axis.cross(&pair[1].axis).norm().asin();
            assert!((apart - exact).abs() < 1e-4 * M_PER_IN, "{apart} m, not {exact}");
        }
        // The table's R is near ours and its arc is not the chord's.
        assert!((exact / M_PER_IN / table_in - 1.0).abs() < 0.02, "{} in, not {table_in}", exact / M_PER_IN);
    }
}

#[test]
fn the_widest_place_is_the_flare_and_the_bow_ties_are_narrow() {
    let mut trace = on_ice([2.53, 2.53, 2.48], 3.375);
    // Five turns of a fifth of a second: the last ring lies farthest from the first.
    trace.samples.truncate(102);
    let track = track(&trace, R, &[]);
    assert_eq!(track.rings.len(), 6);
    let widest = track.widest.expect("a band");
    let flare = R * track.rings[0].axis.angle(&track.rings[5].axis);
    // The axis goes along a curve, so that rings between stand out a little beside the two.
    assert!(widest.width_m >= flare - 1e-9 && widest.width_m < 1.01 * flare, "{} {flare}", widest.width_m);
    let ties = track.bow_ties.expect("two places");
    for tie in ties {
        // Great circles through nearly the same two points, a quarter from the widest place.
        assert!(tie.width_m < 0.3 * widest.width_m, "{tie:?}");
        assert!((tie.at.norm() - 1.0).abs() < 1e-12);
        assert!(tie.at.dot(&widest.at).abs() < 0.2, "{tie:?} {widest:?}");
    }
    assert!(ties[0].at.dot(&ties[1].at) < -0.9);
}

/// Great circles with axes 30°, 80° and 105° from the first: the widest two lie apart by the
/// smaller angle between their planes, 80°, and nothing runs round the ball.
#[test]
fn an_axis_that_moves_beyond_a_right_angle_does_not_wrap_the_band_round_the_ball() {
    let ring = |degrees: f64| {
        let (sin, cos) = degrees.to_radians().sin_cos();
        Ring { axis: Vector3::new(sin, 0.0, cos), height: 0.0, time_s: 0.0 }
    };
    let rings = [0.0, 30.0, 80.0, 105.0].map(ring);
    let (widest, ties) = band(&rings, R).expect("a band");
    assert!((widest.width_m - R * 80_f64.to_radians()).abs() < 1e-9, "{} in", widest.width_m / M_PER_IN);
    for tie in ties {
        assert!(tie.width_m < 1e-9, "the rings all pass through two points: {tie:?}");
    }
    // Two small circles about one axis lie apart by the difference of their latitudes everywhere.
    let at = |degrees: f64| Ring { axis: Vector3::z(), height: degrees.to_radians().sin(), time_s: 0.0 };
    let (widest, ties) = band(&[at(20.0), at(35.0)], R).expect("a band");
    for width in [widest, ties[0], ties[1]] {
        assert!((width.width_m - R * 15_f64.to_radians()).abs() < 1e-9, "{width:?}");
        assert!((width.at.z - 27.5_f64.to_radians().sin()).abs() < 1e-9, "{width:?}");
    }
}

#[test]
fn a_ball_without_spin_or_with_one_ring_has_no_band() {
    let mut trace = on_ice([2.53, 2.53, 2.48], 3.375);
    trace.samples.truncate(15);
    let one = track(&trace, R, &[]);
    assert_eq!((one.rings.len(), one.widest, one.bow_ties), (1, None, None));
}

/// A ball that turns about its own z, touched along a ring at this height, once round in a second.
fn spinning(height: f64, turns: f64) -> Trace {
    let mut trace = on_ice([2.5; 3], 0.0);
    let beside = (1.0 - height * height).sqrt();
    let sample = |n: u32| {
        let time_s = 0.01 * f64::from(n);
        let (sin, cos) = (-TAU * time_s).sin_cos();
        Sample {
            time_s,
            position_m: Vector2::zeros(),
            velocity_m_s: Vector2::zeros(),
            slip_m_s: Vector2::zeros(),
            omega_rad_s: Vector3::new(TAU, 0.0, 0.0),
            axis_body: Vector3::z(),
            contact_body: Vector3::new(beside * cos, beside * sin, height),
            normal_n: 60.0,
            mu: 0.2,
            film_m: None,
            curvature_per_m: 0.0,
            axis_rotation_rad: None,
            axis_tilt_rad: None,
            phase: Phase::Roll,
            turn: UnitQuaternion::identity(),
        }
    };
    trace.samples = (0..=(100.0 * turns) as u32).map(sample).collect();
    trace
}

#[test]
fn a_ring_beside_a_hole_clears_it_by_the_arc_between() {
    let hole = |degrees: f64, diameter_in: f64| {
        let (sin, cos) = degrees.to_radians().sin_cos();
        let entry = Vector3::new(0.0, sin, cos);
        Hole { entry, axis: -entry, diameter_m: diameter_in * M_PER_IN, depth_m: 0.05 }
    };
    // The ring is the equator; holes 60°, 88° and 120° from the pole.
    let track = track(&spinning(0.0, 2.5), R, &[hole(60.0, 1.0), hole(88.0, 1.0), hole(120.0, 1.0)]);
    let edge = (0.5 * M_PER_IN / R).asin();
    let arcs = [30.0_f64, 2.0, 30.0].map(|degrees| R * (degrees.to_radians() - edge));
    for (pass, expected) in track.passes.iter().zip(arcs) {
        assert!((pass.clearance_m - expected).abs() < 0.002 * M_PER_IN, "{pass:?} {expected}");
    }
    // It goes over the second in every turn: a quarter back round in each.
    assert_eq!(track.passes[1].over, [1, 2]);
    assert!(track.passes[1].clearance_m < 0.0 && track.passes[0].over.is_empty());
    let short = super::track(&spinning(0.0, 0.6), R, &[hole(88.0, 1.0)]);
    assert_eq!(short.passes[0].over, [] as [u32; 0], "the hole is three quarters round");
}
