// What sets one shot apart from the first, in a sentence.

import type { Units } from "../../../store";
import type { Roll } from "../../../types";
import { apart, reading } from "../../../units";
import { say } from "../say";
import type { Compared } from "./throws";

/** Says a difference where it shows at the digits of the page. */
function differs(
  from: number | null,
  to: number | null,
  quantity: "angle" | "board" | "distance",
  units: Units,
  [more, less]: [string, string],
): string | null {
  if (from === null || to === null) return null;
  const by = apart(from, to, quantity, units);
  if (by === 0) return null;
  return say(by > 0 ? more : less, { much: reading(Math.abs(by), quantity, units) });
}

type Thrown = Pick<Compared, "letter" | "roll">;

export function against(first: Thrown, other: Thrown, units: Units): string {
  const { letter } = other;
  if (!other.roll) return say("compare-not-followed", { letter });
  if (other.roll.summary.gutter) return say("compare-gutter", { letter });
  if (!first.roll || first.roll.summary.gutter) return say("compare-reaches", { letter });
  const of = (roll: Roll) => roll.summary;
  const [a, b] = [of(first.roll), of(other.roll)];
  const ways = [
    differs(a.entry_angle_deg, b.entry_angle_deg, "angle", units, ["compare-steeper", "compare-flatter"]),
    differs(a.board_at_pins, b.board_at_pins, "board", units, ["compare-further-in", "compare-further-out"]),
  ]
    .filter((way) => way !== null)
    .reduce((all, way) => (all === "" ? way : say("compare-both-ways", { one: all, other: way })), "");
  const turns = differs(a.breakpoint.distance_ft, b.breakpoint.distance_ft, "distance", units, [
    "compare-later",
    "compare-sooner",
  ]);
  const told = { letter, first: first.letter, ways };
  if (turns === null) return say(ways === "" ? "compare-same" : "compare-comes", told);
  if (ways === "") return say("compare-turns", { letter, turns });
  return say("compare-comes-and-turns", { ...told, turns });
}
