// The kinds of files that people keep: how one is known, and where it belongs.

import { ownProblem } from "./own-problem";
import { say } from "./work";

/** What is said of a file in a place that takes none of its kind. */
const ELSEWHERE = {
  ball: "work-is-ball",
  shot: "work-is-shot",
  layout: "work-is-layout",
  oil: "work-is-oil",
  tolerances: "work-is-tolerances",
  target: "work-is-target",
  shelf: "work-is-shelf",
  progress: "work-is-progress",
  lesson: "work-is-lesson",
};
export type Kind = keyof typeof ELSEWHERE;

const LONGEST_NAME = 40;

/** What a file says it is; null where it says nothing that is known. */
export function kindOf(text: string): Kind | null {
  if (/^\s*\+\+\+/.test(text)) return "lesson";
  const name = /^pithball\.([a-z]+)/.exec(formatIn(text) ?? "")?.[1];
  return name !== undefined && name in ELSEWHERE ? (name as Kind) : null;
}

/** The format a file says it has; empty where it says none, null where it is no JSON. */
function formatIn(text: string): string | null {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null && "format" in value ? String(value.format) : "";
  } catch {
    // The module says what is wrong with it.
    return null;
  }
}

/** Throws a `Problem` where a file is of a known kind that is not taken here. */
export function onlyOf(taken: Kind[], text: string): void {
  const kind = kindOf(text);
  if (kind && !taken.includes(kind)) throw ownProblem(() => say(ELSEWHERE[kind]));
}

/** The same where several are taken, which `named` lists: of none at all, too. What is no JSON is left to the module. */
export function oneOf(taken: Kind[], named: () => string, text: string): void {
  onlyOf(taken, text);
  const format = formatIn(text);
  if (format === null || kindOf(text)) return;
  const short = format.length > LONGEST_NAME ? `${format.slice(0, LONGEST_NAME)}…` : format;
  throw ownProblem(() =>
    short === ""
      ? say("work-no-format", { kinds: named() })
      : say("work-other-format", { format: short, kinds: named() }),
  );
}
