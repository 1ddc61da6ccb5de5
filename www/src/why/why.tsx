// Why one shot differs from another: a sentence, and the part of each property.
import { Term } from "../parts/term";
import "./why.css";
import { useState } from "preact/hooks";
import { useJobs } from "../jobs";
import { type Doc, type Units, useStore, wholeShot } from "../store";
import type { Outcome, Property, WhyTold } from "../types";
import { change, measure, type Quantity, reading, sentenceIn } from "../units";
import { useWhenStill } from "../when-still";
import type { Word } from "../words";
import { HandChoice } from "./same-hand";

/** How long the shots must be still before they are compared, ms. */
const STILL_MS = 200;

const NAMES: Record<Property, string> = {
  rg: "RG",
  differential: "Differential",
  intermediate_differential: "Intermediate differential",
  weight: "Weight",
  size: "Size",
  centre_of_gravity: "Centre of gravity",
  core_axes: "Lie of the core",
  cover: "Cover",
  layout: "Layout",
  release: "Release",
  lane: "Lane",
};

const COLUMNS: { key: keyof Outcome; name: string; word: Word; quantity: Quantity }[] = [
  { key: "hook_boards", name: "Hook, boards", word: "hook", quantity: "board" },
  { key: "board_at_pins", name: "Board at the pins", word: "board", quantity: "board" },
  { key: "entry_angle_deg", name: "Entry angle", word: "entry angle", quantity: "angle" },
  { key: "breakpoint_board", name: "Breakpoint board", word: "breakpoint", quantity: "board" },
  { key: "breakpoint_ft", name: "Breakpoint", word: "breakpoint", quantity: "distance" },
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
  const [refused, setRefused] = useState<string | null>(null);
  const [first, second] = labels;

  useWhenStill(
    STILL_MS,
    async (signal) => {
      const asked = { a: wholeShot(a), b: wholeShot(b), same_effort: hand === "effort" };
      setTold(await jobs.run("why", { ...asked, labels: [first, second] }, signal));
      setRefused(null);
    },
    (problem) => {
      setTold(null);
      setRefused(problem.message);
    },
    [a.ball, a.shot, b.ball, b.shot, hand, first, second],
  );

  return (
    <div class="why">
      <p class="why-says" aria-live="polite">
        {refused ? sentenceIn(refused, units) : told ? sentenceIn(told.sentence, units) : "Working it out …"}
      </p>
      {told?.parts && told.parts.length > 0 && <Parts told={told} units={units} />}
      <HandChoice />
      {told?.hand === "effort" && told.a.revs_rpm !== told.b.revs_rpm && (
        <p class="readout-says">
          {told.a.label}: {reading(told.a.revs_rpm, "revs", units)}; {told.b.label}:{" "}
          {reading(told.b.revs_rpm, "revs", units)}.
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
      <section class="why-table" tabIndex={0} aria-label="What each property adds">
        <table>
          <caption>
            {told.b.label}, less {told.a.label}: what each property adds
          </caption>
          <thead>
            <tr>
              <th scope="col">From</th>
              {COLUMNS.map(({ key, name, word, quantity }) => (
                <th scope="col" key={key}>
                  <Term word={word}>{name}</Term> <span class="unit">{measure(quantity, units).unit}</span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {parts.map(({ property, from, to, unit, part }) => (
              <tr key={property}>
                <th scope="row">
                  {NAMES[property]}
                  {from !== null && to !== null && (
                    <span class="why-values">
                      {value(from, unit, units)} to {value(to, unit, units)}
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
              <th scope="row">Together</th>
              {cells(whole)}
            </tr>
          </tfoot>
        </table>
      </section>
      <p class="readout-says">
        Bars show the hook: to the right more, to the left less. Each property is changed from the one shot's
        to the other's, in every order, and its part is the mean (Shapley value): the parts sum to the whole.
        Hook is counted from the breakpoint to the pins.
      </p>
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
