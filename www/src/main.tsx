import "./styles.css";
import { render } from "preact";
import { startModule } from "./wasm.ts";

const root = document.getElementById("page");
if (root) {
  await startModule();
  render(<h1>Pithball</h1>, root);
}
