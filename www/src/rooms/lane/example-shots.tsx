import { useState } from "preact/hooks";
import { useStore } from "../../store";
import { EXAMPLES } from "./examples";
import { say } from "./say";

/** Shots to start from, thrown with the ball on the bench or with their own. */
export function ExampleShots() {
  const store = useStore();
  const [chosen, setChosen] = useState(0);
  const example = EXAMPLES[chosen];
  if (!example) return null;
  return (
    <fieldset class="example-shots">
      <legend>{say("lane-examples")}</legend>
      <select
        aria-label={say("lane-example")}
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
          {say("lane-throw-with-mine")}
        </button>
        <button type="button" onClick={() => store.replace({ shot: example.shot, ball: example.ball })}>
          {say("lane-throw-with-its-own", { ball: example.ball.name })}
        </button>
      </div>
    </fieldset>
  );
}
