//! Oil: volume, smoothness, the pattern asked for, friction by film and cover.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod roll_support;

use pithball_physics::lane::cover::{Cover, Family, Finish, NEUTRAL_GRIT};
use pithball_physics::lane::oil::{
    BOARD_COUNT, Film, FilmError, FrictionLaw, NEUTRAL_LAW, Oiled, PUBLISHED_LIMIT, Pattern, ROW_COUNT, ROW_M,
};
use pithball_physics::lane::{BOARD_M, Friction, Hand, WIDTH_M};
use pithball_physics::roll::{Phase, Shot, roll, trace};
use pithball_physics::units::M_PER_FT;
use roll_support::{Dice, close, even_ball, lane, shot};

const UM: f64 = 1e-6;

fn house() -> Pattern {
    Pattern {
        length_m: 40.0 * M_PER_FT,
        volume_m3: 24e-6,
        ratio: 10.0,
        thin_to_board: 8.0,
        full_from_board: 12.0,
        front_m: 8.0 * M_PER_FT,
        end_share: 0.3,
        buff_m: 4.0 * M_PER_FT,
    }
}

fn any_cells(dice: &mut Dice) -> Vec<[f64; BOARD_COUNT]> {
    (0..ROW_COUNT).map(|_| core::array::from_fn(|_| dice.between(0.0, 10.0) * UM)).collect()
}

/// Integral of a film over the lane, by Gauss and Legendre's three points
/// within each stretch on which the spline is one cubic: exact to degree five.
fn integral_m3(film: &Film) -> f64 {
    let root = (3.0_f64 / 5.0).sqrt() / 2.0;
    let points = [(0.5 - root, 5.0 / 18.0), (0.5, 8.0 / 18.0), (0.5 + root, 5.0 / 18.0)];
    let mut sum = 0.0;
    // Halves of cells: the cubics join at the cells' middles.
    for i in 0..2 * BOARD_COUNT {
        for j in 0..2 * ROW_COUNT {
            for (u, p) in points {
                for (v, q) in points {
                    let x_m = -WIDTH_M / 2.0 + (i as f64 + u) * BOARD_M / 2.0;
                    sum += p * q * film.at_m(x_m, (j as f64 + v) * ROW_M / 2.0);
                }
            }
        }
    }
    sum * BOARD_M * ROW_M / 4.0
}

#[test]
fn the_volume_is_the_integral_of_the_film() {
    let mut dice = Dice(8);
    for film in [Film::from_cells(&any_cells(&mut dice)).unwrap(), house().film().unwrap()] {
        let volume = film.volume_m3();
        close(integral_m3(&film) / volume, 1.0, 1e-12, "volume");
    }
}

#[test]
fn the_film_is_never_negative_and_smooth() {
    let mut dice = Dice(9);
    let film = Film::from_cells(&any_cells(&mut dice)).unwrap();
    let h = 1e-4;
    for _ in 0..20_000 {
        let (x, y) = (dice.between(-0.6, 0.6), dice.between(-0.5, 20.0));
        assert!(film.at_m(x, y) >= 0.0, "{x} {y}");
    }
    // Across a join the value, slope and bend from both sides agree: second
    // differences change by no more than the third derivative allows.
    let bend = |x: f64, y: f64| (film.at_m(x + h, y) - 2.0 * film.at_m(x, y) + film.at_m(x - h, y)) / (h * h);
    for _ in 0..2000 {
        let (x, y) = (dice.between(-0.5, 0.5), dice.between(0.5, 18.0));
        let most = 8.0 * 10.0 * UM / BOARD_M.powi(3);
        assert!((bend(x + h, y) - bend(x, y)).abs() < 1.1 * most * h + 1e-6, "{x} {y}");
    }
}

#[test]
fn one_film_everywhere_is_that_film_everywhere() {
    let film = Film::from_cells(&[[3.0 * UM; BOARD_COUNT]; ROW_COUNT]).unwrap();
    let mut dice = Dice(1);
    for _ in 0..1000 {
        close(film.at_m(dice.between(-0.53, 0.53), dice.between(0.0, 19.2)), 3.0 * UM, 1e-20, "film");
    }
    assert!(film.at_m(f64::NAN, 1.0).is_nan(), "no panic");
}

#[test]
fn boards_count_from_the_right_edge() {
    let mut cells = [[0.0; BOARD_COUNT]; 1];
    cells[0][4] = 5.0 * UM;
    let film = Film::from_cells(&cells).unwrap();
    let board_5 = 15.0 * BOARD_M;
    // The middle of the cell, mirrored at the foul line: 4/6 across, (4 + 1)/6 down at half a foot.
    close(film.at_m(board_5, 0.5 * ROW_M), 5.0 * UM * (4.0 / 6.0) * (5.0 / 6.0), 1e-20, "board 5");
    close(film.at_m(-board_5, 0.5 * ROW_M), 0.0, 0.0, "board 35");
}

#[test]
fn cells_that_are_no_film() {
    let wrong = |cells: &[[f64; BOARD_COUNT]]| Film::from_cells(cells).unwrap_err();
    let mut cells = vec![[0.0; BOARD_COUNT]; 64];
    assert_eq!(wrong(&cells), FilmError::Rows { found: 64 });
    cells.truncate(3);
    for bad in [-1e-9, 1.01e-4, f64::NAN, f64::INFINITY] {
        cells[2][38] = bad;
        assert!(matches!(wrong(&cells), FilmError::Thickness { row: 2, board: 39, .. }));
    }
}

#[test]
fn a_pattern_has_the_volume_ratio_and_length_asked_for() {
    let mut dice = Dice(4);
    for _ in 0..300 {
        let thin_to_board = dice.between(7.0, 17.0);
        let length_m = dice.between(10.0, 63.0) * M_PER_FT;
        let front_m = dice.between(0.0, 0.5) * length_m;
        let pattern = Pattern {
            length_m,
            volume_m3: dice.between(15.0, 35.0) * 1e-6,
            ratio: dice.between(1.0, 100.0),
            thin_to_board,
            full_from_board: thin_to_board + dice.between(0.01, 1.0) * (18.0 - thin_to_board),
            front_m,
            end_share: dice.between(0.2, 1.0),
            buff_m: dice.between(0.0, 0.5) * length_m,
        };
        let film = pattern.film().unwrap();
        close(film.volume_m3() / pattern.volume_m3, 1.0, 1e-13, "volume");
        close(film.ratio().unwrap() / pattern.ratio, 1.0, 1e-12, "ratio");
        // A long fade falls below a trace sooner.
        let most_short_m = if pattern.buff_m > 0.0 { 0.35 * pattern.buff_m + M_PER_FT } else { M_PER_FT };
        let over_m = film.length_m() - length_m;
        assert!(over_m < M_PER_FT && over_m > -most_short_m, "{over_m} {pattern:?}");
        for row in film.cells_m() {
            for board in 1..=BOARD_COUNT {
                assert_eq!(row[board - 1], row[BOARD_COUNT - board], "the same on both sides");
            }
        }
    }
    let dry = Pattern { volume_m3: 0.0, ..house() }.film().unwrap();
    assert_eq!((dry.volume_m3(), dry.length_m(), dry.ratio()), (0.0, 0.0, None));
}

/// The profile down the lane from the cells, against the same integrated by
/// the midpoint rule.
#[test]
fn a_pattern_thins_down_the_lane_as_it_says() {
    let film = house().film().unwrap();
    let rows = film.by_row_m();
    let blend = |t: f64| t * t * t * (10.0 - 15.0 * t + 6.0 * t * t);
    let profile = |ft: f64| match ft {
        ft if ft < 8.0 => 1.0,
        ft if ft < 36.0 => 1.0 - 0.7 * blend((ft - 8.0) / 28.0),
        ft if ft < 40.0 => 0.3 * (1.0 - blend((ft - 36.0) / 4.0)),
        _ => 0.0,
    };
    let mean =
        |row: usize| (0..4000).map(|i| profile(row as f64 + (f64::from(i) + 0.5) / 4000.0)).sum::<f64>() / 4000.0;
    for (row, film_m) in rows.iter().enumerate() {
        close(film_m / rows[0], mean(row), 1e-7, "row");
    }
}

#[test]
fn patterns_that_cannot_be() {
    for (wrong, quantity) in [
        (Pattern { length_m: 2.0, ..house() }, "length_m"),
        (Pattern { length_m: 19.3, ..house() }, "length_m"),
        (Pattern { volume_m3: -1e-6, ..house() }, "volume_m3"),
        (Pattern { volume_m3: 61e-6, ..house() }, "volume_m3"),
        (Pattern { ratio: 0.9, ..house() }, "ratio"),
        (Pattern { thin_to_board: 6.9, ..house() }, "thin_to_board"),
        (Pattern { full_from_board: 8.0, ..house() }, "full_from_board"),
        (Pattern { full_from_board: 18.1, ..house() }, "full_from_board"),
        (Pattern { front_m: 12.3, ..house() }, "front_m"),
        (Pattern { end_share: f64::NAN, ..house() }, "end_share"),
        (Pattern { buff_m: 10.0, ..house() }, "buff_m"),
        (
            Pattern { length_m: 3.048, front_m: 0.0, end_share: 0.0, buff_m: 3.0, volume_m3: 60e-6, ..house() },
            "volume_m3",
        ),
    ] {
        assert_eq!(wrong.film().unwrap_err().quantity, quantity);
    }
}

#[test]
fn friction_has_the_published_ends_and_falls_steadily() {
    assert_eq!(NEUTRAL_LAW.mu(0.0), 0.20);
    close(NEUTRAL_LAW.mu(1.0), 0.04, 1e-12, "a film without end");
    close(NEUTRAL_LAW.mu(NEUTRAL_LAW.film_half_m), 0.12, 1e-15, "half-way");
    let mut last = f64::INFINITY;
    for i in 0..2000 {
        let mu = NEUTRAL_LAW.mu(f64::from(i) * 1e-8);
        assert!(mu < last && mu > 0.04, "{i}");
        last = mu;
    }
    for (wrong, quantity) in [
        (FrictionLaw { mu_dry: 0.33, ..NEUTRAL_LAW }, "mu_dry"),
        (FrictionLaw { mu_oil: 0.21, ..NEUTRAL_LAW }, "mu_oil"),
        (FrictionLaw { mu_oil: f64::NAN, ..NEUTRAL_LAW }, "mu_oil"),
        (FrictionLaw { film_half_m: 0.0, ..NEUTRAL_LAW }, "film_half_m"),
    ] {
        assert_eq!(wrong.check().unwrap_err().quantity, quantity);
    }
    NEUTRAL_LAW.check().unwrap();
}

#[test]
fn a_cover_of_which_nothing_is_known_changes_nothing() {
    assert_eq!(Cover::default().on(NEUTRAL_LAW), NEUTRAL_LAW);
    let neutral = Cover { family: None, finish: Some(Finish { grit: NEUTRAL_GRIT, polished: false }) };
    assert_eq!(neutral.on(NEUTRAL_LAW), NEUTRAL_LAW);
}

/// Directions: a rougher surface grips more in thin oil and on dry boards,
/// polish less (common practice, no source); the limit of 0.32 as published.
#[test]
fn covers_change_friction_in_the_known_directions() {
    let families = [None, Some(Family::Polyester), Some(Family::Urethane), Some(Family::Reactive)];
    for family in families {
        let law = |grit, polished| Cover { family, finish: Some(Finish { grit, polished }) }.on(NEUTRAL_LAW);
        for film_m in [0.0, 0.1 * UM, 0.5 * UM, 2.0 * UM, 10.0 * UM] {
            let mut last = f64::INFINITY;
            for grit in [100.0, 500.0, 1000.0, 2000.0, 4000.0, 10_000.0] {
                let mu = law(grit, false).mu(film_m);
                assert!(mu < last, "{family:?} {grit} {film_m}");
                assert!(law(grit, true).mu(film_m) < mu, "polish");
                assert!(mu <= PUBLISHED_LIMIT);
                law(grit, false).check().unwrap();
                last = mu;
            }
        }
    }
    let mu = |family, film_m| Cover { family: Some(family), finish: None }.on(NEUTRAL_LAW).mu(film_m);
    for film_m in [0.0, 0.3 * UM, 3.0 * UM] {
        assert!(mu(Family::Polyester, film_m) < mu(Family::Urethane, film_m));
        assert!(mu(Family::Polyester, film_m) < mu(Family::Reactive, film_m));
    }
    assert!(mu(Family::Urethane, 3.0 * UM) > mu(Family::Reactive, 3.0 * UM), "in oil");
    assert!(mu(Family::Urethane, 0.0) < mu(Family::Reactive, 0.0), "on dry boards");
    // The published limit holds whatever the lane.
    let rough = Cover { family: Some(Family::Reactive), finish: Some(Finish { grit: 100.0, polished: false }) };
    let law = rough.on(FrictionLaw { mu_oil: 0.3, mu_dry: 0.32, ..NEUTRAL_LAW });
    assert_eq!((law.mu_oil, law.mu_dry), (0.32, 0.32));
}

fn oiled(film: Film) -> Friction {
    Friction::oiled(Oiled { film, law: NEUTRAL_LAW })
}

/// Zones and a map of the same friction everywhere are the same lane.
#[test]
fn a_dry_map_is_a_dry_zone() {
    let dry = oiled(Film::from_cells(&[]).unwrap());
    let ball = even_ball(0.38);
    let on = |lane| roll(&ball, &shot(17.0, 300.0, 12.0, 5.0, 1.5, lane)).unwrap();
    let (map, zone) = (on(dry), on(lane(&[(0.0, 63.0, 0.20)])));
    let (a, b) = (map.at_pins.unwrap(), zone.at_pins.unwrap());
    close(a.board, b.board, 1e-6, "board");
    close(a.entry_angle_rad, b.entry_angle_rad, 1e-8, "angle");
    close(a.time_s, b.time_s, 1e-8, "time");
}

#[test]
fn samples_say_what_lies_under_the_ball() {
    let film = house().film().unwrap();
    let run = trace(&even_ball(0.38), &shot(17.0, 300.0, 45.0, 5.0, 1.5, oiled(film.clone())), 0.01).unwrap();
    for s in &run.samples {
        let film_m = film.at_m(s.position_m.x, s.position_m.y);
        assert_eq!(s.film_m, Some(film_m));
        assert_eq!(s.mu, NEUTRAL_LAW.mu(film_m));
    }
    let zones = trace(&even_ball(0.38), &shot(17.0, 300.0, 45.0, 5.0, 1.5, lane(&[(0.0, 63.0, 0.2)])), 0.1).unwrap();
    assert!(zones.samples.iter().all(|s| s.film_m.is_none() && s.mu == 0.2));
}

/// A left-hander on a pattern that is the same on both sides throws the
/// mirror image; on the mirrored map of a lopsided one too.
#[test]
fn hands_mirror_on_oil() {
    let mut dice = Dice(21);
    let mut cells = house().film().unwrap().cells_m().to_vec();
    for (j, row) in cells.iter_mut().enumerate() {
        for (i, cell) in row.iter_mut().enumerate() {
            *cell *= 1.0 + 0.3 * ((i as f64) / 5.0 + (j as f64) / 9.0).sin();
        }
    }
    let mirrored: Vec<[f64; BOARD_COUNT]> =
        cells.iter().map(|row| core::array::from_fn(|i| row[BOARD_COUNT - 1 - i])).collect();
    let ball = even_ball(0.37);
    for _ in 0..20 {
        let right = Shot { lane: oiled(Film::from_cells(&cells).unwrap()), ..dice.shot() };
        let mut left = Shot { hand: Hand::Left, lane: oiled(Film::from_cells(&mirrored).unwrap()), ..right.clone() };
        left.release.launch_angle_rad = -right.release.launch_angle_rad;
        let (a, b) = (roll(&ball, &right).unwrap(), roll(&ball, &left).unwrap());
        close(a.breakpoint.board, b.breakpoint.board, 1e-6, "breakpoint");
        close(a.end_m.x, -b.end_m.x, 1e-7, "end");
    }
}

/// Coriolis and Euler: the final velocity of a ball whose moments are all
/// alike does not depend on the friction along the way.
#[test]
fn the_final_velocity_is_the_same_on_any_oil() {
    let ball = even_ball(0.37);
    let mut dice = Dice(31);
    let mut compared = 0;
    for _ in 0..30 {
        let mut on_zone = shot(14.0, 250.0, 12.0, 10.0, 1.0, lane(&[(0.0, 63.0, 0.25)]));
        on_zone.release.board = 26.0;
        let film = Film::from_cells(&any_cells(&mut dice)[..dice.between(5.0, 25.0) as usize]).unwrap();
        let on_oil = Shot { lane: oiled(film), ..on_zone.clone() };
        let (a, b) = (roll(&ball, &on_zone).unwrap(), roll(&ball, &on_oil).unwrap());
        let (Some(p), Some(q), true) = (a.at_pins, b.at_pins, b.roll_start.is_some()) else { continue };
        close(p.speed_m_s, q.speed_m_s, 2e-6, "speed");
        close(p.entry_angle_rad, q.entry_angle_rad, 1e-6, "angle");
        compared += 1;
    }
    assert!(compared > 20, "only {compared}");
}

/// The ball meets the pattern's side as well as its end: sent out to the thin
/// film it hooks sooner than straight down the middle.
#[test]
fn the_pattern_has_a_side_as_well_as_an_end() {
    let ball = even_ball(0.38);
    let film = house().film().unwrap();
    let on = |board: f64| {
        let mut shot = shot(17.0, 300.0, 50.0, 5.0, 0.0, oiled(film.clone()));
        shot.release.board = board;
        shot.release.launch_angle_rad = 0.0;
        trace(&ball, &shot, 0.01).unwrap()
    };
    let (inside, outside) = (on(20.0), on(5.0));
    let hook = |run: &pithball_physics::roll::Trace| run.summary.roll_start.map_or(60.0 * M_PER_FT, |at| at.distance_m);
    assert!(hook(&outside) < hook(&inside) - 2.0 * M_PER_FT, "{} {}", hook(&outside), hook(&inside));
    assert!(outside.samples.iter().any(|s| s.phase == Phase::Hook));
}
