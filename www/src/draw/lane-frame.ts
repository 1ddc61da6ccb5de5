// The lane's own measures, and where they fall in a drawing.
// Lengths and widths: USBC specifications as published. Arrows: common
// practice, no source.
import type { Hand } from "../types";
import { remPx } from "./use-size";

export const LANE_FT = 60;
export const PIT_FT = 62 + 10.1875 / 12;
export const WIDTH_IN = 41.5;
const BOARDS = 39;
export const BOARD_IN = WIDTH_IN / BOARDS;
export const GUTTER_IN = 9.25;
const ROW_FT = Math.sqrt(3) / 2;

/** Boards with an arrow, each with its distance: a wedge with its point at board 20. */
export const ARROWS: { board: number; y_ft: number }[] = [5, 10, 15, 20, 25, 30, 35].map((board) => ({
  board,
  y_ft: 15.5 - Math.abs(board - 20) / 5,
}));

/** Pin spots from the head pin back: a triangle 36 in on a side. */
export const PINS: { x_in: number; y_ft: number }[] = [0, 1, 2, 3].flatMap((row) =>
  Array.from({ length: row + 1 }, (_, i) => ({ x_in: (i - row / 2) * 12, y_ft: LANE_FT + row * ROW_FT })),
);

/** Boards are counted from the bowler's own side. */
export const boardToX = (board: number, hand: Hand): number =>
  (hand === "right" ? 20 - board : board - 20) * BOARD_IN;

export interface Place {
  /** Point of the drawing, in its own pixels. */
  at(x_in: number, y_ft: number): [number, number];
  /** How many times wider than true the lane is drawn. */
  stretch: number;
  width_px: number;
  height_px: number;
  /** Height of the text. */
  text_px: number;
}

/** Height of the text, in the page's measure. */
export const TEXT_REM = 0.78;
const FROM_FT = -1.6;
const TO_FT = 63.4;

/** Lays the lane into a box, pins to the right; room is left at the edges for feet and boards. */
export function place(width_px: number, height_px: number, text_px = remPx(TEXT_REM)): Place {
  const px_ft = (width_px - 12) / (TO_FT - FROM_FT);
  const px_in = (height_px - 8 - 1.45 * text_px) / (WIDTH_IN + 2 * GUTTER_IN);
  const half = WIDTH_IN / 2 + GUTTER_IN;
  return {
    width_px,
    height_px,
    text_px,
    stretch: (px_in * 12) / px_ft,
    at: (x_in, y_ft) => [8 + (y_ft - FROM_FT) * px_ft, 6 + (x_in + half) * px_in],
  };
}

/** SVG path data through points already placed. */
export const line = (points: [number, number][]): string =>
  points.map(([x, y], i) => `${i ? "L" : "M"}${x.toFixed(1)} ${y.toFixed(1)}`).join("");
