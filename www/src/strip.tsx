import { useStore } from "./store";
import { measure, number, type Quantity } from "./units";

/** The numbers that matter, in view on a phone whichever room is in front. */
export function Strip() {
  const store = useStore();
  const { weighed, roll, ballProblem } = store.derived.value;
  const { entry_angle_deg } = roll.summary;
  return (
    <section class="strip-place" aria-label="The numbers that matter">
      <dl class="strip" data-stale={ballProblem ? "" : undefined}>
        <Item name="Weight" value={weighed.weight_lb} quantity="weight" />
        <Item name="RG" value={weighed.rg_in.low} quantity="rg" />
        <Item name="Diff." spoken="Differential" value={weighed.differential_in} quantity="rg" />
        <Item name="Entry" spoken="Entry angle" value={entry_angle_deg} quantity="angle" />
      </dl>
    </section>
  );
}

function Item(props: { name: string; spoken?: string; value: number | null; quantity: Quantity }) {
  const { name, spoken, value, quantity } = props;
  const units = useStore().view.value.units;
  return (
    <div>
      <dt>{spoken ? <abbr title={spoken}>{name}</abbr> : name}</dt>
      <dd>
        {value === null ? "gutter" : number(value, quantity, units)}
        {value !== null && <span class="unit">{measure(quantity, units).unit}</span>}
      </dd>
    </div>
  );
}
