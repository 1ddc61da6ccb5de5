// Lessons say by a live region what came of an answer, a change, a hint, a count of
// hands, a file: once, and not while one is still at it; the keyboard is never lost.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { FIRST_LESSON, inLessons, lessonPanel, toLessons } from "./about.mjs";
import { accessibilityFaults, launch } from "./harness.mjs";
import { heard, heardOf, inTurn, listen, once } from "./heard.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const next = (page) =>
  lessonPanel(page)
    .locator(".lesson-way button")
    .filter({ hasText: /^(Next|Go on)/ });
const focused = (page) => page.evaluate(() => document.activeElement.id || document.activeElement.localName);

async function lessons() {
  const opened = await site.open({ reducedMotion: "reduce" });
  await listen(opened.context);
  await opened.reload();
  const { page } = opened;
  await toLessons(page);
  await heard(page);
  return opened;
}

const take = (page, title) =>
  page.getByRole("button", { name: new RegExp(`^Take this lesson (again )?${title}$`) }).click();

test("an answer, what is missing, hints, the way and the end of a lesson are said", async () => {
  const { page, context, check } = await lessons();
  await take(page, FIRST_LESSON);
  await next(page).click();
  await lessonPanel(page).getByRole("radio").first().focus();
  await page.keyboard.press("Space");
  await lessonPanel(page).getByRole("button", { name: "Answer" }).focus();
  await page.keyboard.press("Enter");
  assert.equal(await focused(page), "lesson-question");
  once(await heardOf(page, /./), /^No\. The house ball rolls after .*\d.*The right answer:/);

  await next(page).click();
  await page.locator("#room-bench .part-head", { hasText: "body" }).click();
  await heard(page);
  const density = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
  await inTurn(density, ["1", "1.", "1.3", "1.31", "1.315"]);
  const typed = await heardOf(page, /Still missing/);
  assert.equal(typed.length, 1, JSON.stringify(typed));
  assert.match(typed[0], /Weight \d.*Still missing\. .*\d/);
  for (const name of ["A hint", "A second hint", "The last hint"]) {
    await lessonPanel(page).getByRole("button", { name, exact: true }).focus();
    await page.keyboard.press("Enter");
    const said = await heard(page);
    assert.equal(said.length, 1, JSON.stringify(said));
    const hint = await lessonPanel(page).locator(".hints li").last().textContent();
    assert.equal(said[0], hint.replace(/\s+/g, " "));
  }
  await lessonPanel(page).getByRole("button", { name: "Show me one way to do it" }).focus();
  await page.keyboard.press("Enter");
  assert.equal(await focused(page), "lesson-deed");
  once(await heardOf(page, /one way/), /This is one way to do it\. .*\d/);
  for (let n = 0; n < 3; n += 1)
    await next(page)
      .or(page.getByRole("button", { name: "Finish" }))
      .click();
  once(await heardOf(page, /finished|end/), new RegExp(`“${FIRST_LESSON}” is finished`));
  await check();
  await context.close();
});

test("numbers and paths that were predicted are answered, hands of a room counted", async () => {
  const { page, context, check } = await lessons();
  await take(page, "The puck");
  while (!(await lessonPanel(page).locator(".amount").count())) await next(page).click();
  await heard(page);
  await lessonPanel(page)
    .getByLabel(/^Your number/)
    .fill("far");
  await lessonPanel(page).getByRole("button", { name: "Answer" }).click();
  once(await heardOf(page, /number/), /this is no number/i);
  await lessonPanel(page)
    .getByLabel(/^Your number/)
    .fill("98765");
  await page.keyboard.press("Enter");
  once(await heardOf(page, /Computed/), /Computed: .*\d/);
  await lessonPanel(page).getByRole("button", { name: "Leave the lesson" }).click();
  once(await heardOf(page, /back/), /Your own ball and shot are back on the bench/);

  await page.getByRole("button", { name: `Show to a room ${FIRST_LESSON}` }).click();
  const view = page.getByRole("dialog");
  while ((await view.locator(".coach-slide").getAttribute("data-slide")) !== "ask")
    await page.keyboard.press("PageDown");
  await heard(page);
  await view.evaluate(async (dialog) => {
    for (const code of ["Digit1", "Digit1", "Digit2", "Digit1"]) {
      dialog.dispatchEvent(new KeyboardEvent("keydown", { code, bubbles: true }));
      await new Promise((done) => setTimeout(done, 60));
    }
  });
  const counted = await heardOf(page, /Hands/);
  assert.deepEqual(counted, ["Hands: A 3, B 1, C 0."]);
  await page.keyboard.press("Escape");
  assert.equal(
    await page.evaluate(() => document.activeElement.textContent.slice(0, 80)),
    `Show to a room ${FIRST_LESSON}`,
    "the keyboard is back on the button that opened it",
  );
  await check();
  await context.close();
});

test("what a teacher hands in and writes is answered", async () => {
  const { page, context, check } = await lessons();
  const file = (name, content) => ({ name, mimeType: "application/json", buffer: Buffer.from(content) });
  await page.getByLabel("Progress to take in").setInputFiles(file("bad.json", "{"));
  once(await heardOf(page, /bad/), /^bad\.json was not taken in\./);
  await inLessons(page, "A class");
  const progress = { format: "pithball.progress/1", learner: "Ada", lessons: [] };
  await heard(page);
  await page
    .getByLabel("Progress files of a class")
    .setInputFiles([file("ada.json", JSON.stringify(progress)), file("not.json", "{}")]);
  once(await heardOf(page, /read/), /^1 file read\..*not\.json/);
  await inLessons(page, "Write one");
  await heard(page);
  await page.getByLabel("Begin from").selectOption({ label: "a short blank one" });
  const begun = await heardOf(page, /sound/);
  once(begun, /It is sound\./);
  const area = page.getByLabel("The lesson as text");
  const text = await area.inputValue();
  await area.fill(text.replace("minutes = ", "minutes = x"));
  const wrong = await heardOf(page, /Line/);
  assert.equal(wrong.length, 1, JSON.stringify(wrong));
  assert.match(wrong[0], /^Line \d+: .+/);
  await area.fill(text.replace("{rg_in}", "{rg_inch}").replace("{centre_board}", "{centre}"));
  const many = once(await heardOf(page, /mistakes/), /^2 mistakes\. The first, line \d+: .+/);
  assert.equal(many.match(/line \d+:/gi).length, 1, many);
  await check();
  await context.close();
});

test("a lesson that was written comes back from behind every other that took its place", async () => {
  const { page, context, reload, check } = await lessons();
  await inLessons(page, "Write one");
  const area = page.getByLabel("The lesson as text");
  const theirs = '+++\nid = "theirs"\n+++\n\nTheirs.\n';
  const back = page.getByRole("button", { name: "Back to what you wrote" });
  const begin = (label) => page.getByLabel("Begin from").selectOption({ label });
  await begin("a short blank one");
  assert.equal(await back.count(), 0, "nothing was written yet");
  const mine = `${await area.inputValue()}\nMine.\n`;
  await area.fill(mine);
  await heard(page);
  await begin(FIRST_LESSON);
  once(await heardOf(page, /copy/), /^This is a copy: .*What you wrote before is kept\./);
  const copied = await area.inputValue();
  const also = `${copied}\nAlso mine.\n`;
  await area.fill(also);
  await begin("a short blank one");
  await page.getByLabel("Lesson file to open").setInputFiles({
    name: "theirs.lesson.md",
    mimeType: "text/markdown",
    buffer: Buffer.from(theirs),
  });
  await page.getByText("Opened theirs.lesson.md.").waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await page.evaluate(() => dispatchEvent(new Event("pagehide")));
  await reload();
  await inLessons(page, "Write one");
  assert.equal(await area.inputValue(), theirs);
  await heard(page);
  await back.click();
  once(await heardOf(page, /is back/), /^What you wrote is back\./);
  assert.equal(await area.inputValue(), also);
  assert.ok(await area.evaluate((field) => document.activeElement === field));
  await back.click();
  assert.equal(await area.inputValue(), mine);
  await back.click();
  assert.equal(await area.inputValue(), theirs, "what was left for it comes back in its turn");
  await area.fill("");
  await back.click();
  await back.click();
  assert.deepEqual([await area.inputValue(), await back.count()], [mine, 1]);
  await check();
  await context.close();
});
