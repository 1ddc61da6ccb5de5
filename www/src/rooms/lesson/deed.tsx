import { Line } from "../../lessons/said";
import type { StepState } from "../../lessons/taken";
import type { CheckedStep, Problem, Said } from "../../types";

interface DeedProps {
  state: StepState;
  hints: Said[][];
  /** Null until it is worked out. */
  checked: CheckedStep | null;
  /** Reached by the learner's own changes. */
  reached: boolean;
  /** What is wrong on the bench, if anything. */
  mistake: Problem | null;
  onHint(): void;
  onSolve(): void;
}

const HINTS = ["A hint", "A second hint", "The last hint"];

/** Something to reach on the bench: what is missing still, and help with it. */
export function Deed({ state, hints, checked, reached, mistake, onHint, onSolve }: DeedProps) {
  const already = checked?.passed === true && !reached && !state.shown;
  const heading =
    state.shown || (reached && state.solved)
      ? "This is one way to do it"
      : reached
        ? "Done"
        : already
          ? "So it stood before"
          : "Still missing";
  return (
    <section class="deed" aria-labelledby="lesson-deed">
      <h4 id="lesson-deed">{heading}</h4>
      <div role="status" class="deed-says">
        {mistake && <p class="stale">There is a mistake on the bench: {mistake.message}</p>}
        {already && <p>You have changed nothing yet: this was reached as the step opened.</p>}
        {state.shown && (
          <p>It is the lesson's own, so the step stays open. Begin it again to find a way yourself.</p>
        )}
        {reached && state.solved && <p>It is the lesson's own. To find another, begin the step again.</p>}
        {checked?.done && !already && (
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
      {!reached && !state.shown && state.hints > 0 && (
        <ol class="hints" aria-label="Hints">
          {hints.slice(0, state.hints).map((said, at) => (
            <li key={at}>
              <Line said={said} />
            </li>
          ))}
        </ol>
      )}
      {!reached && !state.shown && (
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
