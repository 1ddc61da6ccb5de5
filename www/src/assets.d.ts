// Files that the bundler turns into addresses or side effects.
declare module "*.wasm" {
  /** Address relative to the bundle: use with `new URL(address, import.meta.url)`. */
  const address: string;
  export default address;
}
declare module "*.css";
/** The bundled text of `worker.ts` (see `bundle.mjs`). */
declare module "worker:source" {
  const text: string;
  export default text;
}
/** HTML of a note (see `markdown.mjs`). */
declare module "*.md" {
  const html: string;
  export default html;
}
