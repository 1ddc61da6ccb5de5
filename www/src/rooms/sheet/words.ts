// Why this ball for this bowler: sentences put together from what was computed.

import type { Shot, Units } from "../../store";
import type { Drilled, Lane, Roll, WasmModule } from "../../types";
import { digits, number, type Quantity, reading } from "../../units";
import type { Told } from "./told";

/** A text cut short where it has more letters than there is room for. */
export const shorten = (text: string, most: number): string => {
  const letters = [...text];
  return letters.length > most ? `${letters.slice(0, most - 1).join("")}…` : text;
};

/** Where published studies, as reported, found most strikes: boards and entry angle. */
const POCKET = { from_board: 17, to_board: 18.5, from_deg: 4, to_deg: 6 };
/** Differences smaller than these are told as none. */
const SAME = { ft: 0.05, rg_in: 0.0005 };

const tenths = (value: number): string => digits(value, 1);
const boards = (value: number): string => `${tenths(value)} ${tenths(value) === "1.0" ? "board" : "boards"}`;

/** A reading without the zeros at its end. */
const short = (value: number, quantity: Quantity, units: Units): string =>
  reading(value, quantity, units)
    .replace(/(\.\d*?)0+(?!\d)/, "$1")
    .replace(/\.(?!\d)/, "");

/** The release, how the ball sits in the hand, and the lane. */
export function releaseWords(wasm: WasmModule, shot: Shot, units: Units): string {
  const { hand, release, layout, drilling, lane } = shot;
  const angle = (deg: number) => short(deg, "angle", units);
  const val = drilling ? `, VAL angle ${angle(drilling.val_angle_deg)}` : "";
  return [
    `${hand === "right" ? "Right" : "Left"} hand, ${short(release.speed_mph, "speed", units)}, ${short(release.revs_rpm, "revs", units)}`,
    `axis rotation ${angle(release.axis_rotation_deg)}, tilt ${angle(release.axis_tilt_deg)}`,
    `let go on board ${short(release.board, "board", units)} at ${angle(release.launch_angle_deg)}`,
    `pin to PAP ${short(layout.pin_to_pap_in, "size", units)}, drilling angle ${angle(layout.drilling_angle_deg)}${val}`,
    laneWords(wasm, lane, units),
  ].join("; ");
}

function laneWords(wasm: WasmModule, lane: Lane, units: Units): string {
  if ("zones" in lane) {
    const zones = [...lane.zones].sort((a, b) => a.from_ft - b.from_ft);
    if (zones.length > 3) return `friction in ${zones.length} zones`;
    const to = (ft: number, n: number) => (n < zones.length - 1 ? ` to ${short(ft, "distance", units)}` : "");
    const said = zones.map(({ mu, to_ft }, n) => `${short(mu, "friction", units)}${to(to_ft, n)}`);
    return `friction ${said.join(", then ")}`;
  }
  if (typeof lane.oil === "string") return "";
  const { length_ft, volume_ml } = wasm.oil_map(lane.oil);
  const name = shorten(lane.oil.name, 40);
  return `oil pattern ${name}, ${short(volume_ml, "board", units)}\u00a0mL over ${short(length_ft, "distance", units)}`;
}

/** What the grip is and what its holes did, in few words. */
export function drillingWords(
  { marks, change: { drilled_out_oz }, before, after, statics }: Drilled,
  units: Units,
): string[] {
  return [
    "Seen at the grip, fingers up; dashed: the vertical axis line.",
    `The pin is ${reading(marks.pin_to_grip_centre_in, "size", units)} from the grip centre and ${reading(Math.abs(marks.pin_to_val_in), "size", units)} from that line.`,
    `The drill takes out ${reading(drilled_out_oz, "imbalance", units)}: differential ${number(before.differential_in, "rg", units)} before, ${reading(after.differential_in, "rg", units)} after.`,
    balanceWords(statics, units),
  ];
}

/** How a drilled ball hangs about its grip. */
export function balanceWords({ top_oz, finger_oz, side_oz }: Drilled["statics"], units: Units): string {
  const side = (oz: number, more: string, less: string) =>
    `${oz < 0 ? less : more} ${reading(Math.abs(oz), "imbalance", units)}`;
  return `Static balance over the grip: ${side(top_oz, "top", "bottom")}, ${side(finger_oz, "finger", "thumb")}, ${side(side_oz, "positive side", "negative side")}.`;
}

/** What one ball does for this release; `why` tells what its core adds. */
export function whyThis(told: Told, plain: Told | null, why: string, units: Units): string[] {
  const core = plain ? `${without(plain, units)} ${why}` : "";
  return [pocket(told.roll), core.trim(), flare(told.roll, units), rolling(told.roll, units)].filter(
    (text) => text !== "",
  );
}

/** How it comes in, held against where strikes are found. */
function pocket({ summary }: Roll): string {
  const { entry_angle_deg: angle, board_at_pins: board } = summary;
  if (angle === null || board === null) return "";
  const off = [
    board < POCKET.from_board && `${boards(POCKET.from_board - board)} short of it`,
    board > POCKET.to_board && `${boards(board - POCKET.to_board)} past it`,
    angle < POCKET.from_deg && `${tenths(POCKET.from_deg - angle)}° flatter`,
    angle > POCKET.to_deg && `${tenths(angle - POCKET.to_deg)}° steeper`,
  ].filter((text) => text !== false);
  const there = off.length === 0 ? "This shot comes in there." : `This shot comes in ${off.join(" and ")}.`;
  return `Boards ${tenths(POCKET.from_board)} to ${tenths(POCKET.to_board)} at ${POCKET.from_deg}° to ${POCKET.to_deg}° strike best (published studies, as reported). ${there}`;
}

/** The same shot without a core. */
function without({ roll, weighed }: Told, units: Units): string {
  const { entry_angle_deg: angle, board_at_pins: board } = roll.summary;
  const alike = `A ball of one material, as large and of ${reading(weighed.weight_lb, "weight", units)},`;
  return angle === null || board === null
    ? `${alike} would not reach the pins with this release.`
    : `${alike} would come in at ${tenths(angle)}° on board ${tenths(board)} with this release.`;
}

function flare({ summary }: Roll, units: Units): string {
  const { flare_in } = summary;
  if (flare_in === null) return "";
  const band = reading(flare_in, "size", units);
  return flare_in < 0.5
    ? `Its track hardly moves (a band of ${band}): nearly the same ring meets the lane at every turn.`
    : `Its track spreads over a band of ${band}, so fresh cover meets the lane.`;
}

function rolling({ summary }: Roll, units: Units): string {
  if (summary.entry_angle_deg === null) return "";
  const { roll_start_ft } = summary;
  if (roll_start_ft === null) return "It still slips at the pins: it has not spent all its hook.";
  return `It rolls without slip from ${reading(roll_start_ft, "distance", units)} on: from there its direction hardly changes.`;
}

/** Two balls, the same release; `why` tells what makes the difference. */
export function whyEither(a: Told, b: Told, why: string, units: Units): string[] {
  return [
    a.drilled
      ? "Both drilled alike for this hand, with the same release and lane."
      : "Both with the same release, layout and lane.",
    why,
    phases(a, b, units),
    numbers(a, b, units),
  ].filter((text) => text !== "");
}

function phases(a: Told, b: Told, units: Units): string {
  const [here, there] = [a.roll.summary.roll_start_ft, b.roll.summary.roll_start_ft];
  if (here === null || there === null) {
    if (here === there) return "Both still slip at the pins.";
    return here === null
      ? "B rolls before the pins, A still slips there."
      : "A rolls before the pins, B still slips there.";
  }
  const later = here - there;
  if (Math.abs(later) < SAME.ft) return "Both begin to roll at the same place.";
  return `A begins to roll ${reading(Math.abs(later), "distance", units)} ${later > 0 ? "later" : "sooner"}.`;
}

function numbers(a: Told, b: Told, units: Units): string {
  const rg = a.weighed.rg_in.low - b.weighed.rg_in.low;
  const differential = a.weighed.differential_in - b.weighed.differential_in;
  const parts = [
    Math.abs(rg) >= SAME.rg_in &&
      `its RG is ${reading(Math.abs(rg), "rg", units)} ${rg < 0 ? "lower, so it is easier to spin up" : "higher, so it is harder to spin up"}`,
    Math.abs(differential) >= SAME.rg_in &&
      `its differential is ${reading(Math.abs(differential), "rg", units)} ${differential > 0 ? "larger" : "smaller"}`,
  ].filter((text) => text !== false);
  const bands = `the track of A spreads over ${number(a.roll.summary.flare_in ?? 0, "size", units)} and of B over ${reading(b.roll.summary.flare_in ?? 0, "size", units)}`;
  const text = [...parts, bands].join("; ");
  return `${parts.length > 0 ? "Of A, " : "As for flare, "}${text}.`;
}
