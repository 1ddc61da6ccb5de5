// The same throw with the ball before it was drilled, beside the drilled one.

import { useEffect, useState } from "preact/hooks";
import { BeforeAfter, type ChangeRow } from "../../parts/before-after";
import { LazyFold } from "../../parts/lazy-fold";
import { SayTerms } from "../../parts/say-terms";
import { type Derived, isProblem, useStore } from "../../store";
import type { Roll } from "../../types";
import { say } from "./say";

const REST_MS = 150;

const ROWS: ChangeRow<Roll>[] = [
  {
    name: <SayTerms id="lane-board-at-pins" terms={{ board: "board" }} />,
    quantity: "board",
    of: (roll) => roll.summary.board_at_pins,
  },
  {
    name: <SayTerms id="lane-entry" terms={{ entry: "entry angle" }} />,
    quantity: "angle",
    of: (roll) => roll.summary.entry_angle_deg,
  },
  {
    name: <SayTerms id="lane-breakpoint" terms={{ breakpoint: "breakpoint" }} />,
    quantity: "distance",
    of: (roll) => roll.summary.breakpoint.distance_ft,
  },
  {
    name: <SayTerms id="lane-hook-starts" terms={{ hook: "hook" }} />,
    quantity: "distance",
    of: (roll) => roll.summary.hook_start_ft,
  },
  {
    name: <SayTerms id="lane-roll-starts" terms={{ roll: "roll" }} />,
    quantity: "distance",
    of: (roll) => roll.summary.roll_start_ft,
  },
  {
    name: <SayTerms id="lane-flare" terms={{ flare: "track flare" }} />,
    quantity: "size",
    of: (roll) => roll.summary.flare_in,
  },
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
    <LazyFold summary={say("lane-drilling")}>
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
    return <p class="hint">{say("lane-drilling-not-yet")}</p>;
  }
  return (
    <BeforeAfter
      caption={say("lane-drilling-table")}
      heads={[say("lane-undrilled"), say("lane-drilled")]}
      rows={ROWS}
      before={found.roll}
      after={derived.roll}
    />
  );
}
