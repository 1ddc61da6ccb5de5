import type { ComponentChildren } from "preact";
import { Picture } from "../../draw/picture";
import { Say } from "../../locale/say";
import { worded } from "../../locale/worded";
import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import type { Poured } from "../../types";
import { digits } from "../../units";
import { say } from "../say";

const WIDTH = 300;
const ROW = 34;
const BAR = 14;

/** The relative cost: what it is the sum of, and the balls of the house beside it. */
export function Cost({ poured, house }: { poured: Poured; house: Poured[] }) {
  const others = house.filter(({ ball }) => ball !== poured.ball);
  const all = [poured, ...others];
  const says = dearest(all);
  const most = Math.max(...all.map(({ cost_index }) => cost_index));
  return (
    <section aria-label={say("pouring-cost")}>
      <h4>{say("pouring-cost")}</h4>
      <p class="cost-says">
        {say("pouring-this-ball", { index: digits(poured.cost_index, 2) })} {says}
      </p>
      <Wide label={say("pouring-sum")}>
        <table>
          <caption>
            <Say id="pouring-sum-caption" parts={{ index: costIndex }} />
          </caption>
          <thead>
            <tr>
              <th scope="col">{say("pouring-what")}</th>
              <th scope="col">{say("pouring-count")}</th>
              <th scope="col">{say("pouring-each")}</th>
              <th scope="col">{say("pouring-each-cost")}</th>
            </tr>
          </thead>
          <tbody>
            {poured.cost.map(({ what, count, each, cost }) => (
              <tr key={what}>
                <th scope="row">{worded(what)}</th>
                <td>{digits(count, Number.isInteger(count) ? 0 : 2)}</td>
                <td>{digits(each, 2)}</td>
                <td>{digits(cost, 2)}</td>
              </tr>
            ))}
            <tr class="cost-all">
              <th scope="row">{say("pouring-all")}</th>
              <td />
              <td />
              <td>{digits(poured.cost_index, 2)}</td>
            </tr>
          </tbody>
        </table>
      </Wide>
      {others.length > 0 && (
        <>
          <Picture
            id="cost-chart"
            class="cost-chart"
            viewBox={`0 0 ${WIDTH} ${all.length * ROW}`}
            title={say("pouring-chart")}
            desc={says}
          >
            <defs>
              {["M0 5L5 0", "M0 0L5 5", "M0 2.5H5", "M2.5 0V5"].map((path, n) => (
                <pattern key={path} id={`cost-${n + 1}`} width="5" height="5" patternUnits="userSpaceOnUse">
                  <path d={path} />
                </pattern>
              ))}
            </defs>
            {all.map((one, at) => {
              let from = 0;
              return (
                <g key={one.ball} transform={`translate(0 ${at * ROW})`}>
                  <text y="13">
                    {say("pouring-bar", { ball: one.ball, index: digits(one.cost_index, 2) })}
                  </text>
                  {one.cost.map(({ what, cost }, n) => {
                    const x = from;
                    const width = (cost / most) * (WIDTH - 2);
                    from += width;
                    return (
                      <rect key={what} class={`cost-${n}`} x={x + 1} y="17" width={width} height={BAR} />
                    );
                  })}
                </g>
              );
            })}
          </Picture>
          <Wide label={say("pouring-every")}>
            <table>
              <caption>
                <Say id="pouring-every-caption" parts={{ index: costIndex }} />
              </caption>
              <thead>
                <tr>
                  <th scope="col">{say("pouring-ball")}</th>
                  {poured.cost.map(({ what }, n) => (
                    <th scope="col" key={what}>
                      <svg class="share-key" viewBox="0 0 16 16" aria-hidden="true">
                        <rect class={`cost-${n}`} width="16" height="16" />
                      </svg>
                      {worded(what)}
                    </th>
                  ))}
                  <th scope="col">{say("pouring-all")}</th>
                </tr>
              </thead>
              <tbody>
                {all.map((one) => (
                  <tr key={one.ball}>
                    <th scope="row">{one.ball}</th>
                    {one.cost.map(({ what, cost }) => (
                      <td key={what}>{digits(cost, 2)}</td>
                    ))}
                    <td>{digits(one.cost_index, 2)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Wide>
        </>
      )}
    </section>
  );
}

const costIndex = (words: ComponentChildren) => <Term word="cost index">{words}</Term>;

/** Which of the balls is the dearest, and what makes it so beside the next. */
function dearest(all: Poured[]): string {
  const [first, second] = all.toSorted((a, b) => b.cost_index - a.cost_index);
  if (!first || !second) return "";
  const more = first.cost
    .map(({ what, count, cost }, n) => {
      const other = second.cost[n];
      return { what, by: cost - (other?.cost ?? 0), count, others: other?.count ?? 0 };
    })
    .filter(({ by }) => by > 0.005)
    .toSorted((a, b) => b.by - a.by);
  const written = (count: number) => digits(count, Number.isInteger(count) ? 0 : 2);
  const why = more.map(({ what, count, others, by }) =>
    say("pouring-more", {
      what: worded(what),
      count: written(count),
      others: written(others),
      by: digits(by, 2),
    }),
  );
  return say("pouring-dearest", {
    first: first.ball,
    index: digits(first.cost_index, 2),
    second: second.ball,
    next: digits(second.cost_index, 2),
    more: why.join("; "),
  });
}
