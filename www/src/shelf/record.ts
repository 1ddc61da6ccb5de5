// What is kept of one thing on the shelf, and how it is read back: never
// trusted, always through the module.

import type { ToSay } from "../locale/say";
import { ownProblem } from "../own-problem";
import { isProblem, orProblem } from "../problem";
import type { WholeShot } from "../store";
import type { Problem, ShelfEntry, WasmModule } from "../types";
import { makeBall } from "./measured";
import { say } from "./say";

/** One record of the store: the shot as text, so that it comes back as it was put there. */
export interface Kept {
  id: string;
  /** Another with every change: whoever changes a record says which one it saw. */
  rev: string;
  name: string;
  note: string;
  saved_at: string;
  shot: string;
}

/** A thing on the shelf. */
export interface Entry {
  id: string;
  /** The record it was last read or written as; null while it was never kept. */
  rev: string | null;
  name: string;
  note: string;
  saved_at: string;
  shot: WholeShot;
  /** Why the browser does not keep it as it is here, or that it is not known yet; null where it does. */
  unkept: ToSay | "not yet" | null;
}

export const whyUnkept = ({ unkept }: Entry): ToSay | null => (typeof unkept === "function" ? unkept : null);

/** A record that cannot be read: shown as such, and handed out as it is. */
export interface Broken {
  id: string;
  raw: unknown;
  problem: Problem;
}

/** Works on any address; `crypto.randomUUID` does so on secure ones only. */
export function token(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(12)), (byte) =>
    byte.toString(16).padStart(2, "0"),
  ).join("");
}

export function toKept(entry: Entry): Kept {
  const { id, name, note, saved_at, shot } = entry;
  return { id, rev: token(), name, note, saved_at, shot: JSON.stringify(shot) };
}

export function toFile({ name, note, saved_at, shot }: Entry): ShelfEntry {
  return { name, ...(note === "" ? {} : { note }), saved_at, shot };
}

/** Reads a record; a problem where it is not one of ours or what it holds is wrong. */
export function readKept(wasm: WasmModule, raw: unknown): Entry | Problem {
  if (!isKept(raw)) {
    return ownProblem(() => say("kept-no-record"));
  }
  const shot = readShot(wasm, raw.shot);
  if (isProblem(shot)) return shot;
  const { id, rev, name, note, saved_at } = raw;
  return { id, rev, name, note, saved_at, shot, unkept: null };
}

/** A shot with its ball inside, from its text, checked down to the ball it makes. */
export function readShot(wasm: WasmModule, text: string): WholeShot | Problem {
  return orProblem(() => {
    const shot = wasm.read_shot(text);
    const { ball, lane } = shot;
    if (typeof ball === "string") return elsewhere("ball", ball);
    if ("oil" in lane && typeof lane.oil === "string") return elsewhere("oil", lane.oil);
    makeBall(wasm, ball).free();
    return { ...shot, ball };
  });
}

/** The shelf holds what a shot needs itself. */
function elsewhere(what: "ball" | "oil", path: string): Problem {
  return what === "ball"
    ? ownProblem(() => say("kept-ball-elsewhere", { file: path }), "ball")
    : ownProblem(() => say("kept-oil-elsewhere", { file: path }), "lane.oil");
}

function isKept(value: unknown): value is Kept {
  if (typeof value !== "object" || value === null) return false;
  const record = value as Record<string, unknown>;
  return ["id", "rev", "name", "note", "saved_at", "shot"].every((key) => typeof record[key] === "string");
}
