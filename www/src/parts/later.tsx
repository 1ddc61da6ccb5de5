// Rooms whose code comes in a file of its own: fetched in the quiet after the
// first picture, so that nothing is asked for once the page has loaded.

import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";

type View = () => JSX.Element | null;

const all: (() => Promise<unknown>)[] = [];

/** What is loaded by `load` once: when it is first wanted, or by `loadRest` before. */
export function part<T>(load: () => Promise<T>): () => Promise<T> {
  let loading: Promise<T> | null = null;
  const once = () => {
    loading ??= load();
    return loading;
  };
  all.push(once);
  return once;
}

/** A room that is loaded by `load` when it is first shown, or by `loadRest` before. */
export function later(load: () => Promise<View>): View {
  let Loaded: View | null = null;
  const once = part(async () => {
    Loaded = await load();
  });
  return function Later() {
    const [state, setState] = useState<"loading" | "loaded" | "missing">("loading");
    useEffect(() => {
      if (Loaded) return;
      once().then(
        () => setState("loaded"),
        () => setState("missing"),
      );
    }, []);
    if (Loaded) return <Loaded />;
    return state === "missing" ? <Missing /> : <p role="status">One moment …</p>;
  };
}

function Missing() {
  return (
    <p role="alert">
      This part of the page did not arrive: the network was gone before it came. Your work is kept.{" "}
      <button type="button" onClick={() => location.reload()}>
        Load the page again
      </button>
    </p>
  );
}

/** Fetches everything that is not there yet; what fails is told where it is missed. */
export async function loadRest(): Promise<void> {
  await Promise.allSettled(all.map((load) => load()));
}
