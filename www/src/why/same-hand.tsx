// What "the same hand" means when balls are compared.
import { type Doc, type Shot, useStore, type View, wholeShot } from "../store";
import type { WasmModule } from "../types";

/** The shot of `b` as the hand that throws `a` throws it. Throws a `Problem`. */
export function sameHand(wasm: WasmModule, a: Doc, b: Doc, hand: View["hand"]): Shot {
  if (hand === "revs") return b.shot;
  const revs_rpm = wasm.same_effort_revs_rpm(wholeShot(a), wholeShot(b));
  return { ...b.shot, release: { ...b.shot.release, revs_rpm } };
}

const MEANINGS = {
  revs: "Every ball leaves the hand with the revs its shot says.",
  effort:
    "Every ball gets the same turning effort, so a lighter or lower-RG ball leaves with more revs; the speed stays. This is a model choice: how a hand really shares its effort is not published.",
};

/** Which reading of "the same hand" is on, and what it means. */
export function HandChoice() {
  const store = useStore();
  const { hand } = store.view.value;
  return (
    <fieldset class="hand-choice">
      <legend>The same hand means</legend>
      <div class="choices">
        {(["revs", "effort"] as const).map((one) => (
          <button
            type="button"
            key={one}
            aria-pressed={hand === one}
            onClick={() => store.look({ hand: one })}
          >
            {one === "revs" ? "Same revs" : "Same effort"}
          </button>
        ))}
      </div>
      <p class="readout-says">{MEANINGS[hand]}</p>
    </fieldset>
  );
}
