// Balls and shots of the house, weighed and rolled for the pictures of the words.

import { offeredBall } from "../locale/names";
import type { Doc, Shot, Store } from "../store";
import type {
  BallFile,
  Coverstock,
  Drilled,
  OilFile,
  Release,
  Roll,
  Section,
  WasmBall,
  Weighed,
} from "../types";
import { FILES } from "./read";

export interface Scene {
  file: BallFile;
  shot: Shot;
  /** As thrown, and its file. */
  ball: WasmBall;
  made: BallFile;
  weighed: Weighed;
  drilled: Drilled | null;
  roll: Roll;
  /** Through the pin. */
  section: Section;
}

const BALLS = Object.keys(FILES).filter((path) => path.startsWith("balls/"));
const made = new Map<string, Scene>();

/** So many are kept, the oldest given up first. */
const MOST = 120;

/** Everything that pictures show of a bench; made once for the same bench. */
export function sceneOf({ wasm }: Store, doc: Doc): Scene {
  const key = JSON.stringify(doc);
  const known = made.get(key);
  if (known) return known;
  const base = new wasm.Ball(doc.ball);
  const ball = doc.shot.drilling ? base.drilled(doc.shot) : base;
  if (ball !== base) base.free();
  try {
    const scene: Scene = {
      file: doc.ball,
      shot: doc.shot,
      ball,
      made: ball.file(),
      weighed: ball.weigh(),
      drilled: ball.drilling(),
      roll: ball.roll(doc.shot),
      section: ball.section([1, 0, 0], 0),
    };
    for (const [old, { ball: unused }] of made) {
      if (made.size < MOST) break;
      made.delete(old);
      unused.free();
    }
    made.set(key, scene);
    return scene;
  } catch (error) {
    ball.free();
    throw error;
  }
}

/** A ball of the house by its path. */
export const ballAt = (path: string): BallFile => offeredBall(FILES[path] as BallFile);

/** A ball of the house by its number, from 1. */
export const houseBall = (n: number): BallFile => ballAt(BALLS[n - 1] ?? "");

/** A shot of the house by the name of its file, its oil inside. */
export function houseShot(name: string): Shot {
  const { ball: _, ...shot } = FILES[`shots/${name}.shot.json`] as Shot & { ball: unknown };
  const { lane } = shot;
  if (!("oil" in lane) || typeof lane.oil !== "string") return shot;
  return { ...shot, lane: { ...lane, oil: FILES[lane.oil.replace("../", "")] as OilFile } };
}

export const houseDoc = (ball: number, shot = "opening"): Doc => ({
  ball: houseBall(ball),
  shot: houseShot(shot),
});

/** The same hand with one thing of the release changed. */
export function released(doc: Doc, change: Partial<Release>): Doc {
  return { ...doc, shot: { ...doc.shot, release: { ...doc.shot.release, ...change } } };
}

export function covered(doc: Doc, change: Pick<Coverstock, "family" | "finish">): Doc {
  return { ...doc, ball: { ...doc.ball, cover: { ...doc.ball.cover, ...change } } };
}
