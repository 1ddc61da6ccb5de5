// What the shot did, in one sentence, from its summary alone.
import type { Units } from "../../store";
import type { Hand, Roll } from "../../types";
import { measure, reading } from "../../units";

/** Below this the path is straight to the eye, and so it is said. */
const STRAIGHT_DEG = 0.25;

/** Whole feet (or metres) of each phase, adding up to the whole run. */
function lengths(summary: Roll["summary"], units: Units) {
  const { factor } = measure("distance", units);
  const places = units === "metric" ? 10 : 1;
  const mark = (feet: number) => Math.round(feet * factor * places) / places;
  const end = mark(summary.end_ft);
  const hook = Math.min(end, mark(summary.hook_start_ft ?? summary.end_ft));
  const roll = Math.max(hook, Math.min(end, mark(summary.roll_start_ft ?? summary.end_ft)));
  const round = (value: number) => Math.round(value * places) / places;
  return { skid: hook, hook: round(roll - hook), roll: round(end - roll) };
}

function phases(summary: Roll["summary"], units: Units): string {
  const { unit } = measure("distance", units);
  const part = lengths(summary, units);
  const far = (value: number) => `${value}\u00a0${unit}`;
  const last = summary.roll_start_ft === null;
  const said: string[] = [];
  if (part.skid > 0) said.push(`skids ${far(part.skid)}`);
  if (part.hook > 0) said.push(`hooks for ${far(part.hook)}`);
  if (part.roll > 0 && !last) said.push(`rolls the last ${far(part.roll)}`);
  if (said.length === 1 && part.roll > 0 && !last) return "Rolls all the way without slipping";
  if (said.length === 1 && part.skid > 0) return "Skids all the way and never comes to roll";
  const text = said.length > 2 ? `${said[0]}, ${said[1]}, ${said[2]}` : said.join(" and ");
  const head = text === "" ? "Hardly leaves the foul line" : `${text[0]?.toUpperCase()}${text.slice(1)}`;
  return last && part.hook > 0 && !summary.gutter ? `${head}, still slipping at the pins` : head;
}

export function whatHappened(roll: Roll, hand: Hand, units: Units): string {
  const { summary } = roll;
  const path = phases(summary, units);
  if (summary.gutter) {
    const side = (roll.samples.at(-1)?.x_in ?? 0) > 0 ? "right" : "left";
    return `${path}, then drops into the ${side} gutter ${reading(summary.end_ft, "distance", units)} down the lane.`;
  }
  const { entry_angle_deg: angle, board_at_pins: board } = summary;
  if (angle === null || board === null) {
    return `${path}, and never reaches the pins: it comes no further than ${reading(summary.end_ft, "distance", units)}.`;
  }
  const where = `board ${Math.round(board)}${hand === "left" ? ", counted from the left" : ""}`;
  if (Math.abs(angle) < STRAIGHT_DEG) return `${path}; comes in straight, on ${where}.`;
  if (angle < 0) {
    return `${path}; comes in at ${reading(-angle, "angle", units)} away from the pocket side, on ${where}.`;
  }
  return `${path}; enters at ${reading(angle, "angle", units)} on ${where}.`;
}
