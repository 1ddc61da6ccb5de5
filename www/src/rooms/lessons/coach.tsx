import "./coach.css";
import type { ComponentChildren } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { useNews } from "../../aloud";
import { Heard } from "../../announce";
import { lessonsAt } from "../../lessons/at";
import { DrawPath, type Points, straight, untouched } from "../../lessons/draw-path";
import { type Listed, listedOf } from "../../lessons/read";
import { Line, Prose, plain } from "../../lessons/said";
import { type ToldStep, told } from "../../lessons/told";
import { Watched } from "../../lessons/watched";
import { Say } from "../../locale/say";
import { useStore } from "../../store";
import type { AnsweredStep, Said } from "../../types";
import { measure, parseField } from "../../units";
import { isWord, meaningOf, nameOf } from "../../words";
import { CutOf, ShotOf } from "./pictured";
import { optionOf, Poll, raised } from "./poll";
import { say } from "./say";
import { type Beside, type Slide, slidesOf } from "./slides";

/** Hands counted for each option, by the step. */
type Hands = Record<number, number[]>;

/** A lesson told to a room: one thing on the screen, on and back with a clicker or the keyboard. */
export function Coach({ text }: { text: string }) {
  const one = listedOf(text);
  const slides = useMemo(() => slidesOf(one.about, told(one)), [one]);
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

  const slide = slides[at];
  if (!slide) return null;
  const asked = "one" in slide ? slide.one : null;
  const counted = (asked && hands[asked.at]) ?? [];
  const count = (now: number[]) => asked && setHands({ ...hands, [asked.at]: now });

  function press(event: KeyboardEvent) {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const { target } = event;
    const field = target instanceof HTMLInputElement && target.type === "text" ? target : null;
    // In a number of hands the arrows to the sides move on; in other fields they stay in the text.
    const typing = field !== null && !("hands" in field.dataset);
    const options =
      asked?.step.asks?.kind === "option" && slide?.is === "ask" ? asked.shown.options.length : 0;
    const option = field ? null : optionOf(event, options);
    if (option !== null) count(raised(counted, options, option, event.shiftKey ? -1 : 1));
    else if (event.key === "PageDown" || (!typing && ["ArrowRight", "ArrowDown"].includes(event.key)))
      move(1);
    else if (event.key === "PageUp" || (!typing && ["ArrowLeft", "ArrowUp"].includes(event.key))) move(-1);
    else if (event.key === "Home" && !field) setAt(0);
    else return;
    event.preventDefault();
  }

  return (
    <dialog
      class="coach"
      ref={dialog}
      aria-label={say("coach-label", { title: one.about.title })}
      onKeyDown={press}
      onClose={() => {
        lessonsAt.value = { page: "list" };
        // Back on the button that opened it, which has come anew.
        requestAnimationFrame(() =>
          document.getElementById(`to-room-${one.about.id}`)?.focus({ preventScroll: true }),
        );
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
          hands={counted}
          answered={(asked && answers[asked.at]) ?? null}
          onHands={count}
          onAnswer={(answer) => asked && setAnswers({ ...answers, [asked.at]: answer })}
        />
      </div>
      <div class="coach-way">
        <button type="button" disabled={at === 0} onClick={() => move(-1)}>
          {say("coach-back")}
        </button>
        <span>{say("coach-at", { at: at + 1, all: slides.length })}</span>
        <button type="button" class="primary" disabled={at === last} onClick={() => move(1)}>
          {say("coach-next")}
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
            {say("coach-full")}
          </button>
        )}
        <button type="button" onClick={() => dialog.current?.close()}>
          {say("coach-end")}
        </button>
      </div>
      <Heard />
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
  switch (slide.is) {
    case "title":
      return (
        <>
          <p class="coach-course">{one.about.course}</p>
          <Prose blocks={one.about.aim} />
          <p class="coach-keys">{say("coach-keys")}</p>
        </>
      );
    case "words":
      return (
        <dl class="coach-words">
          {one.about.words.map((word) => (
            <div key={word}>
              <dt>{isWord(word) ? nameOf(word) : word}</dt>
              <dd>{isWord(word) ? meaningOf(word) : ""}</dd>
            </div>
          ))}
        </dl>
      );
    case "text":
      return (
        <With beside={slide.beside} one={slide.one}>
          <Prose blocks={slide.blocks} />
        </With>
      );
    case "ask":
      return (
        <>
          <Prose blocks={slide.blocks} />
          <Ask
            lesson={one}
            one={slide.one}
            hands={hands}
            answered={answered}
            onHands={onHands}
            onAnswer={onAnswer}
          />
        </>
      );
    case "answer":
      return (
        <>
          <Prose blocks={slide.blocks} />
          <Answer one={slide.one} hands={hands} answered={answered} />
        </>
      );
    case "task":
      return (
        <With beside={slide.beside} one={slide.one}>
          <Prose blocks={slide.blocks} />
          <p>{say("coach-change")}</p>
          <Hints hints={slide.one.shown.hints} />
        </With>
      );
    case "done":
      return (
        <With beside={slide.beside} one={slide.one}>
          <p>
            <Say
              id="coach-one-way"
              parts={{
                strong: (said) => <strong>{said}</strong>,
                done: () => <Line said={slide.one.done ?? []} />,
              }}
            />
          </p>
        </With>
      );
    case "end":
      return <p>{say("coach-over")}</p>;
  }
}

interface WithProps {
  beside: Beside;
  one: ToldStep;
  children: ComponentChildren;
}

/** A text with the ball beside it, the lane and the numbers below. */
function With({ beside: { cut, shot, numbers }, one, children }: WithProps) {
  return (
    <>
      <div class="coach-with" data-cut={cut ? "" : undefined}>
        <div class="coach-says">
          {children}
          {cut && numbers && <Numbers one={one} />}
        </div>
        {cut && (
          <div class="coach-picture">
            <CutOf page id="coach-cut" doc={cut} width_px={560} height_px={460} />
          </div>
        )}
      </div>
      {shot && (
        <div class="coach-picture">
          <ShotOf id="coach-shot" doc={shot} width_px={Math.min(1100, innerWidth - 64)} height_px={220} />
        </div>
      )}
      {!cut && numbers && <Numbers one={one} />}
    </>
  );
}

function Numbers({ one }: { one: ToldStep }) {
  const { watch } = one.after;
  const moved = watch.some(({ start, now }) => JSON.stringify(start) !== JSON.stringify(now));
  return <Watched class="coach-numbers" watch={watch} bare={!moved} />;
}

/** Hints come out one at a time, as the room wants them. */
function Hints({ hints }: { hints: Said[][] }) {
  const { units } = useStore().view.value;
  const [open, setOpen] = useState(0);
  useNews(open, plain(hints[open - 1] ?? [], units));
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
          {say(open === 0 ? "coach-hint" : "coach-another-hint")}
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
    return (
      <>
        <Poll options={one.shown.options} hands={hands} right={null} onHands={onHands} />
        <p class="coach-keys">{say("coach-hands-keys")}</p>
      </>
    );
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
          {say("coach-room-says")}{" "}
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
          {say("coach-take-down")}
        </button>
        <span role="status">{answered && say("coach-taken-down")}</span>
        <p class="coach-keys">{say("coach-field-keys")}</p>
      </form>
    );
  }
  return (
    <div class="coach-draw">
      <DrawPath shot={one.start.shot} points={points} truth={null} onDraw={setPoints} />
      <button
        type="button"
        disabled={untouched(points)}
        onClick={() => onAnswer(lesson.lesson.answer(one.at, one.start, { path: points }))}
      >
        {say("coach-take-path")}
      </button>
      <span role="status">{answered && say("coach-taken-down")}</span>
      <p class="coach-keys">{say("coach-path-keys")}</p>
    </div>
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
