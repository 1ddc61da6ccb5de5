// What the module says about a ball as it is thrown and about its shot, once for
// each content and not again.

import { signal } from "@preact/signals";
import { isProblem } from "../problem";
import type { WholeShot } from "../store";
import type {
  BallFile,
  Checked,
  Drilled,
  Problem,
  Roll,
  Section,
  Vec3,
  WasmBall,
  WasmModule,
  Weighed,
} from "../types";

export interface Measured {
  /** The file of the ball as thrown. */
  made: BallFile;
  weighed: Weighed;
  /** What drilling did; null where nothing is drilled. */
  drilled: Drilled | null;
  checked: Checked;
  /** Sawn through the middle, seen from the side of +x. */
  section: Section;
}

export interface Plane {
  normal: Vec3;
  depth_in: number;
}

const MOST_KNOWN = 2000;

/** Finds by key, and once there is too much lets go of the oldest. */
class Known<T> {
  private readonly found = new Map<string, T | Problem>();

  peek(key: string): T | Problem | undefined {
    return this.found.get(key);
  }

  get(key: string, find: () => T): T | Problem {
    const before = this.found.get(key);
    if (before !== undefined) return before;
    let now: T | Problem;
    try {
      now = find();
    } catch (error) {
      if (!isProblem(error)) throw error;
      now = error;
    }
    this.found.set(key, now);
    const oldest = this.found.keys().next();
    if (this.found.size > MOST_KNOWN && !oldest.done) this.found.delete(oldest.value);
    return now;
  }
}

const balls = new Known<Measured>();
const cuts = new Known<Section>();
const rolls = new Known<Roll>();

/** Works with the ball as it is thrown, drilled where the shot says so, and gives it back. */
function withBall<T>(wasm: WasmModule, shot: WholeShot, work: (ball: WasmBall) => T): T {
  const made = makeBall(wasm, shot.ball);
  try {
    const thrown = made.drilled(shot);
    try {
      return work(thrown);
    } finally {
      thrown.free();
    }
  } finally {
    made.free();
  }
}

/** The ball of a shot file; a problem has its place in that file. */
export function makeBall(wasm: WasmModule, file: BallFile): WasmBall {
  try {
    return new wasm.Ball(file);
  } catch (error) {
    if (isProblem(error)) throw { ...error, place: error.place === "" ? "ball" : `ball.${error.place}` };
    throw error;
  }
}

/** All that the ball as thrown depends on; speed and lane are not among it. */
function ballKey(shot: WholeShot): string {
  const before = keys.get(shot);
  if (before !== undefined) return before;
  const { ball, hand, layout } = shot;
  const key = JSON.stringify("drilling" in shot ? [ball, hand, layout, shot.drilling] : [ball]);
  keys.set(shot, key);
  return key;
}
/** Shots are never changed in place, so that one has one key. */
const keys = new WeakMap<WholeShot, string>();

/** The ball's numbers and its cut; a problem where it cannot be made. */
export function measured(wasm: WasmModule, shot: WholeShot): Measured | Problem {
  return balls.get(ballKey(shot), () =>
    withBall(wasm, shot, (ball) => ({
      made: ball.file(),
      weighed: ball.weigh(),
      drilled: ball.drilling(),
      checked: ball.check(),
      section: ball.section([1, 0, 0], 0),
    })),
  );
}

/** What one stretch of the page's work may spend on measuring, so that it answers meanwhile. */
const STRETCH_MS = 24;
/** How often what was measured in the background is shown. */
const SHOWN_MS = 250;

const waiting = new Map<string, WholeShot>();
const rounds = signal(0);
let spent_ms = 0;
let shown_ms = 0;
let timer = 0;

/**
 * The same for one of many: null while it has to wait, and the part of the page
 * that asked is drawn again once there is more to show.
 */
export function measuredSoon(wasm: WasmModule, shot: WholeShot): Measured | Problem | null {
  const key = ballKey(shot);
  const before = balls.peek(key);
  if (before !== undefined) return before;
  if (spent_ms > STRETCH_MS) {
    waiting.set(key, shot);
    void rounds.value;
  }
  if (timer === 0) timer = setTimeout(measureOn, 0, wasm);
  return spent_ms > STRETCH_MS ? null : timed(() => measured(wasm, shot));
}

function timed<T>(work: () => T): T {
  const begun = performance.now();
  try {
    return work();
  } finally {
    spent_ms += performance.now() - begun;
  }
}

function measureOn(wasm: WasmModule): void {
  timer = 0;
  spent_ms = 0;
  for (const [key, shot] of waiting) {
    if (spent_ms > STRETCH_MS) break;
    waiting.delete(key);
    timed(() => measured(wasm, shot));
  }
  if (waiting.size > 0) timer = setTimeout(measureOn, 0, wasm);
  const now = performance.now();
  if (spent_ms > 0 && (waiting.size === 0 || now - shown_ms > SHOWN_MS)) {
    shown_ms = now;
    rounds.value += 1;
  }
}

/** The ball cut along any plane. */
export function cutOf(wasm: WasmModule, shot: WholeShot, plane: Plane): Section | Problem {
  return cuts.get(`${JSON.stringify(plane)}${ballKey(shot)}`, () =>
    withBall(wasm, shot, (ball) => ball.section(plane.normal, plane.depth_in)),
  );
}

/** The shot rolled; a problem where it cannot be followed. */
export function rolled(wasm: WasmModule, shot: WholeShot): Roll | Problem {
  const { name: _name, note: _note, ...thrown } = shot;
  return rolls.get(JSON.stringify(thrown), () => withBall(wasm, shot, (ball) => ball.roll(shot)));
}
