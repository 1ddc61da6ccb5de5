import type { ComponentChildren } from "preact";

interface OptionalProps {
  label: ComponentChildren;
  on: boolean;
  onTurn(on: boolean): void;
  /** Shown while it is on. */
  children: ComponentChildren;
}

/** Something that may be left out: a box to tick, and its fields while it is ticked. */
export function Optional({ label, on, onTurn, children }: OptionalProps) {
  return (
    <div class="optional">
      <label class="optional-label">
        <input type="checkbox" checked={on} onChange={(event) => onTurn(event.currentTarget.checked)} />
        <span>{label}</span>
      </label>
      {on && children}
    </div>
  );
}
