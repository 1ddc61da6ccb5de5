import "../../draw/draw.css";
import { groundOf } from "../../draw/ground";
import { LaneDrawing } from "../../draw/lane";
import { place } from "../../draw/lane-frame";
import { LayoutDrawing } from "../../draw/layout";
import { type Shot, type Units, useStore } from "../../store";
import type { Drilled, Ladder } from "../../types";
import { whatHappened } from "../lane/sentence";
import { Flat } from "../saw/flat";
import { Cautions } from "./cautions";
import { Links } from "./links";
import { Numbers } from "./numbers";
import type { Paper } from "./paper";
import { type Told, useMiddle } from "./told";
import { Weights } from "./weights";
import { drillingWords, releaseWords, shorten } from "./words";

export interface PageProps {
  bench: Told & { shot: Shot };
  other: Told | null;
  /** What the other is called: on the shelf a ball may have another name than its own. */
  otherName: string;
  /** The ball on the bench at other weights; undefined where they are not asked for or cannot be had. */
  ladder: Ladder | null | undefined;
  /** Why this one, or which of the two. */
  lines: string[];
  paper: Paper;
  bowler: string;
  date: string;
}

/** Longest name, names of two, and note that are printed. */
const MOST_NAME = 80;
const MOST_NAMES = 48;
const MOST_NOTE = 200;

/** The page as it is printed, and shown on the screen. */
export function Page({ bench, other, otherName, ladder, lines, paper, bowler, date }: PageProps) {
  const { wasm, view } = useStore();
  const { units } = view.value;
  const { shot, file, drilled } = bench;
  const laid = other ? null : drilled;
  const balls = other ? [bench, other] : [bench];
  return (
    <article
      class="sheet-page"
      data-paper={paper}
      data-balls={balls.length}
      data-laid={laid ? "" : undefined}
      aria-labelledby="sheet-title"
    >
      <header class="sheet-head">
        <div>
          <h3 id="sheet-title">
            {other ? `A: ${shorten(file.name, MOST_NAMES)}` : shorten(file.name, MOST_NAME)}
            {other && (
              <>
                <br />
                {`B: ${shorten(otherName, MOST_NAMES)}`}
              </>
            )}
          </h3>
          {!other && file.note && <p>{shorten(file.note, MOST_NOTE)}</p>}
        </div>
        <dl class="sheet-for">
          <div>
            <dt>For</dt>
            <dd>{bowler}</dd>
          </div>
          <div>
            <dt>Date</dt>
            <dd>{date}</dd>
          </div>
        </dl>
      </header>
      <section class="sheet-inside" aria-label="What is inside">
        {balls.map((told, n) => (
          <Cut key={n} letter={other ? letter(n) : null} told={told} units={units} />
        ))}
        {laid && <Laid told={bench} drilled={laid} shot={shot} units={units} />}
        <Numbers key={balls.length} balls={balls} units={units} />
      </section>
      <section class="sheet-shot" aria-labelledby="sheet-shot">
        <h4 id="sheet-shot">On the lane</h4>
        <p class="sheet-small">{releaseWords(wasm, shot, units)}.</p>
        {balls.map((told, n) => (
          <Lane
            key={n}
            letter={other ? letter(n) : null}
            told={told}
            shot={shot}
            units={units}
            height_px={other ? 94 : paper === "A4" ? 150 : 122}
          />
        ))}
      </section>
      <div class="sheet-columns">
        <section class="sheet-why" aria-labelledby="sheet-why">
          <h4 id="sheet-why">{other ? "Which for this bowler" : "Why this ball for this bowler"}</h4>
          <ul>
            {lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
        {ladder !== undefined && <Weights told={bench} ladder={ladder} units={units} />}
        <Links balls={balls} shot={shot} />
      </div>
      <Cautions balls={balls} units={units} />
    </article>
  );
}

const letter = (n: number): string => "AB"[n] ?? "";

/** The cut through the pin with the names of the parts. */
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
        width_px={letter || told.drilled ? 330 : 360}
        height_px={letter ? 236 : 300}
        text_px={12}
        dark={false}
        paper="#fff"
        marked
      />
    </figure>
  );
}

interface LaidProps {
  told: Told;
  drilled: Drilled;
  shot: Shot;
  units: Units;
}

/** The layout on the ball, and what its holes did. */
function Laid({ told, drilled, shot, units }: LaidProps) {
  return (
    <figure class="sheet-laid">
      <LayoutDrawing
        id="sheet-layout"
        drilled={drilled}
        hand={shot.hand}
        track={null}
        radius_in={told.file.diameter_in / 2}
        size_px={260}
        units={units}
      />
      <figcaption class="sheet-small">{drillingWords(drilled, units).join(" ")}</figcaption>
    </figure>
  );
}

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
  return (
    <figure class="sheet-lane">
      <figcaption>
        {letter && <b>{letter}: </b>}
        {said}
      </figcaption>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard. */}
      <section class="sheet-lane-place" tabIndex={0} aria-label={letter ? `Lane of ${letter}` : "Lane"}>
        <LaneDrawing
          id={`sheet-lane-${letter ?? "A"}`}
          roll={told.roll}
          hand={shot.hand}
          ground={groundOf(wasm, shot.lane)}
          place={place(700, height_px)}
          t_s={null}
          metric={units === "metric"}
          title="The lane from above"
          desc={said}
        />
      </section>
    </figure>
  );
}
