// Every name and note of scenarios/ that the page shows stands in both languages.
import { equal, ok } from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const read = (...path) => readFileSync(join(root, ...path), "utf8");
const phrases = (language) =>
  new Map(
    [...read("www", "locales", language, "scenarios.ftl").matchAll(/^([a-z0-9-]+) = (.+)$/gm)].map(
      ([, id, text]) => [id, text],
    ),
  );

/** The id of a text: its kind and its words; of a note the first eight. */
function idOf(kind, text) {
  const words = text
    .toLowerCase()
    .replace(/['’]/g, "")
    .match(/[a-z0-9]+/g);
  return [kind, ...(kind === "note" ? words.slice(0, 8) : words)].join("-");
}

function* shown() {
  for (const kind of ["ball", "layout", "oil", "shot", "target"]) {
    const folder = kind === "oil" ? kind : `${kind}s`;
    for (const name of readdirSync(join(root, "scenarios", folder))) {
      const file = JSON.parse(read("scenarios", folder, name));
      yield [kind, file.name];
      if (file.note) yield ["note", file.note];
      if (kind !== "ball") continue;
      for (const part of [file.cover, ...file.pieces]) {
        yield ["piece", part.name];
        yield ["material", part.material];
        for (const cut of part.cuts ?? []) yield ["cut", cut.name];
      }
    }
  }
  for (const material of JSON.parse(read("scenarios", "materials.json")).materials) {
    yield ["material", material.name];
    yield ["use", material.for];
    yield ["source", material.source];
  }
}

test("names and notes of the files in both languages", () => {
  const [english, spanish] = [phrases("en"), phrases("es")];
  let count = 0;
  for (const [kind, text] of shown()) {
    const id = idOf(kind, text);
    equal(english.get(id), text, id);
    ok(spanish.get(id), id);
    count += 1;
  }
  ok(count > 100, `${count} texts`);
  equal([...spanish.keys()].join("\n"), [...english.keys()].join("\n"));
});
