// Files that the bundler turns into addresses or side effects.
declare module "*.wasm" {
  /**
   * In the site the address relative to the bundle, for `new URL(address, import.meta.url)`;
   * in the one-file page the module itself, gzip in base64.
   */
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
declare module "*.ftl" {
  const text: string;
  export default text;
}
/** All of locales/es (see `locale-files.mjs`). */
declare module "locales:es" {
  export const TEXTS: string[];
}
declare module "*.txt" {
  const text: string;
  export default text;
}
/** The lessons of scenarios/lessons, and the files they may name by path (see `lesson-files.mjs`). */
declare module "lessons:files" {
  export const LESSONS: string[];
  export const FILES: Record<string, unknown>;
}
/** The same lessons in Spanish, in the same order. */
declare module "lessons:es" {
  export const LESSONS: string[];
}
/** `module/fetched.ts`, or in the one-file page `module/carried.ts` (see `page-build.mjs`). */
declare module "module:wasm" {
  /** The first module, as its bindings take it. */
  export function firstModule(): Promise<Response | ArrayBuffer>;
  /** The second module, compiled. */
  export function moreModule(): Promise<WebAssembly.Module>;
}
/** Edition of the page, stamped when it is built. */
declare const VERSION: string;
