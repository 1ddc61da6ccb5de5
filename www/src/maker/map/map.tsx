// The ball over two of its controls: contours of RG and differential, the limits, the ball itself.
import "../maker.css";
import "./map.css";
import { useEffect, useMemo, useState } from "preact/hooks";
import { useAloud, useNews } from "../../aloud";
import { type Jobs, useJobs } from "../../jobs";
import { ownProblem } from "../../own-problem";
import { Broken } from "../../parts/broken";
import { NumberField } from "../../parts/field";
import { LazyFold } from "../../parts/lazy-fold";
import { Refused } from "../../parts/refused";
import { Term } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { BallFile, BallMap, Control, Problem } from "../../types";
import { digits, fieldText, measure, reading } from "../../units";
import { useWhenStill } from "../../when-still";
import { controlName, controlWord, quantityOf } from "../controls";
import { say } from "../say";
import { past } from "./judge";
import { MapPicture } from "./picture";
import { asked, COARSE, FINE, here, type Side, sideOf, usualSides } from "./sides";
import { MapTable } from "./table";

/** How long ball and sides must be still before the map is drawn anew, ms. */
const STILL_MS = 300;
/** Rows in one task. */
const TASK = 3;

export function MapFold() {
  return (
    <LazyFold class="maker" summary={say("map-title")}>
      <Panel />
    </LazyFold>
  );
}

interface Mapped {
  sides: [Side, Side];
  coarse: BallMap["rows"];
  /** null until it is worked out. */
  fine: BallMap["rows"] | null;
  limits: BallMap["limits"];
}

function Panel() {
  const store = useStore();
  const jobs = useJobs();
  const { base, file } = store.derived.value;
  const controls = useMemo(() => base.controls(), [base]);
  const places = controls.map(({ control }) => control).join(" ");
  // Ranges stay while the ball is edited, and begin anew with another kind of ball.
  const [chosen, setChosen] = useState<[Side, Side] | null>(null);
  useEffect(() => setChosen(null), [places]);
  const sides = chosen ?? usualSides(file, controls);
  const [mapped, setMapped] = useState<Mapped | null>(null);
  const [refused, setRefused] = useState<Problem | null>(null);
  const key = JSON.stringify(sides);

  useEffect(() => {
    // So that the map does not move under the reader's hand as the ball is edited.
    if (!chosen && sides) setChosen(sides);
  }, [key]);
  const { broken } = useWhenStill(
    STILL_MS,
    async (signal) => {
      if (!sides) return;
      const { limits } = await jobs.run("map", { ball: file, sides: asked(sides, COARSE) }, signal);
      setRefused(null);
      const coarse = await rowsOf(jobs, file, sides, COARSE, signal);
      setMapped({ sides, coarse, fine: null, limits });
      setMapped({ sides, coarse, fine: await rowsOf(jobs, file, sides, FINE, signal), limits });
    },
    setRefused,
    [file, key],
  );

  if (!sides) return <p>{say("map-nothing")}</p>;
  return (
    <>
      <SideFields
        name={say("map-across")}
        side={sides[0]}
        other={sides[1]}
        controls={controls}
        onChange={(x) => setChosen([x, sides[1]])}
      />
      <SideFields
        name={say("map-up")}
        side={sides[1]}
        other={sides[0]}
        controls={controls}
        onChange={(y) => setChosen([sides[0], y])}
      />
      {refused && <Refused problem={refused} />}
      {broken && <Broken broken={broken} />}
      {mapped ? <Drawn mapped={mapped} file={file} /> : !broken && <p>{say("maker-working")}</p>}
    </>
  );
}

async function rowsOf(
  jobs: Jobs,
  ball: BallFile,
  sides: [Side, Side],
  count: number,
  signal: AbortSignal,
): Promise<BallMap["rows"]> {
  const tasks = Array.from({ length: Math.ceil(count / TASK) }, (_, n) => ({
    ball,
    sides: asked(sides, count),
    from: n * TASK,
    to: Math.min(count, (n + 1) * TASK),
  }));
  return (await jobs.all("rows", tasks, { signal })).flat();
}

interface SideFieldsProps {
  name: string;
  side: Side;
  other: Side;
  controls: Control[];
  onChange(side: Side): void;
}

function SideFields({ name, side, other, controls, onChange }: SideFieldsProps) {
  const store = useStore();
  const { file } = store.derived.value;
  const { units } = store.view.value;
  const quantity = quantityOf(side.control);
  const [from, to] = side.range;
  const text = (value: number) => fieldText(value, quantity, units);
  const end = (label: string, at: 0 | 1) => (
    <NumberField
      bare
      label={
        <>
          <span class="visually-hidden">{say("map-end-of", { side: name })} </span>
          <Term word={controlWord(side.control)}>{label}</Term>
        </>
      }
      value={side.range[at]}
      quantity={quantity}
      min={0}
      max={1}
      step={(to - from) / 20 || 0.01}
      refuse={(next) => {
        if (at === 0 ? next < to : next > from) return null;
        const [id, other] = at === 0 ? ["map-below", to] : ["map-above", from];
        return ownProblem(() => say(id, { other: text(other), still: text(side.range[at]) }));
      }}
      onChange={(value) => onChange({ ...side, range: at === 0 ? [value, to] : [from, value] })}
    />
  );
  return (
    <div class="map-side">
      <label class="line">
        <span class="field-label">{name}</span>
        <select
          value={side.control.control}
          onChange={(event) => {
            const control = controls.find(({ control }) => control === event.currentTarget.value);
            if (control) onChange(sideOf(file, control));
          }}
        >
          {controls
            .filter(({ control }) => control !== other.control.control)
            .map((control) => (
              <option key={control.control} value={control.control}>
                {controlName(control)}
              </option>
            ))}
        </select>
      </label>
      <div class="map-ends">
        {end(say("map-from"), 0)}
        {end(say("map-to"), 1)}
      </div>
    </div>
  );
}

function Drawn({ mapped, file }: { mapped: Mapped; file: BallFile }) {
  const store = useStore();
  const { units } = store.view.value;
  const { sides, coarse, fine, limits } = mapped;
  const rows = fine ?? coarse;
  const last = rows.length - 1;
  const own = here(file, sides);
  const [picked, setPicked] = useState<[number, number] | null>(null);
  const part = (value: number) => Math.round(Math.min(1, Math.max(0, value)) * last) / last;
  const [px, py] = picked ?? own;
  const point: [number, number] = [part(px), part(py)];
  const figures = rows[Math.round(point[1] * last)]?.[Math.round(point[0] * last)] ?? null;
  const valueOn = ({ range: [from, to] }: Side, part: number) => from + (to - from) * part;
  const valueSays = (side: Side, part: number) => {
    const { factor, unit } = measure(quantityOf(side.control), units);
    const value = digits(valueOn(side, part) * factor, 3);
    return unit ? `${value}\u00a0${unit}` : say("maker-times-value", { value });
  };
  const desc = mapSays(rows, limits, units);
  const there = figures
    ? say(past(figures, limits) > 0 ? "map-there-outside" : "map-there", {
        rg: reading(figures.low_rg_in, "rg", units),
        differential: reading(figures.differential_in, "rg", units),
        weight: reading(figures.weight_lb, "weight", units),
      })
    : say("map-there-impossible");
  useAloud(fine, fine && desc);
  useNews(picked, there);
  return (
    <>
      <figure class="map-figure">
        <MapPicture
          sides={sides}
          rows={rows}
          limits={limits}
          here={own}
          point={point}
          desc={desc}
          onPoint={setPicked}
        />
        <figcaption class="readout-says">
          {desc} {say("map-key", { unit: measure("rg", units).unit })}
        </figcaption>
      </figure>
      <p class="readout-says">
        {fine ? say("map-drawn", { count: FINE }) : say("map-drawn-coarse", { count: COARSE })}
      </p>
      <fieldset class="map-pick">
        <legend>{say("map-point")}</legend>
        {sides.map((side, n) => (
          <label key={side.control.control}>
            {say("map-point-side", {
              side: say(n === 0 ? "map-across" : "map-up"),
              control: controlName(side.control),
              value: valueSays(side, point[n] ?? 0),
            })}
            <input
              type="range"
              min={0}
              max={last}
              step={1}
              value={Math.round((point[n] ?? 0) * last)}
              aria-valuetext={valueSays(side, point[n] ?? 0)}
              onInput={(event) => {
                const value = Number(event.currentTarget.value) / last;
                setPicked(n === 0 ? [value, point[1]] : [point[0], value]);
              }}
            />
          </label>
        ))}
        <p class="map-says">{there}</p>
        <button
          type="button"
          disabled={figures === null}
          onClick={() => {
            const [x, y] = sides;
            const { base } = store.derived.value;
            const ball = base.turned(
              x.control.control,
              valueOn(x, point[0]),
              y.control.control,
              valueOn(y, point[1]),
            );
            store.replace({ ball }, say("map-that-point"));
          }}
        >
          {say("map-put")}
        </button>
      </fieldset>
      <MapTable sides={sides} rows={coarse} limits={limits} />
    </>
  );
}

/** What the map shows, in words. */
function mapSays(rows: BallMap["rows"], limits: BallMap["limits"], units: Units): string {
  const all = rows.flat();
  const made = all.filter((figures) => figures !== null);
  if (made.length === 0) return say("map-none");
  const ends = (key: "low_rg_in" | "differential_in") => {
    const values = made.map((figures) => figures[key]);
    return [Math.min(...values), Math.max(...values)].map((end) => reading(end, "rg", units));
  };
  const [rg_from = "", rg_to = ""] = ends("low_rg_in");
  const [differential_from = "", differential_to = ""] = ends("differential_in");
  const share = (count: number) => `${Math.round((100 * count) / all.length)}%`;
  const outside = made.filter((figures) => past(figures, limits) > 0).length;
  const lost = all.length - made.length;
  const text =
    outside > 0
      ? lost > 0
        ? "map-says-outside-lost"
        : "map-says-outside"
      : lost > 0
        ? "map-says-lost"
        : "map-says";
  const spans = { rg_from, rg_to, differential_from, differential_to };
  return say(text, { ...spans, outside: share(outside), lost: share(lost) });
}
