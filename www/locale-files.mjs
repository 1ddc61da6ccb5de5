// A language is one file of the page: `locales:es` is a module of all texts in locales/es.
import { readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const locales = join(dirname(fileURLToPath(import.meta.url)), "locales");

/** An esbuild plugin. */
export const localeFiles = {
  name: "locale-files",
  setup(page) {
    page.onResolve({ filter: /^locales:/ }, ({ path }) => ({
      path: path.slice("locales:".length),
      namespace: "locales",
    }));
    page.onLoad({ filter: /.*/, namespace: "locales" }, ({ path }) => {
      const files = readdirSync(join(locales, path))
        .filter((name) => name.endsWith(".ftl"))
        .sort();
      const contents = [
        ...files.map((name, n) => `import text${n} from ${JSON.stringify(`./${name}`)};`),
        `export const TEXTS = [${files.map((_, n) => `text${n}`).join(",")}];`,
      ];
      return { contents: contents.join("\n"), loader: "js", resolveDir: join(locales, path) };
    });
  },
};
