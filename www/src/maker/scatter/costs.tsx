import { useState } from "preact/hooks";
import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import { type Units, useStore } from "../../store";
import type { Scattered } from "../../types";
import { number, QUANTITY_OF, reading } from "../../units";

type Cost = Scattered["costs"][number];

/** Shown at first: the dearest. */
const SHOWN = 12;
const BAR = 120;

const NAMES: Record<string, string> = {
  passing: "whether a ball passes",
  weight_lb: "the weight",
  low_rg_in: "the low RG",
  differential_in: "the differential",
  intermediate_differential_in: "the intermediate differential",
  top_weight_oz: "the top weight",
};

const called = ({ part, what }: Cost) => `${part ?? "ball"}: ${what}`;

/** Which tolerance costs most: ranked bars and their table. */
export function Costs({ scattered }: { scattered: Scattered }) {
  const { units } = useStore().view.value;
  const [wanted, setWanted] = useState("passing");
  const [all, setAll] = useState(false);
  const kinds = scattered.costs[0]?.of.map(({ number }) => number) ?? [];
  const of = (cost: Cost) => cost.of.find(({ number }) => number === wanted);
  const total = (cost: Cost) => of(cost)?.total ?? 0;
  const ranked = scattered.costs.toSorted((a, b) => total(b) - total(a));
  const shown = all ? ranked : ranked.slice(0, SHOWN);
  const [first, second] = ranked;
  const varies = first !== undefined && of(first)?.total != null;
  return (
    <section aria-label="Which tolerance costs most">
      <h4>Which tolerance costs most</h4>
      <label class="line">
        <span class="field-label">Measured by</span>
        <select value={wanted} onChange={(event) => setWanted(event.currentTarget.value)}>
          {kinds.map((kind) => (
            <option key={kind} value={kind}>
              {NAMES[kind] ?? kind}
            </option>
          ))}
        </select>
      </label>
      {varies ? (
        <>
          <p class="costs-say" aria-live="polite">
            Most of what decides {NAMES[wanted]} comes from {called(first)} (
            {reading(total(first), "share", units)} with all it does together with others)
            {second && `, then from ${called(second)} (${reading(total(second), "share", units)})`}.
          </p>
          <Wide label="Every tolerance, the dearest first">
            <table class="costs">
              <caption>
                What part of the spread each tolerance causes <Term word="first order">by itself</Term>, and{" "}
                <Term word="total order">with others</Term>
              </caption>
              <thead>
                <tr>
                  <th scope="col">Tolerance</th>
                  <th scope="col">
                    <Term word="tolerance">Within ±</Term>
                  </th>
                  <th scope="col">
                    <Term word="first order">By itself</Term>, %
                  </th>
                  <th scope="col">
                    <Term word="total order">With others</Term>, %
                  </th>
                  <th scope="col">
                    <Term word="95 % interval">give or take</Term>
                  </th>
                </tr>
              </thead>
              <tbody>
                {shown.map((cost) => (
                  <Row
                    key={`${cost.place} ${cost.what}  ${cost.part}`}
                    cost={cost}
                    of={of(cost)}
                    units={units}
                  />
                ))}
              </tbody>
            </table>
          </Wide>
          {ranked.length > SHOWN && (
            <button type="button" aria-expanded={all} onClick={() => setAll(!all)}>
              {all ? `Only the dearest ${SHOWN}` : `All ${ranked.length}`}
            </button>
          )}
          <p class="readout-says">
            The dark bar is by itself, the outlined one with others. Computed at{" "}
            {scattered.base_points.toLocaleString("en")} points; small parts may come out a little below 0.
          </p>
        </>
      ) : (
        <p>Nothing varies here: every ball comes to the same.</p>
      )}
    </section>
  );
}

function Row({ cost, of, units }: { cost: Cost; of: Cost["of"][number] | undefined; units: Units }) {
  const length = (part: number | null | undefined) => Math.min(1, Math.max(0, part ?? 0)) * BAR;
  const cell = (part: number | null | undefined) => (part == null ? "–" : number(part, "share", units));
  return (
    <tr>
      <th scope="row">
        {called(cost)}
        <svg class="costs-bar" viewBox={`0 0 ${BAR + 2} 10`} aria-hidden="true">
          <rect class="costs-first" x="1" y="1" width={length(of?.first)} height="8" />
          <rect class="costs-total" x="1" y="1" width={length(of?.total)} height="8" />
        </svg>
      </th>
      <td>{reading(cost.within, QUANTITY_OF[cost.unit], units)}</td>
      <td>{cell(of?.first)}</td>
      <td>{cell(of?.total)}</td>
      <td>{cell(of?.total_error)}</td>
    </tr>
  );
}
