import "../../draw/draw.css";
import type { ReadonlySignal } from "@preact/signals";
import { groundOf } from "../../draw/ground";
import { LaneDrawing } from "../../draw/lane";
import { place } from "../../draw/lane-frame";
import { LayoutDrawing } from "../../draw/layout";
import { useSize } from "../../draw/use-size";
import { shorten } from "../../shorten";
import { type Shot, type Units, useStore } from "../../store";
import type { Drilled, Ladder } from "../../types";
import { whatHappened } from "../lane/sentence";
import { Flat } from "../saw/flat";
import { Cautions } from "./cautions";
import { Links } from "./links";
import { Numbers } from "./numbers";
import type { Paper } from "./paper";
import { say } from "./say";
import { type Told, useMiddle } from "./told";
import { BothWeights, Weights } from "./weights";
import { balanceWords, drillingWords, releaseWords } from "./words";

export interface PageProps {
  bench: Told & { shot: Shot };
  other: Told | null;
  /** What the other is called: on the shelf a ball may have another name than its own. */
  otherName: string;
  /** Each ball at other weights, null while worked out; undefined where one cannot be had. */
  ladders: (Ladder | null)[] | undefined;
  /** Why this one, or which of the two. */
  lines: string[];
  paper: Paper;
  /** Typed letter by letter: only the line that shows it is drawn anew. */
  bowler: ReadonlySignal<string>;
  date: ReadonlySignal<string>;
}

/** Longest name, names of two, and note that are printed. */
const MOST_NAME = 80;
const MOST_NAMES = 48;
const MOST_NOTE = 200;

/** The page as it is printed, and shown on the screen. */
export function Page({ bench, other, otherName, ladders, lines, paper, bowler, date }: PageProps) {
  const { wasm, view } = useStore();
  const { units } = view.value;
  const { shot, file, drilled } = bench;
  const balls = other ? [bench, other] : [bench];
  return (
    <article
      class="sheet-page"
      data-paper={paper}
      data-balls={balls.length}
      data-laid={drilled ? "" : undefined}
      aria-labelledby="sheet-title"
    >
      <header class="sheet-head">
        <div>
          <h3 id="sheet-title">
            {other ? (
              <>
                <span class="sheet-name">{say("sheet-a", { ball: shorten(file.name, MOST_NAMES) })}</span>{" "}
                <span class="sheet-name">{say("sheet-b", { ball: shorten(otherName, MOST_NAMES) })}</span>
              </>
            ) : (
              shorten(file.name, MOST_NAME)
            )}
          </h3>
          {!other && file.note && <p>{shorten(file.note, MOST_NOTE)}</p>}
        </div>
        <dl class="sheet-for">
          <div>
            <dt>{say("sheet-for")}</dt>
            <dd>{bowler}</dd>
          </div>
          <div>
            <dt>{say("sheet-date")}</dt>
            <dd>{date}</dd>
          </div>
        </dl>
      </header>
      <section class="sheet-inside" aria-label={say("sheet-inside")}>
        {balls.map((told, n) => (
          <Cut key={n} letter={other ? letter(n) : null} told={told} units={units} />
        ))}
        {drilled && <Laid told={bench} other={other} drilled={drilled} shot={shot} units={units} />}
        <Numbers key={balls.length} balls={balls} units={units} />
        {other && drilled && (
          <p class="sheet-small sheet-balance">
            {balls
              .map(
                ({ drilled }, n) =>
                  drilled &&
                  say("sheet-of", { letter: letter(n), what: balanceWords(drilled.statics, units) }),
              )
              .join(" ")}
          </p>
        )}
      </section>
      <section class="sheet-shot" aria-labelledby="sheet-shot">
        <h4 id="sheet-shot">{say("sheet-on-lane")}</h4>
        <p class="sheet-small">{releaseWords(wasm, shot, units)}</p>
        {balls.map((told, n) => (
          <Lane
            key={n}
            letter={other ? letter(n) : null}
            told={told}
            shot={shot}
            units={units}
            height_px={laneHeight(balls.length, drilled !== null, paper)}
          />
        ))}
      </section>
      <div class="sheet-columns">
        <section class="sheet-why" aria-labelledby="sheet-why">
          <h4 id="sheet-why">{say(other ? "sheet-which" : "sheet-why")}</h4>
          <ul>
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
        {ladders &&
          (other ? (
            <BothWeights ladders={ladders} drilled={drilled !== null} units={units} />
          ) : (
            <Weights told={bench} ladder={ladders[0] ?? null} units={units} />
          ))}
        <Links balls={balls} shot={shot} />
      </div>
      <Cautions balls={balls} units={units} />
    </article>
  );
}

/** The drawings take less where there is more to say. */
const laneHeight = (balls: number, drilled: boolean, paper: Paper): number =>
  balls === 1 ? (paper === "A4" ? 150 : 122) : paper === "A4" ? (drilled ? 80 : 88) : drilled ? 62 : 70;

const letter = (n: number): string => "AB"[n] ?? "";

/** The cut through the pin with the names of the parts, about as wide as its place on paper, so that letters keep their size. */
function Cut({ told, letter, units }: { told: Told; letter: string | null; units: Units }) {
  const section = useMiddle(told.ball);
  return (
    <figure class="sheet-section">
      {letter && <figcaption>{letter}</figcaption>}
      <Flat
        id={`sheet-section-${letter ?? "A"}`}
        derived={told}
        section={section}
        units={units}
        {...(told.drilled
          ? { width_px: 264, height_px: letter ? 186 : 240, text_px: 11.5 }
          : { width_px: letter ? 330 : 360, height_px: letter ? 236 : 300, text_px: 12 })}
        dark={false}
        paper="#fff"
        marked
      />
    </figure>
  );
}

interface LaidProps {
  told: Told;
  /** Drilled alike. */
  other: Told | null;
  drilled: Drilled;
  shot: Shot;
  units: Units;
}

/** The layout on the ball, and what its holes did. */
function Laid({ told, other, drilled, shot, units }: LaidProps) {
  const said = other ? [say("sheet-drilled-alike")] : drillingWords(drilled, units);
  return (
    <figure class="sheet-laid">
      <LayoutDrawing
        id="sheet-layout"
        drilled={drilled}
        hand={shot.hand}
        track={null}
        radius_in={told.file.diameter_in / 2}
        size_px={other ? 180 : 260}
        units={units}
      />
      <figcaption class="sheet-small">{said.join(" ")}</figcaption>
    </figure>
  );
}

/** Narrower than this the lane's words would be too small to read. */
const WIDE_PX = 560;

interface LaneProps {
  told: Told;
  shot: Shot;
  letter: string | null;
  units: Units;
  height_px: number;
}

/** The lane from above, and in words. */
function Lane({ told, shot, letter, units, height_px }: LaneProps) {
  const { wasm } = useStore();
  const said = whatHappened(told.roll, shot.hand, units);
  const [box, size] = useSize<HTMLElement>();
  // On a narrow screen it is laid out anew, no less of it; on paper as on a wide one.
  const narrow = size !== null && size.width_px > 0 && size.width_px < WIDE_PX;
  return (
    <figure class="sheet-lane">
      <figcaption>
        {letter && <b>{letter}: </b>}
        {said}
      </figcaption>
      <section
        class="sheet-lane-place"
        ref={box}
        aria-label={letter ? say("sheet-lane-of", { letter }) : say("sheet-lane")}
      >
        <LaneDrawing
          id={`sheet-lane-${letter ?? "A"}`}
          roll={told.roll}
          hand={shot.hand}
          ground={groundOf(wasm, shot.lane)}
          place={narrow ? place(Math.max(size.width_px, 260), 120, 10) : place(700, height_px, 10)}
          t_s={null}
          metric={units === "metric"}
          title={say("sheet-lane-above")}
          desc={said}
        />
      </section>
    </figure>
  );
}
