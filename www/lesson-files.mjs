// Lessons and what they name are part of the page: `lessons:files` is a module made of scenarios/.
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const scenarios = join(dirname(fileURLToPath(import.meta.url)), "..", "scenarios");
const list = (folder, ending) =>
  readdirSync(join(scenarios, folder))
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => `${folder}/${name}`);

/** An esbuild plugin. JSON files are imported, so that those the page has already come once. */
export const lessonFiles = {
  name: "lesson-files",
  setup(page) {
    page.onResolve({ filter: /^lessons:files$/ }, ({ path }) => ({ path, namespace: "lessons" }));
    page.onLoad({ filter: /.*/, namespace: "lessons" }, () => {
      const lessons = list("lessons", ".lesson.md").map((path) =>
        readFileSync(join(scenarios, path), "utf8"),
      );
      const files = ["balls", "shots", "layouts", "oil"].flatMap((folder) => list(folder, ".json"));
      const contents = [
        ...files.map((path, n) => `import file${n} from ${JSON.stringify(`./${path}`)};`),
        `export const FILES = {${files.map((path, n) => `${JSON.stringify(path)}: file${n}`).join(",")}};`,
        `export const LESSONS = ${JSON.stringify(lessons)};`,
      ];
      return { contents: contents.join("\n"), loader: "js", resolveDir: scenarios };
    });
  },
};
