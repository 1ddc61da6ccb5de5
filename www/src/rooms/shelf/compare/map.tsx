import { remPx, useSize } from "../../../draw/use-size";
import { DIFFERENTIAL, RG, RG_LIMITS_FROM_LB } from "../../../limits";
import { SayTerms } from "../../../parts/say-terms";
import { isProblem } from "../../../problem";
import { measuredSoon } from "../../../shelf/measured";
import { useShelf } from "../../../shelf/shelf";
import { useStore } from "../../../store";
import { measure, number, reading } from "../../../units";
import { BENCH_ID, type Item, type Items } from "../items";
import { LETTERS } from "../letters";
import { say } from "../say";
import { type Label, place } from "./labels";

// In sixteenths of the page's measure, so that letters are as large as the reader has them.
const MOST_WIDE = 560;
const LEAST_WIDE = 320;
const HEIGHT = 330;
const LEFT = 58;
const TOP = 14;
const BOTTOM = HEIGHT - 40;
const CHAR_PX = 6.4;
const LONGEST = 24;

interface Point {
  item: Item;
  kind: "bench" | "shelf" | "house";
  letter: string | null;
  rg_in: number;
  differential_in: number;
  weight_lb: number;
}

const KINDS = { bench: "compare-on-bench", shelf: "compare-on-shelf", house: "compare-of-house" };

/** Every ball there is by RG and differential, those chosen by their letters. */
export function BallMap({ items }: { items: Items }) {
  const store = useStore();
  const { units } = store.view.value;
  const chosen = useShelf().chosen.value;
  const [box, size] = useSize<HTMLDivElement>();
  const room = size && size.width_px > 0 ? size.width_px / remPx(1 / 16) : MOST_WIDE;
  const width = Math.round(Math.min(MOST_WIDE, Math.max(LEAST_WIDE, room)));
  const right = width - 14;
  const kindOf = (item: Item) => (item.id === BENCH_ID ? "bench" : item.houseBall ? "house" : "shelf");
  const points: Point[] = [...items.house, ...items.shelf, items.bench].flatMap((item) => {
    const found = measuredSoon(store.wasm, item.shot);
    if (found === null || isProblem(found)) return [];
    const { rg_in, differential_in, weight_lb } = found.weighed;
    const letter = LETTERS[chosen.indexOf(item.id)] ?? null;
    return [{ item, kind: kindOf(item), letter, rg_in: rg_in.low, differential_in, weight_lb }];
  });
  const [low, high] = [RG.low ?? 0, RG.high ?? 0];
  const most = DIFFERENTIAL.high ?? 0;
  const from = Math.min(low - 0.02, ...points.map(({ rg_in }) => rg_in - 0.02));
  const to = Math.max(high + 0.02, ...points.map(({ rg_in }) => rg_in + 0.02));
  const top = Math.max(most * 1.15, ...points.map(({ differential_in }) => differential_in * 1.1));
  const x = (rg: number) => LEFT + ((rg - from) / (to - from)) * (right - LEFT);
  const y = (differential: number) => BOTTOM - (differential / top) * (BOTTOM - TOP);
  const name = ({ item, letter }: Point) => {
    const short = item.name.length > LONGEST ? `${item.name.slice(0, LONGEST - 1)}…` : item.name;
    return letter ? `${letter} ${short}` : short;
  };
  // Those chosen are named first, then the bench and the shelf, as far as there is room.
  const byRank = points.toSorted((a, b) => rank(a) - rank(b));
  const labels = place(
    byRank.map((point) => ({ x: x(point.rg_in), y: y(point.differential_in), text: name(point) })),
    { left: LEFT, right, top: TOP, bottom: BOTTOM, char_px: CHAR_PX },
  );
  const ticks = [2.5, 2.6, 2.7, 2.8].filter((rg) => rg > from && rg < to);
  const rungs = [0.02, 0.04, 0.06, 0.08, 0.1].filter((rung) => rung < top);
  return (
    <section class="compare-part" aria-labelledby="compare-map">
      <h4 id="compare-map">{say("compare-map")}</h4>
      <div ref={box}>
        <svg
          class="ball-map"
          viewBox={`0 0 ${width} ${HEIGHT}`}
          role="img"
          aria-labelledby="ball-map-title ball-map-desc"
        >
          <title id="ball-map-title">{say("compare-map-title")}</title>
          <desc id="ball-map-desc">{say("compare-map-below")}</desc>
          <path class="ball-map-limit" d={`M${x(low)} ${BOTTOM}V${y(most)}H${x(high)}V${BOTTOM}`} />
          <text class="ball-map-note" x={x(high) - 4} y={y(most) - 5} text-anchor="end">
            {say("compare-map-limits", { weight: reading(RG_LIMITS_FROM_LB, "weight", units) })}
          </text>
          <path class="ball-map-frame" d={`M${LEFT} ${TOP}V${BOTTOM}H${right}`} />
          {ticks.map((rg) => (
            <text key={rg} x={x(rg)} y={BOTTOM + 15} text-anchor="middle">
              {number(rg, "rg", units)}
            </text>
          ))}
          {rungs.map((rung) => (
            <text key={rung} x={LEFT - 6} y={y(rung) + 4} text-anchor="end">
              {number(rung, "rg", units)}
            </text>
          ))}
          <text x={right} y={HEIGHT - 6} text-anchor="end">
            {say("compare-map-rg", { unit: measure("rg", units).unit })}
          </text>
          <text x={6} y={TOP + 2}>
            {say("compare-map-differential")}
          </text>
          {points.map((point) => (
            <g
              key={point.item.id}
              class={`ball-point ${point.kind}`}
              transform={`translate(${x(point.rg_in)} ${y(point.differential_in)})`}
              data-chosen={point.letter ?? undefined}
            >
              {point.kind === "bench" ? (
                <path d="M0 -6L6 0L0 6L-6 0Z" />
              ) : (
                <circle r={point.letter ? 6 : 4.5} />
              )}
            </g>
          ))}
          {labels.map((label: Label, i) =>
            label.at === null ? null : (
              <text
                key={byRank[i]?.item.id}
                class="ball-map-name"
                x={label.at.x}
                y={label.at.y}
                text-anchor={label.at.anchor}
                data-chosen={byRank[i]?.letter ?? undefined}
              >
                {label.text}
              </text>
            ),
          )}
        </svg>
      </div>
      <p class="fine-print">{say("compare-map-signs")}</p>
      <details>
        <summary>{say("compare-map-same")}</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls sideways, which needs the keyboard */}
        <section class="compare-scroll" aria-label={say("compare-map-table")} tabIndex={0}>
          <table class="compare-table">
            <caption>{say("compare-map-by-rg")}</caption>
            <thead>
              <tr>
                <th scope="col">{say("compare-map-ball")}</th>
                <th scope="col">{say("compare-map-where")}</th>
                <th scope="col">
                  <SayTerms
                    id="compare-map-low-rg"
                    args={{ unit: measure("rg", units).unit }}
                    terms={{ rg: "RG" }}
                  />
                </th>
                <th scope="col">
                  <SayTerms
                    id="compare-map-diff"
                    args={{ unit: measure("rg", units).unit }}
                    terms={{ differential: "differential" }}
                  />
                </th>
                <th scope="col">
                  <SayTerms
                    id="compare-map-weight"
                    args={{ unit: measure("weight", units).unit }}
                    terms={{ weight: "weight" }}
                  />
                </th>
              </tr>
            </thead>
            <tbody>
              {points
                .toSorted((a, b) => a.rg_in - b.rg_in)
                .map((point) => (
                  <tr key={point.item.id}>
                    <th scope="row">
                      {point.letter ? `${point.letter} ${point.item.name}` : point.item.name}
                    </th>
                    <td>{say(KINDS[point.kind])}</td>
                    <td>{number(point.rg_in, "rg", units)}</td>
                    <td>{number(point.differential_in, "rg", units)}</td>
                    <td>{number(point.weight_lb, "weight", units)}</td>
                  </tr>
                ))}
            </tbody>
          </table>
        </section>
      </details>
    </section>
  );
}

const rank = ({ letter, kind }: Point): number =>
  letter ? 0 : kind === "bench" ? 1 : kind === "shelf" ? 2 : 3;
