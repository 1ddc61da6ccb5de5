// Bundles the page into a folder of static files with relative addresses only.
// Usage: node bundle.mjs OUT
import { copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { indexHtml, pageBuild, SCRIPT, STYLE, sha256 } from "./page-build.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const out = resolve(process.argv[2] ?? join(here, "..", "dist"));

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });

const site = { carried: false, outdir: out, metafile: true };
// Rooms come in files of their own, which esbuild would give styles that nothing
// asks for: the styles are those of the page bundled as one.
const [code, styled] = await Promise.all([
  build(
    pageBuild({
      ...site,
      splitting: true,
      sourcemap: true,
      loader: { ...pageBuild(site).loader, ".css": "empty" },
    }),
  ),
  build(pageBuild({ ...site, write: false })),
]);
for (const { path, contents } of styled.outputFiles) {
  if (path.endsWith(".js")) continue;
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, contents);
}

/** Below `out`, with slashes. */
const address = (path) => relative(out, resolve(path)).replaceAll("\\", "/");
const written = new Map();
for (const [path, { entryPoint }] of [
  ...Object.entries(code.metafile.outputs),
  ...Object.entries(styled.metafile.outputs).filter(([path]) => !path.endsWith(".js")),
]) {
  written.set(address(path), entryPoint);
}
/** The one file of which this holds. */
function only(holds) {
  const found = [...written].filter(holds);
  if (found.length !== 1) throw new Error(`one file was expected, not ${found.length}: ${found}`);
  return found[0][0];
}
const script = only(([path, from]) => from?.endsWith("main.tsx") && path.endsWith(".js"));
const style = only(([path]) => path.endsWith(".css"));
const module = only(([path]) => /pithball_bg-[^/]*\.wasm$/.test(path));

/** What the page's script cannot begin without, asked for at once and not one after the other. */
const needed = Object.entries(code.metafile.outputs)
  .find(([path]) => address(path) === script)[1]
  .imports.filter(({ kind }) => kind === "import-statement")
  .map(({ path }) => address(path));
const head = [
  `<link rel="preload" href="${module}" as="fetch" crossorigin />`,
  ...needed.map((path) => `<link rel="modulepreload" href="${path}" />`),
  `<script type="module" src="${script}"></script>`,
];

const html = indexHtml([
  [STYLE, `<link rel="stylesheet" href="${style}" />`],
  [SCRIPT, head.join("\n    ")],
]);
writeFileSync(join(out, "index.html"), html);
copyFileSync(join(here, "pkg", "licences.txt"), join(out, "licences.txt"));

// What a visitor's browser keeps for when there is no network: the page with all its rooms.
const precache = [
  { url: "index.html", revision: sha256(html, "hex") },
  ...[...written.keys()]
    .filter((path) => !path.endsWith(".map"))
    .sort()
    .map((url) => ({ url, revision: null })),
];
await build({
  entryPoints: [join(here, "src", "offline", "service-worker.ts")],
  outfile: join(out, "service-worker.js"),
  bundle: true,
  format: "iife",
  target: "es2022",
  minify: true,
  define: { PRECACHE: JSON.stringify(precache), "process.env.NODE_ENV": '"production"' },
  logLevel: "warning",
});
for (const { url } of precache) readFileSync(join(out, url));
