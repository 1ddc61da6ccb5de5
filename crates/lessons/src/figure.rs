//! The numbers that lessons speak of, each with its name in expressions and in
//! words. Every one is read off a document that physics computed.

use format::{Phrase, phrase};
use physics::lane::{BOARDS, CENTRE_BOARD, PINS_M, board_at};
use physics::spec::{RULES, Rule, RuleId};
use physics::units::{M_PER_FT, M_PER_IN};
use serde::Serialize;

use crate::bench::Bench;
use crate::quantity::Quantity;

/// A number of a ball or shot.
#[derive(Clone, Copy)]
pub struct Figure {
    /// What expressions call it.
    pub name: &'static str,
    /// What sentences call it.
    pub words: &'static str,
    /// What it is a number of.
    pub quantity: Quantity,
    /// What it is asked with in brackets, if anything.
    pub index: Option<Index>,
    of: Of,
}

impl std::fmt::Debug for Figure {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.name)
    }
}

impl PartialEq for Figure {
    fn eq(&self, other: &Self) -> bool {
        self.name == other.name
    }
}

/// What stands in brackets after a figure's name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Index {
    /// The name of a piece, or of the cover.
    Piece,
    /// A distance from the foul line.
    Distance,
}

#[derive(Clone, Copy)]
enum Of {
    Bench(fn(&Bench) -> Found),
    Piece(fn(&Bench, &str) -> Found),
    Distance(fn(&Bench, f64) -> Found),
}

/// A number, or why there is none, as the end of a sentence.
pub(crate) type Found = Result<f64, Phrase>;

impl Figure {
    const fn new(name: &'static str, words: &'static str, quantity: Quantity, of: fn(&Bench) -> Found) -> Self {
        Self { name, words, quantity, index: None, of: Of::Bench(of) }
    }

    /// The name as it is written, with what it is asked for in brackets.
    pub fn written(&self) -> String {
        let index = match self.index {
            None => "",
            Some(Index::Piece) => "[\"piece\"]",
            Some(Index::Distance) => "[40 ft]",
        };
        format!("{}{index}", self.name)
    }

    /// The word of the glossary that explains it; none where words of everyday do.
    pub fn word(&self) -> Option<&'static str> {
        Some(match self.name {
            "weight_lb" | "weight_oz" | "piece_weight_lb" | "limit_weight_lb" => "weight",
            "rg_in" | "uniform_rg_in" | "piece_rg_share" | "limit_rg_low_in" => "RG",
            "rg_middle_in" => "middle RG",
            "rg_high_in" | "limit_rg_high_in" => "high RG",
            "differential_in" | "limit_differential_in" => "differential",
            "intermediate_differential_in" | "asymmetry_share" => "intermediate differential",
            "top_weight_oz" => "top weight",
            "cg_in" => "CG",
            "pieces" | "core_share" => "piece",
            "holes" => "hole",
            "rules_broken" => "published limit",
            "cover_in" | "cover_mean_in" | "cover_usual_from_in" | "cover_usual_to_in" => "coverstock",
            "piece_volume_cc" => "volume",
            "limit_density_g_cc" => "density",
            "time_s" => "time",
            "board_at_pins" | "path_board" | "centre_board" | "lane_boards" => "board",
            "pocket_miss_boards" | "pocket_board" => "pocket",
            "entry_angle_deg" | "pocket_angle_deg" => "entry angle",
            "speed_at_pins_mph" | "speed_lost_mph" => "speed",
            "revs_at_pins_rpm" | "revs_gained_rpm" | "turns" => "rev rate",
            "breakpoint_board" | "breakpoint_ft" => "breakpoint",
            "hook_start_ft" | "hook_ft" | "hook_boards" => "hook",
            "roll_start_ft" | "roll_ft" => "roll",
            "skid_ft" => "skid",
            "axis_migration_deg" => "axis migration",
            "flare_in" | "flare_per_turn_in" => "track flare",
            "flare_layout_in" => "PAP",
            "oil_length_ft" | "oil_volume_ml" | "exit_rule_board" | "exit_rule" => "oil pattern",
            "pours" => "pour",
            "cost_index" => "cost index",
            _ => return None,
        })
    }

    /// What it is, in words, as a part of a sentence.
    pub fn said(&self) -> Phrase {
        Phrase::known("figure", self.name, self.words)
    }

    /// The figure of this name.
    pub(crate) fn named(name: &str) -> Option<&'static Self> {
        FIGURES.iter().find(|figure| figure.name == name)
    }

    pub(crate) fn of(&self, bench: &Bench) -> Found {
        match self.of {
            Of::Bench(of) => of(bench),
            Of::Piece(_) | Of::Distance(_) => {
                Err(phrase!("no-brackets", "{what} is asked without its brackets", what = self.said()))
            }
        }
    }

    pub(crate) fn of_piece(&self, bench: &Bench, piece: &str) -> Found {
        match self.of {
            Of::Piece(of) => of(bench, piece),
            Of::Bench(_) | Of::Distance(_) => self.of(bench),
        }
    }

    pub(crate) fn at_ft(&self, bench: &Bench, distance_ft: f64) -> Found {
        match self.of {
            Of::Distance(of) => of(bench, distance_ft),
            Of::Bench(_) | Of::Piece(_) => self.of(bench),
        }
    }
}

macro_rules! weighed {
    ($name:literal, $words:literal, $quantity:ident, |$w:ident| $value:expr) => {
        Figure::new($name, $words, Quantity::$quantity, |bench| {
            let $w = bench.weighed();
            Ok($value)
        })
    };
}

macro_rules! rolled {
    ($name:literal, $words:literal, $quantity:ident, |$s:ident| $value:expr, $none:expr) => {
        Figure::new($name, $words, Quantity::$quantity, |bench| {
            let $s = &bench.rolled().map_err(|problem| problem.message)?.summary;
            let value: Option<f64> = $value;
            value.ok_or_else($none)
        })
    };
}

macro_rules! limit {
    ($name:literal, $words:literal, $quantity:ident, $id:ident, $side:ident) => {
        Figure::new($name, $words, Quantity::$quantity, |_| limit(RuleId::$id, |rule| rule.$side))
    };
}

macro_rules! covered {
    ($name:literal, $words:literal, $quantity:ident, |$c:ident| $value:expr) => {
        Figure::new($name, $words, Quantity::$quantity, |bench| {
            let $c = bench.cover().map_err(|problem| problem.message)?;
            $value
        })
    };
}

fn short() -> Phrase {
    phrase!("ball-short", "the ball does not reach the pins")
}

fn none() -> Phrase {
    phrase!("there-is-none", "there is none")
}

/// Every figure there is.
pub const FIGURES: &[Figure] = &[
    weighed!("weight_lb", "the weight of the ball", Weight, |w| w.weight_lb),
    weighed!("weight_oz", "the weight of the ball in ounces", Imbalance, |w| w.mass_kg / physics::units::KG_PER_OZ),
    weighed!("rg_in", "the RG", Rg, |w| w.rg_in.low),
    weighed!("rg_middle_in", "the middle RG", Rg, |w| w.rg_in.middle),
    weighed!("rg_high_in", "the high RG", Rg, |w| w.rg_in.high),
    weighed!("differential_in", "the differential", Rg, |w| w.differential_in),
    weighed!("intermediate_differential_in", "the intermediate differential", Rg, |w| w.intermediate_differential_in),
    weighed!("asymmetry_share", "the intermediate differential's share of the differential", Share, |w| {
        if w.differential_in > 0.0 { w.intermediate_differential_in / w.differential_in } else { 0.0 }
    }),
    weighed!("top_weight_oz", "the top weight", Imbalance, |w| w.top_weight_oz),
    weighed!("cg_in", "the way from the centre to the centre of gravity", Size, |w| {
        w.cg_in.iter().map(|part| part * part).sum::<f64>().sqrt()
    }),
    Figure::new("pieces", "the number of pieces inside", Quantity::Count, |bench| Ok(bench.ball().pieces.len() as f64)),
    Figure::new("holes", "the number of holes", Quantity::Count, |bench| {
        Ok(bench.thrown_ball().holes.as_ref().map_or(0, Vec::len) as f64)
    }),
    Figure::new("rules_broken", "the number of published limits that the ball breaks", Quantity::Count, |bench| {
        Ok(bench.checked().rules.iter().filter(|rule| rule.verdict == "fail").count() as f64)
    }),
    covered!("cover_in", "the thinnest place of the cover", Size, |c| {
        c.thinnest
            .as_ref()
            .map(|thinnest| thinnest.thickness_in)
            .ok_or_else(|| phrase!("no-core", "the ball has no core"))
    }),
    covered!("cover_mean_in", "the mean thickness of the cover", Size, |c| Ok(c.mean_in)),
    covered!("cover_usual_from_in", "the least thickness that is usual", Size, |c| Ok(c.usual_in[0])),
    covered!("cover_usual_to_in", "the most thickness that is usual", Size, |c| Ok(c.usual_in[1])),
    covered!("core_share", "the share of the ball that its pieces fill", Share, |c| Ok(c.core_share)),
    Figure {
        index: Some(Index::Piece),
        of: Of::Piece(|bench, piece| share(bench, piece).map(|share| share.mass_kg / physics::units::KG_PER_LB)),
        ..Figure::new("piece_weight_lb", "the weight of the piece", Quantity::Weight, |_| Ok(0.0))
    },
    Figure {
        index: Some(Index::Piece),
        of: Of::Piece(|bench, piece| share(bench, piece).map(|share| share.volume_cc)),
        ..Figure::new("piece_volume_cc", "the volume of the piece", Quantity::Volume, |_| Ok(0.0))
    },
    Figure {
        index: Some(Index::Piece),
        of: Of::Piece(|bench, piece| share(bench, piece).map(|share| share.rg_share)),
        ..Figure::new("piece_rg_share", "the share of the RG that is due to the piece", Quantity::Share, |_| Ok(0.0))
    },
    rolled!("time_s", "the time to the pins", Time, |s| s.time_s, short),
    rolled!("board_at_pins", "the board at the pins", Board, |s| s.board_at_pins, short),
    rolled!("entry_angle_deg", "the entry angle", Angle, |s| s.entry_angle_deg, short),
    rolled!("speed_at_pins_mph", "the speed at the pins", Speed, |s| s.speed_at_pins_mph, short),
    rolled!("revs_at_pins_rpm", "the revs at the pins", Revs, |s| s.revs_at_pins_rpm, short),
    rolled!("breakpoint_board", "the board of the breakpoint", Board, |s| Some(s.breakpoint.board), none),
    rolled!("breakpoint_ft", "the distance of the breakpoint", Distance, |s| Some(s.breakpoint.distance_ft), none),
    rolled!("hook_start_ft", "where the hook begins", Distance, |s| s.hook_start_ft, || phrase!(
        "no-hook",
        "the ball has no hook"
    )),
    rolled!("roll_start_ft", "where the ball begins to roll", Distance, |s| s.roll_start_ft, || phrase!(
        "never-rolls",
        "the ball never rolls before the pins"
    )),
    rolled!("axis_migration_deg", "how far the axis moves", Angle, |s| s.axis_migration_deg, short),
    rolled!("flare_in", "the flare", Size, |s| Some(s.flare_in), none),
    rolled!("flare_per_turn_in", "the flare in one turn", Size, |s| Some(s.flare_per_turn_in), none),
    rolled!("turns", "the number of turns", Count, |s| Some(s.turns), none),
    Figure::new("hook_boards", "how many boards the ball comes back", Quantity::Board, |bench| {
        let summary = &bench.rolled().map_err(|problem| problem.message)?.summary;
        let board = summary.board_at_pins.ok_or_else(short)?;
        Ok(board - summary.breakpoint.board)
    }),
    Figure::new("speed_lost_mph", "the speed lost on the way", Quantity::Speed, |bench| {
        let at_pins_mph = bench.rolled().map_err(|problem| problem.message)?.summary.speed_at_pins_mph;
        at_pins_mph.map(|mph| bench.throw().release.speed_mph - mph).ok_or_else(short)
    }),
    Figure::new("revs_gained_rpm", "the revs gained on the way", Quantity::Revs, |bench| {
        let at_pins_rpm = bench.rolled().map_err(|problem| problem.message)?.summary.revs_at_pins_rpm;
        at_pins_rpm.map(|rpm| rpm - bench.throw().release.revs_rpm).ok_or_else(short)
    }),
    Figure::new("skid_ft", "the length of the skid", Quantity::Distance, |bench| phase(bench, format::PhaseDoc::Skid)),
    Figure::new("hook_ft", "the length of the hook", Quantity::Distance, |bench| phase(bench, format::PhaseDoc::Hook)),
    Figure::new("roll_ft", "the length of the roll", Quantity::Distance, |bench| phase(bench, format::PhaseDoc::Roll)),
    Figure::new("pocket_miss_boards", "how far from the pocket the ball arrives", Quantity::Board, |bench| {
        let board = bench.rolled().map_err(|problem| problem.message)?.summary.board_at_pins;
        board.map(|board| (board - POCKET_BOARD).abs()).ok_or_else(short)
    }),
    Figure {
        index: Some(Index::Distance),
        of: Of::Distance(path_board),
        ..Figure::new("path_board", "the board of the path", Quantity::Board, |_| Ok(0.0))
    },
    Figure::new("oil_length_ft", "the length of the oil", Quantity::Distance, |bench| Ok(oil(bench)?.length_ft)),
    Figure::new("oil_volume_ml", "the volume of the oil", Quantity::Oil, |bench| Ok(oil(bench)?.volume_ml)),
    Figure::new("exit_rule_board", "the exit board by the rule of thumb", Quantity::Board, |bench| {
        Ok(oil(bench)?.length_ft - EXIT_RULE)
    }),
    Figure::new("pours", "the number of pours", Quantity::Count, |bench| {
        bench.poured().map(|poured| poured.pours.len() as f64).map_err(|problem| problem.message)
    }),
    Figure::new("cost_index", "the cost index", Quantity::Ratio, |bench| {
        bench.poured().map(|poured| poured.cost_index).map_err(|problem| problem.message)
    }),
    Figure::new("lane_ft", "the way from the foul line to the pins", Quantity::Distance, |_| Ok(PINS_M / M_PER_FT)),
    Figure::new("lane_boards", "the number of boards", Quantity::Board, |_| Ok(BOARDS)),
    Figure::new("centre_board", "the board in the middle", Quantity::Board, |_| Ok(CENTRE_BOARD)),
    Figure::new("pocket_board", "the board of the pocket", Quantity::Board, |_| Ok(POCKET_BOARD)),
    Figure::new("pocket_angle_deg", "the entry angle to aim at", Quantity::Angle, |_| Ok(POCKET_ANGLE_DEG)),
    Figure::new("exit_rule", "what the exit rule takes from the length", Quantity::Count, |_| Ok(EXIT_RULE)),
    Figure::new("uniform_rg_in", "the RG of a ball that is the same all through", Quantity::Rg, |bench| {
        // √0.4 of the radius: the closed form of a solid sphere.
        Ok(0.4_f64.sqrt() * bench.ball().diameter_in / 2.0)
    }),
    Figure::new("flare_layout_in", "the pin-to-PAP distance that flares most", Quantity::Size, |bench| {
        Ok(bench.ball().diameter_in * std::f64::consts::PI / 8.0)
    }),
    limit!("limit_weight_lb", "the most a ball may weigh", Weight, Weight, at_most),
    limit!("limit_rg_low_in", "the least RG allowed", Rg, LowRg, at_least),
    limit!("limit_rg_high_in", "the most RG allowed", Rg, HighRg, at_most),
    limit!("limit_differential_in", "the most differential allowed", Rg, Differential, at_most),
    limit!("limit_density_g_cc", "the most density allowed", Density, Density, at_most),
];

/// Pocket: board 17.5 at 6° is the aim (USBC studies, as reported).
const POCKET_BOARD: f64 = 17.5;
const POCKET_ANGLE_DEG: f64 = 6.0;
/// Exit board = length in feet less this (common practice, no source).
const EXIT_RULE: f64 = 31.0;

fn limit(id: RuleId, side: fn(&Rule) -> Option<f64>) -> Found {
    let rule = RULES.iter().find(|rule| rule.id == id);
    rule.and_then(side).ok_or_else(|| phrase!("no-such-limit", "there is no such limit"))
}

fn share<'a>(bench: &'a Bench, piece: &str) -> Result<&'a format::PieceShare, Phrase> {
    let pieces = &bench.weighed().pieces;
    pieces
        .iter()
        .find(|share| share.name == piece)
        .ok_or_else(|| phrase!("no-piece-here", "the ball has no piece called {name}", name = format!("{piece:?}")))
}

fn phase(bench: &Bench, phase: format::PhaseDoc) -> Found {
    let rolled = bench.rolled().map_err(|problem| problem.message)?;
    Ok(rolled.phases.iter().filter(|span| span.phase == phase).map(|span| span.length_ft).sum())
}

fn oil(bench: &Bench) -> Result<format::OilMapDoc, Phrase> {
    let oil =
        bench.oil().ok_or_else(|| phrase!("no-oil-here", "the lane's friction is given in zones, without oil"))?;
    let film = oil.film().map_err(|problem| problem.message)?;
    Ok(format::OilMapDoc::new(oil, &film))
}

/// The board under the ball's centre at a distance, on the straight line
/// between the two samples around it: they are a hundredth of a second apart,
/// about 3 in of way.
pub(crate) fn path_board(bench: &Bench, distance_ft: f64) -> Found {
    let rolled = bench.rolled().map_err(|problem| problem.message)?;
    let between = rolled.samples.windows(2).find_map(|pair| {
        let [a, b] = pair else { return None };
        let part = (distance_ft - a.y_ft) / (b.y_ft - a.y_ft);
        (0.0..=1.0).contains(&part).then_some(a.x_in + part * (b.x_in - a.x_in))
    });
    let x_in = between.ok_or_else(|| phrase!("not-so-far", "the ball does not get to {far} ft", far = distance_ft))?;
    let hand = match bench.throw().hand {
        format::Hand::Right => physics::lane::Hand::Right,
        format::Hand::Left => physics::lane::Hand::Left,
    };
    Ok(board_at(hand, x_in * M_PER_IN))
}
