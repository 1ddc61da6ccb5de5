// Texts that choose between variants: each variant of each language resolves, with all that its sentence tells.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { test } from "node:test";
import { fileURLToPath } from "node:url";

const npm = createRequire(new URL("../../www/package.json", import.meta.url));
const { FluentParser, Visitor } = npm("@fluent/syntax");
const { FluentBundle, FluentResource } = npm("@fluent/bundle");

/** Numbers that fall under a category of English and Spanish plurals. */
const PLURALS = { 0: 0, one: 1, other: 2 };

/** What a pattern chooses by, `name → keys`, and what else it is given, in it and in the texts it stands for. */
class Asked extends Visitor {
  choices = new Map();
  given = new Set();
  constructor(messages) {
    super();
    this.messages = messages;
  }
  visitSelectExpression({ selector, variants }) {
    const keys = this.choices.get(selector.id.name) ?? new Set();
    for (const { key } of variants) keys.add(key.name ?? key.value);
    this.choices.set(selector.id.name, keys);
    for (const { value } of variants) this.visit(value);
  }
  visitVariableReference({ id }) {
    this.given.add(id.name);
  }
  visitMessageReference({ id }) {
    this.visit(this.messages.get(id.name).value);
  }
}

/** Every choice of keys. */
function choices([first, ...rest]) {
  if (!first) return [{}];
  const [name, keys] = first;
  return choices(rest).flatMap((others) => [...keys].map((key) => ({ ...others, [name]: key })));
}

/** A language's texts that choose, by name: what each chooses by, and how it reads with each choice. */
function readings(language) {
  const folder = fileURLToPath(new URL(`../../www/locales/${language}`, import.meta.url));
  const texts = readdirSync(folder).map((name) => readFileSync(`${folder}/${name}`, "utf8"));
  const bundle = new FluentBundle(language, { useIsolating: false });
  for (const text of texts) assert.deepEqual(bundle.addResource(new FluentResource(text)), []);
  const all = texts.flatMap((text) => new FluentParser().parse(text).body);
  const messages = new Map(
    all.flatMap((entry) => (entry.type === "Message" ? [[entry.id.name, entry]] : [])),
  );
  const found = new Map();
  for (const [name, { value }] of messages) {
    const asked = new Asked(messages);
    if (value) asked.visit(value);
    if (asked.choices.size === 0) continue;
    const read = (choice) => {
      const given = [...asked.given].filter((one) => !asked.choices.has(one));
      const args = Object.fromEntries(given.map((one) => [one, `«${one}»`]));
      for (const [one, key] of Object.entries(choice)) args[one] = PLURALS[key] ?? key;
      const errors = [];
      const text = bundle.formatPattern(bundle.getMessage(name).value, args, errors);
      return { text, errors, told: new Set(text.match(/«[^»]+»/g)) };
    };
    found.set(name, { choices: Object.fromEntries(asked.choices), read });
  }
  return found;
}

const [english, spanish] = ["en", "es"].map(readings);

test("both languages choose by the same things between the same variants", () => {
  // A language may do without a choice that another needs.
  for (const [name, { choices }] of english) {
    const other = spanish.get(name)?.choices ?? {};
    for (const [by, keys] of Object.entries(choices)) {
      if (other[by]) assert.deepEqual([...other[by]].sort(), [...keys].sort(), `${name}, ${by}`);
    }
  }
});

test("each variant reads in full, and tells the same in both languages", () => {
  let count = 0;
  for (const name of new Set([...english.keys(), ...spanish.keys()])) {
    const [a, b] = [english.get(name), spanish.get(name)];
    const merged = { ...b?.choices, ...a?.choices };
    for (const choice of choices(Object.entries(merged))) {
      const both = [a, b].filter(Boolean).map((one) => one.read(choice));
      for (const { text, errors } of both) {
        const where = `${name} ${JSON.stringify(choice)}: ${text}`;
        assert.deepEqual(errors, [], where);
        assert.ok(!/\{|\}| {2}| [.,;:]|[.,;:]{2}|undefined/.test(text), where);
        count += 1;
      }
      if (both.length === 2) assert.deepEqual([...both[1].told].sort(), [...both[0].told].sort(), name);
    }
  }
  assert.ok(count > 300, `${count} sentences`);
});
