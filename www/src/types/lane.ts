// What follows from a shot: its roll, its track, why two differ, room for error, wear.

import type { Phrase } from "../locale/worded";
import type { OilFile, Vec3 } from "./file";

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
