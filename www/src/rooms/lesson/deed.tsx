import { Line } from "../../lessons/said";
import type { StepState } from "../../lessons/taken";
import type { CheckedStep, Said } from "../../types";

interface DeedProps {
  state: StepState;
  hints: Said[][];
  /** Null until it is worked out. */
  checked: CheckedStep | null;
  onHint(): void;
  onSolve(): void;
}

const HINTS = ["A hint", "A second hint", "The last hint"];

/** Something to reach on the bench: what is missing still, and help with it. */
export function Deed({ state, hints, checked, onHint, onSolve }: DeedProps) {
  const passed = checked?.passed ?? false;
  return (
    <section class="deed" aria-labelledby="lesson-deed">
      <h4 id="lesson-deed">{passed ? "Done" : "Still missing"}</h4>
      <div role="status" class="deed-says">
        {checked?.done && (
          <p class="answered" data-right>
            <Line said={checked.done} />
          </p>
        )}
        {checked && checked.missing.length > 0 && (
          <ul class="missing">
            {checked.missing.map((said, at) => (
              <li key={at}>
                <Line said={said} />
              </li>
            ))}
          </ul>
        )}
        {checked?.wrong && (
          <p class="answered">
            <Line said={checked.wrong} />
          </p>
        )}
      </div>
      {state.hints > 0 && (
        <ol class="hints" aria-label="Hints">
          {hints.slice(0, state.hints).map((said, at) => (
            <li key={at}>
              <Line said={said} />
            </li>
          ))}
        </ol>
      )}
      {!passed && (
        <div class="choices">
          {state.hints < hints.length ? (
            <button type="button" onClick={onHint}>
              {HINTS[state.hints]}
            </button>
          ) : (
            <button type="button" onClick={onSolve}>
              Show me one way to do it
            </button>
          )}
        </div>
      )}
    </section>
  );
}
