import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

interface LazyFoldProps {
  summary: string;
  class?: string;
  children: ComponentChildren;
}

/** A group that folds away and is worked out only while it is open. */
export function LazyFold({ summary, children, ...rest }: LazyFoldProps) {
  const [open, setOpen] = useState(false);
  return (
    <details {...rest} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {open && children}
    </details>
  );
}
