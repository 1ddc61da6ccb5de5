// Starts the WebAssembly module that ships with the page.
import init, * as bindings from "../pkg/pithball.js";
import type { WasmModule } from "./types";

/** Starts the module, once, before anything else of it is used. */
export async function startModule(bytes: ArrayBuffer): Promise<WasmModule> {
  await init({ module_or_path: bytes });
  return bindings as unknown as WasmModule;
}
