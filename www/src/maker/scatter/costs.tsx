import { useState } from "preact/hooks";
import { useNews } from "../../aloud";
import { Say, type SayProps } from "../../locale/say";
import { worded } from "../../locale/worded";
import { Column } from "../../parts/column";
import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import { type Units, useStore } from "../../store";
import type { Scattered } from "../../types";
import { count, number, QUANTITY_OF, reading } from "../../units";
import { controlName } from "../controls";
import { say } from "./say";

type Cost = Scattered["costs"][number];

/** Shown at first: the dearest. */
const SHOWN = 12;
const BAR = 120;

const NAMES: Record<string, string> = {
  passing: "costs-passing",
  weight_lb: "costs-weight",
  low_rg_in: "costs-low-rg",
  differential_in: "costs-differential",
  intermediate_differential_in: "costs-intermediate",
  top_weight_oz: "costs-top-weight",
};

/** The words for both kinds of sensitivity lead to their meanings. */
const ORDERS: SayProps["parts"] = {
  first: (words) => <Term word="first order">{words}</Term>,
  total: (words) => <Term word="total order">{words}</Term>,
};

const numberSays = (number: string): string => {
  const id = NAMES[number];
  return id ? say(id) : number;
};

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
  const dearest =
    varies &&
    say(second ? "costs-say-two" : "costs-say", {
      number: numberSays(wanted),
      first: controlName(first),
      share: reading(total(first), "share", units),
      second: second ? controlName(second) : "",
      next: second ? reading(total(second), "share", units) : "",
    });
  useNews(wanted, dearest || null);
  return (
    <section aria-label={say("costs-title")}>
      <h4>{say("costs-title")}</h4>
      <label class="line">
        <span class="field-label">{say("costs-measured-by")}</span>
        <select value={wanted} onChange={(event) => setWanted(event.currentTarget.value)}>
          {kinds.map((kind) => (
            <option key={kind} value={kind}>
              {numberSays(kind)}
            </option>
          ))}
        </select>
      </label>
      {varies ? (
        <>
          <p class="costs-say">{dearest}</p>
          <Wide label={say("costs-table")}>
            <table class="costs">
              <caption>
                <Say id="costs-caption" parts={ORDERS} />
              </caption>
              <thead>
                <tr>
                  <th scope="col">{say("costs-tolerance")}</th>
                  <Column word="tolerance" name={say("costs-within")} />
                  <th scope="col">
                    <Say id="costs-by-itself" parts={ORDERS} />
                  </th>
                  <th scope="col">
                    <Say id="costs-with-others" parts={ORDERS} />
                  </th>
                  <Column word="95 % interval" name={say("costs-give-or-take")} />
                </tr>
              </thead>
              <tbody>
                {shown.map((cost) => (
                  <Row
                    key={`${cost.place} ${worded(cost.what)}  ${cost.part}`}
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
              {all ? say("costs-only-dearest", { shown: SHOWN }) : say("costs-all", { all: ranked.length })}
            </button>
          )}
          <p class="readout-says">{say("costs-note", { points: count(scattered.base_points) })}</p>
        </>
      ) : (
        <p>{say("costs-nothing")}</p>
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
        {controlName(cost)}
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
