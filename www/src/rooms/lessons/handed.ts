// The progress files of a class: told apart by what they hold, kept for the visit.

import { signal } from "@preact/signals";
import { MOST_PROGRESS_BYTES, notProgress, readProgress } from "../../lessons/progress";
import type { ToSay } from "../../locale/say";
import { isProblem } from "../../problem";
import { textOf } from "../../read-file";
import type { ProgressFile } from "../../types";
import { say } from "./say";

const MOST_FILES = 500;

export interface Handed {
  /** The name of its file, with a number where another has that name too. */
  name: string;
  file: ProgressFile;
}

export const handed = signal<Handed[]>([]);
export const notRead = signal<ToSay[]>([]);
/** Which of them hold the same as one that is there. */
export const twice = signal<ToSay[]>([]);

export async function takeHanded(files: File[]): Promise<void> {
  const all = [...handed.peek()];
  const wrong: ToSay[] = [];
  const same: ToSay[] = [];
  for (const file of files.slice(0, MOST_FILES)) {
    try {
      const read = readProgress(await textOf(file, MOST_PROGRESS_BYTES));
      const holds = JSON.stringify(read);
      const known = all.find((one) => JSON.stringify(one.file) === holds);
      if (known) same.push(() => say("class-same", { file: file.name, other: known.name }));
      else all.push({ name: nameAmong(all, file.name), file: read });
    } catch (error) {
      if (!isProblem(error)) throw error;
      wrong.push(() => say("class-refused", { file: file.name, why: notProgress(error) }));
    }
  }
  if (files.length > MOST_FILES) wrong.push(() => say("class-only-first", { files: MOST_FILES }));
  handed.value = all;
  notRead.value = wrong;
  twice.value = same;
}

export function putAway(): void {
  handed.value = [];
  notRead.value = [];
  twice.value = [];
}

function nameAmong(all: Handed[], name: string): string {
  const taken = new Set(all.map((one) => one.name));
  let free = name;
  for (let n = 2; taken.has(free); n += 1) free = `${name} (${n})`;
  return free;
}
