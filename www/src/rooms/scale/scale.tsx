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
import { MapFold } from "../../maker/map/map";
import { PouringFold } from "../../maker/pouring/pouring";
import { ScatterFold } from "../../maker/scatter/scatter";
import { Readout } from "../../parts/readout";
import { Term } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { Vec3 } from "../../types";
import { change, measure, type Quantity, reading } from "../../units";
import type { Word } from "../../words";
import { WhatHolesChange } from "./drilled";
import { Durability } from "./durability";
import { Published } from "./published";
import { Shares } from "./shares";
import { bandOf, partsIn, Verdict } from "./verdict";
import { WeightLine } from "./weight-line";

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
        label={<Term word="weight">Weight</Term>}
        value={weighed.weight_lb}
        before={before?.weight_lb}
        quantity="weight"
        range={WEIGHT}
      >
        <Verdict value={weighed.weight_lb} range={WEIGHT} quantity="weight" />
      </Readout>
      <Readout
        label={
          <>
            <Term word="RG" /> about the easiest axis
          </>
        }
        value={rg_in.low}
        before={before?.rg_in.low}
        quantity="rg"
        range={RG}
      >
        <span class="roomy">How hard the ball is to spin. </span>
        <Called band={bandOf(rg_in.low, RG)} />
        {light ? (
          `The published limits are for balls of ${round(RG_LIMITS_FROM_LB, "weight", units)} and up.`
        ) : (
          <Verdict value={rg_in.high > (RG.high ?? 0) ? rg_in.high : rg_in.low} range={RG} quantity="rg" />
        )}
      </Readout>
      <dl class="pair">
        <Small word="middle RG" name="Middle" value={rg_in.middle} before={before?.rg_in.middle} />
        <Small word="high RG" name="Hardest" value={rg_in.high} before={before?.rg_in.high} />
      </dl>
      <Readout
        label={
          <>
            <Term word="differential">Differential</Term>, room for <Term word="track flare">flare</Term>
          </>
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
        label={<Term word="intermediate differential">Intermediate differential</Term>}
        value={weighed.intermediate_differential_in}
        before={before?.intermediate_differential_in}
        quantity="rg"
      >
        {asymmetric ? "Asymmetric: over" : "Symmetric: not over"} {ASYMMETRIC_SHARE * 100} % of the
        differential.*
      </Readout>
      <Readout
        label={
          <>
            <Term word="CG" /> off the centre by
          </>
        }
        value={Math.hypot(...cg_in)}
        before={before ? Math.hypot(...before.cg_in) : null}
        quantity="rg"
      >
        {whereabouts(cg_in)}
      </Readout>
      <Readout
        label={
          <>
            <Term word="top weight">Top weight</Term>
            {drilled && " before drilling"}
          </>
        }
        value={undrilled.top_weight_oz}
        before={drilled ? null : before?.top_weight_oz}
        quantity="imbalance"
        range={TOP_WEIGHT}
      >
        Towards the pin. Undrilled balls usually have {usualTopWeight(units)}.*
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
        <summary>What these numbers do to a shot</summary>
        <ul class="plain">
          <li>
            For the same release, a lower RG revs up and rolls sooner, and once it rolls it ends at a slightly
            smaller angle: it has less spin stored. A higher RG saves its motion for later. Trade talk often
            says otherwise.
          </li>
          <li>
            Differential lets the spin axis wander in the ball, so that the track moves to fresh cover.
            Whether that by itself changes the hook is disputed in print.
          </li>
          <li>
            Published studies put the surface and the friction first, then RG and differential, and the centre
            of gravity far behind.
          </li>
          <li>
            Top weight has no single convention. Here it is what must be set on the pole opposite the pin to
            balance the undrilled ball on its centre, the arm being its radius. Once drilled, its static
            balance over the grip counts instead: over {round(10, "weight", units)} a ball may have{" "}
            {round(STATIC_BALANCE_LIMIT_OZ, "imbalance", units)} each way, as published.
          </li>
          <li>No published limit for the intermediate differential alone was found.</li>
        </ul>
      </details>
      <p class="fine-print">
        * Common practice, no source; so are the words low, medium and high. The thick part of a line is what
        the published limits allow.
      </p>
      <p class="fine-print">
        {partsIn(weighed.relative_error)} Limits: United States Bowling Congress, as published in its notices;
        the current edition of the rules decides. Pithball teaches; it does not certify a ball.
      </p>
    </>
  );
}

/** The trade's word for where a value lies: on the page its line shows it, so it is only told aloud. */
function Called({ band }: { band: string }) {
  return <span class="visually-hidden">Usually called {band}. </span>;
}

interface SmallProps {
  name: string;
  word: Word;
  value: number;
  before?: number;
}

function Small({ name, word, value, before }: SmallProps) {
  const units = useStore().view.value.units;
  const moved = before === undefined ? null : change(value - before, "rg", units);
  return (
    <div>
      <dt>
        <Term word={word}>
          {name}
          <span class="visually-hidden"> axis</span>
        </Term>
      </dt>
      <dd>
        {reading(value, "rg", units)}
        {moved && (
          <span class="delta">
            <span class="visually-hidden">changed by </span>
            {moved}
          </span>
        )}
      </dd>
    </div>
  );
}

/** What undrilled balls usually have, in round numbers. */
function usualTopWeight(units: Units): string {
  const [low, high] = USUAL_TOP_WEIGHT_OZ.map((oz) => round(oz, "imbalance", units));
  return `${low?.split("\u00a0")[0]} to ${high}`;
}

/** A limit or a usual figure in round numbers, with its unit. */
function round(value: number, quantity: Quantity, units: Units): string {
  const { factor, unit } = measure(quantity, units);
  return `${Number((value * factor).toPrecision(2))}\u00a0${unit}`;
}

/** Which way the centre of gravity lies, in words. */
function whereabouts([x, y, z]: Vec3): string {
  const length = Math.hypot(x, y, z);
  if (length < 5e-4) return "It sits at the centre of the ball.";
  const along = z / length;
  if (along > 0.99) return "It lies straight towards the pin.";
  if (along < -0.99) return "It lies straight away from the pin.";
  if (along > 0.5) return "It lies towards the pin and to one side.";
  if (along < -0.5) return "It lies away from the pin and to one side.";
  return "It lies to one side.";
}
