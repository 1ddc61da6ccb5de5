//! The numbers that the model note quotes, `docs/model.md`, worked out afresh:
//! its tables must be those below to the last digit, so that they cannot go stale.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a check that cannot be set up must fail loudly"
)]

use std::fs;
use std::path::PathBuf;

use format::{
    BallFile, Family, Finish, Friction, Lane, Oil, OilFile, OilRef, OiledLane, Pattern, ShotFile, Throw, WornGameDoc,
    wear,
};
use nalgebra::{Matrix3, Vector3};
use physics::lane::oil::{FrictionLaw, NEUTRAL_LAW, WEAR_RATES, WearRates};
use physics::roll::{RigidBall, Summary, roll};
use physics::units::{KG_PER_LB, M_PER_FT, M_PER_IN};
use physics::weigh::weigh;

fn read(path: &str) -> Vec<u8> {
    fs::read(PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..").join(path)).expect(path)
}

/// The house shot of the note: No. 3 on the house pattern.
#[derive(Clone)]
struct Case {
    ball: BallFile,
    throw: Throw,
}

impl Case {
    fn house() -> Self {
        let ball = BallFile::read(&read("scenarios/balls/no-3-three-piece.ball.json")).unwrap();
        let oil = OilFile::read(&read("scenarios/oil/house.oil.json")).unwrap();
        let mut throw = ShotFile::read(&read("scenarios/shots/house-pattern.shot.json")).unwrap().throw;
        throw.lane = Lane::Oiled(OiledLane { oil: OilRef::Object(Box::new(oil)), friction: None });
        Self { ball, throw }
    }

    fn lane(&mut self) -> &mut OiledLane {
        match &mut self.throw.lane {
            Lane::Oiled(lane) => lane,
            Lane::Zoned(_) => panic!("the house shot is on oil"),
        }
    }

    fn law(mut self, friction: Friction) -> Self {
        self.lane().friction = Some(friction);
        self
    }

    fn pattern(mut self, change: impl FnOnce(&mut Pattern)) -> Self {
        let OilRef::Object(file) = &mut self.lane().oil else { panic!("the oil is inside") };
        let Oil::Pattern { pattern } = &mut file.oil else { panic!("house is a pattern") };
        change(pattern);
        self
    }

    fn family(mut self, family: Family) -> Self {
        self.ball.cover.family = Some(family);
        self
    }

    fn grit(mut self, grit: f64) -> Self {
        self.ball.cover.finish = Some(Finish { grit, polished: None });
        self
    }

    fn release(mut self, change: impl FnOnce(&mut format::Release)) -> Self {
        change(&mut self.throw.release);
        self
    }

    fn rolled(&self) -> Summary {
        let ball = RigidBall::from(&weigh(&self.ball.build().unwrap()));
        roll(&ball, &self.throw.shot(&self.ball.cover).unwrap()).unwrap()
    }
}

/// A row of numbers: board and entry angle.
fn row(name: &str, summary: &Summary) -> String {
    let pins = summary.at_pins.as_ref().expect(name);
    format!("| {name} | {:.1} | {:.1}° |", pins.board, pins.entry_angle_rad.to_degrees())
}

/// The same with where it comes to roll.
fn rolling_row(name: &str, summary: &Summary) -> String {
    let distance_m = summary.roll_start.expect(name).distance_m;
    format!("{} {:.0} ft ({distance_m:.1} m) |", row(name, summary), distance_m / M_PER_FT)
}

fn table(head: &str, rows: impl Iterator<Item = String>) -> String {
    rows.fold(format!("{head}\n"), |text, row| text + &row + "\n")
}

fn sensitivities() -> String {
    let house = Case::house;
    let friction = |change: fn(&mut Friction)| {
        let mut friction = Friction::default();
        change(&mut friction);
        house().law(friction)
    };
    let rows = [
        ("as it is", house()),
        ("friction on dry boards 0.18, not 0.20", friction(|law| law.mu_dry = Some(0.18))),
        ("0.22", friction(|law| law.mu_dry = Some(0.22))),
        ("friction in thick oil 0.03, not 0.04", friction(|law| law.mu_oil = Some(0.03))),
        ("0.05", friction(|law| law.mu_oil = Some(0.05))),
        ("half-way film 0.15 µm, not 0.3 µm", friction(|law| law.film_half_um = Some(0.15))),
        ("0.6 µm", friction(|law| law.film_half_um = Some(0.6))),
        ("a tenth less oil", house().pattern(|oil| oil.volume_ml *= 0.9)),
        ("a tenth more", house().pattern(|oil| oil.volume_ml *= 1.1)),
        ("oil 1 ft (0.3 m) longer", house().pattern(|oil| oil.length_ft += 1.0)),
        ("a polyester cover, not reactive", house().family(Family::Polyester)),
        ("urethane", house().family(Family::Urethane)),
        ("sanded with 1000 grit, not 2000", house().grit(1000.0)),
        ("with 4000", house().grit(4000.0)),
        ("the bowler: 0.5 mph (0.8 km/h) faster", house().release(|release| release.speed_mph += 0.5)),
        ("20 rpm more", house().release(|release| release.revs_rpm += 20.0)),
        ("half a degree further out", house().release(|release| release.launch_angle_deg += 0.5)),
    ];
    let rows = rows.iter().map(|(name, case)| row(name, &case.rolled()));
    table("| what is different | board at the pins | entry angle |\n| --- | --- | --- |", rows)
}

/// A ball of 15 lb whose inertia is the same about every axis.
fn round(rg_in: f64) -> RigidBall {
    let (mass_kg, rg_m) = (15.0 * KG_PER_LB, rg_in * M_PER_IN);
    RigidBall {
        mass_kg,
        radius_m: 8.55 / 2.0 * M_PER_IN,
        cg_m: Vector3::zeros(),
        inertia_kg_m2: Matrix3::identity() * mass_kg * rg_m * rg_m,
    }
}

fn by_rg() -> String {
    let case = Case::house();
    let shot =
        ShotFile::read(&read("scenarios/shots/opening.shot.json")).unwrap().throw.shot(&case.ball.cover).unwrap();
    let rows = [2.48, 2.58, 2.68].iter().map(|&rg_in| {
        let name = format!("RG {rg_in:.2} in ({:.1} mm)", rg_in * 25.4);
        rolling_row(&name, &roll(&round(rg_in), &shot).unwrap())
    });
    table("| ball | board at the pins | entry angle | rolls from |\n| --- | --- | --- | --- |", rows)
}

/// How far the integration itself may be off, as a power of ten above it.
fn own_error() -> String {
    let pins = Case::house().rolled().at_pins.unwrap();
    let power = |error: f64| -(error.log10().ceil() as i32);
    let (board, degree) = (power(pins.board_error), power(pins.entry_angle_error_rad.to_degrees()));
    format!("10<sup>−{board}</sup> of a board and 10<sup>−{degree}</sup> of a degree")
}

/// The law's and the wear's own numbers.
fn constants() -> [String; 2] {
    let FrictionLaw { mu_oil, mu_dry, film_half_m } = NEUTRAL_LAW;
    let WearRates { taken_up, carried_m } = WEAR_RATES;
    [
        format!("from {mu_dry:.2} on dry boards to {mu_oil:.2} in thick oil (half-way at {:.1} µm)", film_half_m * 1e6),
        format!(
            "takes up {:.0}% of the film in a band one board wide, and would lay down all but a third of what it carries over {:.0} ft ({carried_m:.0} m)",
            taken_up * 100.0,
            carried_m / M_PER_FT
        ),
    ]
}

/// What games of the house shot do.
fn worn() -> String {
    let Case { ball, throw } = Case::house();
    let body = RigidBall::from(&weigh(&ball.build().unwrap()));
    let worn = wear(&[(body, &ball.cover, &throw)], 10).unwrap();
    let (first, last) = (&worn.games[0], worn.games.last().unwrap());
    let board = |game: &WornGameDoc| game.summary.board_at_pins.unwrap();
    format!(
        "after {} games of it {:.1} of {:.1} mL are left, and it arrives {:.1} boards higher",
        last.game,
        last.volume_ml,
        first.volume_ml,
        board(last) - board(first)
    )
}

/// The same words, however the file's lines are broken.
fn unbroken(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn the_note_quotes_what_the_program_computes() {
    let note = String::from_utf8(read("docs/model.md")).unwrap();
    let [law, rates] = constants();
    let note = unbroken(&note);
    let computed = [sensitivities(), by_rg(), own_error(), law, rates, worn()];
    let missing: Vec<String> = computed.into_iter().filter(|text| !note.contains(&unbroken(text))).collect();
    assert!(missing.is_empty(), "docs/model.md must have:\n\n{}", missing.join("\n"));
}

/// What the note says in words about its tables.
#[test]
fn the_note_says_of_its_tables_what_is_so() {
    let board = |case: Case| case.rolled().at_pins.unwrap().board;
    let angle = |rg_in: f64| {
        let cover = Case::house().ball.cover;
        let shot = ShotFile::read(&read("scenarios/shots/opening.shot.json")).unwrap().throw.shot(&cover).unwrap();
        let summary = roll(&round(rg_in), &shot).unwrap();
        (summary.at_pins.unwrap().entry_angle_rad, summary.roll_start.unwrap().distance_m)
    };
    let (low, high) = (angle(2.48), angle(2.68));
    assert!(low.0 < high.0, "the lower RG enters at the smaller angle");
    assert!(low.1 < high.1, "and rolls sooner");
    // "Half a board to two boards."
    let as_it_is = board(Case::house());
    let usual = Friction::default();
    for friction in [
        Friction { mu_dry: Some(0.18), ..usual },
        Friction { mu_dry: Some(0.22), ..usual },
        Friction { mu_oil: Some(0.03), ..usual },
        Friction { mu_oil: Some(0.05), ..usual },
        Friction { film_half_um: Some(0.15), ..usual },
        Friction { film_half_um: Some(0.6), ..usual },
    ] {
        let moved = (board(Case::house().law(friction)) - as_it_is).abs();
        assert!((0.5..2.1).contains(&moved), "{friction:?} moves it by {moved} boards");
    }
}
