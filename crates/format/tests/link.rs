//! A shot comes out of a link as it went in, and a hostile link does no harm.

#![allow(clippy::expect_used, clippy::unwrap_used, clippy::panic, reason = "a check that fails stops its test")]

use std::fs;
use std::path::{Path, PathBuf};

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use miniz_oxide::deflate::compress_to_vec;
use pithball_format::{
    BallFile, BallRef, Lane, MAX_LINK_CHARS, MAX_LINK_JSON_BYTES, MAX_LINK_TEXT_CHARS, Oil, OilFile, OilRef, Problem,
    ShotFile, Zone, ZonedLane,
};
use proptest::prelude::*;

fn scenarios(folder: &str) -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios").join(folder);
    fs::read_dir(folder).expect("a folder").map(|entry| entry.expect("an entry").path()).collect()
}

fn ball(path: &Path) -> BallFile {
    BallFile::read(&fs::read(path).expect("a file")).expect("a ball")
}

/// The oil that a shot names, in its place.
fn put_oil_in(shot: &mut ShotFile, path: &Path) {
    if let Lane::Oiled(lane) = &mut shot.throw.lane
        && let OilRef::Path(name) = &lane.oil
    {
        let json = fs::read(path.with_file_name(name)).expect("a file");
        lane.oil = OilRef::Object(Box::new(OilFile::read(&json).expect("oil")));
    }
}

fn with_ball(shot: ShotFile, ball: BallFile) -> ShotFile {
    ShotFile { ball: BallRef::Object(Box::new(ball)), ..shot }
}

fn opening() -> ShotFile {
    let shot = ShotFile::read(include_bytes!("../../../scenarios/shots/opening.shot.json")).expect("a shot");
    let ball = BallFile::read(include_bytes!("../../../scenarios/balls/no-3-three-piece.ball.json")).expect("a ball");
    with_ball(shot, ball)
}

fn json(shot: &ShotFile) -> String {
    serde_json::to_string(shot).expect("JSON")
}

/// A link as one would be made by hand: any bytes, packed, with their checksum.
fn forged(plain: &[u8]) -> String {
    let mut bytes = adler2::adler32_slice(plain).to_be_bytes().to_vec();
    bytes.extend(compress_to_vec(plain, 9));
    format!("p1.{}", URL_SAFE_NO_PAD.encode(bytes))
}

#[track_caller]
fn refused(link: &str, place: &str, found: &str, says: &str) {
    let problem = ShotFile::from_link(link).expect_err("it is refused");
    assert_eq!(problem.place, place, "{problem}");
    assert!(problem.found.contains(found), "{problem}");
    assert!(problem.message.contains(says) && problem.message.ends_with('.'), "{problem}");
    assert!(!problem.accepted.is_empty(), "{problem}");
    assert!(problem.to_string().len() < 600, "{problem}");
}

#[test]
fn every_ball_with_every_shot_comes_back_as_it_was_and_fits_a_small_code() {
    for shot_path in scenarios("shots") {
        let mut shot = ShotFile::read(&fs::read(&shot_path).expect("a file")).expect("a shot");
        put_oil_in(&mut shot, &shot_path);
        for ball_path in scenarios("balls") {
            let whole = with_ball(shot.clone(), ball(&ball_path));
            let link = whole.to_link().expect("a link");
            assert_eq!(ShotFile::from_link(&link).as_ref(), Ok(&whole));
            assert!(link.bytes().all(|b| b.is_ascii_alphanumeric() || b"-_.".contains(&b)), "{link}");
            // A code of 1,200 bytes is as dense as a telephone still reads off paper.
            assert!(link.len() < 800, "{} characters: {shot_path:?} {ball_path:?}", link.len());
        }
    }
}

#[test]
fn an_address_its_fragment_with_and_without_its_mark_say_the_same() {
    let shot = opening();
    let link = shot.to_link().expect("a link");
    for text in [
        link.clone(),
        format!("#{link}"),
        format!("https://example.org/some/folder/#{link}"),
        format!("file:///home/student/pithball/index.html#{link}\n"),
        format!("  {link}  "),
    ] {
        assert_eq!(ShotFile::from_link(&text).as_ref(), Ok(&shot));
    }
}

#[test]
fn numbers_come_back_to_the_last_bit() {
    let mut shot = opening();
    shot.throw.release.launch_angle_deg = 0.1 + 0.2;
    shot.throw.release.speed_mph = f64::from_bits(17.5_f64.to_bits() + 1);
    shot.throw.release.axis_tilt_deg = -0.0;
    shot.throw.layout.start_turn_deg = 1e-300;
    let zones = vec![
        Zone { from_ft: 0.0, to_ft: 1.0 / 3.0, mu: f64::MIN_POSITIVE },
        Zone { from_ft: 1.0 / 3.0, to_ft: 9_007_199_254_740_993.0, mu: 0.1 },
    ];
    shot.throw.lane = Lane::Zoned(ZonedLane { zones });
    let back = ShotFile::from_link(&shot.to_link().expect("a link")).expect("a shot");
    assert_eq!(json(&back), json(&shot));
    assert!(back.throw.release.axis_tilt_deg.is_sign_negative());
}

#[test]
fn links_that_people_keep_stay_readable() {
    let then = ShotFile::read(include_bytes!("links/kept.shot.json"));
    assert_eq!(ShotFile::from_link(include_str!("links/kept.txt").trim()), then);
}

#[test]
fn an_oil_map_comes_back_and_a_path_to_oil_is_refused() {
    let path = scenarios("shots").into_iter().find(|path| path.ends_with("house-pattern.shot.json")).expect("a shot");
    let shot = ShotFile::read(&fs::read(&path).expect("a file")).expect("a shot");
    let mut whole = with_ball(shot, ball(&scenarios("balls")[0]));
    assert_eq!(whole.to_link().expect_err("a path").place, "lane.oil");
    put_oil_in(&mut whole, &path);
    let Lane::Oiled(lane) = &mut whole.throw.lane else { panic!("oil") };
    let OilRef::Object(file) = &mut lane.oil else { panic!("oil") };
    let film = file.film().expect("a film");
    let um = |row: &[f64; 39]| row.map(|film_m| (film_m * 1e9).round() / 1e3).to_vec();
    file.oil = Oil::Map { film_um: film.cells_m().iter().map(um).collect() };
    assert_eq!(ShotFile::from_link(&whole.to_link().expect("a link")).as_ref(), Ok(&whole));
}

#[test]
fn names_and_notes_are_kept_as_they_are() {
    let mut shot = opening();
    shot.name = Some("<img src=x onerror=alert(1)> \u{202e}🎳 \u{0}\"\\".to_owned());
    shot.note = Some("ü".repeat(MAX_LINK_TEXT_CHARS));
    assert_eq!(ShotFile::from_link(&shot.to_link().expect("a link")).as_ref(), Ok(&shot));
}

#[test]
fn what_does_not_belong_in_a_link_is_refused_before_one_is_made() {
    let refused = |shot: &ShotFile| -> Problem { shot.to_link().expect_err("it is refused") };

    let mut shot = opening();
    shot.ball = BallRef::Path("no-3.ball.json".to_owned());
    assert_eq!(refused(&shot).place, "ball");

    let mut shot = opening();
    shot.note = Some("x".repeat(MAX_LINK_TEXT_CHARS + 1));
    assert_eq!((refused(&shot).place.as_str(), refused(&shot).found.as_str()), ("note", "1001 characters"));

    let mut large = ball(&scenarios("balls")[0]);
    large.pieces[0].density_g_cc = -1.0;
    assert_eq!(refused(&with_ball(opening(), large)).place, "ball.pieces[0].density_g_cc");

    let mut outside = ball(&scenarios("balls")[0]);
    outside.diameter_in = 4.0;
    assert_eq!(refused(&with_ball(opening(), outside)).place, "ball.pieces[0]");

    let mut long = opening();
    let step = 63.0 / 9000.0;
    let zones = (0..9000)
        .map(|i| Zone { from_ft: f64::from(i) * step, to_ft: f64::from(i + 1) * step, mu: f64::from(i).sin().abs() })
        .collect();
    long.throw.lane = Lane::Zoned(ZonedLane { zones });
    assert!(refused(&long).message.contains("save it as a file"), "{}", refused(&long));
}

#[test]
fn what_is_no_link() {
    refused("", "", "nothing", "holds no shot");
    refused("https://example.org/#", "", "nothing", "holds no shot");
    refused("rooms", "", "\"rooms\"", "not a link that Pithball made");
    refused("https://example.org/", "", "example.org", "not a link that Pithball made");
    refused("p.abc", "", "p.abc", "not a link");
    refused("p1", "", "p1", "not a link");
    refused("p2.AAAA", "", "edition 2", "of edition 2");
    refused("p999999999999999999999.AAAA", "", "p9999", "not a link");
    refused("P1.AAAA", "", "P1", "not a link");
    refused(&"x".repeat(3 * MAX_LINK_CHARS), "", "…", "not a link");
}

#[test]
fn what_is_damaged_or_cut_off() {
    let link = opening().to_link().expect("a link");
    refused("p1.", "", "3 characters", "cut off");
    refused("p1.AAAA", "", "7 characters", "cut off");
    refused("p1.!!!!", "", "the character '!'", "does not belong");
    refused("p1.AAAü", "", "the character 'ü'", "does not belong");
    refused("p1.AAA=", "", "the character '='", "does not belong");
    refused(&format!("{link}."), "", "the character '.'", "does not belong");
    refused(&link.replacen('.', ".%3C", 1), "", "the character '%'", "does not belong");
    for end in 3..link.len() {
        let problem = ShotFile::from_link(&link[..end]).expect_err("it is refused");
        assert!(problem.message.contains("cut off") || problem.message.contains("damaged"), "{end}: {problem}");
    }
    refused(&format!("{link}AAAA"), "", "characters", "damaged");
    refused(&format!("p1.{}", "A".repeat(MAX_LINK_CHARS)), "", "65539 characters", "too much");
}

#[test]
fn what_is_hostile() {
    // 512 KiB and one byte, then a stream that would be a gigabyte.
    refused(&forged(&vec![b' '; MAX_LINK_JSON_BYTES + 1]), "", "more than 524288 bytes", "more than any shot");
    refused(&forged(&vec![b' '; 40 << 20]), "", "more than 524288 bytes", "more than any shot");
    refused(&forged(&vec![b'['; MAX_LINK_JSON_BYTES]), "", "more than 64 levels", "64");
    refused(&forged(b"[1]"), "", "a list of 1", "object");
    refused(&forged(b""), "", "empty", "not JSON");
    refused(&forged(&[0xff; 9]), "", "not UTF-8", "UTF-8");
    refused(&forged(br#"{"__proto__":{"format":"pithball.shot/1"}}"#), "format", "nothing", "missing");
    let shot = json(&opening());
    let bomb = shot.replacen("\"pieces\":[", &format!("\"pieces\":[{}", "[],".repeat(100_000)), 1);
    refused(&forged(bomb.as_bytes()), "ball.pieces[0]", "a list of 0", "piece");
    let points = format!("\"profile_in\":[{}", "[1,0],".repeat(10_000));
    let many = shot.replacen("\"profile_in\":[", &points, 1);
    refused(&forged(many.as_bytes()), "ball.pieces[1].shape.profile_in", "points", "10000 points");
}

#[test]
fn what_holds_something_else_than_a_shot() {
    let shot = json(&opening());
    let with = |old: &str, new: &str| {
        assert!(shot.contains(old), "{old}");
        forged(shot.replacen(old, new, 1).as_bytes())
    };
    let ball = fs::read(&scenarios("balls")[0]).expect("a file");
    refused(&forged(&ball), "format", "pithball.ball/1", "format");
    refused(&with("\"speed_mph\":17.5", "\"speed_mph\":1e999"), "release.speed_mph", "1e999", "finite");
    refused(&with("\"speed_mph\":17.5", "\"speed_mph\":400"), "release.speed_mph", "400", "speed");
    refused(&with("\"hand\":\"right\"", "\"hand\":\"third\""), "hand", "third", "hand");
    refused(&with("\"mu\":0.2", "\"mu\":0.2,\"mu\":0.3"), "lane.zones[1].mu", "twice", "twice");
    refused(&with("\"board\":24.0", "\"board\":24,\"run\":\"x\""), "release.run", "run", "not known");
    refused(&with("\"name\":\"outer core\"", "\"name\":7"), "ball.pieces[0].name", "7", "name");
    let long = format!("\"name\":\"{}\"", "x".repeat(2_000));
    refused(&with("\"name\":\"outer core\"", &long), "ball.pieces[0].name", "2000 characters", "too long");
    let path = with_path();
    refused(&forged(json(&path).as_bytes()), "ball", "../../etc/passwd", "only the name of its file");
}

fn with_path() -> ShotFile {
    ShotFile { ball: BallRef::Path("../../etc/passwd".to_owned()), ..opening() }
}

proptest! {
    #[test]
    fn any_text_is_a_shot_or_a_problem(text in "\\PC{0,80}") {
        prop_assert!(ShotFile::from_link(&text).is_err());
    }

    #[test]
    fn any_bytes_are_a_shot_or_a_problem(bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        let packed = URL_SAFE_NO_PAD.encode(&bytes);
        for link in [format!("p1.{packed}"), forged(&bytes)] {
            prop_assert!(ShotFile::from_link(&link).is_err());
        }
    }

    #[test]
    fn a_link_with_one_character_changed_is_never_another_shot(at in any::<prop::sample::Index>(), new in "[A-Za-z0-9_.-]") {
        let link = opening().to_link().unwrap();
        let at = at.index(link.len());
        let changed = format!("{}{new}{}", &link[..at], &link[at + 1..]);
        prop_assume!(changed != link);
        // The last byte of a deflate stream may have bits that say nothing.
        prop_assert!(ShotFile::from_link(&changed).is_ok_and(|shot| shot == opening()) || ShotFile::from_link(&changed).is_err());
    }

    #[test]
    fn any_shot_comes_back_as_it_was(
        name in prop::option::of(any::<String>()),
        speed in 1e-3..=40.0_f64,
        revs in 0.0..=1000.0_f64,
        board in 0.5..=39.5_f64,
        whole in any::<bool>(),
    ) {
        let mut shot = opening();
        shot.name = name.filter(|name| name.chars().count() <= MAX_LINK_TEXT_CHARS);
        let trim = |x: f64| if whole { x.ceil().min(39.0) } else { x };
        shot.throw.release.speed_mph = trim(speed);
        shot.throw.release.revs_rpm = trim(revs);
        shot.throw.release.board = trim(board);
        prop_assert_eq!(ShotFile::from_link(&shot.to_link().unwrap()), Ok(shot));
    }
}
