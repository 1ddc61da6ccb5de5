// A lesson being written: kept by the browser from one visit to the next.

import { signal } from "@preact/signals";

const KEY = "pithball.lesson-draft/1";

function restored(): string {
  try {
    return localStorage.getItem(KEY) ?? "";
  } catch {
    return "";
  }
}

export const draft = signal(restored());
/** Whether the browser keeps it. */
export const draftKept = signal(true);

export function write(text: string): void {
  draft.value = text;
  try {
    localStorage.setItem(KEY, text);
    draftKept.value = true;
  } catch {
    draftKept.value = false;
  }
}
