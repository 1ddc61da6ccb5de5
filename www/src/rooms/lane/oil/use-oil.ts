import { useMemo } from "preact/hooks";
import { isProblem } from "../../../problem";
import { type Store, useStore } from "../../../store";
import type { Lane, OilFile, OilMap } from "../../../types";

export interface OilOn {
  oil: OilFile;
  map: OilMap;
}

/** The oil on the lane and its film; while its numbers are wrong, the last that were not. Null in zones. */
export function useOil(): OilOn | null {
  const store = useStore();
  const { lane } = store.doc.value.shot;
  const good = store.derived.value.shot.lane;
  return useMemo(() => oilOn(store, lane) ?? oilOn(store, good), [lane, good]);
}

function oilOn({ wasm }: Store, lane: Lane): OilOn | null {
  if ("zones" in lane || typeof lane.oil === "string") return null;
  try {
    return { oil: lane.oil, map: wasm.oil_map(lane.oil) };
  } catch (error) {
    if (isProblem(error)) return null;
    throw error;
  }
}
