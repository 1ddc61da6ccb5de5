// The kinds of files that people keep: how one is known, and where it belongs.

import { ownProblem } from "./own-problem";
import { shorten } from "./shorten";
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

/** Letters of a format that is not known, in a sentence. */
const MOST_SAID = 41;

/** What a file says it is; null where it says nothing that is known. */
export const kindOf = (text: string): Kind | null => kindIn(formatIn(text));

function kindIn(format: string | null): Kind | null {
  const name = /^pithball\.([a-z]+)/.exec(format ?? "")?.[1];
  return name !== undefined && name in ELSEWHERE ? (name as Kind) : null;
}

/** The format a file says it has, of a lesson by how it begins; empty where it says none, null where it is no JSON. */
function formatIn(text: string): string | null {
  if (/^\s*\+\+\+/.test(text)) return "pithball.lesson";
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null && "format" in value ? String(value.format) : "";
  } catch {
    // The module says what is wrong with it.
    return null;
  }
}

function only<Taken extends Kind>(taken: Taken[], kind: Kind | null): Taken | null {
  const own = taken.find((one) => one === kind);
  if (kind && !own) throw ownProblem(() => say(ELSEWHERE[kind]));
  return own ?? null;
}

/** Throws a `Problem` where a file is of a known kind that is not taken here. */
export function onlyOf(taken: Kind[], text: string): void {
  only(taken, kindOf(text));
}

/**
 * Which of several kinds, which `named` lists, a file is of; throws a `Problem` where it says that it is of another or
 * of none. null for what is no JSON: the module says what is wrong with it.
 */
export function oneOf<Taken extends Kind>(taken: Taken[], named: () => string, text: string): Taken | null {
  const format = formatIn(text);
  const kind = only(taken, kindIn(format));
  if (kind || format === null) return kind;
  throw ownProblem(() =>
    format === ""
      ? say("work-no-format", { kinds: named() })
      : say("work-other-format", { format: shorten(format, MOST_SAID), kinds: named() }),
  );
}
