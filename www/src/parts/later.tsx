// Rooms whose code comes in a file of its own: fetched in the quiet after the
// first picture, so that nothing is asked for once the page has loaded.

import type { JSX } from "preact";
import { useEffect, useState } from "preact/hooks";
import { say } from "../frame";
import { part } from "./part";

type View = () => JSX.Element | null;

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
    return state === "missing" ? <Missing /> : <p role="status">{say("frame-moment")}</p>;
  };
}

function Missing() {
  return (
    <p role="alert">
      {say("frame-missing")}{" "}
      <button type="button" onClick={() => location.reload()}>
        {say("frame-reload")}
      </button>
    </p>
  );
}
