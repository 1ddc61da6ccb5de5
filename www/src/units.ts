// Files are in the trade's units. A quantity knows how it reads in the trade's
// units and in metric ones; values pass through here on the way to the reader
// and back.

import units from "../locales/en/units.ftl";
import { isRightToLeft } from "./locale/language";
import { phrases } from "./locale/say";
import { marked, type Phrase, translatedPhrase } from "./locale/worded";
import type { Units } from "./store";

const say = phrases(units);

export type Quantity =
  | "size" // inches
  | "rg" // inches, three decimals
  | "cover" // thickness of cover and of what stands beside holes: inches, three decimals
  | "weight" // pounds
  | "imbalance" // ounces
  | "density" // g/cc
  | "volume" // cc
  | "oil" // mL
  | "film" // micrometres
  | "roughness" // microinches
  | "grit"
  | "count"
  | "angle" // degrees
  | "speed" // mph
  | "distance" // feet
  | "revs" // rev/min
  | "bend" // degrees a foot
  | "time" // seconds
  | "board"
  | "friction"
  | "ratio"
  | "share"
  | "percent";

interface Measure {
  unit: string;
  /** As a screen reader should say it; in the table the name of its text. */
  spoken: string;
  /** Times the file's number gives this one. */
  factor: number;
  decimals: number;
}

const same = (unit: string, spoken: string, decimals: number): [Measure] => [
  { unit, spoken, factor: 1, decimals },
];

/** Kilograms in a pound, exactly. */
export const LB_KG = 0.45359237;

/** Trade first, then metric where it differs. 1 in = 25.4 mm, 1 lb = 0.45359237 kg. */
const MEASURES: Record<Quantity, [Measure, Measure?]> = {
  size: [
    { unit: "in", spoken: "unit-inches", factor: 1, decimals: 2 },
    { unit: "mm", spoken: "unit-millimetres", factor: 25.4, decimals: 1 },
  ],
  rg: [
    { unit: "in", spoken: "unit-inches", factor: 1, decimals: 3 },
    { unit: "mm", spoken: "unit-millimetres", factor: 25.4, decimals: 2 },
  ],
  cover: [
    { unit: "in", spoken: "unit-inches", factor: 1, decimals: 3 },
    { unit: "mm", spoken: "unit-millimetres", factor: 25.4, decimals: 2 },
  ],
  weight: [
    { unit: "lb", spoken: "unit-pounds", factor: 1, decimals: 2 },
    { unit: "kg", spoken: "unit-kilograms", factor: LB_KG, decimals: 3 },
  ],
  imbalance: [
    { unit: "oz", spoken: "unit-ounces", factor: 1, decimals: 2 },
    { unit: "g", spoken: "unit-grams", factor: 28.349523125, decimals: 1 },
  ],
  density: same("g/cc", "unit-grams-per-cc", 2),
  volume: same("cc", "unit-cubic-centimetres", 0),
  oil: same("mL", "unit-millilitres", 1),
  film: same("µm", "unit-micrometres", 2),
  roughness: [
    { unit: "µin", spoken: "unit-microinches", factor: 1, decimals: 0 },
    { unit: "µm", spoken: "unit-micrometres", factor: 0.0254, decimals: 2 },
  ],
  grit: same("unit-grit", "unit-grit", 0),
  count: same("", "", 0),
  angle: same("°", "unit-degrees", 1),
  speed: [
    { unit: "mph", spoken: "unit-miles-an-hour", factor: 1, decimals: 1 },
    { unit: "km/h", spoken: "unit-kilometres-an-hour", factor: 1.609344, decimals: 1 },
  ],
  distance: [
    { unit: "ft", spoken: "unit-feet", factor: 1, decimals: 1 },
    { unit: "m", spoken: "unit-metres", factor: 0.3048, decimals: 2 },
  ],
  revs: same("rpm", "unit-turns-a-minute", 0),
  bend: [
    { unit: "°/ft", spoken: "unit-degrees-a-foot", factor: 1, decimals: 2 },
    { unit: "°/m", spoken: "unit-degrees-a-metre", factor: 1 / 0.3048, decimals: 2 },
  ],
  time: same("s", "unit-seconds", 2),
  board: same("", "", 1),
  friction: same("", "", 3),
  ratio: same("", "", 2),
  share: [{ unit: "%", spoken: "unit-percent", factor: 100, decimals: 1 }],
  percent: same("%", "unit-percent", 2),
};

export function measure(quantity: Quantity, units: Units): Measure {
  const [trade, metric] = MEASURES[quantity];
  const found = units === "metric" && metric ? metric : trade;
  const text = (id: string) => (id.startsWith("unit-") ? say(id) : id);
  return { ...found, unit: text(found.unit), spoken: text(found.spoken) };
}

/** A number written with a point, as it is read in the page's language. */
export const written = (number: string): string => number.replace(".", say("decimal-mark"));

/** A count, its thousands apart: 10,000. */
export const count = (many: number): string =>
  String(many).replace(/\B(?=(\d{3})+$)/g, say("thousands-mark"));

/** Sign, digits and unit stay in their order in a text from right to left. */
const together = (text: string): string => (isRightToLeft() ? `\u2066${text}\u2069` : text);

function plain(value: number, decimals: number): string {
  const text = written(Math.abs(value).toFixed(decimals));
  return value < 0 && /[1-9]/.test(text) ? `\u2212${text}` : text;
}

function plainIn(value: number, { factor, decimals }: Measure, more: number): string {
  return plain(value * factor, decimals + more);
}

/** A number as read on the page, without its unit; a true minus sign, no "-0". */
export const digits = (value: number, decimals: number): string => together(plain(value, decimals));

/** The value in the reader's units, without the unit; with `more` decimals where little things count. */
export function number(value: number, quantity: Quantity, units: Units, more = 0): string {
  return together(plainIn(value, measure(quantity, units), more));
}

/** The value and its unit, as in "2.50 in". */
export function reading(value: number, quantity: Quantity, units: Units, more = 0): string {
  const m = measure(quantity, units);
  const space = ["", "°", "%"].includes(m.unit) ? "" : "\u00a0";
  return together(plainIn(value, m, more) + space + m.unit);
}

/** From one value to another by the digits that are read of each, so that what is said of both fits what is seen. */
export function apart(from: number, to: number, quantity: Quantity, units: Units): number {
  const { factor, decimals } = measure(quantity, units);
  const read = (value: number) => Number((value * factor).toFixed(decimals));
  return Number((read(to) - read(from)).toFixed(decimals)) / factor;
}

/** A change with its sign; null where it rounds to nothing. */
export function change(value: number, quantity: Quantity, units: Units, more = 0): string | null {
  const text = plainIn(value, measure(quantity, units), more);
  if (!/[1-9]/.test(text)) return null;
  return together(value > 0 ? `+${text}` : text);
}

/** What stands in a field: all digits that matter, none that only rounding made. */
export function fieldText(value: number, quantity: Quantity, units: Units): string {
  const { factor } = measure(quantity, units);
  return written(String(Number((value * factor).toFixed(4))));
}

/** A count with its thousands apart, as any language writes it. */
const THOUSANDS = /^\d{1,3}([.,\s]\d{3})+$/;

/** What a typed text means in the file's unit, with a point or a comma before the decimals; null where it is not a number. */
export function parseField(text: string, quantity: Quantity, units: Units): number | null {
  const typed = text.trim();
  if (quantity === "count" && THOUSANDS.test(typed)) return Number(typed.replace(/\D/g, ""));
  const tidy = typed.replace("\u2212", "-").replace(",", ".");
  if (!/^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(tidy)) return null;
  const value = Number(tidy);
  return Number.isFinite(value) ? value / measure(quantity, units).factor : null;
}

/** What the module's units are of. */
export const QUANTITY_OF = {
  lb: "weight",
  in: "rg",
  oz: "imbalance",
  "g/cc": "density",
  "%": "percent",
  deg: "angle",
  "×": "ratio",
} as const satisfies Record<string, Quantity>;

/** Units as the module's sentences write them, short and long, and the long metric one. */
const IN_SENTENCES: [string, string, Quantity, string][] = [
  ["in", "unit-inches", "size", "unit-millimetres"],
  ["lb", "unit-pounds", "weight", "unit-kilograms"],
  ["oz", "unit-ounces", "imbalance", "unit-grams"],
  ["ft", "unit-feet", "distance", "unit-metres"],
  ["mph", "unit-miles-per-hour", "speed", "unit-kilometres-per-hour"],
];
const NUMBER = String.raw`[\u2212-]?\d+(?:\.\d+)?(?:e[+-]?\d+)?`;

/** A sentence of the module, which speaks the file's units, in the reader's language and units; names in quotes stay. */
export function sentenceIn(phrase: Phrase, units: Units): string {
  return inUnits(phrase, units, converted);
}

/** A sentence whose numbers are rounded already: in other units they are hardly finer than they were. */
export function roughlyIn(phrase: Phrase, units: Units): string {
  return inUnits(phrase, units, hardlyFiner);
}

function inUnits(phrase: Phrase, units: Units, convert: Converting): string {
  if (typeof phrase === "function") return phrase();
  const sentence = translatedPhrase(phrase);
  const texts = sentence.split(/("[^"]*")/);
  return marked(
    texts.map((text, at) => (at % 2 === 1 ? text : convertedIn(text, sentence, units, convert))).join(""),
  );
}

/** A number of a sentence in another unit, to so many digits at least. */
type Converting = (found: string, factor: number, digits: number) => string;

/** Digits beyond these only rounding made. */
const MOST_DIGITS = 12;
/** A limit that is told can be typed: 40 mph is 64.37376 km/h. */
const LIMIT_DIGITS = 7;

/** With as many digits as it had, if that is more: a limit and what is beyond it do not become the same. */
function converted(found: string, factor: number, digits: number): string {
  const number = found.replace("\u2212", "-");
  const own = number.replace(/e.*|\D/g, "").replace(/^0+/, "").length;
  return String(Number((Number(number) * factor).toPrecision(Math.min(MOST_DIGITS, Math.max(digits, own)))));
}

/** 0.1 ft is 0.03 m. */
function hardlyFiner(found: string, factor: number, digits: number): string {
  const value = Number(converted(found, factor, digits));
  const decimals = (found.split(".")[1]?.length ?? 0) + 1;
  return String(found.includes("e") ? value : Number(value.toFixed(decimals)));
}

function convertedIn(text: string, sentence: string, units: Units, as: Converting): string {
  let said = text;
  const to = say("range-to");
  for (const [short, longId, quantity, metricId] of IN_SENTENCES) {
    const [long, metricLong] = [say(longId), say(metricId)];
    const { factor, unit } = measure(quantity, units);
    const convert = (numbers: string, digits: number) =>
      numbers.replace(new RegExp(NUMBER, "g"), (found) => as(found, factor, digits));
    // "The diameter (inches) must be above 0, not -1." A count of points is no length.
    if (units === "metric" && sentence.includes(`(${long})`) && !/\b(points|puntos)\b/.test(sentence)) {
      said = convert(said, LIMIT_DIGITS).replace(`(${long})`, `(${metricLong})`);
    }
    said = said.replace(
      new RegExp(`((?:${NUMBER} ${to} )?${NUMBER}) ${short}\\b`, "g"),
      (_, numbers: string) => `${convert(numbers, 4)}\u00a0${unit}`,
    );
  }
  return said;
}
