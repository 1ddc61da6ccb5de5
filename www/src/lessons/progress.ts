// What this learner has done, kept by the browser and saved to a file. Two pages
// may be open at once: what is kept is read anew before each change.

import { signal } from "@preact/signals";
import { saveJson } from "../files";
import { onlyOf } from "../kinds";
import { worded } from "../locale/worded";
import { more } from "../more";
import { isProblem } from "../problem";
import { MIB } from "../read-file";
import type { LessonDoc, LessonStep, Problem, ProgressFile } from "../types";
import { say } from "./say";

/** As the module reads them. */
export const MOST_PROGRESS_BYTES = 4 * MIB;

const KEY = "pithball.progress/1";
const UNREADABLE_KEY = "pithball.progress.unreadable";

export type LessonProgress = ProgressFile["lessons"][number];
export type StepProgress = LessonProgress["steps"][number];

const NOTHING: ProgressFile = { format: "pithball.progress/1", learner: "", lessons: [] };

export const progress = signal<ProgressFile>(NOTHING);
/** The text that says why what was done is not kept; null while it is. */
export const trouble = signal<string | null>(null);

let opened = false;

/** Takes up what is kept, once; later changes of other pages follow by themselves. */
export function openProgress(): void {
  if (opened) return;
  opened = true;
  take();
  addEventListener("storage", ({ key }) => {
    if (key === KEY) take();
  });
}

function take(): void {
  let text: string | null = null;
  try {
    text = localStorage.getItem(KEY);
  } catch {
    trouble.value = "progress-refused";
  }
  if (text === null) return;
  try {
    progress.value = more.read_progress(text);
  } catch (error) {
    if (!isProblem(error)) throw error;
    try {
      localStorage.setItem(UNREADABLE_KEY, text);
    } catch {
      // The first copy stays until the next change.
    }
    trouble.value = "progress-unreadable";
  }
}

function change(edit: (file: ProgressFile) => ProgressFile): void {
  openProgress();
  // Only where it is kept at all may another page have written meanwhile.
  if (trouble.peek() === null) take();
  progress.value = edit(progress.peek());
  try {
    localStorage.setItem(KEY, JSON.stringify(progress.peek()));
    trouble.value = null;
  } catch (error) {
    const full = error instanceof DOMException && error.name === "QuotaExceededError";
    trouble.value = full ? "progress-full" : "progress-not-kept";
  }
}

const cut = (text: string): string => [...text].slice(0, 400).join("");

export function nameLearner(learner: string): void {
  change((file) => ({ ...file, learner: cut(learner) }));
}

/** Notes something about a step; `finished` once the last of all is passed. */
export function noteStep(
  about: LessonDoc,
  step: LessonStep,
  edit: (was: StepProgress) => StepProgress,
): void {
  change((file) => {
    const was = file.lessons.find(({ id }) => id === about.id);
    const lesson = was ?? { id: about.id, title: cut(about.title), of_steps: about.steps.length, steps: [] };
    const old = lesson.steps.find(({ id }) => id === step.id);
    const now = edit(old ?? { id: step.id, title: cut(step.title), passed: false });
    const steps = old ? lesson.steps.map((one) => (one === old ? now : one)) : [...lesson.steps, now];
    const next = settled({ ...lesson, of_steps: about.steps.length, steps }, about);
    return {
      ...file,
      lessons: was ? file.lessons.map((one) => (one === was ? next : one)) : [...file.lessons, next],
    };
  });
}

function settled(lesson: LessonProgress, about: LessonDoc): LessonProgress {
  const all = about.steps.every(({ id }) => lesson.steps.some((step) => step.id === id && step.passed));
  if (!all || lesson.finished_at) return lesson;
  return { ...lesson, finished_at: new Date().toISOString() };
}

export const lessonProgress = (id: string): LessonProgress | null =>
  progress.value.lessons.find((lesson) => lesson.id === id) ?? null;

export function saveProgress(): void {
  const file = progress.peek();
  saveJson(file.learner || say("progress-file"), "progress.json", file);
}

/** What is in a file; throws a `Problem`. */
export function readProgress(text: string): ProgressFile {
  onlyOf(["progress"], text);
  return more.read_progress(text);
}

/** Why a file is none of progress, and what one is. */
export function notProgress({ message, place }: Problem): string {
  // What was never read as one: lost, too large, no text.
  if (typeof message === "function") return message();
  if (place === "" || place === "format") return say("progress-no-file", { why: worded(message) });
  return say("progress-where", { says: worded(message), place });
}

const worth = (lesson: LessonProgress): number =>
  (lesson.finished_at ? 1000 : 0) + lesson.steps.filter(({ passed }) => passed).length;

/** Takes in a file: of each lesson the one that went further stays. Throws a `Problem`. */
export function addProgress(text: string): number {
  const other = readProgress(text);
  let taken = 0;
  change((file) => {
    const lessons = new Map(file.lessons.map((lesson) => [lesson.id, lesson]));
    for (const lesson of other.lessons) {
      const mine = lessons.get(lesson.id);
      if (mine && worth(mine) >= worth(lesson)) continue;
      lessons.set(lesson.id, lesson);
      taken += 1;
    }
    return { ...file, learner: file.learner || other.learner, lessons: [...lessons.values()] };
  });
  return taken;
}

export function forgetProgress(): void {
  change(() => NOTHING);
}
