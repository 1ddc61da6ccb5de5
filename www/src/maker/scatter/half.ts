import type { Scattered } from "../../types";
import { say } from "./say";

type Spread = Pick<Scattered["numbers"][number], "least" | "most" | "quantiles">;

/** Where half of the balls lie and nearly all, by the numbers as they are read. */
export function halfSays({ least, most, quantiles }: Spread, written: (value: number | null) => string) {
  const at = (share: number) => written(quantiles.find(({ percent }) => percent === share)?.at ?? null);
  const told = { low: at(25), high: at(75), lowest: at(1), highest: at(99) };
  if (written(least) === written(most)) return say("spread-alike", told);
  if (told.lowest === told.highest) return say("spread-nearly-alike", told);
  return say(told.low === told.high ? "spread-half-alike" : "spread-half", told);
}
