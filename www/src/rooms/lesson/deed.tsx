import { useNews } from "../../aloud";
import { Line, plain } from "../../lessons/said";
import { say } from "../../lessons/say";
import type { StepState } from "../../lessons/taken";
import { useStore } from "../../store";
import type { CheckedStep, Problem, Said } from "../../types";
import { sentenceIn } from "../../units";

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

const HINTS = ["lesson-hint-first", "lesson-hint-second", "lesson-hint-last"] as const;

/** Something to reach on the bench: what is missing still, and help with it. */
export function Deed({ state, hints, checked, reached, mistake, onHint, onSolve }: DeedProps) {
  const { units } = useStore().view.value;
  const already = checked?.passed === true && !reached && !state.shown;
  const heading =
    state.shown || (reached && state.solved)
      ? "lesson-one-way"
      : reached
        ? "lesson-done"
        : already
          ? "lesson-so-before"
          : "lesson-missing";
  const words = [
    `${say(heading)}.`,
    state.shown && say("lesson-own-way-open"),
    reached && state.solved && say("lesson-own-way"),
    checked?.done && !already && plain(checked.done, units),
    ...(checked?.missing ?? []).map((said) => plain(said, units)),
    checked?.wrong && plain(checked.wrong, units),
  ];
  const now = words.filter(Boolean).join(" ");
  // A mistake on the bench is said with its numbers.
  useNews(now, mistake ? null : now);
  const hint = hints[state.hints - 1];
  useNews(state.hints, hint ? plain(hint, units) : null);
  return (
    <section class="deed" aria-labelledby="lesson-deed">
      <h4 id="lesson-deed" tabIndex={-1}>
        {say(heading)}
      </h4>
      <div class="deed-says">
        {mistake && (
          <p class="stale">{say("lesson-mistake", { says: sentenceIn(mistake.message, units) })}</p>
        )}
        {already && <p>{say("lesson-already")}</p>}
        {state.shown && <p>{say("lesson-own-way-open")}</p>}
        {reached && state.solved && <p>{say("lesson-own-way")}</p>}
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
        <ol class="hints" aria-label={say("lesson-hints")}>
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
              {say(HINTS[state.hints] ?? HINTS[0])}
            </button>
          ) : (
            <button
              type="button"
              onClick={() => {
                // The button goes; the keyboard stays with what it did.
                document.getElementById("lesson-deed")?.focus({ preventScroll: true });
                onSolve();
              }}
            >
              {say("lesson-show-way")}
            </button>
          )}
        </div>
      )}
    </section>
  );
}
