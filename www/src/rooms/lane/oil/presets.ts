// The oil patterns of Harbour Street Lanes.
import dry from "../../../../../scenarios/oil/dry.oil.json";
import flat from "../../../../../scenarios/oil/flat.oil.json";
import house from "../../../../../scenarios/oil/house.oil.json";
import long from "../../../../../scenarios/oil/long.oil.json";
import short from "../../../../../scenarios/oil/short.oil.json";
import wetDry from "../../../../../scenarios/oil/wet-dry.oil.json";
import { offeredOil } from "../../../locale/names";
import type { Lane, OiledLane, OilFile, Zone } from "../../../types";
import { say } from "./say";

/** By the name of their file. */
export const PRESETS = { house, flat, long, short, "wet-dry": wetDry, dry } as unknown as Record<
  string,
  OilFile
>;

/** The usual figures for a lane in two stretches. */
export const TWO_ZONES: Zone[] = [
  { from_ft: 0, to_ft: 40, mu: 0.04 },
  { from_ft: 40, to_ft: 63, mu: 0.2 },
];

/** The file's name of the preset that this is, in English or in the page's language; null where it is a pattern of one's own. */
export function presetOf(oil: OilFile): string | null {
  const text = JSON.stringify(oil);
  const same = (preset: OilFile) => JSON.stringify(preset) === text;
  return Object.entries(PRESETS).find(([, preset]) => same(preset) || same(offeredOil(preset)))?.[0] ?? null;
}

/** A lane with this oil; how friction follows from oil stays as it was. */
export function oiled(old: Lane, oil: OilFile): OiledLane {
  return "zones" in old ? { oil } : { ...old, oil };
}

/** What is made of a preset is no longer the preset: another name, and not its note. */
export function ownOf(oil: OilFile): Pick<OilFile, "format" | "name" | "note"> {
  const { format, name, note } = oil;
  return presetOf(oil) === null
    ? { format, name, ...(note && { note }) }
    : { format, name: say("oil-changed", { name }) };
}
