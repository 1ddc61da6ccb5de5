// What was answered to a question, as it is told to a teacher.

import { useEffect, useState } from "preact/hooks";
import type { Units } from "../store";
import type { GivenAnswer, ShownStep } from "../types";
import { reading, written } from "../units";
import type { Points } from "./draw-path";
import type { Listed } from "./read";
import { plain } from "./said";
import { say } from "./say";
import { told } from "./told";

/** Where a drawn path goes. */
export function pathSaid(points: Points, units: Units): string {
  const said = points.map(([board, ft]) =>
    say("lesson-by-board", { board: written(String(board)), far: reading(ft, "distance", units, -1) }),
  );
  return say("lesson-by-boards", { points: said.join(", ") });
}

/** A wrong answer in the reader's language and units; as the learner's file has it where what the lesson offers is not known. */
export function wrongSaid(
  answer: GivenAnswer,
  step: string,
  lesson: Listed | undefined,
  units: Units,
): string {
  const { outcome, option, path } = answer;
  const what = answerSaid(answer, step, lesson, units);
  if (outcome === "low") return say("class-too-little", { what });
  if (outcome === "high") return say("class-too-much", { what });
  return option === undefined && path ? say("class-another-path", { what }) : what;
}

function answerSaid(
  { said, option, number, path }: GivenAnswer,
  step: string,
  lesson: Listed | undefined,
  units: Units,
): string {
  if (path) return pathSaid(path, units);
  const asks = lesson?.about.steps.find(({ id }) => id === step)?.asks;
  if (number !== undefined && asks?.kind === "number") return reading(number, asks.quantity, units);
  if (option === undefined || !lesson) return said;
  const line = options.get(lesson)?.get(step)?.[option];
  return line ? plain(line, units) : said;
}

/** What the steps of a lesson offer, with their numbers filled in. */
const options = new WeakMap<Listed, Map<string, ShownStep["options"]>>();

/** Finds what `wrongSaid` needs of lessons, one after the other once the page is drawn. */
export function useOptions(lessons: Listed[]): void {
  const next = lessons.find((one) => !options.has(one));
  const [, setFound] = useState<Listed | null>(null);
  useEffect(() => {
    if (!next) return undefined;
    const timer = setTimeout(() => {
      options.set(next, new Map(told(next).map(({ step, shown }) => [step.id, shown.options])));
      setFound(next);
    });
    return () => clearTimeout(timer);
  }, [next]);
}
