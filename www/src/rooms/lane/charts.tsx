// What changes down the lane, each against distance and small, with its table one key away.

import type { ReadonlySignal } from "@preact/signals";
import { line as polyline } from "../../draw/lane-frame";
import { revsOf, sampleAfter } from "../../draw/moment";
import { Picture } from "../../draw/picture";
import { phaseName } from "../../draw/say";
import { Term } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { Roll, Sample } from "../../types";
import { count, measure, number, type Quantity, reading } from "../../units";
import type { Word } from "../../words";
import { Phases } from "./phases";
import { say } from "./say";

interface Line {
  /** Of its text. */
  name: string;
  word: Word;
  quantity: Quantity;
  of(sample: Sample): number;
  /** What to say of the whole, where the first and the last moment would say little. */
  says?(roll: Roll, units: Units): string;
}

const LINES: Line[] = [
  { name: "lane-chart-speed", word: "speed", quantity: "speed", of: (sample) => sample.speed_mph },
  { name: "lane-chart-revs", word: "rev rate", quantity: "revs", of: revsOf },
  { name: "lane-chart-slip", word: "slip", quantity: "speed", of: (sample) => sample.slip_mph },
  {
    name: "lane-chart-bend",
    word: "hook",
    quantity: "bend",
    of: (sample) => sample.curvature_deg_ft,
    says: meanBends,
  },
  {
    name: "lane-chart-rotation",
    word: "axis rotation",
    quantity: "angle",
    of: (sample) => sample.axis_rotation_deg ?? 0,
  },
  {
    name: "lane-chart-tilt",
    word: "axis tilt",
    quantity: "angle",
    of: (sample) => sample.axis_tilt_deg ?? 0,
  },
  { name: "lane-chart-friction", word: "friction", quantity: "friction", of: (sample) => sample.mu },
];

/** Where there is oil on the lane, its film under the ball too. */
const FILM: Line = {
  name: "lane-chart-film",
  word: "film",
  quantity: "film",
  of: (sample) => sample.film_um ?? 0,
};

const linesOf = ({ samples }: Roll): Line[] => (samples[0]?.film_um == null ? LINES : [...LINES, FILM]);

const WIDTH = 220;
const HEIGHT = 70;

/** By phase, over its whole length: at a single moment the path ripples. */
function meanBends({ phases }: Roll, units: Units): string {
  const bends = phases
    .filter(({ length_ft }) => length_ft > 0)
    .map(
      ({ phase, turned_deg, length_ft }) =>
        `${phaseName(phase)} ${number(turned_deg / length_ft, "bend", units)}`,
    );
  return `${bends.join(", ")} ${measure("bend", units).unit}`;
}

/** `t_s` is the moment on show in the pictures above; the charts mark it too. */
export function Charts({ t_s }: { t_s: ReadonlySignal<number> }) {
  const store = useStore();
  const { roll } = store.derived.value;
  const lines = linesOf(roll);
  return (
    <>
      <Phases roll={roll} />
      <details class="charts">
        <summary>{say("lane-charts", { more: count(lines.length - 2) })}</summary>
        <div class="charts-row">
          {lines.map((line) => (
            <Chart key={line.name} line={line} roll={roll} t_s={t_s} />
          ))}
        </div>
        <p class="readout-says">{say("lane-charts-ripples")}</p>
        <details>
          <summary>{say("lane-charts-table")}</summary>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard. */}
          <section class="charts-table" tabIndex={0} aria-label={say("lane-charts-by-distance")}>
            <Table roll={roll} />
          </section>
        </details>
      </details>
    </>
  );
}

interface ChartProps {
  line: Line;
  roll: Roll;
  t_s: ReadonlySignal<number>;
}

function Chart({ line, roll, t_s }: ChartProps) {
  const { units } = useStore().view.value;
  const first = roll.samples[0];
  const last = roll.samples.at(-1);
  if (!first || !last) return null;
  const values = roll.samples.map(line.of);
  const top = Math.max(1e-9, ...values) * 1.08;
  const low = Math.min(0, ...values) * 1.08;
  const height = (value: number) => ((top - value) / (top - low)) * HEIGHT;
  const at = (sample: Sample): [number, number] => [
    (Math.max(0, sample.y_ft) / 60) * WIDTH,
    height(line.of(sample)),
  ];
  const from = reading(line.of(first), line.quantity, units);
  const to = reading(line.of(last), line.quantity, units);
  const mean = line.says?.(roll, units);
  const name = say(line.name);
  return (
    <div>
      <p class="chart-name" aria-hidden="true">
        {mean ? say("lane-chart-mean", { name, mean }) : say("lane-chart-ends", { name, from, to })}
      </p>
      <Picture
        id={line.name}
        class="chart"
        viewBox={`-4 -4 ${WIDTH + 8} ${HEIGHT + 20}`}
        title={say("lane-chart-title", { name })}
        desc={mean ? say("lane-chart-says-mean", { mean }) : say("lane-chart-says", { from, to })}
      >
        <path class="chart-axis" d={`M0 0V${HEIGHT}M0 ${height(0)}H${WIDTH}`} />
        <path class="chart-line" d={polyline(roll.samples.map(at))} />
        <Cursor line={line} roll={roll} t_s={t_s} at={at} />
        <text x="0" y={HEIGHT + 13}>
          0
        </text>
        <text x={WIDTH} y={HEIGHT + 13} text-anchor="end">
          {reading(60, "distance", units)}
        </text>
      </Picture>
    </div>
  );
}

/** The value at the moment on show, while that is not the end. */
function Cursor({ line, roll, t_s, at }: ChartProps & { at(sample: Sample): [number, number] }) {
  const { units } = useStore().view.value;
  const sample = roll.samples[sampleAfter(roll.samples, t_s.value)];
  if (!sample || sample === roll.samples.at(-1)) return null;
  const [x, y] = at(sample);
  return (
    <g class="chart-cursor">
      <path d={`M${x} 0V${HEIGHT}`} />
      <circle cx={x} cy={y} r="3.5" />
      <text x={x < WIDTH / 2 ? x + 7 : x - 7} y={HEIGHT - 6} text-anchor={x < WIDTH / 2 ? "start" : "end"}>
        {reading(line.of(sample), line.quantity, units)}
      </text>
    </g>
  );
}

const STOPS_FT = [0, 10, 20, 30, 40, 45, 50, 55, 60];

/** The sample nearest to each stop the ball reaches. */
function stops(roll: Roll): Sample[] {
  return STOPS_FT.filter((stop) => stop <= roll.summary.end_ft + 0.5).flatMap((stop) => {
    const nearest = roll.samples.reduce<Sample | null>(
      (best, sample) =>
        best === null || Math.abs(sample.y_ft - stop) < Math.abs(best.y_ft - stop) ? sample : best,
      null,
    );
    return nearest ? [nearest] : [];
  });
}

function Table({ roll }: { roll: Roll }) {
  const { units } = useStore().view.value;
  return (
    <table>
      <caption>{say("lane-charts-by-distance")}</caption>
      <thead>
        <tr>
          <th scope="col">{say("lane-chart-distance", { unit: measure("distance", units).unit })}</th>
          <th scope="col">{say("lane-phase")}</th>
          {linesOf(roll).map((line) => (
            <th scope="col" key={line.name}>
              <Term word={line.word}>{say(line.name)}</Term>
              {measure(line.quantity, units).unit && `, ${measure(line.quantity, units).unit}`}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {stops(roll).map((sample) => (
          <tr key={sample.t_s}>
            <th scope="row">{number(sample.y_ft, "distance", units)}</th>
            <td>{phaseName(sample.phase)}</td>
            {linesOf(roll).map((line) => (
              <td key={line.name}>{number(line.of(sample), line.quantity, units)}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
