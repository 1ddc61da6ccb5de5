//! The same balls on the same friction in MuJoCo, a general-purpose
//! rigid-body engine (tests/reference/roll_mujoco.py): agreement and cost.
//!
//! MuJoCo steps 10,000 times a second and its contacts give way a little, so
//! the agreement is that of the engine: two hundredths of a board, a tenth with
//! a strong top weight, which the giving contact lets nod.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a check that cannot be set up must fail loudly")]

use std::time::Instant;

use physics::roll::roll;
use physics::units::M_S_PER_MPH;
use pithball_tests::reference;
use pithball_tests::rolls::{ball, lane, number, shot};

/// Most that each number may differ.
const BOARDS: f64 = 0.1;
const DEGREES: f64 = 0.01;
const MPH: f64 = 0.005;
const SECONDS: f64 = 5e-4;

#[test]
fn a_general_purpose_engine_agrees() {
    let file = reference("roll_mujoco.json");
    let cells_um = reference("oil_scipy.json")["lopsided_um"].clone();
    let shots = file["shots"].as_array().unwrap();
    assert_eq!(shots.len(), 8);
    println!(
        "{:<32} {:>9} {:>9} {:>8} {:>8} {:>9} {:>10} {:>8}",
        "shot", "MuJoCo bd", "ours bd", "off bd", "off deg", "off mph", "MuJoCo s", "ours ms"
    );
    for reference in shots {
        let name = reference["name"].as_str().unwrap();
        let (ball, shot) = (ball(reference), shot(reference, lane(reference, &cells_um)));
        let began = Instant::now();
        let pins = roll(&ball, &shot).unwrap().at_pins.unwrap_or_else(|| panic!("{name} misses the pins"));
        let ours_ms = began.elapsed().as_secs_f64() * 1e3;
        let want = |key| number(&reference["result"], key);
        let board = pins.board - want("board_at_pins");
        let degrees = pins.entry_angle_rad.to_degrees() - want("entry_angle_deg");
        let mph = pins.speed_m_s / M_S_PER_MPH - want("speed_at_pins_mph");
        println!(
            "{name:<32} {:>9.3} {:>9.3} {board:>8.4} {degrees:>8.4} {mph:>9.5} {:>10.2} {ours_ms:>8.3}",
            want("board_at_pins"),
            pins.board,
            number(reference, "took_s"),
        );
        assert!(board.abs() < BOARDS, "{name}: {board} boards");
        assert!(degrees.abs() < DEGREES, "{name}: {degrees} degrees");
        assert!(mph.abs() < MPH, "{name}: {mph} mph");
        assert!((pins.time_s - want("time_s")).abs() < SECONDS, "{name}: {} s", pins.time_s);
        // The engine's own two time steps differ by about as much.
        assert!(number(&reference["less_coarse"], "board_at_pins").abs() < BOARDS, "{name}");
    }
}
