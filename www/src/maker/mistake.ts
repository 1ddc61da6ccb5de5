import { useMemo } from "preact/hooks";
import { isProblem, orProblem } from "../problem";
import type { Problem } from "../types";

/** What is wrong with a file by itself, as reading it tells. */
export function useMistake(read: () => unknown, file: unknown): Problem | null {
  return useMemo(() => {
    const made = orProblem(read);
    return isProblem(made) ? made : null;
  }, [file]);
}
