import { useState } from "preact/hooks";
import { offered, offeredBall, offeredShot } from "../../locale/names";
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
            {offered("shot", one.name)}
          </option>
        ))}
      </select>
      <p>{offered("note", example.note)}</p>
      <div class="choices">
        <button type="button" onClick={() => store.editShot(() => offeredShot(example.shot))}>
          {say("lane-throw-with-mine")}
        </button>
        <button
          type="button"
          onClick={() => store.replace({ shot: offeredShot(example.shot), ball: offeredBall(example.ball) })}
        >
          {say("lane-throw-with-its-own", { ball: offered("ball", example.ball.name) })}
        </button>
      </div>
    </fieldset>
  );
}
