// Seeking by two workers, start by start, for as long as it may take; what the
// first so many starts came to is put together while the next are tried.

import type { Jobs } from "../../jobs";
import type { BallFile, Sought, TargetFile } from "../../types";
import { USUAL_STARTS } from "./target";

/** How long it looks before it tells what there is, ms. */
export const PATIENCE_MS = 2700;
/** Between two looks at what there is so far, ms. */
const LOOK_MS = 400;
const WORKERS = 2;

export interface Looked {
  ball: BallFile;
  target: TargetFile;
  /** By start; those that are tried. */
  results: Float64Array[];
  sought: Sought | null;
}

export const starts = (target: TargetFile) => target.starts ?? USUAL_STARTS;

/** Tries starts until all are tried or time is up; `so_far` is added to. */
export async function look(
  jobs: Jobs,
  so_far: Looked,
  signal: AbortSignal,
  tell: (share: number, sought: Sought | null) => void,
): Promise<Looked> {
  const asked = { ball: so_far.ball, target: so_far.target };
  const results: (Float64Array | undefined)[] = [...so_far.results];
  const all = starts(asked.target);
  const first = results.length;
  const own = new AbortController();
  const stop = () => own.abort(signal.reason);
  signal.addEventListener("abort", stop, { once: true });
  const prefix = () => {
    const end = results.indexOf(undefined);
    return (end < 0 ? results : results.slice(0, end)) as Float64Array[];
  };
  const begun = performance.now();
  const timeUp = () => performance.now() - begun > PATIENCE_MS && prefix().length > first;
  let next = first;
  let looked = begun;
  let sought = so_far.sought;

  const merge = async (done: Float64Array[]): Promise<Sought> => {
    const flat = new Float64Array(done.reduce((sum, one) => sum + one.length, 0));
    let at = 0;
    for (const one of done) {
      flat.set(one, at);
      at += one.length;
    }
    return jobs.run("sought", { ...asked, results: flat }, signal);
  };
  const work = async () => {
    while (next < all && !timeUp()) {
      const start = next;
      next += 1;
      results[start] = undefined;
      results[start] = await jobs.run("seek", { ...asked, start }, own.signal);
      if (timeUp()) own.abort("time is up");
      tell(prefix().length / all, sought);
      if (performance.now() - looked > LOOK_MS && prefix().length > 0) {
        looked = performance.now();
        sought = await merge(prefix());
        tell(prefix().length / all, sought);
      }
    }
  };
  const watch = setInterval(() => timeUp() && own.abort("time is up"), 50);
  try {
    await Promise.all(Array.from({ length: WORKERS }, work));
  } catch (error) {
    own.abort(error);
    // Its own stop is no failure.
    if (error !== "time is up" || signal.aborted) throw error;
  } finally {
    clearInterval(watch);
    signal.removeEventListener("abort", stop);
  }
  const done = prefix();
  return { ...asked, results: done, sought: await merge(done) };
}
