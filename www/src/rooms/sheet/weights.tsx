import { worded } from "../../locale/worded";
import { Term } from "../../parts/term";
import type { Units } from "../../store";
import type { Ladder } from "../../types";
import { digits, measure, number, reading } from "../../units";
import { limitNotes, materialNotes } from "../scale/material-notes";
import type { Told } from "./told";

interface WeightsProps {
  told: Told;
  /** null while it is worked out. */
  ladder: Ladder | null;
  units: Units;
}

/** The ball at other weights, as a small table. */
export function Weights({ told, ladder, units }: WeightsProps) {
  if (!ladder) return <p class="sheet-weights">Working out the other weights …</p>;
  const weight = (lb: number) =>
    units === "trade" ? `${digits(lb, 0)}\u00a0lb` : reading(lb, "weight", units);
  const unit = measure("rg", units).unit;
  const notes = [
    ...limitNotes(ladder, weight),
    ...ladder.rungs.flatMap(({ weight_lb, caution }) =>
      caution ? [`${weight(weight_lb)}: ${worded(caution)}`] : [],
    ),
    ...materialNotes(told.file, ladder, weight),
  ];
  return (
    <section class="sheet-weights" aria-labelledby="sheet-weights">
      <h4 id="sheet-weights">At other weights</h4>
      <table>
        <caption>
          By the density of {ladder.parts.join(" and ")}, all else as it is
          {told.drilled && ", before drilling"}
        </caption>
        <thead>
          <tr>
            <th scope="col">
              <Term word="weight">Weight</Term>
            </th>
            <th scope="col">
              <Term word="density">g/cc</Term>
            </th>
            <th scope="col">
              <Term word="RG">RG</Term>, {unit}
            </th>
            <th scope="col">
              <Term word="differential">Diff.</Term>, {unit}
            </th>
          </tr>
        </thead>
        <tbody>
          {ladder.rungs.map((rung) => (
            <tr key={rung.weight_lb}>
              <th scope="row">{weight(rung.weight_lb)}</th>
              {rung.feasible && rung.rg_in ? (
                <>
                  <td>{rung.density_g_cc === null ? "–" : digits(rung.density_g_cc, 2)}</td>
                  <td>{number(rung.rg_in.low, "rg", units)}</td>
                  <td>{number(rung.differential_in ?? 0, "rg", units)}</td>
                </>
              ) : (
                <td colSpan={3}>cannot be made so</td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
      {notes.map((note) => (
        <p key={note} class="sheet-small">
          {note}
        </p>
      ))}
    </section>
  );
}

interface BothWeightsProps {
  /** A's and B's; null while one is worked out. */
  ladders: (Ladder | null)[];
  drilled: boolean;
  units: Units;
}

/** Two balls at other weights side by side. */
export function BothWeights({ ladders, drilled, units }: BothWeightsProps) {
  const [a, b] = ladders;
  if (!a || !b) return <p class="sheet-weights">Working out the other weights …</p>;
  const weight = (lb: number) =>
    units === "trade" ? `${digits(lb, 0)}\u00a0lb` : reading(lb, "weight", units);
  const unit = measure("rg", units).unit;
  const made = (n: number) => a.rungs[n]?.feasible || b.rungs[n]?.feasible;
  const neither = a.rungs.filter((_, n) => !made(n)).map(({ weight_lb }) => weight(weight_lb));
  const notes = [
    ...(neither.length > 0 ? [`${neither.join(", ")}: neither can be made so.`] : []),
    ...[a, b].flatMap((ladder, n) => limitNotes(ladder, weight).map((note) => `${"AB"[n]} at ${note}`)),
  ];
  return (
    <section class="sheet-weights" aria-labelledby="sheet-weights">
      <h4 id="sheet-weights">At other weights</h4>
      <table>
        <caption>
          By the density of {a.parts.join(" and ")} in A, of {b.parts.join(" and ")} in B
          {drilled && ", before drilling"}
        </caption>
        <thead>
          <tr>
            <th scope="col">
              <Term word="weight">Weight</Term>
            </th>
            {["A", "B"].flatMap((letter) => [
              <th scope="col" key={`${letter} rg`}>
                {letter}: <Term word="RG">RG</Term>, {unit}
              </th>,
              <th scope="col" key={`${letter} diff`}>
                <Term word="differential">Diff.</Term>, {unit}
              </th>,
            ])}
          </tr>
        </thead>
        <tbody>
          {a.rungs.map(
            (rung, n) =>
              made(n) && (
                <tr key={rung.weight_lb}>
                  <th scope="row">{weight(rung.weight_lb)}</th>
                  {[rung, b.rungs[n]].map((one, n) =>
                    one?.feasible && one.rg_in ? (
                      [
                        <td key={`${n} rg`}>{number(one.rg_in.low, "rg", units)}</td>,
                        <td key={`${n} diff`}>{number(one.differential_in ?? 0, "rg", units)}</td>,
                      ]
                    ) : (
                      <td key={n} colSpan={2}>
                        cannot be made so
                      </td>
                    ),
                  )}
                </tr>
              ),
          )}
        </tbody>
      </table>
      {notes.map((note) => (
        <p key={note} class="sheet-small">
          {note}
        </p>
      ))}
    </section>
  );
}
