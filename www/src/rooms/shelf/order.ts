// The orders the shelf can stand in.

import { signal } from "@preact/signals";
import { language } from "../../locale/language";
import { isProblem } from "../../problem";
import { measuredSoon } from "../../shelf/measured";
import type { Entry } from "../../shelf/record";
import type { WasmModule, Weighed } from "../../types";

export type Order = "saved" | "name" | "weight" | "rg" | "differential";

/** Each with the name of its text. */
export const ORDERS: { key: Order; name: string }[] = [
  { key: "saved", name: "shelf-by-saved" },
  { key: "name", name: "shelf-by-name" },
  { key: "weight", name: "shelf-by-weight" },
  { key: "rg", name: "shelf-by-rg" },
  { key: "differential", name: "shelf-by-differential" },
];

/** The order asked for, for as long as the page is open. */
export const order = signal<Order>("saved");

const BY_NUMBER: Partial<Record<Order, (weighed: Weighed) => number>> = {
  weight: ({ weight_lb }) => -weight_lb,
  rg: ({ rg_in }) => rg_in.low,
  differential: ({ differential_in }) => differential_in,
};

export function inOrder(wasm: WasmModule, entries: Entry[], by: Order): Entry[] {
  if (by === "saved") return entries.toSorted((a, b) => (a.saved_at < b.saved_at ? 1 : -1));
  const number = BY_NUMBER[by];
  if (!number) return entries.toSorted((a, b) => a.name.localeCompare(b.name, language(), { numeric: true }));
  const value = ({ shot }: Entry) => {
    const found = measuredSoon(wasm, shot);
    return found === null || isProblem(found) ? Number.POSITIVE_INFINITY : number(found.weighed);
  };
  return entries.toSorted((a, b) => value(a) - value(b));
}
