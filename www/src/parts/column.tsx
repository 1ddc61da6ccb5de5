import { useStore } from "../store";
import { measure, type Quantity } from "../units";
import type { Word } from "../words";
import { Term } from "./term";

interface ColumnProps {
  word: Word;
  name: string;
  /** What the numbers below are of, where they have a unit. */
  quantity?: Quantity;
}

/** The head of a column of numbers: its name, which opens its word, and its unit. */
export function Column({ word, name, quantity }: ColumnProps) {
  const units = useStore().view.value.units;
  return (
    <th scope="col">
      <Term word={word}>{name}</Term>
      {quantity && (
        <>
          {" "}
          <span class="unit">{measure(quantity, units).unit}</span>
        </>
      )}
    </th>
  );
}
