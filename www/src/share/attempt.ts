// A stranger's ball is tried beside the page before it comes onto it.

import { type Jobs, WorkerBroke } from "../jobs";
import { ownProblem } from "../own-problem";
import { isProblem } from "../problem";
import type { Doc } from "../store";
import { count } from "../units";
import { say } from "../work";

/** Whatever a stranger's ball holds, the page does not stand still over it longer than this. */
const LONGEST_MS = 8000;
/** Corners and shapes of a ball that opens at once; the balls of the house have at most 25. */
const USUAL = 28;
/** What a shape other than a turned one counts for. */
const PLAIN = 4;

/** Throws a `Problem` where a ball and its shot are not worked out in time, and the signal's reason once stopped. */
export async function attempt(jobs: Jobs, doc: Doc, stop?: AbortSignal): Promise<void> {
  const late = AbortSignal.timeout(LONGEST_MS);
  try {
    await jobs.run("attempt", doc, stop ? AbortSignal.any([late, stop]) : late);
  } catch (error) {
    if (late.aborted && !stop?.aborted) {
      throw ownProblem(() => say("work-too-long", { seconds: count(LONGEST_MS / 1000) }));
    }
    if (error instanceof WorkerBroke) throw ownProblem(() => say("work-broke", { why: error.message }));
    // A ball or shot with a mistake came to an end, too: where it is opened it is said.
    if (stop?.aborted || !isProblem(error)) throw error;
  }
}

/** Whether a ball may take long to work out; of what nobody has looked at yet. */
export function isLarge(ball: unknown): boolean {
  const { pieces, holes } = ball as { pieces?: unknown; holes?: unknown };
  const cuts = listed(pieces).flatMap((piece) => listed(piece?.cuts));
  const held = [...listed(pieces), ...cuts, ...listed(holes)];
  return held.reduce((sum, one) => sum + (one?.shape?.profile_in?.length ?? PLAIN), 0) > USUAL;
}

// biome-ignore lint/suspicious/noExplicitAny: nobody has looked at it yet.
const listed = (parts: unknown): any[] => (Array.isArray(parts) ? parts : []);
