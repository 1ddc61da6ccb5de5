// The controls of a ball file: what stands in the file at their places, and
// how far they may sensibly go.

import type { BallFile, Control } from "../types";
import { QUANTITY_OF } from "../units";

/** What a control is called: "inner core: density". */
export const controlName = ({ part, what }: Control): string => `${part ?? "ball"}: ${what}`;

/** The place of the part that a control is of; empty for the ball as a whole. */
export const placeOfPart = (control: string): string => /^(cover|pieces\[\d+\])/.exec(control)?.[0] ?? "";

/** Whether it is a factor on what the file says. */
export const isFactor = (control: string) => /\.(scale|wide|tall)$/.test(control);

/** What the file says at a control's place; 1 for a factor. */
export function valueAt(file: BallFile, control: string): number {
  if (isFactor(control)) return 1;
  const path = control.split(/[.[\]]+/).filter((key) => key !== "");
  const found = path.reduce<unknown>(
    (at, key) => (typeof at === "object" && at !== null ? (at as Record<string, unknown>)[key] : undefined),
    file,
  );
  if (typeof found === "number") return found;
  // Left out: no squash, else at the centre and upright.
  return control.includes("squash") ? 1 : 0;
}

/** Bounds to begin with. */
export function usualRange(file: BallFile, { control, unit }: Control): [number, number] {
  const value = valueAt(file, control);
  const round = (one: number) => Number(one.toFixed(3));
  if (unit === "g/cc") return [round(Math.max(0.3, 0.75 * value)), round(Math.min(3.8, 1.25 * value))];
  if (unit === "deg") return [round(value - 20), round(value + 20)];
  if (control === "diameter_in") return [8.5, 8.595];
  if (unit === "in" && control.includes("at_in")) return [round(value - 0.5), round(value + 0.5)];
  return [round(0.85 * value), round(1.15 * value)];
}

export const quantityOf = ({ unit }: Control) => QUANTITY_OF[unit];
