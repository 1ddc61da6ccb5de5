import type { ComponentChildren } from "preact";

/** A table that may be wider than its column: it scrolls by itself, by keyboard too. */
export function Wide({ label, children }: { label: string; children: ComponentChildren }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard.
    <section class="wide" tabIndex={0} aria-label={label}>
      {children}
    </section>
  );
}
