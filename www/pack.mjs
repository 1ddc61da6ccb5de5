// Packs the page into one file that opens from a disk or a USB stick by itself.
// Usage: node pack.mjs OUT.html
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { indexHtml, pageBuild, SCRIPT, STYLE, sha256 } from "./page-build.mjs";

const here = dirname(fileURLToPath(import.meta.url));
const out = resolve(process.argv[2] ?? join(here, "..", "dist", "pithball.html"));

/** A module compressed, as the text that module/carried.ts unpacks. */
const compressed = {
  name: "compressed-module",
  setup(page) {
    page.onLoad({ filter: /\.wasm$/ }, ({ path }) => ({
      contents: gzipSync(readFileSync(path), { level: 9 }),
      loader: "base64",
    }));
  },
};

const options = pageBuild({ carried: true, outdir: dirname(out), write: false });
const { outputFiles } = await build({
  ...options,
  plugins: [compressed, ...options.plugins],
  loader: { ...options.loader, ".woff2": "dataurl" },
});
const text = (ending) => outputFiles.find(({ path }) => path.endsWith(ending)).text;
// Inside an element a closing tag would end it, and an opening one of a comment hide what follows.
const script = text(".js").replaceAll("</script", "<\\/script").replaceAll("<!--", "<\\!--");
const style = text(".css");
if (style.includes("</style")) throw new Error("the styles would end their element");

const hash = (data) => `'sha256-${sha256(data, "base64")}'`;
const policy = [
  "default-src 'none'",
  `script-src ${hash(script)} 'wasm-unsafe-eval'`,
  `style-src ${hash(style)}`,
  "img-src data: blob:",
  "font-src data:",
  "worker-src blob:",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");
const sitePolicy = /content="(default-src [^"]*)"/.exec(indexHtml([]))[1];
const html = indexHtml([
  [sitePolicy, policy],
  [STYLE, `<style>${style}</style>`],
  [SCRIPT, `<script type="module">${script}</script>`],
]);
mkdirSync(dirname(out), { recursive: true });
writeFileSync(out, html);
