// Why this ball for this bowler: sentences put together from what was computed.

import { shorten } from "../../shorten";
import type { Shot, Units } from "../../store";
import type { Drilled, Lane, Roll, WasmModule, WhyTold } from "../../types";
import { apart, change, count, digits, number, type Quantity, reading, roughlyIn } from "../../units";
import { say } from "./say";
import type { Told } from "./told";

/** Where published studies, as reported, found most strikes: boards and entry angle. */
const POCKET = { from_board: 17, to_board: 18.5, from_deg: 4, to_deg: 6 };

const tenths = (value: number): string => digits(value, 1);
/** A count of boards, and whether it is one. */
const boards = (value: number) => ({ boards: tenths(value), one: value.toFixed(1) === "1.0" ? "yes" : "no" });

/** A reading without the zeros at its end. */
const short = (value: number, quantity: Quantity, units: Units): string =>
  reading(value, quantity, units)
    .replace(/([.,]\d*?)0+(?!\d)/, "$1")
    .replace(/[.,](?!\d)/, "");

/** The release, how the ball sits in the hand, and the lane. */
export function releaseWords(wasm: WasmModule, shot: Shot, units: Units): string {
  const { hand, release, layout, drilling, lane } = shot;
  const angle = (deg: number) => short(deg, "angle", units);
  return say(drilling ? "sheet-release-val" : "sheet-release", {
    hand,
    speed: short(release.speed_mph, "speed", units),
    revs: short(release.revs_rpm, "revs", units),
    rotation: angle(release.axis_rotation_deg),
    tilt: angle(release.axis_tilt_deg),
    board: short(release.board, "board", units),
    launch: angle(release.launch_angle_deg),
    pin: short(layout.pin_to_pap_in, "size", units),
    drilling: angle(layout.drilling_angle_deg),
    val: drilling ? angle(drilling.val_angle_deg) : "",
    lane: laneWords(wasm, lane, units),
  });
}

function laneWords(wasm: WasmModule, lane: Lane, units: Units): string {
  if ("zones" in lane) {
    const zones = [...lane.zones].sort((a, b) => a.from_ft - b.from_ft);
    if (zones.length > 3) return say("sheet-zones", { many: count(zones.length) });
    const said = zones.map(({ mu, to_ft }, n) => {
      const friction = short(mu, "friction", units);
      return n < zones.length - 1
        ? say("sheet-zone-to", { friction, distance: short(to_ft, "distance", units) })
        : friction;
    });
    const all = said.reduce((first, next) => say("sheet-zone-then", { first, next }));
    return say("sheet-friction", { zones: all });
  }
  if (typeof lane.oil === "string") return "";
  const { length_ft, volume_ml } = wasm.oil_map(lane.oil);
  const name = shorten(lane.oil.name, 40);
  return say("sheet-oil", {
    name,
    volume: short(volume_ml, "board", units),
    length: short(length_ft, "distance", units),
  });
}

/** What the grip is and what its holes did, in few words. */
export function drillingWords(
  { marks, change: { drilled_out_oz }, before, after, statics }: Drilled,
  units: Units,
): string[] {
  return [
    say("sheet-seen"),
    say("sheet-pin-at", {
      grip: reading(marks.pin_to_grip_centre_in, "size", units),
      line: reading(Math.abs(marks.pin_to_val_in), "size", units),
    }),
    say("sheet-drilled-out", {
      out: reading(drilled_out_oz, "imbalance", units),
      before: number(before.differential_in, "rg", units),
      after: reading(after.differential_in, "rg", units),
    }),
    balanceWords(statics, units),
  ];
}

/** How a drilled ball hangs about its grip. */
export function balanceWords({ top_oz, finger_oz, side_oz }: Drilled["statics"], units: Units): string {
  const side = (oz: number) => (oz < 0 ? "less" : "more");
  const much = (oz: number) => reading(Math.abs(oz), "imbalance", units);
  return say("sheet-balance", {
    top: side(top_oz),
    "top-oz": much(top_oz),
    finger: side(finger_oz),
    "finger-oz": much(finger_oz),
    side: side(side_oz),
    "side-oz": much(side_oz),
  });
}

/** Why one comes in otherwise than another, and from where its hook is counted. */
export function becauseWords({ whole, sentence }: WhyTold, units: Units): string {
  const said = roughlyIn(sentence, units);
  const hooks = whole !== null && change(whole.hook_boards, "board", units) !== null;
  return hooks ? `${said} ${say("sheet-hook-from")}` : said;
}

/** What one ball does for this release; `why` tells what its core adds. */
export function whyThis(told: Told, plain: Told | null, why: string, units: Units): string[] {
  const core = plain ? `${without(plain, units)} ${why}` : "";
  return [pocket(told.roll, units), core.trim(), flare(told.roll, units), rolling(told.roll, units)].filter(
    (text) => text !== "",
  );
}

/** How it comes in as it is shown, held against where strikes are found. */
function pocket({ summary }: Roll, units: Units): string {
  if (summary.entry_angle_deg === null || summary.board_at_pins === null) return "";
  const angle = apart(0, summary.entry_angle_deg, "angle", units);
  const board = apart(0, summary.board_at_pins, "board", units);
  const off = [
    board < POCKET.from_board && say("sheet-short-of-it", boards(POCKET.from_board - board)),
    board > POCKET.to_board && say("sheet-past-it", boards(board - POCKET.to_board)),
    angle < POCKET.from_deg && say("sheet-flatter", { degrees: tenths(POCKET.from_deg - angle) }),
    angle > POCKET.to_deg && say("sheet-steeper", { degrees: tenths(angle - POCKET.to_deg) }),
  ].filter((text) => text !== false);
  const where = {
    from: tenths(POCKET.from_board),
    to: tenths(POCKET.to_board),
    flat: digits(POCKET.from_deg, 0),
    steep: digits(POCKET.to_deg, 0),
  };
  const [first, ...others] = off;
  if (first === undefined) return say("sheet-pocket-there", where);
  const both = others.reduce((one, other) => say("sheet-both", { one, other }), first);
  return say("sheet-pocket-off", { ...where, off: both });
}

/** The same shot without a core. */
function without({ roll, weighed }: Told, units: Units): string {
  const { entry_angle_deg: angle, board_at_pins: board } = roll.summary;
  const weight = reading(weighed.weight_lb, "weight", units);
  return angle === null || board === null
    ? say("sheet-plain-short", { weight })
    : say("sheet-plain", { weight, angle: tenths(angle), board: tenths(board) });
}

function flare({ summary }: Roll, units: Units): string {
  const { flare_in } = summary;
  if (flare_in === null) return "";
  const flare = reading(flare_in, "size", units);
  return say(flare_in < 0.5 ? "sheet-little-flare" : "sheet-flare", { flare });
}

function rolling({ summary }: Roll, units: Units): string {
  if (summary.entry_angle_deg === null) return "";
  const { roll_start_ft } = summary;
  if (roll_start_ft === null) return say("sheet-still-slips");
  return say("sheet-rolls", { distance: reading(roll_start_ft, "distance", units) });
}

/** Two balls, the same release; `why` tells what makes the difference. */
export function whyEither(a: Told, b: Told, why: string, units: Units): string[] {
  return [
    say(a.drilled ? "sheet-both-drilled" : "sheet-both-laid"),
    why,
    phases(a, b, units),
    numbers(a, b, units),
  ].filter((text) => text !== "");
}

function phases(a: Told, b: Told, units: Units): string {
  const [here, there] = [a.roll.summary.roll_start_ft, b.roll.summary.roll_start_ft];
  if (here === null || there === null) {
    if (here === there) return say("sheet-both-slip");
    return say(here === null ? "sheet-b-rolls" : "sheet-a-rolls");
  }
  const later = apart(there, here, "distance", units);
  if (later === 0) return say("sheet-same-roll");
  const distance = reading(Math.abs(later), "distance", units);
  return say(later > 0 ? "sheet-a-later" : "sheet-a-sooner", { distance });
}

function numbers(a: Told, b: Told, units: Units): string {
  const rg = apart(b.weighed.rg_in.low, a.weighed.rg_in.low, "rg", units);
  const differential = apart(b.weighed.differential_in, a.weighed.differential_in, "rg", units);
  const much = (inches: number) => ({ much: reading(Math.abs(inches), "rg", units) });
  const parts = [
    rg !== 0 && say(rg < 0 ? "sheet-rg-lower" : "sheet-rg-higher", much(rg)),
    differential !== 0 &&
      say(differential > 0 ? "sheet-differential-larger" : "sheet-differential-smaller", much(differential)),
  ].filter((text) => text !== false);
  const flares = {
    a: number(a.roll.summary.flare_in ?? 0, "size", units),
    b: reading(b.roll.summary.flare_in ?? 0, "size", units),
  };
  if (parts.length === 0) return say("sheet-for-flare", flares);
  const what = [...parts, say("sheet-flares", flares)].reduce((one, other) =>
    say("sheet-list", { one, other }),
  );
  return say("sheet-of-a", { what });
}
