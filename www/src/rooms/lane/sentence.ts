// What the shot did, in one sentence, from its summary alone.
import type { Units } from "../../store";
import type { Hand, Roll } from "../../types";
import { measure, reading } from "../../units";

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

/** The phases with their lengths, as the beginning of a sentence. */
function phases(roll: Roll, units: Units): string {
  const { unit } = measure("distance", units);
  const part = lengths(roll, units);
  const arrived = roll.summary.entry_angle_deg !== null;
  const slips = roll.summary.roll_start_ft === null;
  if (arrived && part.skid === 0 && part.hook === 0) return "Rolls all the way without slipping";
  if (arrived && part.hook === 0 && part.roll === 0) return "Skids all the way and never comes to roll";
  const far = (value: number) => `${value}\u00a0${unit}`;
  const said = [
    ...(part.skid > 0 ? [`skids ${far(part.skid)}`] : []),
    ...(part.hook > 0 ? [`hooks for ${far(part.hook)}`] : []),
    ...(part.roll > 0 ? [`rolls the last ${far(part.roll)}`] : []),
  ];
  if (said.length === 0) return "Hardly leaves the foul line";
  const text = said.length > 2 ? said.join(", ") : said.join(" and ");
  const head = `${text[0]?.toUpperCase()}${text.slice(1)}`;
  return arrived && slips ? `${head}, still slipping at the pins` : head;
}

/** The shot told in one sentence: phases, then where and how it comes in, or why it does not. */
export function whatHappened(roll: Roll, hand: Hand, units: Units): string {
  const { summary } = roll;
  const path = phases(roll, units);
  if (summary.gutter) {
    const side = (roll.samples.at(-1)?.x_in ?? 0) > 0 ? "right" : "left";
    return `${path}, then drops into the ${side} gutter ${reading(summary.end_ft, "distance", units)} down the lane.`;
  }
  const { entry_angle_deg: angle, board_at_pins: board } = summary;
  if (angle === null || board === null) {
    return `${path}, and never reaches the pins: it comes no further than ${reading(reach(roll), "distance", units)}.`;
  }
  const where = `board ${Math.round(board)}${hand === "left" ? ", counted from the left" : ""}`;
  if (Math.abs(angle) < STRAIGHT_DEG) return `${path}; comes in straight, on ${where}.`;
  if (angle < 0) {
    return `${path}; comes in at ${reading(-angle, "angle", units)} away from the pocket side, on ${where}.`;
  }
  return `${path}; enters at ${reading(angle, "angle", units)} on ${where}.`;
}
