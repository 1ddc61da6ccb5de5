import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

/** A group that folds away and is worked out only while it is open. */
export function LazyFold({ summary, children }: { summary: string; children: ComponentChildren }) {
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {open && children}
    </details>
  );
}
