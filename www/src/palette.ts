// Colour and hatching of each part of the ball. The colours are Paul Tol's
// "light" scheme, made to stay apart for colour-blind readers and to carry
// black text and lines (P. Tol, "Colour Schemes", SRON/EPS/TN/09-002, issue
// 3.2, 2021). Hatching tells parts apart without colour.

import type { Vec3 } from "./types";

/** Cover first, then the pieces in pouring order; used again from the second on. */
const COLOURS = [
  "#dddddd", // pale grey
  "#99ddff", // light cyan
  "#ee8866", // orange
  "#eedd88", // light yellow
  "#44bb99", // mint
  "#ffaabb", // pink
  "#77aadd", // light blue
  "#bbcc33", // pear
  "#aaaa00", // olive
];

/** Hatching by number: 0 none, 1 rising lines, 2 falling lines, 3 crossed, 4 level lines, 5 upright lines, 6 dots. */
export const HATCHES = 7;

export interface Paint {
  /** As CSS writes it. */
  css: string;
  /** sRGB, 0 to 1. */
  colour: Vec3;
  hatch: number;
}

/** Paint of a part: 0 is the cover, n the n-th piece. */
export function paintOf(part: number): Paint {
  const css =
    part === 0 ? (COLOURS[0] as string) : (COLOURS[1 + ((part - 1) % (COLOURS.length - 1))] as string);
  const channel = (at: number) => Number.parseInt(css.slice(at, at + 2), 16) / 255;
  return {
    css,
    colour: [channel(1), channel(3), channel(5)],
    hatch: part === 0 ? 0 : 1 + ((part - 1) % (HATCHES - 1)),
  };
}
