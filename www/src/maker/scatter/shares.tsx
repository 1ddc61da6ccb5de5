import { Say } from "../../locale/say";
import { worded } from "../../locale/worded";
import { Column } from "../../parts/column";
import { Result } from "../../parts/result";
import { Term } from "../../parts/term";
import { Wide } from "../../parts/wide";
import { useStore } from "../../store";
import type { Scattered, Share } from "../../types";
import { count, number, reading } from "../../units";
import { say } from "./say";

export const KINDS = ["passed", "seconds", "scrap"] as const;
/** What each is called. */
export const KIND_NAMES = {
  passed: "shares-passed",
  seconds: "shares-seconds",
  scrap: "shares-scrap",
} as const;
const WIDTH = 300;

/** A share with its interval: "98.7 % (98.4 to 98.9 %)". */
export function shareSays({ share, wilson_95 }: Share): string {
  const [low = "", high = ""] = wilson_95.map((end) => number(end, "share", "trade"));
  return say("shares-share", { share: reading(share, "share", "trade"), low, high });
}

/** How many pass, in words first. */
export function sharesSay({ passed, seconds, scrap, balls }: Scattered): string {
  const kind = ({ count, share }: Share) =>
    count === 0 ? say("shares-none") : reading(share, "share", "trade");
  return say("shares-say", {
    balls: count(balls),
    passed: shareSays(passed),
    seconds: kind(seconds),
    scrap: kind(scrap),
  });
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
  const ends = ([from, to]: [number, number]) =>
    say("maker-range", { from: number(from, "share", units, 1), to: number(to, "share", units, 1) });
  return (
    <section aria-label={say("shares-title")}>
      <Result class="why-says" of={scattered}>
        {sharesSay(scattered)}
      </Result>
      <ShareBar scattered={scattered} />
      <Wide label={say("shares-table")}>
        <table>
          <caption>
            <Say
              id="shares-caption"
              args={{ seed: String(scattered.seed) }}
              parts={{ interval: () => <Term word="95 % interval" /> }}
            />
          </caption>
          <thead>
            <tr>
              <th scope="col">{say("shares-becomes")}</th>
              <Column word="scrap" name={say("shares-balls")} />
              <th scope="col">
                <Term word="scrap">%</Term>
              </th>
              <th scope="col">
                <Say
                  id="shares-of-samples"
                  parts={{ interval: (words) => <Term word="95 % interval">{words}</Term> }}
                />
              </th>
            </tr>
          </thead>
          <tbody>
            {KINDS.map((kind) => {
              const { count: many, share, wilson_95 } = scattered[kind];
              return (
                <tr key={kind}>
                  <th scope="row">
                    <svg class="share-key" viewBox="0 0 16 16" aria-hidden="true">
                      <rect class={`share-${kind}`} width="16" height="16" />
                    </svg>
                    {say(KIND_NAMES[kind])}
                  </th>
                  <td>{count(many)}</td>
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
          {scattered.reasons.map((one) => (
            <li key={one.reason}>
              {say(one.makes === "second" ? "shares-become-seconds" : "shares-become-scrap", {
                balls: count(one.count),
                reason: worded(one.name),
              })}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
