import { useState } from "preact/hooks";
import { ownProblem } from "../own-problem";
import { useStore } from "../store";
import { measure, number } from "../units";
import { type FieldProps, NumberField } from "./field";
import { say } from "./say";

interface BoundedFieldProps extends Omit<FieldProps, "problem"> {
  /** What is accepted, where it is more than the slider spans. */
  least?: number;
  most?: number;
}

/** A number of the page's own that no file judges: what lies outside is told and not used. */
export function BoundedField({ least, most, onChange, ...field }: BoundedFieldProps) {
  const units = useStore().view.value.units;
  const [outside, setOutside] = useState(false);
  const low = least ?? field.min;
  const high = most ?? field.max;
  const [from = "", to = ""] = [low, high].map((end) => number(end, field.quantity, units));
  const { spoken } = measure(field.quantity, units);
  return (
    <NumberField
      {...field}
      problem={outside ? ownProblem(() => say("parts-only", { low: from, high: to, unit: spoken })) : null}
      onChange={(value) => {
        const inside = value >= low && value <= high;
        setOutside(!inside);
        if (inside) onChange(value);
      }}
    />
  );
}
