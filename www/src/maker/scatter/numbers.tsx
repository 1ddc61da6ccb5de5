import { worded } from "../../locale/worded";
import { Column } from "../../parts/column";
import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import { type Units, useStore } from "../../store";
import type { Scattered } from "../../types";
import { measure, number, QUANTITY_OF, reading } from "../../units";
import { figureWord } from "../controls";
import { Histogram } from "./histogram";
import { say } from "./say";

export type Spread = Scattered["numbers"][number];

/** One decimal more than usual: the spread is small. */
export const MORE = 1;

export function at(one: Spread, percent: number): number | null {
  return one.quantiles.find((quantile) => quantile.percent === percent)?.at ?? null;
}

/** How every number spreads: a table of all, and a histogram each. */
export function Numbers({ scattered }: { scattered: Scattered }) {
  const { units } = useStore().view.value;
  return (
    <section aria-label={say("spread-title")}>
      <h4>{say("spread-title")}</h4>
      <Wide label={say("spread-table")}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say("spread-number")}</th>
              <th scope="col">{say("spread-recipe")}</th>
              <th scope="col">{say("spread-mean")}</th>
              <Column word="standard deviation" name={say("spread-deviation")} />
              <Column word="percentile" name={say("spread-below-1")} />
              <th scope="col">{say("spread-below-50")}</th>
              <th scope="col">{say("spread-below-99")}</th>
              <th scope="col">{say("spread-good-from")}</th>
              <th scope="col">{say("spread-to")}</th>
            </tr>
          </thead>
          <tbody>
            {scattered.numbers.map((one) => (
              <Row key={one.number} one={one} units={units} />
            ))}
          </tbody>
        </table>
      </Wide>
      <div class="histograms">
        {scattered.numbers.map((one) => (
          <Histogram key={one.number} one={one} />
        ))}
      </div>
    </section>
  );
}

function Row({ one, units }: { one: Spread; units: Units }) {
  const quantity = QUANTITY_OF[one.unit];
  const cell = (value: number | null) => (
    <td>{value === null ? "–" : number(value, quantity, units, MORE)}</td>
  );
  const [low, high] = one.accept ?? [null, null];
  return (
    <tr>
      <th scope="row">
        <Term word={figureWord(one.number)}>{worded(one.name)}</Term>{" "}
        <span class="unit">{measure(quantity, units).unit}</span>
      </th>
      {cell(one.nominal)}
      {cell(one.mean)}
      {cell(one.deviation)}
      {cell(at(one, 1))}
      {cell(at(one, 50))}
      {cell(at(one, 99))}
      {cell(low)}
      {cell(high)}
    </tr>
  );
}

/** "from 15.12 lb to 15.32 lb". */
export function rangeSays(
  [low, high]: [number | null, number | null],
  unit: Spread["unit"],
  units: Units,
): string {
  const end = (value: number) => reading(value, QUANTITY_OF[unit], units, MORE);
  if (low !== null && high !== null) return say("spread-from-to", { low: end(low), high: end(high) });
  return low !== null
    ? say("spread-from-up", { low: end(low) })
    : say("spread-up-to", { high: end(high ?? 0) });
}
