import { useEffect, useId, useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { partCalled } from "../../locale/names";
import { Broken } from "../../parts/broken";
import { Column } from "../../parts/column";
import { LazyFold } from "../../parts/lazy-fold";
import { Result } from "../../parts/result";
import { useStore } from "../../store";
import type { Ladder, Problem } from "../../types";
import { digits, number, reading, sentenceIn } from "../../units";
import { useWhenStill } from "../../when-still";
import { partNames } from "../saw/parts";
import { canBeMade, cautionNotes, limitNotes, materialNotes } from "./material-notes";
import { RungCards } from "./rung-cards";
import { say } from "./say";
import { WeightChart } from "./weight-chart";

/** How long the bench must be still before the line is worked out anew, ms. */
const STILL_MS = 250;

/** The ball at other weights; worked out only while it is open. */
export function WeightLine() {
  return (
    <LazyFold class="weight-line" summary={say("scale-line")}>
      <Line />
    </LazyFold>
  );
}

function Line() {
  const store = useStore();
  const jobs = useJobs();
  const { units } = store.view.value;
  const { file, shot } = store.derived.value;
  const names = partNames({ made: file });
  const [wanted, setWanted] = useState(1);
  const [wantedToo, setWantedToo] = useState(-1);
  const [wantedSize, setBySize] = useState(false);
  const [ladder, setLadder] = useState<Ladder | null>(null);
  const [refused, setRefused] = useState<Problem | null>(null);
  const part = wanted < names.length ? wanted : 0;
  const too = wantedToo < names.length && wantedToo !== part ? wantedToo : -1;
  const bySize = wantedSize && part > 0 && too !== 0;

  useEffect(() => {
    setLadder(null);
  }, [file, part, too, bySize]);
  const { broken } = useWhenStill(
    STILL_MS,
    async (signal) => {
      const parts = too < 0 ? [part] : [part, too];
      setLadder(await jobs.run("ladder", { ball: file, parts, by_size: bySize }, signal));
      setRefused(null);
    },
    setRefused,
    [file, part, too, bySize],
  );

  const ids = { part: useId(), too: useId(), by: useId() };
  return (
    <>
      <p class="readout-says">
        {say("scale-line-makers")} {shot.drilling && say("scale-line-undrilled")}
      </p>
      <label for={ids.part}>
        {say("scale-line-changes")}
        <select id={ids.part} value={part} onChange={(event) => setWanted(Number(event.currentTarget.value))}>
          {names.map((name, n) => (
            <option key={n} value={n}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label for={ids.too}>
        {say("scale-line-together")}
        <select
          id={ids.too}
          value={too}
          onChange={(event) => setWantedToo(Number(event.currentTarget.value))}
        >
          <option value={-1}>{say("scale-line-nothing-else")}</option>
          {names.map(
            (name, n) =>
              n !== part && (
                <option key={n} value={n}>
                  {say("scale-line-in-proportion", { part: name })}
                </option>
              ),
          )}
        </select>
      </label>
      <label for={ids.by}>
        {say("scale-line-how")}
        <select
          id={ids.by}
          value={bySize ? "size" : "density"}
          onChange={(event) => setBySize(event.currentTarget.value === "size")}
        >
          <option value="density">{say("scale-line-by-density")}</option>
          <option value="size" disabled={part === 0 || too === 0}>
            {say("scale-line-by-size")}
          </option>
        </select>
      </label>
      {broken ? (
        <Broken broken={broken} />
      ) : refused ? (
        <Result of={refused}>{sentenceIn(refused.message, units)}</Result>
      ) : (
        !ladder && <p>{say("scale-line-working")}</p>
      )}
      {ladder && <Rungs ladder={ladder} />}
    </>
  );
}

function Rungs({ ladder }: { ladder: Ladder }) {
  const store = useStore();
  const units = store.view.value.units;
  const { file } = store.derived.value;
  const bySize = ladder.by === "size";
  const weight = (lb: number) =>
    units === "trade" ? `${digits(lb, 0)}\u00a0lb` : reading(lb, "weight", units);
  const made = ladder.rungs.filter(canBeMade);
  const floating = ladder.rungs.filter(({ floats, feasible }) => floats && feasible);
  const and = (texts: string[]) => texts.reduce((first, second) => say("scale-line-and", { first, second }));
  const note = (lb: number, said: string) => say("scale-line-note", { weight: weight(lb), note: said });
  const rg = (rung: Ladder["rungs"][number]) => reading(rung.rg_in?.low ?? 0, "rg", units);
  const [light, heavy] = [made[0], made.at(-1)];
  const spans =
    light && heavy
      ? say(bySize ? "scale-line-spans" : "scale-line-spans-usual", {
          light: weight(light.weight_lb),
          "light-rg": rg(light),
          heavy: weight(heavy.weight_lb),
          "heavy-rg": rg(heavy),
        })
      : say(ladder.rungs.some(({ feasible }) => feasible) ? "scale-line-none-usual" : "scale-line-none");
  const notes = [
    ...ladder.rungs.flatMap(({ weight_lb, why }) =>
      why ? [note(weight_lb, sentenceIn(why, units).replace(/-(?=\d)/g, "\u2212"))] : [],
    ),
    ...limitNotes(ladder, weight),
    ...cautionNotes(ladder, weight, units),
    ...materialNotes(file, ladder, weight),
  ];
  return (
    <>
      <Result of={ladder}>{spans}</Result>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard. */}
      <section class="weight-line-table" tabIndex={0} aria-label={say("scale-line-table")}>
        <table>
          <caption class="visually-hidden">
            {say("scale-line-caption", { by: ladder.by, parts: and(ladder.parts.map(partCalled)) })}
          </caption>
          <thead>
            <tr>
              <Column word="weight" name={say("scale-line-weight")} />
              {bySize ? (
                <Column word="piece" name={say("scale-line-size-times")} />
              ) : (
                ladder.parts.map((name) => (
                  <Column key={name} word="density" name={partCalled(name)} quantity="density" />
                ))
              )}
              <Column word="RG" name={say("scale-line-low-rg")} quantity="rg" />
              <Column word="middle RG" name={say("scale-line-middle-rg")} quantity="rg" />
              <Column word="high RG" name={say("scale-line-high-rg")} quantity="rg" />
              <Column word="differential" name={say("scale-line-differential")} quantity="rg" />
              <Column word="top weight" name={say("scale-line-top-weight")} quantity="imbalance" />
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
                    {say("scale-line-not-so")}
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
        {say(floating.length > 0 ? "scale-line-some-float" : "scale-line-floats", {
          weight: reading(ladder.floating_weight_lb, "weight", units),
          floating: floating.length > 0 ? and(floating.map(({ weight_lb }) => weight(weight_lb))) : "",
        })}
      </p>
    </>
  );
}
