import { useId, useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { Say } from "../../locale/say";
import { worded } from "../../locale/worded";
import { Result } from "../../parts/result";
import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import { Working } from "../../parts/working";
import { useItems } from "../../rooms/shelf/items";
import { type Units, useStore } from "../../store";
import { useTask } from "../../task";
import type { BallFile, Scattered } from "../../types";
import { measure, number, QUANTITY_OF } from "../../units";
import { MORE } from "./numbers";
import { pour } from "./pour";
import { say } from "./say";
import type { Poured } from "./scatter";
import { KIND_NAMES, KINDS, ShareBar, shareSays } from "./shares";
import { elsewhere, type Tolerances } from "./tolerances";

interface BesideProps {
  ball: BallFile;
  tolerances: Tolerances;
  /** What came of this ball with these tolerances, where that is known. */
  known: Poured | null;
}

interface Pair {
  ours: Scattered;
  others: Scattered;
  pieces: [number, number];
}

/** Another ball poured with the same tolerances. */
export function Beside({ ball, tolerances, known }: BesideProps) {
  const store = useStore();
  const jobs = useJobs();
  const id = useId();
  const { shelf, house } = useItems();
  const others = [...house, ...shelf].filter(({ name }) => name !== ball.name);
  const count = (one: BallFile) => one.pieces.length;
  // One piece beside many, many beside one.
  const first = others.toSorted((a, b) =>
    count(ball) > 1 ? count(a.shot.ball) - count(b.shot.ball) : count(b.shot.ball) - count(a.shot.ball),
  )[0];
  const [wanted, setWanted] = useState<string | null>(null);
  const other = others.find(({ id }) => id === wanted) ?? first;
  const task = useTask<Pair>();
  const { state } = task;
  if (!other) return null;
  const them = other.shot.ball;

  async function both(signal: AbortSignal, tell: (share: number) => void): Promise<Pair> {
    const equal = tolerances.file.pieces?.length ? elsewhere(tolerances.file, here, here) : tolerances.file;
    const made = new store.wasm.Ball(them);
    const there = made.weigh();
    made.free();
    const theirs = elsewhere(tolerances.file, here, there);
    const half = known && equal === tolerances.file ? 0 : 0.5;
    const ours =
      known && half === 0
        ? known.scattered
        : await pour(jobs, { ball, tolerances: equal }, signal, (share) => tell(half * share));
    const asked = { ball: them, tolerances: theirs };
    const found = await pour(jobs, asked, signal, (share) => tell(half + (1 - half) * share));
    return { ours, others: found, pieces: [count(ball), count(them)] };
  }
  const here = store.derived.value.undrilled;

  return (
    <section class="beside" aria-label={say("beside-label")}>
      <h4>{say("beside-title")}</h4>
      <label class="line" for={id}>
        <span class="field-label">{say("beside-beside")}</span>
        <select id={id} value={other.id} onChange={(event) => setWanted(event.currentTarget.value)}>
          {others.map((item) => (
            <option key={item.id} value={item.id}>
              {say("beside-ball", { ball: item.name, pieces: piecesSay(count(item.shot.ball)) })}
            </option>
          ))}
        </select>
      </label>
      <button type="button" disabled={tolerances.problem !== null} onClick={() => task.start(both)}>
        {say("beside-go")}
      </button>
      <Working doing={say("beside-pouring")} state={state} onStop={task.stop} />
      {state.is === "done" && <Told pair={state.done} />}
    </section>
  );
}

const piecesSay = (count: number) => say("beside-pieces", { count });

/** Which of the two is the more robust, and why. */
function verdict({ ours, others, pieces }: Pair): string {
  const [a = "", b = ""] = [ours, others].map(({ ball, passed }, n) =>
    say("beside-share", { share: shareSays(passed), ball, pieces: piecesSay(pieces[n] ?? 0) }),
  );
  const apart =
    ours.passed.wilson_95[0] > others.passed.wilson_95[1] ||
    others.passed.wilson_95[0] > ours.passed.wilson_95[1];
  const better = ours.passed.share > others.passed.share ? ours : others;
  const worse = better === ours ? others : ours;
  const says = apart
    ? say("beside-better", {
        ball: better.ball,
        few: number(1 - better.passed.share, "share", "trade", 1),
        many: number(1 - worse.passed.share, "share", "trade", 1),
      })
    : say("beside-close");
  const why =
    better.costs.length < worse.costs.length && apart
      ? say("beside-fewer", { few: better.costs.length, many: worse.costs.length })
      : "";
  return `${say("beside-both", { a, b })} ${says} ${why}`.trimEnd();
}

function Told({ pair }: { pair: Pair }) {
  const { units } = useStore().view.value;
  const both = [pair.ours, pair.others];
  return (
    <>
      <Result class="why-says" of={pair}>
        {verdict(pair)}
      </Result>
      {both.map((one) => (
        <div key={one.ball} class="beside-bar">
          <span>{one.ball}</span>
          <ShareBar scattered={one} />
        </div>
      ))}
      <Wide label={say("beside-table")}>
        <table>
          <thead>
            <tr>
              <th scope="col">{say("beside-same")}</th>
              {both.map(({ ball }) => (
                <th scope="col" key={ball}>
                  {ball}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">
                <Say id="beside-of-pieces" parts={{ pieces: (words) => <Term word="piece">{words}</Term> }} />
              </th>
              {pair.pieces.map((count, n) => (
                <td key={n}>{count}</td>
              ))}
            </tr>
            <tr>
              <th scope="row">
                <Say
                  id="beside-can-stray"
                  parts={{ tolerances: (words) => <Term word="tolerance">{words}</Term> }}
                />
              </th>
              {both.map((one, n) => (
                <td key={n}>{one.costs.length}</td>
              ))}
            </tr>
            {KINDS.map((kind) => (
              <tr key={kind}>
                <th scope="row">
                  <Term word="scrap">{say(KIND_NAMES[kind])}</Term> <span class="unit">%</span>
                </th>
                {both.map((one, n) => (
                  <td key={n}>{number(one[kind].share, "share", units, 1)}</td>
                ))}
              </tr>
            ))}
            {pair.ours.numbers.map((mine) => (
              <Spread key={mine.number} mine={mine} theirs={pair.others} units={units} />
            ))}
          </tbody>
        </table>
      </Wide>
      <p class="readout-says">{say("beside-note")}</p>
    </>
  );
}

function Spread({
  mine,
  theirs,
  units,
}: {
  mine: Scattered["numbers"][number];
  theirs: Scattered;
  units: Units;
}) {
  const quantity = QUANTITY_OF[mine.unit];
  const other = theirs.numbers.find(({ number }) => number === mine.number);
  return (
    <tr>
      <th scope="row">
        <Say
          id="beside-spread"
          args={{ number: worded(mine.name) }}
          parts={{ deviation: (words) => <Term word="standard deviation">{words}</Term> }}
        />{" "}
        <span class="unit">{measure(quantity, units).unit}</span>
      </th>
      <td>{number(mine.deviation, quantity, units, MORE)}</td>
      <td>{other ? number(other.deviation, quantity, units, MORE) : "–"}</td>
    </tr>
  );
}
