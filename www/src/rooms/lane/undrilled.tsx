// The same throw with the ball before it was drilled, beside the drilled one.
import { useEffect, useState } from "preact/hooks";
import { BeforeAfter, type ChangeRow } from "../../parts/before-after";
import { LazyFold } from "../../parts/lazy-fold";
import { type Derived, isProblem, useStore } from "../../store";
import type { Roll } from "../../types";

const REST_MS = 150;

const ROWS: ChangeRow<Roll>[] = [
  { name: "Board at the pins", quantity: "board", of: (roll) => roll.summary.board_at_pins },
  { name: "Entry angle", quantity: "angle", of: (roll) => roll.summary.entry_angle_deg },
  { name: "Breakpoint", quantity: "distance", of: (roll) => roll.summary.breakpoint.distance_ft },
  { name: "Hook starts", quantity: "distance", of: (roll) => roll.summary.hook_start_ft },
  { name: "Roll starts", quantity: "distance", of: (roll) => roll.summary.roll_start_ft },
  { name: "Flare", quantity: "size", of: (roll) => roll.summary.flare_in },
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
