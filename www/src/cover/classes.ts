// Classes of cover thickness, the same for every ball, so that two maps can be
// compared: from the thinnest, dark, to the thickest, pale. The colours are Paul
// Tol's "YlOrBr" scheme, whose lightness alone tells them apart (P. Tol, "Colour
// Schemes", SRON/EPS/TN/09-002, issue 3.2, 2021).

import type { Units } from "../store";
import type { Vec3 } from "../types";
import { digits, measure, written } from "../units";
import { say } from "./say";

/** Where one class ends and the next begins, in inches. */
export const LIMITS_IN = [0.5, 0.625, 0.75, 0.875, 1, 1.25, 1.5, 2] as const;

const COLOURS = [
  "#662506",
  "#993404",
  "#cc4c02",
  "#ec7014",
  "#fb9a29",
  "#fec44f",
  "#fee391",
  "#fff7bc",
  "#ffffe5",
] as const;

export interface Class {
  css: string;
  /** sRGB, 0 to 1. */
  colour: Vec3;
  from_in: number;
  /** Infinity for the thickest. */
  to_in: number;
  /** Whether pale ink reads better on it. */
  dark: boolean;
}

const channel = (css: string, at: number): number => Number.parseInt(css.slice(at, at + 2), 16) / 255;

export const CLASSES: Class[] = COLOURS.map((css, n) => ({
  css,
  colour: [channel(css, 1), channel(css, 3), channel(css, 5)],
  from_in: LIMITS_IN[n - 1] ?? 0,
  to_in: LIMITS_IN[n] ?? Number.POSITIVE_INFINITY,
  dark: n < 3,
}));

/** A limit as it is written in the reader's units: eighths and quarters of an inch in full. */
export function limitText(inches: number, units: Units): string {
  const { factor } = measure("size", units);
  return units === "metric" ? digits(inches * factor, 1) : written(String(inches));
}

/** What a class holds, in the reader's units. */
export function classText({ from_in, to_in }: Class, units: Units): string {
  const { unit } = measure("size", units);
  if (from_in === 0) return say("cover-under", { limit: limitText(to_in, units), unit });
  if (to_in === Number.POSITIVE_INFINITY)
    return say("cover-or-more", { limit: limitText(from_in, units), unit });
  return say("cover-range", { from: limitText(from_in, units), to: limitText(to_in, units), unit });
}
