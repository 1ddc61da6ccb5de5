//! Room for error: a shot thrown again and again, each time a little otherwise.
//!
//! Two sets of throws. A map: board and launch angle varied evenly about the
//! shot's own. A scatter: board, launch angle, speed and revs varied together
//! as a hand varies them, in the proportions of [`Spread`]. Both are the same
//! every time. Each throw is rolled in full; where it arrives is held to the
//! pocket's window as published.

mod scatter;

use core::ops::Range;

use crate::roll::{Release, RigidBall, Shot, roll};
pub use scatter::{SCATTER, SPREAD, Spread};

/// Boards of the map, the shot's own in the middle.
pub const BOARDS: usize = 41;
/// Launch angles of the map, the shot's own in the middle.
pub const ANGLES: usize = 61;
/// How far the map reaches to either side of the shot's board.
pub const BOARD_REACH: f64 = 2.0;
/// How far the map reaches to either side of the shot's launch angle, 0.75°.
pub const ANGLE_REACH_RAD: f64 = core::f64::consts::PI / 240.0;
/// Throws in all: 2,501 of the map, then the scatter's.
pub const THROWS: usize = BOARDS * ANGLES + SCATTER;
/// How often the width of a gap is halved to find its end.
const HALVINGS: u32 = 24;

/// Where a ball has to arrive.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Window {
    /// Least and largest board at the pins.
    pub boards: [f64; 2],
    /// Least and largest entry angle.
    pub angles_rad: [f64; 2],
}

/// Boards 17 to 18.5 at 4° to 6° strike best (United States Bowling Congress
/// studies, as reported), counted from the bowler's own side for both hands.
pub const POCKET: Window =
    Window { boards: [17.0, 18.5], angles_rad: [core::f64::consts::PI / 45.0, core::f64::consts::PI / 30.0] };

/// How a throw comes to the pins.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Arrival {
    /// Board at the pins.
    pub board: f64,
    /// Entry angle, positive towards the pocket side.
    pub entry_angle_rad: f64,
}

/// What a throw comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Kind {
    /// In the window.
    Pocket,
    /// On the window's boards at too small an angle.
    Shallow,
    /// On the window's boards at too large an angle.
    Steep,
    /// Short of the window: on a board nearer the bowler's own side.
    Light,
    /// Past the window, towards the head pin's face and beyond.
    High,
    /// In the gutter, or it cannot be thrown so.
    Lost,
}

/// Every kind, in the order of [`Shares`].
pub const KINDS: [Kind; 6] = [Kind::Pocket, Kind::Shallow, Kind::Steep, Kind::Light, Kind::High, Kind::Lost];

impl Kind {
    /// What an arrival is; none is [`Kind::Lost`].
    #[must_use]
    pub fn of(arrival: Option<&Arrival>) -> Self {
        let Some(at) = arrival else { return Self::Lost };
        let ([first, last], [least, most]) = (POCKET.boards, POCKET.angles_rad);
        match at {
            _ if at.board < first => Self::Light,
            _ if at.board > last => Self::High,
            _ if at.entry_angle_rad < least => Self::Shallow,
            _ if at.entry_angle_rad > most => Self::Steep,
            _ => Self::Pocket,
        }
    }
}

/// Which part of a set of throws is of each of [`KINDS`]; they sum to 1.
pub type Shares = [f64; 6];

/// Which part of a set of throws meets the window's boards, and which its
/// angles, each whatever the other does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Apart {
    /// On the window's boards.
    pub boards: f64,
    /// At the window's angles.
    pub angles: f64,
}

/// The throws in a row that reach the window, as one thing alone is varied.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Room {
    /// The first value that does.
    pub from: f64,
    /// The last.
    pub to: f64,
    /// Whether the map ends before the room does, at either end.
    pub open: [bool; 2],
    /// Whether the shot's own value is in it.
    pub holds: bool,
}

/// Room for error about a shot.
#[derive(Clone, Debug, PartialEq)]
pub struct Area {
    /// The map's boards.
    pub boards: Vec<f64>,
    /// The map's launch angles.
    pub launch_angles_rad: Vec<f64>,
    /// Arrivals of the map: board by board for each launch angle in turn.
    pub map: Vec<Option<Arrival>>,
    /// What the throws of the map come to.
    pub map_shares: Shares,
    /// What the throws of the scatter come to.
    pub scatter_shares: Shares,
    /// Board and angle of the map's throws apart.
    pub map_apart: Apart,
    /// Board and angle of the scatter's throws apart.
    pub scatter_apart: Apart,
    /// The stretch of boards nearest the shot's own, at its launch angle. None
    /// where no board of the map will do.
    pub board_room: Option<Room>,
    /// The same of launch angles (rad), at the shot's board.
    pub angle_room_rad: Option<Room>,
}

/// Value `at` of `count` evenly about `middle`; the middle one is exact.
fn spread_evenly(middle: f64, reach: f64, count: usize, at: usize) -> f64 {
    let half = (count / 2) as f64;
    middle + reach * ((at as f64 - half) / half)
}

/// Throw `at` of [`THROWS`].
fn release(of: &Release, at: usize) -> Release {
    let mut release = *of;
    if at < BOARDS * ANGLES {
        release.board = spread_evenly(of.board, BOARD_REACH, BOARDS, at % BOARDS);
        release.launch_angle_rad = spread_evenly(of.launch_angle_rad, ANGLE_REACH_RAD, ANGLES, at / BOARDS);
        return release;
    }
    scatter::varied(of, at - BOARDS * ANGLES)
}

fn arrive(ball: &RigidBall, shot: &Shot, release: Release) -> Option<Arrival> {
    // A throw that cannot be made, or cannot be followed, is lost.
    let summary = roll(ball, &Shot { release, ..shot.clone() }).ok()?;
    summary.at_pins.map(|pins| Arrival { board: pins.board, entry_angle_rad: pins.entry_angle_rad })
}

/// Rolls the throws of a part of 0 to [`THROWS`]; none is a throw that does
/// not reach the pins. What lies beyond is left out.
#[must_use]
pub fn throws(ball: &RigidBall, shot: &Shot, part: Range<usize>) -> Vec<Option<Arrival>> {
    let part = part.start..part.end.min(THROWS);
    part.map(|at| arrive(ball, shot, release(&shot.release, at))).collect()
}

/// Puts together what all [`THROWS`] came to; none where there are more or fewer.
#[must_use]
pub fn area(ball: &RigidBall, shot: &Shot, arrivals: &[Option<Arrival>]) -> Option<Area> {
    if arrivals.len() != THROWS {
        return None;
    }
    let (map, scatter) = arrivals.split_at(BOARDS * ANGLES);
    let own = &shot.release;
    let boards: Vec<f64> = (0..BOARDS).map(|at| spread_evenly(own.board, BOARD_REACH, BOARDS, at)).collect();
    let angle = |at| spread_evenly(own.launch_angle_rad, ANGLE_REACH_RAD, ANGLES, at);
    let launch_angles_rad: Vec<f64> = (0..ANGLES).map(angle).collect();
    let hit = |arrival: &Option<Arrival>| Kind::of(arrival.as_ref()) == Kind::Pocket;
    let again = |release| hit(&arrive(ball, shot, release));
    let row: Vec<bool> = (0..BOARDS).map(|at| hit(&map[ANGLES / 2 * BOARDS + at])).collect();
    let column: Vec<bool> = (0..ANGLES).map(|at| hit(&map[at * BOARDS + BOARDS / 2])).collect();
    Some(Area {
        board_room: room(&boards, &row, |board| again(Release { board, ..*own })),
        angle_room_rad: room(&launch_angles_rad, &column, |launch_angle_rad| {
            again(Release { launch_angle_rad, ..*own })
        }),
        boards,
        launch_angles_rad,
        map: map.to_vec(),
        map_shares: shares(map),
        scatter_shares: shares(scatter),
        map_apart: apart(map),
        scatter_apart: apart(scatter),
    })
}

fn shares(arrivals: &[Option<Arrival>]) -> Shares {
    KINDS.map(|kind| {
        let of_kind = arrivals.iter().filter(|arrival| Kind::of(arrival.as_ref()) == kind).count();
        of_kind as f64 / arrivals.len() as f64
    })
}

fn apart(arrivals: &[Option<Arrival>]) -> Apart {
    let part = |of: fn(&Arrival) -> f64, [least, most]: [f64; 2]| {
        let within = arrivals.iter().flatten().filter(|at| (least..=most).contains(&of(at))).count();
        within as f64 / arrivals.len() as f64
    };
    Apart { boards: part(|at| at.board, POCKET.boards), angles: part(|at| at.entry_angle_rad, POCKET.angles_rad) }
}

/// The run of hits nearest the middle, its ends found between the last hit and
/// the first miss by halving.
fn room(values: &[f64], hits: &[bool], hit: impl Fn(f64) -> bool) -> Option<Room> {
    let (last, middle) = (values.len() - 1, values.len() / 2);
    let nearest = (0..values.len()).filter(|at| hits[*at]).min_by_key(|at| at.abs_diff(middle))?;
    let first_at = (0..nearest).rev().take_while(|at| hits[*at]).last().unwrap_or(nearest);
    let last_at = (nearest..=last).take_while(|at| hits[*at]).last().unwrap_or(nearest);
    let edge = |inside: usize, outside: Option<usize>| {
        let Some(outside) = outside else { return values[inside] };
        let (mut good, mut bad) = (values[inside], values[outside]);
        for _ in 0..HALVINGS {
            let half = 0.5 * (good + bad);
            if hit(half) {
                good = half;
            } else {
                bad = half;
            }
        }
        good
    };
    Some(Room {
        from: edge(first_at, first_at.checked_sub(1)),
        to: edge(last_at, (last_at < last).then_some(last_at + 1)),
        open: [first_at == 0, last_at == last],
        holds: first_at <= middle && middle <= last_at,
    })
}
