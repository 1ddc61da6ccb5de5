import type { Units } from "../../store";
import type { Ladder } from "../../types";
import { digits, measure, number, reading } from "../../units";
import { materialNotes } from "../scale/material-notes";
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
    ...ladder.rungs.flatMap(({ weight_lb, caution }) =>
      caution ? [`${weight(weight_lb)}: ${caution}`] : [],
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
            <th scope="col">Weight</th>
            <th scope="col">g/cc</th>
            <th scope="col">RG, {unit}</th>
            <th scope="col">Diff., {unit}</th>
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
