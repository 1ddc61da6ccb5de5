import { useEffect, useId, useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { LazyFold } from "../../parts/lazy-fold";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import type { Ladder } from "../../types";
import { digits, measure, number, reading } from "../../units";
import { useWhenStill } from "../../when-still";
import { limitNotes, materialNotes } from "./material-notes";
import { RungCards } from "./rung-cards";
import { WeightChart } from "./weight-chart";

/** How long the bench must be still before the line is worked out anew, ms. */
const STILL_MS = 250;

/** The ball at other weights; worked out only while it is open. */
export function WeightLine() {
  return (
    <LazyFold class="weight-line" summary="This ball at other weights">
      <Line />
    </LazyFold>
  );
}

function Line() {
  const store = useStore();
  const jobs = useJobs();
  const { file, undrilled } = store.derived.value;
  const names = undrilled.pieces.map(({ name }) => name);
  const [wanted, setWanted] = useState(1);
  const [wantedToo, setWantedToo] = useState(-1);
  const [wantedSize, setBySize] = useState(false);
  const [ladder, setLadder] = useState<Ladder | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const part = wanted < names.length ? wanted : 0;
  const too = wantedToo < names.length && wantedToo !== part ? wantedToo : -1;
  const bySize = wantedSize && part > 0 && too !== 0;

  useEffect(() => {
    setLadder(null);
  }, [file, part, too, bySize]);
  useWhenStill(
    STILL_MS,
    async (signal) => {
      const parts = too < 0 ? [part] : [part, too];
      setLadder(await jobs.run("ladder", { ball: file, parts, by_size: bySize }, signal));
      setRefused(null);
    },
    (problem) => setRefused(problem.message),
    [file, part, too, bySize],
  );

  const ids = { part: useId(), too: useId(), by: useId() };
  return (
    <>
      <p class="readout-says">Makers lighten or load one piece, or two in proportion, and keep the rest.</p>
      <label for={ids.part}>
        What changes
        <select id={ids.part} value={part} onChange={(event) => setWanted(Number(event.currentTarget.value))}>
          {names.map((name, n) => (
            <option key={n} value={n}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label for={ids.too}>
        Together with
        <select
          id={ids.too}
          value={too}
          onChange={(event) => setWantedToo(Number(event.currentTarget.value))}
        >
          <option value={-1}>nothing else</option>
          {names.map(
            (name, n) =>
              n !== part && (
                <option key={n} value={n}>
                  {name}, in proportion
                </option>
              ),
          )}
        </select>
      </label>
      <label for={ids.by}>
        How
        <select
          id={ids.by}
          value={bySize ? "size" : "density"}
          onChange={(event) => setBySize(event.currentTarget.value === "size")}
        >
          <option value="density">by its density</option>
          <option value="size" disabled={part === 0 || too === 0}>
            by its size
          </option>
        </select>
      </label>
      <div aria-live="polite">
        {refused ?? (ladder ? <span class="visually-hidden">Worked out.</span> : "Working it out …")}
      </div>
      {ladder && <Rungs ladder={ladder} />}
    </>
  );
}

function Rungs({ ladder }: { ladder: Ladder }) {
  const store = useStore();
  const units = store.view.value.units;
  const { file } = store.derived.value;
  const bySize = ladder.by === "size";
  const unit = (quantity: "weight" | "rg" | "imbalance") => (
    <span class="unit">{measure(quantity, units).unit}</span>
  );
  const weight = (lb: number) =>
    units === "trade" ? `${digits(lb, 0)}\u00a0lb` : reading(lb, "weight", units);
  const floating = ladder.rungs.filter(({ floats, feasible }) => floats && feasible);
  const notes = [
    ...ladder.rungs.flatMap(({ weight_lb, why }) =>
      why ? [`${weight(weight_lb)}: ${why.replace(/-(?=\d)/g, "\u2212")}`] : [],
    ),
    ...limitNotes(ladder, weight),
    ...ladder.rungs.flatMap(({ weight_lb, caution }) =>
      caution ? [`${weight(weight_lb)}: ${caution}`] : [],
    ),
    ...materialNotes(file, ladder, weight),
  ];
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard. */}
      <section class="weight-line-table" tabIndex={0} aria-label="The ball at other weights">
        <table>
          <caption class="visually-hidden">
            The ball at each weight by the {ladder.by} of {ladder.parts.join(" and ")}
          </caption>
          <thead>
            <tr>
              <th scope="col">
                <Term word="weight">Weight</Term>
              </th>
              {bySize ? (
                <th scope="col">
                  <Term word="piece">Size, times</Term>
                </th>
              ) : (
                ladder.parts.map((name) => (
                  <th scope="col" key={name}>
                    <Term word="density">{name}</Term> <span class="unit">g/cc</span>
                  </th>
                ))
              )}
              <th scope="col">
                <Term word="RG">Low RG</Term> {unit("rg")}
              </th>
              <th scope="col">
                <Term word="middle RG">Middle RG</Term> {unit("rg")}
              </th>
              <th scope="col">
                <Term word="high RG">High RG</Term> {unit("rg")}
              </th>
              <th scope="col">
                <Term word="differential">Differ&shy;ential</Term> {unit("rg")}
              </th>
              <th scope="col">
                <Term word="top weight">Top weight</Term> {unit("imbalance")}
              </th>
            </tr>
          </thead>
          <tbody>
            {ladder.rungs.map((rung) => (
              <tr key={rung.weight_lb} data-infeasible={!rung.feasible || undefined}>
                <th scope="row">{weight(rung.weight_lb)}</th>
                {bySize ? (
                  <td>{rung.size_factor === null ? "–" : digits(rung.size_factor, 3)}</td>
                ) : (
                  rung.changed.map(({ name, density_g_cc }) => (
                    <td key={name}>{density_g_cc === null ? "–" : digits(density_g_cc, 3)}</td>
                  ))
                )}
                {rung.feasible && rung.rg_in ? (
                  <>
                    <td>{number(rung.rg_in.low, "rg", units)}</td>
                    <td>{number(rung.rg_in.middle, "rg", units)}</td>
                    <td>{number(rung.rg_in.high, "rg", units)}</td>
                    <td>{number(rung.differential_in ?? 0, "rg", units)}</td>
                    <td>{number(rung.top_weight_oz ?? 0, "imbalance", units)}</td>
                  </>
                ) : (
                  <td class="rung-why" colSpan={5}>
                    cannot be made so: see below.
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <WeightChart ladder={ladder} />
      <RungCards ladder={ladder} weight={weight} />
      {notes.length > 0 && (
        <ul class="plain weight-line-notes">
          {notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      <p class="readout-says">
        A ball of this volume floats in water if it weighs less than{" "}
        {reading(ladder.floating_weight_lb, "weight", units)}
        {floating.length > 0
          ? `: of these, at ${floating.map(({ weight_lb }) => weight(weight_lb)).join(" and ")}.`
          : "."}
      </p>
    </>
  );
}
