import { Swatch } from "../../parts/swatch";
import { useStore } from "../../store";
import { partNames } from "./parts";
import { say } from "./say";

/** The parts of the ball: choose one to learn about it, or take it out of the picture. */
export function PartList({ onPick }: { onPick(part: number | null): void }) {
  const store = useStore();
  const { hidden, selected, markers } = store.view.value;
  const derived = store.derived.value;
  const names = partNames(derived);
  return (
    <fieldset class="saw-parts">
      <legend>{say("saw-parts")}</legend>
      <ul>
        {names.map((name, part) => {
          const shown = !hidden.includes(part);
          return (
            <li key={part}>
              <button
                type="button"
                class="saw-part"
                aria-pressed={selected === part}
                onClick={() => onPick(selected === part ? null : part)}
              >
                <Swatch part={part} />
                <span>
                  {part + 1} {name}
                </span>
              </button>
              <label class="saw-part-shown">
                <input
                  type="checkbox"
                  checked={shown}
                  aria-label={say("saw-show-part", { part: name })}
                  onChange={() =>
                    store.look({
                      hidden: shown ? [...hidden, part] : hidden.filter((other) => other !== part),
                    })
                  }
                />
                {say("saw-shown")}
              </label>
            </li>
          );
        })}
      </ul>
      <label class="markers">
        <input type="checkbox" checked={markers} onChange={() => store.look({ markers: !markers })} />
        {say(derived.drilled ? "saw-marks-drilled" : "saw-marks")}
      </label>
    </fieldset>
  );
}
