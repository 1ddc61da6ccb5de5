// The cover of the ball on the bench, worked out beside the page once the bench
// has come to rest.

import { useState } from "preact/hooks";
import { useJobs } from "../jobs";
import { useStore } from "../store";
import type { NotDone } from "../task";
import type { BallFile, Cover } from "../types";
import { useWhenStill } from "../when-still";

/** The map's steps from pole to pole and round. */
export const ROWS = 60;
export const COLUMNS = 120;
const STILL_MS = 250;

export interface Covered {
  /** The ball it is the cover of. */
  file: BallFile;
  cover: Cover;
  /** Inches, row by row from the pin down, from +x round; in a hole's opening as it was poured. */
  map: Float64Array;
  /** Inches to the nearest hole's wall, below 0 in an opening; empty without holes. */
  to_hole_in: Float64Array;
}

/** By what the cover depends on, which is never changed in place. */
const known = new WeakMap<object, Covered>();
const asked = new WeakMap<object, Promise<Covered>>();

interface WorkedOut {
  /** null until it is worked out, once for all who ask; the one before stays while the next is. */
  covered: Covered | null;
  broken: NotDone | null;
}

export function useCover(): WorkedOut {
  const store = useStore();
  const jobs = useJobs();
  const derived = store.derived.value;
  const of = derived.made;
  const [newest, setNewest] = useState<Covered | null>(null);

  async function measure(): Promise<Covered> {
    const file = derived.made;
    const { cover, map } = await jobs.run("cover", { ball: file, rows: ROWS, columns: COLUMNS });
    const found = {
      file,
      cover,
      map: map.filter((_, n) => n % 2 === 0),
      to_hole_in: file.holes?.length ? map.filter((_, n) => n % 2 === 1) : new Float64Array(),
    };
    known.set(of, found);
    return found;
  }

  const { broken } = useWhenStill(
    STILL_MS,
    async (signal) => {
      const promise = asked.get(of) ?? measure();
      asked.set(of, promise);
      // What failed can be asked again.
      promise.catch(() => asked.delete(of));
      const found = await promise;
      if (!signal.aborted) setNewest(found);
    },
    store.fail,
    [of],
  );

  return { covered: known.get(of) ?? newest, broken };
}
