// What the lane is like, as patches to tint: one a zone, or the oil's film in
// steps of thickness.
import type { Lane, OilMap, WasmModule } from "../types";
import { BOARD_IN, LANE_FT, PIT_FT, WIDTH_IN } from "./lane-frame";

export interface Patch {
  x0_in: number;
  x1_in: number;
  from_ft: number;
  to_ft: number;
}
export interface Ground {
  /** Patches of one tint, 0 (none) to 1. */
  tints: { share: number; patches: Patch[] }[];
  /** Where the oil ends; null where that says nothing. */
  oil_end_ft: number | null;
}

const HALF_IN = WIDTH_IN / 2;
/** A film this thick has the full tint. */
const FULL_UM = 6;
const STEPS = 8;

/** Slippery lanes tint strongly, dry ones not at all; 0.2 is the usual figure for a dry lane. */
const slipperiness = (mu: number): number => Math.min(1, Math.max(0, 1 - mu / 0.2));

export function groundOf(wasm: WasmModule, lane: Lane): Ground {
  if ("zones" in lane) {
    const end_ft = lane.zones.filter((zone) => slipperiness(zone.mu) > 0.5).at(-1)?.to_ft ?? null;
    return {
      tints: lane.zones.map(({ from_ft, to_ft, mu }) => ({
        share: slipperiness(mu),
        patches: [{ x0_in: -HALF_IN, x1_in: HALF_IN, from_ft, to_ft: Math.min(to_ft, PIT_FT) }],
      })),
      oil_end_ft: end_ft !== null && end_ft < LANE_FT ? end_ft : null,
    };
  }
  if (typeof lane.oil === "string") return { tints: [], oil_end_ft: null };
  return oilGround(wasm.oil_map(lane.oil));
}

/** Thin films tell: the tint goes with the root of the film. */
const step = (film_um: number): number => Math.round(Math.sqrt(Math.min(1, film_um / FULL_UM)) * STEPS);

function oilGround(map: OilMap): Ground {
  const steps = map.film_um.map((row) => row.map(step));
  const tints = Array.from({ length: STEPS + 1 }, (_, i) => ({ share: i / STEPS, patches: [] as Patch[] }));
  for (let board = 0; board < (steps[0]?.length ?? 0); board++) {
    // Board 1 lies at the right edge.
    const x0_in = HALF_IN - (board + 1) * BOARD_IN;
    let from_ft = 0;
    for (let row = 1; row <= steps.length; row++) {
      if (steps[row]?.[board] === steps[from_ft]?.[board]) continue;
      const patch = { x0_in, x1_in: x0_in + BOARD_IN, from_ft, to_ft: Math.min(row, PIT_FT) };
      tints[steps[from_ft]?.[board] ?? 0]?.patches.push(patch);
      from_ft = row;
    }
  }
  const seen = tints.filter(({ share, patches }) => share > 0 && patches.length > 0);
  return { tints: seen, oil_end_ft: map.length_ft > 0 && map.length_ft < LANE_FT ? map.length_ft : null };
}
