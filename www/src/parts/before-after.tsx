import type { ComponentChildren } from "preact";
import { useStore } from "../store";
import { apart, change, type Quantity, reading } from "../units";
import { say } from "./say";

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
            <span class="visually-hidden">{say("numbers-number")}</span>
          </th>
          {[...heads, say("numbers-change")].map((head) => (
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
              <td>{a === null ? say("numbers-none") : reading(a, quantity, units)}</td>
              <td>{b === null ? say("numbers-none") : reading(b, quantity, units)}</td>
              <td>
                {a === null || b === null
                  ? ""
                  : (change(apart(a, b, quantity, units), quantity, units) ?? say("numbers-none"))}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
