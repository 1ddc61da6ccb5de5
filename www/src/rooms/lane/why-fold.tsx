// Why the shot changed: against the last edit, or against what the reader set aside as "before".
import { useState } from "preact/hooks";
import { LazyFold } from "../../parts/lazy-fold";
import { type Doc, useStore } from "../../store";
import { Why } from "../../why/why";

export function WhyFold() {
  return (
    <LazyFold summary="Why did the shot change?">
      <Panel />
    </LazyFold>
  );
}

function Panel() {
  const store = useStore();
  const { file, shot, docBefore } = store.derived.value;
  const [pinned, setPinned] = useState<Doc | null>(null);
  const before = pinned ?? docBefore;
  const same = before?.ball === file && before.shot === shot;
  return (
    <div class="why-fold">
      <div class="choices">
        <button type="button" onClick={() => setPinned({ ball: file, shot })}>
          Measure from here
        </button>
        {pinned && (
          <button type="button" onClick={() => setPinned(null)}>
            From the last change
          </button>
        )}
      </div>
      <p class="readout-says">
        {pinned
          ? `Measured from “${pinned.ball.name}” as you set it aside; change what you like and see what each change does.`
          : "Measured from before your last change."}
      </p>
      {before && !same ? (
        <Why a={before} b={{ ball: file, shot }} labels={["before", "Your shot now"]} />
      ) : (
        <p>
          Change the ball, the release or the lane, and this says how much of the difference each thing makes.
        </p>
      )}
    </div>
  );
}
