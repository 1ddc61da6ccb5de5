// The Fluent files: both languages say the same things, and the page says nothing that is in neither.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";

const npm = createRequire(new URL("../../www/package.json", import.meta.url));
const { FluentParser, Visitor } = npm("@fluent/syntax");
const www = fileURLToPath(new URL("../../www", import.meta.url));

/** Texts that stand in others. */
const within = new Set();

class Named extends Visitor {
  found = new Set();
  visitMessageReference({ id }) {
    within.add(id.name);
  }
  visitVariableReference({ id }) {
    this.found.add(`$${id.name}`);
  }
  visitTextElement({ value }) {
    for (const [, tag] of value.matchAll(/<([a-z][a-z0-9-]*)\/?>/g)) this.found.add(`<${tag}>`);
  }
}

/** The texts of a language by file: name → { id or id.attribute → variables and elements }. */
function texts(language) {
  const folder = join(www, "locales", language);
  return new Map(
    readdirSync(folder).map((name) => {
      const { body } = new FluentParser().parse(readFileSync(join(folder, name), "utf8"));
      const all = new Map();
      const add = (id, pattern) => {
        assert.ok(!all.has(id), `${language}/${name}: ${id} twice`);
        const named = new Named();
        named.visit(pattern);
        all.set(id, [...named.found].sort().join(" "));
      };
      for (const entry of body) {
        assert.notEqual(entry.type, "Junk", `${language}/${name}: ${entry.content}`);
        if (entry.type !== "Message") continue;
        if (entry.value) add(entry.id.name, entry.value);
        for (const one of entry.attributes) add(`${entry.id.name}.${one.id.name}`, one.value);
      }
      return [name, all];
    }),
  );
}

const english = texts("en");
const spanish = texts("es");

test("both languages have the same texts with the same things in them", () => {
  assert.deepEqual([...spanish.keys()].sort(), [...english.keys()].sort());
  for (const [name, all] of english) {
    assert.deepEqual(Object.fromEntries(spanish.get(name)), Object.fromEntries(all), name);
  }
});

test("no text has two places", () => {
  const seen = new Map();
  for (const [name, all] of english) {
    for (const id of all.keys()) {
      assert.ok(!seen.has(id), `${id} in ${seen.get(id)} and ${name}`);
      seen.set(id, name);
    }
  }
});

/** Files whose ids are made from what they translate, each with a test of its own. */
const BY_RULE = ["words.ftl", "shown.ftl", "scenarios.ftl", "said.ftl"];

test("what the page says is there, and what is there is said", () => {
  const source = readdirSync(join(www, "src"), { recursive: true })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => readFileSync(join(www, "src", name), "utf8"))
    .join("\n");
  const known = new Set([...english.values()].flatMap((all) => [...all.keys()]));
  for (const [, id] of source.matchAll(/(?:\bsay\(|<Say(?:Terms)?)\s*(?:id=)?"([^"]+)"/g)) {
    assert.ok(known.has(id), `no text ${id}`);
  }
  const quoted = new Set([...source.matchAll(/["'`]([a-z0-9-]+(?:\.[a-z]+)?)["'`]/g)].map(([, id]) => id));
  for (const [name, all] of english) {
    if (BY_RULE.includes(name)) continue;
    for (const id of all.keys()) {
      assert.ok(quoted.has(id) || within.has(id), `nobody says ${id} of ${name}`);
    }
  }
});
