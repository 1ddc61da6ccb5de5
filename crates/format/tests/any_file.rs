//! Whatever a file holds, reading it ends in a value or a problem, and what is
//! written is read back as it was.

use pithball_format::{
    BallFile, BallVersion, Cover, Cut, Family, Finish, Form, Hole, LayoutFile, Oil, OilFile, Piece, Shape, ShotFile,
    Throw,
};
use proptest::prelude::*;

const BALL: &str = include_str!("../../../scenarios/balls/no-4-nested-core.ball.json");
const SHOT: &str = include_str!("../../../scenarios/shots/opening.shot.json");
const LAYOUT: &str = include_str!("../../../scenarios/layouts/league-right.layout.json");
const OIL: &str = include_str!("../../../scenarios/oil/house.oil.json");

const COVER: Cover = Cover { name: None, material: None, density_g_cc: 1.2, family: None, finish: None };

/// All that is done with a file before it is weighed or rolled.
fn read_all(bytes: &[u8]) {
    for problem in [
        BallFile::read(bytes).and_then(|file| file.build()).err(),
        ShotFile::read(bytes).err(),
        LayoutFile::read(bytes).and_then(|file| file.laid.drill(&BallFile::read(BALL.as_bytes())?)?.file.build()).err(),
        Throw::read(bytes).and_then(|throw| throw.shot(&COVER)).err(),
        OilFile::read(bytes).and_then(|file| file.film()).err(),
    ]
    .into_iter()
    .flatten()
    {
        assert!(!problem.found.is_empty() && !problem.accepted.is_empty() && !problem.message.is_empty());
    }
}

fn size() -> impl Strategy<Value = f64> {
    prop_oneof![1e-3..20.0_f64, prop::num::f64::POSITIVE | prop::num::f64::NORMAL | prop::num::f64::SUBNORMAL]
}

fn finite() -> impl Strategy<Value = f64> {
    prop::num::f64::NORMAL | prop::num::f64::SUBNORMAL | prop::num::f64::ZERO
}

fn form() -> impl Strategy<Value = Form> {
    prop_oneof![
        size().prop_map(|diameter_in| Form::Sphere { diameter_in }),
        [size(), size(), size()].prop_map(|size_in| Form::Ellipsoid { size_in }),
        (size(), size()).prop_map(|(diameter_in, height_in)| Form::Cylinder { diameter_in, height_in }),
        (size(), size(), size()).prop_map(|(bottom_diameter_in, top_diameter_in, height_in)| Form::Frustum {
            bottom_diameter_in,
            top_diameter_in,
            height_in
        }),
        (size(), size())
            .prop_map(|(ring_diameter_in, tube_diameter_in)| Form::Ring { ring_diameter_in, tube_diameter_in }),
        [size(), size(), size()].prop_map(|size_in| Form::Box { size_in }),
        prop::collection::vec((size(), finite()).prop_map(|(r, z)| [r, z]), 3..9)
            .prop_map(|profile_in| Form::Lathe { profile_in }),
    ]
}

fn shape() -> impl Strategy<Value = Shape> {
    (form(), prop::option::of([0.05..=20.0, 0.05..=20.0])).prop_map(|(form, squash)| Shape { form, squash })
}

fn three() -> impl Strategy<Value = Option<[f64; 3]>> {
    prop::option::of([finite(), finite(), finite()])
}

fn cut() -> impl Strategy<Value = Cut> {
    (prop::option::of(any::<String>()), shape(), three(), three()).prop_map(|(name, shape, at_in, turn_deg)| Cut {
        name,
        shape,
        at_in,
        turn_deg,
    })
}

fn piece() -> impl Strategy<Value = Piece> {
    let density = prop_oneof![f64::MIN_POSITIVE..1.0, 1.0..=25.0];
    let cuts = prop::option::of(prop::collection::vec(cut(), 0..3));
    let insert = prop::option::of(any::<bool>());
    (any::<String>(), prop::option::of(any::<String>()), density, cut(), cuts, insert).prop_map(
        |(name, material, density_g_cc, Cut { shape, at_in, turn_deg, .. }, cuts, insert)| Piece {
            name,
            material,
            density_g_cc,
            shape,
            at_in,
            turn_deg,
            cuts,
            insert,
        },
    )
}

fn hole() -> impl Strategy<Value = Hole> {
    let entry = [finite(), finite(), finite()].prop_filter("a direction", |entry| *entry != [0.0; 3]);
    let wider = prop::option::of(0.0..=1.0);
    (prop::option::of(any::<String>()), entry, any::<bool>(), size(), size(), wider).prop_map(
        |(name, entry, straight, diameter_in, depth_in, wider)| Hole {
            name,
            entry,
            axis: (!straight).then(|| entry.map(|x| -x)),
            diameter_in,
            depth_in,
            drilled_diameter_in: wider.map(|wider| diameter_in + wider),
        },
    )
}

fn surface() -> impl Strategy<Value = (Option<Family>, Option<Finish>)> {
    let family = prop_oneof![Just(Family::Polyester), Just(Family::Urethane), Just(Family::Reactive)];
    let finish =
        (100.0..=10_000.0, prop::option::of(any::<bool>())).prop_map(|(grit, polished)| Finish { grit, polished });
    (prop::option::of(family), prop::option::of(finish))
}

fn ball() -> impl Strategy<Value = BallFile> {
    (
        (any::<String>(), prop::option::of(any::<String>()), 4.0..=12.0),
        (prop::option::of(any::<String>()), prop::option::of(any::<String>()), 1e-6..=25.0, surface()),
        prop::collection::vec(piece(), 0..4),
        prop::option::of(prop::collection::vec(hole(), 0..3)),
    )
        .prop_map(
            |((name, note, diameter_in), (cover, material, density_g_cc, (family, finish)), pieces, holes)| BallFile {
                format: BallVersion::V1,
                name,
                note,
                diameter_in,
                cover: Cover { name: cover, material, density_g_cc, family, finish },
                pieces,
                holes,
            },
        )
}

fn file() -> impl Strategy<Value = &'static str> {
    prop_oneof![Just(BALL), Just(SHOT), Just(LAYOUT), Just(OIL)]
}

proptest! {
    #[test]
    fn any_bytes(bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        read_all(&bytes);
    }

    #[test]
    fn any_text_of_json_marks(text in "[\\[\\]{}:,\"0-9eE.+\\-a-z \\n]{0,200}") {
        read_all(text.as_bytes());
    }

    #[test]
    fn a_file_with_some_bytes_changed(
        text in file(),
        at in any::<prop::sample::Index>(),
        gone in 0..20_usize,
        instead in prop_oneof![
            prop::collection::vec(any::<u8>(), 0..8),
            "(-?1e[0-9]{1,3}|null|\\[\\]|\\{\\}|\"\"|-0|0|,|1e999)".prop_map(String::into_bytes),
        ],
    ) {
        let mut bytes = text.as_bytes().to_vec();
        let at = at.index(bytes.len());
        let end = (at + gone).min(bytes.len());
        bytes.splice(at..end, instead);
        read_all(&bytes);
    }

    #[test]
    fn a_number_of_a_file_changed(
        text in file(),
        which in any::<prop::sample::Index>(),
        number in prop_oneof![Just("1e308"), Just("-1e308"), Just("5e-324"), Just("-0"), Just("0"), Just("1e-9")],
    ) {
        let starts: Vec<usize> = text
            .match_indices(|c: char| c.is_ascii_digit())
            .map(|(at, _)| at)
            .filter(|at| text.as_bytes()[at - 1] == b' ' || text.as_bytes()[at - 1] == b'[')
            .collect();
        let at = starts[which.index(starts.len())];
        let rest = text[at..].trim_start_matches(|c: char| c.is_ascii_digit() || c == '.');
        read_all(format!("{}{number}{rest}", &text[..at]).as_bytes());
    }

    #[test]
    fn an_oil_map_written_is_read_as_it_was(rows in prop::collection::vec(prop::collection::vec(0.0..=100.0, 39), 0..63)) {
        let mut file = OilFile::read(OIL.as_bytes()).expect("a pattern");
        file.oil = Oil::Map { film_um: rows };
        let json = serde_json::to_vec(&file).expect("it can be written");
        prop_assert_eq!(OilFile::read(&json), Ok(file.clone()));
        prop_assert!(file.film().is_ok());
    }

    #[test]
    fn a_ball_written_is_read_as_it_was(file in ball()) {
        let json = serde_json::to_vec(&file).expect("it can be written");
        prop_assert_eq!(BallFile::read(&json), Ok(file.clone()));
        // Building it ends too.
        let _ = file.build();
    }
}
