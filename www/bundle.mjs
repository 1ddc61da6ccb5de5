// Bundles the page into a folder of static files with relative addresses only.
// Usage: node bundle.mjs OUT
import { cpSync, existsSync, mkdirSync, rmSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const here = dirname(fileURLToPath(import.meta.url));
const out = resolve(process.argv[2] ?? join(here, "..", "dist"));

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });

// The worker is an entry of its own: a page cannot start one from a bundle.
const entries = ["main.tsx", "worker.ts"].map((name) => join(here, "src", name)).filter(existsSync);

await build({
  entryPoints: entries,
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
