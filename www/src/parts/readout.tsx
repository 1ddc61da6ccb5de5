import type { ComponentChildren } from "preact";
import { useStore } from "../store";
import { apart, change, digits, measure, number, type Quantity } from "../units";
import { say } from "./say";

/** A range to place a value in, in the file's unit. */
export interface Range {
  /** Ends of the line drawn. */
  from: number;
  to: number;
  /** The published limits; open where there is none. */
  low?: number;
  high?: number;
  /** Where the trade's usual words change, with the names of the words between. */
  bands?: { upTo: number; word: string }[];
}

interface ReadoutProps {
  label: ComponentChildren;
  value: number;
  before?: number | null;
  quantity: Quantity;
  range?: Range;
  children?: ComponentChildren;
}

/** A number as a good instrument shows it: value large, unit small, change beside it. */
export function Readout({ label, value, before, quantity, range, children }: ReadoutProps) {
  const units = useStore().view.value.units;
  const { unit } = measure(quantity, units);
  const moved = before == null ? null : change(apart(before, value, quantity, units), quantity, units);
  return (
    <div class="readout">
      <div class="readout-label">{label}</div>
      <div class="readout-value">
        <span class="value">{number(value, quantity, units)}</span>
        {unit !== "" && <span class="unit">{unit}</span>}
        {moved !== null && (
          <span class="delta">
            <span class="visually-hidden">{say("numbers-changed-by")} </span>
            {moved}
          </span>
        )}
      </div>
      {range && <PlaceLine value={value} range={range} quantity={quantity} />}
      {children && <div class="readout-says">{children}</div>}
    </div>
  );
}

/** Texts nearer to an end of the line than this share of it begin or end with it. */
const END = 8;

/** Where a value lies: the published limits drawn thick, the trade's bands ticked. Shares of the width, so that letters keep their size. */
export function PlaceLine({ value, range, quantity }: { value: number; range: Range; quantity: Quantity }) {
  const units = useStore().view.value.units;
  const { factor, decimals } = measure(quantity, units);
  const at = (v: number) =>
    ((Math.min(range.to, Math.max(range.from, v)) - range.from) / (range.to - range.from)) * 100;
  const low = at(range.low ?? range.from);
  const high = at(range.high ?? range.to);
  const limited = range.low !== undefined || range.high !== undefined;
  const mark = at(value);
  const out =
    (range.low !== undefined && value < range.low) || (range.high !== undefined && value > range.high);
  let from = range.from;
  const bands = (range.bands ?? []).map((band) => {
    const middle = (at(from) + at(Math.min(band.upTo, range.to))) / 2;
    const start = from;
    from = band.upTo;
    return { ...band, start, middle };
  });
  const here = bands.find((band) => value < band.upTo) ?? bands.at(-1);
  return (
    <svg
      class="place"
      aria-hidden="true"
      data-out={out || undefined}
      data-rows={limited && range.bands ? 2 : undefined}
    >
      <line class="place-line" x2="100%" y1="8" y2="8" />
      {limited && <line class="place-allowed" x1={`${low}%`} x2={`${high}%`} y1="8" y2="8" />}
      {bands.slice(1).map(({ word, start }) => (
        <line key={word} class="place-tick" x1={`${at(start)}%`} x2={`${at(start)}%`} y1="4" y2="12" />
      ))}
      <svg class="place-at" x={`${mark}%`} aria-hidden="true">
        <path class="place-mark" d="M0 8l-5 -8h10z" />
      </svg>
      {range.low !== undefined && (
        <text class="place-text" x={`${low}%`} text-anchor={low < END ? "start" : "middle"}>
          {digits(range.low * factor, decimals)}
        </text>
      )}
      {range.high !== undefined && (
        <text class="place-text" x={`${high}%`} text-anchor={high > 100 - END ? "end" : "middle"}>
          {digits(range.high * factor, decimals)}
        </text>
      )}
      {bands.map((band) => (
        <text
          key={band.word}
          class="place-band"
          data-here={band === here || undefined}
          x={`${band.middle}%`}
          text-anchor="middle"
        >
          {say(band.word)}
        </text>
      ))}
    </svg>
  );
}
