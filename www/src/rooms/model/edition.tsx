import licences from "../../../pkg/licences.txt";
import { type Standing, standing } from "../../offline/offline";
import { say } from "./say";

const KEPT: Record<Standing, string> = {
  file: "model-file",
  keeping: "model-keeping",
  kept: "model-kept",
  "not here": "model-not-kept",
};

/** Which edition of the page this is, and whose work it carries. */
export function Edition() {
  return (
    <details class="model-edition">
      <summary>{say("model-edition")}</summary>
      <p>
        {say("model-version", { version: VERSION })} {say(KEPT[standing.value])}
      </p>
      <pre lang="en" dir="ltr">
        {licences}
      </pre>
    </details>
  );
}
