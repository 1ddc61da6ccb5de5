// A value's place among limits and ranges, in words.

import type { Range } from "../../parts/readout";
import { type Units, useStore } from "../../store";
import { measure, number, type Quantity, reading } from "../../units";

interface VerdictProps {
  value: number;
  range: Range;
  quantity: Quantity;
}

/** Told aloud always; on the page, where the drawing shows it, only a limit passed. */
export function Verdict({ value, range, quantity }: VerdictProps) {
  const units = useStore().view.value.units;
  const text = verdict(value, range, quantity, units);
  return text.startsWith("Within") ? (
    <span class="visually-hidden">{text}</span>
  ) : (
    <strong class="out">{text}</strong>
  );
}

/** Whether a value keeps to the published limits, as read on the page. */
function verdict(value: number, range: Range, quantity: Quantity, units: Units): string {
  const { low, high } = range;
  const limits =
    low !== undefined && high !== undefined
      ? `the published ${number(low, quantity, units)} to ${reading(high, quantity, units)}`
      : `the published limit of ${reading(high ?? low ?? 0, quantity, units)}`;
  if (low !== undefined && value < low) return `Below ${limits}${atLast(value, low, quantity, units)}.`;
  if (high !== undefined && value > high) return `Over ${limits}${atLast(value, high, quantity, units)}.`;
  return `Within ${limits}.`;
}

/** Where rounding makes an outside value read like the limit itself, says so. */
function atLast(value: number, limit: number, quantity: Quantity, units: Units): string {
  const { decimals, factor } = measure(quantity, units);
  return (value * factor).toFixed(decimals) === (limit * factor).toFixed(decimals)
    ? ", by less than the last digit shown"
    : "";
}

/** The trade's word for a value. */
export function bandOf(value: number, range: Range): string {
  const bands = range.bands ?? [];
  return (bands.find(({ upTo }) => value < upTo) ?? bands.at(-1))?.word ?? "";
}

/** The program's own error bound in words. */
export function partsIn(relative_error: number): string {
  if (relative_error <= 1e-12) {
    return "The program's own bound on the error of mass and inertia: less than one part in a million million.";
  }
  const parts = Number((1 / relative_error).toPrecision(1));
  const words =
    parts >= 1e9
      ? `${parts / 1e9} thousand million`
      : parts >= 1e6
        ? `${parts / 1e6} million`
        : parts.toLocaleString("en");
  return `The program's own bound on the error of mass and inertia: about one part in ${words}.`;
}
