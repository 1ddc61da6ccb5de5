import { useStore } from "../store";
import type { Problem } from "../types";
import { sentenceIn } from "../units";
import { Result } from "./result";

/** Why something was refused, in the reader's units, in view and aloud. */
export function Refused({ problem }: { problem: Problem }) {
  return (
    <Result class="says says-wrong" of={problem}>
      {sentenceIn(problem.message, useStore().view.value.units)}
    </Result>
  );
}
