// What was answered to a question, as it is told to a teacher.

import type { Units } from "../store";
import type { GivenAnswer } from "../types";
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

/** A wrong answer in the reader's language and units; as the learner's file has it where the lesson is not known. */
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
  const line = optionsOf(lesson).get(step)?.[option];
  return line ? plain(line, units) : said;
}

const known = new WeakMap<Listed, ReturnType<typeof findOptions>>();

/** What the steps of a lesson offer, with their numbers filled in. */
function optionsOf(lesson: Listed): ReturnType<typeof findOptions> {
  const before = known.get(lesson);
  if (before) return before;
  const now = findOptions(lesson);
  known.set(lesson, now);
  return now;
}

const findOptions = (lesson: Listed) =>
  new Map(told(lesson).map(({ step, shown }) => [step.id, shown.options]));
