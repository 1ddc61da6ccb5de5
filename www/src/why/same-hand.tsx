// What "the same hand" means when balls are compared.
import { type Doc, type Shot, useStore, type View, wholeShot } from "../store";
import type { WasmModule } from "../types";
import { say } from "./say";

/** The shot of `b` as the hand that throws `a` throws it. Throws a `Problem`. */
export function sameHand(wasm: WasmModule, a: Doc, b: Doc, hand: View["hand"]): Shot {
  if (hand === "revs") return b.shot;
  const revs_rpm = wasm.same_effort_revs_rpm(wholeShot(a), wholeShot(b));
  return { ...b.shot, release: { ...b.shot.release, revs_rpm } };
}

/** The texts of both readings. */
const READINGS = [
  { one: "revs", name: "why-same-revs", means: "why-same-revs-means" },
  { one: "effort", name: "why-same-effort", means: "why-same-effort-means" },
] as const;

/** Which reading of "the same hand" is on, and what it means. */
export function HandChoice() {
  const store = useStore();
  const { hand } = store.view.value;
  return (
    <fieldset class="hand-choice">
      <legend>{say("why-hand")}</legend>
      <div class="choices">
        {READINGS.map(({ one, name }) => (
          <button
            type="button"
            key={one}
            aria-pressed={hand === one}
            onClick={() => store.look({ hand: one })}
          >
            {say(name)}
          </button>
        ))}
      </div>
      {READINGS.map(
        ({ one, means }) =>
          hand === one && (
            <p key={one} class="readout-says">
              {say(means)}
            </p>
          ),
      )}
    </fieldset>
  );
}
