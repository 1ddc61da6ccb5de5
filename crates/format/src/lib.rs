//! The files people keep, and the documents the programs print.
//!
//! Ball, shot and oil files are read into plain types, checked, and turned
//! into physics types; nothing is repaired and nothing is altered: what is read
//! is written back with the same content. Every mistake is a [`Problem`] that
//! names the place, what was found there and what is accepted. A shot with its
//! ball also goes into a web address and back. No IO: text in, types out.

mod ball;
mod build;
mod checked;
mod controls;
mod covered;
mod digits;
mod drilled;
mod drilling;
mod explained;
mod json;
mod laddered;
mod laid;
mod lane;
pub mod lesson;
mod levered;
mod limits;
mod link;
mod materials;
mod node;
mod oil;
mod oiled;
mod phrase;
mod poured;
mod problem;
mod progress;
mod recipe;
mod rolled;
mod scattered;
mod schema;
mod sectioned;
mod shape;
mod shelf;
mod shot;
mod target;
mod thrown;
mod tolerances;
mod tracked;
mod tree;
mod varied;
mod weighed;
mod weighed_shot;
mod worn;

pub use ball::{BallFile, BallVersion, Cover, Cut, Family, Finish, Hole, Piece};
pub use checked::{CheckedDoc, RuleDoc};
pub use controls::{ControlDoc, FiguresDoc};
pub use covered::{CoverDoc, HoleWallDoc, ThinnestDoc, WebDoc};
pub use digits::digits;
pub use drilled::{AxisMoveDoc, ChangeDoc, ConflictDoc, DrilledDoc, InsertDoc, MarksDoc, StaticsDoc};
pub use drilling::{Bore, Drilling, Insert, ThumbBore};
pub use explained::{HandDoc, OutcomeDoc, PartDoc, PropertyDoc, ShotDoc, WhyDoc, WhyProblem};
pub use json::not_json;
pub use laddered::{BrokenDoc, ChangedDoc, LadderDoc, RungDoc};
pub use laid::{DrilledBall, Laid, LayoutFile, LayoutVersion, PinLayout};
pub use lane::{Friction, Lane, OilRef, OiledLane, Zone, ZonedLane};
pub use levered::{AxisAsked, AxisDoc, BallMapDoc, LeverDoc, LeversDoc, LimitsDoc, MAP_VALUES, MovedDoc, RankedDoc};
pub use link::{MAX_LINK_CHARS, MAX_LINK_JSON_BYTES, MAX_LINK_TEXT_CHARS};
pub use oil::{Oil, OilFile, OilVersion, Pattern};
pub use oiled::{CurvePointDoc, FrictionCurveDoc, OilMapDoc};
pub use phrase::{Phrase, in_parts};
pub use poured::{CostPartDoc, PourDoc, PouredDoc};
pub use problem::{Problem, subject};
pub use progress::{
    GivenAnswer, GivenOutcome, LessonProgress, MAX_PROGRESS_CHARS, MAX_PROGRESS_LESSONS, MAX_PROGRESS_POINTS,
    MAX_PROGRESS_STEPS, ProgressFile, ProgressVersion, StepProgress,
};
pub use rolled::{
    BreakpointDoc, EndDoc, ErrorDoc, PhaseDoc, PhaseSpanDoc, RolledDoc, SAMPLE_INTERVAL_S, SampleDoc, SummaryDoc,
};
pub use scattered::{
    BinDoc, CostDoc, DearnessDoc, DistributionDoc, QuantileDoc, ReasonDoc, Scatter, ScatterProblem, ScatteredDoc,
    ShareDoc,
};
pub use schema::{
    ball_schema, layout_schema, lesson_schema, oil_schema, progress_schema, shelf_schema, shot_schema, target_schema,
    tolerances_schema,
};
pub use sectioned::{NarrowestDoc, RegionDoc, SectionDoc, part_number};
pub use shape::{Form, Shape};
pub use shelf::{
    BrokenEntry, MAX_ENTRY_NAME_CHARS, MAX_ENTRY_NOTE_CHARS, MAX_SHELF_BYTES, MAX_SHELF_ENTRIES, ReadShelf, ShelfEntry,
    ShelfFile, ShelfVersion,
};
pub use shot::{BallRef, Hand, Layout, Release, ShotFile, ShotVersion, Throw};
pub use target::{AnswerDoc, FreeDoc, SeekProblem, Seeker, SoughtDoc, TargetFile, TargetVersion, ValueDoc, Want};
pub use tolerances::{
    Accept, AcceptWindow, CoverTolerances, NamedTolerances, PieceTolerances, SpreadWord, TolerancesFile,
    TolerancesVersion,
};
pub use tracked::{PassDoc, RingDoc, TrackDoc, WidthDoc};
pub use varied::{ApartDoc, AreaDoc, ArrivalDoc, KindDoc, MapDoc, RoomDoc, ScatterDoc, SharesDoc, WindowDoc};
pub use weighed::{Axes, PieceShare, RgIn, WeighedDoc};
pub use weighed_shot::WeighedShot;
pub use worn::{MAX_GAMES, WornDoc, WornGameDoc, wear};

/// Largest file that is read, in bytes (4 MiB).
pub const MAX_FILE_BYTES: usize = 4 << 20;
/// Deepest nesting of lists and objects that is read.
pub const MAX_NESTING: usize = 64;
/// Most pieces, cuts and holes in one ball, all together.
pub const MAX_SOLIDS: usize = 256;
/// Fewest points of a lathe profile.
pub const MIN_PROFILE_POINTS: usize = 3;
/// Most points of a lathe profile.
pub const MAX_PROFILE_POINTS: usize = 10_000;
