import { partCalled } from "../../locale/names";
import { SayTerms } from "../../parts/say-terms";
import { shorten } from "../../shorten";
import type { Units } from "../../store";
import type { Ladder } from "../../types";
import { digits, measure, number, reading } from "../../units";
import { canBeMade, cautionNotes, limitNotes, materialNotes } from "../scale/material-notes";
import { say } from "./say";
import type { Told } from "./told";

/** Letters of a part's name. */
const MOST_PART = 24;

interface WeightsProps {
  told: Told;
  /** null while it is worked out. */
  ladder: Ladder | null;
  units: Units;
}

/** The ball at other weights, as a small table. */
export function Weights({ told, ladder, units }: WeightsProps) {
  if (!ladder) return <p class="sheet-weights">{say("sheet-working")}</p>;
  const weight = (lb: number) =>
    units === "trade" ? `${digits(lb, 0)}\u00a0lb` : reading(lb, "weight", units);
  const unit = measure("rg", units).unit;
  const notes = [
    ...limitNotes(ladder, weight),
    ...cautionNotes(ladder, weight, units),
    ...materialNotes(told.file, ladder, weight),
  ];
  return (
    <section class="sheet-weights" aria-labelledby="sheet-weights">
      <h4 id="sheet-weights">{say("sheet-weights")}</h4>
      <table>
        <caption>
          {say(told.drilled ? "sheet-by-density-drilled" : "sheet-by-density", {
            parts: and(ladder.parts),
          })}
        </caption>
        <thead>
          <tr>
            <th scope="col">
              <SayTerms id="sheet-head-weight" terms={{ weight: "weight" }} />
            </th>
            <th scope="col">
              <SayTerms id="sheet-head-density" terms={{ density: "density" }} />
            </th>
            <th scope="col">
              <SayTerms id="sheet-head-rg" args={{ unit }} terms={{ rg: "RG" }} />
            </th>
            <th scope="col">
              <SayTerms
                id="sheet-head-differential"
                args={{ unit }}
                terms={{ differential: "differential" }}
              />
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
                <td colSpan={3}>{say("sheet-not-so")}</td>
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

/** Beside a weight that wants a density which its material hardly has: two balls leave no room to say more. */
const MARK = "\u2020";
const unlikely = (rung: Ladder["rungs"][number]): boolean => rung.feasible && !canBeMade(rung);

interface BothWeightsProps {
  /** A's and B's; null while one is worked out. */
  ladders: (Ladder | null)[];
  drilled: boolean;
  units: Units;
}

/** Two balls at other weights side by side. */
export function BothWeights({ ladders, drilled, units }: BothWeightsProps) {
  const [a, b] = ladders;
  if (!a || !b) return <p class="sheet-weights">{say("sheet-working")}</p>;
  const both = [a, b];
  const weight = (lb: number) =>
    units === "trade" ? `${digits(lb, 0)}\u00a0lb` : reading(lb, "weight", units);
  const unit = measure("rg", units).unit;
  const made = (n: number) => a.rungs[n]?.feasible || b.rungs[n]?.feasible;
  const neither = a.rungs.filter((_, n) => !made(n)).map(({ weight_lb }) => weight(weight_lb));
  const notes = [
    ...(neither.length > 0 ? [say("sheet-neither", { weights: neither.join(", ") })] : []),
    ...(both.some(({ rungs }) => rungs.some(unlikely)) ? [say("sheet-unlikely", { mark: MARK })] : []),
    ...both.flatMap((ladder, n) =>
      limitNotes(ladder, weight).map((note) => say("sheet-note-at", { letter: "AB"[n] ?? "", note })),
    ),
  ];
  return (
    <section class="sheet-weights" aria-labelledby="sheet-weights">
      <h4 id="sheet-weights">{say("sheet-weights")}</h4>
      <table>
        <caption>
          {say(drilled ? "sheet-by-both-drilled" : "sheet-by-both", {
            a: and(a.parts),
            b: and(b.parts),
          })}
        </caption>
        <thead>
          <tr>
            <th scope="col">
              <SayTerms id="sheet-head-weight" terms={{ weight: "weight" }} />
            </th>
            {["A", "B"].flatMap((letter) => [
              <th scope="col" key={`${letter} rg`}>
                <SayTerms id="sheet-head-rg-of" args={{ letter, unit }} terms={{ rg: "RG" }} />
              </th>,
              <th scope="col" key={`${letter} diff`}>
                <SayTerms
                  id="sheet-head-differential"
                  args={{ unit }}
                  terms={{ differential: "differential" }}
                />
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
                        <td key={`${n} rg`}>
                          {number(one.rg_in.low, "rg", units)}
                          {unlikely(one) && MARK}
                        </td>,
                        <td key={`${n} diff`}>{number(one.differential_in ?? 0, "rg", units)}</td>,
                      ]
                    ) : (
                      <td key={n} colSpan={2}>
                        {say("sheet-not-so")}
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

const and = (names: string[]): string =>
  names
    .map((name) => shorten(partCalled(name), MOST_PART))
    .reduce((one, other) => say("sheet-both", { one, other }));
