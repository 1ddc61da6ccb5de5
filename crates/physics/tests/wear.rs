//! Wear: no oil is lost, and yesterday's line stops working.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod roll_support;

use nalgebra::Vector2;
use pithball_physics::lane::BOARD_M;
use pithball_physics::lane::oil::{Film, NEUTRAL_LAW, Pattern, WEAR_RATES, WearRates, Wearing};
use pithball_physics::roll::{Summary, roll};
use pithball_physics::units::M_PER_FT;
use pithball_physics::wear::{SPREAD_BOARDS, Thrower, play};
use roll_support::{Dice, ball, close, lane, shot};

fn house() -> Film {
    let pattern = Pattern {
        length_m: 40.0 * M_PER_FT,
        volume_m3: 24e-6,
        ratio: 10.0,
        thin_to_board: 8.0,
        full_from_board: 12.0,
        front_m: 8.0 * M_PER_FT,
        end_share: 0.3,
        buff_m: 3.0 * M_PER_FT,
    };
    pattern.film().unwrap()
}

fn thrower() -> Thrower {
    let mut shot = shot(17.5, 300.0, 55.0, 12.0, 4.1, lane(&[(0.0, 63.0, 0.2)]));
    shot.release.board = 28.0;
    Thrower { ball: ball([2.50, 2.54, 2.54], [0.0, 0.0, 0.04]), shot, law: NEUTRAL_LAW }
}

#[test]
fn oil_on_the_lane_and_oil_taken_away_stay_the_same() {
    let film = house();
    let mut dice = Dice(2);
    let mut lane = Wearing::new(&film);
    for _ in 0..300 {
        // Any path at all, some of it beyond the lane's edge.
        let path: Vec<Vector2<f64>> = (0..200)
            .map(|i| Vector2::new(dice.between(-0.6, 0.6), f64::from(i) * 0.1 + dice.between(-0.1, 0.1)))
            .collect();
        let rates = WearRates { taken_up: dice.between(0.0, 1.0), carried_m: dice.between(0.1, 10.0) };
        lane.pass(&path, &rates);
    }
    let left = lane.film().unwrap();
    close((left.volume_m3() + lane.taken_away_m3()) / film.volume_m3(), 1.0, 1e-13, "volume");
    assert!(lane.taken_away_m3() > 0.1 * film.volume_m3());
    assert!(left.cells_m().iter().flatten().all(|&cell| cell >= 0.0));

    let mut played = Wearing::new(&film);
    for game in 0..5 {
        play(&mut played, &[thrower()], &WEAR_RATES, game).unwrap();
        let after = played.film().unwrap().volume_m3() + played.taken_away_m3();
        close(after / film.volume_m3(), 1.0, 1e-13, "volume over games");
    }
}

/// One straight pass down the middle of a board, against the model's own
/// equation dq/dy = p·w·h − q/L on an even film h: q = p·w·h·L·(1 − e^(−y/L)).
#[test]
fn one_pass_over_an_even_film_is_the_model_s_equation() {
    let film_m = 2e-6;
    let even = Film::from_cells(&[[film_m; 39]; 63]).unwrap();
    let mut lane = Wearing::new(&even);
    let x = 5.0 * BOARD_M;
    let path: Vec<Vector2<f64>> = (0..=20_000).map(|i| Vector2::new(x, 18.0 * f64::from(i) / 20_000.0)).collect();
    // So small a share that the film under the ball stays what it was.
    let (taken_up, carried_m) = (1e-4, WEAR_RATES.carried_m);
    lane.pass(&path, &WearRates { taken_up, carried_m });
    let expected = taken_up * BOARD_M * film_m * carried_m * (1.0 - (-18.0 / carried_m).exp());
    close(lane.taken_away_m3() / expected, 1.0, 1e-3, "oil that leaves with the ball");
    let all_up = taken_up * BOARD_M * film_m * 18.0;
    close((lane.carried_down_m3() + lane.taken_away_m3()) / all_up, 1.0, 1e-3, "oil taken up");
    // Only that board has changed.
    let left = lane.film().unwrap();
    for (row, cells) in left.cells_m().iter().enumerate() {
        for (board, &cell) in cells.iter().enumerate() {
            assert_eq!(cell != film_m, board == 14 && row < 60, "board {}, row {row}", board + 1);
        }
    }
}

#[test]
fn oil_is_carried_beyond_the_pattern_and_the_track_dries() {
    let film = house();
    let mut lane = Wearing::new(&film);
    for game in 0..4 {
        play(&mut lane, &[thrower()], &WEAR_RATES, game).unwrap();
    }
    let worn = lane.film().unwrap();
    let beyond = |film: &Film| film.cells_m()[41..].iter().flatten().sum::<f64>();
    assert!(beyond(&film) == 0.0 && beyond(&worn) > 0.0, "carried down past the pattern's end");
    // The ball starts at board 28 and lies near board 19 at 12 ft.
    let thinnest = |film: &Film| film.cells_m()[12][15..24].iter().copied().fold(f64::INFINITY, f64::min);
    assert!(thinnest(&worn) < 0.7 * thinnest(&film), "{} of {}", thinnest(&worn), thinnest(&film));
    // Away from the track nothing has changed.
    assert_eq!(worn.cells_m()[12][35], film.cells_m()[12][35]);
}

/// What the model gives for the same throw, game after game: it holds for two
/// games, while a little oil is carried out onto the dry boards; then the track
/// dries, the ball turns before it is out as far, loses more speed, and misses
/// the pocket high.
#[test]
fn yesterday_s_line_stops_working() {
    let film = house();
    let who = thrower();
    let on = |film: Film| roll(&who.ball, &who.on(film)).unwrap();
    let fresh = on(film.clone());
    let mut lane = Wearing::new(&film);
    let after: Vec<Summary> = (0..10)
        .map(|game| {
            play(&mut lane, std::slice::from_ref(&who), &WEAR_RATES, game).unwrap();
            on(lane.film().unwrap())
        })
        .collect();
    let board = |summary: &Summary| summary.at_pins.unwrap().board;
    let speed = |summary: &Summary| summary.at_pins.unwrap().speed_m_s;
    // Boards 17 to 18.5 are the pocket.
    assert!((17.0..=18.5).contains(&board(&fresh)), "{}", board(&fresh));
    for early in &after[..2] {
        assert!((board(early) - board(&fresh)).abs() < 1.0, "{}", board(early));
    }
    for pair in after[2..].windows(2) {
        assert!(board(&pair[1]) > board(&pair[0]), "higher with every game");
        assert!(pair[1].breakpoint.board > pair[0].breakpoint.board, "turns further inside with every game");
    }
    let last = after[9];
    assert!(board(&last) > board(&fresh) + 2.0 * SPREAD_BOARDS, "{} then {}", board(&fresh), board(&last));
    assert!(last.breakpoint.board > fresh.breakpoint.board + 3.0);
    assert!(speed(&last) < speed(&fresh));
    // A trace along one line does not make the pattern longer than what lies across the lane.
    let length_ft = lane.film().unwrap().length_m() / M_PER_FT;
    assert!((38.0..=44.0).contains(&length_ft), "{length_ft} ft");
}

#[test]
fn the_same_games_give_the_same_lane_and_two_bowlers_wear_more() {
    let after = |throwers: &[Thrower]| {
        let mut lane = Wearing::new(&house());
        play(&mut lane, throwers, &WEAR_RATES, 0).unwrap();
        lane
    };
    let one = after(&[thrower()]);
    assert_eq!(one, after(&[thrower()]));
    let mut other = thrower();
    other.shot.release.board = 22.0;
    assert!(after(&[thrower(), other]).taken_away_m3() > 1.5 * one.taken_away_m3());
}
