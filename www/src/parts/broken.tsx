import type { NotDone } from "../task";
import { Result } from "./result";
import { say } from "./say";

/** That a worker could not do something, what the browser said, and a button to try again. */
export function Broken({ broken }: { broken: NotDone }) {
  return (
    <div class="working">
      <Result class="says says-wrong" of={broken.why}>
        {say("parts-not-done", { why: broken.why })}
      </Result>
      <button type="button" onClick={broken.again}>
        {say("parts-again")}
      </button>
    </div>
  );
}
