// How the ball on the bench is poured, what stands in the way, and what it costs beside others.
import { Broken } from "../../parts/broken";
import { Column } from "../../parts/column";
import { Term } from "../../parts/term";
import "../maker.css";
import "./pouring.css";
import { useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { DENSITY_LIMIT_G_CC } from "../../limits";
import { language } from "../../locale/language";
import { offeredBall, partCalled } from "../../locale/names";
import { Say } from "../../locale/say";
import { BoundedField } from "../../parts/bounded-field";
import { LazyFold } from "../../parts/lazy-fold";
import { Refused } from "../../parts/refused";
import { Result } from "../../parts/result";
import { Swatch } from "../../parts/swatch";
import { Wide } from "../../parts/wide";
import { TEMPLATES } from "../../rooms/bench/templates";
import { useStore } from "../../store";
import type { Poured, Problem } from "../../types";
import { number, reading, sentenceIn } from "../../units";
import { useWhenStill } from "../../when-still";
import { say } from "../say";
import { Cost } from "./cost";

/** How long the bench must be still before its pouring is worked out anew, ms. */
const STILL_MS = 250;

export function PouringFold() {
  return (
    <LazyFold class="maker" summary={say("pouring-title")}>
      <Panel />
    </LazyFold>
  );
}

function Panel() {
  const store = useStore();
  const jobs = useJobs();
  const { file } = store.derived.value;
  const [waste, setWaste] = useState<number | null>(null);
  const [poured, setPoured] = useState<Poured | null>(null);
  const [house, setHouse] = useState<Poured[]>([]);
  const [refused, setRefused] = useState<Problem | null>(null);

  const own = useWhenStill(
    STILL_MS,
    async (signal) => {
      const [first] = await jobs.run("pour", { balls: [file], waste }, signal);
      setPoured(first ?? null);
      setRefused(null);
    },
    setRefused,
    [file, waste],
  );
  const others = useWhenStill(
    STILL_MS,
    async (signal) => setHouse(await jobs.run("pour", { balls: TEMPLATES.map(offeredBall), waste }, signal)),
    setRefused,
    [waste, language()],
  );

  const broken = own.broken ?? others.broken;

  if (broken) return <Broken broken={broken} />;
  if (refused) {
    return <Refused problem={refused} />;
  }
  if (!poured) return <p>{say("maker-working")}</p>;
  return (
    <>
      <Told poured={poured} />
      <BoundedField
        label={<Say id="pouring-lost" parts={{ pour: (word) => <Term word="pour">{word}</Term> }} />}
        value={waste ?? poured.waste}
        quantity="share"
        min={0}
        max={0.3}
        most={0.9}
        step={0.01}
        onChange={setWaste}
      />
      <Cost poured={poured} house={house} />
      <ul class="plain">
        {poured.notes.map((note) => (
          <li key={note}>{sentenceIn(note, store.view.value.units)}</li>
        ))}
      </ul>
    </>
  );
}

/** The pours in their order, and what stands in the way. */
function Told({ poured }: { poured: Poured }) {
  const { units } = useStore().view.value;
  const told = say("pouring-told", {
    pours: poured.pours.length,
    moulds: poured.moulds,
    mixed: reading(poured.mixed_lb, "weight", units),
  });
  return (
    <>
      <Result class="why-says" of={poured}>
        {`${told} ${say(poured.pourable ? "pouring-possible" : "pouring-impossible")}`}
      </Result>
      {poured.faults.map((fault) => (
        <p class="says says-wrong" key={fault}>
          {sentenceIn(fault, units)}
        </p>
      ))}
      {poured.cautions.map((caution) => (
        <p class="says says-caution" key={caution}>
          {sentenceIn(caution, units)}
        </p>
      ))}
      <p class="readout-says">
        {say("pouring-limits", { density: reading(DENSITY_LIMIT_G_CC, "density", units) })}
      </p>
      <Wide label={say("pouring-table")}>
        <table>
          <caption>{say("pouring-caption")}</caption>
          <thead>
            <tr>
              <Column word="pour" name={say("pouring-pour")} />
              <th scope="col">{say("pouring-round")}</th>
              <Column word="pour" name={say("pouring-mould")} />
              <Column word="density" name={say("pouring-density")} quantity="density" />
              <Column word="volume" name={say("pouring-volume")} quantity="volume" />
              <Column word="pour" name={say("pouring-mixed")} quantity="volume" />
              <Column word="pour" name={say("pouring-mixed")} quantity="weight" />
              <Column word="flow channel" name={say("pouring-channels")} quantity="size" />
            </tr>
          </thead>
          <tbody>
            {poured.pours.map((pour, n) => (
              <tr key={pour.part}>
                <th scope="row">
                  {n + 1} <Swatch part={pour.part} /> {partCalled(pour.name)}
                </th>
                <td class="pour-round">{pour.around.join(", ") || "–"}</td>
                <td>{pour.mould}</td>
                <td>{number(pour.density_g_cc, "density", units)}</td>
                <td>{number(pour.volume_cc, "volume", units)}</td>
                <td>{number(pour.mixed_cc, "volume", units)}</td>
                <td>{number(pour.mixed_lb, "weight", units)}</td>
                <td>{pour.channels_in.map((width) => number(width, "size", units)).join(", ") || "–"}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Wide>
    </>
  );
}
