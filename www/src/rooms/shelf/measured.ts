// What the module says about a ball, once for each content and not again.

import { isProblem } from "../../store";
import type { BallFile, Problem, Section, WasmModule, Weighed } from "../../types";

export interface Measured {
  weighed: Weighed;
  /** Sawn through the middle, seen from the side of +x. */
  section: Section;
}

const known = new Map<string, Measured | Problem>();

/** The ball's numbers and its cut; a problem where it cannot be made. */
export function measured(wasm: WasmModule, file: BallFile): Measured | Problem {
  const text = JSON.stringify(file);
  const before = known.get(text);
  if (before) return before;
  const now = measure(wasm, file);
  known.set(text, now);
  return now;
}

function measure(wasm: WasmModule, file: BallFile): Measured | Problem {
  try {
    const ball = new wasm.Ball(file);
    try {
      return { weighed: ball.weigh(), section: ball.section([1, 0, 0], 0) };
    } finally {
      ball.free();
    }
  } catch (error) {
    if (isProblem(error)) return error;
    throw error;
  }
}
