// Opens and saves the files a person keeps: NAME.ball.json, NAME.shot.json,
// NAME.layout.json, NAME.oil.json, NAME.tolerances.json and NAME.target.json.

import { aloud } from "./aloud";
import type { ToSay } from "./locale/say";
import { worded } from "./locale/worded";
import { whole } from "./maker/scatter/tolerances";
import { MIB, textOf } from "./read-file";
import { layoutOf, withLayout } from "./rooms/bench/grip";
import { oiled } from "./rooms/lane/oil/presets";
import { type Doc, isProblem, type Shot, type Store, wholeShot } from "./store";
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

/** Opens any kind of file and says what came of it. */
export async function open(store: Store, file: File): Promise<void> {
  try {
    const text = await textOf(file, MOST_BYTES);
    store.notice.value = null;
    const said = opener(text)(store, text, file.name);
    // A lesson that holds the bench fast has said so itself.
    store.notice.value ??= said;
  } catch (error) {
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

/** Names the place where the sentence does not. */
export function where({ place, message }: Problem): string {
  return place === "" || worded(message).includes(place) ? "" : ` ${say("work-where", { place })}`;
}

/** The format a file says it has; empty where it says none. */
export function formatOf(json: string): string {
  try {
    const value: unknown = JSON.parse(json);
    return typeof value === "object" && value !== null && "format" in value ? String(value.format) : "";
  } catch {
    // The module says what is wrong with it.
    return "";
  }
}

/** By what the file says it is; anything else is read as a ball, and the module says what is wrong. */
function opener(text: string): (store: Store, text: string, name: string) => ToSay {
  const format = formatOf(text);
  if (format.startsWith("pithball.shot")) return openShot;
  if (format.startsWith("pithball.layout")) return openLayout;
  if (format.startsWith("pithball.oil")) return openOil;
  if (format.startsWith("pithball.tolerances")) return openTolerances;
  if (format.startsWith("pithball.target")) return openTarget;
  return openBall;
}

function openBall(store: Store, text: string, name: string): ToSay {
  new store.wasm.Ball(text).free();
  store.replace({ ball: JSON.parse(text) as BallFile });
  return () => say("work-opened", { file: name });
}

function openShot(store: Store, text: string, name: string): ToSay {
  const { ball, ...read } = store.wasm.read_shot(text);
  const { lane } = read;
  const oil = "oil" in lane && typeof lane.oil === "string" ? lane.oil : null;
  const shot: Shot = oil === null ? read : { ...read, lane: store.doc.value.shot.lane };
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
  store.look({ tolerances: read });
  return () => say("work-opened-tolerances", { file: name });
}

function openTarget(store: Store, text: string, name: string): ToSay {
  const { format: _, ...read } = store.wasm.read_target(text);
  store.look({ target: read });
  return () => say("work-opened-target", { file: name });
}
