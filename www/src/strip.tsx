import { say } from "./frame";
import { Term } from "./parts/term";
import { useStore } from "./store";
import { measure, number, type Quantity } from "./units";
import type { Word } from "./words";

/** The numbers that matter, in view on a phone whichever room is in front; `away` they leave their place empty. */
export function Strip({ away }: { away: boolean }) {
  const store = useStore();
  const { weighed, roll, ballProblem } = store.derived.value;
  const { entry_angle_deg } = roll.summary;
  return (
    <section class="strip-place" data-away={away || undefined} aria-label={say("strip-label")}>
      <dl class="strip" data-stale={ballProblem ? "" : undefined}>
        <Item name={say("strip-weight")} word="weight" value={weighed.weight_lb} quantity="weight" />
        <Item name={say("strip-rg")} word="RG" value={weighed.rg_in.low} quantity="rg" />
        <Item
          name={say("strip-differential")}
          word="differential"
          spoken={say("strip-differential-whole")}
          value={weighed.differential_in}
          quantity="rg"
        />
        <Item
          name={say("strip-entry")}
          word="entry angle"
          spoken={say("strip-entry-whole")}
          value={entry_angle_deg}
          quantity="angle"
        />
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
        {value === null ? say("strip-gutter") : number(value, quantity, units)}
        {value !== null && <span class="unit">{measure(quantity, units).unit}</span>}
      </dd>
    </div>
  );
}
