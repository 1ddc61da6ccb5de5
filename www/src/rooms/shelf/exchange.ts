// The shelf to files and back: one ball, one shot, or all of it.

import { saveJson, where } from "../../files";
import type { Jobs } from "../../jobs";
import { type Kind, kindOf, oneOf } from "../../kinds";
import type { ToSay } from "../../locale/say";
import { isProblem } from "../../problem";
import { MIB, textOf } from "../../read-file";
import { attempt, isLarge } from "../../share/attempt";
import { tooLong } from "../../shelf/letters";
import type { Broken, Entry } from "../../shelf/record";
import { readShot, toFile } from "../../shelf/record";
import { say } from "../../shelf/say";
import type { Shelf } from "../../shelf/shelf";
import { shorten } from "../../shorten";
import type { Doc, Shot, Store, WholeShot } from "../../store";
import type { BallFile, Problem, ShelfEntry, ShelfFile } from "../../types";
import { count, sentenceIn } from "../../units";

/** As the module reads them. */
const MOST_SHELF_BYTES = 32 * MIB;
/** Letters of a name in a sentence about it. */
const MOST_SAID = 60;

/** Whether a file is a shelf, so that opening it is putting it on the shelf. */
export async function isShelfFile(file: File): Promise<boolean> {
  try {
    return kindOf(await textOf(file, MOST_SHELF_BYTES)) === "shelf";
  } catch (error) {
    if (!isProblem(error)) throw error;
    return false;
  }
}

export function saveEntryBall(entry: Entry): void {
  saveJson(entry.name, "ball.json", entry.shot.ball);
}

/** The shot under the name that it has on the shelf; its note there goes before its own name and note. */
export function saveEntryShot({ name, note, shot }: Entry): void {
  const { format, ball, name: own = "", note: ownNote = "", ...rest } = shot;
  const notes = [own === name || note.includes(own) ? "" : own, note.includes(ownNote) ? "" : ownNote];
  const all = [note, ...notes].filter((text) => text !== "").join("\n");
  const file = { format, name, ...(all === "" ? {} : { note: all }), ball, ...rest };
  saveJson(name, "shot.json", file);
}

export function saveWholeShelf(entries: Entry[]): void {
  const file: ShelfFile = { format: "pithball.shelf/1", entries: entries.map(toFile) };
  const day = new Date().toISOString().slice(0, 10);
  saveJson(say("kept-file", { day }), "shelf.json", file);
}

/** What cannot be read, as it is. */
export function saveBroken({ id, raw }: Broken): void {
  saveJson(say("kept-file-unread", { id }), "json", raw);
}

/** Puts on the shelf what is in files, each a ball, a shot or a whole shelf. Tells what came of it. */
export async function openOnShelf(store: Store, jobs: Jobs, shelf: Shelf, files: File[]): Promise<void> {
  const told: ToSay[] = [];
  for (const file of files) told.push(await openOne(store, jobs, shelf, file));
  shelf.said.value = joined(told);
}

/** One after the other. */
const joined =
  (told: ToSay[]): ToSay =>
  () =>
    told.map((one) => one()).join(" ");

async function openOne(store: Store, jobs: Jobs, shelf: Shelf, file: File): Promise<ToSay> {
  try {
    return await takeIn(store, jobs, shelf, file.name, await textOf(file, MOST_SHELF_BYTES));
  } catch (error) {
    if (!isProblem(error)) throw error;
    return () => say("kept-not-read", { file: file.name, why: whyNot(store, error) });
  }
}

const whyNot = (store: Store, problem: Problem): string =>
  sentenceIn(problem.message, store.view.value.units) + where(problem);

async function takeIn(store: Store, jobs: Jobs, shelf: Shelf, from: string, json: string): Promise<ToSay> {
  const kind = oneOf(["ball", "shot", "shelf"], () => say("kept-kinds"), json);
  if (kind) {
    const all = docsIn(kind, json, store.derived.peek().shot);
    for (const doc of all) if (isLarge(doc.ball)) await attempt(jobs, doc);
  }
  if (kind === "ball") {
    new store.wasm.Ball(json).free();
    const ball = JSON.parse(json) as BallFile;
    const { format: kind, ...shot } = store.derived.peek().shot;
    const taken = await takeAll(shelf, from, [
      entryOf({ format: kind, ball, ...shot }, ball.name, ball.note, { name: "name", note: "note" }),
    ]);
    return () => say("kept-with-lane-shot", { taken: taken() });
  }
  if (kind === "shot") {
    const shot = readShot(store.wasm, json);
    if (isProblem(shot)) throw shot;
    const { ball } = shot;
    const at = {
      name: shot.name === undefined ? "ball.name" : "name",
      note: shot.note === undefined ? "ball.note" : "note",
    };
    return takeAll(shelf, from, [entryOf(shot, shot.name ?? ball.name, shot.note ?? ball.note, at)]);
  }
  const { entries, broken } = store.wasm.read_shelf(json);
  const spoiled = broken.map(({ name, problem }) => () => {
    const why = whyNot(store, problem);
    return name === null
      ? say("kept-one-unread", { why })
      : say("kept-named-unread", { name: shorten(name, MOST_SAID), why });
  });
  return joined([await takeAll(shelf, from, entries), ...spoiled]);
}

/** What a file would put on the shelf, before anybody has looked whether it is sound. */
function docsIn(kind: Kind, json: string, here: Shot): Doc[] {
  const file = JSON.parse(json);
  if (kind === "ball") return [{ ball: file, shot: here }];
  const entries = Array.isArray(file.entries) ? file.entries : [];
  const shots = kind === "shot" ? [file] : entries.map((entry: { shot?: unknown } | null) => entry?.shot);
  return shots
    .filter((one: { ball?: unknown } | null) => typeof one?.ball === "object" && one.ball !== null)
    .map(({ ball, ...shot }: WholeShot) => ({ ball, shot }));
}

/** Throws where its name or note, which stand at `at` in the file, are longer than the shelf takes. */
function entryOf(shot: WholeShot, name: string, note = "", at: { name: string; note: string }): ShelfEntry {
  const long = tooLong(name, note, at);
  if (long) throw long;
  return { name, note, shot };
}

async function takeAll(shelf: Shelf, from: string, entries: ShelfEntry[]): Promise<ToSay> {
  const before = shelf.unkept.peek();
  const came = await shelf.addAll(entries);
  const left = entries.length - came;
  const lost = shelf.unkept.peek() > before;
  return () =>
    [
      came === 0
        ? say("kept-nothing-new", { file: from })
        : say("kept-from", { many: count(came), file: from }),
      left > 0 && say("kept-left", { many: left }),
      lost && say("kept-not-by-browser"),
    ]
      .filter(Boolean)
      .join(" ");
}
