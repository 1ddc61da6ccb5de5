// The same throw with the ball before it was drilled, beside the drilled one.
import { useEffect, useState } from "preact/hooks";
import { Fold } from "../../parts/fold";
import { type Derived, isProblem, useStore } from "../../store";
import type { Roll } from "../../types";
import { change, number, type Quantity, reading } from "../../units";

const REST_MS = 150;

const ROWS: { name: string; quantity: Quantity; of(roll: Roll): number | null }[] = [
  { name: "Board at the pins", quantity: "board", of: (roll) => roll.summary.board_at_pins },
  { name: "Entry angle", quantity: "angle", of: (roll) => roll.summary.entry_angle_deg },
  { name: "Breakpoint", quantity: "distance", of: (roll) => roll.summary.breakpoint.distance_ft },
  { name: "Hook starts", quantity: "distance", of: (roll) => roll.summary.hook_start_ft },
  { name: "Roll starts", quantity: "distance", of: (roll) => roll.summary.roll_start_ft },
  { name: "Flare", quantity: "size", of: (roll) => roll.summary.flare_in },
];

/** Rolls the undrilled ball; null where it cannot be followed. */
function rollUndrilled({ base, shot }: Derived): Roll | null {
  const { drilling: _, ...rest } = shot;
  try {
    return base.roll(rest);
  } catch (error) {
    if (isProblem(error)) return null;
    throw error;
  }
}

export function BeforeDrilling() {
  const store = useStore();
  const derived = store.derived.value;
  const { drilled } = derived;
  const [found, setFound] = useState<{ of: Derived; roll: Roll | null } | null>(null);
  useEffect(() => {
    if (!drilled) return;
    const timer = setTimeout(() => {
      try {
        setFound({ of: derived, roll: rollUndrilled(derived) });
      } catch (error) {
        store.fail(error);
      }
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [derived]);
  if (!drilled) return null;
  return (
    <Fold summary="This throw before and after drilling" wrong={false}>
      {found?.of === derived && found.roll ? (
        <Table before={found.roll} after={derived.roll} />
      ) : (
        <p class="hint">The undrilled ball cannot be followed for this throw, or is not rolled yet.</p>
      )}
    </Fold>
  );
}

function Table({ before, after }: { before: Roll; after: Roll }) {
  const units = useStore().view.value.units;
  const told = (value: number | null, quantity: Quantity) =>
    value === null ? "none" : number(value, quantity, units);
  return (
    <table class="shares-table">
      <caption class="visually-hidden">The same throw with the ball undrilled and drilled</caption>
      <thead>
        <tr>
          <th scope="col">
            <span class="visually-hidden">Number</span>
          </th>
          <th scope="col">Undrilled</th>
          <th scope="col">Drilled</th>
          <th scope="col">Change</th>
        </tr>
      </thead>
      <tbody>
        {ROWS.map(({ name, quantity, of }) => {
          const [a, b] = [of(before), of(after)];
          return (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{told(a, quantity)}</td>
              <td>{b === null ? "none" : reading(b, quantity, units)}</td>
              <td>{a === null || b === null ? "" : (change(b - a, quantity, units) ?? "none")}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
