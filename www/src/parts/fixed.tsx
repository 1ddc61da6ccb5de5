import type { ComponentChildren } from "preact";
import { mayChange, mayReplace } from "../lessons/taken";
import { useStore } from "../store";
import { Held } from "./term";

interface FixedProps {
  /** Where in the document it changes something: `ball.cover`, `shot.release.revs_rpm`. */
  place: string;
  /** Changes all of the place at once, not only something in it. */
  whole?: boolean;
  /** Not there at all while it is held fast. */
  away?: boolean;
  children: ComponentChildren;
}

/** Controls that a step of a lesson may hold fast, so that one thing changes at a time. */
export function Fixed({ place, whole, away, children }: FixedProps) {
  const store = useStore();
  const free = store.loan.value?.taken.free ?? null;
  if (free === null) return <>{children}</>;
  const open = (whole ? mayReplace : mayChange)(place, free, store.doc.value);
  if (!open && away) return null;
  return (
    <fieldset class="fixed" disabled={!open}>
      <Held.Provider value={!open}>{children}</Held.Provider>
    </fieldset>
  );
}
