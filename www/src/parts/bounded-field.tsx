import { ownProblem } from "../own-problem";
import { useStore } from "../store";
import { count, fieldText, measure, number } from "../units";
import { type FieldProps, NumberField } from "./field";
import { say } from "./say";

interface BoundedFieldProps extends Omit<FieldProps, "problem" | "refuse"> {
  /** What is accepted, where it is more than the slider spans. */
  least?: number;
  most?: number;
}

/** A number of the page's own that no file judges: what lies outside is told and not used. */
export function BoundedField({ least, most, ...field }: BoundedFieldProps) {
  const { quantity } = field;
  const units = useStore().view.value.units;
  const low = least ?? field.min;
  const high = most ?? field.max;
  const { spoken } = measure(quantity, units);
  const whole = quantity === "count";
  const end = (value: number) => (whole ? count(value) : number(value, quantity, units));
  const to = spoken === "" ? end(high) : `${end(high)} ${spoken}`;
  return (
    <NumberField
      {...field}
      refuse={(value) => {
        if (value >= low && value <= high && (!whole || Number.isInteger(value))) return null;
        const still = fieldText(field.value, quantity, units);
        return ownProblem(() =>
          say(whole ? "parts-only-whole" : "parts-only", { low: end(low), high: to, still }),
        );
      }}
    />
  );
}
