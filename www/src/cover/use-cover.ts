// The cover of the ball on the bench, worked out beside the page once the bench
// has come to rest.

import { useEffect, useMemo, useState } from "preact/hooks";
import { useJobs } from "../jobs";
import { type Derived, useStore } from "../store";
import type { BallFile, Cover } from "../types";

/** The map's steps from pole to pole and round. */
export const ROWS = 60;
export const COLUMNS = 120;
const STILL_MS = 250;

export interface Covered {
  /** The ball it is the cover of. */
  file: BallFile;
  cover: Cover;
  /** Inches, row by row from the pin down, from +x round; NaN: a hole. */
  map: Float64Array;
}

const known = new WeakMap<BallFile, Covered>();

/** The ball with all its holes as wide as they are drilled; what lines them is no core. */
function drilledFile({ file, drilled }: Derived): BallFile {
  if (!drilled) return file;
  const holes = drilled.holes.map((hole) => {
    const insert = drilled.inserts.find((insert) => insert.hole === hole.name);
    return insert ? { ...hole, diameter_in: insert.drilled_diameter_in } : hole;
  });
  return { ...file, holes: [...(file.holes ?? []), ...holes] };
}

/** null until it is worked out; the one before stays while the next is. */
export function useCover(): Covered | null {
  const store = useStore();
  const jobs = useJobs();
  const derived = store.derived.value;
  const file = useMemo(() => drilledFile(derived), [derived.file, derived.drilled]);
  const [covered, setCovered] = useState<Covered | null>(() => known.get(file) ?? null);

  useEffect(() => {
    const before = known.get(file);
    if (before) return setCovered(before);
    const stop = new AbortController();
    const timer = setTimeout(async () => {
      try {
        const asked = { ball: file, rows: ROWS, columns: COLUMNS };
        const found = { file, ...(await jobs.run("cover", asked, stop.signal)) };
        known.set(file, found);
        setCovered(found);
      } catch (error) {
        if (!stop.signal.aborted) store.fail(error);
      }
    }, STILL_MS);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [file]);

  return covered;
}
