import licences from "../../../pkg/licences.txt";
import { type Standing, standing } from "../../offline/offline";

const KEPT: Record<Standing, string> = {
  file: "This is the page as one file: it needs no network.",
  keeping: "This browser is about to keep the page for when there is no network.",
  kept: "This browser keeps the page: it opens without network.",
  "not here": "This browser does not keep the page: without network it does not open again.",
};

/** Which edition of the page this is, and whose work it carries. */
export function Edition() {
  return (
    <details class="model-edition">
      <summary>Edition and licences</summary>
      <p>
        Pithball {VERSION}. {KEPT[standing.value]}
      </p>
      <pre>{licences}</pre>
    </details>
  );
}
