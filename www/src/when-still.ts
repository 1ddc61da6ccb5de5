// Work that waits until the reader rests, done beside the page.

import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { WorkerBroke } from "./jobs";
import { isProblem } from "./problem";
import { useStore } from "./store";
import type { NotDone } from "./task";
import type { Problem } from "./types";

export interface StillWork {
  /** Stops it by hand. */
  stop(): void;
  /** Where a worker could not do it. */
  broken: NotDone | null;
}

/**
 * Does `work` once `deps` have been still for `still_ms`; a change of them, or leaving, stops it.
 * A `Problem` goes to `refused`, what breaks on the page's own side to the store.
 */
export function useWhenStill(
  still_ms: number,
  work: (signal: AbortSignal) => Promise<void>,
  refused: (problem: Problem) => void,
  deps: unknown[],
): StillWork {
  const store = useStore();
  const stop = useRef(() => {});
  const [broken, setBroken] = useState<NotDone | null>(null);
  const [round, setRound] = useState(0);
  // As part of drawing, before any timer: work never begins with what an edit has done away with.
  useLayoutEffect(() => {
    const own = new AbortController();
    setBroken(null);
    const timer = setTimeout(async () => {
      try {
        await work(own.signal);
      } catch (error) {
        if (own.signal.aborted) return;
        if (isProblem(error)) refused(error);
        else if (error instanceof WorkerBroke) {
          setBroken({ why: error.message, again: () => setRound((before) => before + 1) });
        } else store.fail(error);
      }
    }, still_ms);
    stop.current = () => {
      clearTimeout(timer);
      own.abort();
    };
    return stop.current;
  }, [...deps, round]);
  return { stop: () => stop.current(), broken };
}
