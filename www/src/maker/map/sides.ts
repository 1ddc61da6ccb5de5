// What is mapped over what: two controls and their ranges.

import type { BallFile, Control } from "../../types";
import { usualRange, valueAt } from "../controls";
import type { MapSides } from "./asked";

export interface Side {
  control: Control;
  range: [number, number];
}

/** Values along each side: first a few, which the table shows too, then many between them. */
export const COARSE = 9;
export const FINE = 33;

/** The density and the width of the ball's densest piece, to begin with. */
export function usualSides(ball: BallFile, controls: Control[]): [Side, Side] | null {
  const densest = ball.pieces.reduce(
    (best, piece, at) => (piece.density_g_cc > (ball.pieces[best]?.density_g_cc ?? 0) ? at : best),
    0,
  );
  const wanted = [
    `pieces[${densest}].density_g_cc`,
    `pieces[${densest}].shape.wide`,
    `pieces[${densest}].scale`,
    "cover.density_g_cc",
    "diameter_in",
  ];
  const [x, y] = wanted.flatMap((place) => controls.find(({ control }) => control === place) ?? []);
  return x && y ? [sideOf(ball, x), sideOf(ball, y)] : null;
}

/** A control over its usual range, the ball's own value in the middle. */
export function sideOf(ball: BallFile, control: Control): Side {
  return { control, range: usualRange(ball, control) };
}

export const asked = ([x, y]: [Side, Side], count: number): MapSides => ({
  x: x.control.control,
  x_range: x.range,
  y: y.control.control,
  y_range: y.range,
  count,
});

/** Where the ball itself is, in parts of the ranges. */
export function here(ball: BallFile, sides: [Side, Side]): [number, number] {
  const part = ({ control, range: [from, to] }: Side) =>
    (valueAt(ball, control.control) - from) / (to - from);
  return [part(sides[0]), part(sides[1])];
}
