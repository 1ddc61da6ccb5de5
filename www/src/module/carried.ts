// For the page that is one file: the modules travel in it, compressed (see pack.mjs).
import more from "../../pkg/more_bg.wasm";
import first from "../../pkg/pithball_bg.wasm";

async function unpacked(packed: string): Promise<ArrayBuffer> {
  const bytes = Uint8Array.from(atob(packed), (char) => char.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(stream).arrayBuffer();
}

export const firstModule = (): Promise<ArrayBuffer> => unpacked(first);

export async function moreModule(): Promise<WebAssembly.Module> {
  return WebAssembly.compile(await unpacked(more));
}
