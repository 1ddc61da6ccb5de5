import { useId } from "preact/hooks";
import { Picture } from "../../draw/picture";
import { Say } from "../../locale/say";
import { worded } from "../../locale/worded";
import { LazyFold } from "../../parts/lazy-fold";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import { count, measure, number, QUANTITY_OF, reading } from "../../units";
import { figureWord } from "../controls";
import { Bars, FOOT, HEIGHT, WIDTH } from "./bars";
import { halfSays } from "./half";
import { MORE, rangeSays, type Spread } from "./numbers";
import { say } from "./say";

/** How often a number came out where: bars, the limits as lines, what is beyond them hatched. */
export function Histogram({ one }: { one: Spread }) {
  const { units } = useStore().view.value;
  const id = useId();
  const quantity = QUANTITY_OF[one.unit];
  const { unit } = measure(quantity, units);
  const called = worded(one.name);
  const name = called.charAt(0).toUpperCase() + called.slice(1);
  const ends = [...(one.accept ?? []), ...(one.published ?? [])];
  // Limits come into the picture where they are not far off.
  const width = one.most - one.least || 2 * one.error;
  const near = ends.filter(
    (end): end is number => end !== null && end > one.least - width && end < one.most + width,
  );
  const start = Math.min(one.least, ...near);
  const from = start < 0 ? start - 0.03 * width : Math.max(0, start - 0.03 * width);
  const to = Math.max(one.most, ...near) + 0.03 * width;
  const x = (value: number) => Math.min(WIDTH, Math.max(0, ((value - from) / (to - from)) * WIDTH));
  const written = (value: number | null) => (value === null ? "–" : reading(value, quantity, units, MORE));
  const [low, high] = one.accept ?? [null, null];
  const desc =
    one.count === 0
      ? say("spread-no-ball")
      : [
          halfSays(one, written),
          one.accept && say("spread-sold", { range: rangeSays(one.accept, one.unit, units) }),
          one.published && say("spread-published", { range: rangeSays(one.published, one.unit, units) }),
        ]
          .filter(Boolean)
          .join(" ");
  return (
    <figure class="histogram">
      <figcaption>
        <strong>
          <Term word={figureWord(one.number)}>{name}</Term>
        </strong>{" "}
        {unit && <span class="unit">{unit}</span>}
      </figcaption>
      <Picture
        id={id}
        viewBox={`-2 -2 ${WIDTH + 4} ${HEIGHT + FOOT + 4}`}
        title={say("spread-histogram", { number: name })}
        desc={desc}
      >
        <defs>
          <pattern id={`${id}-out`} width="5" height="5" patternUnits="userSpaceOnUse">
            <path class="histogram-hatch" d="M0 5L5 0" />
          </pattern>
        </defs>
        {low !== null && low > from && <rect width={x(low)} height={HEIGHT} fill={`url(#${id}-out)`} />}
        {high !== null && high < to && (
          <rect x={x(high)} width={WIDTH - x(high)} height={HEIGHT} fill={`url(#${id}-out)`} />
        )}
        <Bars bins={one.bins} x={x} />
        {[low, high].map(
          (end, n) =>
            end !== null &&
            end >= from &&
            end <= to && <path key={n} class="histogram-accept" d={`M${x(end)} 0V${HEIGHT}`} />,
        )}
        {(one.published ?? []).map(
          (end, n) =>
            end !== null &&
            end >= from &&
            end <= to && <path key={n} class="histogram-published" d={`M${x(end)} 0V${HEIGHT}`} />,
        )}
        {one.nominal !== null && (
          <path class="histogram-recipe" d={`M${x(one.nominal)} ${HEIGHT}l-5 7h10z`} />
        )}
        <text x="0" y={HEIGHT + FOOT}>
          {number(from, quantity, units, MORE)}
        </text>
        <text x={WIDTH} y={HEIGHT + FOOT} text-anchor="end">
          {number(to, quantity, units, MORE)}
        </text>
      </Picture>
      <p class="readout-says">{desc}</p>
      <LazyFold summary={say("spread-bars")}>
        <table>
          <caption>
            <Say id="spread-bars-caption" parts={{ histogram: () => <Term word="histogram" /> }} />
          </caption>
          <thead>
            <tr>
              <th scope="col">{say("spread-bar-from")}</th>
              <th scope="col">{say("spread-bar-to")}</th>
              <th scope="col">{say("spread-bar-balls")}</th>
            </tr>
          </thead>
          <tbody>
            {one.bins.map((bin) => (
              <tr key={bin.from}>
                <td>{number(bin.from, quantity, units, MORE + 1)}</td>
                <td>{number(bin.to, quantity, units, MORE + 1)}</td>
                <td>{count(bin.count)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </LazyFold>
    </figure>
  );
}
