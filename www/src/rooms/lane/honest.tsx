// What RG and differential do for one and the same release, each by itself:
// two round balls that differ in RG alone, and this ball beside a round one of
// its own RG. Said in words, with numbers computed for this very throw.
import { useEffect, useState } from "preact/hooks";
import { LazyFold } from "../../parts/lazy-fold";
import { Term } from "../../parts/term";
import { type Derived, type Store, type Units, useStore } from "../../store";
import type { Roll } from "../../types";
import { reading } from "../../units";
import { averageRg, roundBall, throwBall } from "./twins";

const RG_STEP_IN = 0.05;
const LEAST_DIFFERENTIAL_IN = 0.003;
const REST_MS = 150;

/** Rolls to compare, worked out once an edit has come to rest. */
interface Twins {
  of: Derived;
  rg_in: number;
  /** A round ball with this ball's average RG, and one with more. */
  round: Roll | null;
  higher: Roll | null;
}

function twins(store: Store, of: Derived): Twins {
  const { weighed, file, shot } = of;
  const rg_in = averageRg(weighed);
  const round = (rg: number) =>
    throwBall(store, roundBall(weighed.mass_kg, rg, file.diameter_in, file.cover), shot);
  return { of, rg_in, round: round(rg_in), higher: round(rg_in + RG_STEP_IN) };
}

/** How `roll` compares with `other`, in words; null where neither comes to roll. */
function compare(roll: Roll, other: Roll, units: Units, it = "the other"): string | null {
  const a = roll.summary;
  const b = other.summary;
  if (a.roll_start_ft === null && b.roll_start_ft === null) return null;
  if (a.roll_start_ft === null) return `is still slipping at the end, where ${it} already rolls`;
  if (b.roll_start_ft === null) return `comes to roll, where ${it} is still slipping at the end`;
  const sooner = b.roll_start_ft - a.roll_start_ft;
  const when =
    Math.abs(sooner) < 0.05
      ? "rolls at the same place"
      : `rolls ${reading(Math.abs(sooner), "distance", units)} ${sooner > 0 ? "sooner" : "later"}`;
  if (a.entry_angle_deg === null || b.entry_angle_deg === null) return when;
  const smaller = b.entry_angle_deg - a.entry_angle_deg;
  const angle =
    Math.abs(smaller) < 0.05
      ? "enters at the same angle"
      : `enters at an angle ${reading(Math.abs(smaller), "angle", units)} ${smaller > 0 ? "smaller" : "larger"}`;
  return `${when} and ${angle}`;
}

export function Honest() {
  return (
    <LazyFold class="honest" summary="What RG and differential do here">
      <Note />
    </LazyFold>
  );
}

function Note() {
  const store = useStore();
  const derived = store.derived.value;
  const { units } = store.view.value;
  const [found, setFound] = useState<Twins | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setFound(twins(store, derived)), REST_MS);
    return () => clearTimeout(timer);
  }, [derived]);
  return (
    <div class="honest-note">
      <p>
        Let go in the same way, a ball with a lower <Term word="RG" /> is easier to spin up: it revs up and
        rolls earlier, so it makes its move sooner. But it stores less spin, and once both balls roll it ends
        at a slightly smaller angle. A higher-RG ball saves its motion for later. Trade talk often says
        otherwise.
      </p>
      {found?.of === derived && !derived.shotProblem && <Compared found={found} units={units} />}
      <LastChange derived={derived} units={units} />
    </div>
  );
}

function Compared({ found, units }: { found: Twins; units: Units }) {
  const { of, rg_in, round, higher } = found;
  const { weighed, roll } = of;
  const { axis_migration_deg } = roll.summary;
  const rg = (inches: number) => reading(inches, "rg", units);
  const byRg = round && higher && compare(round, higher, units);
  const byCore =
    round && weighed.differential_in > LEAST_DIFFERENTIAL_IN ? compare(roll, round, units) : null;
  return (
    <>
      {byRg && (
        <p>
          RG alone, thrown like this: of two balls of your ball's weight with round cores, RG {rg(rg_in)} and{" "}
          {rg(rg_in + RG_STEP_IN)}, the lower one {byRg}.
        </p>
      )}
      {byCore && (
        <p>
          The rest of your core: beside a round one of the same weight and average RG, your ball {byCore}. The{" "}
          <Term word="differential" /> does that
          {axis_migration_deg !== null &&
            `: on the way the spin axis moves ${reading(axis_migration_deg, "angle", units)} over the ball`}
          .
        </p>
      )}
    </>
  );
}

/** An example brings ball and release at once: that says nothing about the ball alone. */
function sameRelease(a: Roll, b: Roll): boolean {
  const [p, q] = [a.samples[0], b.samples[0]];
  return (
    p !== undefined &&
    q !== undefined &&
    p.speed_mph === q.speed_mph &&
    p.x_in === q.x_in &&
    p.omega_rad_s.every((part, i) => part === q.omega_rad_s[i])
  );
}

function LastChange({ derived, units }: { derived: Derived; units: Units }) {
  const { before, weighed, roll, rollBefore } = derived;
  if (derived.shotProblem || !before || !rollBefore || Math.abs(before.rg_in.low - weighed.rg_in.low) < 5e-4)
    return null;
  if (!sameRelease(roll, rollBefore)) return null;
  const change = compare(roll, rollBefore, units, "the one before");
  if (!change) return null;
  return (
    <p>
      Your last change took the RG from {reading(before.rg_in.low, "rg", units)} to{" "}
      {reading(weighed.rg_in.low, "rg", units)}: the ball now {change}.
    </p>
  );
}
