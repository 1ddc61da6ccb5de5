// The tolerances asked for: the usual ones of the ball on the bench, with what
// the reader changed.

import { useMemo } from "preact/hooks";
import { useStore } from "../../store";
import type { PieceTolerances, Problem, TolerancesFile } from "../../types";
import { useMistake } from "../mistake";
import { say } from "./say";

export type Accept = NonNullable<TolerancesFile["accept"]>;
export const USUAL_BALLS = 10_000;

export interface Tolerances {
  file: TolerancesFile;
  /** What is wrong with the file by itself. */
  problem: Problem | null;
  /** Whether the reader changed anything. */
  own: boolean;
  change(change: Partial<TolerancesFile>): void;
  /** Back to the usual ones. */
  usual(): void;
}

export function useTolerances(): Tolerances {
  const store = useStore();
  const { base } = store.derived.value;
  const own = store.view.value.tolerances;
  const usual = useMemo(
    () => ({ ...base.usual_tolerances(), name: say("stray-usual"), note: say("stray-usual-note") }),
    [base],
  );
  const file = useMemo(() => {
    if (!own) return usual;
    const { name: _, note: __, ...rest } = usual;
    return { ...rest, ...own };
  }, [usual, own]);
  const problem = useMistake(() => store.wasm.read_tolerances(file), file);
  return {
    file,
    problem,
    own: own !== null,
    change: (change) => store.look({ tolerances: { ...store.view.value.tolerances, ...change } }),
    usual: () => store.look({ tolerances: null }),
  };
}

/** A file opened says everything: what it leaves out is not the usual. */
export const whole = (file: TolerancesFile): TolerancesFile => ({
  cover: {},
  every_piece: {},
  pieces: [],
  accept: {},
  ...file,
});

/** The tolerances of one piece; those of every piece where it has none of its own. */
export function ofPiece(file: TolerancesFile, piece: string): { own: number; tolerances: PieceTolerances } {
  const own = (file.pieces ?? []).findIndex((one) => one.piece === piece);
  const { piece: _, ...tolerances } = file.pieces?.[own] ?? { piece, ...file.every_piece };
  return { own, tolerances };
}

/** The same tolerances for another ball: those of single pieces left out, windows moved to its own numbers. */
export function elsewhere(
  file: TolerancesFile,
  here: { weight_lb: number; top_weight_oz: number },
  there: { weight_lb: number; top_weight_oz: number },
): TolerancesFile {
  const { pieces: _, accept = {}, ...rest } = file;
  const moved = (window: Accept["weight_lb"], by: number) => {
    const next = { ...window };
    if (next.at_least !== undefined) next.at_least += by;
    if (next.at_most !== undefined) next.at_most += by;
    return next;
  };
  const next = { ...accept };
  if (next.weight_lb) next.weight_lb = moved(next.weight_lb, there.weight_lb - here.weight_lb);
  if (next.top_weight_oz) {
    next.top_weight_oz = moved(next.top_weight_oz, there.top_weight_oz - here.top_weight_oz);
  }
  return { ...rest, accept: next };
}
