import { useMemo, useState } from "preact/hooks";
import type { Derived } from "../../derive";
import { useSize } from "../../draw/use-size";
import { useStore } from "../../store";
import type { Section } from "../../types";
import { digits, reading } from "../../units";
import { useDark } from "./dark";
import { Flat } from "./flat";
import { normalOf, type Plane, planeWords } from "./plane";
import { say } from "./say";
import { areas } from "./walk";

const FIRST: Plane = { normal: normalOf({ round_deg: 0, up_deg: 0 }), depth_in: 0 };
interface Other {
  key: string;
  /** Of its text. */
  name: string;
  plane: Plane;
}
const QUARTER: Other = {
  key: "quarter",
  name: "saw-quarter",
  plane: { normal: normalOf({ round_deg: 90, up_deg: 0 }), depth_in: 0 },
};
const OTHERS: Other[] = [
  QUARTER,
  { key: "beside", name: "saw-beside", plane: { normal: FIRST.normal, depth_in: 1 } },
  {
    key: "aslant",
    name: "saw-aslant",
    plane: { normal: normalOf({ round_deg: 0, up_deg: 45 }), depth_in: 0 },
  },
  {
    key: "across",
    name: "saw-across",
    plane: { normal: normalOf({ round_deg: 0, up_deg: 90 }), depth_in: 0 },
  },
];

/** Square inches by which two cuts differ, part by part. */
function difference_in2(a: Section, b: Section): number {
  const other = new Map(areas(b).map(({ part, area_in2 }) => [part, area_in2]));
  let sum = 0;
  for (const { part, area_in2 } of areas(a)) {
    sum += Math.abs(area_in2 - (other.get(part) ?? 0));
    other.delete(part);
  }
  for (const rest of other.values()) sum += rest;
  return sum;
}

const cut = (derived: Derived, plane: Plane): Section => derived.ball.section(plane.normal, plane.depth_in);

/** A quarter turn where that shows another shape, else the slanted cut. */
function telling(derived: Derived): string {
  const differs = difference_in2(cut(derived, FIRST), cut(derived, QUARTER.plane));
  return differs > 0.5 ? QUARTER.key : "aslant";
}

/** One ball, two cuts, one scale: how a core comes to look like another. */
export function TwoCuts({ highlighted }: { highlighted: number | null }) {
  const store = useStore();
  const derived = store.derived.value;
  const { units, markers } = store.view.value;
  const dark = useDark();
  const [box, size] = useSize<HTMLDivElement>();
  const [chosen, setChosen] = useState<string | null>(null);
  const told = useMemo(() => telling(derived), [derived.ball]);
  const key = chosen ?? told;
  const other = OTHERS.find((one) => one.key === key) ?? QUARTER;
  const first = useMemo(() => cut(derived, FIRST), [derived.ball]);
  const second = useMemo(() => cut(derived, other.plane), [derived.ball, other]);
  const beside = (size?.width_px ?? 0) >= 420;
  const width_px = size ? (beside ? (size.width_px - 8) / 2 : size.width_px) : 0;
  const height_px = Math.min(Math.max(width_px - 70, 220), 420);
  const words = (plane: Plane) => planeWords(plane, (inches) => reading(inches, "size", units));
  const drawing = { derived, units, dark, width_px, height_px, marked: markers, highlighted };
  return (
    <div class="two-cuts">
      <div class="two-cuts-pair" data-beside={beside || undefined} ref={box}>
        {size && (
          <>
            <figure>
              <Flat {...drawing} id="cut-one" section={first} />
              <figcaption>{say("saw-cut-caption", { plane: words(FIRST) })}</figcaption>
            </figure>
            <figure>
              <Flat {...drawing} id="cut-two" section={second} />
              <figcaption>{say("saw-cut-caption", { plane: words(other.plane) })}</figcaption>
            </figure>
          </>
        )}
      </div>
      <p class="two-cuts-says">
        {say("saw-two-cuts-say", {
          area:
            units === "metric"
              ? `${digits(difference_in2(first, second) * 6.4516, 0)} cm²`
              : `${digits(difference_in2(first, second), 1)} in²`,
        })}
      </p>
      <fieldset>
        <legend>{say("saw-second-cut")}</legend>
        <div class="choices">
          {OTHERS.map((one) => (
            <button
              type="button"
              key={one.key}
              aria-pressed={one.key === key}
              onClick={() => setChosen(one.key)}
            >
              {say(one.name)}
            </button>
          ))}
        </div>
      </fieldset>
    </div>
  );
}
