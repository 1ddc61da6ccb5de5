//! Shots against scipy's DOP853 at a relative tolerance of 1e-12, on equations
//! written independently (tests/reference/roll_scipy.py and oil_scipy.py).

#![allow(clippy::unwrap_used, clippy::panic, reason = "a check that cannot be set up must fail loudly")]

use physics::lane::oil::{BOARD_COUNT, Film, FrictionLaw, Oiled, Pattern};
use physics::roll::{Friction, Zone, roll};
use physics::units::M_PER_FT;
use pithball_tests::reference;
use pithball_tests::rolls::{ball, differences, number, shot};
use serde_json::Value;

/// Rolls every shot of a reference file and holds it to the result there.
#[track_caller]
fn agree(file: &Value, count: usize, lane: impl Fn(&Value) -> Friction) {
    let shots = file["shots"].as_array().unwrap();
    assert_eq!(shots.len(), count);
    let wrong: Vec<String> = shots
        .iter()
        .flat_map(|reference| {
            let got = roll(&ball(reference), &shot(reference, lane(reference)));
            differences(reference, &got.unwrap_or_else(|error| panic!("{}: {error}", reference["name"])))
        })
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn fifteen_shots_in_zones_agree_with_scipy() {
    agree(&reference("roll_scipy.json"), 15, |shot| {
        let zone = |zone: &Value| Zone {
            from_m: number(zone, "from_ft") * M_PER_FT,
            to_m: number(zone, "to_ft") * M_PER_FT,
            mu: number(zone, "mu"),
        };
        Friction::from_zones(&shot["zones"].as_array().unwrap().iter().map(zone).collect::<Vec<_>>()).unwrap()
    });
}

/// The film is scipy's own spline over the cells, a pattern's cells are its
/// profiles integrated by scipy's quadrature, and the law is written anew.
#[test]
fn ten_shots_on_oil_agree_with_scipy() {
    let file = reference("oil_scipy.json");
    let cells_um: Vec<Vec<f64>> = serde_json::from_value(file["lopsided_um"].clone()).unwrap();
    let cells_m: Vec<[f64; BOARD_COUNT]> =
        cells_um.iter().map(|row| std::array::from_fn(|board| row[board] * 1e-6)).collect();
    let lopsided = Film::from_cells(&cells_m).unwrap();
    agree(&file, 10, |shot| {
        let (oil, law) = (&shot["oil"], &shot["law"]);
        let film = if oil == "lopsided" { lopsided.clone() } else { pattern(oil).film().unwrap() };
        let law = FrictionLaw {
            mu_oil: number(law, "mu_oil"),
            mu_dry: number(law, "mu_dry"),
            film_half_m: number(law, "film_half_um") * 1e-6,
        };
        Friction::oiled(Oiled { film, law })
    });
}

fn pattern(of: &Value) -> Pattern {
    Pattern {
        length_m: number(of, "length_ft") * M_PER_FT,
        volume_m3: number(of, "volume_ml") * 1e-6,
        ratio: number(of, "ratio"),
        thin_to_board: number(of, "thin_to_board"),
        full_from_board: number(of, "full_from_board"),
        front_m: number(of, "front_ft") * M_PER_FT,
        end_share: number(of, "end_share"),
        buff_m: number(of, "buff_ft") * M_PER_FT,
    }
}
