// The work of pouring, cut into tasks for the workers.

import type { Jobs } from "../../jobs";
import type { BallFile, Scattered, TolerancesFile } from "../../types";

/** Tasks for the two workers: enough for a bar that moves and for both to end together. */
const PARTS = 40;

export async function pour(
  jobs: Jobs,
  asked: { ball: BallFile; tolerances: TolerancesFile },
  signal: AbortSignal,
  tell: (share: number) => void,
): Promise<Scattered> {
  const tasks = Array.from({ length: PARTS }, (_, part) => ({ ...asked, part, parts: PARTS }));
  const parts = await jobs.all("scatter", tasks, { signal, progress: tell });
  const results = new Float64Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    results.set(part, at);
    at += part.length;
  }
  return jobs.run("scattered", { ...asked, results }, signal);
}
