import type { ComponentChildren } from "preact";
import { useStore } from "../store";
import { change, type Quantity, reading } from "../units";

export interface ChangeRow<Of> {
  name: ComponentChildren;
  quantity: Quantity;
  of(from: Of): number | null;
}

interface BeforeAfterProps<Of> {
  caption: string;
  /** Over the columns of the two. */
  heads: [string, string];
  rows: ChangeRow<Of>[];
  before: Of;
  after: Of;
}

/** Numbers of the same kind before and after, and what changed. */
export function BeforeAfter<Of>({ caption, heads, rows, before, after }: BeforeAfterProps<Of>) {
  const units = useStore().view.value.units;
  return (
    <table class="shares-table">
      <caption class="visually-hidden">{caption}</caption>
      <thead>
        <tr>
          <th scope="col">
            <span class="visually-hidden">Number</span>
          </th>
          {[...heads, "Change"].map((head) => (
            <th scope="col" key={head}>
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, quantity, of }, at) => {
          const [a, b] = [of(before), of(after)];
          return (
            <tr key={at}>
              <th scope="row">{name}</th>
              <td>{a === null ? "none" : reading(a, quantity, units)}</td>
              <td>{b === null ? "none" : reading(b, quantity, units)}</td>
              <td>{a === null || b === null ? "" : (change(b - a, quantity, units) ?? "none")}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
