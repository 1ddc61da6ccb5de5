import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";

interface FoldProps {
  summary: ComponentChildren;
  /** Opens by itself when something inside is wrong; stays as the reader leaves it. */
  wrong: boolean;
  children: ComponentChildren;
}

/** A group of controls that folds away. */
export function Fold({ summary, wrong, children }: FoldProps) {
  const [open, setOpen] = useState(wrong);
  useEffect(() => {
    if (wrong) setOpen(true);
  }, [wrong]);
  return (
    <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{summary}</summary>
      {children}
    </details>
  );
}
