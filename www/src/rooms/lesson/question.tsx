import { useId, useState } from "preact/hooks";
import { pathSaid } from "../../lessons/answers";
import { DrawPath, type Points, straight, untouched } from "../../lessons/draw-path";
import { Line, plain } from "../../lessons/said";
import { say } from "../../lessons/say";
import type { StepState } from "../../lessons/taken";
import { Say } from "../../locale/say";
import { useStore } from "../../store";
import type { Guess, LessonQuantity, LessonStep, Said } from "../../types";
import { measure, parseField, reading } from "../../units";

interface QuestionProps {
  step: LessonStep;
  options: Said[][];
  state: StepState;
  /** Answers; the text is what was said, in the trade's units. */
  onAnswer(guess: Guess, said: string): void;
}

/** What a step asks before it shows, and the answer to what was said. */
export function Question(props: QuestionProps) {
  const { step, state } = props;
  const onAnswer: QuestionProps["onAnswer"] = (guess, said) => {
    // The button goes; the keyboard stays with what it did.
    document.getElementById("lesson-question")?.focus({ preventScroll: true });
    props.onAnswer(guess, said);
  };
  const asked = { ...props, onAnswer };
  return (
    <section class="question" aria-labelledby="lesson-question">
      <h4 id="lesson-question" tabIndex={-1}>
        {say(state.answered ? OUTCOME[state.answered.outcome] : "lesson-think")}
      </h4>
      {step.asks?.kind === "option" && <Options {...asked} />}
      {step.asks?.kind === "number" && <Amount {...asked} quantity={step.asks.quantity} />}
      {step.asks?.kind === "path" && <Path {...asked} />}
      <div role="status">{state.answered && <Answer state={state} options={props.options} />}</div>
    </section>
  );
}

const OUTCOME = {
  right: "lesson-said-right",
  wrong: "lesson-said-wrong",
  low: "lesson-said-low",
  high: "lesson-said-high",
};

/** What is said to the learner's answer, in the learner's own numbers. */
export function Answer({ state, options }: { state: StepState; options: Said[][] }) {
  const { units } = useStore().view.value;
  const { answered } = state;
  if (!answered) return null;
  const { outcome, truth } = answered;
  return (
    <div class="answered" data-right={outcome === "right" || undefined}>
      <p>
        <Line said={answered.say} />
      </p>
      {outcome !== "right" && "option" in truth && truth.option !== null && (
        <p>{say("lesson-right-answer", { answer: plain(options[truth.option] ?? [], units) })}</p>
      )}
      {"number" in truth && (
        <p>
          <Say id="lesson-computed" parts={{ number: () => <Line said={[truth.number]} /> }} />
        </p>
      )}
    </div>
  );
}

function Options({ options, state, onAnswer }: QuestionProps) {
  const { units } = useStore().view.value;
  const [chosen, choose] = useState<number | null>(null);
  const id = useId();
  const guess = state.guess && "option" in state.guess ? state.guess.option : chosen;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (chosen !== null) onAnswer({ option: chosen }, plain(options[chosen] ?? [], "trade"));
      }}
    >
      <fieldset class="options" disabled={state.answered !== null} aria-labelledby="lesson-question">
        {options.map((option, at) => (
          <label key={at} class="option">
            <input type="radio" name={id} checked={guess === at} onChange={() => choose(at)} />
            <span>{plain(option, units)}</span>
          </label>
        ))}
      </fieldset>
      {!state.answered && (
        <button type="submit" class="primary" disabled={chosen === null}>
          {say("lesson-answer")}
        </button>
      )}
    </form>
  );
}

function Amount({ state, onAnswer, quantity }: QuestionProps & { quantity: LessonQuantity }) {
  const { units } = useStore().view.value;
  const [text, setText] = useState("");
  const [wrong, setWrong] = useState(false);
  const id = useId();
  const { unit, spoken } = measure(quantity, units);
  if (state.guess && "number" in state.guess) {
    return <p class="guessed">{reading(state.guess.number, quantity, units)}</p>;
  }
  return (
    <form
      class="amount"
      data-own-undo
      onSubmit={(event) => {
        event.preventDefault();
        const number = parseField(text, quantity, units);
        setWrong(number === null);
        if (number !== null) onAnswer({ number }, reading(number, quantity, "trade"));
      }}
    >
      <label for={id}>
        {unit === "" ? (
          say("lesson-your-number")
        ) : (
          <Say
            id="lesson-your-number-in"
            args={{ unit: spoken }}
            parts={{ unit: (said) => <span class="visually-hidden">{said}</span> }}
          />
        )}
      </label>
      <span class="amount-field">
        <input
          id={id}
          type="text"
          inputmode="decimal"
          autocomplete="off"
          value={text}
          aria-invalid={wrong}
          aria-describedby={wrong ? `${id}-wrong` : undefined}
          onInput={(event) => setText(event.currentTarget.value)}
        />
        <span class="unit" aria-hidden="true">
          {unit}
        </span>
      </span>
      <button type="submit" class="primary" disabled={text.trim() === ""}>
        {say("lesson-answer")}
      </button>
      {wrong && (
        <p class="says says-wrong" id={`${id}-wrong`} role="alert">
          {say("lesson-no-number")}
        </p>
      )}
    </form>
  );
}

function Path({ state, onAnswer }: QuestionProps) {
  const { shot } = state.start;
  const [points, setPoints] = useState<Points>(() => straight(shot));
  const guess = state.guess && "path" in state.guess ? state.guess.path : null;
  const truth = state.answered && "path" in state.answered.truth ? state.answered.truth.path : null;
  return (
    <>
      <DrawPath shot={shot} points={guess ?? points} truth={truth} onDraw={setPoints} />
      {!guess && (
        <button
          type="button"
          class="primary"
          disabled={untouched(points)}
          onClick={() => onAnswer({ path: points }, pathSaid(points, "trade"))}
        >
          {say("lesson-answer-path")}
        </button>
      )}
    </>
  );
}
