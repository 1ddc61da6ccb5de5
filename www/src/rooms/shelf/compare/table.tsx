import type { ComponentChildren } from "preact";
import { revsOf } from "../../../draw/moment";
import { Say } from "../../../locale/say";
import { worded } from "../../../locale/worded";
import { SayTerms } from "../../../parts/say-terms";
import { type Units, useStore } from "../../../store";
import type { Roll, Weighed } from "../../../types";
import { apart, change, count, measure, number, type Quantity } from "../../../units";
import type { Word } from "../../../words";
import { say } from "../say";
import type { Compared } from "./throws";

interface Row {
  /** Of its text. */
  label: string;
  word: Word;
  quantity: Quantity;
  of(one: Compared): number | null;
}

const ball = (label: string, word: Word, quantity: Quantity, of: (weighed: Weighed) => number): Row => ({
  label,
  word,
  quantity,
  of: ({ found }) => of(found.weighed),
});
const shot = (label: string, word: Word, quantity: Quantity, of: (roll: Roll) => number | null): Row => ({
  label,
  word,
  quantity,
  of: ({ roll }) => roll && of(roll),
});

const BALL: Row[] = [
  ball("compare-row-weight", "weight", "weight", ({ weight_lb }) => weight_lb),
  ball("compare-row-low-rg", "RG", "rg", ({ rg_in }) => rg_in.low),
  ball("compare-row-middle-rg", "middle RG", "rg", ({ rg_in }) => rg_in.middle),
  ball("compare-row-high-rg", "high RG", "rg", ({ rg_in }) => rg_in.high),
  ball("compare-row-differential", "differential", "rg", ({ differential_in }) => differential_in),
  ball(
    "compare-row-intermediate",
    "intermediate differential",
    "rg",
    ({ intermediate_differential_in }) => intermediate_differential_in,
  ),
  ball("compare-row-cg", "CG", "rg", ({ cg_in }) => Math.hypot(...cg_in)),
  {
    label: "compare-row-top-weight",
    word: "top weight",
    quantity: "imbalance",
    of: ({ found }) => (found.drilled?.before ?? found.weighed).top_weight_oz,
  },
];

const balance = (label: string, key: "top_oz" | "finger_oz" | "side_oz"): Row => ({
  label,
  word: "static balance",
  quantity: "imbalance",
  of: ({ found }) => found.drilled?.statics[key] ?? null,
});
/** Told where any of the balls is drilled for a hand. */
const BALANCE: Row[] = [
  balance("compare-row-top", "top_oz"),
  balance("compare-row-finger", "finger_oz"),
  balance("compare-row-side", "side_oz"),
];

const SHOT: Row[] = [
  {
    label: "compare-row-speed",
    word: "speed",
    quantity: "speed",
    of: ({ roll }) => roll?.samples[0]?.speed_mph ?? null,
  },
  {
    label: "compare-row-revs",
    word: "rev rate",
    quantity: "revs",
    of: ({ roll }) => (roll?.samples[0] ? revsOf(roll.samples[0]) : null),
  },
  shot("compare-row-entry", "entry angle", "angle", ({ summary }) => summary.entry_angle_deg),
  shot("compare-row-board", "board", "board", ({ summary }) => summary.board_at_pins),
  shot("compare-row-breakpoint", "breakpoint", "distance", ({ summary }) => summary.breakpoint.distance_ft),
  shot("compare-row-breakpoint-board", "breakpoint", "board", ({ summary }) => summary.breakpoint.board),
  shot("compare-row-hook", "hook", "distance", ({ summary }) => summary.hook_start_ft),
  shot("compare-row-roll", "roll", "distance", ({ summary }) => summary.roll_start_ft),
  shot("compare-row-speed-at-pins", "speed", "speed", ({ summary }) => summary.speed_at_pins_mph),
  shot("compare-row-revs-at-pins", "rev rate", "revs", ({ summary }) => summary.revs_at_pins_rpm),
  shot("compare-row-flare", "track flare", "size", ({ summary }) => summary.flare_in),
  shot("compare-row-time", "time", "time", ({ summary }) => summary.time_s),
];

export function BallTable({ all }: { all: Compared[] }) {
  return (
    <Table
      caption={say("compare-balls-table")}
      rows={all.some(({ found }) => found.drilled) ? [...BALL, ...BALANCE] : BALL}
      all={all}
    >
      <tr>
        <th scope="row">
          <SayTerms id="compare-limits" terms={{ limits: "published limit" }} />
        </th>
        {all.map((one) => (
          <td key={one.letter}>
            <Verdict one={one} />
          </td>
        ))}
      </tr>
    </Table>
  );
}

export function ShotTable({ all }: { all: Compared[] }) {
  return <Table caption={say("compare-shots-table")} rows={SHOT} all={all} />;
}

/** What is not within the limits by name; only a count where all is. */
function Verdict({ one }: { one: Compared }) {
  const { rules } = one.found.checked;
  const within = rules.filter(({ verdict }) => verdict === "pass").length;
  const out = rules.filter(({ verdict }) => verdict === "fail" || verdict === "too_close");
  if (out.length === 0) return <>{say("compare-within", { within: count(within) })}</>;
  return (
    <Say
      id="compare-outside"
      args={{ rules: out.map(({ name }) => worded(name)).join(", "), within: count(within) }}
      parts={{ out: (inner) => <strong class="out">{inner}</strong> }}
    />
  );
}

interface TableProps {
  caption: string;
  rows: Row[];
  all: Compared[];
  children?: ComponentChildren;
}

/** The first in full, the others with what sets them apart from it. */
function Table({ caption, rows, all, children }: TableProps) {
  const { units } = useStore().view.value;
  const [first] = all;
  if (!first) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls sideways, which needs the keyboard
    <section class="compare-scroll" aria-label={caption} tabIndex={0}>
      <table class="compare-table">
        <caption>
          {all.length > 1 ? say("compare-apart", { table: caption, first: first.letter }) : caption}
        </caption>
        <thead>
          <tr>
            <td />
            {all.map(({ letter, item }) => (
              <th scope="col" key={letter}>
                <span class="choose-letter">{letter}</span> {item.name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            <tr key={i}>
              <th scope="row">
                <SayTerms id={row.label} terms={{ word: row.word }} />
                {measure(row.quantity, units).unit && (
                  <span class="unit"> {measure(row.quantity, units).unit}</span>
                )}
              </th>
              {all.map((one, n) => (
                <Cell key={one.letter} row={row} one={one} first={n === 0 ? null : first} units={units} />
              ))}
            </tr>
          ))}
          {children}
        </tbody>
      </table>
    </section>
  );
}

function Cell({ row, one, first, units }: { row: Row; one: Compared; first: Compared | null; units: Units }) {
  const value = row.of(one);
  const from = first && row.of(first);
  if (value === null) return <td>{say("compare-none")}</td>;
  const moved = from === null ? null : change(apart(from, value, row.quantity, units), row.quantity, units);
  return (
    <td>
      {number(value, row.quantity, units)}
      {moved !== null && <span class="compare-change">{moved}</span>}
      {first && from !== null && moved === null && (
        <span class="compare-same">{say("compare-no-change")}</span>
      )}
    </td>
  );
}
