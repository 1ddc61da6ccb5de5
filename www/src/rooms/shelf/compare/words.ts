// What sets one shot apart from the first, in a sentence.

import type { Units } from "../../../store";
import type { Roll } from "../../../types";
import { change, reading } from "../../../units";
import { say } from "../say";
import type { Compared } from "./throws";

/** Says a difference where it shows at the digits of the page. */
function differs(
  by: number | null,
  quantity: "angle" | "board" | "distance",
  units: Units,
  [more, less]: [string, string],
): string | null {
  if (by === null || change(by, quantity, units) === null) return null;
  return say(by > 0 ? more : less, { much: reading(Math.abs(by), quantity, units) });
}

const minus = (a: number | null, b: number | null): number | null =>
  a === null || b === null ? null : a - b;

type Thrown = Pick<Compared, "letter" | "roll">;

export function against(first: Thrown, other: Thrown, units: Units): string {
  const { letter } = other;
  if (!other.roll) return say("compare-not-followed", { letter });
  if (other.roll.summary.gutter) return say("compare-gutter", { letter });
  if (!first.roll || first.roll.summary.gutter) return say("compare-reaches", { letter });
  const of = (roll: Roll) => roll.summary;
  const [a, b] = [of(first.roll), of(other.roll)];
  const ways = [
    differs(minus(b.entry_angle_deg, a.entry_angle_deg), "angle", units, [
      "compare-steeper",
      "compare-flatter",
    ]),
    differs(minus(b.board_at_pins, a.board_at_pins), "board", units, [
      "compare-further-in",
      "compare-further-out",
    ]),
  ]
    .filter((way) => way !== null)
    .reduce((all, way) => (all === "" ? way : say("compare-both-ways", { one: all, other: way })), "");
  const turns = differs(b.breakpoint.distance_ft - a.breakpoint.distance_ft, "distance", units, [
    "compare-later",
    "compare-sooner",
  ]);
  const told = { letter, first: first.letter, ways };
  if (turns === null) return say(ways === "" ? "compare-same" : "compare-comes", told);
  if (ways === "") return say("compare-turns", { letter, turns });
  return say("compare-comes-and-turns", { ...told, turns });
}
