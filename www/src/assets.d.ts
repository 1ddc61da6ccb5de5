// Files that the bundler turns into addresses or side effects.
declare module "*.wasm" {
  /** Address relative to the bundle: use with `new URL(address, import.meta.url)`. */
  const address: string;
  export default address;
}
declare module "*.css";
