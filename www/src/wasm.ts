// Starts the WebAssembly module that ships with the page.
import init, * as bindings from "../pkg/pithball.js";
import address from "../pkg/pithball_bg.wasm";
import type { WasmModule } from "./types";

/** The module's bytes, fetched once for the page and its workers. */
export async function moduleBytes(): Promise<ArrayBuffer> {
  const url = new URL(address, import.meta.url);
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url} answers with ${response.status}`);
  return response.arrayBuffer();
}

/** Starts the module, once, before anything else of it is used. */
export async function startModule(bytes: ArrayBuffer): Promise<WasmModule> {
  await init({ module_or_path: bytes });
  return bindings as unknown as WasmModule;
}
