// What people keep: ball, layout, oil, shot and shelf with the keys of the files
// themselves, every key with its unit at its end; and what is wrong with one.

import type { Phrase } from "../locale/worded";

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
