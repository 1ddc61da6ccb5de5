// Why the shot changed: against the last edit, or against what the reader set aside as "before".
import { useState } from "preact/hooks";
import { LazyFold } from "../../parts/lazy-fold";
import { type Doc, useStore } from "../../store";
import { Why } from "../../why/why";
import { say } from "./say";

export function WhyFold() {
  return (
    <LazyFold summary={say("lane-why")}>
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
          {say("lane-why-from-here")}
        </button>
        {pinned && (
          <button type="button" onClick={() => setPinned(null)}>
            {say("lane-why-from-last")}
          </button>
        )}
      </div>
      <p class="readout-says">
        {pinned ? say("lane-why-pinned", { ball: pinned.ball.name }) : say("lane-why-unpinned")}
      </p>
      {before && !same ? (
        <Why a={before} b={{ ball: file, shot }} labels={[say("lane-why-before"), say("lane-why-now")]} />
      ) : (
        <p>{say("lane-why-same")}</p>
      )}
    </div>
  );
}
