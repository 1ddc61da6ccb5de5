import { NumberField } from "../../../parts/field";
import { SayTerms } from "../../../parts/say-terms";
import { useStore } from "../../../store";
import type { OilPattern, Problem } from "../../../types";
import type { Quantity } from "../../../units";
import type { Word } from "../../../words";
import { oiled, ownOf } from "./presets";
import { say } from "./say";

interface Row {
  key: keyof OilPattern;
  /** Its text, and the word of the trade in it. */
  name: string;
  terms?: Record<string, Word>;
  quantity: Quantity;
  min: number;
  max: number;
  step: number;
}

const ROWS: Row[] = [
  { key: "length_ft", name: "oil-pattern-length", quantity: "distance", min: 20, max: 60, step: 0.5 },
  { key: "volume_ml", name: "oil-pattern-volume", quantity: "oil", min: 0, max: 40, step: 0.5 },
  {
    key: "ratio",
    name: "oil-pattern-ratio",
    terms: { ratio: "oil ratio" },
    quantity: "ratio",
    min: 1,
    max: 40,
    step: 0.5,
  },
  { key: "thin_to_board", name: "oil-pattern-thin", quantity: "board", min: 7, max: 17, step: 0.5 },
  { key: "full_from_board", name: "oil-pattern-full", quantity: "board", min: 7.5, max: 18, step: 0.5 },
  { key: "front_ft", name: "oil-pattern-front", quantity: "distance", min: 0, max: 40, step: 0.5 },
  {
    key: "end_share",
    name: "oil-pattern-end",
    terms: { taper: "taper" },
    quantity: "share",
    min: 0,
    max: 1,
    step: 0.01,
  },
  { key: "buff_ft", name: "oil-pattern-buff", quantity: "distance", min: 0, max: 20, step: 0.5 },
];

/** An oil pattern in its few numbers, the same on both sides. */
export function PatternFields({ pattern, problem }: { pattern: OilPattern; problem: Problem | null }) {
  const store = useStore();

  function set(key: keyof OilPattern, value: number) {
    store.editShot((old) => {
      if ("zones" in old.lane || typeof old.lane.oil === "string" || !("pattern" in old.lane.oil)) return old;
      const { oil } = old.lane;
      const pattern = { ...oil.pattern, [key]: value };
      return { ...old, lane: oiled(old.lane, { ...ownOf(oil), pattern }) };
    }, `oil.${key}`);
  }

  return (
    <fieldset class="oil-pattern">
      <legend>
        <SayTerms id="oil-pattern" terms={{ pattern: "oil pattern" }} />
      </legend>
      {ROWS.map(({ key, name, terms, ...row }) => (
        <NumberField
          {...row}
          key={key}
          label={<SayTerms id={name} terms={terms ?? {}} />}
          value={pattern[key]}
          problem={problem?.place === `lane.oil.pattern.${key}` ? problem : null}
          onChange={(value) => set(key, value)}
        />
      ))}
      <p class="hint">{say("oil-pattern-says")}</p>
    </fieldset>
  );
}
