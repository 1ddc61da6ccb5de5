// The same throw with the ball before it was drilled, beside the drilled one.

import { useEffect, useState } from "preact/hooks";
import { BeforeAfter, type ChangeRow } from "../../parts/before-after";
import { LazyFold } from "../../parts/lazy-fold";
import { Term } from "../../parts/term";
import { type Derived, isProblem, useStore } from "../../store";
import type { Roll } from "../../types";

const REST_MS = 150;

const ROWS: ChangeRow<Roll>[] = [
  {
    name: (
      <>
        <Term word="board">Board</Term> at the pins
      </>
    ),
    quantity: "board",
    of: (roll) => roll.summary.board_at_pins,
  },
  {
    name: <Term word="entry angle">Entry angle</Term>,
    quantity: "angle",
    of: (roll) => roll.summary.entry_angle_deg,
  },
  {
    name: <Term word="breakpoint">Breakpoint</Term>,
    quantity: "distance",
    of: (roll) => roll.summary.breakpoint.distance_ft,
  },
  {
    name: <Term word="hook">Hook starts</Term>,
    quantity: "distance",
    of: (roll) => roll.summary.hook_start_ft,
  },
  {
    name: <Term word="roll">Roll starts</Term>,
    quantity: "distance",
    of: (roll) => roll.summary.roll_start_ft,
  },
  { name: <Term word="track flare">Flare</Term>, quantity: "size", of: (roll) => roll.summary.flare_in },
];

/** Rolls the undrilled ball; null where it cannot be followed. */
function rollUndrilled({ base, shot }: Derived): Roll | null {
  const { drilling: _, ...rest } = shot;
  try {
    return base.roll(rest);
  } catch (error) {
    if (isProblem(error)) return null;
    throw error;
  }
}

export function BeforeDrilling() {
  const { drilled } = useStore().derived.value;
  if (!drilled) return null;
  return (
    <LazyFold summary="This throw before and after drilling">
      <Compared />
    </LazyFold>
  );
}

function Compared() {
  const store = useStore();
  const derived = store.derived.value;
  const [found, setFound] = useState<{ of: Derived; roll: Roll | null } | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => {
      try {
        setFound({ of: derived, roll: rollUndrilled(derived) });
      } catch (error) {
        store.fail(error);
      }
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [derived]);
  if (found?.of !== derived || !found.roll) {
    return <p class="hint">The undrilled ball cannot be followed for this throw, or is not rolled yet.</p>;
  }
  return (
    <BeforeAfter
      caption="The same throw with the ball undrilled and drilled"
      heads={["Undrilled", "Drilled"]}
      rows={ROWS}
      before={found.roll}
      after={derived.roll}
    />
  );
}
