// The words of counting, shown on balls poured a little off.
import { Bars, FOOT, HEIGHT, WIDTH } from "../../maker/scatter/bars";
import "../../maker/maker.css";
import { useId, useState } from "preact/hooks";
import { Picture } from "../../draw/picture";
import { useJobs } from "../../jobs";
import { controlName } from "../../maker/controls";
import { at, MORE } from "../../maker/scatter/numbers";
import { pour } from "../../maker/scatter/pour";
import { ShareBar, shareSays, sharesSay } from "../../maker/scatter/shares";
import { Broken } from "../../parts/broken";
import { useStore } from "../../store";
import type { NotDone } from "../../task";
import type { BallFile, Scattered } from "../../types";
import { count, number, reading } from "../../units";
import { useWhenStill } from "../../when-still";
import { nameOf, type Word } from "../../words";
import { say } from "./say";
import { shownOf } from "./shown";

const BALLS = 1000;
const LINE = 26;
/** Of the tolerances, so many are drawn. */
const MOST = 5;

const poured = new Map<string, Scattered>();

/** Balls poured once for all words; `done` is null while they are. */
function usePoured(ball: BallFile): { done: Scattered | null; broken: NotDone | null } {
  const store = useStore();
  const jobs = useJobs();
  const [done, setDone] = useState(poured.get(ball.name) ?? null);
  const { broken } = useWhenStill(
    0,
    async (signal) => {
      const known = poured.get(ball.name);
      if (known) return setDone(known);
      const made = new store.wasm.Ball(ball);
      const tolerances = { ...made.usual_tolerances(), balls: BALLS };
      made.free();
      const found = await pour(jobs, { ball, tolerances }, signal, () => {});
      poured.set(ball.name, found);
      setDone(found);
    },
    store.fail,
    [ball],
  );
  return { done, broken };
}

/** All words of counting together, so that the balls are poured once. */
export function usePictures(ball: BallFile): (word: Word) => preact.JSX.Element {
  const { done: scattered, broken } = usePoured(ball);
  return (word) =>
    broken ? (
      <Broken broken={broken} />
    ) : scattered ? (
      <Counted word={word} shows={shownOf(word)} scattered={scattered} />
    ) : (
      <p class="hint">{say("words-pouring", { balls: count(BALLS) })}</p>
    );
}

function Counted({ word, shows, scattered }: { word: Word; shows: string; scattered: Scattered }) {
  switch (word) {
    case "histogram":
    case "standard deviation":
    case "percentile":
      return <Poured word={word} shows={shows} scattered={scattered} />;
    case "95 % interval":
      return <Interval shows={shows} scattered={scattered} />;
    case "scrap":
      return (
        <figure>
          <ShareBar scattered={scattered} />
          <figcaption>{say("words-scrap", { shows, shares: sharesSay(scattered) })}</figcaption>
        </figure>
      );
    default:
      return <Costs word={word} shows={shows} scattered={scattered} />;
  }
}

interface CountedProps {
  word: "histogram" | "standard deviation" | "percentile";
  shows: string;
  scattered: Scattered;
}

function Poured({ word, shows, scattered }: CountedProps) {
  const { units } = useStore().view.value;
  const id = useId();
  const one = scattered.numbers.find(({ number }) => number === "low_rg_in");
  if (!one) return null;
  const read = (value: number) => reading(value, "rg", units, MORE);
  const x = (value: number) => ((value - one.least) / (one.most - one.least)) * WIDTH;
  const marks = word === "percentile" ? [1, 50, 99].map((percent) => at(one, percent) ?? one.mean) : [];
  const [low, high] = [one.mean - one.deviation, one.mean + one.deviation];
  const here = {
    histogram: say("words-histogram", {
      balls: count(one.count),
      least: read(one.least),
      most: read(one.most),
    }),
    "standard deviation": say("words-deviation", { mean: read(one.mean), deviation: read(one.deviation) }),
    percentile: say("words-percentile", {
      first: read(marks[0] ?? 0),
      half: read(marks[1] ?? 0),
      last: read(marks[2] ?? 0),
    }),
  }[word];
  const says = say("words-here", { shows, number: here });
  return (
    <figure class="histogram">
      <Picture
        id={id}
        viewBox={`-2 -2 ${WIDTH + 4} ${HEIGHT + FOOT + 4}`}
        title={say("words-drawn", { word: nameOf(word) })}
        desc={says}
      >
        {word === "standard deviation" && (
          <rect class="histogram-middle" x={x(low)} width={x(high) - x(low)} height={HEIGHT} />
        )}
        <Bars bins={one.bins} x={x} />
        {[...marks, ...(word === "standard deviation" ? [one.mean] : [])].map((mark) => (
          <path key={mark} class="histogram-accept" d={`M${x(mark)} 0V${HEIGHT}`} />
        ))}
        <text x="0" y={HEIGHT + FOOT}>
          {number(one.least, "rg", units, MORE)}
        </text>
        <text x={WIDTH} y={HEIGHT + FOOT} text-anchor="end">
          {read(one.most)}
        </text>
      </Picture>
      <figcaption>{says}</figcaption>
    </figure>
  );
}

/** The share that passes with its interval, on a line from nothing to all. */
function Interval({ shows, scattered }: Omit<CountedProps, "word">) {
  const id = useId();
  const { passed } = scattered;
  const [low, high] = passed.wilson_95;
  const number = say("words-interval", { share: shareSays(passed), balls: count(scattered.balls) });
  const says = say("words-here", { shows, number });
  return (
    <figure class="histogram">
      <Picture
        id={id}
        viewBox={`-2 -2 ${WIDTH + 4} 54`}
        title={say("words-drawn", { word: nameOf("95 % interval") })}
        desc={says}
      >
        <path class="histogram-axis" d={`M0 20H${WIDTH}`} />
        <rect class="histogram-middle" x={low * WIDTH} width={(high - low) * WIDTH} y="8" height="24" />
        <path class="histogram-accept" d={`M${passed.share * WIDTH} 4V36`} />
        <text x="0" y="50">
          {say("words-none")}
        </text>
        <text x={WIDTH} y="50" text-anchor="end">
          {say("words-all")}
        </text>
      </Picture>
      <figcaption>{says}</figcaption>
    </figure>
  );
}

/** The tolerances that do most, by themselves and with others. */
function Costs({ word, shows, scattered }: { word: Word; shows: string; scattered: Scattered }) {
  const { units } = useStore().view.value;
  const id = useId();
  const wanted = word === "first order" ? "low_rg_in" : "passing";
  const most = scattered.costs
    .map((cost) => ({
      name: controlName(cost),
      first: cost.of.find((one) => one.number === wanted)?.first ?? 0,
      total: cost.of.find((one) => one.number === wanted)?.total ?? 0,
    }))
    .toSorted((a, b) => b.total - a.total)
    .slice(0, MOST);
  const [top] = most;
  if (!top) return null;
  const says = say("words-costs", {
    shows,
    name: top.name,
    first: reading(top.first, "share", units),
    total: reading(top.total, "share", units),
  });
  const length = (part: number) => Math.min(1, Math.max(0, part)) * WIDTH;
  return (
    <figure class="histogram">
      <Picture
        id={id}
        viewBox={`-2 -2 ${WIDTH + 4} ${most.length * LINE + 2}`}
        title={say("words-drawn", { word: nameOf(word) })}
        desc={says}
      >
        {most.map(({ name, first, total }, n) => (
          <g key={name} transform={`translate(0 ${n * LINE})`}>
            <text y="11">{name}</text>
            <rect class="costs-first" x="0" y="14" width={length(first)} height="8" />
            <rect class="costs-total" x="0" y="14" width={length(total)} height="8" />
          </g>
        ))}
      </Picture>
      <figcaption>{says}</figcaption>
    </figure>
  );
}
