// Lessons and what they name are part of the page: `lessons:files` is a module made of scenarios/,
// `lessons:es` one of the lessons in Spanish.
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const scenarios = join(dirname(fileURLToPath(import.meta.url)), "..", "scenarios");
const list = (folder, ending) =>
  readdirSync(join(scenarios, folder))
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => `${folder}/${name}`);

const lessonsOf = (folder) =>
  `export const LESSONS = ${JSON.stringify(list(folder, ".lesson.md").map((path) => readFileSync(join(scenarios, path), "utf8")))};`;

/** An esbuild plugin. JSON files are imported, so that those the page has already come once. */
export const lessonFiles = {
  name: "lesson-files",
  setup(page) {
    page.onResolve({ filter: /^lessons:(files|es)$/ }, ({ path }) => ({ path, namespace: "lessons" }));
    // Those in Spanish are the same lessons under the same names of files.
    page.onLoad({ filter: /^lessons:es$/, namespace: "lessons" }, () => ({
      contents: lessonsOf("lessons/es"),
      loader: "js",
    }));
    page.onLoad({ filter: /^lessons:files$/, namespace: "lessons" }, () => {
      const files = ["balls", "shots", "layouts", "oil"].flatMap((folder) => list(folder, ".json"));
      const contents = [
        ...files.map((path, n) => `import file${n} from ${JSON.stringify(`./${path}`)};`),
        `export const FILES = {${files.map((path, n) => `${JSON.stringify(path)}: file${n}`).join(",")}};`,
        lessonsOf("lessons"),
      ];
      return { contents: contents.join("\n"), loader: "js", resolveDir: scenarios };
    });
  },
};
