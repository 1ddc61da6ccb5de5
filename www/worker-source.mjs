// The worker is a script of its own that travels as text inside the page's: started
// from a blob it needs no request, and works over http and from a file alike.
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

/** An esbuild plugin: `worker:source` is the bundled text of src/worker.ts. */
export const workerSource = {
  name: "worker-source",
  setup(page) {
    page.onResolve({ filter: /^worker:source$/ }, ({ path }) => ({ path, namespace: "worker" }));
    page.onLoad({ filter: /.*/, namespace: "worker" }, async () => {
      const { outputFiles } = await build({
        entryPoints: [fileURLToPath(new URL("src/worker.ts", import.meta.url))],
        bundle: true,
        format: "iife",
        target: "es2022",
        minify: true,
        write: false,
        logLevel: "warning",
      });
      return { contents: outputFiles[0].text, loader: "text" };
    });
  },
};
