// The other way round: cores that have wanted numbers.
import "../maker.css";
import "./seek.css";
import { useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { worded } from "../../locale/worded";
import { BoundedField } from "../../parts/bounded-field";
import { LazyFold } from "../../parts/lazy-fold";
import { Result } from "../../parts/result";
import { Term } from "../../parts/term";
import { Working } from "../../parts/working";
import { useStore } from "../../store";
import { useTask } from "../../task";
import type { Sought } from "../../types";
import { count, sentenceIn } from "../../units";
import { FileButtons } from "../file-buttons";
import { say } from "../say";
import { Cores } from "./cores";
import { FreeFields, WantFields } from "./fields";
import { type Looked, look, starts } from "./look";
import { type Target, USUAL_STARTS, useTarget } from "./target";

export function SeekFold() {
  return (
    <LazyFold class="maker" summary={say("seek-title")} stays>
      <Panel />
    </LazyFold>
  );
}

function Panel() {
  const store = useStore();
  const jobs = useJobs();
  const target = useTarget();
  const { file: ball } = store.derived.value;
  const task = useTask<Looked>();
  const [live, setLive] = useState<Sought | null>(null);
  const { state } = task;
  const { file } = target;
  const done = state.is === "done" ? state.done : null;
  const stale = done && JSON.stringify(done.target) !== JSON.stringify(file);
  const tried = done?.results.length ?? 0;

  function go(so_far: Looked) {
    setLive(so_far.sought);
    task.start((signal, tell) =>
      look(jobs, so_far, signal, (share, sought) => {
        tell(share);
        setLive(sought);
      }),
    );
  }

  return (
    <>
      <p class="readout-says">{say("seek-says")}</p>
      <WantFields target={target} />
      <FreeFields target={target} ball={ball} />
      <Search target={target} />
      {target.problem && (
        <Result class="says says-wrong" of={target.problem.place + worded(target.problem.message)}>
          {target.file.free.length === 0
            ? say("seek-nothing-free")
            : sentenceIn(target.problem.message, store.view.value.units)}
        </Result>
      )}
      <button
        type="button"
        class="maker-go"
        disabled={target.problem !== null}
        onClick={() => go({ ball, target: file, results: [], sought: null })}
      >
        {say("seek-go")}
      </button>
      <Working doing={say("seek-seeking")} state={state} onStop={task.stop}>
        <p>{live ? soFar(live) : ""}</p>
      </Working>
      {done?.sought && (
        <>
          {stale && <p class="says says-caution">{say("seek-stale")}</p>}
          {!stale && tried < starts(done.target) && (
            <p class="maker-buttons">
              <span>{say("seek-tried", { tried: count(tried), starts: count(starts(done.target)) })}</span>
              <button type="button" onClick={() => go(done)}>
                {say("seek-keep-looking")}
              </button>
            </p>
          )}
          <Cores sought={done.sought} target={done.target} />
        </>
      )}
    </>
  );
}

const soFar = ({ answers, tried }: Sought) =>
  say("seek-so-far", { cores: answers.length, tried: count(tried) });

/** How it is sought, and the file of it. */
function Search({ target }: { target: Target }) {
  const { file, change } = target;
  return (
    <>
      <label class="optional-label">
        <input
          type="checkbox"
          checked={file.within_limits ?? true}
          onChange={(event) => change({ within_limits: event.currentTarget.checked })}
        />
        <span>{say("seek-limits")}</span>
      </label>
      <BoundedField
        label={<Term word="search start">{say("seek-starts")}</Term>}
        value={file.starts ?? USUAL_STARTS}
        quantity="count"
        min={4}
        max={100}
        least={1}
        most={1000}
        step={4}
        onChange={(starts) => change({ starts })}
      />
      <FileButtons kind="target" asked={target} back={say("seek-back")} />
    </>
  );
}
