// Thousands of balls of one recipe, none poured quite right: how many pass.
import "../maker.css";
import { useJobs } from "../../jobs";
import { BoundedField } from "../../parts/bounded-field";
import { LazyFold } from "../../parts/lazy-fold";
import { Result } from "../../parts/result";
import { Term } from "../../parts/term";
import { Working } from "../../parts/working";
import { useStore } from "../../store";
import { useTask } from "../../task";
import type { BallFile, Scattered, TolerancesFile } from "../../types";
import { count, sentenceIn } from "../../units";
import { FileButtons } from "../file-buttons";
import { AcceptFields } from "./accept";
import { Beside } from "./beside";
import { Costs } from "./costs";
import { ToleranceFields } from "./fields";
import { Numbers } from "./numbers";
import { pour } from "./pour";
import { say } from "./say";
import { Shares } from "./shares";
import { type Tolerances, USUAL_BALLS, useTolerances } from "./tolerances";

export function ScatterFold() {
  return (
    <LazyFold class="maker" summary={say("scatter-title")} stays>
      <Panel />
    </LazyFold>
  );
}

/** What was poured, and what came of it. */
export interface Poured {
  ball: BallFile;
  tolerances: TolerancesFile;
  scattered: Scattered;
}

function Panel() {
  const store = useStore();
  const jobs = useJobs();
  const tolerances = useTolerances();
  const { file: ball } = store.derived.value;
  const task = useTask<Poured>();
  const { state } = task;
  const { file } = tolerances;
  const balls = file.balls ?? USUAL_BALLS;
  const done = state.is === "done" ? state.done : null;
  const stale = done && (done.ball !== ball || JSON.stringify(done.tolerances) !== JSON.stringify(file));
  return (
    <>
      <p class="readout-says">{say("scatter-says")}</p>
      <ToleranceFields tolerances={tolerances} />
      <AcceptFields tolerances={tolerances} />
      <Sample tolerances={tolerances} />
      <FileButtons kind="tolerances" asked={tolerances} back={say("scatter-back")} />
      <button
        type="button"
        class="maker-go"
        disabled={tolerances.problem !== null}
        onClick={() =>
          task.start(async (signal, tell) => ({
            ball,
            tolerances: file,
            scattered: await pour(jobs, { ball, tolerances: file }, signal, tell),
          }))
        }
      >
        {say("scatter-go", { balls: count(balls) })}
      </button>
      <Working doing={say("scatter-pouring", { balls: count(balls) })} state={state} onStop={task.stop} />
      {done && (
        <>
          {stale && (
            <Result class="says says-caution" of={done}>
              {say("scatter-stale")}
            </Result>
          )}
          <Shares scattered={done.scattered} />
          <Numbers scattered={done.scattered} />
          <Costs scattered={done.scattered} />
        </>
      )}
      <Beside ball={ball} tolerances={tolerances} known={stale ? null : done} />
      {done && (
        <ul class="plain">
          {done.scattered.notes.map((note) => (
            <li key={note}>{sentenceIn(note, store.view.value.units)}</li>
          ))}
        </ul>
      )}
    </>
  );
}

/** Which balls, of how many. */
function Sample({ tolerances }: { tolerances: Tolerances }) {
  const { file, change } = tolerances;
  return (
    <>
      <BoundedField
        label={<Term word="95 % interval">{say("scatter-balls")}</Term>}
        value={file.balls ?? USUAL_BALLS}
        quantity="count"
        min={1000}
        max={20_000}
        least={100}
        most={1_000_000}
        step={1000}
        onChange={(balls) => change({ balls })}
      />
      <BoundedField
        label={<Term word="tolerance">{say("scatter-seed")}</Term>}
        value={file.seed}
        quantity="count"
        min={0}
        max={100}
        most={4_294_967_295}
        step={1}
        onChange={(seed) => change({ seed })}
      />
      <p class="hint">{say("scatter-seed-says")}</p>
      <label class="line">
        <span class="field-label">{say("scatter-stray")}</span>
        <select
          value={file.spread ?? "even"}
          onChange={(event) => change({ spread: event.currentTarget.value as "even" | "bell" })}
        >
          <option value="even">{say("scatter-stray-even")}</option>
          <option value="bell">{say("scatter-stray-bell")}</option>
        </select>
      </label>
    </>
  );
}
