// What follows from what is on the bench: the ball made, weighed, drilled and thrown.

import { isProblem } from "./problem";
import type { Doc, Shot } from "./store";
import type { BallFile, Drilled, Problem, Roll, WasmBall, WasmModule, Weighed } from "./types";

/** What follows from the doc. `file` and `shot` are those the numbers belong to. */
export interface Derived {
  /** The ball as thrown: drilled where the shot says so. */
  ball: WasmBall;
  weighed: Weighed;
  /** The file of the ball as thrown: with the holes and inserts that the shot drills. */
  made: BallFile;
  /** The file on the bench. */
  file: BallFile;
  /** The ball of `file`; `ball` itself where nothing is drilled. */
  base: WasmBall;
  /** Its numbers; `weighed` itself where nothing is drilled. */
  undrilled: Weighed;
  /** What drilling did; null where nothing is drilled. */
  drilled: Drilled | null;
  /** The numbers before the last edit, to show what it changed. */
  before: Weighed | null;
  shot: Shot;
  roll: Roll;
  rollBefore: Roll | null;
  /** The ball and shot that those numbers belong to. */
  docBefore: Doc | null;
  /** Why the ball on the bench is not the one shown. */
  ballProblem: Problem | null;
  /** Why the shot as typed is not the one shown: `roll` is then the last that could be followed. */
  shotProblem: Problem | null;
}

export function begin(wasm: WasmModule, good: Doc): Derived {
  const base = new wasm.Ball(good.ball);
  const undrilled = base.weigh();
  const found = { file: good.ball, base, undrilled };
  const thrown = drill(found, good.shot);
  return {
    ...found,
    ...thrown,
    roll: thrown.ball.roll(good.shot),
    before: null,
    shot: good.shot,
    rollBefore: null,
    docBefore: null,
    ballProblem: null,
    shotProblem: null,
  };
}

export function tryBall(
  wasm: WasmModule,
  file: BallFile,
): { base: WasmBall; undrilled: Weighed } | { problem: Problem } {
  try {
    const base = new wasm.Ball(file);
    return { base, undrilled: base.weigh() };
  } catch (error) {
    if (isProblem(error)) return { problem: error };
    throw error;
  }
}

type Base = Pick<Derived, "file" | "base" | "undrilled">;
type Thrown = Pick<Derived, "ball" | "made" | "weighed" | "drilled">;

export const asItIs = ({ file, base, undrilled }: Base): Thrown => ({
  ball: base,
  made: file,
  weighed: undrilled,
  drilled: null,
});

/** The ball as a shot throws it. */
function drill(of: Base, shot: Shot): Thrown {
  if (!shot.drilling) return asItIs(of);
  const ball = of.base.drilled(shot);
  return { ball, made: ball.file(), weighed: ball.weigh(), drilled: ball.drilling() };
}

/** Whether two shots drill the same holes. */
const sameHoles = (a: Shot, b: Shot): boolean =>
  a.drilling === b.drilling &&
  (!a.drilling ||
    (a.hand === b.hand &&
      a.layout.pin_to_pap_in === b.layout.pin_to_pap_in &&
      a.layout.drilling_angle_deg === b.layout.drilling_angle_deg));

/** Drills, unless `old` is the very ball already, and rolls. */
export function tryThrow(
  of: Base,
  shot: Shot,
  old: Derived,
): (Thrown & { roll: Roll }) | { problem: Problem } {
  let thrown: Thrown | null = null;
  try {
    const known =
      of.base === old.base &&
      sameHoles(shot, old.shot) &&
      // Not where the ball could not be drilled and went as it is.
      (old.drilled !== null) === (shot.drilling !== undefined);
    const { ball, made, weighed, drilled } = old;
    thrown = known ? { ball, made, weighed, drilled } : drill(of, shot);
    return { ...thrown, roll: thrown.ball.roll(shot) };
  } catch (error) {
    if (thrown && thrown.ball !== of.base && thrown.ball !== old.ball) thrown.ball.free();
    if (isProblem(error)) return { problem: error };
    throw error;
  }
}
