import { Term } from "./parts/term";
import { useStore } from "./store";
import { measure, number, type Quantity } from "./units";
import type { Word } from "./words";

/** The numbers that matter, in view on a phone whichever room is in front. */
export function Strip() {
  const store = useStore();
  const { weighed, roll, ballProblem } = store.derived.value;
  const { entry_angle_deg } = roll.summary;
  return (
    <section class="strip-place" aria-label="The numbers that matter">
      <dl class="strip" data-stale={ballProblem ? "" : undefined}>
        <Item name="Weight" word="weight" value={weighed.weight_lb} quantity="weight" />
        <Item name="RG" word="RG" value={weighed.rg_in.low} quantity="rg" />
        <Item
          name="Diff."
          word="differential"
          spoken="Differential"
          value={weighed.differential_in}
          quantity="rg"
        />
        <Item name="Entry" word="entry angle" spoken="Entry angle" value={entry_angle_deg} quantity="angle" />
      </dl>
    </section>
  );
}

interface ItemProps {
  name: string;
  word: Word;
  spoken?: string;
  value: number | null;
  quantity: Quantity;
}

function Item(props: ItemProps) {
  const { name, word, spoken, value, quantity } = props;
  const units = useStore().view.value.units;
  return (
    <div>
      <dt>
        <Term word={word}>{spoken ? <abbr title={spoken}>{name}</abbr> : name}</Term>
      </dt>
      <dd>
        {value === null ? "gutter" : number(value, quantity, units)}
        {value !== null && <span class="unit">{measure(quantity, units).unit}</span>}
      </dd>
    </div>
  );
}
