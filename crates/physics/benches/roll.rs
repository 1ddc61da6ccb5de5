//! Full shots per second, release to pins, on one core.

#![allow(missing_docs, clippy::panic, reason = "a benchmark, not an interface")]

use std::hint::black_box;
use std::time::Duration;

use criterion::{Criterion, Throughput};
use nalgebra::{Matrix3, Vector3};
use pithball_physics::lane::oil::{NEUTRAL_LAW, Oiled, Pattern};
use pithball_physics::lane::{Friction, Hand, Zone};
use pithball_physics::roll::{Layout, Release, RigidBall, Shot, roll, trace};
use pithball_physics::units::{KG_PER_LB, M_PER_FT, M_PER_IN, M_S_PER_MPH, RAD_S_PER_RPM};

fn ball(rg_in: [f64; 3], cg_in: [f64; 3]) -> RigidBall {
    let mass_kg = 15.0 * KG_PER_LB;
    let moment = |i: usize| mass_kg * (rg_in[i] * M_PER_IN).powi(2);
    RigidBall {
        mass_kg,
        radius_m: 4.2975 * M_PER_IN,
        cg_m: Vector3::from(cg_in) * M_PER_IN,
        inertia_kg_m2: Matrix3::from_diagonal(&Vector3::new(moment(2), moment(1), moment(0))),
    }
}

fn shot(mph: f64, rpm: f64, rotation_deg: f64, oil_ft: f64) -> Shot {
    let zone = |from: f64, to: f64, mu| Zone { from_m: from * M_PER_FT, to_m: to * M_PER_FT, mu };
    let zones = [zone(0.0, oil_ft, 0.04), zone(oil_ft, 63.0, 0.20)];
    Shot {
        hand: Hand::Right,
        release: Release {
            speed_m_s: mph * M_S_PER_MPH,
            spin_rad_s: rpm * RAD_S_PER_RPM,
            axis_rotation_rad: rotation_deg.to_radians(),
            axis_tilt_rad: 12_f64.to_radians(),
            launch_angle_rad: 2_f64.to_radians(),
            board: 25.0,
        },
        layout: Layout { pin_to_pap_m: 4.0 * M_PER_IN, drilling_angle_rad: 60_f64.to_radians(), start_turn_rad: 0.0 },
        // The zones are in range and join.
        lane: Friction::from_zones(&zones).unwrap_or_else(|error| panic!("{error}")),
    }
}

/// The same shot on a house pattern.
fn on_oil(shot: Shot) -> Shot {
    let pattern = Pattern {
        length_m: 40.0 * M_PER_FT,
        volume_m3: 24e-6,
        ratio: 10.0,
        thin_to_board: 8.0,
        full_from_board: 12.0,
        front_m: 8.0 * M_PER_FT,
        end_share: 0.3,
        buff_m: 4.0 * M_PER_FT,
    };
    let film = pattern.film().unwrap_or_else(|error| panic!("{error}"));
    Shot { lane: Friction::oiled(Oiled { film, law: NEUTRAL_LAW }), ..shot }
}

fn main() {
    let mut criterion = Criterion::default()
        .sample_size(20)
        .warm_up_time(Duration::from_millis(300))
        .measurement_time(Duration::from_secs(1))
        .without_plots()
        .configure_from_args();
    let symmetric = ball([2.48, 2.53, 2.53], [0.0, 0.0, 0.03]);
    let asymmetric = ball([2.47, 2.51, 2.53], [0.01, -0.02, 0.04]);
    let mut group = criterion.benchmark_group("roll");
    for (name, ball, shot) in [
        ("symmetric core, medium shot", &symmetric, shot(17.0, 300.0, 45.0, 40.0)),
        ("asymmetric core, high revs", &asymmetric, shot(19.0, 520.0, 60.0, 38.0)),
        ("asymmetric core, slow and straight", &asymmetric, shot(13.0, 150.0, 10.0, 42.0)),
        ("symmetric core, medium shot on oil", &symmetric, on_oil(shot(17.0, 300.0, 45.0, 40.0))),
        ("asymmetric core, high revs on oil", &asymmetric, on_oil(shot(19.0, 420.0, 45.0, 40.0))),
    ] {
        match roll(ball, &shot).map(|summary| summary.at_pins) {
            Ok(Some(pins)) => println!(
                "{name}: error at the pins within {:.1e} board, {:.1e} degrees",
                pins.board_error,
                pins.entry_angle_error_rad.to_degrees()
            ),
            other => println!("{name}: {other:?}"),
        }
        group.throughput(Throughput::Elements(1));
        group.bench_function(name, |b| b.iter(|| roll(black_box(ball), black_box(&shot))));
        let name = format!("{name}, sampled 120 times a second");
        group.bench_function(name, |b| b.iter(|| trace(black_box(ball), black_box(&shot), 1.0 / 120.0)));
    }
    group.finish();
    criterion.final_summary();
}
