// What RG and differential do for one and the same release, each by itself:
// two round balls that differ in RG alone, and this ball beside a round one of
// its own RG. Said in words, with numbers computed for this very throw.
import { useState } from "preact/hooks";
import type { Derived } from "../../derive";
import type { Args } from "../../locale/say";
import { LazyFold } from "../../parts/lazy-fold";
import { SayTerms } from "../../parts/say-terms";
import { type Store, type Units, useStore } from "../../store";
import type { Roll } from "../../types";
import { apart, reading } from "../../units";
import { useWhenStill } from "../../when-still";
import { say } from "./say";
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

/** What `roll` does beside `other`, as its sentence has it; null where neither comes to roll. */
function compare(roll: Roll, other: Roll, units: Units): Args | null {
  const a = roll.summary;
  const b = other.summary;
  if (a.roll_start_ft === null && b.roll_start_ft === null) return null;
  if (a.roll_start_ft === null) return { rolls: "never" };
  if (b.roll_start_ft === null) return { rolls: "alone" };
  const sooner = apart(a.roll_start_ft, b.roll_start_ft, "distance", units);
  const rolls = {
    rolls: sooner === 0 ? "same" : sooner > 0 ? "sooner" : "later",
    distance: reading(Math.abs(sooner), "distance", units),
  };
  if (a.entry_angle_deg === null || b.entry_angle_deg === null) return { ...rolls, enters: "none" };
  const smaller = apart(a.entry_angle_deg, b.entry_angle_deg, "angle", units);
  return {
    ...rolls,
    enters: smaller === 0 ? "same" : smaller > 0 ? "smaller" : "larger",
    angle: reading(Math.abs(smaller), "angle", units),
  };
}

export function Honest() {
  return (
    <LazyFold class="honest" summary={say("lane-honest")}>
      <Note />
    </LazyFold>
  );
}

function Note() {
  const store = useStore();
  const derived = store.derived.value;
  const { units } = store.view.value;
  const [found, setFound] = useState<Twins | null>(null);
  useWhenStill(REST_MS, async () => setFound(twins(store, derived)), store.fail, [derived]);
  return (
    <div class="honest-note">
      <p>
        <SayTerms id="lane-honest-says" terms={{ rg: "RG" }} />
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
          {say("lane-honest-rg", { ...byRg, other: "other", low: rg(rg_in), high: rg(rg_in + RG_STEP_IN) })}
        </p>
      )}
      {byCore && (
        <p>
          <SayTerms
            id="lane-honest-core"
            args={{
              ...byCore,
              other: "other",
              moves: axis_migration_deg === null ? "no" : "yes",
              migration: reading(axis_migration_deg ?? 0, "angle", units),
            }}
            terms={{ differential: "differential" }}
          />
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
  if (derived.shotProblem || !before || !rollBefore) return null;
  if (apart(before.rg_in.low, weighed.rg_in.low, "rg", units) === 0) return null;
  if (!sameRelease(roll, rollBefore)) return null;
  const change = compare(roll, rollBefore, units);
  if (!change) return null;
  return (
    <p>
      {say("lane-honest-last", {
        ...change,
        other: "before",
        before: reading(before.rg_in.low, "rg", units),
        now: reading(weighed.rg_in.low, "rg", units),
      })}
    </p>
  );
}
