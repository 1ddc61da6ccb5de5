import { useState } from "preact/hooks";
import { useStore } from "../../store";
import { EXAMPLES } from "./examples";

/** Shots to start from, thrown with the ball on the bench or with their own. */
export function ExampleShots() {
  const store = useStore();
  const [chosen, setChosen] = useState(0);
  const example = EXAMPLES[chosen];
  if (!example) return null;
  return (
    <fieldset class="example-shots">
      <legend>Example shots</legend>
      <select
        aria-label="Example shot"
        value={chosen}
        onChange={(event) => setChosen(Number(event.currentTarget.value))}
      >
        {EXAMPLES.map((one, i) => (
          <option key={one.name} value={i}>
            {one.name}
          </option>
        ))}
      </select>
      <p>{example.note}</p>
      <div class="choices">
        <button type="button" onClick={() => store.editShot(() => example.shot)}>
          Throw it with my ball
        </button>
        <button type="button" onClick={() => store.replace({ shot: example.shot, ball: example.ball })}>
          With its own: {example.ball.name}
        </button>
      </div>
    </fieldset>
  );
}
