// The other side of `jobs.ts`: one instance of the module for itself, one task
// at a time, nothing kept but the ball of the task before. Bundled by itself
// as a classic script: it imports nothing when it runs and asks the network
// for nothing, so that it starts from a blob, over http as from a file.

import { Ball, initSync } from "../pkg/pithball.js";
import type { BallFile, Cover, Ladder, Section, ShotFile, WasmBall, Worn } from "./types";

const balls = memo((file: string) => new Ball(file) as unknown as WasmBall);

/** What can be asked for, each a plain function from plain data to plain data. */
const JOBS = {
  /** The ball at other weights. */
  ladder: (asked: { ball: BallFile; parts: number[]; by_size: boolean }): Ladder =>
    balls(asked.ball).ladder(Uint32Array.from(asked.parts), asked.by_size),
  /** Each ball cut along one plane; null for null. */
  sections: (asked: { balls: (BallFile | null)[]; plane: Plane }): (Section | null)[] =>
    asked.balls.map((ball) => ball && sawn(ball, asked.plane)),
  /** The ball's cover, and its thickness all over. */
  cover: (asked: { ball: BallFile; rows: number; columns: number }): { cover: Cover; map: Float64Array } => {
    const ball = balls(asked.ball);
    return { cover: ball.cover(), map: ball.cover_map(asked.rows, asked.columns) };
  },
  /** Weighs a ball and rolls a shot with it, to see that both come to an end. */
  attempt: ({ ball, shot }: { ball: BallFile; shot: Omit<ShotFile, "ball"> }): boolean => {
    balls(ball).roll(shot);
    return true;
  },
  /** The oil of a shot after games of it. */
  wear: (asked: { ball: BallFile; shot: Omit<ShotFile, "ball">; games: number }): Worn =>
    balls(asked.ball).wear(asked.shot, asked.games),
};

type Plane = Pick<Section, "normal" | "depth_in">;

export type JobList = typeof JOBS;
export type JobName = keyof JobList;

/** To the worker: the module's bytes first, then tasks. */
export type ToWorker = { bytes: ArrayBuffer } | { id: number; job: JobName; asked: unknown };
/** From the worker. A `Problem` is thrown as it is; what else is thrown comes as its message. */
export type FromWorker = { id: number } & ({ done: unknown } | { problem: unknown } | { broke: string });

function sawn(file: BallFile, plane: Plane): Section {
  const ball = new Ball(file) as unknown as WasmBall;
  try {
    return ball.section(plane.normal, plane.depth_in);
  } finally {
    ball.free();
  }
}

/** Makes a ball of a file, or gives the one made last where the file is the same. */
function memo(make: (text: string) => WasmBall): (file: BallFile) => WasmBall {
  let last: { text: string; ball: WasmBall } | null = null;
  return (file) => {
    const text = JSON.stringify(file);
    if (last?.text !== text) {
      last?.ball.free();
      last = null;
      last = { text, ball: make(text) };
    }
    return last.ball;
  };
}

function answer(id: number, job: JobName, asked: unknown): FromWorker {
  try {
    return { id, done: (JOBS[job] as (asked: unknown) => unknown)(asked) };
  } catch (error) {
    if (error instanceof Error) return { id, broke: `${error.name}: ${error.message}` };
    return { id, problem: error };
  }
}

self.addEventListener("message", ({ data }: MessageEvent<ToWorker>) => {
  if ("bytes" in data) initSync({ module: data.bytes });
  else self.postMessage(answer(data.id, data.job, data.asked));
});
