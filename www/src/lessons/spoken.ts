// A lesson that was begun in one language goes on in the one the page speaks now:
// its editions have the same steps.

import { inLanguage, listedOf } from "./read";
import type { Taken } from "./taken";

/** The same in the page's language; the same object where it is that already. */
export function spoken(taken: Taken): Taken {
  const text = inLanguage(taken.text);
  if (text === taken.text) return taken;
  const { lesson } = listedOf(text);
  const states = taken.states.map((state, at) => {
    if (!state.guess) return state;
    const { outcome, say, truth } = lesson.answer(at, state.start, state.guess);
    return { ...state, answered: { outcome, say, truth } };
  });
  return { ...taken, text, states };
}
