import type { Range } from "../../parts/readout";
import { useStore } from "../../store";
import type { Quantity } from "../../units";
import { verdict } from "./words";

interface VerdictProps {
  value: number;
  range: Range;
  quantity: Quantity;
}

/** Told aloud always; on the page, where the drawing shows it, only a limit passed. */
export function Verdict({ value, range, quantity }: VerdictProps) {
  const units = useStore().view.value.units;
  const { text, within } = verdict(value, range, quantity, units);
  return within ? <span class="visually-hidden">{text}</span> : <strong class="out">{text}</strong>;
}
