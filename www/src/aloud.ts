// What results are said aloud to those who do not see them arrive. One place of the page
// says them (`Heard`), there from the start: a live region that comes together with
// its text is often not heard. What comes in quick succession is said once, when it
// has come to rest.

import { signal } from "@preact/signals";
import { useEffect, useId, useRef } from "preact/hooks";

const QUIET_MS = 800;

/** What is said now; `nth` so that the same words are heard again. */
export const heard = signal({ text: "", nth: 0 });

const waiting = new Map<string, string>();
let timer = 0;

/** Says a text with the next ones, in the place of an earlier one of `from` that was not said yet. */
export function aloud(from: string, text: string): void {
  waiting.set(from, text);
  clearTimeout(timer);
  timer = setTimeout(() => {
    if (waiting.size > 0) heard.value = { text: [...waiting.values()].join(" "), nth: heard.peek().nth + 1 };
    waiting.clear();
  }, QUIET_MS);
}

/** Says what has come whenever `of` is another; nothing where `text` is null. */
export function useAloud(of: unknown, text: string | null): void {
  const from = useId();
  useEffect(() => {
    if (text !== null) aloud(from, text);
    else waiting.delete(from);
  }, [of]);
  useEffect(() => () => void waiting.delete(from), []);
}

/** The same for what is on the page from the start and no news then. */
export function useNews(of: unknown, text: string | null): void {
  const first = useRef(of);
  const news = useRef(false);
  news.current ||= first.current !== of;
  useAloud(of, news.current ? text : null);
}
