import "./coach.css";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { lessonsAt } from "../../lessons/at";
import { DrawPath, type Points, straight } from "../../lessons/draw-path";
import { type Listed, listedOf } from "../../lessons/read";
import { Line, Prose, plain } from "../../lessons/said";
import { type ToldStep, told } from "../../lessons/told";
import { Watched } from "../../lessons/watched";
import { useStore } from "../../store";
import type { AnsweredStep, ProseBlock, Said } from "../../types";
import { measure, parseField } from "../../units";
import { isWord, meaningOf } from "../../words";
import { CutOf, ShotOf } from "./pictured";

/** One thing on the screen. */
type Slide =
  | { is: "title" | "words" | "end" }
  | { is: "text"; one: ToldStep; block: ProseBlock }
  | { is: "cut" | "shot"; one: ToldStep; done: boolean }
  | { is: "numbers"; one: ToldStep }
  | { is: "ask" | "answer"; one: ToldStep }
  | { is: "task" | "done"; one: ToldStep };

function slidesOf({ about }: Listed, steps: ToldStep[]): Slide[] {
  const slides: Slide[] = [{ is: "title" }];
  if (about.words.length > 0) slides.push({ is: "words" });
  let cut = "";
  let shot = "";
  const pictures = (one: ToldStep, done: boolean) => {
    const doc = done ? one.end : one.start;
    const rooms = one.step.rooms ?? [];
    const ball = JSON.stringify(doc.ball);
    const throws = JSON.stringify(doc);
    if ((rooms.includes("saw") || rooms.includes("bench")) && ball !== cut) {
      slides.push({ is: "cut", one, done });
      cut = ball;
    }
    if (rooms.includes("lane") && throws !== shot && one.step.kind !== "do") {
      slides.push({ is: "shot", one, done });
      shot = throws;
    }
  };
  for (const one of steps) {
    for (const block of one.shown.text) slides.push({ is: "text", one, block });
    pictures(one, false);
    if (one.step.kind === "predict") slides.push({ is: "ask", one }, { is: "answer", one });
    if (one.step.kind === "do") slides.push({ is: "task", one }, { is: "done", one });
    pictures(one, true);
    if (one.after.watch.length > 0) slides.push({ is: "numbers", one });
  }
  slides.push({ is: "end" });
  return slides;
}

/** What the options of a question are called. */
const OPTIONS = "ABCDEFGH";

/** Hands counted for each option, by the step. */
type Hands = Record<number, number[]>;

/** A lesson told to a room: one thing on the screen, on and back with a clicker or the keyboard. */
export function Coach({ text }: { text: string }) {
  const one = listedOf(text);
  const slides = useMemo(() => slidesOf(one, told(one)), [one]);
  const [at, setAt] = useState(0);
  const [hands, setHands] = useState<Hands>({});
  const [answers, setAnswers] = useState<Record<number, AnsweredStep>>({});
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const last = slides.length - 1;
  const move = (by: number) => setAt((was) => Math.min(last, Math.max(0, was + by)));

  useEffect(() => {
    dialog.current?.showModal();
    return () => {
      if (document.fullscreenElement) void document.exitFullscreen();
    };
  }, []);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    dialog.current?.scrollTo(0, 0);
  }, [at]);

  function press(event: KeyboardEvent) {
    const typing = event.target instanceof HTMLInputElement && event.target.type !== "radio";
    const forward = ["PageDown", ...(typing ? [] : ["ArrowRight", "ArrowDown"])];
    const back = ["PageUp", ...(typing ? [] : ["ArrowLeft", "ArrowUp"])];
    if (forward.includes(event.key)) move(1);
    else if (back.includes(event.key)) move(-1);
    else if (event.key === "Home" && !typing) setAt(0);
    else return;
    event.preventDefault();
  }

  const slide = slides[at];
  if (!slide) return null;
  return (
    <dialog
      class="coach"
      ref={dialog}
      aria-label={`${one.about.title}, for a room`}
      onKeyDown={press}
      onClose={() => {
        lessonsAt.value = { page: "list" };
      }}
    >
      <div class="coach-slide" data-slide={slide.is}>
        <h2 ref={heading} tabIndex={-1}>
          {"one" in slide ? slide.one.step.title : one.about.title}
        </h2>
        <Body
          key={at}
          one={one}
          slide={slide}
          hands={"one" in slide ? (hands[slide.one.at] ?? []) : []}
          answered={"one" in slide ? (answers[slide.one.at] ?? null) : null}
          onHands={(counted) => "one" in slide && setHands({ ...hands, [slide.one.at]: counted })}
          onAnswer={(answer) => "one" in slide && setAnswers({ ...answers, [slide.one.at]: answer })}
        />
      </div>
      <div class="coach-way">
        <button type="button" disabled={at === 0} onClick={() => move(-1)}>
          Back
        </button>
        <span>
          {at + 1} of {slides.length}
        </span>
        <button type="button" class="primary" disabled={at === last} onClick={() => move(1)}>
          Next
        </button>
        {document.fullscreenEnabled && (
          <button
            type="button"
            onClick={() => {
              // A browser that refuses leaves the window as it is.
              if (document.fullscreenElement) document.exitFullscreen().catch(() => {});
              else document.documentElement.requestFullscreen().catch(() => {});
            }}
          >
            Full screen
          </button>
        )}
        <button type="button" onClick={() => dialog.current?.close()}>
          End
        </button>
      </div>
    </dialog>
  );
}

interface BodyProps {
  one: Listed;
  slide: Slide;
  hands: number[];
  answered: AnsweredStep | null;
  onHands(hands: number[]): void;
  onAnswer(answer: AnsweredStep): void;
}

function Body({ one, slide, hands, answered, onHands, onAnswer }: BodyProps) {
  const width_px = Math.min(1100, innerWidth - 64);
  switch (slide.is) {
    case "title":
      return (
        <>
          <p class="coach-course">{one.about.course}</p>
          <Prose blocks={one.about.aim} />
          <p class="coach-keys">On with → or Page Down, back with ← or Page Up: a clicker sends the same.</p>
        </>
      );
    case "words":
      return (
        <dl class="coach-words">
          {one.about.words.map((word) => (
            <div key={word}>
              <dt>{word}</dt>
              <dd>{isWord(word) ? meaningOf(word) : ""}</dd>
            </div>
          ))}
        </dl>
      );
    case "text":
      return <Prose blocks={[slide.block]} />;
    case "cut":
      return (
        <div class="coach-picture">
          <CutOf
            page
            id="coach-cut"
            doc={slide.done ? slide.one.end : slide.one.start}
            width_px={Math.min(720, width_px)}
            height_px={420}
          />
        </div>
      );
    case "shot":
      return (
        <div class="coach-picture">
          <ShotOf
            id="coach-shot"
            doc={slide.done ? slide.one.end : slide.one.start}
            width_px={width_px}
            height_px={260}
          />
        </div>
      );
    case "numbers":
      return <Numbers one={slide.one} />;
    case "ask":
      return (
        <Ask
          lesson={one}
          one={slide.one}
          hands={hands}
          answered={answered}
          onHands={onHands}
          onAnswer={onAnswer}
        />
      );
    case "answer":
      return <Answer one={slide.one} hands={hands} answered={answered} />;
    case "task":
      return (
        <>
          <p>Try it: one of you at the bench, the others say what to change.</p>
          <Hints hints={slide.one.shown.hints} />
        </>
      );
    case "done":
      return (
        <p>
          <Line said={slide.one.done ?? []} />
        </p>
      );
    case "end":
      return <p>That was the lesson. What was new to you?</p>;
  }
}

function Numbers({ one }: { one: ToldStep }) {
  const { watch } = one.after;
  const moved = watch.some(({ start, now }) => JSON.stringify(start) !== JSON.stringify(now));
  return <Watched class="coach-numbers" watch={watch} bare={!moved} />;
}

/** Hints come out one at a time, as the room wants them. */
function Hints({ hints }: { hints: Said[][] }) {
  const [open, setOpen] = useState(0);
  return (
    <>
      <ol class="coach-hints">
        {hints.slice(0, open).map((said, at) => (
          <li key={at}>
            <Line said={said} />
          </li>
        ))}
      </ol>
      {open < hints.length && (
        <button type="button" onClick={() => setOpen(open + 1)}>
          {open === 0 ? "A hint" : "Another hint"}
        </button>
      )}
    </>
  );
}

interface AskProps {
  lesson: Listed;
  one: ToldStep;
  hands: number[];
  answered: AnsweredStep | null;
  onHands(hands: number[]): void;
  onAnswer(answer: AnsweredStep): void;
}

/** The question, and what the room says to it. */
function Ask({ lesson, one, hands, answered, onHands, onAnswer }: AskProps) {
  const { units } = useStore().view.value;
  const [text, setText] = useState("");
  const [points, setPoints] = useState<Points>(() => straight(one.start.shot));
  const { asks } = one.step;
  if (asks?.kind === "option") {
    return <Poll options={one.shown.options} hands={hands} right={null} onHands={onHands} />;
  }
  if (asks?.kind === "number") {
    const number = parseField(text, asks.quantity, units);
    return (
      <form
        class="coach-number"
        onSubmit={(event) => {
          event.preventDefault();
          if (number !== null) onAnswer(lesson.lesson.answer(one.at, one.start, { number }));
        }}
      >
        <label>
          What the room says{" "}
          <input
            type="text"
            inputmode="decimal"
            autocomplete="off"
            value={text}
            onInput={(event) => setText(event.currentTarget.value)}
          />{" "}
          {measure(asks.quantity, units).unit}
        </label>
        <button type="submit" disabled={number === null}>
          Take it down
        </button>
        <span role="status">{answered && "Taken down."}</span>
      </form>
    );
  }
  return (
    <div class="coach-draw">
      <DrawPath shot={one.start.shot} points={points} truth={null} onDraw={setPoints} />
      <button
        type="button"
        onClick={() => onAnswer(lesson.lesson.answer(one.at, one.start, { path: points }))}
      >
        Take the path down
      </button>
      <span role="status">{answered && "Taken down."}</span>
    </div>
  );
}

interface PollProps {
  options: Said[][];
  hands: number[];
  /** The right one; null while it is not told. */
  right: number | null;
  onHands?(hands: number[]): void;
}

/** Options with hands counted for each. */
function Poll({ options, hands, right, onHands }: PollProps) {
  const { units } = useStore().view.value;
  const count = (at: number) => hands[at] ?? 0;
  const most = Math.max(1, ...options.map((_, at) => count(at)));
  const set = (at: number, value: number) =>
    onHands?.(options.map((_, n) => (n === at ? Math.min(999, Math.max(0, Math.round(value))) : count(n))));
  return (
    <ol class="coach-poll">
      {options.map((option, at) => (
        <li key={at} data-right={at === right || undefined}>
          <span class="coach-letter" aria-hidden="true">
            {OPTIONS[at]}
          </span>
          <span class="coach-option">
            {plain(option, units)}
            {at === right && <strong class="coach-right"> Right</strong>}
          </span>
          {onHands ? (
            <span class="coach-hands">
              <button
                type="button"
                aria-label={`One hand fewer for ${OPTIONS[at]}`}
                disabled={count(at) === 0}
                onClick={() => set(at, count(at) - 1)}
              >
                −
              </button>
              <input
                type="text"
                inputmode="numeric"
                autocomplete="off"
                aria-label={`Hands for ${OPTIONS[at]}`}
                value={count(at)}
                onInput={(event) => set(at, Number(event.currentTarget.value) || 0)}
              />
              <button
                type="button"
                aria-label={`One hand more for ${OPTIONS[at]}`}
                onClick={() => set(at, count(at) + 1)}
              >
                +
              </button>
            </span>
          ) : (
            <span class="coach-counted">
              {count(at)} {count(at) === 1 ? "hand" : "hands"}
            </span>
          )}
          <meter
            class="coach-bar"
            min={0}
            max={most}
            value={count(at)}
            aria-label={`Hands for ${OPTIONS[at]}`}
          />
        </li>
      ))}
    </ol>
  );
}

/** What is right, beside what the room said. */
function Answer({ one, hands, answered }: { one: ToldStep; hands: number[]; answered: AnsweredStep | null }) {
  const { truth } = one;
  if (!truth) return null;
  if ("option" in truth.truth) {
    return (
      <>
        <Poll options={one.shown.options} hands={hands} right={truth.truth.option} />
        <p>
          <Line said={truth.say} />
        </p>
      </>
    );
  }
  if ("number" in truth.truth) {
    return (
      <>
        <p class="coach-truth">
          <Line said={[truth.truth.number]} />
        </p>
        {answered && (
          <p>
            <Line said={answered.say} />
          </p>
        )}
      </>
    );
  }
  return (
    <div class="coach-picture">
      <ShotOf id="coach-path" doc={one.end} width_px={Math.min(1100, innerWidth - 64)} height_px={240} />
      {answered && (
        <p>
          <Line said={answered.say} />
        </p>
      )}
    </div>
  );
}
