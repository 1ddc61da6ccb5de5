import type { ComponentChildren } from "preact";
import { revsOf } from "../../../draw/moment";
import { Term } from "../../../parts/term";
import { type Units, useStore } from "../../../store";
import type { Roll, Weighed } from "../../../types";
import { change, measure, number, type Quantity } from "../../../units";
import type { Compared } from "./throws";

interface Row {
  label: ComponentChildren;
  quantity: Quantity;
  of(one: Compared): number | null;
}

const ball = (label: ComponentChildren, quantity: Quantity, of: (weighed: Weighed) => number): Row => ({
  label,
  quantity,
  of: ({ found }) => of(found.weighed),
});
const shot = (label: ComponentChildren, quantity: Quantity, of: (roll: Roll) => number | null): Row => ({
  label,
  quantity,
  of: ({ roll }) => roll && of(roll),
});

const BALL: Row[] = [
  ball(<Term word="weight">Weight</Term>, "weight", ({ weight_lb }) => weight_lb),
  ball(<Term word="RG">RG, low</Term>, "rg", ({ rg_in }) => rg_in.low),
  ball(<Term word="middle RG">RG, middle</Term>, "rg", ({ rg_in }) => rg_in.middle),
  ball(<Term word="high RG">RG, high</Term>, "rg", ({ rg_in }) => rg_in.high),
  ball(<Term word="differential">Differential</Term>, "rg", ({ differential_in }) => differential_in),
  ball(
    <Term word="intermediate differential">Intermediate differential</Term>,
    "rg",
    ({ intermediate_differential_in }) => intermediate_differential_in,
  ),
  ball(<Term word="CG">CG off the centre</Term>, "rg", ({ cg_in }) => Math.hypot(...cg_in)),
  {
    label: (
      <>
        <Term word="top weight">Top weight</Term>, undrilled
      </>
    ),
    quantity: "imbalance",
    of: ({ found }) => (found.drilled?.before ?? found.weighed).top_weight_oz,
  },
];

const balance = (label: ComponentChildren, key: "top_oz" | "finger_oz" | "side_oz"): Row => ({
  label,
  quantity: "imbalance",
  of: ({ found }) => found.drilled?.statics[key] ?? null,
});
/** Told where any of the balls is drilled for a hand. */
const BALANCE: Row[] = [
  balance(
    <>
      <Term word="static balance">Static balance</Term> over the grip: top, bottom below 0
    </>,
    "top_oz",
  ),
  balance(
    <>
      <Term word="static balance">Static balance</Term>: finger, thumb below 0
    </>,
    "finger_oz",
  ),
  balance(
    <>
      <Term word="static balance">Static balance</Term>: positive side
    </>,
    "side_oz",
  ),
];

const SHOT: Row[] = [
  {
    label: <Term word="speed">Speed at release</Term>,
    quantity: "speed",
    of: ({ roll }) => roll?.samples[0]?.speed_mph ?? null,
  },
  {
    label: <Term word="rev rate">Revs at release</Term>,
    quantity: "revs",
    of: ({ roll }) => (roll?.samples[0] ? revsOf(roll.samples[0]) : null),
  },
  shot(<Term word="entry angle">Entry angle</Term>, "angle", ({ summary }) => summary.entry_angle_deg),
  shot(
    <>
      <Term word="board">Board</Term> at the pins
    </>,
    "board",
    ({ summary }) => summary.board_at_pins,
  ),
  shot(
    <Term word="breakpoint">Breakpoint</Term>,
    "distance",
    ({ summary }) => summary.breakpoint.distance_ft,
  ),
  shot(
    <>
      <Term word="breakpoint">Breakpoint</Term> board
    </>,
    "board",
    ({ summary }) => summary.breakpoint.board,
  ),
  shot(<Term word="hook">Hook starts</Term>, "distance", ({ summary }) => summary.hook_start_ft),
  shot(<Term word="roll">Roll starts</Term>, "distance", ({ summary }) => summary.roll_start_ft),
  shot(<Term word="speed">Speed at the pins</Term>, "speed", ({ summary }) => summary.speed_at_pins_mph),
  shot(<Term word="rev rate">Revs at the pins</Term>, "revs", ({ summary }) => summary.revs_at_pins_rpm),
  shot(<Term word="track flare">Flare</Term>, "size", ({ summary }) => summary.flare_in),
  shot(<Term word="time">Time to the pins</Term>, "time", ({ summary }) => summary.time_s),
];

export function BallTable({ all }: { all: Compared[] }) {
  return (
    <Table
      caption="The balls in numbers"
      rows={all.some(({ found }) => found.drilled) ? [...BALL, ...BALANCE] : BALL}
      all={all}
    >
      <tr>
        <th scope="row">
          <Term word="published limit">Published limits</Term>
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
  return <Table caption="The shots in numbers" rows={SHOT} all={all} />;
}

/** What is not within the limits by name; only a count where all is. */
function Verdict({ one }: { one: Compared }) {
  const { rules } = one.found.checked;
  const within = rules.filter(({ verdict }) => verdict === "pass").length;
  const out = rules.filter(({ verdict }) => verdict === "fail" || verdict === "too_close");
  if (out.length === 0) return <>{within} within</>;
  return (
    <>
      <strong class="out">outside or too close: {out.map(({ name }) => name).join(", ")}</strong>; {within}{" "}
      within
    </>
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
          {caption}
          {all.length > 1 && `; in the others' columns, what sets them apart from ${first.letter}`}
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
                {row.label}
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
  if (value === null) return <td>none</td>;
  const moved = from === null ? null : change(value - from, row.quantity, units);
  return (
    <td>
      {number(value, row.quantity, units)}
      {moved !== null && <span class="compare-change">{moved}</span>}
      {first && from !== null && moved === null && <span class="compare-same">same</span>}
    </td>
  );
}
