// Circles on the unit sphere and how they are seen.
import type { Vec3 } from "../types";
import { add, cross, dot, scale, unit } from "./vectors";

/** A point of the sphere to the picture: right, down, and towards the viewer. */
export type Seen = (at: Vec3) => Vec3;

/** Seen from far off in this direction with `up` upwards, a radius drawn `r` long. */
export function seenFrom(front: Vec3, up: Vec3, r: number): Seen {
  const right = cross(up, front);
  return (at) => [r * dot(at, right), -r * dot(at, up), r * dot(at, front)];
}

const STEPS = 96;

/** The circle of all points as far along `axis` as `height`, closed. */
export function circleAt(axis: Vec3, height: number): Vec3[] {
  const beside = Math.sqrt(Math.max(0, 1 - height * height));
  const x = unit(cross(axis, Math.abs(axis[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0]));
  const y = cross(axis, x);
  return Array.from({ length: STEPS + 1 }, (_, n) => {
    const turn = (2 * Math.PI * n) / STEPS;
    return add(
      scale(axis, height),
      add(scale(x, beside * Math.cos(turn)), scale(y, beside * Math.sin(turn))),
    );
  });
}

/** The great circle square to `pole`. */
export const greatCircle = (pole: Vec3): Vec3[] => circleAt(pole, 0);

/** Paths of a line on the sphere, split into the near and the far side. */
export function outline(points: Vec3[], see: Seen): { near: string; far: string } {
  const out = { near: "", far: "" };
  let last: "near" | "far" | null = null;
  for (const point of points) {
    const [x, y, depth] = see(point);
    const side = depth >= 0 ? "near" : "far";
    const text = `${x.toFixed(1)} ${y.toFixed(1)}`;
    if (last !== null && last !== side) out[last] += `L${text}`;
    out[side] += `${last === side ? "L" : "M"}${text}`;
    last = side;
  }
  return out;
}
