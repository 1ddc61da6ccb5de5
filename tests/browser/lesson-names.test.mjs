// Lessons in Spanish with their things called in Spanish: as sound as the files, and all renamed.
// In either language what a task asks for stays while it is worked on.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { initSync, Lesson, lesson_problems } from "../../www/pkg/more.js";
import { bundled } from "./bundled.mjs";

const read = (path) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const list = (folder, ending) =>
  readdirSync(new URL(`../../scenarios/${folder}`, import.meta.url))
    .filter((name) => name.endsWith(ending))
    .map((name) => `${folder}/${name}`);
const FILES = Object.fromEntries(
  ["balls", "shots", "layouts", "oil"]
    .flatMap((folder) => list(folder, ".json"))
    .map((path) => [path, JSON.parse(read(`scenarios/${path}`))]),
);
initSync({ module: readFileSync(new URL("../../www/pkg/more_bg.wasm", import.meta.url)) });

let page;
before(async () => {
  globalThis.document = { documentElement: {} };
  page = await bundled("lessons/named.ts", "lessons/blank.ts", "locale/language.ts");
  await page.speak("es");
});
after(() => {
  delete globalThis.document;
});

/** What things are called on the benches of a lesson, as it goes by its own solutions. */
function benches(lesson) {
  const docs = [];
  let left = null;
  for (const at of lesson.about().steps.keys()) {
    const start = lesson.opens(at, left);
    left = lesson.ends(at, start);
    docs.push(start, left);
  }
  return docs;
}
const namesIn = (docs) => [
  ...new Set(
    docs.flatMap(({ ball }) => [ball.name, ball.cover.name, ...ball.pieces.map(({ name }) => name)]),
  ),
];

for (const path of list("lessons/es", ".lesson.md")) {
  test(`${path} is sound with Spanish names, and its bench goes into English and back`, () => {
    const text = page.namedText(read(`scenarios/${path}`));
    const files = page.namedFiles(FILES);
    assert.deepEqual(lesson_problems(text, files), []);
    const spanish = benches(new Lesson(text, files));
    const english = benches(new Lesson(read(`scenarios/${path.replace("/es", "")}`), FILES));
    for (const name of namesIn(spanish)) {
      assert.ok(name === undefined || name === "collar" || !namesIn(english).includes(name), name);
    }
    assert.deepEqual(
      spanish.map(page.renaming(spanish, english)).map((doc) => namesIn([doc])),
      english.map((doc) => namesIn([doc])),
    );
    assert.deepEqual(english.map(page.renaming(english, spanish)), spanish);
  });
}

test("a mistake in a lesson read with Spanish names is where it is in the text, and things may be called so there too", () => {
  const sound = read("scenarios/lessons/es/a-piece-within-a-piece.lesson.md");
  const from = '{piece_rg_share["inner core"]}';
  const text = sound.replace(from, '{piece_rg_share["inner core"]} {piece_rg_share["heart"]} {nothing}');
  const [first, ...others] = lesson_problems(page.namedText(text), page.namedFiles(FILES));
  assert.deepEqual(others, []);
  const line = text.split("\n")[first.line - 1];
  const [named] = page.namedText(line).match(/.*(?=\{nothing)/);
  const before = (column) => page.columnBefore(line, column);
  assert.equal(before(named.length + 1), line.indexOf("{nothing") + 1);
  assert.equal(before(1), 1);
  const begins = line.indexOf("heart") + 1;
  assert.equal(before(page.namedText(line).indexOf("corazón") + 4), begins);
  const spoken = sound.replaceAll('"heart"', '"corazón"');
  assert.notEqual(spoken, sound);
  assert.deepEqual(lesson_problems(page.namedText(spoken), page.namedFiles(FILES)), []);
});

test("the blank lesson is sound in Spanish and in English", async () => {
  assert.match(page.blank(), /title = "Mi lección"/);
  assert.deepEqual(lesson_problems(page.blank(), FILES), []);
  await page.speak("en");
  assert.match(page.blank(), /title = "My lesson"/);
  assert.deepEqual(lesson_problems(page.blank(), FILES), []);
  await page.speak("es");
});

for (const path of [...list("lessons", ".lesson.md"), ...list("lessons/es", ".lesson.md")]) {
  test(`${path} asks for the same at the end of a task as at its beginning`, () => {
    const lesson = new Lesson(read(`scenarios/${path}`), FILES);
    let left = null;
    for (const [at, { kind }] of lesson.about().steps.entries()) {
      const start = lesson.opens(at, left);
      left = lesson.ends(at, start);
      if (kind !== "do") continue;
      const asked = (bench) => {
        const { text, hints } = lesson.shown(at, start, bench);
        return { text, hints };
      };
      assert.deepEqual(asked(left), asked(start), `step ${at + 1}`);
      // And with every number of the ball and shot another than it was.
      assert.deepEqual(asked(changed(start)), asked(start), `step ${at + 1}`);
    }
  });
}

/** Another bench: each piece and each number of the shot's release a little more than it was. */
function changed({ ball, shot }) {
  const release = Object.fromEntries(
    Object.entries(shot.release).map(([key, value]) => [
      key,
      typeof value === "number" ? value * 1.01 : value,
    ]),
  );
  const pieces = ball.pieces.map((piece) => ({ ...piece, density_g_cc: piece.density_g_cc * 1.1 }));
  return { ball: { ...ball, pieces }, shot: { ...shot, release } };
}
