import { BeforeAfter, type ChangeRow } from "../../parts/before-after";
import { Term } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { AxisMove, Drilled, StaticVerdict } from "../../types";
import { reading } from "../../units";

/** What the holes change: the ball before and after, its static weights, where its axes went. */
export function WhatHolesChange() {
  const store = useStore();
  const { drilled } = store.derived.value;
  const units = store.view.value.units;
  if (!drilled) return null;
  return (
    <section class="drilled" aria-labelledby="drilled-name">
      <h3 id="drilled-name">What the holes change</h3>
      <BeforeAfter
        caption="The ball before and after drilling"
        heads={["Before", "After"]}
        rows={ROWS}
        before={drilled.before}
        after={drilled.after}
      />
      <Statics drilled={drilled} units={units} />
      <p class="readout-says">
        {axisWords("high", drilled.high_axis, units)} {axisWords("low", drilled.low_axis, units)}
      </p>
      <p class="fine-print">
        The drill takes out {reading(drilled.change.drilled_out_oz, "imbalance", units)} here; about{" "}
        {reading(2.5, "imbalance", units)} is usual (common practice, no source), and RG and differential are
        reported to change by about 5 %.
      </p>
    </section>
  );
}

const ROWS: ChangeRow<Drilled["before"]>[] = [
  { name: <Term word="weight">Weight</Term>, quantity: "weight", of: (ball) => ball.weight_lb },
  { name: <Term word="RG">Lowest RG</Term>, quantity: "rg", of: (ball) => ball.rg_in.low },
  { name: <Term word="middle RG">Middle RG</Term>, quantity: "rg", of: (ball) => ball.rg_in.middle },
  { name: <Term word="high RG">Highest RG</Term>, quantity: "rg", of: (ball) => ball.rg_in.high },
  { name: <Term word="differential">Differential</Term>, quantity: "rg", of: (ball) => ball.differential_in },
  {
    name: <Term word="intermediate differential">Intermediate</Term>,
    quantity: "rg",
    of: (ball) => ball.intermediate_differential_in,
  },
];

const SIDES = [
  ["top_oz", "Top", "Bottom"],
  ["finger_oz", "Finger", "Thumb"],
  ["side_oz", "Positive side", "Negative side"],
] as const;

const IN_WORDS: Record<StaticVerdict, string> = {
  pass: "within",
  fail: "outside",
  too_close: "too close to tell",
  not_applicable: "no limit for this ball",
};

function Statics({ drilled, units }: { drilled: Drilled; units: Units }) {
  const { statics, rules } = drilled;
  const rule = rules.find(({ rule }) => rule === "static_balance");
  const limit = rule?.at_most ?? null;
  return (
    <>
      <table class="shares-table">
        <caption class="drilled-caption">
          <Term word="static balance">Static balance</Term> over the grip
          {limit !== null && `, allowed ${reading(limit, "imbalance", units)} each way`}
        </caption>
        <thead class="visually-hidden">
          <tr>
            <th scope="col">Side</th>
            <th scope="col">Weight</th>
            <th scope="col">Verdict</th>
          </tr>
        </thead>
        <tbody>
          {SIDES.map(([key, more, less], at) => {
            const verdict = statics.verdicts[at] ?? "not_applicable";
            return (
              <tr key={key}>
                <th scope="row">{statics[key] < 0 ? less : more}</th>
                <td>{reading(Math.abs(statics[key]), "imbalance", units)}</td>
                <td class={verdict === "fail" ? "out" : undefined}>{IN_WORDS[verdict]}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {rule && (
        <p class="fine-print">
          {rule.source}; {rule.edition}. The scale's arm is the ball's radius.
        </p>
      )}
    </>
  );
}

function axisWords(which: "high" | "low", axis: AxisMove, units: Units): string {
  const size = (inches: number) => reading(inches, "size", units);
  if (axis.moved_deg !== null && axis.moved_in !== null) {
    return `The ${which}-RG axis moved ${reading(axis.moved_deg, "angle", units)}, ${size(axis.moved_in)} on the surface.`;
  }
  if (axis.to_pin_in === null || axis.to_pap_in === null) {
    return `The drilled ball has no one ${which}-RG axis.`;
  }
  return `Before, the ball had no one ${which}-RG axis; now it comes out ${size(axis.to_pin_in)} from the pin and ${size(axis.to_pap_in)} from the PAP.`;
}
