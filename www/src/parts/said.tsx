import { useStore } from "../store";
import type { Problem } from "../types";
import { sentenceIn } from "../units";

/** What is wrong, in the reader's units. */
export function Said({ problem }: { problem: Problem }) {
  return <>{sentenceIn(problem.message, useStore().view.value.units)}</>;
}
