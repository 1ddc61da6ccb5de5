// What the maker's jobs share of their texts, and names that come from the module by what they are there.
import levers from "../../locales/en/levers.ftl";
import maker from "../../locales/en/maker.ftl";
import map from "../../locales/en/map.ftl";
import pouring from "../../locales/en/pouring.ftl";
import seek from "../../locales/en/seek.ftl";
import { phrases } from "../locale/say";

export const say = phrases(maker);
for (const text of [levers, map, pouring, seek]) phrases(text);

/** The module's names of controls, tolerances, numbers and costs. */
const NAMED: Record<string, string> = {
  density: "maker-density",
  diameter: "maker-diameter",
  "size of all of it": "maker-all-of-it",
  size: "maker-size",
  "place along x": "maker-place-x",
  "place along y": "maker-place-y",
  "place along z": "maker-place-z",
  "place of the core along x": "maker-core-x",
  "place of the core along y": "maker-core-y",
  "place of the core along z": "maker-core-z",
  "turn about x": "maker-turn-x",
  "turn about y": "maker-turn-y",
  "turn about z": "maker-turn-z",
  "tilt about x": "maker-tilt-x",
  "tilt about y": "maker-tilt-y",
  "squash along its x": "maker-squash-x",
  "squash along its y": "maker-squash-y",
  "squash along its z": "maker-squash-z",
  height: "maker-height",
  "diameter at the bottom": "maker-bottom",
  "diameter at the top": "maker-top",
  "diameter of the ring": "maker-ring",
  "thickness of the ring": "maker-tube",
  "size along its x": "maker-edge-x",
  "size along its y": "maker-edge-y",
  "size along its z": "maker-edge-z",
  "width of the profile": "maker-profile-wide",
  "height of the profile": "maker-profile-tall",
  weight: "maker-weight",
  "low RG": "maker-low-rg",
  "middle RG": "maker-middle-rg",
  "high RG": "maker-high-rg",
  differential: "maker-differential",
  "intermediate differential": "maker-intermediate",
  "top weight": "maker-top-weight",
  "pin to CG": "maker-pin-to-cg",
  "low-RG axis from the pin": "maker-low-rg-mark",
  "high-RG axis from its mark": "maker-high-rg-mark",
  pours: "maker-pours",
  moulds: "maker-moulds",
  "pieces set into a mould": "maker-settings",
  cuts: "maker-cuts",
  "kilograms mixed": "maker-kilograms",
};

/** A name of the module's, as it is called in the page's language. */
export function named(name: string): string {
  const id = NAMED[name];
  return id ? say(id) : name;
}

/** "a, b and c". */
export function listed(names: string[]): string {
  const last = names.at(-1) ?? "";
  return names.length > 1 ? say("maker-and", { a: names.slice(0, -1).join(", "), b: last }) : last;
}
