// The other side of `jobs.ts`: one instance of the second module for itself, one task
// at a time, nothing kept but the ball or shot of the task before. Bundled by itself
// as a classic script: it imports nothing when it runs and asks the network
// for nothing, so that it starts from a blob, over http as from a file.

import * as bindings from "../pkg/more.js";
import { flat, type MapSides } from "./maker/map/asked";
import type {
  Area,
  BallFile,
  BallMap,
  Cover,
  Ladder,
  LessonProblem,
  Lever,
  MoreModule,
  Poured,
  Scattered,
  Section,
  ShotFile,
  Sought,
  TargetFile,
  TolerancesFile,
  WasmScatter,
  WasmSeek,
  WasmThrows,
  WhyTold,
  WorkBall,
  Worn,
} from "./types";

const { Ball, lesson_problems, Scatter, Seek, Throws, why } = bindings as unknown as MoreModule;

const balls = memo<BallFile, WorkBall>((file) => new Ball(file));
const scatters = memo<ScatterAsked, WasmScatter>((text) => {
  const { ball, tolerances } = JSON.parse(text) as ScatterAsked;
  return new Scatter(ball, tolerances);
});
const seeks = memo<SeekAsked, WasmSeek>((text) => {
  const { ball, target } = JSON.parse(text) as SeekAsked;
  return new Seek(ball, target);
});
const throws = memo<ShotFile, WasmThrows>((shot) => new Throws(shot));

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
  /** Why shot `b` differs from shot `a`, each with its ball inside. */
  why: (asked: { a: ShotFile; b: ShotFile; same_effort: boolean; labels: [string, string] }): WhyTold =>
    why(asked.a, asked.b, asked.same_effort, ...asked.labels),
  /** Part `part` of `parts` of the throws about a shot. */
  throws: (asked: { shot: ShotFile; part: number; parts: number }): Float64Array => {
    const all = throws(asked.shot);
    const start = (part: number) => Math.round((all.count * part) / asked.parts);
    return all.part(start(asked.part), start(asked.part + 1));
  },
  /** What all of them come to. */
  area: (asked: { shot: ShotFile; arrivals: Float64Array }): Area | null =>
    throws(asked.shot).area(asked.arrivals),
  /** Weighs a ball and rolls a shot with it, to see that both come to an end. */
  attempt: ({ ball, shot }: { ball: BallFile; shot: Omit<ShotFile, "ball"> }): boolean => {
    balls(ball).roll(shot);
    return true;
  },
  /** The oil of a shot after games of it. */
  wear: (asked: { ball: BallFile; shot: Omit<ShotFile, "ball">; games: number }): Worn =>
    balls(asked.ball).wear(asked.shot, asked.games),
  /** Everything wrong with a lesson that is being written; `files` is what it may name. */
  lesson: (asked: { text: string; files: Record<string, unknown> }): LessonProblem[] =>
    lesson_problems(asked.text, asked.files),
  /** Part `part` of `parts` of thousands of balls within their tolerances. */
  scatter: ({ part, parts, ...asked }: ScatterAsked & { part: number; parts: number }): Float64Array => {
    const made = scatters(asked);
    const start = (part: number) => Math.round((made.units() * part) / parts);
    return made.run(start(part), start(part + 1));
  },
  /** What all of them come to. */
  scattered: ({ results, ...asked }: ScatterAsked & { results: Float64Array }): Scattered =>
    scatters(asked).merge(results),
  /** Where one start leads that seeks a core. */
  seek: ({ start, ...asked }: SeekAsked & { start: number }): Float64Array =>
    seeks(asked).run(start, start + 1),
  /** What the first so many starts come to. */
  sought: ({ results, ...asked }: SeekAsked & { results: Float64Array }): Sought =>
    seeks(asked).merge(results),
  /** What controls `from..to` of a ball move. */
  levers: (asked: { ball: BallFile; from: number; to: number }): Lever[] =>
    balls(asked.ball).levers(asked.from, asked.to),
  /** A map without its rows. */
  map: ({ ball, sides }: MapAsked): BallMap => balls(ball).map(...flat(sides)),
  /** Rows `from..to` of a map. */
  rows: ({ ball, sides, from, to }: MapAsked & { from: number; to: number }): BallMap["rows"] =>
    balls(ball).map_rows(...flat(sides), from, to),
  /** How each ball is poured; `waste` is the part of a pour that is lost. */
  pour: (asked: { balls: BallFile[]; waste: number | null }): Poured[] =>
    asked.balls.map((ball) => balls(ball).pour(asked.waste ?? undefined)),
};

type Plane = Pick<Section, "normal" | "depth_in">;

/** A ball's recipe and how far it may stray. */
interface ScatterAsked {
  ball: BallFile;
  tolerances: TolerancesFile;
}
/** Where to begin and what is wanted. */
interface SeekAsked {
  ball: BallFile;
  target: TargetFile;
}
/** A ball over two of its controls, `count` values along each. */
interface MapAsked {
  ball: BallFile;
  sides: MapSides;
}
export type JobList = typeof JOBS;
export type JobName = keyof JobList;

/** To the worker: the module first, then tasks. */
export type ToWorker = { module: WebAssembly.Module } | { id: number; job: JobName; asked: unknown };
/** From the worker. A `Problem` is thrown as it is; what else is thrown comes as its message. */
export type FromWorker = { id: number } & ({ done: unknown } | { problem: unknown } | { broke: string });

function sawn(file: BallFile, plane: Plane): Section {
  const ball = new Ball(file);
  try {
    return ball.section(plane.normal, plane.depth_in);
  } finally {
    ball.free();
  }
}

/** Makes something of a file, or gives what was made last where the file is the same. */
function memo<File, Made extends { free(): void }>(make: (text: string) => Made): (file: File) => Made {
  let last: { text: string; made: Made } | null = null;
  return (file) => {
    const text = JSON.stringify(file);
    if (last?.text !== text) {
      last?.made.free();
      last = null;
      last = { text, made: make(text) };
    }
    return last.made;
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
  if ("module" in data) bindings.initSync({ module: data.module });
  else self.postMessage(answer(data.id, data.job, data.asked));
});
