// Starts the WebAssembly module of the first picture and of every edit.

import { firstModule } from "module:wasm";
import init, * as bindings from "../pkg/pithball.js";
import type { WasmModule } from "./types";

/** Starts the module, once, before anything else of it is used. */
export async function startModule(): Promise<WasmModule> {
  await init({ module_or_path: await firstModule() });
  return bindings as unknown as WasmModule;
}
