// How the ball on the bench is poured, what stands in the way, and what it costs beside others.
import { Term } from "../../parts/term";
import "../maker.css";
import "./pouring.css";
import { useState } from "preact/hooks";
import { useJobs } from "../../jobs";
import { DENSITY_LIMIT_G_CC } from "../../limits";
import { BoundedField } from "../../parts/bounded-field";
import { LazyFold } from "../../parts/lazy-fold";
import { Said } from "../../parts/said";
import { Swatch } from "../../parts/swatch";
import { Wide } from "../../parts/wide";
import { TEMPLATES } from "../../rooms/bench/templates";
import { useStore } from "../../store";
import type { Poured, Problem } from "../../types";
import { measure, number, reading, sentenceIn } from "../../units";
import { useWhenStill } from "../../when-still";
import { Cost } from "./cost";

/** How long the bench must be still before its pouring is worked out anew, ms. */
const STILL_MS = 250;

export function PouringFold() {
  return (
    <LazyFold class="maker" summary="How it is poured, and what that costs">
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

  useWhenStill(
    STILL_MS,
    async (signal) => {
      const [own] = await jobs.run("pour", { balls: [file], waste }, signal);
      setPoured(own ?? null);
      setRefused(null);
    },
    setRefused,
    [file, waste],
  );
  useWhenStill(
    STILL_MS,
    async (signal) => setHouse(await jobs.run("pour", { balls: TEMPLATES, waste }, signal)),
    setRefused,
    [waste],
  );

  if (refused) {
    return (
      <p class="says says-wrong" role="status">
        <Said problem={refused} />
      </p>
    );
  }
  if (!poured) return <p role="status">Working it out …</p>;
  return (
    <>
      <Told poured={poured} />
      <BoundedField
        label={
          <>
            Lost of each <Term word="pour">pour</Term>
          </>
        }
        value={poured.waste}
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

const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? "" : "s"}`;

/** The pours in their order, and what stands in the way. */
function Told({ poured }: { poured: Poured }) {
  const { units } = useStore().view.value;
  const unit = (quantity: "volume" | "weight" | "density" | "size") => (
    <span class="unit">{measure(quantity, units).unit}</span>
  );
  return (
    <>
      <p class="why-says" aria-live="polite">
        {counted(poured.pours.length, "pour")}, {counted(poured.moulds, "mould")},{" "}
        {reading(poured.mixed_lb, "weight", units)} mixed.{" "}
        {poured.pourable
          ? "Nothing stands in the way of pouring it."
          : "It cannot be poured in this order as it is."}
      </p>
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
        Published limits count: no part over {reading(DENSITY_LIMIT_G_CC, "density", units)}, and no voids.
      </p>
      <Wide label="Pours in their order">
        <table>
          <caption>What is poured first stands first</caption>
          <thead>
            <tr>
              <th scope="col">
                <Term word="pour">Pour</Term>
              </th>
              <th scope="col">Round</th>
              <th scope="col">
                <Term word="pour">Mould</Term>
              </th>
              <th scope="col">
                <Term word="density">Density</Term> {unit("density")}
              </th>
              <th scope="col">
                <Term word="volume">Volume</Term> {unit("volume")}
              </th>
              <th scope="col">
                <Term word="pour">Mixed</Term> {unit("volume")}
              </th>
              <th scope="col">
                <Term word="pour">Mixed</Term> {unit("weight")}
              </th>
              <th scope="col">
                <Term word="flow channel">Channels</Term> {unit("size")}
              </th>
            </tr>
          </thead>
          <tbody>
            {poured.pours.map((pour, n) => (
              <tr key={pour.part}>
                <th scope="row">
                  {n + 1} <Swatch part={pour.part} /> {pour.name}
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
