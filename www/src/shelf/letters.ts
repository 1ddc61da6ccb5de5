// How long a name and a note on the shelf may be.

import { ownProblem } from "../own-problem";
import type { Problem } from "../types";
import { count } from "../units";
import { say } from "./say";

/** As the shelf file has it. */
export const MOST_NAME_CHARS = 200;
export const MOST_NOTE_CHARS = 4000;

/** Why a name or a note is not taken, with its place where a file has it; null where both are. */
export function tooLong(name: string, note: string, at = { name: "", note: "" }): Problem | null {
  const refused = (text: string, most: number, id: string, place: string) => {
    const letters = [...text.trim()].length;
    if (letters <= most) return null;
    return ownProblem(() => say(id, { letters: count(letters), most: count(most) }), place);
  };
  return (
    refused(name, MOST_NAME_CHARS, "kept-name-long", at.name) ??
    refused(note, MOST_NOTE_CHARS, "kept-note-long", at.note)
  );
}
