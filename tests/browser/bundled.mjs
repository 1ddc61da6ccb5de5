// A module of the page's source, bundled so that Node can run it by itself.
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { localeFiles } from "../../www/locale-files.mjs";
import { workerSource } from "../../www/worker-source.mjs";

const npm = createRequire(new URL("../../www/package.json", import.meta.url));
const { build } = npm("esbuild");

/** The exports of one or more www/src/PATH. */
export async function bundled(...paths) {
  const { outputFiles } = await build({
    stdin: {
      contents: paths.map((path) => `export * from "./${path}";`).join("\n"),
      resolveDir: fileURLToPath(new URL("../../www/src", import.meta.url)),
    },
    bundle: true,
    format: "esm",
    plugins: [workerSource, localeFiles],
    loader: { ".ftl": "text" },
    write: false,
  });
  const source = Buffer.from(outputFiles[0].contents).toString("base64");
  return import(`data:text/javascript;base64,${source}`);
}
