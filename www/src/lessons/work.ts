// Working through a lesson: which bench each step has, and what is noted of it.

import { batch } from "@preact/signals";
import { language } from "../locale/language";
import type { ToSay } from "../locale/say";
import { isProblem } from "../problem";
import type { Doc, Room, Store } from "../store";
import type { Guess, LessonDoc, WasmLesson } from "../types";
import { lessonsAt } from "./at";
import { lessonProgress, noteStep } from "./progress";
import { inLanguage, type Listed, listedOf } from "./read";
import { say } from "./say";
import { type StepState, same, type Taken } from "./taken";

const fresh = (start: Doc): StepState => ({
  start,
  end: null,
  guess: null,
  answered: null,
  hints: 0,
  passed: false,
});

/** The rooms that a step names, or those of the step before it. */
function roomsOf({ steps }: LessonDoc, at: number): Room[] | null {
  const named = steps.slice(0, at + 1).filter(({ rooms }) => rooms !== null);
  return (named.at(-1)?.rooms ?? null) as Room[] | null;
}

/** To predict is to leave things as they are, and so is to read. */
export function holds(about: LessonDoc, at: number) {
  const step = about.steps[at];
  return {
    // A path is drawn by itself.
    rooms: step?.asks?.kind === "path" ? [] : roomsOf(about, at),
    free: step?.kind === "predict" ? [] : (step?.free ?? null),
    asks: step?.kind === "predict",
  };
}

/** A step as the lesson itself gets there, and how it goes on. */
function ownWay(lesson: WasmLesson, step: number): { start: Doc; end: Doc } {
  let left: Doc | null = null;
  for (let at = 0; ; at += 1) {
    const start: Doc = lesson.opens(at, left);
    const end: Doc = lesson.ends(at, start);
    if (at === step) return { start, end };
    left = end;
  }
}

/** What a step leads to from a bench; from the lesson's own where it leads nowhere from there. */
function wayFrom(lesson: WasmLesson, step: number, start: Doc): { start: Doc; end: Doc } {
  try {
    const end: Doc = lesson.ends(step, start);
    if (lesson.check(step, start, end).passed) return { start, end };
  } catch (error) {
    if (!isProblem(error)) throw error;
  }
  return ownWay(lesson, step);
}

export const benchOf = (store: Store): Doc => {
  const { file, shot } = store.derived.value;
  return { ball: file, shot };
};

/** Gives the bench to a lesson; `trial` while it is being written. */
export function begin(store: Store, text: string, trial = false): void {
  const { lesson, about } = listedOf(text);
  const start = lesson.opens(0, null);
  store.lend(start, { text, named: language(), trial, step: 0, states: [fresh(start)], ...holds(about, 0) });
  store.notice.value = null;
  store.look({ room: "lesson", exploded: 0 });
  focusLesson();
}

/** The first step that is not passed yet of a lesson begun; null where there is none. */
export function openStep(about: LessonDoc): number | null {
  const mine = lessonProgress(about.id);
  if (!mine || mine.finished_at) return null;
  const at = about.steps.findIndex(({ id }) => !mine.steps.some((step) => step.id === id && step.passed));
  return at < 0 ? null : at;
}

/** Gives the bench to a lesson begun before, at a step; those before it as the lesson has them. */
export function resume(store: Store, text: string, step: number, trial = false): void {
  const { lesson, about } = listedOf(text);
  const mine = lessonProgress(about.id);
  const states: StepState[] = [];
  let left: Doc | null = null;
  for (let at = 0; at <= step; at += 1) {
    const state = fresh(lesson.opens(at, left));
    const { id } = about.steps[at] ?? {};
    state.passed = mine?.steps.some((known) => known.id === id && known.passed) ?? false;
    if (at < step) state.end = left = lesson.ends(at, state.start);
    states.push(state);
  }
  const start = states[step]?.start;
  if (!start) return;
  store.lend(start, { text, named: language(), trial, step, states, ...holds(about, step) });
  store.notice.value = null;
  store.look({ room: "lesson", exploded: 0 });
  focusLesson();
}

/** Where the keyboard goes when another step is in front. */
function focusLesson(): void {
  requestAnimationFrame(() => {
    const heading = document.getElementById("lesson-step");
    (heading ?? document.getElementById("room-lesson"))?.focus({ preventScroll: true });
    document.getElementById("room-lesson")?.querySelector(".room-body")?.scrollTo(0, 0);
  });
}

const change = (taken: Taken, edit: (state: StepState) => StepState): Taken => ({
  ...taken,
  states: taken.states.map((state, at) => (at === taken.step ? edit(state) : state)),
});

/** To another step: one that was open before as it was left, the next as the lesson opens it. */
export function goTo(store: Store, taken: Taken, step: number): void {
  const { lesson, about } = listedOf(taken.text);
  const bench = benchOf(store);
  const left = change(taken, (state) => ({ ...state, end: bench }));
  const known = left.states[step];
  const state = known ?? fresh(lesson.opens(step, bench));
  // A question that waits is asked over what it was asked over.
  const waiting = about.steps[step]?.kind === "predict" && !state.passed;
  store.lend(waiting ? state.start : (state.end ?? state.start), {
    ...left,
    step,
    states: known ? left.states : [...left.states, state],
    ...holds(about, step),
  });
  store.look({ room: "lesson" });
  focusLesson();
}

/** The step in front is done; on to the next, or to the end. */
export function goOn(store: Store, taken: Taken): void {
  const one = listedOf(taken.text);
  const step = one.about.steps[taken.step];
  const asks = step?.kind === "predict" || step?.kind === "do";
  const now = asks ? skip(store, one, taken) : pass(store, one, taken);
  if (now === null) return;
  if (taken.step + 1 < one.about.steps.length) goTo(store, now, taken.step + 1);
  else finish(store, one, now);
}

/**
 * Leaves a question or a task open: what it leads to stands on the bench, so that
 * the next step is true. Null where that is to be seen first.
 */
function skip(store: Store, { lesson, about }: Listed, taken: Taken): Taken | null {
  const step = about.steps[taken.step];
  const state = taken.states[taken.step];
  if (!step || !state || state.passed || state.shown) return taken;
  const { start, end } = wayFrom(lesson, taken.step, state.start);
  const task = step.kind === "do";
  const now = change(taken, (old) => ({ ...old, start, ...(task && { shown: true }) }));
  store.lend(end, now);
  if (!taken.trial)
    noteStep(about, step, (was) => (task ? { ...was, tries: was.tries ?? 0, shown: true } : was));
  return task ? null : now;
}

/** Marks the step in front as passed. */
export function pass(store: Store, { about }: Listed, taken: Taken): Taken {
  const step = about.steps[taken.step];
  if (!step) return taken;
  const now = change(taken, (state) => ({ ...state, passed: true }));
  store.keepTaken(now);
  const { hints, solved } = now.states[taken.step] ?? { hints: 0 };
  if (!taken.trial) {
    noteStep(about, step, (was) => ({
      ...was,
      passed: true,
      ...(step.kind === "do" && { hints: Math.max(hints, was.hints ?? 0) }),
      ...(solved && { shown: true }),
    }));
  }
  return now;
}

/** Notes a change that was left standing and is not what is wanted. */
export function failed({ lesson, about }: Listed, taken: Taken, now: Doc): void {
  const step = about.steps[taken.step];
  const state = taken.states[taken.step];
  if (!step || !state || taken.trial || same(state.start, now)) return;
  if (lesson.check(taken.step, state.start, now).passed) return;
  noteStep(about, step, (was) => ({ ...was, tries: (was.tries ?? 0) + 1 }));
}

export function hint(store: Store, taken: Taken): void {
  store.keepTaken(change(taken, (state) => ({ ...state, hints: Math.min(3, state.hints + 1) })));
}

/** The step's bench as it opened. */
export function again(store: Store, taken: Taken): void {
  const state = taken.states[taken.step];
  if (state)
    store.lend(
      state.start,
      change(taken, (old) => ({ ...old, shown: false, solved: false })),
    );
}

/** The lesson's own way to do it, on the bench. */
export function solve(store: Store, { lesson }: Listed, taken: Taken): void {
  const state = taken.states[taken.step];
  if (!state) return;
  const { start, end } = wayFrom(lesson, taken.step, state.start);
  store.lend(
    end,
    change(taken, (old) => ({ ...old, start, solved: true })),
  );
}

/** Answers the prediction of the step in front. */
export function answer(
  store: Store,
  { lesson, about }: Listed,
  taken: Taken,
  guess: Guess,
  said: string,
): void {
  const state = taken.states[taken.step];
  const step = about.steps[taken.step];
  if (!state || !step) return;
  const { doc, outcome, say, truth } = lesson.answer(taken.step, state.start, guess);
  const now = change(taken, (old) => ({ ...old, guess, answered: { outcome, say, truth }, passed: true }));
  store.lend(doc, now);
  if (taken.trial) return;
  // The first answer counts: afterwards one knows.
  noteStep(about, step, (was) => ({
    ...was,
    passed: true,
    answer: was.answer ?? { outcome, said: [...said].slice(0, 400).join(""), ...guess },
  }));
}

function finish(store: Store, { about }: Listed, taken: Taken): void {
  const known = taken.trial ? null : lessonProgress(about.id);
  const open = about.steps.flatMap(({ id }, at) =>
    taken.states[at]?.passed || known?.steps.some((step) => step.id === id && step.passed) ? [] : [at],
  );
  const told = () => {
    const { title, steps } = listedOf(inLanguage(taken.text)).about;
    if (open.length === 0) return say("lesson-finished", { title });
    const left = open.map((at) => say("lesson-open-step", { step: at + 1, title: steps[at]?.title ?? "" }));
    return say("lesson-at-end", { title, open: left.join("; ") });
  };
  leave(store, taken, told, open.length === 0 ? about.id : null);
  if (open.length === 0 || taken.trial) return;
  // To where it can be gone on with, once the room itself has taken the keyboard.
  requestAnimationFrame(() =>
    requestAnimationFrame(() => document.getElementById(`go-on-${about.id}`)?.focus()),
  );
}

/** Own work comes back on the bench. */
export function leave(
  store: Store,
  taken: Taken,
  said: ToSay = () => say("lesson-left"),
  finished: string | null = null,
): void {
  batch(() => {
    store.giveBack();
    lessonsAt.value = taken.trial ? { page: "write" } : { page: "list", ...(finished && { finished }) };
    store.look({ room: "lessons" });
    store.notice.value = said;
  });
  requestAnimationFrame(() => document.getElementById("room-lessons")?.focus({ preventScroll: true }));
}
