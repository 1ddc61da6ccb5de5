import {
  ASYMMETRIC_SHARE,
  DIFFERENTIAL,
  RG,
  RG_LIMITS_FROM_LB,
  STATIC_BALANCE_LIMIT_OZ,
  TOP_WEIGHT,
  USUAL_TOP_WEIGHT_OZ,
  WEIGHT,
} from "../../limits";
import { Say } from "../../locale/say";
import { MapFold } from "../../maker/map/map";
import { PouringFold } from "../../maker/pouring/pouring";
import { ScatterFold } from "../../maker/scatter/scatter";
import { Readout } from "../../parts/readout";
import { say as sayNumber } from "../../parts/say";
import { SayTerms } from "../../parts/say-terms";
import { Term } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { Vec3 } from "../../types";
import { apart, change, digits, measure, type Quantity, reading, written } from "../../units";
import type { Word } from "../../words";
import { WhatHolesChange } from "./drilled";
import { Durability } from "./durability";
import { Published } from "./published";
import { say } from "./say";
import { Shares } from "./shares";
import { Verdict } from "./verdict";
import { WeightLine } from "./weight-line";
import { bandOf, partsIn } from "./words";

/** The ball's numbers, each with its place among the limits and a plain line. */
export function Scale() {
  const store = useStore();
  const { weighed, undrilled, drilled, before } = store.derived.value;
  const units = store.view.value.units;
  const { rg_in, cg_in } = weighed;
  const light = weighed.weight_lb < RG_LIMITS_FROM_LB;
  const asymmetric = weighed.intermediate_differential_in > ASYMMETRIC_SHARE * weighed.differential_in + 1e-6;
  return (
    <>
      <Readout
        label={<SayTerms id="scale-weight" terms={{ weight: "weight" }} />}
        value={weighed.weight_lb}
        before={before?.weight_lb}
        quantity="weight"
        range={WEIGHT}
      >
        <Verdict value={weighed.weight_lb} range={WEIGHT} quantity="weight" />
      </Readout>
      <Readout
        label={<SayTerms id="scale-rg" terms={{ rg: "RG" }} />}
        value={rg_in.low}
        before={before?.rg_in.low}
        quantity="rg"
        range={RG}
      >
        <span class="roomy">{say("scale-how-hard")} </span>
        <Called band={bandOf(rg_in.low, RG)} />
        {light ? (
          say("scale-limits-from", { weight: round(RG_LIMITS_FROM_LB, "weight", units) })
        ) : (
          <Verdict value={rg_in.high > (RG.high ?? 0) ? rg_in.high : rg_in.low} range={RG} quantity="rg" />
        )}
      </Readout>
      <dl class="pair">
        <Small word="middle RG" name="scale-middle" value={rg_in.middle} before={before?.rg_in.middle} />
        <Small word="high RG" name="scale-hardest" value={rg_in.high} before={before?.rg_in.high} />
      </dl>
      <Readout
        label={
          <SayTerms id="scale-differential" terms={{ differential: "differential", flare: "track flare" }} />
        }
        value={weighed.differential_in}
        before={before?.differential_in}
        quantity="rg"
        range={DIFFERENTIAL}
      >
        <Called band={bandOf(weighed.differential_in, DIFFERENTIAL)} />
        <Verdict value={weighed.differential_in} range={DIFFERENTIAL} quantity="rg" />
      </Readout>
      <Readout
        label={<SayTerms id="scale-intermediate" terms={{ intermediate: "intermediate differential" }} />}
        value={weighed.intermediate_differential_in}
        before={before?.intermediate_differential_in}
        quantity="rg"
      >
        {say(asymmetric ? "scale-asymmetric" : "scale-symmetric", {
          percent: digits(ASYMMETRIC_SHARE * 100, 0),
        })}
      </Readout>
      <Readout
        label={<SayTerms id="scale-cg" terms={{ cg: "CG" }} />}
        value={Math.hypot(...cg_in)}
        before={before ? Math.hypot(...before.cg_in) : null}
        quantity="rg"
      >
        {whereabouts(cg_in)}
      </Readout>
      <Readout
        label={
          <SayTerms
            id={drilled ? "scale-top-weight-before" : "scale-top-weight"}
            terms={{ "top-weight": "top weight" }}
          />
        }
        value={undrilled.top_weight_oz}
        before={drilled ? null : before?.top_weight_oz}
        quantity="imbalance"
        range={TOP_WEIGHT}
      >
        {usualTopWeight(units)}
      </Readout>
      <WhatHolesChange />
      <Shares />
      <Published />
      <WeightLine />
      <Durability />
      <MapFold />
      <ScatterFold />
      <PouringFold />
      <details>
        <summary>{say("scale-what-it-does")}</summary>
        <ul class="plain">
          <li>{say("scale-does-rg")}</li>
          <li>{say("scale-does-differential")}</li>
          <li>{say("scale-does-studies")}</li>
          <li>
            {say("scale-does-top-weight", {
              weight: round(10, "weight", units),
              limit: round(STATIC_BALANCE_LIMIT_OZ, "imbalance", units),
            })}
          </li>
          <li>{say("scale-does-no-limit")}</li>
        </ul>
      </details>
      <p class="fine-print">{say("scale-common-practice")}</p>
      <p class="fine-print">
        {partsIn(weighed.relative_error)} {say("scale-limits")}
      </p>
    </>
  );
}

/** The trade's word for where a value lies: on the page its line shows it, so it is only told aloud. */
function Called({ band }: { band: string }) {
  return <span class="visually-hidden">{say("scale-called", { band })} </span>;
}

interface SmallProps {
  /** Of its text. */
  name: string;
  word: Word;
  value: number;
  before?: number;
}

function Small({ name, word, value, before }: SmallProps) {
  const units = useStore().view.value.units;
  const moved = before === undefined ? null : change(apart(before, value, "rg", units), "rg", units);
  return (
    <div>
      <dt>
        <Term word={word}>
          <Say id={name} parts={{ aloud: (inner) => <span class="visually-hidden">{inner}</span> }} />
        </Term>
      </dt>
      <dd>
        {reading(value, "rg", units)}
        {moved && (
          <span class="delta">
            <span class="visually-hidden">{sayNumber("numbers-changed-by")} </span>
            {moved}
          </span>
        )}
      </dd>
    </div>
  );
}

/** Which way, and what undrilled balls usually have, in round numbers. */
function usualTopWeight(units: Units): string {
  const [low, high] = USUAL_TOP_WEIGHT_OZ.map((oz) => round(oz, "imbalance", units));
  return say("scale-top-weight-usual", { low: low?.split("\u00a0")[0] ?? "", high: high ?? "" });
}

/** A limit or a usual figure in round numbers, with its unit. */
function round(value: number, quantity: Quantity, units: Units): string {
  const { factor, unit } = measure(quantity, units);
  return `${written(String(Number((value * factor).toPrecision(2))))}\u00a0${unit}`;
}

/** Which way the centre of gravity lies, in words. */
function whereabouts([x, y, z]: Vec3): string {
  const length = Math.hypot(x, y, z);
  if (length < 5e-4) return say("scale-cg-centre");
  const along = z / length;
  if (along > 0.99) return say("scale-cg-to-pin");
  if (along < -0.99) return say("scale-cg-from-pin");
  if (along > 0.5) return say("scale-cg-towards");
  if (along < -0.5) return say("scale-cg-away");
  return say("scale-cg-aside");
}
