// axe-core in the states of lessons that no other test brings about.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { FIRST_LESSON, inLessons, lessonPanel, toLessons } from "./about.mjs";
import { launch } from "./harness.mjs";
import { sound } from "./states.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const next = (page) =>
  lessonPanel(page)
    .locator(".lesson-way button")
    .filter({ hasText: /^(Next|Go on|Finish|End)/ })
    .click();
const take = (page, title) => page.getByRole("button", { name: new RegExp(`^Take .* ${title}$`) }).click();

async function lessons() {
  const opened = await site.open({ reducedMotion: "reduce" });
  await toLessons(opened.page);
  return opened;
}

test("a task with hints, a mistake on the bench, the way that was shown, done, the lesson at its end", async () => {
  const { page, context, check } = await lessons();
  await take(page, FIRST_LESSON);
  await next(page);
  await lessonPanel(page).getByRole("radio").nth(1).check();
  await lessonPanel(page).getByRole("button", { name: "Answer" }).click();
  await sound(page, "answered right", "Lesson");
  await next(page);
  await page.locator("#room-bench .part-head", { hasText: "body" }).click();
  const density = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
  await density.fill("1.4");
  for (const name of ["A hint", "A second hint", "The last hint"])
    await lessonPanel(page).getByRole("button", { name, exact: true }).click();
  await lessonPanel(page).locator(".deed-says .answered").waitFor();
  await sound(page, "what is wrong with it, three hints", "Lesson");
  await density.fill("0");
  await lessonPanel(page).getByText("There is a mistake on the bench: ").waitFor();
  await sound(page, "a mistake on the bench", "Lesson");
  await page.keyboard.press("Control+z");
  await lessonPanel(page).getByRole("button", { name: "Show me one way to do it" }).click();
  await lessonPanel(page).getByRole("heading", { name: "This is one way to do it" }).waitFor();
  await sound(page, "done", "Lesson");
  await page.getByRole("navigation", { name: "Places" }).getByRole("button", { name: "Lessons" }).click();
  await page.getByRole("button", { name: "Back to it" }).waitFor();
  await sound(page, "a lesson that has the bench", "Lessons");
  await page.getByRole("button", { name: "Back to it" }).click();
  for (let n = 0; n < 3; n += 1) await next(page);
  await page.getByText(`“${FIRST_LESSON}” is finished.`).waitFor();
  await page.getByRole("button", { name: "Forget it…" }).click();
  await page.getByLabel("Progress to take in").setInputFiles({
    name: "bad.json",
    mimeType: "application/json",
    buffer: Buffer.from("{"),
  });
  await page.getByText("bad.json was not taken in").waitFor();
  await sound(page, "finished, what comes next, progress to be forgotten and refused", "Lessons");
  await check();
  await context.close();
});

test("numbers predicted: none, too large; a path answered; nothing is kept", async () => {
  const { page, context, check } = await lessons();
  await take(page, "The puck");
  while (!(await lessonPanel(page).locator(".amount").count())) await next(page);
  await lessonPanel(page)
    .getByLabel(/^Your number/)
    .fill("far");
  await lessonPanel(page).getByRole("button", { name: "Answer" }).click();
  await sound(page, "no number", "Lesson");
  await lessonPanel(page)
    .getByLabel(/^Your number/)
    .fill("98765");
  await lessonPanel(page).getByRole("button", { name: "Answer" }).click();
  await sound(page, "too large", "Lesson");
  await lessonPanel(page).getByRole("button", { name: "Leave the lesson" }).click();
  await take(page, "Skid, hook, roll");
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await next(page);
  await lessonPanel(page).getByText("Type the boards instead").click();
  await lessonPanel(page).locator(".draw-path .field-number input").first().fill("22");
  await sound(page, "a path before the answer", "Lesson");
  await lessonPanel(page).getByRole("button", { name: "Answer with this path" }).click();
  await lessonPanel(page).getByText("your progress is not kept").waitFor();
  await sound(page, "a path answered, nothing kept", "Lesson");
  await check();
  await context.close();
});

test("told to a room: title, words, a number, a task with its hints, the end; a class and a text not begun", async () => {
  const { page, context, check } = await lessons();
  await page.getByRole("button", { name: "Show to a room The puck" }).click();
  const view = page.getByRole("dialog");
  const seen = new Set();
  for (;;) {
    const slide = await view.locator(".coach-slide").getAttribute("data-slide");
    if (slide === "task") {
      await view.getByRole("button", { name: "A hint" }).click();
      await view.getByRole("button", { name: "Another hint" }).click();
    }
    if (slide === "ask") {
      await view.getByLabel("What the room says").fill("12");
      await view.getByRole("button", { name: "Take it down" }).click();
    }
    if (!seen.has(slide)) await sound(page, `slide: ${slide}`, "");
    seen.add(slide);
    const on = view.getByRole("button", { name: "Next" });
    if (await on.isDisabled()) break;
    await on.click();
  }
  for (const slide of ["title", "words", "ask", "answer", "task", "done", "end"])
    assert.ok(seen.has(slide), slide);
  await page.keyboard.press("Escape");
  await inLessons(page, "A class");
  await sound(page, "no class yet", "Lessons");
  await inLessons(page, "Write one");
  await sound(page, "nothing written", "Lessons");
  await page.getByLabel("Begin from").selectOption({ label: "a short blank one" });
  await page.getByRole("heading", { name: "It is sound" }).waitFor();
  await sound(page, "sound", "Lessons");
  await page.getByRole("button", { name: "Try it" }).click();
  await lessonPanel(page).getByText("Trying it out.").waitFor();
  await sound(page, "tried out", "Lesson");
  await check();
  await context.close();
});
