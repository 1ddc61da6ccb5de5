// What a probe would meet on its way from the rim inwards, read off the ball.
import { add, scale } from "../../draw/vectors";
import type { Section, Vec3, WasmBall } from "../../types";

export interface Layer {
  /** 0 is the cover, n the n-th piece; -1 a drilled hole. */
  part: number;
  thick_in: number;
}

const STEP_IN = 0.02;
const CLOSE_IN = 1e-4;

/**
 * Layers met from the rim to the middle of the cut along `direction` (a unit
 * vector in the plane). Boundaries are found to 0.0001 in; a layer thinner
 * than 0.02 in may be missed.
 */
export function walkIn(ball: WasmBall, section: Section, direction: Vec3, radius_in: number): Layer[] {
  const half = Math.sqrt(Math.max(0, radius_in ** 2 - section.depth_in ** 2));
  const middle = scale(section.normal, section.depth_in);
  const partAt = (out_in: number) => ball.part_at(add(middle, scale(direction, out_in)));
  const layers: Layer[] = [];
  let from = half;
  let part = partAt(half - CLOSE_IN);
  for (let out = half - STEP_IN; out > -STEP_IN; out -= STEP_IN) {
    const at = Math.max(0, out);
    const next = partAt(at);
    if (next !== part) {
      const edge = boundary(partAt, part, at, Math.min(half, out + STEP_IN));
      layers.push({ part, thick_in: from - edge });
      from = edge;
      part = next;
    }
  }
  layers.push({ part, thick_in: from });
  return layers.filter((layer) => layer.thick_in > CLOSE_IN);
}

/** Where `part`, found at `high`, gives way on the way down to `low`. */
function boundary(partAt: (out_in: number) => number, part: number, low: number, high: number): number {
  let inside = high;
  let outside = low;
  while (inside - outside > CLOSE_IN) {
    const middle = (inside + outside) / 2;
    if (partAt(middle) === part) inside = middle;
    else outside = middle;
  }
  return (inside + outside) / 2;
}

/** Area of the cut by part, largest first. */
export function areas(section: Section): { part: number; area_in2: number }[] {
  const sum = new Map<number, number>();
  for (const region of section.regions) {
    sum.set(region.part, (sum.get(region.part) ?? 0) + region.area_in2);
  }
  return [...sum].map(([part, area_in2]) => ({ part, area_in2 })).sort((a, b) => b.area_in2 - a.area_in2);
}
