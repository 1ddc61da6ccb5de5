import { worded } from "../../locale/worded";
import { BeforeAfter, type ChangeRow } from "../../parts/before-after";
import { SayTerms } from "../../parts/say-terms";
import { Term } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { AxisMove, Drilled, StaticVerdict } from "../../types";
import { reading, sentenceIn } from "../../units";
import { say } from "./say";

/** What the holes change: the ball before and after, its static weights, where its axes went. */
export function WhatHolesChange() {
  const store = useStore();
  const { drilled } = store.derived.value;
  const units = store.view.value.units;
  if (!drilled) return null;
  return (
    <section class="drilled" aria-labelledby="drilled-name">
      <h3 id="drilled-name">{say("scale-holes-change")}</h3>
      <BeforeAfter
        caption={say("scale-holes-table")}
        heads={[say("scale-before"), say("scale-after")]}
        rows={rows()}
        before={drilled.before}
        after={drilled.after}
      />
      <Statics drilled={drilled} units={units} />
      <p class="readout-says">
        {axisWords(HIGH_AXIS, drilled.high_axis, units)} {axisWords(LOW_AXIS, drilled.low_axis, units)}
      </p>
      <p class="fine-print">
        {say("scale-drilled-out", {
          out: reading(drilled.change.drilled_out_oz, "imbalance", units),
          usual: reading(2.5, "imbalance", units),
        })}
      </p>
    </section>
  );
}

const rows = (): ChangeRow<Drilled["before"]>[] => [
  {
    name: <Term word="weight">{say("scale-holes-weight")}</Term>,
    quantity: "weight",
    of: (ball) => ball.weight_lb,
  },
  { name: <Term word="RG">{say("scale-low-rg")}</Term>, quantity: "rg", of: (ball) => ball.rg_in.low },
  {
    name: <Term word="middle RG">{say("scale-middle-rg")}</Term>,
    quantity: "rg",
    of: (ball) => ball.rg_in.middle,
  },
  { name: <Term word="high RG">{say("scale-high-rg")}</Term>, quantity: "rg", of: (ball) => ball.rg_in.high },
  {
    name: <Term word="differential">{say("scale-holes-differential")}</Term>,
    quantity: "rg",
    of: (ball) => ball.differential_in,
  },
  {
    name: <Term word="intermediate differential">{say("scale-holes-intermediate")}</Term>,
    quantity: "rg",
    of: (ball) => ball.intermediate_differential_in,
  },
];

const SIDES = [
  ["top_oz", "scale-top", "scale-bottom"],
  ["finger_oz", "scale-finger", "scale-thumb"],
  ["side_oz", "scale-positive-side", "scale-negative-side"],
] as const;

const IN_WORDS: Record<StaticVerdict, string> = {
  pass: "scale-rule-within",
  fail: "scale-rule-outside",
  too_close: "scale-rule-close",
  not_applicable: "scale-no-limit",
};

function Statics({ drilled, units }: { drilled: Drilled; units: Units }) {
  const { statics, rules } = drilled;
  const rule = rules.find(({ rule }) => rule === "static_balance");
  const limit = rule?.at_most ?? null;
  return (
    <>
      <table class="shares-table">
        <caption class="drilled-caption">
          <SayTerms
            id={limit === null ? "scale-balance" : "scale-balance-allowed"}
            args={{ limit: reading(limit ?? 0, "imbalance", units) }}
            terms={{ balance: "static balance" }}
          />
        </caption>
        <thead class="visually-hidden">
          <tr>
            <th scope="col">{say("scale-side")}</th>
            <th scope="col">{say("scale-side-weight")}</th>
            <th scope="col">{say("scale-verdict")}</th>
          </tr>
        </thead>
        <tbody>
          {SIDES.map(([key, more, less], at) => {
            const verdict = statics.verdicts[at] ?? "not_applicable";
            return (
              <tr key={key}>
                <th scope="row">{say(statics[key] < 0 ? less : more)}</th>
                <td>{reading(Math.abs(statics[key]), "imbalance", units)}</td>
                <td class={verdict === "fail" ? "out" : undefined}>{say(IN_WORDS[verdict])}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {rule && (
        <p class="fine-print">
          {say("scale-balance-source", {
            source: worded(rule.source),
            edition: sentenceIn(rule.edition, units),
          })}
        </p>
      )}
    </>
  );
}

const LOW_AXIS = {
  moved: "scale-low-axis-moved",
  none: "scale-low-axis-none",
  arisen: "scale-low-axis-new",
};
const HIGH_AXIS = {
  moved: "scale-high-axis-moved",
  none: "scale-high-axis-none",
  arisen: "scale-high-axis-new",
};

function axisWords(texts: typeof LOW_AXIS, axis: AxisMove, units: Units): string {
  const size = (inches: number) => reading(inches, "size", units);
  if (axis.moved_deg !== null && axis.moved_in !== null) {
    return say(texts.moved, {
      angle: reading(axis.moved_deg, "angle", units),
      distance: size(axis.moved_in),
    });
  }
  if (axis.to_pin_in === null || axis.to_pap_in === null) return say(texts.none);
  return say(texts.arisen, { pin: size(axis.to_pin_in), pap: size(axis.to_pap_in) });
}
