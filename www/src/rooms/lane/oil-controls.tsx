import { useStore } from "../../store";
import type { OiledLane, Zone } from "../../types";
import { reading } from "../../units";

/** The usual figures for a lane in two stretches. */
const TWO_ZONES: Zone[] = [
  { from_ft: 0, to_ft: 40, mu: 0.04 },
  { from_ft: 40, to_ft: 63, mu: 0.2 },
];

/** What oil is on the lane, and the way back to friction in zones. */
export function OilControls({ lane }: { lane: OiledLane }) {
  const store = useStore();
  const { units } = store.view.value;
  const { oil } = lane;
  const wrong = store.derived.value.shotProblem?.place.startsWith("lane");
  const map = typeof oil === "string" || wrong ? null : store.wasm.oil_map(oil);
  return (
    <fieldset>
      <legend>Lane</legend>
      <p>
        Oil pattern: {typeof oil === "string" ? oil : oil.name}
        {map && `, ${reading(map.length_ft, "distance", units)} long, ${map.volume_ml.toFixed(1)} mL`}.
      </p>
      <button type="button" onClick={() => store.editShot((old) => ({ ...old, lane: { zones: TWO_ZONES } }))}>
        Friction in zones instead
      </button>
    </fieldset>
  );
}
