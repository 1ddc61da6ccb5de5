// What RG does and does not do for one and the same release, said with this
// very ball: beside a ball of one material and the same weight, and beside
// itself before the last edit.
import { useMemo } from "preact/hooks";
import { Term } from "../../parts/term";
import { type Derived, isProblem, type Store, useStore } from "../../store";
import type { Roll, WasmBall } from "../../types";
import { reading } from "../../units";

interface Twin {
  rg_in: number;
  roll: Roll;
}

/** A ball of the same size and weight made of one material, let go in the same way; null where it cannot roll so. */
function solidTwin(store: Store, derived: Derived): Twin | null {
  const { file, weighed, shot } = derived;
  const radius_cm = (file.diameter_in / 2) * 2.54;
  const density_g_cc = (weighed.mass_kg * 1000) / ((4 / 3) * Math.PI * radius_cm ** 3);
  let ball: WasmBall | null = null;
  try {
    ball = new store.wasm.Ball({
      format: "pithball.ball/1",
      name: "one material",
      diameter_in: file.diameter_in,
      cover: { density_g_cc },
      pieces: [],
    });
    return { rg_in: ball.weigh().rg_in.low, roll: ball.roll(shot) };
  } catch (error) {
    if (isProblem(error)) return null;
    throw error;
  } finally {
    ball?.free();
  }
}

/** How `roll` compares with `other`, in words; null where the comparison says nothing. */
function compare(roll: Roll, other: Roll, units: Parameters<typeof reading>[2]): string | null {
  const a = roll.summary;
  const b = other.summary;
  if (a.roll_start_ft === null || b.roll_start_ft === null) {
    if (a.roll_start_ft === b.roll_start_ft) return null;
    return a.roll_start_ft === null
      ? "is still slipping at the pins, where the other already rolls"
      : "comes to roll before the pins, where the other is still slipping";
  }
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
  const store = useStore();
  const derived = store.derived.value;
  const { units } = store.view.value;
  const { roll, rollBefore, weighed, before } = derived;
  const twin = useMemo(() => solidTwin(store, derived), [derived]);
  const versus = twin && compare(roll, twin.roll, units);
  const moved = before && Math.abs(before.rg_in.low - weighed.rg_in.low) > 5e-4;
  const change = moved && rollBefore ? compare(roll, rollBefore, units) : null;
  const rg = (inches: number) => reading(inches, "rg", units);
  return (
    <div class="honest">
      <h3>
        What <Term word="RG" /> does here
      </h3>
      <p>
        Let go in the same way, a ball with a lower RG is easier to spin up: it revs up and rolls earlier, so
        it makes its move sooner. But it stores less spin, and once both balls roll it ends at a slightly
        smaller angle. A higher-RG ball saves its motion for later. Trade talk often says otherwise.
      </p>
      {twin && versus && (
        <p>
          Your ball (RG {rg(weighed.rg_in.low)}) beside a ball of one material and the same weight (RG{" "}
          {rg(twin.rg_in)}
          ), same release, same lane: yours {versus}.
        </p>
      )}
      {change && before && (
        <p>
          Your last change took the RG from {rg(before.rg_in.low)} to {rg(weighed.rg_in.low)}: the ball now{" "}
          {change}.
        </p>
      )}
      <p class="lane-limits">
        The model: a rigid ball on a flat, level lane; sliding friction by distance only. No bounce, no pins,
        no wear of the oil, no slope or grain of the boards, no air. Friction figures are as quoted from the
        physics literature, from memory.
      </p>
    </div>
  );
}
