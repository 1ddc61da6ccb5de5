// A lesson that was begun in one language goes on in the one the page speaks now:
// its editions have the same steps, its bench the same things by other names.

import { language } from "../locale/language";
import type { Doc, Store } from "../store";
import { renaming } from "./named";
import { filesOf, inLanguage, isOwn, listedOf } from "./read";
import type { Taken } from "./taken";
import { told } from "./told";
import { benchOf, holds, resume } from "./work";

/** As a lesson goes by its own solutions. */
const benches = (text: string): Doc[] => told(listedOf(text)).flatMap(({ start, end }) => [start, end]);

/** Whether a lesson and its bench are in the page's language, or a lesson of one's own with its bench. */
export const isSpoken = (taken: Taken): boolean =>
  inLanguage(taken.text) === taken.text && (!isOwn(taken.text) || (taken.named ?? "en") === language());

/** Turns the lesson that has the bench to the page's language, if it is in another. */
export function speakOn(store: Store, taken: Taken): void {
  if (isSpoken(taken)) return;
  const text = inLanguage(taken.text);
  // Where the names on the bench are not known the step begins anew.
  if (text === taken.text || !filesOf(taken.text)) {
    resume(store, text, taken.step, taken.trial);
    return;
  }
  const { lesson, about } = listedOf(text);
  const rename = renaming(benches(taken.text), benches(text));
  const states = taken.states.map((state, at) => {
    const renamed = { ...state, start: rename(state.start), end: state.end && rename(state.end) };
    if (!state.guess) return renamed;
    const { outcome, say, truth } = lesson.answer(at, renamed.start, state.guess);
    return { ...renamed, answered: { outcome, say, truth } };
  });
  store.lend(rename(benchOf(store)), {
    ...taken,
    text,
    named: language(),
    states,
    ...holds(about, taken.step),
  });
}
