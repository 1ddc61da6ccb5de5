//! Room for error: the map, the scatter and the room about a shot.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod roll_support;

use pithball_physics::area::*;
use pithball_physics::lane::Hand;
use pithball_physics::roll::{RigidBall, Shot, roll};
use roll_support::*;

fn whole(ball: &RigidBall, shot: &Shot) -> Area {
    area(ball, shot, &throws(ball, shot, 0..THROWS)).unwrap()
}

/// A league shot moved across the lane so that it comes in on board 17.6.
fn on_target(ball: &RigidBall, mut shot: Shot) -> Shot {
    let board = roll(ball, &shot).unwrap().at_pins.unwrap().board;
    shot.release.board -= board - 17.6;
    shot
}

fn league() -> (RigidBall, Shot) {
    let ball = ball([2.53, 2.52, 2.48], [0.0, 0.0, 0.02]);
    // Between 4° and 6° at the pins.
    (ball, on_target(&ball, shot(17.5, 340.0, 60.0, 12.0, 2.9, oiled())))
}

#[test]
fn the_map_has_2501_throws_and_the_shot_itself_in_the_middle() {
    let (ball, shot) = league();
    assert_eq!((BOARDS * ANGLES, THROWS), (2501, 2501 + SCATTER));
    let area = whole(&ball, &shot);
    let pins = roll(&ball, &shot).unwrap().at_pins.unwrap();
    assert_eq!(area.map[1250], Some(Arrival { board: pins.board, entry_angle_rad: pins.entry_angle_rad }));
    assert_eq!((area.boards[20], area.launch_angles_rad[30]), (shot.release.board, shot.release.launch_angle_rad));
    close(area.boards[0], shot.release.board - 2.0, 1e-12, "first board");
    close(area.launch_angles_rad[60], shot.release.launch_angle_rad + 0.75_f64.to_radians(), 1e-12, "last angle");
}

#[test]
fn parts_put_together_are_the_whole() {
    let (ball, shot) = league();
    let mut parts = throws(&ball, &shot, 0..1000);
    parts.extend(throws(&ball, &shot, 1000..3000));
    parts.extend(throws(&ball, &shot, 3000..usize::MAX));
    assert_eq!(parts, throws(&ball, &shot, 0..THROWS));
    assert_eq!(area(&ball, &shot, &parts[1..]), None);
}

/// Counted by hand from the map's own arrivals.
#[test]
fn shares_are_counted() {
    let (ball, shot) = league();
    let arrivals = throws(&ball, &shot, 0..THROWS);
    let area = area(&ball, &shot, &arrivals).unwrap();
    let pocket =
        |a: &Arrival| (17.0..=18.5).contains(&a.board) && (4.0..=6.0).contains(&a.entry_angle_rad.to_degrees());
    let hits = arrivals[..2501].iter().flatten().filter(|a| pocket(a)).count();
    assert!(hits > 100, "{hits}");
    close(area.map_shares[0], hits as f64 / 2501.0, 1e-12, "share of the map");
    let hits = arrivals[2501..].iter().flatten().filter(|a| pocket(a)).count();
    close(area.scatter_shares[0], hits as f64 / SCATTER as f64, 1e-12, "share of the scatter");
    for shares in [area.map_shares, area.scatter_shares] {
        close(shares.iter().sum(), 1.0, 1e-12, "all of them");
    }
}

/// Lane and ball are the same all along a board: a throw from another board is the same throw moved
/// over, so the room in boards is the window's own width wherever the angle will do.
#[test]
fn where_friction_is_by_distance_alone_the_room_in_boards_is_the_window() {
    let (ball, shot) = league();
    let angle = roll(&ball, &shot).unwrap().at_pins.unwrap().entry_angle_rad.to_degrees();
    assert!((4.0..6.0).contains(&angle), "{angle}");
    let room = whole(&ball, &shot).board_room.unwrap();
    close(room.to - room.from, 1.5, 1e-4, "room");
    assert!(room.holds && room.open == [false, false]);
    // It comes in on 17.6: 0.6 above the window's low end.
    close(shot.release.board - room.from, 0.6, 1e-3, "towards the outside");
}

/// The room in degrees ends where a throw rolled by itself leaves the window.
#[test]
fn the_room_in_degrees_ends_where_a_throw_leaves_the_window() {
    let (ball, shot) = league();
    let room = whole(&ball, &shot).angle_room_rad.unwrap();
    let kind = |launch_angle_rad: f64| {
        let mut other = shot.clone();
        other.release.launch_angle_rad = launch_angle_rad;
        let pins = roll(&ball, &other).unwrap().at_pins.unwrap();
        Kind::of(Some(&Arrival { board: pins.board, entry_angle_rad: pins.entry_angle_rad }))
    };
    let step = 1e-6;
    for (inside, outside) in [(room.from, room.from - step), (room.to, room.to + step)] {
        assert_eq!(kind(inside), Kind::Pocket);
        assert_ne!(kind(outside), Kind::Pocket);
    }
    assert!(room.holds && (0.05..0.5).contains(&(room.to - room.from).to_degrees()), "{room:?}");
}

#[test]
fn a_left_hander_has_the_mirror_image() {
    let (_, right) = league();
    // A ball that is its own mirror image.
    let even = even_ball(0.35);
    let right = on_target(&even, right);
    let mut left = right.clone();
    left.hand = Hand::Left;
    left.release.launch_angle_rad = -right.release.launch_angle_rad;
    let (r, l) = (whole(&even, &right), whole(&even, &left));
    for (a, b) in r.map_shares.iter().zip(l.map_shares) {
        close(*a, b, 1.0 / 2000.0, "share");
    }
    let (r, l) = (r.angle_room_rad.unwrap(), l.angle_room_rad.unwrap());
    close(r.from, -l.to, 1e-6, "room");
    close(r.to, -l.from, 1e-6, "room");
}

#[test]
fn a_shot_that_misses_is_told_the_nearest_room_or_none() {
    let (ball, mut shot) = league();
    shot.release.board += 1.5;
    let room = whole(&ball, &shot).board_room.unwrap();
    assert!(!room.holds && room.to < shot.release.board, "{room:?}");
    shot.release.board += 5.0;
    assert_eq!(whole(&ball, &shot).board_room, None);
    shot.release.board = 39.5;
    let edge = whole(&ball, &shot);
    assert!(edge.map_shares[5] > 0.0, "throws beyond the lane are lost: {:?}", edge.map_shares);
}

/// The boards are those of the pocket, too flat and too steep together; both at once is no more
/// than either.
#[test]
fn board_and_angle_are_told_apart() {
    let (ball, shot) = league();
    let found = whole(&ball, &shot);
    for (shares, apart) in [(found.map_shares, found.map_apart), (found.scatter_shares, found.scatter_apart)] {
        close(apart.boards, shares[0] + shares[1] + shares[2], 1e-12, "on the boards");
        assert!(shares[0] <= apart.angles && apart.angles <= 1.0, "{apart:?} {shares:?}");
    }
    let count = |within: &dyn Fn(&Arrival) -> bool| found.map.iter().flatten().filter(|at| within(at)).count();
    let at_angles = count(&|at| (4.0..=6.0).contains(&at.entry_angle_rad.to_degrees()));
    close(found.map_apart.angles, at_angles as f64 / found.map.len() as f64, 1e-3, "at the angles");
}

#[test]
fn kinds_follow_the_window() {
    let at = |board, degrees: f64| Kind::of(Some(&Arrival { board, entry_angle_rad: degrees.to_radians() }));
    assert_eq!(at(17.5, 5.0), Kind::Pocket);
    assert_eq!(at(17.5, 3.9), Kind::Shallow);
    assert_eq!(at(17.5, 6.1), Kind::Steep);
    assert_eq!(at(16.9, 5.0), Kind::Light);
    assert_eq!(at(18.6, 5.0), Kind::High);
    assert_eq!(Kind::of(None), Kind::Lost);
}
