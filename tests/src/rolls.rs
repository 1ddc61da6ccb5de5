//! Shots and their results as the reference scripts write them.

use nalgebra::{Matrix3, Vector3};
use physics::lane::oil::{BOARD_COUNT, Film, FrictionLaw, Oiled, Pattern};
use physics::roll::{End, Friction, Hand, Layout, Release, RigidBall, Shot, Summary, Zone};
use physics::units::{M_PER_FT, M_PER_IN, M_S_PER_MPH, RAD_S_PER_RPM};
use serde_json::Value;

/// The number under a key.
pub fn number(of: &Value, key: &str) -> f64 {
    of[key].as_f64().unwrap_or_else(|| panic!("no number {key} in {of}"))
}

/// The ball of a reference shot.
pub fn ball(of: &Value) -> RigidBall {
    let of = &of["ball"];
    RigidBall {
        mass_kg: number(of, "mass_kg"),
        radius_m: number(of, "radius_m"),
        cg_m: Vector3::from(serde_json::from_value::<[f64; 3]>(of["cg_m"].clone()).expect("as the script writes it")),
        inertia_kg_m2: Matrix3::from(
            serde_json::from_value::<[[f64; 3]; 3]>(of["inertia_kg_m2"].clone()).expect("as the script writes it"),
        ),
    }
}

/// The lane of a reference shot: zones, a pattern, or the lopsided map, whose
/// cells stand beside the shots.
pub fn lane(of: &Value, lopsided_um: &Value) -> Friction {
    let Some(law) = of.get("law") else {
        let zone = |zone: &Value| Zone {
            from_m: number(zone, "from_ft") * M_PER_FT,
            to_m: number(zone, "to_ft") * M_PER_FT,
            mu: number(zone, "mu"),
        };
        let zones: Vec<Zone> = of["zones"].as_array().expect("zones").iter().map(zone).collect();
        return Friction::from_zones(&zones).expect("a lane");
    };
    let oil = &of["oil"];
    let film = if oil == "lopsided" { map(lopsided_um) } else { pattern(oil).film().expect("a pattern") };
    let law = FrictionLaw {
        mu_oil: number(law, "mu_oil"),
        mu_dry: number(law, "mu_dry"),
        film_half_m: number(law, "film_half_um") * 1e-6,
    };
    Friction::oiled(Oiled { film, law })
}

fn map(cells_um: &Value) -> Film {
    let cells_um: Vec<Vec<f64>> = serde_json::from_value(cells_um.clone()).expect("as the script writes it");
    let cells_m: Vec<[f64; BOARD_COUNT]> =
        cells_um.iter().map(|row| std::array::from_fn(|board| row[board] * 1e-6)).collect();
    Film::from_cells(&cells_m).expect("a map")
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

/// A reference shot on a lane.
pub fn shot(of: &Value, lane: Friction) -> Shot {
    let (release, layout) = (&of["release"], &of["layout"]);
    let angle = |of: &Value, key| number(of, key).to_radians();
    Shot {
        hand: if of["hand"] == "left" { Hand::Left } else { Hand::Right },
        release: Release {
            speed_m_s: number(release, "speed_mph") * M_S_PER_MPH,
            spin_rad_s: number(release, "revs_rpm") * RAD_S_PER_RPM,
            axis_rotation_rad: angle(release, "axis_rotation_deg"),
            axis_tilt_rad: angle(release, "axis_tilt_deg"),
            launch_angle_rad: angle(release, "launch_angle_deg"),
            board: number(release, "board"),
        },
        layout: Layout {
            pin_to_pap_m: number(layout, "pin_to_pap_in") * M_PER_IN,
            drilling_angle_rad: angle(layout, "drilling_angle_deg"),
            start_turn_rad: angle(layout, "start_turn_deg"),
        },
        lane,
    }
}

/// Where a result differs from the reference by more than is allowed: 0.001
/// board and degree at the pins.
pub fn differences(reference: &Value, got: &Summary) -> Vec<String> {
    let name = reference["name"].as_str().expect("as the script writes it");
    let want = &reference["result"];
    let mut wrong = Vec::new();
    let mut check = |what: &str, got: f64, tolerance: f64| {
        let want = number(want, what);
        if (got - want).abs() > tolerance {
            wrong.push(format!("{name}: {what} is {got}, scipy has {want}, off by {:e}", got - want));
        }
    };
    check("breakpoint_board", got.breakpoint.board, 1e-3);
    check("breakpoint_ft", got.breakpoint.distance_m / M_PER_FT, 1e-2);
    if let Some(pins) = got.at_pins {
        check("time_s", pins.time_s, 1e-5);
        check("board_at_pins", pins.board, 1e-3);
        check("entry_angle_deg", pins.entry_angle_rad.to_degrees(), 1e-3);
        check("speed_at_pins_mph", pins.speed_m_s / M_S_PER_MPH, 1e-3);
        check("revs_at_pins_rpm", pins.spin_rad_s / RAD_S_PER_RPM, 1e-2);
        if let Some(turned) = pins.axis_migration_rad {
            check("axis_migration_deg", turned.to_degrees(), 1e-2);
        }
    } else {
        check("end_ft", got.end_m.y / M_PER_FT, 1e-3);
        check("end_time_s", got.end_time_s, 1e-5);
    }
    if let Some(start) = got.roll_start {
        check("roll_start_ft", start.distance_m / M_PER_FT, 1e-3);
    }
    let (gutter, rolls) =
        (want["gutter"].as_bool().expect("as the script writes it"), !want["roll_start_ft"].is_null());
    if gutter != (got.end == End::Gutter) || rolls != got.roll_start.is_some() {
        wrong.push(format!("{name}: ends by {:?}, roll start {:?}, scipy: {want}", got.end, got.roll_start));
    }
    wrong
}
