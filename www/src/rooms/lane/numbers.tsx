import type { ComponentChildren } from "preact";
import { revsOf } from "../../draw/moment";
import { Readout } from "../../parts/readout";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import type { Roll } from "../../types";
import { type Quantity, reading } from "../../units";

/** Where the numbers differ between two runs is worth knowing; what both have is read off each. */
interface Row {
  label: ComponentChildren;
  quantity: Quantity;
  of(roll: Roll): number | null;
  says: ComponentChildren;
}

const lost = (roll: Roll): number | null => {
  const first = roll.samples[0];
  const end = roll.summary.speed_at_pins_mph;
  return first && end !== null ? first.speed_mph - end : null;
};

const ROWS: Row[] = [
  {
    label: <Term word="entry angle">Entry angle</Term>,
    quantity: "angle",
    of: (roll) => roll.summary.entry_angle_deg,
    says: "As published, 4° to 6° into the pocket strikes best.",
  },
  {
    label: (
      <>
        <Term word="board">Board</Term> at the pins
      </>
    ),
    quantity: "board",
    of: (roll) => roll.summary.board_at_pins,
    says: "The pocket is near board 17.5.",
  },
  {
    label: <Term word="breakpoint">Breakpoint</Term>,
    quantity: "distance",
    of: (roll) => roll.summary.breakpoint.distance_ft,
    says: "How far down the lane it is furthest out.",
  },
  {
    label: (
      <>
        <Term word="breakpoint">Breakpoint</Term> board
      </>
    ),
    quantity: "board",
    of: (roll) => roll.summary.breakpoint.board,
    says: "How far out it gets.",
  },
  {
    label: <Term word="time">Time</Term>,
    quantity: "time",
    of: (roll) => roll.summary.time_s,
    says: "From release to the pins.",
  },
  {
    label: <Term word="speed">Speed lost</Term>,
    quantity: "speed",
    of: lost,
    says: "2 to 2.5 mph is usual; common practice, no source.",
  },
  {
    label: <Term word="rev rate">Revs at the pins</Term>,
    quantity: "revs",
    of: (roll) => roll.summary.revs_at_pins_rpm,
    says: "The lane spins the ball up until it rolls.",
  },
  {
    label: <Term word="track flare">Flare</Term>,
    quantity: "size",
    of: (roll) => roll.summary.flare_in,
    says: "How far the axis it spins about moves over the ball.",
  },
  {
    label: <Term word="axis migration">Axis migration</Term>,
    quantity: "angle",
    of: (roll) => roll.summary.axis_migration_deg,
    says: "How far the spin axis wanders on the ball.",
  },
];

/** The shot in numbers, with what the last edit changed. */
export function Numbers() {
  const store = useStore();
  const { roll, rollBefore } = store.derived.value;
  const { units } = store.view.value;
  const first = roll.samples[0];
  return (
    <div class="lane-numbers">
      {ROWS.map(({ label, quantity, of, says }, i) => {
        const value = of(roll);
        if (value === null) return null;
        return (
          <Readout
            key={i}
            label={label}
            quantity={quantity}
            value={value}
            before={rollBefore && of(rollBefore)}
          >
            {says}
          </Readout>
        );
      })}
      {first && (
        <p class="lane-error">
          At release {reading(revsOf(first), "revs", units)}; the numbers at the pins are right to{" "}
          {roll.summary.error.board.toPrecision(1)} board and {roll.summary.error.angle_deg.toPrecision(1)}°.
        </p>
      )}
    </div>
  );
}
