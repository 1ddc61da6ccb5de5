// What follows from a ball: weighed, drilled, checked, covered, made lighter, sawn.

import type { Phrase } from "../locale/worded";
import type { BallFile, Hole, Vec3 } from "./file";

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
