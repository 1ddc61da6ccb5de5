// Work that a button starts beside the page: how far it is, what came of it, and how to stop it.

import { useEffect, useRef, useState } from "preact/hooks";
import { WorkerBroke } from "./jobs";
import { isProblem } from "./problem";
import { useStore } from "./store";
import type { Problem } from "./types";

export type TaskState<Done> =
  | { is: "idle" }
  /** From 0 to 1. */
  | { is: "running"; share: number }
  | { is: "stopped" }
  | { is: "refused"; problem: Problem }
  | { is: "broken"; broken: NotDone }
  | { is: "done"; done: Done };

/** Work that a worker could not do. */
export interface NotDone {
  /** What the browser said. */
  why: string;
  again(): void;
}

export interface Task<Done> {
  state: TaskState<Done>;
  /** Stops what is running and does this instead. */
  start(work: (signal: AbortSignal, tell: (share: number) => void) => Promise<Done>): void;
  stop(): void;
}

export function useTask<Done>(): Task<Done> {
  const store = useStore();
  const [state, setState] = useState<TaskState<Done>>({ is: "idle" });
  const own = useRef<AbortController | null>(null);
  useEffect(() => () => own.current?.abort(), []);
  const task: Task<Done> = {
    state,
    start(work) {
      own.current?.abort();
      const control = new AbortController();
      own.current = control;
      const { signal } = control;
      const tell = (share: number) => {
        if (!signal.aborted) setState({ is: "running", share });
      };
      tell(0);
      work(signal, tell).then(
        (done) => {
          if (!signal.aborted) setState({ is: "done", done });
        },
        (error) => {
          if (signal.aborted) return;
          if (isProblem(error)) setState({ is: "refused", problem: error });
          else if (error instanceof WorkerBroke) {
            setState({ is: "broken", broken: { why: error.message, again: () => task.start(work) } });
          } else store.fail(error);
        },
      );
    },
    stop() {
      own.current?.abort();
      setState({ is: "stopped" });
    },
  };
  return task;
}
