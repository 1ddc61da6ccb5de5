import type { ShownStep } from "../types";
import { Line } from "./said";
import { say } from "./say";

interface WatchedProps {
  watch: ShownStep["watch"];
  class: string;
  caption?: string;
  /** Only where they stand: at first they were the same. */
  bare?: boolean;
  /** Without words to open, as on paper. */
  still?: boolean;
}

/** Numbers beside what they were as the step opened. */
export function Watched({ watch, class: name, caption, bare, still }: WatchedProps) {
  return (
    <table class={name}>
      {caption && <caption>{caption}</caption>}
      {!bare && (
        <thead>
          <tr>
            <td />
            <th scope="col">{say("lesson-at-first")}</th>
            <th scope="col">{say("lesson-now")}</th>
          </tr>
        </thead>
      )}
      <tbody>
        {watch.map(({ what, start, now }, at) => (
          <tr key={at}>
            <th scope="row">
              <Line said={what} still={still} />
            </th>
            {!bare && (
              <td>
                <Line said={[start]} still={still} />
              </td>
            )}
            <td>
              <Line said={[now]} still={still} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
