// Why one shot differs from another: a sentence, and the part of each property.
import { Say } from "../locale/say";
import { Broken } from "../parts/broken";
import { Result } from "../parts/result";
import { Term } from "../parts/term";
import "./why.css";
import { useState } from "preact/hooks";
import { useJobs } from "../jobs";
import { type Doc, type Units, useStore, wholeShot } from "../store";
import type { Outcome, Problem, Property, WhyTold } from "../types";
import { change, measure, type Quantity, reading, roughlyIn, sentenceIn } from "../units";
import { useWhenStill } from "../when-still";
import type { Word } from "../words";
import { HandChoice } from "./same-hand";
import { say } from "./say";

/** How long the shots must be still before they are compared, ms. */
const STILL_MS = 200;

/** The texts. */
const NAMES: Record<Property, string> = {
  rg: "why-rg",
  differential: "why-differential",
  intermediate_differential: "why-intermediate-differential",
  weight: "why-weight",
  size: "why-size",
  centre_of_gravity: "why-centre-of-gravity",
  core_axes: "why-core-axes",
  cover: "why-cover",
  layout: "why-layout",
  release: "why-release",
  lane: "why-lane",
};

const COLUMNS: { key: keyof Outcome; name: string; word: Word; quantity: Quantity }[] = [
  { key: "hook_boards", name: "why-hook-boards", word: "hook", quantity: "board" },
  { key: "board_at_pins", name: "why-board-at-pins", word: "board", quantity: "board" },
  { key: "entry_angle_deg", name: "why-entry-angle", word: "entry angle", quantity: "angle" },
  { key: "breakpoint_board", name: "why-breakpoint-board", word: "breakpoint", quantity: "board" },
  { key: "breakpoint_ft", name: "why-breakpoint", word: "breakpoint", quantity: "distance" },
];

interface WhyProps {
  a: Doc;
  b: Doc;
  /** What the sentence calls them. */
  labels: [string, string];
}

/** Why the shot of `b` differs from that of `a`. */
export function Why({ a, b, labels }: WhyProps) {
  const store = useStore();
  const jobs = useJobs();
  const { hand, units } = store.view.value;
  const [told, setTold] = useState<WhyTold | null>(null);
  const [refused, setRefused] = useState<Problem | null>(null);
  const [first, second] = labels;

  const { broken } = useWhenStill(
    STILL_MS,
    async (signal) => {
      const asked = { a: wholeShot(a), b: wholeShot(b), same_effort: hand === "effort" };
      setTold(await jobs.run("why", { ...asked, labels: [first, second] }, signal));
      setRefused(null);
    },
    (problem) => {
      setTold(null);
      setRefused(problem);
    },
    [a.ball, a.shot, b.ball, b.shot, hand, first, second],
  );

  const sentence = refused ? sentenceIn(refused.message, units) : told && roughlyIn(told.sentence, units);
  return (
    <div class="why">
      {broken ? (
        <Broken broken={broken} />
      ) : sentence ? (
        <Result class="why-says" of={refused?.message ?? told?.sentence}>
          {sentence}
        </Result>
      ) : (
        <p class="why-says">{say("why-working")}</p>
      )}
      {!broken && told?.parts && told.parts.length > 0 && <Parts told={told} units={units} />}
      <HandChoice />
      {told?.hand === "effort" && told.a.revs_rpm !== told.b.revs_rpm && (
        <p class="readout-says">
          {say("why-revs", {
            first: told.a.label,
            "first-revs": reading(told.a.revs_rpm, "revs", units),
            second: told.b.label,
            "second-revs": reading(told.b.revs_rpm, "revs", units),
          })}
        </p>
      )}
    </div>
  );
}

function Parts({ told, units }: { told: WhyTold; units: Units }) {
  const { whole, parts } = told;
  if (!whole || !parts) return null;
  const most = Math.max(1e-9, ...parts.map(({ part }) => Math.abs(part.hook_boards)));
  const cells = (outcome: Outcome) =>
    COLUMNS.map(({ key, quantity }) => <td key={key}>{change(outcome[key], quantity, units) ?? "0"}</td>);
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard. */}
      <section class="why-table" tabIndex={0} aria-label={say("why-label")}>
        <table>
          <caption>{say("why-table", { first: told.a.label, second: told.b.label })}</caption>
          <thead>
            <tr>
              <th scope="col">{say("why-from")}</th>
              {COLUMNS.map(({ key, name, word, quantity }) => (
                <th scope="col" key={key}>
                  <Say
                    id={name}
                    args={{ unit: measure(quantity, units).unit }}
                    parts={{
                      word: (inner) => <Term word={word}>{inner}</Term>,
                      unit: (inner) => <span class="unit">{inner}</span>,
                    }}
                  />
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {parts.map(({ property, from, to, unit, part }) => (
              <tr key={property}>
                <th scope="row">
                  {say(NAMES[property])}
                  {from !== null && to !== null && (
                    <span class="why-values">
                      {say("why-values", { from: value(from, unit, units), to: value(to, unit, units) })}
                    </span>
                  )}
                  <Bar value={part.hook_boards} most={most} />
                </th>
                {cells(part)}
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">{say("why-together")}</th>
              {cells(whole)}
            </tr>
          </tfoot>
        </table>
      </section>
      <p class="readout-says">{say("why-how")}</p>
    </>
  );
}

function value(number: number, unit: "in" | "lb" | null, units: Units): string {
  return reading(number, unit === "lb" ? "weight" : "rg", units);
}

const BAR = 60;

/** A part drawn to the right or to the left of the middle; the table says it in numbers. */
function Bar({ value, most }: { value: number; most: number }) {
  const length = (value / most) * BAR;
  return (
    <svg class="why-bar" viewBox={`${-BAR - 1} 0 ${2 * BAR + 2} 8`} aria-hidden="true">
      <path class="why-bar-middle" d="M0 0V8" />
      <rect x={Math.min(0, length)} y="1" width={Math.abs(length)} height="6" />
    </svg>
  );
}
