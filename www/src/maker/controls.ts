// The controls of a ball file: what stands in the file at their places, and
// how far they may sensibly go.

import { partCalled } from "../locale/names";
import { worded } from "../locale/worded";
import type { BallFile, Control } from "../types";
import { QUANTITY_OF } from "../units";
import type { Word } from "../words";
import { say } from "./say";

/** What a control or a tolerance is called: "inner core: density". */
export const controlName = ({ part, what }: Pick<Control, "part" | "what">): string =>
  partSays(part, worded(what));

/** What is said of a part: "inner core: as it is". */
export const partSays = (part: string | null, what: string): string =>
  say("maker-control", { part: partName(part), what });

/** The part that a control is of; null for the ball as a whole. */
export const partName = (part: string | null): string =>
  part === null ? say("maker-ball") : partCalled(part);

/** The word that shows what a control changes. */
export function controlWord({ control, unit }: Pick<Control, "control" | "unit">): Word {
  if (control === "diameter_in") return "ball diameter";
  if (unit === "g/cc") return "density";
  if (control.includes("squash")) return "squash";
  if (unit === "deg" || control.includes("at_in")) return "position";
  return "piece";
}

/** The word of each of a ball's numbers, by its name in files. */
export const FIGURE_WORDS: Record<string, Word> = {
  weight_lb: "weight",
  low_rg_in: "RG",
  rg_in: "RG",
  differential_in: "differential",
  intermediate_differential_in: "intermediate differential",
  top_weight_oz: "top weight",
  cover_at_least_in: "coverstock",
  cover_in: "coverstock",
  pin_to_cg_in: "CG",
  low_rg_mark_in: "pin",
  high_rg_mark_in: "mass bias",
};
export const figureWord = (figure: string): Word => FIGURE_WORDS[figure] ?? "piece";

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
