// Starts the WebAssembly module that ships with the page.
import init, * as bindings from "../pkg/pithball.js";
import address from "../pkg/pithball_bg.wasm";
import type { WasmModule } from "./types";

/** Fetches and starts the module, once, before anything else of it is used. */
export async function startModule(): Promise<WasmModule> {
  await init({ module_or_path: new URL(address, import.meta.url) });
  return bindings as unknown as WasmModule;
}
