import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import { useStore } from "../../store";
import type { Scattered, Share } from "../../types";
import { number, reading } from "../../units";

export const KINDS = ["passed", "seconds", "scrap"] as const;
const WIDTH = 300;

/** A share with its interval: "98.7 % (98.4 to 98.9 %)". */
export function shareSays({ share, wilson_95 }: Share): string {
  const [low, high] = wilson_95.map((end) => number(end, "share", "trade"));
  return `${reading(share, "share", "trade")} (${low} to ${high}%)`;
}

/** How many pass, in words first. */
export function sharesSay({ passed, seconds, scrap, balls }: Scattered): string {
  const kind = ({ count, share }: Share) => (count === 0 ? "none" : reading(share, "share", "trade"));
  return (
    `Of ${balls.toLocaleString("en")} balls ${shareSays(passed)} pass, ` +
    `${kind(seconds)} would be sold as seconds and ${kind(scrap)} are scrap.`
  );
}

/** Passed, seconds and scrap as one bar; words and table say the same. */
export function ShareBar({ scattered }: { scattered: Scattered }) {
  let from = 0;
  return (
    <svg class="share-bar" viewBox={`0 0 ${WIDTH} 20`} preserveAspectRatio="none" aria-hidden="true">
      <defs>
        <pattern id="share-seconds" width="5" height="5" patternUnits="userSpaceOnUse">
          <path d="M0 5L5 0" />
        </pattern>
      </defs>
      {KINDS.map((kind) => {
        const x = from;
        const width = scattered[kind].share * WIDTH;
        from += width;
        return <rect key={kind} class={`share-${kind}`} x={x} y="1" width={width} height="18" />;
      })}
      <rect class="share-edge" x="0" y="1" width={WIDTH} height="18" />
    </svg>
  );
}

export function Shares({ scattered }: { scattered: Scattered }) {
  const { units } = useStore().view.value;
  const ends = (interval: [number, number]) =>
    interval.map((end) => number(end, "share", units, 1)).join(" to ");
  return (
    <section aria-label="How many pass">
      <p class="why-says" role="status">
        {sharesSay(scattered)}
      </p>
      <ShareBar scattered={scattered} />
      <Wide label="Passed, seconds and scrap">
        <table>
          <caption>
            Seed {scattered.seed}; in brackets above, the <Term word="95 % interval" />
          </caption>
          <thead>
            <tr>
              <th scope="col">What becomes of them</th>
              <th scope="col">
                <Term word="scrap">Balls</Term>
              </th>
              <th scope="col">
                <Term word="scrap">%</Term>
              </th>
              <th scope="col">
                <Term word="95 % interval">95 % of samples</Term>, %
              </th>
            </tr>
          </thead>
          <tbody>
            {KINDS.map((kind) => {
              const { count, share, wilson_95 } = scattered[kind];
              return (
                <tr key={kind}>
                  <th scope="row">
                    <svg class="share-key" viewBox="0 0 16 16" aria-hidden="true">
                      <rect class={`share-${kind}`} width="16" height="16" />
                    </svg>
                    {kind}
                  </th>
                  <td>{count.toLocaleString("en")}</td>
                  <td>{number(share, "share", units, 1)}</td>
                  <td>{ends(wilson_95)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Wide>
      {scattered.reasons.length > 0 && (
        <ul class="plain">
          {scattered.reasons.map(({ makes, reason, name, count }) => (
            <li key={reason}>
              {count.toLocaleString("en")} become {makes === "second" ? "seconds" : "scrap"}: {name}.
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
