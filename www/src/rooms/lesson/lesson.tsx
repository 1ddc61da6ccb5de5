import "./lesson.css";
import { useEffect, useMemo, useState } from "preact/hooks";
import { openProgress, trouble } from "../../lessons/progress";
import { type Listed, listedOf } from "../../lessons/read";
import { Prose } from "../../lessons/said";
import { say } from "../../lessons/say";
import { isSpoken, speakOn } from "../../lessons/spoken";
import { same, type Taken } from "../../lessons/taken";
import { Watched } from "../../lessons/watched";
import { again, answer, failed, goOn, goTo, hint, leave, pass, solve } from "../../lessons/work";
import { language } from "../../locale/language";
import { isProblem } from "../../problem";
import { type Doc, type Store, useStore } from "../../store";
import type { CheckedStep, LessonStep, Said, ShownStep } from "../../types";
import { Deed } from "./deed";
import { Question } from "./question";

const REST_MS = 120;
/** A change left standing this long is a try. */
const TRY_MS = 1500;

/** The lesson that has the bench, one step at a time. */
export function LessonPanel() {
  const store = useStore();
  const taken = store.loan.value?.taken ?? null;
  useEffect(() => openProgress(), []);
  const spoken = taken !== null && isSpoken(taken);
  useEffect(() => {
    if (taken) speakOn(store, taken);
  }, [spoken]);
  if (!taken || !spoken) return null;
  let one: Listed;
  try {
    one = listedOf(taken.text);
  } catch (error) {
    if (!Array.isArray(error)) throw error;
    return (
      <div class="lesson">
        <p>{say("lesson-unreadable")}</p>
        <button type="button" onClick={() => leave(store, taken)}>
          {say("lesson-leave")}
        </button>
      </div>
    );
  }
  const step = one.about.steps[taken.step];
  return step ? <Step key={`${taken.step} ${language()}`} one={one} taken={taken} step={step} /> : null;
}

const KINDS = {
  explore: "lesson-kind-explore",
  predict: "lesson-kind-predict",
  do: "lesson-kind-do",
  observe: "lesson-kind-observe",
  explain: "lesson-kind-explain",
} satisfies Record<LessonStep["kind"], string>;

/** What the step says of the bench, once the bench has come to rest. */
function useTold(store: Store, { lesson }: Listed, taken: Taken) {
  const { file, shot, ballProblem, shotProblem } = store.derived.value;
  const state = taken.states[taken.step];
  const tell = (): { shown: ShownStep; checked: CheckedStep; reached: boolean } | null => {
    if (!state) return null;
    const now: Doc = { ball: file, shot };
    try {
      const checked = lesson.check(taken.step, state.start, now);
      return {
        shown: lesson.shown(taken.step, state.start, now),
        checked,
        reached: checked.passed && (state.passed || (!state.shown && !same(state.start, now))),
      };
    } catch (error) {
      // A ball that the last good shot cannot throw: the bench says what is wrong.
      if (isProblem(error)) return null;
      throw error;
    }
  };
  const [told, setTold] = useState(tell);
  useEffect(() => {
    const timer = setTimeout(() => setTold((old) => tell() ?? old), REST_MS);
    return () => clearTimeout(timer);
  }, [file, shot, state?.start, state?.shown]);
  return { told, wrong: ballProblem ?? shotProblem };
}

const alike = (a: Said, b: Said): boolean => JSON.stringify(a) === JSON.stringify(b);

function Step({ one, taken, step }: { one: Listed; taken: Taken; step: LessonStep }) {
  const store = useStore();
  const { about, lesson } = one;
  const state = taken.states[taken.step];
  const { told, wrong } = useTold(store, one, taken);
  const reached = told?.reached ?? false;
  // A question keeps its numbers as they were when it was asked.
  const asked = useMemo(
    () => (state && step.kind === "predict" ? lesson.shown(taken.step, state.start, state.start) : null),
    [state?.start],
  );
  useEffect(() => {
    if (step.kind === "do" && reached && !wrong && state && !state.passed) pass(store, one, taken);
  }, [reached, wrong]);
  const { file, shot } = store.derived.value;
  useEffect(() => {
    if (step.kind !== "do" || wrong || !state || state.passed || state.shown) return undefined;
    const timer = setTimeout(() => failed(one, taken, { ball: file, shot }), TRY_MS);
    return () => clearTimeout(timer);
  }, [file, shot, wrong, state?.passed, state?.shown]);
  if (!state || !told) return null;
  const shown = asked ?? told.shown;
  const last = taken.step + 1 === about.steps.length;
  const open = (step.kind === "predict" || step.kind === "do") && !state.passed && !state.shown;
  return (
    <div class="lesson">
      <p class="lesson-of">
        {say("lesson-of", {
          title: about.title,
          trial: taken.trial ? "yes" : "no",
          step: taken.step + 1,
          steps: about.steps.length,
          kind: say(KINDS[step.kind]),
        })}
      </p>
      <progress
        class="lesson-far"
        max={about.steps.length}
        value={taken.step + (state.passed ? 1 : 0)}
        aria-label={say("lesson-far")}
      />
      <h3 id="lesson-step" tabIndex={-1}>
        {step.title}
      </h3>
      {taken.step === 0 && <p class="hint lesson-aside">{say("lesson-aside")}</p>}
      <Prose blocks={shown.text} />
      {step.kind === "predict" && (
        <Question
          step={step}
          options={shown.options}
          state={state}
          onAnswer={(guess, said) => answer(store, one, taken, guess, said)}
        />
      )}
      {step.kind === "do" && (
        <Deed
          state={state}
          hints={shown.hints}
          checked={wrong ? null : told.checked}
          reached={!wrong && reached}
          mistake={wrong}
          onHint={() => hint(store, taken)}
          onSolve={() => solve(store, one, taken)}
        />
      )}
      {(step.kind !== "predict" || state.answered) && told.shown.watch.length > 0 && (
        <Watched
          class="watch"
          caption={say("lesson-watch")}
          watch={told.shown.watch}
          bare={step.kind === "explore" && told.shown.watch.every(({ start, now }) => alike(start, now))}
        />
      )}
      {wrong && <p class="stale">{say("lesson-stale")}</p>}
      {trouble.value && <p class="stale">{say(trouble.value)}</p>}
      <div class="choices lesson-way">
        {taken.step > 0 && (
          <button type="button" onClick={() => goTo(store, taken, taken.step - 1)}>
            {say("lesson-back")}
          </button>
        )}
        <button type="button" class={open ? undefined : "primary"} onClick={() => goOn(store, taken)}>
          {say(
            open
              ? last
                ? "lesson-end-without"
                : "lesson-go-on-without"
              : last
                ? "lesson-finish"
                : "lesson-next",
          )}
        </button>
        {step.kind !== "predict" && !(step.free !== null && step.free.length === 0) && (
          <button type="button" onClick={() => again(store, taken)}>
            {say("lesson-again")}
          </button>
        )}
        <button type="button" onClick={() => leave(store, taken)}>
          {say("lesson-leave")}
        </button>
      </div>
    </div>
  );
}
