// Opens and saves the files a person keeps: NAME.ball.json, NAME.shot.json,
// NAME.layout.json, NAME.oil.json, NAME.tolerances.json and NAME.target.json.

import { aloud } from "./aloud";
import type { Jobs } from "./jobs";
import { type Kind, oneOf, onlyOf } from "./kinds";
import type { ToSay } from "./locale/say";
import { worded } from "./locale/worded";
import { before, putInPlace } from "./maker/before";
import { whole } from "./maker/scatter/tolerances";
import { isProblem } from "./problem";
import { MIB, textOf } from "./read-file";
import { layoutOf, withLayout } from "./rooms/bench/grip";
import { oiled } from "./rooms/lane/oil/presets";
import { attempt, isLarge } from "./share/attempt";
import { type Doc, type Shot, type Store, wholeShot } from "./store";
import type { BallFile, OilFile, Problem } from "./types";
import { sentenceIn } from "./units";
import { say } from "./work";

const MOST_BYTES = 4 * MIB;

/** Hands text or a picture to the browser as a file to save. */
export function download(name: string, content: BlobPart, type = "application/json"): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  aloud("saved", say("work-saved", { file: name }));
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}

export function fileName(name: string, ending: string): string {
  const stem = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "");
  return `${stem || say("work-untitled")}.${ending}`;
}

/** Saves a file under a name, to be read by people too. */
export function saveJson(name: string, ending: string, file: unknown): void {
  download(fileName(name, ending), `${JSON.stringify(file, null, 2)}\n`);
}

export function saveBall(doc: Doc): void {
  saveJson(doc.ball.name, "ball.json", doc.ball);
}

/** The shot with its ball inside, so that one file says it all. */
export function saveShot(doc: Doc): void {
  const name = doc.shot.name ?? doc.ball.name;
  saveJson(name, "shot.json", wholeShot(doc));
}

/** Hand, layout and grip by themselves. */
export function saveLayout(doc: Doc): void {
  const file = layoutOf(doc);
  if (file) saveJson(file.name ?? "", "layout.json", file);
}

export function saveOil(oil: OilFile): void {
  download(fileName(oil.name, "oil.json"), `${JSON.stringify(oil)}\n`);
}

/** Who opens one more waits no longer for the one before. */
let last = new AbortController();

/** Reads a file, does with its text what is to be done, and says what came of it. */
async function opening(
  store: Store,
  file: File,
  act: (text: string, signal: AbortSignal) => ToSay | Promise<ToSay>,
): Promise<void> {
  last.abort();
  last = new AbortController();
  const { signal } = last;
  try {
    const text = await textOf(file, MOST_BYTES);
    if (signal.aborted) return;
    store.notice.value = null;
    const said = await act(text, signal);
    // A lesson that holds the bench fast has said so itself.
    store.notice.value ??= said;
  } catch (error) {
    if (signal.aborted) return;
    if (!isProblem(error)) {
      store.fail(error);
      return;
    }
    store.notice.value = () =>
      say("work-not-opened", {
        file: file.name,
        why: sentenceIn(error.message, store.view.value.units) + where(error),
      });
  }
}

type Opener = (store: Store, text: string, name: string) => ToSay;

const OPENERS = {
  ball: openBall,
  shot: openShot,
  layout: openLayout,
  oil: openOil,
  tolerances: openTolerances,
  target: openTarget,
} satisfies Partial<Record<Kind, Opener>>;
type Opened = keyof typeof OPENERS;

/** Opens any of these by what the file says it is. */
export function open(store: Store, jobs: Jobs, file: File): Promise<void> {
  return opening(store, file, async (text, signal) => {
    const kind = oneOf(Object.keys(OPENERS) as Opened[], () => say("work-kinds"), text);
    const large = largeIn(store, kind, text);
    if (large) {
      store.notice.value = () => say("work-opening", { file: file.name });
      await attempt(jobs, large, signal);
      store.notice.value = null;
    }
    // What is no JSON is read as a ball, and the module says what is wrong.
    return OPENERS[kind ?? "ball"](store, text, file.name);
  });
}

/** Opens a file where only one kind has its place. */
export function openAs(store: Store, kind: Opened, file: File): Promise<void> {
  return opening(store, file, (text) => {
    onlyOf([kind], text);
    return OPENERS[kind](store, text, file.name);
  });
}

/** Names the place where the sentence does not. */
export function where({ place, message }: Problem): string {
  return place === "" || worded(message).includes(place) ? "" : ` ${say("work-where", { place })}`;
}

/** What a file puts on the bench, where it is to be tried first. */
function largeIn(store: Store, kind: Opened | null, text: string): Doc | null {
  if (kind === "ball") {
    const ball = JSON.parse(text) as BallFile;
    return isLarge(ball) ? { ball, shot: store.doc.value.shot } : null;
  }
  if (kind !== "shot") return null;
  const { ball, shot } = shotIn(store, text);
  return typeof ball === "string" || !isLarge(ball) ? null : { ball, shot };
}

/** A shot and its ball; with the lane that is there where its oil is in another file. */
function shotIn(store: Store, text: string): { ball: BallFile | string; shot: Shot; oil: string | null } {
  const { ball, ...read } = store.wasm.read_shot(text);
  const { lane } = read;
  const oil = "oil" in lane && typeof lane.oil === "string" ? lane.oil : null;
  const shot: Shot = oil === null ? read : { ...read, lane: store.doc.value.shot.lane };
  return { ball, shot, oil };
}

function openBall(store: Store, text: string, name: string): ToSay {
  new store.wasm.Ball(text).free();
  store.replace({ ball: JSON.parse(text) as BallFile });
  return () => say("work-opened", { file: name });
}

function openShot(store: Store, text: string, name: string): ToSay {
  const { ball, shot, oil } = shotIn(store, text);
  if (typeof ball === "string") {
    store.replace({ shot });
    return () =>
      oil === null
        ? say("work-opened-not-ball", { file: name, ball })
        : say("work-opened-not-both", { file: name, ball, oil });
  }
  store.replace({ shot, ball });
  return () =>
    oil === null ? say("work-opened", { file: name }) : say("work-opened-not-oil", { file: name, oil });
}

function openOil(store: Store, text: string, name: string): ToSay {
  const oil = store.wasm.read_oil(text);
  store.editShot((old) => ({ ...old, lane: oiled(old.lane, oil) }));
  return () => say("work-opened-oil", { file: name });
}

function openLayout(store: Store, text: string, name: string): ToSay {
  const layout = store.wasm.read_layout(text);
  store.editShot((old) => withLayout(old, layout));
  return () => say("work-opened-layout", { file: name });
}

function openTolerances(store: Store, text: string, name: string): ToSay {
  const { format: _, ...read } = whole(store.wasm.read_tolerances(text));
  putInPlace(store, "tolerances", read);
  return saidOver("tolerances", () => say("work-opened-tolerances", { file: name }));
}

function openTarget(store: Store, text: string, name: string): ToSay {
  const { format: _, ...read } = store.wasm.read_target(text);
  putInPlace(store, "target", read);
  return saidOver("target", () => say("work-opened-target", { file: name }));
}

/** With how to have back the numbers that were there. */
function saidOver(kind: keyof typeof before, said: ToSay): ToSay {
  return before[kind].peek() === null ? said : () => `${said()} ${say("work-numbers-before")}`;
}
