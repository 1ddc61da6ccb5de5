// What the site and the one-file page share: how esbuild makes the page of its sources.
import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { lessonFiles } from "./lesson-files.mjs";
import { localeFiles } from "./locale-files.mjs";
import { markdown } from "./markdown.mjs";
import { workerSource } from "./worker-source.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const source = (path) => join(here, "src", path);

/** `module:wasm` is how the page comes by its WebAssembly modules: fetched, or carried along. */
const wasmModules = (carried) => ({
  name: "wasm-modules",
  setup(page) {
    const path = source(carried ? "module/carried.ts" : "module/fetched.ts");
    page.onResolve({ filter: /^module:wasm$/ }, () => ({ path }));
  },
});

/** Options for esbuild; `carried` for the page that has everything inside itself. */
export const pageBuild = ({ carried, ...rest }) => ({
  entryPoints: [source("main.tsx")],
  plugins: [wasmModules(carried), workerSource, lessonFiles, localeFiles, markdown],
  bundle: true,
  format: "esm",
  target: "es2022",
  minify: true,
  jsx: "automatic",
  jsxImportSource: "preact",
  entryNames: "assets/[name]-[hash]",
  assetNames: "assets/[name]-[hash]",
  chunkNames: "assets/[name]-[hash]",
  loader: {
    ".woff2": "file",
    ".svg": "file",
    ".json": "json",
    ".wasm": "file",
    ".txt": "text",
    ".ftl": "text",
  },
  define: { VERSION: JSON.stringify(process.env.PITHBALL_VERSION ?? "development") },
  legalComments: "none",
  logLevel: "warning",
  ...rest,
});

/** index.html with its two addresses replaced; each must be there. */
export function indexHtml(replaced) {
  let html = readFileSync(join(here, "index.html"), "utf8");
  for (const [old, now] of replaced) {
    if (!html.includes(old)) throw new Error(`index.html no longer has ${old}`);
    html = html.replace(old, () => now);
  }
  return html;
}

export const STYLE = '<link rel="stylesheet" href="main.css" />';
export const SCRIPT = '<script type="module" src="main.js"></script>';

export const sha256 = (data, form) => createHash("sha256").update(data).digest(form);
