// The same throw with the ball before it was drilled, beside the drilled one.

import { useMemo, useState } from "preact/hooks";
import type { Derived } from "../../derive";
import { groundOf } from "../../draw/ground";
import { LaneAndClose } from "../../draw/lane-and-close";
import { type OneShot, ShotKey } from "../../draw/shots";
import { useSize } from "../../draw/use-size";
import { BeforeAfter, type ChangeRow } from "../../parts/before-after";
import { LazyFold } from "../../parts/lazy-fold";
import { SayTerms } from "../../parts/say-terms";
import { useStore } from "../../store";
import type { Roll } from "../../types";
import { useWhenStill } from "../../when-still";
import { against } from "../shelf/compare/words";
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

/** Rolls the undrilled ball, as far as it can be followed. */
function rollUndrilled({ base, shot }: Derived): Roll {
  const { drilling: _, ...rest } = shot;
  return base.roll(rest);
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
  const refused = () => setFound({ of: derived, roll: null });
  useWhenStill(REST_MS, async () => setFound({ of: derived, roll: rollUndrilled(derived) }), refused, [
    derived,
  ]);
  if (found?.of !== derived || !found.roll) {
    return <p class="hint">{say("lane-drilling-not-yet")}</p>;
  }
  return (
    <>
      <Paths before={found.roll} after={derived.roll} shot={derived.shot} />
      <BeforeAfter
        caption={say("lane-drilling-table")}
        heads={[say("lane-undrilled"), say("lane-drilled")]}
        rows={ROWS}
        before={found.roll}
        after={derived.roll}
      />
    </>
  );
}

/** Both paths on one lane, and its last third closer. */
function Paths({ before, after, shot }: { before: Roll; after: Roll; shot: Derived["shot"] }) {
  const store = useStore();
  const { units } = store.view.value;
  const above = useSize<HTMLDivElement>();
  const ground = useMemo(() => groundOf(store.wasm, shot.lane), [shot.lane]);
  const undrilled: OneShot = { letter: "A", roll: before };
  const drilled: OneShot = { letter: "B", roll: after };
  const shots = [undrilled, drilled];
  const said = against(undrilled, drilled, units);
  return (
    <>
      <ul class="drilling-key">
        {[say("lane-undrilled"), say("lane-drilled")].map((name, at) => (
          <li key={name}>
            <ShotKey at={at} letter={shots[at]?.letter ?? ""} />
            {name}
          </li>
        ))}
      </ul>
      <p class="says">{said}</p>
      <LaneAndClose
        id="drilling"
        above={above}
        shots={shots}
        hand={shot.hand}
        ground={ground}
        t_s={null}
        metric={units === "metric"}
        title={say("lane-drilling-table")}
        desc={said}
        closeDesc={said}
      />
    </>
  );
}
