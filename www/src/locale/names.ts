// What the page offers from scenarios/ (balls, layouts, oil, shots, materials), by its names in
// the page's language. The files have the English; once a ball is on the bench its names are the
// reader's own.

import type { BallFile, OilFile, ShotFile } from "../types";
import { translated } from "./say";

export type Kind =
  | "ball"
  | "piece"
  | "cut"
  | "hole"
  | "material"
  | "use"
  | "source"
  | "layout"
  | "oil"
  | "shot"
  | "target"
  | "note";

/** Of a note so many words are in its id. */
const NOTE_WORDS = 8;

/** A name of scenarios/ in the page's language; as it is where it is none of those. To be called while drawing. */
export function offered(kind: Kind, text: string): string {
  const words =
    text
      .toLowerCase()
      .replace(/['’]/g, "")
      .match(/[a-z0-9]+/g) ?? [];
  return translated([kind, ...(kind === "note" ? words.slice(0, NOTE_WORDS) : words)].join("-")) ?? text;
}

/** A part by the name that the module gives it, which calls a cover without a name so. */
export const partCalled = (name: string): string => (name === "cover" ? offered("piece", name) : name);

/** A hole that the page drills, what lines it, or a hole without a name, by the name that the module gives it. */
export function holeName(name: string): string {
  const number = /^hole (\d+)$/.exec(name)?.[1];
  return (number && translated("hole-number", { number })) ?? offered("hole", name);
}

const named = <T extends { name?: string; note?: string }>(kind: Kind, file: T): T => ({
  ...file,
  ...(file.name !== undefined && { name: offered(kind, file.name) }),
  ...(file.note !== undefined && { note: offered("note", file.note) }),
});

/** A ball of scenarios/ as it goes to the bench; materials stay as the file has them, which is how they are known. */
export function offeredBall(ball: BallFile): BallFile {
  const { cover, pieces, holes } = ball;
  return {
    ...named("ball", ball),
    cover: named("piece", cover),
    pieces: pieces.map((piece) => ({
      ...named("piece", piece),
      ...(piece.cuts && { cuts: piece.cuts.map((cut) => named("cut", cut)) }),
    })),
    ...(holes && { holes: holes.map((hole) => named("hole", hole)) }),
  };
}

export const offeredOil = (oil: OilFile): OilFile => named("oil", oil);

/** With its oil; its ball is `offeredBall`'s. */
export function offeredShot<T extends Omit<ShotFile, "ball">>(shot: T): T {
  const { lane } = shot;
  const oil = "oil" in lane && typeof lane.oil === "object" ? offeredOil(lane.oil) : null;
  return { ...named("shot", shot), ...(oil && { lane: { ...lane, oil } }) };
}
