import { OpenFile } from "../../../parts/open-file";
import "./oil.css";
import { useId, useState } from "preact/hooks";
import { openAs, saveOil } from "../../../files";
import { offered, offeredOil } from "../../../locale/names";
import { Fold } from "../../../parts/fold";
import { SayTerms } from "../../../parts/say-terms";
import { type Units, useStore } from "../../../store";
import type { Lane, OiledLane } from "../../../types";
import { digits, reading, written } from "../../../units";
import { Across } from "./across";
import { FrictionFold } from "./friction";
import { FilmMap } from "./map";
import { PatternFields } from "./pattern-fields";
import { oiled, ownOf, PRESETS, presetOf, TWO_ZONES } from "./presets";
import { say } from "./say";
import { type OilOn, useOil } from "./use-oil";
import { WearFold } from "./wear";
import { Zones } from "./zones";

const ZONES = "zones";
const OWN = "own";

/** What is on the lane: oil, drawn and edited, or friction by distance. */
export function OilFold() {
  const store = useStore();
  const { lane } = store.doc.value.shot;
  const wrong = store.derived.value.shotProblem;
  const on = useOil();
  const { units } = store.view.value;
  const here = wrong?.place.startsWith("lane") && !wrong.place.startsWith("lane.friction");
  return (
    <>
      <Fold summary={summaryOf(lane, on, units)} wrong={Boolean(here)}>
        <div class="oil-fold">
          <Choice lane={lane} />
          {"zones" in lane ? (
            <>
              <Zones zones={lane.zones} />
              <p class="hint">{say("oil-by-distance-says")}</p>
            </>
          ) : (
            on && <Oil lane={lane} on={on} stale={Boolean(here)} />
          )}
        </div>
      </Fold>
      {!("zones" in lane) && <FrictionFold lane={lane} />}
      {!("zones" in lane) && <WearFold />}
    </>
  );
}

function summaryOf(lane: Lane, on: OilOn | null, units: Units): string {
  if ("zones" in lane) {
    const last = lane.zones.length - 1;
    const zones = lane.zones.map(({ mu, to_ft }, at) => {
      const friction = digits(mu, 2);
      if (at < last) return say("oil-zone-until", { friction, end: reading(to_ft, "distance", units) });
      return last === 0 ? friction : say("oil-zone-then", { friction });
    });
    return say("oil-zones-summary", { zones: zones.join(", ") });
  }
  if (!on) return say("oil-none");
  const { length_ft, volume_ml, ratio } = on.map;
  const told = {
    name: on.oil.name,
    length: reading(length_ft, "distance", units),
    volume: reading(volume_ml, "oil", units),
  };
  return ratio === null
    ? say("oil-summary", told)
    : say("oil-summary-ratio", { ...told, ratio: ratioOf(ratio) });
}

const ratioOf = (ratio: number): string => written(String(Number(ratio.toFixed(1))));

function Choice({ lane }: { lane: Lane }) {
  const store = useStore();
  const id = useId();
  const oil = "zones" in lane || typeof lane.oil === "string" ? null : lane.oil;
  const chosen = oil ? (presetOf(oil) ?? OWN) : ZONES;
  return (
    <div class="line">
      <label class="field-label" for={id}>
        <SayTerms id="oil-choose" terms={{ pattern: "oil pattern" }} />
      </label>
      <select
        id={id}
        value={chosen}
        onChange={(event) => {
          const next = event.currentTarget.value;
          const preset = PRESETS[next];
          store.editShot((old) => ({
            ...old,
            lane: preset ? oiled(old.lane, offeredOil(preset)) : { zones: TWO_ZONES },
          }));
        }}
      >
        {Object.entries(PRESETS).map(([key, { name }]) => (
          <option key={key} value={key}>
            {offered("oil", name)}
          </option>
        ))}
        {oil && chosen === OWN && <option value={OWN}>{oil.name}</option>}
        <option value={ZONES}>{say("oil-by-distance")}</option>
      </select>
    </div>
  );
}

function Oil({ lane, on, stale }: { lane: OiledLane; on: OilOn; stale: boolean }) {
  const store = useStore();
  const wrong = store.derived.value.shotProblem;
  const { units } = store.view.value;
  const [cut_ft, setCut] = useState(30);
  const oil = typeof lane.oil === "string" ? on.oil : lane.oil;
  const { map } = on;
  return (
    <>
      {oil.note && <p>{oil.note}</p>}
      <dl class="oil-numbers">
        <div>
          <dt>
            <SayTerms id="oil-length" terms={{ pattern: "oil pattern" }} />
          </dt>
          <dd>{reading(map.length_ft, "distance", units)}</dd>
        </div>
        <div>
          <dt>
            <SayTerms id="oil-volume" terms={{ pattern: "oil pattern" }} />
          </dt>
          <dd>{reading(map.volume_ml, "oil", units)}</dd>
        </div>
        <div>
          <dt>
            <SayTerms id="oil-ratio" terms={{ ratio: "oil ratio" }} />
          </dt>
          <dd>{map.ratio === null ? say("oil-no-number") : `1 : ${ratioOf(map.ratio)}`}</dd>
        </div>
        <div>
          <dt>
            <SayTerms id="oil-thickest" terms={{ film: "film" }} />
          </dt>
          <dd>{reading(map.thickest_um, "film", units)}</dd>
        </div>
      </dl>
      <FilmMap {...on} cut_ft={cut_ft} stale={stale} />
      <details>
        <summary>{say("oil-across", { distance: reading(cut_ft - 0.5, "distance", units) })}</summary>
        <Across map={map} cut_ft={cut_ft} onCut={setCut} />
      </details>
      {"pattern" in oil ? (
        <PatternFields pattern={oil.pattern} problem={wrong} />
      ) : (
        <p class="hint">{say("oil-drawn")}</p>
      )}
      <Keep />
    </>
  );
}

/** The oil's name, and its file. */
function Keep() {
  const store = useStore();
  const { lane } = store.doc.value.shot;
  if ("zones" in lane || typeof lane.oil === "string") return null;
  const { oil } = lane;
  return (
    <div class="oil-keep">
      <label class="line">
        <span class="field-label">{say("oil-name")}</span>
        <input
          type="text"
          value={oil.name}
          onInput={(event) => {
            const name = event.currentTarget.value;
            store.editShot((old) => {
              if ("zones" in old.lane || typeof old.lane.oil === "string") return old;
              return { ...old, lane: oiled(old.lane, { ...old.lane.oil, ...ownOf(old.lane.oil), name }) };
            }, "oil.name");
          }}
        />
      </label>
      <div class="choices">
        <button type="button" onClick={() => saveOil(oil)}>
          {say("oil-save")}
        </button>
        <OpenFile label={say("oil-open-label")} onOpen={([file]) => file && void openAs(store, "oil", file)}>
          {say("oil-open")}
        </OpenFile>
      </div>
    </div>
  );
}
