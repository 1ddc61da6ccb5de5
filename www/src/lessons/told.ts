// A lesson told from its beginning to its end, as it goes by its own solutions:
// what paper and the projector show.

import type { Doc } from "../store";
import type { AnsweredStep, Guess, LessonStep, Said, ShownStep } from "../types";
import type { Listed } from "./read";
import { same } from "./taken";

export interface ToldStep {
  at: number;
  step: LessonStep;
  /** The bench as the step opens and as it ends. */
  start: Doc;
  end: Doc;
  /** With the bench as it opens. */
  shown: ShownStep;
  /** With the bench as it ends. */
  after: ShownStep;
  /** Whether it follows from a task or a question before: the learner is to find it. */
  found: boolean;
  /** The same as it would be with the lesson's first bench: what differs was found. */
  bare: ShownStep;
  /** What came of an answer: the right one where there is a choice. */
  truth: AnsweredStep | null;
  /** What is said once it is done. */
  done: Said[] | null;
}

export function told({ lesson, about }: Listed): ToldStep[] {
  let left: Doc | null = null;
  let found = false;
  const first: Doc = lesson.opens(0, null);
  const mark: Doc = { ...first, ball: { ...first.ball, name: "another bench" } };
  return about.steps.map((step, at) => {
    const start: Doc = lesson.opens(at, left);
    const end: Doc = lesson.ends(at, start);
    // A step with a bench of its own follows from nothing, unless it is the one that was left there.
    const own = !same(lesson.opens(at, mark), mark);
    if (own && !(left && same(start, left))) found = false;
    left = end;
    const follows = found;
    if (step.kind === "predict" || step.kind === "do") found = true;
    const shown = lesson.shown(at, start, start);
    const guess = anyGuess(step, start);
    let truth = guess && lesson.answer(at, start, guess);
    if (truth && "option" in truth.truth && truth.truth.option !== null) {
      truth = lesson.answer(at, start, { option: truth.truth.option });
    }
    return {
      at,
      step,
      start,
      end,
      shown,
      found: follows,
      bare: follows ? lesson.shown(at, first, first) : shown,
      after: lesson.shown(at, start, end),
      truth,
      done: lesson.check(at, start, end).done,
    };
  });
}

/** Any answer brings the right one out. */
function anyGuess({ asks }: LessonStep, { shot }: Doc): Guess | null {
  switch (asks?.kind) {
    case "option":
      return { option: 0 };
    case "number":
      return { number: 0 };
    case "path":
      return {
        path: [
          [shot.release.board, 0],
          [shot.release.board, 60],
        ],
      };
    default:
      return null;
  }
}
