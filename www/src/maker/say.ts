// What the maker's jobs share of their texts.
import levers from "../../locales/en/levers.ftl";
import maker from "../../locales/en/maker.ftl";
import map from "../../locales/en/map.ftl";
import pouring from "../../locales/en/pouring.ftl";
import seek from "../../locales/en/seek.ftl";
import { phrases } from "../locale/say";

export const say = phrases(maker);
for (const text of [levers, map, pouring, seek]) phrases(text);

/** "a, b and c". */
export function listed(names: string[]): string {
  const last = names.at(-1) ?? "";
  return names.length > 1 ? say("maker-and", { a: names.slice(0, -1).join(", "), b: last }) : last;
}
