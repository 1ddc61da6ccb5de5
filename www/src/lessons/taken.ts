// A lesson that has the bench: where the learner is in it, and what may be
// changed meanwhile.

import type { Language } from "../locale/language";
import type { Doc, Room } from "../store";
import type { AnsweredStep, Guess } from "../types";

/** What is known of one step that was opened. */
export interface StepState {
  /** The bench as the step opened. */
  start: Doc;
  /** The bench as it was left; null while the step is in front. */
  end: Doc | null;
  guess: Guess | null;
  answered: Pick<AnsweredStep, "outcome" | "say" | "truth"> | null;
  /** How many hints were opened. */
  hints: number;
  passed: boolean;
  /** Skipped: the lesson's own way stands on the bench, which passes nothing. */
  shown?: boolean;
  /** The learner asked for the lesson's own way, which counts as done but is told to a teacher. */
  solved?: boolean;
}

export interface Taken {
  /** The lesson as its file has it. */
  text: string;
  /** The language of the names on its bench; English where it is not said. */
  named?: Language;
  /** Tried out while it is written: leaves no trace in the progress. */
  trial: boolean;
  step: number;
  /** Of the steps opened so far, in order. */
  states: StepState[];
  /** Of the step in front: the rooms shown, null for all. */
  rooms: Room[] | null;
  /** Of the step in front: whether it asks something. */
  asks: boolean;
  /** Of the step in front: the only places that may be changed, null for all. */
  free: string[] | null;
}

/** Whether the step in front waits for an answer that numbers in view could give away. */
export const waits = (taken: Taken | undefined): boolean =>
  taken?.asks === true && !taken.states[taken.step]?.passed;

type Leg = string | number | { named: string };

/** `ball.pieces["puck"].at_in[2]` as the steps of the way there. */
function legsOf(place: string): Leg[] {
  return [...place.matchAll(/\["(.*?)"\]|\[(\d+)\]|([A-Za-z0-9_]+)/g)].map(([, named, index, key]) =>
    named !== undefined ? { named } : index !== undefined ? Number(index) : (key ?? ""),
  );
}

type Tree = { [key: string]: unknown };

function inside(value: unknown, leg: string | number): unknown {
  return typeof value === "object" && value !== null ? (value as Tree)[leg] : undefined;
}

/** The same way with numbers in place of names, as `doc` has them; null where it leads nowhere. */
function numbered(legs: Leg[], doc: Doc): (string | number)[] | null {
  const way: (string | number)[] = [];
  let at: unknown = doc;
  for (const leg of legs) {
    let next: string | number;
    if (typeof leg === "object") {
      const found = Array.isArray(at) ? at.findIndex((item) => inside(item, "name") === leg.named) : -1;
      if (found < 0) return null;
      next = found;
    } else {
      next = leg;
    }
    way.push(next);
    at = inside(at, next);
  }
  return way;
}

type Way = (string | number)[];
const begins = (short: Way, long: Way): boolean =>
  short.length <= long.length && short.every((leg, at) => leg === long[at]);

const isTree = (value: unknown): value is Tree =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Where two documents differ; a list of another length differs as a whole. */
function differences(a: unknown, b: unknown, way: Way): Way[] {
  if (a === b) return [];
  if (Array.isArray(a) && Array.isArray(b) && a.length === b.length) {
    return a.flatMap((item, at) => differences(item, b[at], [...way, at]));
  }
  if (isTree(a) && isTree(b)) {
    const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
    return [...keys].flatMap((key) => differences(a[key], b[key], [...way, key]));
  }
  return [way];
}

export const same = (a: Doc, b: Doc): boolean => differences(a, b, []).length === 0;

/** Names and remarks change no number. */
const SAID = ["name", "note", "material"];

/** The text that names what a change touches and may not; null where all of it is free. */
export function changedOutside(before: Doc, next: Doc, free: string[] | null): string | null {
  if (free === null) return null;
  const ways = [before, next].flatMap((doc) => free.map((place) => numbered(legsOf(place), doc)));
  const outside = differences(before, next, []).find(
    (way) =>
      !SAID.includes(String(way.at(-1))) && !ways.some((allowed) => allowed !== null && begins(allowed, way)),
  );
  return outside ? nameOf(outside) : null;
}

/** Of "ball.pieces[1].density_g_cc" that of "density". */
function nameOf(way: Way): string {
  const key = [...way].reverse().find((leg) => typeof leg === "string");
  return NAMES[String(key).replace(/_(g_cc|in|deg|mph|rpm|lb|ft|s)$/, "")] ?? "held-rest";
}

/** Keys of a ball or shot without their unit, and the texts that name them. */
const NAMES: Record<string, string> = {
  diameter: "held-diameter",
  density: "held-density",
  family: "held-family",
  finish: "held-finish",
  polished: "held-finish",
  grit: "held-grit",
  kind: "held-kind",
  bottom_diameter: "held-bottom-diameter",
  top_diameter: "held-top-diameter",
  height: "held-height",
  ring_diameter: "held-ring-diameter",
  tube_diameter: "held-tube-diameter",
  size: "held-size",
  profile: "held-profile",
  squash: "held-squash",
  at: "held-position",
  turn: "held-turn",
  pieces: "held-pieces",
  cuts: "held-cuts",
  holes: "held-holes",
  entry: "held-entry",
  axis: "held-axis",
  depth: "held-depth",
  hand: "held-hand",
  speed: "held-speed",
  revs: "held-revs",
  axis_rotation: "held-axis-rotation",
  axis_tilt: "held-axis-tilt",
  launch_angle: "held-launch-angle",
  board: "held-board",
  pin_to_pap: "held-pin-to-pap",
  drilling_angle: "held-drilling-angle",
  start_turn: "held-start-turn",
  drilling: "held-drilling",
  val_angle: "held-val-angle",
  lane: "held-lane",
  oil: "held-oil",
  zones: "held-zones",
};

/** Whether anything at or below a place may be changed. */
export function mayChange(place: string, free: string[] | null, doc: Doc): boolean {
  if (free === null) return true;
  const way = numbered(legsOf(place), doc);
  return free.some((text) => {
    const allowed = numbered(legsOf(text), doc);
    return way !== null && allowed !== null && (begins(allowed, way) || begins(way, allowed));
  });
}

/** Whether all of a place may be changed. */
export function mayReplace(place: string, free: string[] | null, doc: Doc): boolean {
  if (free === null) return true;
  const way = numbered(legsOf(place), doc);
  return free.some((text) => {
    const allowed = numbered(legsOf(text), doc);
    return way !== null && allowed !== null && begins(allowed, way);
  });
}
