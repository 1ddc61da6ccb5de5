// What the Scale says of its numbers: a value's place among limits and ranges, the largest share of the RG.

import type { Range } from "../../parts/readout";
import { say as sayBand } from "../../parts/say";
import type { Units } from "../../store";
import type { Weighed } from "../../types";
import { count, measure, number, type Quantity, reading } from "../../units";
import { say } from "./say";

/** Whether a value keeps to the published limits, as read on the page. */
export function verdict(
  value: number,
  { low, high }: Range,
  quantity: Quantity,
  units: Units,
): { text: string; within: boolean } {
  const ranged = low !== undefined && high !== undefined;
  const tell = ([one, two]: [string, string], within = false) => ({
    text: say(ranged ? two : one, {
      limit: reading(high ?? low ?? 0, quantity, units),
      low: number(low ?? 0, quantity, units),
      high: reading(high ?? 0, quantity, units),
    }),
    within,
  });
  if (low !== undefined && value < low) {
    return tell(reads(value, low, quantity, units) ? JUST_BELOW : BELOW);
  }
  if (high !== undefined && value > high) {
    return tell(reads(value, high, quantity, units) ? JUST_OVER : OVER);
  }
  return tell(WITHIN, true);
}

/** Each of one limit and of two. */
const WITHIN: [string, string] = ["scale-within", "scale-within-range"];
const BELOW: [string, string] = ["scale-below", "scale-below-range"];
const JUST_BELOW: [string, string] = ["scale-just-below", "scale-just-below-range"];
const OVER: [string, string] = ["scale-over", "scale-over-range"];
const JUST_OVER: [string, string] = ["scale-just-over", "scale-just-over-range"];

/** Whether rounding makes an outside value read like the limit itself. */
function reads(value: number, limit: number, quantity: Quantity, units: Units): boolean {
  const { decimals, factor } = measure(quantity, units);
  return (value * factor).toFixed(decimals) === (limit * factor).toFixed(decimals);
}

/** The trade's word for a value. */
export function bandOf(value: number, range: Range): string {
  const bands = range.bands ?? [];
  const band = bands.find(({ upTo }) => value < upTo) ?? bands.at(-1);
  return band ? sayBand(band.word) : "";
}

/** The program's own error bound in words. */
export function partsIn(relative_error: number): string {
  if (relative_error <= 1e-12) return say("scale-bound-least");
  const parts = Number((1 / relative_error).toPrecision(1));
  const [size, unit] =
    parts >= 1e9 ? ["thousand-million", 1e9] : parts >= 1e6 ? ["million", 1e6] : ["ones", 1];
  return say("scale-bound", { size, parts: count(parts / unit) });
}

/** The part with the largest share of the RG, held against its share of the weight, as the numbers read. */
export function largest({ pieces }: Weighed, names: string[]): string {
  const named = pieces.map((piece, part) => ({ ...piece, name: names[part] ?? "" }));
  const [first, ...others] = named.toSorted((a, b) => b.rg_share - a.rg_share);
  if (!first || others.length === 0) return say("scale-shares-one");
  const share = first.mass_kg / pieces.reduce((sum, { mass_kg }) => sum + mass_kg, 0);
  const told = {
    part: first.name,
    rg: reading(first.rg_share, "share", "trade"),
    weight: reading(share, "share", "trade"),
  };
  if (told.rg === told.weight) return say("scale-shares-even", told);
  return say(first.rg_share > share ? "scale-shares-further" : "scale-shares-closer", told);
}
