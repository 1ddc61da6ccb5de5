// A lesson being written, and what it took the place of: kept by the browser from one visit to the next.
// Two pages may be open at once: what one writes the other shows.

import { signal } from "@preact/signals";
import { blank } from "./blank";
import { isOwn } from "./read";

const KEY = "pithball.lesson-draft/1";
const BEFORE = "pithball.lesson-drafts-before/1";

function restored<T>(read: () => T, otherwise: T): T {
  try {
    return read();
  } catch {
    return otherwise;
  }
}

function textsBefore(): string[] {
  const texts: unknown = JSON.parse(localStorage.getItem(BEFORE) ?? "[]");
  return Array.isArray(texts) ? texts.filter((text) => typeof text === "string") : [];
}

export const draft = signal(restored(() => localStorage.getItem(KEY) ?? "", ""));
/** Own texts that others took the place of; the last is the next to come back. */
export const before = signal(restored(textsBefore, []));
/** Whether the browser keeps them. */
export const draftKept = signal(true);

/** The text that is kept, as this page read or wrote it last. */
let seen = draft.value;

/** What there is to lose: no text that the page offers as it is. */
const own = (text: string): string[] =>
  text.trim() !== "" && isOwn(text) && text !== blank() && !before.value.includes(text) ? [text] : [];

/** What another page has kept since; null where there is nothing new. */
function news(): string | null {
  return restored(() => {
    const there = localStorage.getItem(KEY);
    // What is kept here only is not let go.
    if (draftKept.peek()) before.value = textsBefore();
    if (there === null || there === seen) return null;
    seen = there;
    return there;
  }, null);
}

/** Before a change: what another page wrote that this one never showed can be taken back. */
function meet(): void {
  const there = news();
  if (there !== null && there !== draft.value) before.value = [...before.value, ...own(there)];
}

addEventListener("storage", ({ key }) => {
  if (key !== KEY && key !== BEFORE) return;
  // What is in view and not kept stays.
  if (!draftKept.peek()) return meet();
  draft.value = news() ?? draft.value;
});

function keep(text: string): void {
  draft.value = text;
  try {
    localStorage.setItem(KEY, text);
    seen = text;
    if (before.value.length > 0) localStorage.setItem(BEFORE, JSON.stringify(before.value));
    else localStorage.removeItem(BEFORE);
    draftKept.value = true;
  } catch {
    draftKept.value = false;
  }
}

export function write(text: string): void {
  meet();
  keep(text);
}

/** Another text in the place of what was written, which can be taken back. */
export function replace(text: string): void {
  meet();
  if (text !== draft.value) before.value = [...before.value, ...own(draft.value)];
  keep(text);
}

/** The text before; what was written since can be taken back in its turn. */
export function takeBack(): void {
  meet();
  const last = before.value.at(-1);
  if (last === undefined) return;
  before.value = [...own(draft.value), ...before.value.slice(0, -1)];
  keep(last);
}
