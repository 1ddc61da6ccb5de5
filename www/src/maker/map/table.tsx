import { useState } from "preact/hooks";
import { Say } from "../../locale/say";
import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import { useStore } from "../../store";
import type { BallMap, Figures } from "../../types";
import { digits, measure, number, type Quantity } from "../../units";
import { controlName, figureWord, quantityOf } from "../controls";
import { say } from "../say";
import { past } from "./judge";
import type { Side } from "./sides";

/** By the names of their texts. */
const NUMBERS: { figure: keyof Figures; name: string; quantity: Quantity }[] = [
  { figure: "low_rg_in", name: "maker-low-rg", quantity: "rg" },
  { figure: "differential_in", name: "maker-differential", quantity: "rg" },
  { figure: "weight_lb", name: "maker-weight", quantity: "weight" },
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
        <span class="field-label">{say("map-in-numbers")}</span>
        <select value={wanted} onChange={(event) => setWanted(event.currentTarget.value as keyof Figures)}>
          {NUMBERS.map(({ figure, name }) => (
            <option key={figure} value={figure}>
              {say(name)}
            </option>
          ))}
        </select>
      </label>
      <p class="readout-says">
        {say("map-table-says", {
          unit: measure(quantity, units).unit,
          across: controlName(sides[0].control),
          up: controlName(sides[1].control),
        })}
      </p>
      <Wide label={say("map-table")}>
        <table>
          <caption>
            <Say
              id="map-table-caption"
              args={{ number: say(shown?.name ?? "maker-low-rg") }}
              parts={{ number: (name) => <Term word={figureWord(wanted)}>{name}</Term> }}
            />
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
