import "./published.css";
import { useMemo } from "preact/hooks";
import { Aside, ToWord } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { Checked } from "../../types";
import { type Quantity, reading } from "../../units";
import type { Word } from "../../words";

type Rule = Checked["rules"][number];

const IN_WORDS: Record<Rule["verdict"], string> = {
  pass: "within",
  fail: "outside",
  too_close: "too close to tell",
  not_applicable: "not for this ball",
  not_computed: "cannot be computed here",
};
const QUANTITIES: Record<string, Quantity> = { lb: "weight", in: "rg", "g/cc": "density", oz: "imbalance" };

/** The ball against the published limits: what is not within at once, the rest when asked for. */
export function Published() {
  const { ball } = useStore().derived.value;
  const { rules, decides } = useMemo(() => ball.check(), [ball]);
  const telling = rules.filter(({ verdict }) => verdict === "fail" || verdict === "too_close");
  const others = rules.filter((rule) => !telling.includes(rule));
  const count = (verdict: Rule["verdict"]) => rules.filter((rule) => rule.verdict === verdict).length;
  return (
    <section class="published" aria-labelledby="published-name">
      <h3 id="published-name">Published limits</h3>
      <p class="readout-says">
        {count("pass")} within, {count("fail")} outside
        {count("too_close") > 0 && `, ${count("too_close")} too close to tell`}, {count("not_computed")} that
        only a measurement tells.
      </p>
      {telling.length > 0 && <Rules rules={telling} />}
      <details>
        <summary>Every rule</summary>
        <Rules rules={others} />
        <p class="fine-print">{decides}</p>
      </details>
    </section>
  );
}

function Rules({ rules }: { rules: Rule[] }) {
  const units = useStore().view.value.units;
  return (
    <ul class="rules">
      {rules.map((rule) => (
        <li key={rule.rule}>
          <span class="rule-name">
            <Aside text={about(rule)} more={<ToWord word={wordOf(rule)} />}>
              {rule.name}
            </Aside>
          </span>{" "}
          <span class={rule.verdict === "fail" ? "rule-verdict out" : "rule-verdict"}>
            {IN_WORDS[rule.verdict]}
          </span>
          <span class="rule-numbers">{numbers(rule, units)}</span>
        </li>
      ))}
    </ul>
  );
}

/** Which word of the glossary shows what a rule limits. */
const WORDS_OF: Record<string, Word> = {
  weight: "weight",
  diameter: "ball diameter",
  density: "density",
  low_rg: "RG",
  high_rg: "high RG",
  differential: "differential",
  intermediate_differential: "intermediate differential",
  static_balance: "static balance",
  friction: "friction",
  holes: "hole",
  low_rg_mark: "pin",
  high_rg_mark: "mass bias",
};
const wordOf = ({ rule }: Rule): Word => WORDS_OF[rule] ?? "published limit";

function about({ applies, note, source, edition }: Rule): string {
  return [`For ${applies}.`, note, `${source}; ${edition}.`].filter((text) => text !== "").join(" ");
}

/** What was found and what is allowed, in the reader's units. */
function numbers({ found, part, found_is, unit, at_least, at_most }: Rule, units: Units): string {
  const quantity = QUANTITIES[unit];
  const say = (value: number) =>
    quantity ? reading(value, quantity, units) : `${value}${unit && `\u00a0${unit}`}`;
  const allowed =
    at_least !== null && at_most !== null
      ? `${say(at_least)} to ${say(at_most)}`
      : at_least !== null
        ? `${say(at_least)} or more`
        : at_most !== null
          ? `${say(at_most)} or less`
          : "";
  const of = part ?? found_is;
  const here = found === null ? "" : `${say(found)}${of === null ? "" : ` (${of})`}`;
  if (here === "") return allowed && `allowed: ${allowed}`;
  return `${here}; allowed: ${allowed}`;
}
