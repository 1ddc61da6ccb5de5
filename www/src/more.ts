// The second WebAssembly module on the page's own side: lessons. What uses it comes
// by `later`, once `startMore` is through.

import init, * as bindings from "../pkg/more.js";
import { moreModule } from "./more-module";
import type { MoreModule } from "./types";

export const more = bindings as unknown as MoreModule;

/** Starts the module, before anything of it is used. */
export async function startMore(): Promise<void> {
  await init({ module_or_path: await moreModule() });
}
