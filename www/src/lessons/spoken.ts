// A lesson that was begun in one language goes on in the one the page speaks now:
// its editions have the same steps, its bench the same things by other names.

import type { Doc, Store } from "../store";
import { renaming } from "./named";
import { filesOf, inLanguage, listedOf } from "./read";
import type { Taken } from "./taken";
import { told } from "./told";
import { benchOf, holds, resume } from "./work";

/** As a lesson goes by its own solutions. */
const benches = (text: string): Doc[] => told(listedOf(text)).flatMap(({ start, end }) => [start, end]);

/** Turns the lesson that has the bench to the page's language, if it is in another. */
export function speakOn(store: Store, taken: Taken): void {
  const text = inLanguage(taken.text);
  if (text === taken.text) return;
  // Where the names on the bench are not known the step begins anew.
  if (!filesOf(taken.text)) {
    resume(store, text, taken.step);
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
  store.lend(rename(benchOf(store)), { ...taken, text, states, ...holds(about, taken.step) });
}
