// Numbers that the reader typed and a file took the place of, to be had back.

import { signal } from "@preact/signals";
import type { Store, View } from "../store";

type Asked = "tolerances" | "target";

/** Of this visit; null where nothing is to be had back. */
export const before = {
  tolerances: signal<View["tolerances"]>(null),
  target: signal<View["target"]>(null),
};

/** Puts numbers in the place of those that are there, which stay to be had back. */
export function putInPlace<Kind extends Asked>(store: Store, kind: Kind, now: View[Kind]): void {
  before[kind].value = store.view.peek()[kind];
  store.look({ [kind]: now });
}
