import { useNews } from "../../aloud";
import { plain } from "../../lessons/said";
import { useStore } from "../../store";
import type { Said } from "../../types";
import { say } from "./say";

/** What the options of a question are called. */
const OPTIONS = "ABCDEFGH";
const letter = (at: number): string => OPTIONS[at] ?? "";
const MOST_HANDS = 999;

/** The same hands with so many more or fewer for one option. */
export function raised(hands: number[], options: number, at: number, by: number): number[] {
  return Array.from({ length: options }, (_, n) => {
    const count = (hands[n] ?? 0) + (n === at ? by : 0);
    return Math.min(MOST_HANDS, Math.max(0, Math.round(count)));
  });
}

/** Which option a key on the keyboard's row of digits, or on its pad, stands for. */
export function optionOf({ code }: KeyboardEvent, options: number): number | null {
  const digit = /^(?:Digit|Numpad)([1-9])$/.exec(code)?.[1];
  const at = Number(digit) - 1;
  return digit !== undefined && at < options ? at : null;
}

interface PollProps {
  options: Said[][];
  hands: number[];
  /** The right one; null while it is not told. */
  right: number | null;
  onHands?(hands: number[]): void;
}

/** Options with hands counted for each. */
export function Poll({ options, hands, right, onHands }: PollProps) {
  const { units } = useStore().view.value;
  const count = (at: number) => hands[at] ?? 0;
  const all = options.reduce((sum, _, at) => sum + count(at), 0);
  const most = Math.max(1, ...options.map((_, at) => count(at)));
  const counted = options.map((_, at) => say("coach-letter", { letter: letter(at), hands: count(at) }));
  useNews(all, say("coach-now", { hands: counted.join(", ") }));
  const change = (at: number, by: number) => onHands?.(raised(hands, options.length, at, by));
  return (
    <>
      <ol class="coach-poll">
        {options.map((option, at) => (
          <li key={at} data-right={at === right || undefined}>
            <span class="coach-letter" aria-hidden="true">
              {letter(at)}
            </span>
            <span class="coach-option">
              {plain(option, units)}
              {at === right && <strong class="coach-right"> {say("coach-right")}</strong>}
            </span>
            {onHands && (
              <span class="coach-hands">
                <button
                  type="button"
                  aria-label={say("coach-fewer", { letter: letter(at) })}
                  disabled={count(at) === 0}
                  onClick={() => change(at, -1)}
                >
                  −
                </button>
                <input
                  type="text"
                  inputmode="numeric"
                  autocomplete="off"
                  data-hands
                  aria-label={say("coach-hands", { letter: letter(at) })}
                  value={count(at)}
                  onInput={(event) => change(at, (Number(event.currentTarget.value) || 0) - count(at))}
                  onKeyDown={(event) => {
                    const by = { ArrowUp: 1, ArrowDown: -1 }[event.key];
                    if (!by) return;
                    event.preventDefault();
                    event.stopPropagation();
                    change(at, by);
                  }}
                />
                <button
                  type="button"
                  aria-label={say("coach-more", { letter: letter(at) })}
                  onClick={() => change(at, 1)}
                >
                  +
                </button>
              </span>
            )}
            {!onHands && all > 0 && (
              <span class="coach-counted">{say("coach-counted", { hands: count(at) })}</span>
            )}
            {(onHands || all > 0) && (
              <meter
                class="coach-bar"
                min={0}
                max={most}
                value={count(at)}
                aria-label={say("coach-hands", { letter: letter(at) })}
              />
            )}
          </li>
        ))}
      </ol>
      {right !== null && all > 0 && <p class="coach-sum">{say("coach-sum", { right: count(right), all })}</p>}
    </>
  );
}
