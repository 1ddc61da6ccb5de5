// Saw planes: the presets, and a plane as two angles and a depth.
import { cross, dot, scale, unit } from "../../draw/vectors";
import type { View } from "../../store";
import type { BallFile, Vec3 } from "../../types";
import { digits } from "../../units";
import { say } from "./say";

export type Plane = NonNullable<View["plane"]>;

/** Which way the plane faces: round the pin axis, and up towards the pin. */
export interface Facing {
  round_deg: number;
  up_deg: number;
}

const RAD = Math.PI / 180;

/** Each with the name of its text. */
export const PRESETS: { key: string; name: string; facing: Facing }[] = [
  { key: "along", name: "saw-along", facing: { round_deg: 0, up_deg: 0 } },
  { key: "across", name: "saw-across", facing: { round_deg: 0, up_deg: 90 } },
  { key: "aslant", name: "saw-aslant", facing: { round_deg: 30, up_deg: 35 } },
];

const tidy = (value: number): number => (Math.abs(value) < 1e-12 ? 0 : value);

export function normalOf({ round_deg, up_deg }: Facing): Vec3 {
  const level = Math.cos(up_deg * RAD);
  const normal: Vec3 = [
    level * Math.cos(round_deg * RAD),
    level * Math.sin(round_deg * RAD),
    Math.sin(up_deg * RAD),
  ];
  return unit([tidy(normal[0]), tidy(normal[1]), tidy(normal[2])]);
}

/** The angles of a normal; `round_deg` is 0 where the plane lies square to the pin axis. */
export function facingOf(normal: Vec3): Facing {
  const [x, y, z] = unit(normal);
  const level = Math.hypot(x, y);
  return {
    round_deg: level < 1e-9 ? 0 : Math.atan2(y, x) / RAD,
    up_deg: Math.atan2(z, level) / RAD,
  };
}

/**
 * The cut down the deepest hole's axis and through the mouth of the hole farthest
 * from it, or towards the pin where there is one hole; null without holes.
 */
export function throughHoles({ holes, diameter_in }: BallFile): Plane | null {
  const entries = (holes ?? []).map(({ entry }) => unit(entry));
  const deepest = (holes ?? []).reduce(
    (best, { depth_in }, n, all) => (depth_in > (all[best]?.depth_in ?? 0) ? n : best),
    0,
  );
  const [hole, entry] = [holes?.[deepest], entries[deepest]];
  if (!hole || !entry) return null;
  const axis = unit(hole.axis ?? scale(entry, -1));
  const others = entries.filter((_, n) => n !== deepest);
  const farthest = others.toSorted((a, b) => dot(a, entry) - dot(b, entry))[0];
  const towards: Vec3 = farthest
    ? [farthest[0] - entry[0], farthest[1] - entry[1], farthest[2] - entry[2]]
    : [0, 0, 1];
  const across = cross(axis, towards);
  // A hole along the pin axis: any plane with that axis in it.
  const square = Math.hypot(...across) > 1e-6 ? unit(across) : unit(cross(axis, [0, 1, 0]));
  const normal = square[0] < 0 ? scale(square, -1) : square;
  return { normal, depth_in: dot(normal, entry) * (diameter_in / 2) };
}

/** The preset a normal belongs to, if any. */
export function presetOf(normal: Vec3): string | null {
  const same = PRESETS.find(({ facing }) => {
    const other = normalOf(facing);
    return Math.hypot(normal[0] - other[0], normal[1] - other[1], normal[2] - other[2]) < 1e-6;
  });
  return same?.key ?? null;
}

/** The same cut with the other half kept. */
export const flipped = (plane: Plane): Plane => ({
  normal: scale(plane.normal, -1),
  depth_in: -plane.depth_in || 0,
});

/** How the plane lies, in words that complete "cut …". */
export function planeWords(plane: Plane, length: (inches: number) => string): string {
  const { up_deg, round_deg } = facingOf(plane.normal);
  const where = {
    at: Math.abs(plane.depth_in) < 0.005 ? "centre" : "off",
    distance: length(Math.abs(plane.depth_in)),
    turn: digits(round_deg, 0),
    lean: digits(Math.abs(up_deg), 0),
  };
  if (Math.abs(up_deg) > 89.9) return say("saw-plane-across", where);
  const turned = Math.abs(round_deg) >= 0.05;
  if (Math.abs(up_deg) < 0.05) return say(turned ? "saw-plane-along-turned" : "saw-plane-along", where);
  return say(turned ? "saw-plane-aslant-turned" : "saw-plane-aslant", where);
}
