// What comes of files that are no good, in every place that opens one: what is said, and that nothing else changes.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { go, inLessons, toLessons } from "./about.mjs";
import { launch } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const scenario = (path) => readFileSync(new URL(`../../scenarios/${path}`, import.meta.url), "utf8");
const BALL = scenario("balls/no-1-simple.ball.json");
const PROGRESS = JSON.stringify({ format: "pithball.progress/1", learner: "Peña", lessons: [] });
const LESSON = scenario("lessons/what-scrap-costs.lesson.md");

const give = (page, label, name, buffer) =>
  page.getByLabel(label, { exact: true }).setInputFiles({ name, mimeType: "", buffer: Buffer.from(buffer) });

const openOil = async (page) => {
  const lane = page.getByRole("region", { name: "Lane" });
  await lane.locator("summary", { hasText: /^Lane/ }).first().click();
  await lane.locator(".oil-fold select").first().selectOption("house");
};

/** The places that open files, from the bar on: how one gets there and where what came of it is said. */
const PLACES = [
  { label: "File to open", said: ".notice", to: async () => {} },
  { label: "Oil to open", said: ".notice", to: openOil },
  {
    label: "Target file",
    said: ".notice",
    to: (page) => page.locator(".maker summary", { hasText: "Find a core for wanted numbers" }).click(),
  },
  { label: "Files to put on the shelf", said: ".shelf-said", to: (page) => go(page, "Shelf") },
  { label: "Progress to take in", said: ".lessons-mine [role=status]", to: toLessons },
  {
    label: "Progress files of a class",
    said: ".lessons-class [role=status]",
    to: (page) => inLessons(page, "A class"),
  },
  {
    label: "Lesson file to open",
    said: ".write > [role=status]",
    to: (page) => inLessons(page, "Write one"),
  },
];

const opened = () => site.open({ reducedMotion: "reduce" });
const tells = (page, said, text) => page.locator(said, { hasText: text }).first().waitFor();

test("a file that is no UTF-8, or that cannot be read, is refused by name, and the page goes on", async () => {
  const { page, context, check } = await opened();
  await page.evaluate(() => {
    const whole = Blob.prototype.arrayBuffer;
    Blob.prototype.arrayBuffer = function () {
      return this.name?.startsWith("gone")
        ? Promise.reject(new DOMException("gone", "NotReadableError"))
        : whole.call(this);
    };
  });
  const before = await page.locator(".ball-name input").inputValue();
  for (const { label, said, to } of PLACES) {
    await to(page);
    const latin = Buffer.from(BALL.replace("No. 1, simple", "Bola de muñeca"), "latin1");
    await give(page, label, "latin.json", latin);
    await tells(page, said, /latin\.json.* It is not text in UTF-8.*|latin\.json: It is not text/);
    await give(page, label, "gone.json", BALL);
    await tells(page, said, /gone\.json.*It could not be read/);
  }
  assert.equal(await page.getByLabel("The lesson as text").inputValue(), "");
  await go(page, "Workshop");
  assert.equal(await page.locator(".ball-name input").inputValue(), before);
  // A byte order mark is none of the text.
  await give(page, "File to open", "marked.json", `\ufeff${BALL.replace("No. 1, simple", "Bola de muñeca")}`);
  await tells(page, ".notice", "Opened marked.json");
  assert.equal(await page.locator(".ball-name input").inputValue(), "Bola de muñeca");
  await toLessons(page);
  await inLessons(page, "Lessons");
  await give(page, "Progress to take in", "marked.json", `\ufeff${PROGRESS}`);
  await tells(page, ".lessons-mine [role=status]", "marked.json");
  assert.equal(await page.getByLabel("Your name").inputValue(), "Peña");
  await inLessons(page, "Write one");
  await give(page, "Lesson file to open", "marked.lesson.md", `\ufeff${LESSON}`);
  await tells(page, ".write > [role=status]", "Opened marked.lesson.md");
  assert.equal(await page.getByLabel("The lesson as text").inputValue(), LESSON);
  await check();
  await context.close();
});

test("what is no lesson is refused and the lesson being written stays; one with mistakes is taken, and the one before comes back", async () => {
  const { page, context, check } = await opened();
  await toLessons(page);
  await inLessons(page, "Write one");
  const area = page.getByLabel("The lesson as text");
  const mine = `${LESSON}\nMine.\n`;
  await area.fill(mine);
  const status = ".write > [role=status]";
  for (const [name, content, why] of [
    ["empty.md", "", /A lesson begins with a head/],
    ["letter.txt", "Dear all,\n\nno lesson.\n", /A lesson begins with a head/],
    ["picture.jpg", Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 16]), /It is not text in UTF-8/],
    ["long.lesson.md", LESSON + "x".repeat(256 * 1024), /It is larger than 262,144 bytes\./],
  ]) {
    await give(page, "Lesson file to open", name, content);
    await tells(page, status, new RegExp(`${name.replaceAll(".", "\\.")} was not opened\\. ${why.source}`));
    assert.equal(await area.inputValue(), mine);
  }
  await give(page, "Lesson file to open", "wrong.lesson.md", LESSON.replace("minutes = 10", "minutes = ten"));
  await tells(page, status, "Opened wrong.lesson.md. What you wrote before is kept.");
  await page.getByRole("button", { name: "Back to what you wrote" }).click();
  assert.equal(await area.inputValue(), mine);
  await check();
  await context.close();
});
