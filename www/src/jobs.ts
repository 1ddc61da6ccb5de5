// What takes longer than a frame, done beside the page: two workers, each with
// an instance of the second module, take tasks in the order asked. A task is one call
// of a job in `worker.ts`; work for both is cut into several tasks. Stopping is
// real: the worker at work on a stopped task is ended and another takes its place.

import source from "worker:source";
import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { describe } from "./problem";
import { say } from "./work";
import type { FromWorker, JobList, JobName, ToWorker } from "./worker";

const WORKERS = 2;

type Asked<Name extends JobName> = Parameters<JobList[Name]>[0];
type Done<Name extends JobName> = ReturnType<JobList[Name]>;

export interface Jobs {
  /** Does one task. Rejects with a `Problem`, a `WorkerBroke`, or the signal's reason once stopped. */
  run<Name extends JobName>(job: Name, asked: Asked<Name>, signal?: AbortSignal): Promise<Done<Name>>;
  /** Does many tasks of one job, and says after each which share is done, 0 to 1. Stops all at the first failure. */
  all<Name extends JobName>(
    job: Name,
    asked: Asked<Name>[],
    options?: { signal?: AbortSignal; progress?: (share: number) => void },
  ): Promise<Done<Name>[]>;
}

/** A worker died or could not start, with what the browser said: what was asked is not done, all else goes on. */
export class WorkerBroke extends Error {
  constructor(error: unknown) {
    super(describe(error));
  }
}

interface Task {
  id: number;
  job: JobName;
  asked: unknown;
  resolve(done: unknown): void;
  reject(error: unknown): void;
}

interface Place {
  /** null where none could be started: that is tried again with the next task. */
  worker: Worker | null;
  task: Task | null;
}

/** Starts the workers, each with an instance of `module`, the second one. */
export function startJobs(module: WebAssembly.Module): Jobs {
  const address = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
  const waiting: Task[] = [];
  let count = 0;

  const places: Place[] = Array.from({ length: WORKERS }, () => ({ worker: tried(), task: null }));

  /** Whoever asks first is told why not. */
  function tried(): Worker | null {
    try {
      return start();
    } catch {
      return null;
    }
  }

  function start(): Worker {
    const worker = new Worker(address);
    worker.addEventListener("message", ({ data }: MessageEvent<FromWorker>) => {
      finish(worker, data);
    });
    worker.addEventListener("error", (event) => {
      event.preventDefault();
      const place = places.find((place) => place.worker === worker);
      if (!place) return;
      const { task } = place;
      worker.terminate();
      Object.assign(place, { worker: null, task: null });
      task?.reject(new WorkerBroke(event.message?.replace(/^Uncaught /, "") || say("work-no-worker")));
      hand();
    });
    worker.postMessage({ module } satisfies ToWorker);
    return worker;
  }

  function restart(place: Place): void {
    place.worker?.terminate();
    place.worker = tried();
    place.task = null;
    // Not at once: a signal that stops one task may be about to stop the next.
    queueMicrotask(hand);
  }

  function finish(worker: Worker, answer: FromWorker): void {
    const place = places.find((place) => place.worker === worker);
    const task = place?.task;
    if (!place || task?.id !== answer.id) return;
    place.task = null;
    if ("done" in answer) task.resolve(answer.done);
    else if ("problem" in answer) task.reject(answer.problem);
    else {
      // What broke may have left the instance in pieces.
      task.reject(new WorkerBroke(answer.broke));
      restart(place);
    }
    hand();
  }

  /** Gives waiting tasks to idle workers. */
  function hand(): void {
    for (const place of places) {
      while (!place.task) {
        const task = waiting.shift();
        if (!task) return;
        place.task = task;
        const { id, job, asked } = task;
        try {
          place.worker ??= start();
          place.worker.postMessage({ id, job, asked } satisfies ToWorker);
        } catch (error) {
          place.task = null;
          task.reject(new WorkerBroke(error));
        }
      }
    }
  }

  function drop(task: Task): void {
    const at = waiting.indexOf(task);
    if (at >= 0) waiting.splice(at, 1);
    const place = places.find((place) => place.task === task);
    if (place) restart(place);
  }

  function run<Name extends JobName>(
    job: Name,
    asked: Asked<Name>,
    signal?: AbortSignal,
  ): Promise<Done<Name>> {
    return new Promise((resolve, reject) => {
      if (signal?.aborted) return reject(signal.reason);
      const stop = () => {
        drop(task);
        reject(signal?.reason);
      };
      const settled = (settle: (value: never) => void) => (value: unknown) => {
        signal?.removeEventListener("abort", stop);
        settle(value as never);
      };
      count += 1;
      const task = { id: count, job, asked, resolve: settled(resolve), reject: settled(reject) };
      signal?.addEventListener("abort", stop, { once: true });
      waiting.push(task);
      hand();
    });
  }

  return {
    run,
    async all(job, asked, { signal, progress } = {}) {
      const own = new AbortController();
      const stop = () => own.abort(signal?.reason);
      if (signal?.aborted) stop();
      signal?.addEventListener("abort", stop, { once: true });
      let done = 0;
      const one = async (task: (typeof asked)[number]) => {
        const result = await run(job, task, own.signal);
        done += 1;
        progress?.(done / asked.length);
        return result;
      };
      try {
        return await Promise.all(asked.map(one));
      } catch (error) {
        own.abort(error);
        throw error;
      } finally {
        signal?.removeEventListener("abort", stop);
      }
    },
  };
}

/** Jobs whose workers start later: what is asked before waits for them. */
export function waiting(started: Promise<Jobs>): Jobs {
  return {
    run: async (...asked) => (await started).run(...asked),
    all: async (...asked) => (await started).all(...asked),
  };
}

export const JobsContext = createContext<Jobs | null>(null);

export function useJobs(): Jobs {
  const jobs = useContext(JobsContext);
  if (!jobs) throw new Error("no workers around this component");
  return jobs;
}
