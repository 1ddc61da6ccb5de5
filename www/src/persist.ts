// Keeps the work in the browser between visits. Storage may be full, forbidden
// or hold what an older or broken page wrote: each is said, none loses work.

import { effect } from "@preact/signals";
import type { ToSay } from "./locale/say";
import type { Doc, Loan, Store, View } from "./store";
import { say } from "./work";

const KEY = "pithball.bench/1";
const UNREADABLE_KEY = "pithball.unreadable";
const QUIET_MS = 300;

/** What is kept. `good` is there while the doc itself is wrong. */
export interface Kept {
  doc: Doc;
  good: Doc | null;
  view: View;
  /** Work that links took the place of; left out by pages before there were links. */
  aside?: Doc[];
  /** The lesson that has the bench, and the reader's own work meanwhile. */
  loan?: Loan | null;
}

export type Found =
  | { kept: Kept }
  | { nothing: true }
  /** Why nothing could be restored: the text that tells the reader. */
  | { trouble: string };

export function restore(): Found {
  let text: string | null;
  try {
    text = localStorage.getItem(KEY);
  } catch {
    return { trouble: "work-nothing-kept" };
  }
  if (text === null) return { nothing: true };
  try {
    const kept = JSON.parse(text) as Kept;
    if (isDoc(kept.doc) && (kept.good === null || isDoc(kept.good)) && isObject(kept.view)) {
      const aside = Array.isArray(kept.aside) ? kept.aside.filter(isDoc) : [];
      const loan = isLoan(kept.loan) ? kept.loan : null;
      // Own work comes before a lesson that cannot be read.
      const own = !loan && isObject(kept.loan) && isDoc(kept.loan.own) ? kept.loan.own : null;
      if (own) return { kept: { ...kept, aside, doc: own, good: null, loan } };
      return { kept: { ...kept, aside, loan } };
    }
  } catch {
    // Told below, as for any other text that is not ours.
  }
  return setAside(text);
}

/** Moves what cannot be read out of the way without losing it. */
function setAside(text: string): Found {
  try {
    localStorage.setItem(UNREADABLE_KEY, text);
  } catch {
    // The first copy is overwritten only by the next edit.
  }
  return { trouble: "work-unreadable" };
}

/** Makes the next visit start from the first ball; the old one is set aside. */
export function startAfresh(): void {
  halted = true;
  try {
    const text = localStorage.getItem(KEY);
    if (text !== null) localStorage.setItem(UNREADABLE_KEY, text);
    localStorage.removeItem(KEY);
  } catch {
    // Where nothing can be kept, the next visit is fresh anyway.
  }
}

/** Makes the next visit start from this instead of what was kept last. */
export function keepInstead(doc: Doc): void {
  halted = true;
  const found = restore();
  if (!("kept" in found)) return;
  try {
    localStorage.setItem(KEY, JSON.stringify({ ...found.kept, doc, good: null }));
  } catch {
    // What was kept stays, and can still be saved to a file.
  }
}

/** Set once the page is on its way out and must not write the old state again. */
let halted = false;

/** Keeps every change, shortly after it, and at the latest when the page goes. */
export function autosave(store: Store): void {
  let timer = 0;
  let waiting: Kept | null = null;
  let failed = false;

  function write(): void {
    clearTimeout(timer);
    if (waiting === null || halted) return;
    try {
      keep(waiting);
      failed = false;
    } catch (error) {
      if (!failed) store.notice.value = whyNotKept(error);
      failed = true;
    }
    waiting = null;
  }

  let first = true;
  effect(() => {
    const { ballProblem, shotProblem, file, shot } = store.derived.value;
    const kept: Kept = {
      doc: store.doc.value,
      good: ballProblem || shotProblem ? { ball: file, shot } : null,
      view: store.view.value,
      aside: store.aside.value,
      loan: store.loan.value,
    };
    if (first) {
      first = false;
      return;
    }
    waiting = kept;
    clearTimeout(timer);
    // What has broken may be left at any moment.
    if (store.fault.value !== null) write();
    else timer = setTimeout(write, QUIET_MS);
  });
  addEventListener("pagehide", write);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") write();
  });
}

/** Where there is no room for everything, the work in hand goes before what was set aside. */
function keep(kept: Kept): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(kept));
  } catch (error) {
    if (!kept.aside?.length) throw error;
    localStorage.setItem(KEY, JSON.stringify({ ...kept, aside: [] }));
  }
}

function whyNotKept(error: unknown): ToSay {
  const full = error instanceof DOMException && error.name === "QuotaExceededError";
  return () => say(full ? "work-storage-full" : "work-storage-refused");
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}

function isLoan(value: unknown): value is Loan {
  if (!isObject(value) || !isDoc(value.own) || !isDoc(value.ownGood)) return false;
  const { taken } = value;
  return (
    isObject(taken) &&
    typeof taken.text === "string" &&
    typeof taken.step === "number" &&
    Array.isArray(taken.states) &&
    taken.states.length > taken.step &&
    taken.states.every((state) => isObject(state) && isDoc(state.start))
  );
}

/** Enough of the shape that the page can show it; the module judges the values. */
function isDoc(value: unknown): value is Doc {
  if (!isObject(value)) return false;
  const { ball, shot } = value;
  return (
    isObject(ball) &&
    typeof ball.name === "string" &&
    typeof ball.diameter_in === "number" &&
    isObject(ball.cover) &&
    Array.isArray(ball.pieces) &&
    ball.pieces.every((piece) => isObject(piece) && isObject(piece.shape)) &&
    isObject(shot) &&
    isObject(shot.release) &&
    isObject(shot.layout) &&
    isObject(shot.lane)
  );
}
