// Starts the WebAssembly module that ships with the page.
import init from "../pkg/pithball.js";
import address from "../pkg/pithball_bg.wasm";

/** Fetches and starts the module, once, before anything else of it is used. */
export async function startModule(): Promise<void> {
  await init({ module_or_path: new URL(address, import.meta.url) });
}
