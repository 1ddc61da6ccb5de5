// Working through a lesson: which bench each step has, and what is noted of it.

import { batch } from "@preact/signals";
import type { Doc, Room, Store } from "../store";
import type { Guess, LessonStep, Said } from "../types";
import { lessonsAt } from "./at";
import { noteStep } from "./progress";
import { type Listed, listedOf } from "./read";
import { plain } from "./said";
import type { StepState, Taken } from "./taken";

const fresh = (start: Doc): StepState => ({
  start,
  end: null,
  guess: null,
  answered: null,
  hints: 0,
  passed: false,
});

/** To predict is to leave things as they are, and so is to read. */
const holds = (step: LessonStep | undefined) => ({
  rooms: (step?.rooms ?? null) as Room[] | null,
  free: step?.kind === "predict" ? [] : (step?.free ?? null),
  asks: step?.kind === "predict",
});

const benchOf = (store: Store): Doc => {
  const { file, shot } = store.derived.value;
  return { ball: file, shot };
};

/** Gives the bench to a lesson; `trial` while it is being written. */
export function begin(store: Store, text: string, trial = false): void {
  const { lesson, about } = listedOf(store.wasm, text);
  const start = lesson.opens(0, null);
  store.lend(start, { text, trial, step: 0, states: [fresh(start)], ...holds(about.steps[0]) });
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
  const { lesson, about } = listedOf(store.wasm, taken.text);
  const bench = benchOf(store);
  const left = change(taken, (state) => ({ ...state, end: bench }));
  const known = left.states[step];
  const state = known ?? fresh(lesson.opens(step, bench));
  store.lend(state.end ?? state.start, {
    ...left,
    step,
    states: known ? left.states : [...left.states, state],
    ...holds(about.steps[step]),
  });
  store.look({ room: "lesson" });
  focusLesson();
}

/** The step in front is done; on to the next, or to the end. */
export function goOn(store: Store, taken: Taken): void {
  const one = listedOf(store.wasm, taken.text);
  const step = one.about.steps[taken.step];
  const asks = step?.kind === "predict" || step?.kind === "do";
  const now = asks ? taken : pass(store, one, taken);
  if (taken.step + 1 < one.about.steps.length) goTo(store, now, taken.step + 1);
  else finish(store, one, now);
}

/** Marks the step in front as passed. */
export function pass(store: Store, { about }: Listed, taken: Taken): Taken {
  const step = about.steps[taken.step];
  if (!step) return taken;
  const now = change(taken, (state) => ({ ...state, passed: true }));
  store.keepTaken(now);
  const { hints } = now.states[taken.step] ?? { hints: 0 };
  if (!taken.trial) {
    noteStep(store.wasm, about, step, (was) => ({
      ...was,
      passed: true,
      ...(step.kind === "do" && { hints: Math.max(hints, was.hints ?? 0) }),
    }));
  }
  return now;
}

export function hint(store: Store, taken: Taken): void {
  store.keepTaken(change(taken, (state) => ({ ...state, hints: Math.min(3, state.hints + 1) })));
}

/** The step's bench as it opened. */
export function again(store: Store, taken: Taken): void {
  const state = taken.states[taken.step];
  if (state) store.lend(state.start, taken);
}

/** The lesson's own way to do it, on the bench. */
export function solve(store: Store, { lesson }: Listed, taken: Taken): void {
  const state = taken.states[taken.step];
  if (state) store.lend(lesson.ends(taken.step, state.start), taken);
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
  noteStep(store.wasm, about, step, (was) => ({
    ...was,
    passed: true,
    answer: was.answer ?? { outcome, said: [...said].slice(0, 400).join(""), ...guess },
  }));
}

/** What was chosen, in the trade's units, as it is told to a teacher. */
export const optionSaid = (options: Said[][], at: number): string => plain(options[at] ?? [], "trade");

function finish(store: Store, { about }: Listed, taken: Taken): void {
  const left = taken.states.filter(({ passed }) => !passed).length;
  leave(
    store,
    taken,
    left === 0
      ? `“${about.title}” is finished.`
      : `“${about.title}” is at its end; ${left === 1 ? "one step is" : `${left} steps are`} still open.`,
  );
}

/** Own work comes back on the bench. */
export function leave(store: Store, taken: Taken, said = "You left the lesson."): void {
  batch(() => {
    store.giveBack();
    lessonsAt.value = taken.trial ? { page: "write" } : { page: "list" };
    store.look({ room: "lessons" });
    store.notice.value = `${said} Your own ball and shot are back on the bench.`;
  });
  requestAnimationFrame(() => document.getElementById("room-lessons")?.focus({ preventScroll: true }));
}
