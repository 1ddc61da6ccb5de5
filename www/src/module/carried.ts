// For the page that is one file: the module travels in it, compressed (see pack.mjs).
import packed from "../../pkg/pithball_bg.wasm";

/** The module's bytes, unpacked once for the page and its workers. */
export async function moduleBytes(): Promise<ArrayBuffer> {
  const bytes = Uint8Array.from(atob(packed), (char) => char.charCodeAt(0));
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(unpacked).arrayBuffer();
}
