import type { ComponentChildren } from "preact";
import { revsOf } from "../../draw/moment";
import { USUAL_SPEED_LOST_MPH } from "../../limits";
import { Readout } from "../../parts/readout";
import { SayTerms } from "../../parts/say-terms";
import { useStore } from "../../store";
import type { Roll } from "../../types";
import { number, type Quantity, reading, written } from "../../units";
import { say } from "./say";

/** Where the numbers differ between two runs is worth knowing; what both have is read off each. */
interface Row {
  label: ComponentChildren;
  quantity: Quantity;
  of(roll: Roll): number | null;
  /** Its text. */
  says: string;
  /** What is usual, where the text tells of it. */
  usual?: readonly [number, number];
}

const lost = (roll: Roll): number | null => {
  const first = roll.samples[0];
  const end = roll.summary.speed_at_pins_mph;
  return first && end !== null ? first.speed_mph - end : null;
};

const ROWS: Row[] = [
  {
    label: <SayTerms id="lane-entry" terms={{ entry: "entry angle" }} />,
    quantity: "angle",
    of: (roll) => roll.summary.entry_angle_deg,
    says: "lane-entry-says",
  },
  {
    label: <SayTerms id="lane-board-at-pins" terms={{ board: "board" }} />,
    quantity: "board",
    of: (roll) => roll.summary.board_at_pins,
    says: "lane-board-at-pins-says",
  },
  {
    label: <SayTerms id="lane-breakpoint" terms={{ breakpoint: "breakpoint" }} />,
    quantity: "distance",
    of: (roll) => roll.summary.breakpoint.distance_ft,
    says: "lane-breakpoint-says",
  },
  {
    label: <SayTerms id="lane-breakpoint-board" terms={{ breakpoint: "breakpoint" }} />,
    quantity: "board",
    of: (roll) => roll.summary.breakpoint.board,
    says: "lane-breakpoint-board-says",
  },
  {
    label: <SayTerms id="lane-time" terms={{ time: "time" }} />,
    quantity: "time",
    of: (roll) => roll.summary.time_s,
    says: "lane-time-says",
  },
  {
    label: <SayTerms id="lane-speed-lost" terms={{ speed: "speed" }} />,
    quantity: "speed",
    of: lost,
    says: "lane-speed-lost-says",
    usual: USUAL_SPEED_LOST_MPH,
  },
  {
    label: <SayTerms id="lane-revs-at-pins" terms={{ revs: "rev rate" }} />,
    quantity: "revs",
    of: (roll) => roll.summary.revs_at_pins_rpm,
    says: "lane-revs-at-pins-says",
  },
  {
    label: <SayTerms id="lane-flare" terms={{ flare: "track flare" }} />,
    quantity: "size",
    of: (roll) => roll.summary.flare_in,
    says: "lane-flare-says",
  },
  {
    label: <SayTerms id="lane-migration" terms={{ migration: "axis migration" }} />,
    quantity: "angle",
    of: (roll) => roll.summary.axis_migration_deg,
    says: "lane-migration-says",
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
      {ROWS.map(({ label, quantity, of, says, usual }, i) => {
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
            {usual
              ? say(says, {
                  least: number(usual[0], quantity, units),
                  most: reading(usual[1], quantity, units),
                })
              : say(says)}
          </Readout>
        );
      })}
      {first && (
        <p class="lane-error">
          {say("lane-error", {
            revs: reading(revsOf(first), "revs", units),
            board: written(roll.summary.error.board.toPrecision(1)),
            angle: written(roll.summary.error.angle_deg.toPrecision(1)),
          })}
        </p>
      )}
    </div>
  );
}
