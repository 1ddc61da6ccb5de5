import type { ComponentChildren } from "preact";
import { NumberField } from "../../../parts/field";
import { Term } from "../../../parts/term";
import { useStore } from "../../../store";
import type { OilPattern, Problem } from "../../../types";
import type { Quantity } from "../../../units";
import { oiled, ownOf } from "./presets";

interface Row {
  key: keyof OilPattern;
  label: ComponentChildren;
  quantity: Quantity;
  min: number;
  max: number;
  step: number;
}

const ROWS: Row[] = [
  { key: "length_ft", label: "Length", quantity: "distance", min: 20, max: 60, step: 0.5 },
  { key: "volume_ml", label: "Volume", quantity: "oil", min: 0, max: 40, step: 0.5 },
  {
    key: "ratio",
    label: <Term word="oil ratio">Inside to outside</Term>,
    quantity: "ratio",
    min: 1,
    max: 40,
    step: 0.5,
  },
  { key: "thin_to_board", label: "Thin out to board", quantity: "board", min: 7, max: 17, step: 0.5 },
  { key: "full_from_board", label: "Full from board", quantity: "board", min: 7.5, max: 18, step: 0.5 },
  { key: "front_ft", label: "Full as far as", quantity: "distance", min: 0, max: 40, step: 0.5 },
  {
    key: "end_share",
    label: <Term word="taper">Left at the end</Term>,
    quantity: "share",
    min: 0,
    max: 1,
    step: 0.01,
  },
  { key: "buff_ft", label: "Brushed out over", quantity: "distance", min: 0, max: 20, step: 0.5 },
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
        The <Term word="oil pattern">pattern</Term> in numbers
      </legend>
      {ROWS.map(({ key, ...row }) => (
        <NumberField
          {...row}
          key={key}
          value={pattern[key]}
          problem={problem?.place === `lane.oil.pattern.${key}` ? problem : null}
          onChange={(value) => set(key, value)}
        />
      ))}
      <p class="hint">
        Boards from either edge: thin up to the first, then more and more, full from the second to the middle.
        Down the lane: full at first, then less and less to what is left, and brushed out to nothing. That
        form is a model choice.
      </p>
    </fieldset>
  );
}
