// Work that waits until the reader rests, done beside the page.

import { useLayoutEffect, useRef } from "preact/hooks";
import { isProblem, useStore } from "./store";
import type { Problem } from "./types";

/**
 * Does `work` once `deps` have been still for `still_ms`; a change of them, or leaving, stops it.
 * A `Problem` goes to `refused`, whatever else breaks to the store. Returns how to stop it by hand.
 */
export function useWhenStill(
  still_ms: number,
  work: (signal: AbortSignal) => Promise<void>,
  refused: (problem: Problem) => void,
  deps: unknown[],
): () => void {
  const store = useStore();
  const stop = useRef(() => {});
  // As part of drawing, before any timer: work never begins with what an edit has done away with.
  useLayoutEffect(() => {
    const own = new AbortController();
    const timer = setTimeout(async () => {
      try {
        await work(own.signal);
      } catch (error) {
        if (own.signal.aborted) return;
        if (isProblem(error)) refused(error);
        else store.fail(error);
      }
    }, still_ms);
    stop.current = () => {
      clearTimeout(timer);
      own.abort();
    };
    return stop.current;
  }, deps);
  return () => stop.current();
}
