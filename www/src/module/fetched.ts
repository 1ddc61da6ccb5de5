import more from "../../pkg/more_bg.wasm";
import first from "../../pkg/pithball_bg.wasm";

async function fetched(address: string): Promise<Response> {
  const url = new URL(address, import.meta.url);
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url} answers with ${response.status}`);
  return response;
}

/** The first module, to be compiled while it arrives. */
export const firstModule = (): Promise<Response> => fetched(first);

/** The second module, compiled. */
export async function moreModule(): Promise<WebAssembly.Module> {
  return WebAssembly.compile(await (await fetched(more)).arrayBuffer());
}
