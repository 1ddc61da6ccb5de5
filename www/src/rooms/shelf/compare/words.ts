// What sets one shot apart from the first, in a sentence.

import type { Units } from "../../../store";
import type { Roll } from "../../../types";
import { change, reading } from "../../../units";
import type { Compared } from "./throws";

/** Says a difference where it shows at the digits of the page. */
function differs(
  by: number | null,
  quantity: "angle" | "board" | "distance",
  units: Units,
  [more, less]: [string, string],
): string | null {
  if (by === null || change(by, quantity, units) === null) return null;
  const much = reading(Math.abs(by), quantity, units);
  const said = quantity === "board" ? `${much} boards` : much;
  return `${said} ${by > 0 ? more : less}`;
}

const minus = (a: number | null, b: number | null): number | null =>
  a === null || b === null ? null : a - b;

export function against(first: Compared, other: Compared, units: Units): string {
  if (!other.roll) return `${other.letter} cannot be followed.`;
  if (other.roll.summary.gutter) return `${other.letter} drops into the gutter.`;
  if (!first.roll || first.roll.summary.gutter) return `${other.letter} reaches the pins.`;
  const of = (roll: Roll) => roll.summary;
  const [a, b] = [of(first.roll), of(other.roll)];
  const parts = [
    differs(minus(b.entry_angle_deg, a.entry_angle_deg), "angle", units, ["steeper", "flatter"]),
    differs(minus(b.board_at_pins, a.board_at_pins), "board", units, ["further in", "further out"]),
  ].filter((part) => part !== null);
  const turns = differs(b.breakpoint.distance_ft - a.breakpoint.distance_ft, "distance", units, [
    "later",
    "sooner",
  ]);
  if (parts.length === 0 && turns === null) return `${other.letter} rolls as ${first.letter} does.`;
  const comes = parts.length > 0 ? `comes in ${parts.join(" and ")} than ${first.letter}` : "";
  const bends = turns === null ? "" : `turns back ${turns}`;
  return `${other.letter} ${[comes, bends].filter(Boolean).join(" and ")}.`;
}
