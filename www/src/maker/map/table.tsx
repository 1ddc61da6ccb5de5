import { useState } from "preact/hooks";
import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import { useStore } from "../../store";
import type { BallMap, Figures } from "../../types";
import { digits, measure, number, type Quantity } from "../../units";
import { controlName, figureWord, quantityOf } from "../controls";
import { past } from "./judge";
import type { Side } from "./sides";

const NUMBERS: { figure: keyof Figures; name: string; quantity: Quantity }[] = [
  { figure: "low_rg_in", name: "low RG", quantity: "rg" },
  { figure: "differential_in", name: "differential", quantity: "rg" },
  { figure: "weight_lb", name: "weight", quantity: "weight" },
];

interface MapTableProps {
  sides: [Side, Side];
  /** The coarse rows. */
  rows: BallMap["rows"];
  limits: BallMap["limits"];
}

/** The map in numbers, one at a time. */
export function MapTable({ sides, rows, limits }: MapTableProps) {
  const { units } = useStore().view.value;
  const [wanted, setWanted] = useState<keyof Figures>("low_rg_in");
  const shown = NUMBERS.find(({ figure }) => figure === wanted);
  const quantity = shown?.quantity ?? "rg";
  const last = rows.length - 1;
  const value = ({ control, range: [from, to] }: Side, n: number) =>
    digits((from + ((to - from) * n) / last) * measure(quantityOf(control), units).factor, 3);
  return (
    <>
      <label class="line">
        <span class="field-label">In numbers</span>
        <select value={wanted} onChange={(event) => setWanted(event.currentTarget.value as keyof Figures)}>
          {NUMBERS.map(({ figure, name }) => (
            <option key={figure} value={figure}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <p class="readout-says">
        In {measure(quantity, units).unit}: {controlName(sides[0].control)} across,{" "}
        {controlName(sides[1].control)} down. A star: outside the published limits.
      </p>
      <Wide label="The map in numbers">
        <table>
          <caption>
            <Term word={figureWord(wanted)}>{shown?.name}</Term> over the two controls
          </caption>
          <thead>
            <tr>
              <td />
              {rows.map((_, n) => (
                <th scope="col" key={n}>
                  {value(sides[0], n)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, n) => (
              <tr key={n}>
                <th scope="row">{value(sides[1], n)}</th>
                {row.map((figures, k) => (
                  <td key={k}>
                    {figures
                      ? `${number(figures[wanted], quantity, units, wanted === "weight_lb" ? 0 : 1)}${past(figures, limits) > 0 ? "*" : ""}`
                      : "–"}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </Wide>
    </>
  );
}
