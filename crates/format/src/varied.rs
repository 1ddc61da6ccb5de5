//! What `area` prints: room for error about a shot.

use physics::area::{ANGLES, Apart, Area, Arrival, BOARDS, KINDS, Kind, POCKET, Room, SCATTER, SPREAD, Shares};
use physics::units::{M_S_PER_MPH, RAD_S_PER_RPM};
use serde::Serialize;

use crate::{Phrase, phrase};

/// Room for error about a shot.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct AreaDoc {
    /// One or two sentences that say it all.
    pub sentence: Phrase,
    /// How many throws were rolled for it.
    pub throws: usize,
    /// Where a ball has to arrive.
    pub window: WindowDoc,
    /// What the shot itself comes to.
    pub shot: ArrivalDoc,
    /// The stretch of boards that will do at the shot's own launch angle; null
    /// where none of the map does.
    pub board_room: Option<RoomDoc>,
    /// The stretch of launch angles, in degrees, that will do from the shot's own board.
    pub launch_angle_room_deg: Option<RoomDoc>,
    /// Board and launch angle varied evenly.
    pub map: MapDoc,
    /// Board, launch angle, speed and revs varied together as a hand does.
    pub scatter: ScatterDoc,
}

/// Where a ball has to arrive, as published.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WindowDoc {
    /// Least and largest board.
    pub boards: [f64; 2],
    /// Least and largest entry angle.
    pub entry_angles_deg: [f64; 2],
    /// Where the figures are from.
    pub source: Phrase,
}

/// Where one throw arrives; null where it does not.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ArrivalDoc {
    /// Board at the pins.
    pub board_at_pins: Option<f64>,
    /// Entry angle.
    pub entry_angle_deg: Option<f64>,
    /// What that is.
    pub kind: KindDoc,
}

/// A stretch of one quantity that will do.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RoomDoc {
    /// Where it begins.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// How wide it is; at least that, where it is open.
    pub width: f64,
    /// Whether the map ends before it does: at its beginning, at its end.
    pub open: [bool; 2],
    /// Whether the shot's own value is in it.
    pub holds: bool,
}

/// What a throw comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum KindDoc {
    /// In the window.
    Pocket,
    /// On the window's boards, at too small an angle.
    Shallow,
    /// On the window's boards, at too large an angle.
    Steep,
    /// On a board nearer the bowler's own side.
    Light,
    /// On a board past the window.
    High,
    /// In the gutter, or it cannot be thrown so.
    Lost,
}

/// Which part of the throws is of each kind.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SharesDoc {
    /// In the window.
    pub pocket: f64,
    /// Too small an angle.
    pub shallow: f64,
    /// Too large an angle.
    pub steep: f64,
    /// Nearer the bowler's own side.
    pub light: f64,
    /// Past the window.
    pub high: f64,
    /// In the gutter.
    pub lost: f64,
}

/// Board and angle apart: which part of the throws meets each, whatever the other does.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ApartDoc {
    /// On the window's boards, at any angle.
    pub on_boards: f64,
    /// At the window's angles, on any board.
    pub at_angles: f64,
}

/// Board and launch angle varied evenly about the shot's own.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct MapDoc {
    /// Boards at the foul line.
    pub boards: Vec<f64>,
    /// Launch angles.
    pub launch_angles_deg: Vec<f64>,
    /// For each launch angle, for each board: the board at the pins.
    pub board_at_pins: Vec<Vec<Option<f64>>>,
    /// The same for the entry angle.
    pub entry_angle_deg: Vec<Vec<Option<f64>>>,
    /// The same for what it comes to.
    pub kinds: Vec<Vec<KindDoc>>,
    /// Shares of the map.
    pub shares: SharesDoc,
    /// Board and angle of them apart.
    pub apart: ApartDoc,
}

/// Throws that vary as a hand's do.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ScatterDoc {
    /// How many.
    pub throws: usize,
    /// Standard deviation of the board (model choice, as all four).
    pub spread_board: f64,
    /// Standard deviation of the launch angle.
    pub spread_launch_angle_deg: f64,
    /// Standard deviation of the speed.
    pub spread_speed_mph: f64,
    /// Standard deviation of the revs.
    pub spread_revs_rpm: f64,
    /// Shares of these throws.
    pub shares: SharesDoc,
    /// Board and angle of them apart.
    pub apart: ApartDoc,
}

impl From<&Area> for AreaDoc {
    fn from(area: &Area) -> Self {
        let rows = |of: fn(&Arrival) -> f64| {
            area.map.chunks(BOARDS).map(|row| row.iter().map(|at| at.as_ref().map(of)).collect()).collect()
        };
        let kinds = |row: &[Option<Arrival>]| row.iter().map(|at| Kind::of(at.as_ref()).into()).collect();
        let mut doc = Self {
            sentence: Phrase::default(),
            throws: BOARDS * ANGLES + SCATTER,
            window: WindowDoc {
                boards: POCKET.boards,
                entry_angles_deg: POCKET.angles_rad.map(f64::to_degrees),
                source: phrase!(
                    "area-source",
                    "boards 17 to 18.5 at 4° to 6° strike best (studies of the United States Bowling Congress, as reported)"
                ),
            },
            shot: ArrivalDoc::from(area.map[area.map.len() / 2].as_ref()),
            board_room: area.board_room.as_ref().map(|room| room_in(room, 1.0)),
            launch_angle_room_deg: area.angle_room_rad.as_ref().map(|room| room_in(room, 1.0_f64.to_radians())),
            map: MapDoc {
                boards: area.boards.clone(),
                launch_angles_deg: area.launch_angles_rad.iter().map(|angle| angle.to_degrees()).collect(),
                board_at_pins: rows(|at| at.board),
                entry_angle_deg: rows(|at| at.entry_angle_rad.to_degrees()),
                kinds: area.map.chunks(BOARDS).map(kinds).collect(),
                shares: SharesDoc::from(area.map_shares),
                apart: ApartDoc::from(area.map_apart),
            },
            scatter: ScatterDoc {
                throws: SCATTER,
                spread_board: SPREAD.board,
                spread_launch_angle_deg: SPREAD.launch_angle_rad.to_degrees(),
                spread_speed_mph: SPREAD.speed_m_s / M_S_PER_MPH,
                spread_revs_rpm: SPREAD.spin_rad_s / RAD_S_PER_RPM,
                shares: SharesDoc::from(area.scatter_shares),
                apart: ApartDoc::from(area.scatter_apart),
            },
        };
        doc.sentence = sentence(&doc);
        doc
    }
}

impl From<Option<&Arrival>> for ArrivalDoc {
    fn from(arrival: Option<&Arrival>) -> Self {
        Self {
            board_at_pins: arrival.map(|at| at.board),
            entry_angle_deg: arrival.map(|at| at.entry_angle_rad.to_degrees()),
            kind: Kind::of(arrival).into(),
        }
    }
}

fn room_in(room: &Room, unit: f64) -> RoomDoc {
    let (from, to) = (room.from / unit, room.to / unit);
    RoomDoc { from, to, width: to - from, open: room.open, holds: room.holds }
}

fn sentence(doc: &AreaDoc) -> Phrase {
    let width = |room: &RoomDoc, decimals: usize| {
        let width = format!("{:.decimals$}", room.width);
        if room.open.contains(&true) { phrase!("at-least", "at least {width}", width = width) } else { width.into() }
    };
    let head = match (&doc.board_room, &doc.launch_angle_room_deg) {
        (Some(boards), Some(angles)) if boards.holds && angles.holds => phrase!(
            "area-reaches",
            "This shot reaches the pocket with {boards} boards of room at the foul line and {angle}° of room in the launch angle.",
            boards = width(boards, 1),
            angle = width(angles, 2)
        ),
        (Some(boards), _) => misses(&doc.shot).then(phrase!(
            "area-boards",
            "At the same launch angle it would meet board and angle from boards {from} to {to}.",
            from = format!("{:.1}", boards.from),
            to = format!("{:.1}", boards.to)
        )),
        (None, Some(angles)) => misses(&doc.shot).then(phrase!(
            "area-angles",
            "From the same board it would meet board and angle at launch angles of {from}° to {to}°.",
            from = format!("{:.2}", angles.from),
            to = format!("{:.2}", angles.to)
        )),
        (None, None) => {
            misses(&doc.shot).then(phrase!("area-none", "No other board and no other launch angle near it would help."))
        }
    };
    let whole = |number: f64| format!("{number:.0}");
    let shares = &doc.scatter.shares;
    head.then(phrase!(
        "area-throws",
        "Of 100 throws of a steady league hand, {boards} come in on the pocket's boards, {angles} at its angles of {from}° to {to}°, and {both} do both.",
        boards = whole(100.0 * doc.scatter.apart.on_boards),
        angles = whole(100.0 * doc.scatter.apart.at_angles),
        from = whole(doc.window.entry_angles_deg[0]),
        to = whole(doc.window.entry_angles_deg[1]),
        both = whole(100.0 * shares.pocket)
    ))
}

/// How a shot misses the window.
fn misses(shot: &ArrivalDoc) -> Phrase {
    let (Some(board), Some(angle)) = (shot.board_at_pins, shot.entry_angle_deg) else {
        return phrase!("shot-lost", "This shot does not reach the pins.");
    };
    let (angle, board) = (format!("{angle:.1}"), format!("{board:.1}"));
    match shot.kind {
        KindDoc::Shallow => {
            phrase!("shot-flat", "This shot comes in on the pocket's boards but too flat, at {angle}°.", angle = angle)
        }
        KindDoc::Steep => phrase!(
            "shot-steep",
            "This shot comes in on the pocket's boards but too steep, at {angle}°.",
            angle = angle
        ),
        KindDoc::Light => {
            phrase!("shot-light", "This shot comes in short of the pocket, on board {board}.", board = board)
        }
        KindDoc::High => phrase!("shot-high", "This shot comes in past the pocket, on board {board}.", board = board),
        KindDoc::Pocket | KindDoc::Lost => phrase!("shot-edge", "This shot is at the edge of the pocket."),
    }
}

impl From<Apart> for ApartDoc {
    fn from(apart: Apart) -> Self {
        Self { on_boards: apart.boards, at_angles: apart.angles }
    }
}

impl From<Shares> for SharesDoc {
    fn from(shares: Shares) -> Self {
        let of = |kind| KINDS.iter().position(|other| *other == kind).map_or(0.0, |at| shares[at]);
        Self {
            pocket: of(Kind::Pocket),
            shallow: of(Kind::Shallow),
            steep: of(Kind::Steep),
            light: of(Kind::Light),
            high: of(Kind::High),
            lost: of(Kind::Lost),
        }
    }
}

impl From<Kind> for KindDoc {
    fn from(kind: Kind) -> Self {
        match kind {
            Kind::Pocket => Self::Pocket,
            Kind::Shallow => Self::Shallow,
            Kind::Steep => Self::Steep,
            Kind::Light => Self::Light,
            Kind::High => Self::High,
            Kind::Lost => Self::Lost,
        }
    }
}
