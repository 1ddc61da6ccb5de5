// Notes are written in Markdown for people who read the repository; the page
// shows the same file, turned into HTML when it is built.
import { readFile } from "node:fs/promises";
import { Marked } from "marked";

/** The page has a heading of its own, and a room has one below it. */
const marked = new Marked({
  walkTokens(token) {
    if (token.type === "heading") token.depth += 2;
  },
});

/** An esbuild plugin: importing a .md file gives its HTML. */
export const markdown = {
  name: "markdown",
  setup(page) {
    page.onLoad({ filter: /\.md$/ }, async ({ path }) => ({
      contents: marked.parse(await readFile(path, "utf8")),
      loader: "text",
    }));
  },
};
