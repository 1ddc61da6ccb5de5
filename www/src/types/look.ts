// What the 3D picture is asked to show, and what it tells.

import type { Vec3 } from "./file";

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
