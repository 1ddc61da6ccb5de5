// The contract between the WebAssembly module and the page. Files as kept on
// disk (ball, shot) use the same keys as the files themselves; every key ends
// in its unit. What the module returns is derived and never stored.

import type { Phrase } from "./locale/worded";

export type Vec3 = [number, number, number];

export type Shape = (
  | { kind: "sphere"; diameter_in: number }
  | { kind: "ellipsoid"; size_in: Vec3 }
  | { kind: "cylinder"; diameter_in: number; height_in: number }
  | { kind: "frustum"; bottom_diameter_in: number; top_diameter_in: number; height_in: number }
  | { kind: "ring"; ring_diameter_in: number; tube_diameter_in: number }
  | { kind: "box"; size_in: Vec3 }
  | { kind: "lathe"; profile_in: [number, number][] }
) & { squash?: [number, number] };

export interface Cut {
  name?: string;
  shape: Shape;
  at_in?: Vec3;
  turn_deg?: Vec3;
}
export interface Piece extends Cut {
  name: string;
  density_g_cc: number;
  material?: string;
  cuts?: Cut[];
  /** Lines a hole: weighed, but no core under the cover. */
  insert?: boolean;
}
export interface Hole {
  name?: string;
  entry: Vec3;
  axis?: Vec3;
  diameter_in: number;
  depth_in: number;
  /** Of the drill, where an insert lines the hole. */
  drilled_diameter_in?: number;
}
/** Generic families of coverstock. */
export type Family = "polyester" | "urethane" | "reactive";
export interface Coverstock {
  name?: string;
  material?: string;
  density_g_cc: number;
  /** With the finish, changes friction on an oiled lane; says nothing in zones. */
  family?: Family;
  /** Grit of the last abrasive, 100 to 10,000, and whether polish went on top. */
  finish?: { grit: number; polished?: boolean };
}
export interface BallFile {
  format: "pithball.ball/1";
  name: string;
  note?: string;
  diameter_in: number;
  cover: Coverstock;
  pieces: Piece[];
  holes?: Hole[];
}

export type Hand = "right" | "left";
export interface Release {
  speed_mph: number;
  revs_rpm: number;
  axis_rotation_deg: number;
  axis_tilt_deg: number;
  launch_angle_deg: number;
  board: number;
}
export interface Layout {
  pin_to_pap_in: number;
  drilling_angle_deg: number;
  start_turn_deg: number;
}
/** A hole of the grip, for a finger. */
export interface Bore {
  /** Inside its insert, where it has one. */
  diameter_in: number;
  depth_in: number;
  /** Below 0: reverse. */
  forward_pitch_in?: number;
  /** Towards the PAP's side; below 0: away from it. */
  side_pitch_in?: number;
  insert?: { wall_in: number; density_g_cc: number };
}
export interface ThumbBore extends Bore {
  middle_span_in: number;
  ring_span_in: number;
}
/** The grip drilled into the ball before it is weighed for rolling. */
export interface Drilling {
  val_angle_deg: number;
  pap_over_in: number;
  pap_up_in: number;
  bridge_in: number;
  middle: Bore;
  ring: Bore;
  /** Left out for a two-handed grip without one. */
  thumb?: ThumbBore;
}
/** Hand, layout and grip in one, as kept in a file. */
export interface LayoutFile {
  format: "pithball.layout/1";
  name?: string;
  note?: string;
  hand: Hand;
  layout: Omit<Layout, "start_turn_deg">;
  drilling: Drilling;
}
export interface Zone {
  from_ft: number;
  to_ft: number;
  mu: number;
}
export interface ZonedLane {
  zones: Zone[];
}
/** Friction by film: what is left out is 0.04, 0.20 and 0.3 µm. */
export interface Friction {
  mu_oil?: number;
  mu_dry?: number;
  film_half_um?: number;
}
export interface OiledLane {
  /** In the page the oil is always here itself. */
  oil: string | OilFile;
  friction?: Friction;
}
export type Lane = ZonedLane | OiledLane;

export interface OilPattern {
  length_ft: number;
  volume_ml: number;
  /** Film inside over film outside. */
  ratio: number;
  /** Boards from either edge: thin up to the first, full from the second on. */
  thin_to_board: number;
  full_from_board: number;
  front_ft: number;
  end_share: number;
  buff_ft: number;
}
/** A pattern, or a map: a list for each foot from the foul line, in each 39
 * boards from the lane's right edge, whichever hand bowls. */
export type OilFile = {
  format: "pithball.oil/1";
  name: string;
  note?: string;
} & ({ pattern: OilPattern } | { film_um: number[][] });

export interface OilMap {
  length_ft: number;
  volume_ml: number;
  ratio: number | null;
  thickest_um: number;
  /** Oil laid on each cell, 63 feet of 39 boards: what a map file's `film_um` would be. */
  cells_um: number[][];
  /** The smooth film at the middle of each cell. */
  film_um: number[][];
  by_board_um: number[];
  by_row_um: number[];
}

/** A lane game after game; game 0 is fresh. */
export interface Worn {
  shots_a_game: number;
  spread_boards: number;
  taken_up_share: number;
  carried_ft: number;
  games: {
    game: number;
    volume_ml: number;
    /** With the oil on the lane always the same. */
    taken_away_ml: number;
    carried_down_ml: number;
    length_ft: number;
    ratio: number | null;
    /** What the throw does on its line then. */
    summary: Roll["summary"];
  }[];
  /** The oil after the last game, a map. */
  oil: OilFile;
  /** What this is: a model choice. */
  model: string;
}

export interface FrictionCurve {
  mu_oil: number;
  mu_dry: number;
  film_half_um: number;
  points: { film_um: number; mu: number }[];
}

export interface ShotFile {
  format: "pithball.shot/1";
  name?: string;
  note?: string;
  ball: string | BallFile;
  hand: Hand;
  release: Release;
  layout: Layout;
  drilling?: Drilling;
  lane: Lane;
}

/** An entry of a shelf file; its shot has its ball inside. */
export interface ShelfEntry {
  name: string;
  note?: string;
  saved_at?: string;
  shot: ShotFile;
}
export interface ShelfFile {
  format: "pithball.shelf/1";
  entries: ShelfEntry[];
}
/** A shelf file as far as it can be read; the places of `broken` are in the whole file. */
export interface ReadShelf {
  entries: ShelfEntry[];
  broken: { name: string | null; problem: Problem }[];
}

/** What is wrong with a file or an edit: where, what was found, what is accepted. */
export interface Problem {
  /** Path in the file, such as `pieces[1].density_g_cc`; empty for the whole. */
  place: string;
  found: Phrase;
  accepted: Phrase;
  /** One plain sentence. */
  message: Phrase;
}

export interface Weighed {
  mass_kg: number;
  weight_lb: number;
  cg_in: Vec3;
  inertia_kg_m2: [Vec3, Vec3, Vec3];
  rg_in: { low: number; middle: number; high: number };
  axes: { low: Vec3; middle: Vec3; high: Vec3 };
  differential_in: number;
  intermediate_differential_in: number;
  top_weight_oz: number;
  relative_error: number;
  /** The cover first, then the pieces in pouring order. */
  pieces: { name: string; mass_kg: number; volume_cc: number; rg_share: number }[];
}

/** Where an axis went; null where the ball has no one such axis. */
export interface AxisMove {
  before: Vec3 | null;
  after: Vec3 | null;
  moved_deg: number | null;
  moved_in: number | null;
  to_pin_in: number | null;
  to_pap_in: number | null;
}

/** A ball drilled for a hand, before and after. Directions are unit vectors in the ball frame. */
export interface Drilled {
  holes: (Hole & { name: string; axis: Vec3 })[];
  inserts: {
    name: string;
    hole: string;
    drilled_diameter_in: number;
    length_in: number;
    weight_oz: number;
  }[];
  marks: Record<"pin" | "pap" | "mass_bias" | "grip_centre" | "foot" | "up" | "over" | "val_pole", Vec3> &
    Record<"pin_to_grip_centre_in" | "pin_to_val_in" | "pap_to_grip_centre_in", number>;
  before: Weighed;
  after: Weighed;
  change: {
    weight_oz: number;
    drilled_out_oz: number;
    rg_in: Weighed["rg_in"];
    differential_in: number;
    intermediate_differential_in: number;
  };
  statics: {
    /** Below 0: bottom weight. */
    top_oz: number;
    /** Below 0: thumb weight. */
    finger_oz: number;
    /** Below 0: negative side weight. */
    side_oz: number;
    error_oz: number;
    verdicts: [StaticVerdict, StaticVerdict, StaticVerdict];
  };
  high_axis: AxisMove;
  low_axis: AxisMove;
  conflicts: {
    kind: "meet" | "thin_web" | "leaves_ball" | "over_pin";
    holes: string[];
    size_in: number | null;
    message: Phrase;
  }[];
  rules: Checked["rules"];
  cautions: Phrase[];
}
export type StaticVerdict = "pass" | "fail" | "too_close" | "not_applicable";

export interface Checked {
  rules: {
    rule: string;
    name: Phrase;
    verdict: "pass" | "fail" | "too_close" | "not_applicable" | "not_computed";
    found: number | null;
    error: number | null;
    part: string | null;
    /** Of static balance, what `found` is; null for other rules. */
    found_is: Phrase | null;
    unit: string;
    at_least: number | null;
    at_most: number | null;
    applies: Phrase;
    note: Phrase;
    source: Phrase;
    edition: Phrase;
  }[];
  decides: Phrase;
}

/** How much cover a ball has. Shares are of the surface that no hole takes. */
export interface Cover {
  /** null in a ball without pieces. */
  thinnest: {
    thickness_in: number;
    /** The least thickness is no more than this below it. */
    error_in: number;
    direction: Vec3;
    part: number;
    piece: string;
    piece_g_cc: number;
  } | null;
  mean_in: number;
  /** With less than `usual_in[0]`. */
  under_usual_share: number;
  /** With less than `usual_in[1]`. */
  under_most_share: number;
  /** Within 0.01 in of the thinnest place. */
  as_thin_share: number;
  directions: number;
  /** Common practice, no source. */
  usual_in: [number, number];
  beside_usual: "thinner" | "usual" | "thicker" | "no_core";
  core_share: number;
  cover_g_cc: number;
  holes: {
    name: string;
    /** How deep down the axis the first piece begins; null: not at all. */
    core_from_in: number | null;
    /** 0: the hole opens into a piece. null: there is none. */
    to_core_in: number | null;
    error_in: number | null;
  }[];
  webs: { holes: [string, string]; least_in: number; error_in: number; depth_in: number }[];
}

/** A ball at 16 to 10 lb. A rung's numbers are null where it cannot be made. */
export interface Ladder {
  rungs: {
    weight_lb: number;
    density_g_cc: number | null;
    rg_in: { low: number; middle: number; high: number } | null;
    differential_in: number | null;
    intermediate_differential_in: number | null;
    top_weight_oz: number | null;
    feasible: boolean;
    /** Densities that the material does not usually have, a sentence each. */
    unusual: Phrase[];
    limits_broken: { rule: string; name: Phrase; message: Phrase }[];
    why: Phrase | null;
    caution: Phrase | null;
    size_factor: number | null;
    changed: { name: string; density_g_cc: number | null; usual_g_cc: [number, number] | null }[];
    floats: boolean;
    ball: BallFile | null;
  }[];
  by: "density" | "size";
  parts: string[];
  floating_weight_lb: number;
}

/** How far a ball may stray from its recipe, each to either side, and what is sold as good. */
export interface PieceTolerances {
  density_percent?: number;
  /** All lengths together, about the piece's own origin. */
  size_percent?: number;
  at_in?: Vec3;
  tilt_deg?: number;
}
export interface AcceptWindow {
  at_least?: number;
  at_most?: number;
}
export interface TolerancesFile {
  format: "pithball.tolerances/1";
  name?: string;
  note?: string;
  /** The same seed gives the same balls. */
  seed: number;
  /** 10,000 where it is left out. */
  balls?: number;
  /** `even` where it is left out. */
  spread?: "even" | "bell";
  cover?: { density_percent?: number; diameter_in?: number; core_shift_in?: Vec3 };
  every_piece?: PieceTolerances;
  pieces?: (PieceTolerances & { piece: string })[];
  accept?: {
    weight_lb?: AcceptWindow;
    rg_within_in?: number;
    differential_within_in?: number;
    intermediate_differential_within_in?: number;
    top_weight_oz?: AcceptWindow;
    pin_to_cg_in?: AcceptWindow;
    low_rg_mark_within_in?: number;
    high_rg_mark_within_in?: number;
  };
}

/** A part of the balls, with two 95 % intervals. */
export interface Share {
  count: number;
  share: number;
  /** As if the balls were independent. */
  wilson_95: [number, number];
}

/** What came of pouring thousands of balls within their tolerances. */
export interface Scattered {
  ball: string;
  balls: number;
  seed: number;
  spread: "even" | "bell";
  passed: Share;
  seconds: Share;
  scrap: Share;
  /** Most first; a ball may have several. */
  reasons: { makes: "scrap" | "second"; reason: string; name: Phrase; count: number }[];
  numbers: {
    /** A fixed word, with the unit at its end. */
    number: string;
    name: Phrase;
    unit: "lb" | "in" | "oz";
    nominal: number | null;
    /** What each number may be wrong by. */
    error: number;
    count: number;
    mean: number;
    deviation: number;
    least: number;
    most: number;
    quantiles: { percent: number; at: number }[];
    bins: { from: number; to: number; count: number }[];
    accept: [number | null, number | null] | null;
    published: [number | null, number | null] | null;
  }[];
  /** Dearest first. */
  costs: {
    place: string;
    part: string | null;
    what: Phrase;
    within: number;
    unit: "%" | "in" | "deg";
    /** Sobol indices of every number, and of `passing`. */
    of: { number: string; first: number | null; total: number | null; total_error: number | null }[];
  }[];
  base_points: number;
  notes: Phrase[];
}

/** A ball's numbers, or what they change or miss by. */
export interface Figures {
  weight_lb: number;
  low_rg_in: number;
  differential_in: number;
  intermediate_differential_in: number;
  top_weight_oz: number;
}

/** A number of a ball file that can be turned up or down. */
export interface Control {
  /** Its place in the ball file; a factor on what the file says ends in `scale`, `shape.wide` or `shape.tall`. */
  control: string;
  part: string | null;
  what: Phrase;
  unit: "g/cc" | "in" | "deg" | "×";
}

export interface Moved {
  by: Figures;
  error: Figures;
}
/** Changes to first order per step; null where the control cannot go that way. */
export interface Lever extends Control {
  value: number;
  step: number;
  raised: Moved | null;
  lowered: Moved | null;
}
export interface Levers {
  ball: string;
  levers: Lever[];
  /** Places in `levers`, the one that moves the number most first. */
  ranked: Record<keyof Figures, number[]>;
  note: Phrase;
}

export interface MapSide extends Control {
  value: number;
  values: number[];
}
/** The ball over two of its controls; `rows` from the first value of `y` up. */
export interface BallMap {
  ball: string;
  x: MapSide;
  y: MapSide;
  rows: (Figures | null)[][];
  limits: {
    weight_at_most_lb: number | null;
    low_rg_at_least_in: number | null;
    high_rg_at_most_in: number | null;
    differential_at_most_in: number | null;
  };
}

/** What a core should do, and what may change for it. */
export interface TargetFile {
  format: "pithball.target/1";
  name?: string;
  note?: string;
  want: {
    weight_lb?: number;
    rg_in?: number;
    differential_in?: number;
    intermediate_differential_in?: number;
    top_weight_oz?: number;
    cover_at_least_in?: number;
  };
  /** `control` as in `Control`; `from` and `to` in its unit. */
  free: { control: string; from: number; to: number }[];
  /** True where it is left out. */
  within_limits?: boolean;
  /** 24 where it is left out. */
  starts?: number;
}
export interface SoughtCore {
  values: (Control & { value: number })[];
  file: BallFile;
  weighed: Weighed;
  cover_in: number;
  missed_by: Figures;
  /** The worst miss in parts of what counts as met: met up to 1. */
  miss: number;
}
export interface Sought {
  /** Different cores that meet the target, nearest the ball's own first. */
  answers: SoughtCore[];
  met: number;
  tried: number;
  /** Where none meets it. */
  nearest: SoughtCore | null;
  /** What stands in its way, one sentence each. */
  blocks: Phrase[];
  note: Phrase;
}

/** How a ball is poured. */
export interface Poured {
  ball: string;
  pours: {
    part: number;
    name: string;
    around: string[];
    floating: string[];
    /** From 1. */
    mould: number;
    density_g_cc: number;
    volume_cc: number;
    mixed_cc: number;
    mixed_lb: number;
    pockets_cc: number[];
    channels_in: number[];
  }[];
  moulds: number;
  waste: number;
  mixed_lb: number;
  cost_index: number;
  /** What the index is the sum of. */
  cost: { what: Phrase; count: number; each: number; cost: number }[];
  pourable: boolean;
  faults: Phrase[];
  cautions: Phrase[];
  notes: Phrase[];
}

/** A flat cut. Coordinates in inches in the plane: `u` to the right, `v` up. */
export interface Section {
  normal: Vec3;
  depth_in: number;
  u: Vec3;
  v: Vec3;
  regions: {
    /** 0 is the cover, n the n-th piece. */
    part: number;
    /** SVG path data, y down (that is −v), closed loops, fill-rule evenodd. */
    path: string;
    area_in2: number;
    /** A point well inside the region, [u, v]; a place for its label. */
    label_at: [number, number];
  }[];
  /** Narrowest stretch of cover straight out from the middle of the cut, [u, v] to [u, v]. */
  narrowest: {
    thickness_in: number;
    core_in: [number, number];
    surface_in: [number, number];
  } | null;
}

export type Phase = "skid" | "hook" | "roll";
export interface Sample {
  t_s: number;
  x_in: number;
  y_ft: number;
  speed_mph: number;
  slip_mph: number;
  omega_rad_s: Vec3;
  axis_body: Vec3;
  contact_body: Vec3;
  normal_n: number;
  /** Degrees a foot of path, positive towards the pocket side. */
  curvature_deg_ft: number;
  /** Measured as at the release; null without spin. */
  axis_rotation_deg: number | null;
  axis_tilt_deg: number | null;
  /** Friction under the ball, and the oil there; null where friction is given in zones. */
  mu: number;
  film_um: number | null;
  phase: Phase;
  /** Turns ball axes into lane axes: unit quaternion [w, x, y, z]. */
  turn: [number, number, number, number];
}
/** The width of the band of track rings at one place of the ball. */
export interface BandWidth {
  at: Vec3;
  width_in: number;
}
/** The rings the lane leaves on the ball, and the holes they pass. */
export interface Track {
  /** The points of the ball as far along `axis` as `height_in`. */
  rings: { t_s: number; axis: Vec3; height_in: number }[];
  widest: BandWidth | null;
  bow_ties: [BandWidth, BandWidth] | null;
  holes: {
    hole: string;
    /** Below 0: over the hole. */
    clearance_in: number;
    turn: number;
    over_turns: number[];
    close: boolean;
  }[];
}
export interface PhaseSpan {
  phase: Phase;
  from_ft: number;
  to_ft: number;
  length_ft: number;
  time_s: number;
  speed_lost_mph: number;
  revs_gained_rpm: number;
  /** Positive towards the pocket side. */
  turned_deg: number;
}
export interface Roll {
  /** The phases there are, in order. */
  phases: PhaseSpan[];
  track: Track;
  summary: {
    time_s: number | null;
    board_at_pins: number | null;
    entry_angle_deg: number | null;
    speed_at_pins_mph: number | null;
    revs_at_pins_rpm: number | null;
    breakpoint: { board: number; distance_ft: number };
    hook_start_ft: number | null;
    roll_start_ft: number | null;
    axis_migration_deg: number | null;
    flare_in: number | null;
    gutter: boolean;
    /** Where the run ends: 60 ft, or where the ball fell in the gutter. */
    end_ft: number;
    /** Bound on the error of board (boards) and angle (degrees) at the pins. */
    error: { board: number; angle_deg: number };
  };
  samples: Sample[];
}

/** What a shot came to, or by how much two differ. */
export interface Outcome {
  /** Boards from breakpoint to pins. */
  hook_boards: number;
  board_at_pins: number;
  entry_angle_deg: number;
  breakpoint_board: number;
  breakpoint_ft: number;
}
export type Property =
  | "rg"
  | "differential"
  | "intermediate_differential"
  | "weight"
  | "size"
  | "centre_of_gravity"
  | "core_axes"
  | "cover"
  | "layout"
  | "release"
  | "lane";
interface Compared {
  label: string;
  ball: string;
  revs_rpm: number;
  outcome: Outcome | null;
}
/** Why two shots differ: the parts sum to the whole. */
export interface WhyTold {
  sentence: Phrase;
  hand: "revs" | "effort";
  a: Compared;
  b: Compared;
  whole: Outcome | null;
  parts:
    | {
        property: Property;
        from: number | null;
        to: number | null;
        unit: "in" | "lb" | null;
        part: Outcome;
      }[]
    | null;
  reason: Phrase | null;
}

/** What a throw comes to, held to the pocket's window. */
export type Kind = "pocket" | "shallow" | "steep" | "light" | "high" | "lost";
export type Shares = Record<Kind, number>;
/** Board and angle of the throws apart, each whatever the other does. */
export type Apart = Record<"on_boards" | "at_angles", number>;
export interface Stretch {
  from: number;
  to: number;
  width: number;
  /** The map ends before the room does, at its beginning, at its end. */
  open: [boolean, boolean];
  holds: boolean;
}
/** Room for error about a shot. */
export interface Area {
  sentence: Phrase;
  throws: number;
  window: { boards: [number, number]; entry_angles_deg: [number, number]; source: Phrase };
  shot: { board_at_pins: number | null; entry_angle_deg: number | null; kind: Kind };
  board_room: Stretch | null;
  launch_angle_room_deg: Stretch | null;
  map: {
    boards: number[];
    launch_angles_deg: number[];
    /** For each launch angle, for each board. */
    board_at_pins: (number | null)[][];
    entry_angle_deg: (number | null)[][];
    kinds: Kind[][];
    shares: Shares;
    apart: Apart;
  };
  scatter: {
    throws: number;
    spread_board: number;
    spread_launch_angle_deg: number;
    spread_speed_mph: number;
    spread_revs_rpm: number;
    shares: Shares;
    apart: Apart;
  };
}

/** What the 3D picture shows; the page owns it, the module keeps nothing. */
export interface Look {
  /** CSS pixels; the module gives the canvas as many device pixels as they are. */
  width_px: number;
  height_px: number;
  /** 0: the eye stands on −y, +x to the right; it walks towards +x as yaw grows. */
  yaw_deg: number;
  pitch_deg: number;
  zoom: number;
  /** Saw plane; what lies on the side `normal` points to is taken away. null: whole ball. */
  plane: { normal: Vec3; depth_in: number } | null;
  /** 0 together to 1 fully pulled apart along the pin axis. */
  exploded: number;
  /** Parts not drawn, by number (0 is the cover). */
  hidden: number[];
  highlighted: number | null;
  markers: boolean;
  dark: boolean;
  /** Colour (sRGB 0..1) and hatching of each part, cover first. */
  paint: { colour: Vec3; hatch: number }[];
  /** Paints the whole ball, uncut, by the thickness of its cover. */
  cover?: {
    /** Eight limits between nine classes. */
    limits_in: readonly number[];
    colours: Vec3[];
    /** Directions to be told of as `spot_0`, `spot_1` …; the first bears a sign. */
    spots: Vec3[];
  };
}
export interface Pick {
  part: number;
  /** Where in the ball, before its parts were pulled apart. */
  at_in: Vec3;
}
/** A mark in the 3D picture, for the page to set its name beside. */
export interface MarkPlace {
  /** Pin, centre of gravity, upper end of the low-RG axis, +x end of the high-RG axis. */
  mark: "pin" | "cg" | "low_rg" | "high_rg" | "pap" | "grip_centre" | `spot_${number}`;
  /** CSS pixels from the canvas's top left. */
  x_px: number;
  y_px: number;
  /** False where material stands before the mark. */
  visible: boolean;
}

/** Bound to `crates/web`, its feature `first`. Every throwing call throws a `Problem`. */
export interface WasmBall {
  weigh(): Weighed;
  check(): Checked;
  cover(): Cover;
  /** Inches of cover in one direction; NaN: a hole. */
  cover_along(direction: Vec3): number;
  controls(): Control[];
  /** The ball's file with two controls at other values. */
  turned(x: string, x_value: number, y: string, y_value: number): BallFile;
  /** Tolerances to begin with (model choice). */
  usual_tolerances(): TolerancesFile;
  section(normal: Vec3, depth_in: number): Section;
  /** `shot.ball` is ignored. */
  roll(shot: Omit<ShotFile, "ball">): Roll;
  /** This ball drilled as the shot says, or as it is: a ball of its own, to be freed. Throws a `Problem`. */
  drilled(shot: ShotFile | Omit<ShotFile, "ball">): WasmBall;
  /** What drilling did; null for a ball not drilled by a shot. */
  drilling(): Drilled | null;
  /** The ball's file with the holes and inserts that were drilled. */
  file(): BallFile;
  /** Part at a point of the ball in inches; -1 outside it or in a hole. */
  part_at(at_in: Vec3): number;
  free(): void;
}
/** The ball of the second module, the feature `more`: what workers work out of it. */
export interface WorkBall {
  cover(): Cover;
  section(normal: Vec3, depth_in: number): Section;
  /** `shot.ball` is ignored. */
  roll(shot: Omit<ShotFile, "ball">): Roll;
  /** Row by row from the pin down, from +x round, two numbers a place: inches of cover (the radius: no core below)
   * and inches to the nearest hole's wall (below 0: it opens here; infinite: no hole). */
  cover_map(rows: number, columns: number): Float64Array;
  /** Changes the parts of these numbers alone, in proportion; 0 is the cover. */
  ladder(parts: Uint32Array, by_size: boolean): Ladder;
  /** What controls `from..to` move; any worker may do any of them. */
  levers(from: number, to: number): Lever[];
  all_levers(): Levers;
  /** Rows `from..to` of a map; any worker may do any of them. */
  map_rows(
    x: string,
    x_range: Float64Array,
    y: string,
    y_range: Float64Array,
    count: number,
    from: number,
    to: number,
  ): BallMap["rows"];
  /** The map without its rows. */
  map(x: string, x_range: Float64Array, y: string, y_range: Float64Array, count: number): BallMap;
  pour(waste?: number): Poured;
  /** The shot's oil over 1 to 40 games of this throw; some milliseconds a game. */
  wear(shot: Omit<ShotFile, "ball">, games: number): Worn;
  free(): void;
}
export interface WasmView {
  /** Draws at once, into the canvas; says where the marks are. Does nothing while the context is lost. */
  draw(ball: WasmBall, look: Look): MarkPlace[];
  /** What is under a canvas point, from the top left in CSS pixels. */
  pick(ball: WasmBall, look: Look, x_px: number, y_px: number): Pick | null;
  free(): void;
}
/** One shot thrown again and again; `area` takes all parts, one after another. */
export interface WasmThrows {
  readonly count: number;
  part(from: number, to: number): Float64Array;
  area(parts: Float64Array): Area | null;
  free(): void;
}
/** Units of work that any worker may do; put together in their order they are the same to the bit. */
export interface WasmScatter {
  units(): number;
  /** Results of units `from..to`. */
  run(from: number, to: number): Float64Array;
  /** From the results of all units, one after the other. */
  merge(results: Float64Array): Scattered;
  free(): void;
}
/** Starts that any worker may try; the results of those done so far, in their order, can be put together. */
export interface WasmSeek {
  units(): number;
  run(from: number, to: number): Float64Array;
  merge(results: Float64Array): Sought;
  free(): void;
}

/** A part of a sentence; a value keeps its kind, so that it is shown in the reader's units. */
export type Said =
  | { kind: "text"; text: Phrase }
  | {
      kind: "value";
      value: number;
      quantity: LessonQuantity;
      decimals: number | null;
      /** Of a difference the two numbers, the second taken from the first. */
      between?: [number, number];
    }
  | { kind: "term"; word: string; text: Phrase }
  | { kind: "strong" | "emphasis"; said: Said[] };
/** The kinds that `units.ts` knows by the same names. */
export type LessonQuantity =
  | "size"
  | "rg"
  | "weight"
  | "imbalance"
  | "density"
  | "volume"
  | "oil"
  | "film"
  | "count"
  | "angle"
  | "speed"
  | "distance"
  | "revs"
  | "time"
  | "board"
  | "friction"
  | "ratio"
  | "share";
export type ProseBlock =
  | { kind: "paragraph"; said: Said[] }
  | { kind: "list"; ordered: boolean; items: Said[][] };

/** A lesson before it is worked through. */
export interface LessonDoc {
  id: string;
  title: string;
  course: string;
  order: number;
  aim: ProseBlock[];
  minutes: number;
  words: string[];
  teacher: ProseBlock[];
  steps: LessonStep[];
}
export interface LessonStep {
  id: string;
  title: string;
  kind: "explore" | "predict" | "do" | "observe" | "explain";
  /** The rooms that are shown; null: all. */
  rooms: ("bench" | "saw" | "scale" | "lane")[] | null;
  /** The only places that may be changed, with what lies below each; null: everything. */
  free: string[] | null;
  asks:
    | { kind: "option"; options: number }
    | { kind: "number"; quantity: LessonQuantity }
    | { kind: "path" }
    | null;
}
/** A step with the numbers on the bench filled in. */
export interface ShownStep {
  text: ProseBlock[];
  watch: { what: Said[]; start: Said; now: Said }[];
  options: Said[][];
  /** Three, or none where there is nothing to do. */
  hints: Said[][];
}
export interface CheckedStep {
  passed: boolean;
  /** A sentence each. */
  missing: Said[][];
  /** What to say of the way taken; null where nothing fits. */
  wrong: Said[] | null;
  /** Places that were changed and may not be. */
  fixed: string[];
  /** What to say once it is passed. */
  done: Said[] | null;
}
/** An answer; points are `[board, ft]`, one beyond the other. */
export type Guess = { option: number } | { number: number } | { path: [number, number][] };
export interface AnsweredStep {
  outcome: "right" | "wrong" | "low" | "high";
  say: Said[];
  truth: { option: number | null } | { number: Said } | { path: [number, number][] };
  /** The bench afterwards. */
  doc: { ball: BallFile; shot: Omit<ShotFile, "ball"> };
}
/** A mistake in a lesson, line and column from 1. */
export interface LessonProblem extends Problem {
  line: number;
  column: number;
}
type Bench = { ball: BallFile; shot: Omit<ShotFile, "ball"> };
export interface WasmLesson {
  about(): LessonDoc;
  /** The bench as a step opens; `left` is what the step before left there, null for the first. */
  opens(step: number, left: Bench | null): Bench;
  /** The bench as the step ends by the lesson's own solution. */
  ends(step: number, start: Bench): Bench;
  shown(step: number, start: Bench, now: Bench): ShownStep;
  check(step: number, start: Bench, now: Bench): CheckedStep;
  answer(step: number, start: Bench, guess: Guess): AnsweredStep;
  free(): void;
}

/** What one learner did in lessons. */
export interface ProgressFile {
  format: "pithball.progress/1";
  learner: string;
  lessons: {
    id: string;
    title: string;
    of_steps: number;
    finished_at?: string;
    steps: {
      id: string;
      title: string;
      passed: boolean;
      tries?: number;
      hints?: number;
      /** The learner was shown the lesson's own way. */
      shown?: boolean;
      answer?: {
        outcome: "right" | "wrong" | "low" | "high";
        said: string;
        option?: number;
        number?: number;
        path?: [number, number][];
      };
    }[];
  }[];
}
export interface ClassTable {
  lessons: { id: string; title: string; begun: number; finished: number }[];
  learners: {
    file: string;
    learner: string;
    finished: number;
    /** In the order of `lessons` above; null where it was not begun. */
    lessons: ({
      passed: number;
      of_steps: number;
      finished: boolean;
      right: number;
      predicted: number;
      hints: number;
      tries: number;
      shown: number;
    } | null)[];
  }[];
  /** The most often mistaken first. */
  questions: {
    lesson: string;
    lesson_title: string;
    step: string;
    title: string;
    answered: number;
    right: number;
    wrong: { said: string; count: number }[];
  }[];
  /** The one with the most failed tries first. */
  tasks: {
    lesson: string;
    lesson_title: string;
    step: string;
    title: string;
    begun: number;
    passed: number;
    tries: number;
    hints: number;
  }[];
}
/** What the first picture and every edit need. */
export interface WasmModule {
  /** Revs of `b` from a hand whose effort gives the ball of `a` the revs that `b` names. */
  same_effort_revs_rpm(a: ShotFile, b: ShotFile): number;
  /** Checks a target file; returns it or throws a `Problem`. */
  read_target(file: TargetFile | string): TargetFile;
  /** Checks a tolerances file; returns it or throws a `Problem`. */
  read_tolerances(file: TolerancesFile | string): TolerancesFile;
  /** `new Ball(file)` takes a ball file's object or text; throws a `Problem`. */
  Ball: new (
    file: BallFile | string,
  ) => WasmBall;
  /** Checks a shot file's object or text; returns it or throws a `Problem`. */
  read_shot(file: ShotFile | string): ShotFile;
  /** The same for a layout file. */
  read_layout(file: LayoutFile | string): LayoutFile;
  /** Reads a shelf file's text entry by entry; throws a `Problem` with the whole. */
  read_shelf(text: string): ReadShelf;
  /** The fragment, without its #, that holds a shot and its ball; throws a `Problem`. */
  link(file: ShotFile | string): string;
  /** The shot, its ball inside, that an address or its fragment holds; throws a `Problem`. */
  unlink(link: string): ShotFile;
  /** Checks an oil file's object or text; returns it or throws a `Problem`. */
  read_oil(file: OilFile | string): OilFile;
  oil_map(file: OilFile): OilMap;
  /** Friction by film of a ball with this cover; throws a `Problem` from `cover` or `friction` on. */
  friction_curve(cover: Coverstock, friction: Friction | null): FrictionCurve;
  /** Throws a string where WebGL2 cannot be had. */
  View: new (
    canvas: HTMLCanvasElement,
  ) => WasmView;
}

/** What is fetched in the quiet after the first picture: lessons, and what workers do. */
export interface MoreModule {
  /** Reads a lesson's text; `files` has what it may name by path, as `balls/no-1-simple.ball.json`.
   * Throws a list of `LessonProblem`. */
  Lesson: new (
    text: string,
    files: Record<string, unknown>,
  ) => WasmLesson;
  /** Everything wrong with a lesson, its soundness too; empty for a sound one. */
  lesson_problems(text: string, files: Record<string, unknown>): LessonProblem[];
  /** The names that a lesson's expressions know; a name with something in brackets shows an example of it. */
  lesson_names(): { name: string; unit: string; words: Phrase }[];
  /** Checks a progress file; returns it or throws a `Problem`. */
  read_progress(file: ProgressFile | string): ProgressFile;
  /** Progress files put together, each with what it is called. */
  class_table(names: string[], files: (ProgressFile | string)[]): ClassTable;
  /** `new Ball(file)` takes a ball file's object or text; throws a `Problem`. */
  Ball: new (
    file: BallFile | string,
  ) => WorkBall;
  /** Each shot with its ball inside; the labels are what the sentence calls them. Throws a `Problem`. */
  why(a: ShotFile, b: ShotFile, same_effort: boolean, label_a: string, label_b: string): WhyTold;
  /** Takes a shot with its ball inside; throws a `Problem`. */
  Throws: new (
    file: ShotFile | string,
  ) => WasmThrows;
  /** Throws a `Problem` whose place begins with `ball` or `target`. */
  Seek: new (
    ball: BallFile | string,
    target: TargetFile | string,
  ) => WasmSeek;
  /** Throws a `Problem` whose place begins with `ball` or `tolerances`. */
  Scatter: new (
    ball: BallFile | string,
    tolerances: TolerancesFile | string,
  ) => WasmScatter;
}
