import { worded } from "../../locale/worded";
import "./published.css";
import { useMemo } from "preact/hooks";
import { useNews } from "../../aloud";
import { Aside, ToWord } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { BallFile, Checked } from "../../types";
import { type Quantity, reading, sentenceIn, written } from "../../units";
import type { Word } from "../../words";
import { partNames } from "../saw/parts";
import { say } from "./say";

type Rule = Checked["rules"][number];

/** The texts of the verdicts. */
const IN_WORDS: Record<Rule["verdict"], string> = {
  pass: "scale-rule-within",
  fail: "scale-rule-outside",
  too_close: "scale-rule-close",
  not_applicable: "scale-rule-not-for",
  not_computed: "scale-rule-not-computed",
};
const QUANTITIES: Record<string, Quantity> = {
  lb: "weight",
  in: "rg",
  "g/cc": "density",
  oz: "imbalance",
  µin: "roughness",
  // What is counted is in the rule's name.
  holes: "count",
};

/** The ball against the published limits: what is not within at once, the rest when asked for. */
export function Published() {
  const { ball } = useStore().derived.value;
  const { rules, decides } = useMemo(() => ball.check(), [ball]);
  const telling = rules.filter(({ verdict }) => verdict === "fail" || verdict === "too_close");
  const others = rules.filter((rule) => !telling.includes(rule));
  const many = (verdict: Rule["verdict"]) => String(rules.filter((rule) => rule.verdict === verdict).length);
  const named = (verdict: Rule["verdict"]) =>
    rules.flatMap((rule) => (rule.verdict === verdict ? [worded(rule.name)] : [])).join(", ");
  const [outside, close] = [named("fail"), named("too_close")];
  const news = [
    outside && say("scale-limits-passed", { rules: outside }),
    close && say("scale-limits-close", { rules: close }),
  ].filter(Boolean);
  const told = news.join(" ") || say("scale-limits-kept");
  useNews(told, told);
  return (
    <section class="published" aria-labelledby="published-name">
      <h3 id="published-name">{say("scale-published")}</h3>
      <p class="readout-says">
        {say(many("too_close") === "0" ? "scale-published-counts" : "scale-published-counts-close", {
          within: many("pass"),
          outside: many("fail"),
          close: many("too_close"),
          measured: many("not_computed"),
        })}
      </p>
      {telling.length > 0 && <Rules rules={telling} />}
      <details>
        <summary>{say("scale-every-rule")}</summary>
        <Rules rules={others} />
        <p class="fine-print">{worded(decides)}</p>
      </details>
    </section>
  );
}

function Rules({ rules }: { rules: Rule[] }) {
  const store = useStore();
  const { units } = store.view.value;
  const { made } = store.derived.value;
  return (
    <ul class="rules">
      {rules.map((rule) => (
        <li key={rule.rule}>
          <span class="rule-name">
            <Aside text={about(rule, units)} more={<ToWord word={wordOf(rule)} />}>
              {worded(rule.name)}
            </Aside>
          </span>{" "}
          <span class={rule.verdict === "fail" ? "rule-verdict out" : "rule-verdict"}>
            {say(IN_WORDS[rule.verdict])}
          </span>
          <span class="rule-numbers">{numbers(rule, made, units)}</span>
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

function about({ applies, note, source, edition }: Rule, units: Units): string {
  return [
    say("scale-rule-for", { balls: sentenceIn(applies, units) }),
    sentenceIn(note, units),
    say("scale-rule-source", { source: worded(source), edition: sentenceIn(edition, units) }),
  ]
    .filter((text) => text !== "")
    .join(" ");
}

/** What was found and what is allowed, in the reader's units. */
function numbers(
  { found, part, found_is, unit, at_least, at_most }: Rule,
  made: BallFile,
  units: Units,
): string {
  const quantity = QUANTITIES[unit];
  const told = (value: number) =>
    quantity ? reading(value, quantity, units) : `${written(String(value))}${unit && `\u00a0${unit}`}`;
  const [least, most] = [at_least ?? 0, at_most ?? 0].map(told);
  const allowed =
    at_least !== null && at_most !== null
      ? say("scale-rule-range", { least: least ?? "", most: most ?? "" })
      : at_least !== null
        ? say("scale-rule-least", { least: least ?? "" })
        : at_most !== null
          ? say("scale-rule-most", { most: most ?? "" })
          : "";
  const piece = made.pieces.findIndex(({ name }) => name === part);
  const of = part === null ? found_is && worded(found_is) : (partNames({ made })[piece + 1] ?? part);
  const here = found === null ? "" : `${told(found)}${of === null ? "" : ` (${of})`}`;
  if (here === "") return allowed && say("scale-rule-allowed", { allowed });
  return say("scale-rule-found", { found: here, allowed });
}
