//! What coaches say (common practice, no source), held against the model over a grid of releases.
//! The table of `docs/coach-rules.md` is worked out here: where the model disagrees, it stands there.

#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a test fails by panicking, and says its table")]

mod roll_support;

use core::fmt::Write;

use pithball_physics::lane::oil::{FrictionLaw, NEUTRAL_LAW, Oiled, Pattern};
use pithball_physics::lane::{Friction, Hand, board_at};
use pithball_physics::roll::{Shot, Trace, roll, trace};
use pithball_physics::units::{M_PER_FT, M_S_PER_MPH, RAD_S_PER_RPM};
use roll_support::{ball, lane, shot};

const EVERY_S: f64 = 0.01;

/// What a rule is about, of one shot.
struct Seen {
    breakpoint_ft: f64,
    roll_ft: f64,
    hook_boards: f64,
    angle_deg: f64,
    sharpest_per_m: f64,
}

fn followed(shot: &Shot) -> Trace {
    trace(&ball([2.56, 2.55, 2.51], [0.0, 0.0, 0.02]), shot, EVERY_S).unwrap()
}

/// None where it does not reach the pins.
fn seen(shot: &Shot) -> Option<Seen> {
    let traced = followed(shot);
    let summary = traced.summary;
    let pins = summary.at_pins?;
    Some(Seen {
        breakpoint_ft: summary.breakpoint.distance_m / M_PER_FT,
        // Still slipping at the pins is later than any place before them.
        roll_ft: summary.roll_start.map_or(f64::INFINITY, |at| at.distance_m / M_PER_FT),
        hook_boards: pins.board - summary.breakpoint.board,
        angle_deg: pins.entry_angle_rad.to_degrees(),
        sharpest_per_m: traced.samples.iter().map(|s| s.curvature_per_m).fold(0.0, f64::max),
    })
}

fn pattern(length_ft: f64, volume_ml: f64) -> Pattern {
    Pattern {
        length_m: length_ft * M_PER_FT,
        volume_m3: volume_ml * 1e-6,
        ratio: 10.0,
        thin_to_board: 8.0,
        full_from_board: 12.0,
        front_m: 8.0 * M_PER_FT,
        end_share: 0.3,
        buff_m: 3.0 * M_PER_FT,
    }
}

fn oiled(length_ft: f64, volume_ml: f64, law: FrictionLaw) -> Friction {
    Friction::oiled(Oiled { film: pattern(length_ft, volume_ml).film().unwrap(), law })
}

/// Releases from slow and straight to fast and wide, on oil by zone and on a house pattern.
fn grid() -> Vec<Shot> {
    let lanes = [lane(&[(0.0, 40.0, 0.04), (40.0, 63.0, 0.20)]), oiled(40.0, 24.0, NEUTRAL_LAW)];
    let mut all = Vec::new();
    for lane in &lanes {
        for mph in [15.5, 17.0, 18.5] {
            for rpm in [180.0, 260.0, 340.0] {
                for rotation_deg in [25.0, 40.0, 55.0] {
                    for tilt_deg in [5.0, 15.0] {
                        let mut one = shot(mph, rpm, rotation_deg, tilt_deg, 2.0, lane.clone());
                        one.release.board = 22.0;
                        all.push(one);
                    }
                }
            }
        }
    }
    all
}

/// How often a change does what is said, over the releases that reach the pins before and after
/// and have something to compare.
fn share(change: impl Fn(&mut Shot), holds: impl Fn(&Seen, &Seen) -> Option<bool>) -> (usize, usize) {
    let (mut agree, mut all) = (0, 0);
    for before in grid() {
        let mut after = before.clone();
        change(&mut after);
        if let (Some(before), Some(after)) = (seen(&before), seen(&after))
            && let Some(holds) = holds(&before, &after)
        {
            all += 1;
            agree += usize::from(holds);
        }
    }
    assert!(all > 50, "{all} releases reach the pins");
    (agree, all)
}

fn drier_lane(shot: &mut Shot) {
    shot.lane = match shot.lane.oil() {
        Some(oil) => Friction::oiled(Oiled {
            film: pattern(40.0, 20.0).film().unwrap(),
            law: FrictionLaw { mu_dry: 0.22, ..oil.law },
        }),
        None => lane(&[(0.0, 40.0, 0.045), (40.0, 63.0, 0.22)]),
    };
}

/// A rule, how often it holds, and whether it holds always.
type Row = (&'static str, &'static str, (usize, usize), bool);

/// The table as it stands in the document.
fn table(rows: &[Row]) -> String {
    let mut text = String::from("| what changes | what coaches say | agrees |\n| --- | --- | --- |\n");
    for (change, says, (agree, all), _) in rows {
        writeln!(text, "| {change} | {says} | {agree} of {all} |").unwrap();
    }
    text
}

fn documented(text: &str) {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../../docs/coach-rules.md");
    let document = std::fs::read_to_string(path).unwrap();
    assert!(document.contains(text), "docs/coach-rules.md does not hold this:\n{text}");
}

#[test]
fn what_changes_and_which_way() {
    let rotation = |shot: &mut Shot| shot.release.axis_rotation_rad += 10_f64.to_radians();
    let revs = |shot: &mut Shot| shot.release.spin_rad_s += 40.0 * RAD_S_PER_RPM;
    let speed = |shot: &mut Shot| shot.release.speed_m_s += M_S_PER_MPH;
    let earlier = |a: &Seen, b: &Seen| Some(b.breakpoint_ft < a.breakpoint_ft);
    let later = |a: &Seen, b: &Seen| Some(b.breakpoint_ft > a.breakpoint_ft);
    // Two balls that still slip at the pins say nothing of where they would roll.
    let told = |a: &Seen, b: &Seen| a.roll_ft.is_finite() || b.roll_ft.is_finite();
    let rolls_earlier = |a: &Seen, b: &Seen| told(a, b).then_some(b.roll_ft < a.roll_ft);
    let rolls_later = |a: &Seen, b: &Seen| told(a, b).then_some(b.roll_ft > a.roll_ft);
    let more = |a: &Seen, b: &Seen| Some(b.hook_boards > a.hook_boards);
    let steeper = |a: &Seen, b: &Seen| Some(b.angle_deg > a.angle_deg);
    let sharper = |a: &Seen, b: &Seen| Some(b.sharpest_per_m > a.sharpest_per_m);
    let rows = [
        ("10° more axis rotation", "the breakpoint comes later", share(rotation, later), false),
        ("10° more axis rotation", "it rolls later", share(rotation, rolls_later), true),
        ("10° more axis rotation", "the path bends more sharply", share(rotation, sharper), false),
        ("10° more axis rotation", "it enters steeper", share(rotation, steeper), false),
        ("40 more rev/min", "the breakpoint comes earlier", share(revs, earlier), true),
        ("40 more rev/min", "it rolls earlier", share(revs, rolls_earlier), false),
        ("40 more rev/min", "it hooks more", share(revs, more), true),
        ("40 more rev/min", "it enters steeper", share(revs, steeper), true),
        ("1 mph more speed", "the breakpoint comes later", share(speed, later), true),
        ("1 mph more speed", "it rolls later", share(speed, rolls_later), true),
        ("1 mph more speed", "it hooks less", share(speed, |a, b| Some(b.hook_boards < a.hook_boards)), true),
        ("1 mph more speed", "it enters flatter", share(speed, |a, b| Some(b.angle_deg < a.angle_deg)), false),
        ("a drier lane", "the breakpoint comes earlier", share(drier_lane, earlier), true),
        ("a drier lane", "it rolls earlier", share(drier_lane, rolls_earlier), true),
    ];
    let text = table(&rows);
    println!("{text}");
    for (change, says, (agree, all), always) in rows {
        assert!(!always || agree == all, "{change}: {says} in {agree} of {all}");
    }
    documented(&text);
}

/// Board at which a path leaves a pattern of this length.
fn exit_board(traced: &Trace, length_ft: f64) -> f64 {
    let y = length_ft * M_PER_FT;
    let pair = traced.samples.windows(2).find(|w| w[1].position_m.y >= y).unwrap();
    let (a, b) = (pair[0].position_m, pair[1].position_m);
    board_at(Hand::Right, a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y))
}

/// The throw moved across the lane until it comes in on board 17.75, the middle of the pocket's
/// boards; none where no start does that at 2° to 8°.
fn into_the_pocket(mut shot: Shot) -> Option<Trace> {
    let ball = ball([2.56, 2.55, 2.51], [0.0, 0.0, 0.02]);
    let mut past = |board: f64| {
        shot.release.board = board;
        Some(roll(&ball, &shot).ok()?.at_pins?.board - 17.75)
    };
    let starts: Vec<(f64, Option<f64>)> =
        (5..20).map(|at| 2.0 * f64::from(at)).map(|board| (board, past(board))).collect();
    let crosses =
        |w: &&[(f64, Option<f64>)]| w[0].1.is_some_and(|miss| miss <= 0.0) && w[1].1.is_some_and(|miss| miss > 0.0);
    let pair = starts.windows(2).find(crosses)?;
    let (mut low, mut high) = (pair[0].0, pair[1].0);
    for _ in 0..10 {
        let half = 0.5 * (low + high);
        if past(half)? <= 0.0 { low = half } else { high = half }
    }
    shot.release.board = low;
    let traced = followed(&shot);
    let angle = traced.summary.at_pins?.entry_angle_rad.to_degrees();
    (2.0..=8.0).contains(&angle).then_some(traced)
}

/// Exit board ≈ length − 31: where throws of a grid that come into the pocket at 2° to 8° leave the
/// oil, whatever line they take.
#[test]
fn exit_board_by_length() {
    let mut text = String::from(
        "| pattern, ft | rule | mean of the model | from | to | throws |\n| --- | --- | --- | --- | --- | --- |\n",
    );
    let mut means = Vec::new();
    for length_ft in [34.0, 37.0, 40.0, 43.0, 46.0] {
        let on = oiled(length_ft, 24.0, NEUTRAL_LAW);
        let mut exits = Vec::new();
        for rpm in [180.0, 240.0, 300.0] {
            for rotation_deg in [30.0, 45.0] {
                for eighth in 0..=44 {
                    let one = shot(18.5, rpm, rotation_deg, 12.0, 0.125 * f64::from(eighth), on.clone());
                    exits.extend(into_the_pocket(one).map(|traced| exit_board(&traced, length_ft)));
                }
            }
        }
        assert!(!exits.is_empty(), "{} throws reach the pocket at {length_ft} ft", exits.len());
        let mean = exits.iter().sum::<f64>() / exits.len() as f64;
        let (low, high) = exits.iter().fold((f64::INFINITY, 0.0_f64), |(low, high), x| (low.min(*x), high.max(*x)));
        writeln!(
            text,
            "| {length_ft:.0} | {:.0} | {mean:.1} | {low:.1} | {high:.1} | {} |",
            length_ft - 31.0,
            exits.len()
        )
        .unwrap();
        // The rule is one of the lines there are, within a board.
        assert!((low - 1.0..=high + 1.0).contains(&(length_ft - 31.0)), "{length_ft} ft: {low} to {high}");
        means.push(mean);
    }
    println!("{text}");
    assert!(means.windows(2).all(|pair| pair[1] > pair[0]), "longer oil, further in: {means:?}");
    documented(&text);
}
