// Keeps the work in the browser between visits. Storage may be full, forbidden,
// hold what an older or broken page wrote, or be written by another tab
// meanwhile: each is said, none loses work.

import { effect, signal } from "@preact/signals";
import { isDoc, isLoan, isObject, soundView } from "./kept-shape";
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
  /** Whether the doc is as a link brought it. */
  linked?: boolean;
  /** The tab that wrote this, and what others wrote since it was opened. */
  tab?: string;
  others?: Other[];
}

/** What another tab had on its bench; what was set aside there has no tab's name. */
interface Other {
  tab: string;
  doc: Doc;
}

export type Found =
  | { kept: Kept }
  | { nothing: true }
  /** Why nothing could be restored: the text that tells the reader. */
  | { trouble: string };

/** This tab among those that keep their work in the same place. */
const TAB = Math.random().toString(36).slice(2);
/** What this tab read or wrote there last. */
let seen: string | null = null;
const MOST_OTHERS = 5;

export function restore(): Found {
  let text: string | null;
  try {
    text = localStorage.getItem(KEY);
    unread.value = localStorage.getItem(UNREADABLE_KEY);
  } catch {
    return { trouble: "work-nothing-kept" };
  }
  if (text === null) return { nothing: true };
  const kept = read(text);
  if (!kept) return setAside(text);
  seen = text;
  // What other tabs did is found by Undo, as what links took the place of.
  const aside = [...(kept.aside ?? []), ...(kept.others ?? []).map(({ doc }) => doc)];
  return { kept: { ...kept, aside, others: [] } };
}

/** What was kept, as far as it is sound; null where it is not ours. */
function read(text: string): Kept | null {
  try {
    const kept = JSON.parse(text) as Kept;
    if (!isDoc(kept.doc) || !(kept.good === null || isDoc(kept.good)) || !isObject(kept.view)) return null;
    const loan = isLoan(kept.loan) ? kept.loan : null;
    const sound: Kept = {
      ...kept,
      view: soundView(kept.view) as View,
      aside: Array.isArray(kept.aside) ? kept.aside.filter(isDoc) : [],
      others: Array.isArray(kept.others) ? kept.others.filter((one) => isObject(one) && isDoc(one.doc)) : [],
      loan,
    };
    // Own work comes before a lesson that cannot be read.
    const own = !loan && isObject(kept.loan) && isDoc(kept.loan.own) ? kept.loan.own : null;
    return own ? { ...sound, doc: own, good: null } : sound;
  } catch {
    return null;
  }
}

/** What could not be read when the page was opened, now or earlier: to be saved to a file or thrown away. */
export const unread = signal<string | null>(null);

export function throwUnreadAway(): void {
  localStorage.removeItem(UNREADABLE_KEY);
  unread.value = null;
}

/** Moves what cannot be read out of the way without losing it, nor what was moved there earlier. */
function setAside(text: string): Found {
  unread.value = unread.value === null || unread.value === text ? text : `${unread.value}\n${text}`;
  try {
    // First out of the way, as there may be no room for it twice.
    localStorage.removeItem(KEY);
    localStorage.setItem(UNREADABLE_KEY, unread.value);
  } catch {
    putBack(text);
  }
  return { trouble: "work-unreadable" };
}

function putBack(text: string): void {
  try {
    localStorage.setItem(KEY, text);
  } catch {
    // It is still offered as a file on this visit.
  }
}

/** Makes the next visit start from the first ball; the old one is set aside. */
export function startAfresh(): void {
  halted = true;
  try {
    const text = localStorage.getItem(KEY);
    if (text !== null) setAside(text);
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
  const begun = store.doc.peek();
  let others: Other[] = [];

  function write(): void {
    clearTimeout(timer);
    if (waiting === null || halted) return;
    try {
      const other = writtenMeanwhile();
      // What was only looked at here does not take the place of what was made there.
      if (other && waiting.doc === begun) return;
      if (other) {
        if (others.length === 0) store.notice.value = () => say("work-other-tab");
        others = beside(others, other);
      }
      const whole = keep({ ...waiting, tab: TAB, others });
      store.unkept.value = whole ? null : () => say("work-aside-unkept");
    } catch (error) {
      store.unkept.value = whyNotKept(error);
    } finally {
      waiting = null;
    }
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
      linked: store.linked.value,
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

/** What another tab kept since this one read or wrote there; null where none did. */
function writtenMeanwhile(): Kept | null {
  const text = localStorage.getItem(KEY);
  return text === null || text === seen ? null : read(text);
}

/** What other tabs made, with what one of them keeps now: the last of each, and what that one had set aside. */
function beside(others: Other[], { tab = "", doc, loan, aside = [], others: theirs = [] }: Kept): Other[] {
  const all = [
    ...others,
    ...theirs,
    ...aside.map((doc) => ({ tab: "", doc })),
    { tab, doc: loan?.own ?? doc },
  ];
  const last = new Map(all.map((one) => [one.tab || JSON.stringify(one.doc), one]));
  last.delete(TAB);
  return [...last.values()].slice(-MOST_OTHERS);
}

/** Where there is no room for everything, the work in hand goes before what was set aside; says whether all is kept. */
function keep(kept: Kept): boolean {
  const { aside = [], others = [] } = kept;
  const put = (what: Kept) => {
    const text = JSON.stringify(what);
    localStorage.setItem(KEY, text);
    seen = text;
  };
  try {
    put(kept);
    return true;
  } catch (error) {
    if (aside.length + others.length === 0) throw error;
    put({ ...kept, aside: [], others: [] });
    return false;
  }
}

function whyNotKept(error: unknown): ToSay {
  const full = error instanceof DOMException && error.name === "QuotaExceededError";
  return () => say(full ? "work-storage-full" : "work-storage-refused");
}
