// What comes of files that are no good, in every place that opens one: what is said, and that nothing else changes.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { go, inLessons, toLessons } from "./about.mjs";
import { launch } from "./harness.mjs";
import { SLOW_PIECES } from "./slow-ball.mjs";

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

test("a ball too large to be worked out in time is refused, and the page answers meanwhile", async () => {
  const { page, context, check } = await opened();
  const ball = { ...JSON.parse(BALL), pieces: SLOW_PIECES };
  const { format, ...shot } = JSON.parse(scenario("shots/opening.shot.json"));
  const whole = { format, ...shot, ball };
  const name = page.locator(".ball-name input");
  const before = await name.inputValue();
  for (const [file, content] of [
    ["large.ball.json", ball],
    ["large.shot.json", whole],
  ]) {
    await give(page, "File to open", file, JSON.stringify(content));
    await tells(page, ".notice", `Opening ${file}`);
    await tells(page, ".notice", `${file} was not opened. Its ball takes more than 8 seconds to work out.`);
    assert.equal(await name.inputValue(), before);
  }
  // Who opens another one meanwhile waits no longer for it.
  await give(page, "File to open", "large.ball.json", JSON.stringify(ball));
  await tells(page, ".notice", "Opening large.ball.json");
  await give(page, "File to open", "small.ball.json", BALL);
  await tells(page, ".notice", "Opened small.ball.json");
  assert.equal(await name.inputValue(), JSON.parse(BALL).name);
  await go(page, "Shelf");
  const entries = [{ name: "Large", note: "", shot: whole }];
  const shelf = { format: "pithball.shelf/1", entries };
  await give(page, "Files to put on the shelf", "large.shelf.json", JSON.stringify(shelf));
  await tells(page, ".shelf-said", "large.shelf.json was not read. Its ball takes more than 8 seconds");
  await check();
  await context.close();
});

test("a file of another kind is told for what it is and where it belongs, and takes nobody's place", async () => {
  const { page, context, check } = await opened();
  const files = {
    ball: BALL,
    shot: scenario("shots/opening.shot.json"),
    oil: scenario("oil/house.oil.json"),
    target: JSON.stringify({ format: "pithball.target/1" }),
    shelf: JSON.stringify({ format: "pithball.shelf/1", entries: [] }),
    progress: PROGRESS,
    lesson: LESSON,
  };
  const TAKEN = {
    "File to open": ["ball", "shot", "oil", "target", "shelf"],
    "Oil to open": ["oil"],
    "Target file": ["target"],
    "Files to put on the shelf": ["ball", "shot", "shelf"],
    "Progress to take in": ["progress"],
    "Progress files of a class": ["progress"],
    "Lesson file to open": ["lesson"],
  };
  const IS = {
    ball: "It is a ball: “Open…”",
    shot: "It is a shot: “Open…”",
    oil: "It is an oil pattern: “Open…”",
    target: "It is what is wanted of a core: “Open…”",
    shelf: "It is a shelf: “Open…”",
    progress: "It is a learner's progress: Lessons takes it",
    lesson: "It is a lesson: Lessons takes it",
  };
  const before = await page.locator(".ball-name input").inputValue();
  for (const { label, said, to } of PLACES) {
    await to(page);
    for (const [kind, content] of Object.entries(files)) {
      if (TAKEN[label].includes(kind)) continue;
      await give(page, label, `other.${kind}`, content);
      await tells(page, said, IS[kind]);
      await tells(page, said, `other.${kind}`);
    }
    if (TAKEN[label].length < 3) continue;
    for (const [content, tell] of [
      ["{}", 'It does not say its "format". What opens here is a ball, a shot'],
      ['{ "format": "recipe/7" }', 'Its "format" is "recipe/7". What opens here is a ball, a shot'],
      ['{ "format": "pithball.ball/9" }', 'The format must be "pithball.ball/1", not "pithball.ball/9"'],
      ["not json", "The file is not JSON"],
    ]) {
      await give(page, label, "odd.json", content);
      await tells(page, said, tell);
    }
  }
  await go(page, "Workshop");
  assert.equal(await page.locator(".ball-name input").inputValue(), before);
  await check();
  await context.close();
});

test("numbers that were typed come back from behind a file that took their place", async () => {
  const { page, context, check } = await opened();
  const panel = page.locator(".maker", { hasText: "Poured a little off" });
  await panel.locator("summary").first().click();
  const balls = panel.getByRole("textbox", { name: "Balls" });
  const back = page.getByRole("button", { name: "Back to the numbers before" });
  const file = JSON.stringify({ format: "pithball.tolerances/1", seed: 1, balls: 3000 });
  await give(page, "Tolerances file", "usual.tolerances.json", file);
  await tells(
    page,
    ".notice",
    /Opened usual\.tolerances\.json: these are the tolerances, on the Scale\.\s*Close/,
  );
  assert.equal(await back.count(), 0, "nothing was typed before");
  await balls.fill("2345");
  await give(page, "Tolerances file", "club.tolerances.json", file);
  await tells(page, ".notice", "The numbers that were there come back by “Back to the numbers before”.");
  await page.waitForFunction(() =>
    [...document.querySelectorAll(".maker input")].some(({ value }) => value.replace(",", "") === "3000"),
  );
  await back.click();
  await tells(page, ".notice", "The numbers from before are back.");
  assert.equal((await balls.inputValue()).replace(",", ""), "2345");
  await back.click();
  assert.equal((await balls.inputValue()).replace(",", ""), "3000");
  await check();
  await context.close();
});

test("what is no progress is told by the reason", async () => {
  const { page, context, check } = await opened();
  await toLessons(page);
  for (const [name, content, why] of [
    ["empty.json", "", "The file is not JSON: it is empty."],
    ["binary.json", Buffer.from([0, 0xff, 0xfe, 1]), "It is not text in UTF-8"],
    [
      "next.json",
      PROGRESS.replace("/1", "/2"),
      'The format must be "pithball.progress/1", not "pithball.progress/2"',
    ],
    ["huge.json", " ".repeat(5 * 1024 * 1024), "It is larger than 4 MiB."],
  ]) {
    await give(page, "Progress to take in", name, content);
    await tells(page, ".lessons-mine [role=status]", `${name} was not taken in. ${why}`);
  }
  await check();
  await context.close();
});
