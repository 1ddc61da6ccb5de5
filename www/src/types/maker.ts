// The maker's files and what comes of them: balls poured, sought, turned up or down.

import type { Phrase } from "../locale/worded";
import type { Weighed } from "./ball";
import type { BallFile, Vec3 } from "./file";

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
