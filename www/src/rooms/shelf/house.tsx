import { SectionDrawing } from "../../parts/section-drawing";
import { isProblem, useStore } from "../../store";
import type { BallFile } from "../../types";
import { reading } from "../../units";
import { TEMPLATES } from "../bench/templates";
import { measured } from "./measured";

/** The six balls that are always there, each sawn open with its numbers. */
export function House() {
  return (
    <section class="house" aria-labelledby="house-name">
      <h3 id="house-name">From the house</h3>
      <ul class="cards">
        {TEMPLATES.map((ball) => (
          <Card key={ball.name} ball={ball} />
        ))}
      </ul>
    </section>
  );
}

function Card({ ball }: { ball: BallFile }) {
  const store = useStore();
  const units = store.view.value.units;
  const found = measured(store.wasm, ball);
  if (isProblem(found)) return null;
  const { weighed, section } = found;
  return (
    <li class="card">
      <SectionDrawing section={section} diameter_in={ball.diameter_in} />
      <div>
        <h4>{ball.name}</h4>
        <p class="card-numbers">
          {reading(weighed.weight_lb, "weight", units)}, RG {reading(weighed.rg_in.low, "rg", units)},
          differential {reading(weighed.differential_in, "rg", units)}
        </p>
        <button
          type="button"
          aria-label={`Put on the bench: ${ball.name}`}
          onClick={() => {
            store.replace({ ball });
            store.notice.value = `${ball.name} is on the bench. Undo brings back what was there.`;
          }}
        >
          Put on the bench
        </button>
      </div>
    </li>
  );
}
