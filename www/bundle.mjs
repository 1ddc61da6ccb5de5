// Bundles the page into a folder of static files with relative addresses only.
// Usage: node bundle.mjs OUT
import { cpSync, mkdirSync, rmSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { markdown } from "./markdown.mjs";
import { workerSource } from "./worker-source.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const out = resolve(process.argv[2] ?? join(here, "..", "dist"));

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });

await build({
  entryPoints: [join(here, "src", "main.tsx")],
  plugins: [workerSource, markdown],
  outdir: out,
  bundle: true,
  format: "esm",
  splitting: true,
  target: "es2022",
  minify: true,
  sourcemap: true,
  jsx: "automatic",
  jsxImportSource: "preact",
  assetNames: "assets/[name]-[hash]",
  chunkNames: "assets/[name]-[hash]",
  loader: { ".wasm": "file", ".woff2": "file", ".svg": "file", ".json": "json" },
  legalComments: "none",
  logLevel: "warning",
});

cpSync(join(here, "index.html"), join(out, "index.html"));
