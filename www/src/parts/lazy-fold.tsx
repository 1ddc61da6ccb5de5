import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

interface LazyFoldProps {
  summary: string;
  class?: string;
  /** What was made once stays while it is closed. */
  stays?: boolean;
  children: ComponentChildren;
}

/** A group that folds away and is worked out only while it is open. */
export function LazyFold({ summary, stays, children, ...rest }: LazyFoldProps) {
  const [open, setOpen] = useState(false);
  const [opened, setOpened] = useState(false);
  return (
    <details
      {...rest}
      onToggle={(event) => {
        setOpen(event.currentTarget.open);
        setOpened(opened || event.currentTarget.open);
      }}
    >
      <summary>{summary}</summary>
      {(open || (stays && opened)) && children}
    </details>
  );
}
