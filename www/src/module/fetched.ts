import address from "../../pkg/pithball_bg.wasm";

/** The module's bytes, fetched once for the page and its workers. */
export async function moduleBytes(): Promise<ArrayBuffer> {
  const url = new URL(address, import.meta.url);
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url} answers with ${response.status}`);
  return response.arrayBuffer();
}
