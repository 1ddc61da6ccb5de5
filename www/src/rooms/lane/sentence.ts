// What the shot did, in one sentence, from its summary alone.
import type { Args } from "../../locale/say";
import type { Units } from "../../store";
import type { Hand, Roll } from "../../types";
import { measure, reading, written } from "../../units";
import { say } from "./say";

/** Below this the path is straight to the eye, and so it is said. */
const STRAIGHT_DEG = 0.25;

/** How far down the lane the ball got. */
const reach = (roll: Roll): number => Math.max(0, ...roll.samples.map((sample) => sample.y_ft));

/** Whole feet (or tenths of a metre) of each phase, adding up to the whole run. */
function lengths(roll: Roll, units: Units) {
  const { factor } = measure("distance", units);
  const places = units === "metric" ? 10 : 1;
  const mark = (feet: number) => Math.round(feet * factor * places);
  const { hook_start_ft, roll_start_ft } = roll.summary;
  const end = mark(reach(roll));
  const rolls = Math.min(end, mark(roll_start_ft ?? reach(roll)));
  const hooks = Math.min(rolls, mark(hook_start_ft ?? reach(roll)));
  return { skid: hooks / places, hook: (rolls - hooks) / places, roll: (end - rolls) / places };
}

/** The phases with their lengths, which begin the sentence. */
function phases(roll: Roll, units: Units): Args {
  const { unit } = measure("distance", units);
  const part = lengths(roll, units);
  const arrived = roll.summary.entry_angle_deg !== null;
  if (arrived && part.skid === 0 && part.hook === 0) return { phases: "only-roll", slips: "no" };
  if (arrived && part.hook === 0 && part.roll === 0) return { phases: "only-skid", slips: "no" };
  const far = (value: number) => `${written(String(value))}\u00a0${unit}`;
  const gone = (["skid", "hook", "roll"] as const).filter((phase) => part[phase] > 0);
  return {
    phases: gone.length > 0 ? gone.join("-") : "none",
    skid: far(part.skid),
    hook: far(part.hook),
    roll: far(part.roll),
    slips: gone.length > 0 && arrived && roll.summary.roll_start_ft === null ? "yes" : "no",
  };
}

/** The shot told in one sentence: phases, then where and how it comes in, or why it does not. */
export function whatHappened(roll: Roll, hand: Hand, units: Units): string {
  const { summary } = roll;
  const path = phases(roll, units);
  if (summary.gutter) {
    const side = (roll.samples.at(-1)?.x_in ?? 0) > 0 ? "right" : "left";
    return say("lane-did-gutter", { ...path, side, end: reading(summary.end_ft, "distance", units) });
  }
  const { entry_angle_deg: angle, board_at_pins: board } = summary;
  if (angle === null || board === null) {
    return say("lane-did-stop", { ...path, reach: reading(reach(roll), "distance", units) });
  }
  const where = { hand, board: reading(board, "board", units) };
  if (Math.abs(angle) < STRAIGHT_DEG) return say("lane-did-straight", { ...path, ...where });
  const args = { ...path, ...where, angle: reading(Math.abs(angle), "angle", units) };
  return say(angle < 0 ? "lane-did-away" : "lane-did-enter", args);
}
