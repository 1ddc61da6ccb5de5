// Lessons: every one is walked past, wrong and right; the learner's own work
// comes back; progress, a class, the words, on every size and by keyboard.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { FIRST_LESSON, go, inLessons, lessonPanel, nav, toLessons } from "./about.mjs";
import { accessibilityFaults, launch, NARROW, PHONE, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const kept = (page) => page.evaluate(() => JSON.parse(localStorage.getItem("pithball.progress/1")));

const lessonsOpen = async (options = {}) => {
  const opened = await site.open({ reducedMotion: "reduce", ...options });
  await toLessons(opened.page);
  return opened;
};

const take = (page, title) =>
  page
    .locator(".lessons-entry", { has: page.getByRole("heading", { name: title, exact: true }) })
    .getByRole("button", { name: /^Take/ })
    .click();

const downloaded = async (page, act) => {
  const [file] = await Promise.all([page.waitForEvent("download"), act()]);
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), "utf8") };
};
const file = (name, content) => ({
  name,
  mimeType: "application/json",
  buffer: Buffer.from(typeof content === "string" ? content : JSON.stringify(content)),
});

/** Types boards into the fields beside the drawing. */
async function drawPath(page, boards) {
  await lessonPanel(page).getByText("Type the boards instead").click();
  const fields = lessonPanel(page).locator(".draw-path .field-number input");
  for (const [n, board] of boards.entries()) await fields.nth(n).fill(String(board));
}

/** Answers what the step asks, wrong on purpose or with what was `learnt` by that; says what was learnt. */
async function answerStep(page, learnt) {
  const room = lessonPanel(page);
  const said = room.getByRole("heading", { name: /^You said/ });
  if (await room.locator(".options").count()) {
    const options = await room.locator(".option").allTextContents();
    await room
      .getByRole("radio")
      .nth(learnt ? learnt.option : 0)
      .check();
    await room.getByRole("button", { name: "Answer" }).click();
    await said.waitFor();
    const right = room.getByText(/^The right answer:/);
    const text = (await right.count())
      ? (await right.textContent()).replace("The right answer: ", "")
      : options[0];
    return { option: options.indexOf(text), outcome: await said.textContent() };
  }
  if (await room.locator(".amount").count()) {
    await room.getByLabel(/^Your number/).fill(learnt ? learnt.number : "98765");
    await room.getByRole("button", { name: "Answer" }).click();
    await said.waitFor();
    const truth = await room.getByText(/^Computed:/).textContent();
    return { number: /[\d.]+/.exec(truth.replace("\u2212", "-"))[0], outcome: await said.textContent() };
  }
  await drawPath(page, learnt ? learnt.boards : [40, 40, 40, 40, 40, 40]);
  await room.getByRole("button", { name: "Answer with this path" }).click();
  await said.waitFor();
  const was = (await room.locator(".draw-path-says").textContent()).split("The ball's:")[1];
  const boards = [...was.matchAll(/board ([\d.]+)/g)].slice(1).map(([, board]) => board);
  return { boards, outcome: await said.textContent() };
}

/** On to the next step; true at the end. */
async function onward(page) {
  const room = lessonPanel(page);
  const step = await room.locator(".lesson-of").textContent();
  const next = room.locator(".lesson-way button").filter({ hasText: /^(Next|Go on|Finish|End)/ });
  if ((await room.locator(".deed").count()) && /without it$/.test(await next.textContent())) {
    await next.click();
    await room.getByRole("heading", { name: "This is one way to do it" }).waitFor();
  }
  const last = /^(Finish|End)/.test(await next.textContent());
  await next.click();
  if (last) return true;
  await page.waitForFunction((was) => document.querySelector(".lesson-of")?.textContent !== was, step);
  return false;
}

const prose = (page) => lessonPanel(page).locator(".lesson > .prose").textContent();

/** Goes through the lesson in front; without `learnt` the wrong way. */
async function walk(page, learnt, read = []) {
  const room = lessonPanel(page);
  const found = [];
  for (;;) {
    await room.locator("#lesson-step").waitFor();
    const step = await room.locator(".lesson-of").textContent();
    const title = await room.locator("#lesson-step").textContent();
    read.push(await prose(page));
    if (await room.locator(".question").count()) {
      const what = await answerStep(page, learnt?.[found.length]);
      if (learnt) assert.equal(what.outcome, "You said: right", `${step} ${title}`);
      assert.ok((await room.locator(".answered p").first().textContent()).length > 10, `${step} ${title}`);
      found.push(what);
    } else if (await room.locator(".deed").count()) {
      await room.locator(".missing li").first().waitFor();
      if (learnt) {
        for (const name of ["A hint", "A second hint", "The last hint", "Show me one way to do it"]) {
          await room.getByRole("button", { name }).click();
        }
        await room.getByRole("heading", { name: "This is one way to do it", exact: true }).waitFor();
        assert.equal(await room.locator(".missing").count(), 0);
        assert.equal(await room.locator(".hints").count(), 0, "what is done needs no hint");
      }
    }
    if (await onward(page)) return found;
  }
}

/** Skips all that can be skipped; says what was read and how many steps were left open. */
async function walkPast(page) {
  const room = lessonPanel(page);
  const read = [];
  let open = 0;
  for (;;) {
    await room.locator("#lesson-step").waitFor();
    const title = await room.locator("#lesson-step").textContent();
    read.push(await prose(page));
    if (await room.locator(".question").count()) open += 1;
    if (await room.locator(".deed").count()) {
      open += 1;
      assert.equal(await room.locator("#lesson-deed").textContent(), "Still missing", title);
      assert.ok((await room.locator(".missing li").count()) > 0, title);
    }
    if (await onward(page)) return { read, open };
  }
}

test("every lesson is walked three times: past all it asks, wrong, and by its own solution to the end", async () => {
  const { page, context, check } = await lessonsOpen();
  const titles = await page.locator(".lessons-entry h4").allTextContents();
  assert.ok(titles.length > 0);
  for (const title of titles) {
    await take(page, title);
    const past = await walkPast(page);
    await page.getByText(`“${title}” is at its end. Still open: `).waitFor();
    const mine = (await kept(page)).lessons.at(-1);
    assert.equal(mine.steps.filter(({ passed }) => !passed).length, past.open, title);
    await toLessons(page);
    await take(page, title);
    const learnt = await walk(page, null);
    await toLessons(page);
    await take(page, title);
    const read = [];
    await walk(page, learnt, read);
    assert.deepEqual(past.read, read, `${title}: what is skipped leaves the next step true`);
    await page.getByText(`“${title}” is finished.`).waitFor();
    await toLessons(page);
  }
  const { lessons } = await kept(page);
  assert.equal(lessons.length, titles.length);
  for (const { title, finished_at, steps, of_steps } of lessons) {
    assert.ok(finished_at, title);
    assert.equal(steps.length, of_steps, title);
  }
  assert.equal(await page.locator(".lessons-entry[data-done]").count(), titles.length);
  await check();
  await context.close();
});

test("the learner's own work is kept aside, over a reload too, and comes back with its undo", async () => {
  const { page, context, reload, check } = await site.open({ reducedMotion: "reduce" });
  const name = page.getByRole("textbox", { name: "Ball", exact: true });
  await name.fill("My own work");
  await toLessons(page);
  await take(page, FIRST_LESSON);
  await lessonPanel(page).getByText("Your own ball and shot are kept aside").waitFor();
  await lessonPanel(page).getByRole("button", { name: "Next" }).click();
  await page.evaluate(() => dispatchEvent(new Event("pagehide")));
  await reload();
  await lessonPanel(page).getByRole("heading", { name: "Which ball rolls first?" }).waitFor();
  await lessonPanel(page).getByRole("button", { name: "Leave the lesson" }).click();
  await page.getByText("Your own ball and shot are back on the bench.").waitFor();
  await go(page, "Workshop");
  assert.equal(await name.inputValue(), "My own work");
  await name.fill("Changed");
  await toLessons(page);
  await take(page, FIRST_LESSON);
  await lessonPanel(page).getByRole("button", { name: "Leave the lesson" }).click();
  await go(page, "Workshop");
  await page.getByRole("button", { name: "Undo" }).click();
  assert.equal(await name.inputValue(), "My own work");
  await check();
  await context.close();
});

test("a lesson begun goes on at the step that is open, and a mistake on the bench is said where it matters", async () => {
  const { page, context, check } = await lessonsOpen();
  await take(page, FIRST_LESSON);
  await walkPast(page);
  const open = page.getByRole("button", { name: new RegExp(`^Go on at step 2, .*, of ${FIRST_LESSON}$`) });
  await open.waitFor();
  await page.waitForFunction(() => document.activeElement?.id.startsWith("go-on-"));
  await open.click();
  await lessonPanel(page).getByText("Step 2 of").waitFor();
  await lessonPanel(page).getByRole("radio").first().check();
  await lessonPanel(page).getByRole("button", { name: "Answer" }).click();
  await lessonPanel(page).getByRole("button", { name: "Next" }).click();
  await lessonPanel(page).getByRole("heading", { name: "Still missing" }).waitFor();
  await page.locator("#room-bench").getByRole("button", { name: /^body/ }).click();
  const density = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
  const was = await density.inputValue();
  await density.fill("0");
  await lessonPanel(page).getByText("There is a mistake on the bench: ").waitFor();
  await density.fill(was);
  await lessonPanel(page).locator(".missing li").first().waitFor();
  // The lesson's own way passes nothing; begun again, one's own does.
  await lessonPanel(page).getByRole("button", { name: "Go on without it" }).click();
  await lessonPanel(page).getByRole("heading", { name: "This is one way to do it" }).waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  const mine = (await kept(page)).lessons[0].steps[2];
  assert.equal(mine.passed, false);
  await lessonPanel(page).getByRole("button", { name: "Begin this step again" }).click();
  await lessonPanel(page).getByRole("heading", { name: "Still missing" }).waitFor();
  await lessonPanel(page).getByRole("button", { name: "Leave the lesson" }).click();
  await page.getByRole("button", { name: new RegExp(`^Go on at step 3, .*, of ${FIRST_LESSON}$`) }).waitFor();
  await check();
  await context.close();
});

test("a step shows only its rooms and lets only its own things be changed", async () => {
  const { page, context, check } = await lessonsOpen();
  await take(page, FIRST_LESSON);
  for (const name of ["Saw", "Scale"])
    assert.ok(await page.locator(`#room-${name.toLowerCase()}`).isVisible());
  for (const name of ["bench", "lane"]) assert.ok(await page.locator(`#room-${name}`).isHidden(), name);
  await lessonPanel(page).getByRole("button", { name: "Next" }).click();
  await lessonPanel(page).getByRole("button", { name: "Go on without it" }).click();
  await page.locator("#room-bench").waitFor();
  await page
    .locator("#room-bench")
    .getByRole("button", { name: /^cover/ })
    .click();
  assert.ok(
    await page
      .locator(".part[data-open]")
      .getByRole("textbox", { name: /^Density/ })
      .isDisabled(),
  );
  await page.locator("#room-bench").getByRole("button", { name: /^body/ }).click();
  const density = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
  assert.ok(await density.isEnabled());
  // Live: the missing sentence follows the bench; what is left standing so is a failed try.
  const missing = lessonPanel(page).locator(".missing li").first();
  const before = await missing.textContent();
  await density.fill("1.5");
  await page.waitForFunction(
    () =>
      JSON.parse(localStorage.getItem("pithball.progress/1")).lessons[0].steps.find(({ tries }) => tries)
        ?.tries === 1,
  );
  await page.waitForFunction((was) => document.querySelector(".missing li")?.textContent !== was, before);
  // What no control holds fast is refused by name: a link's or a file's ball would change everything.
  await page
    .getByLabel("File to open")
    .setInputFiles(
      file(
        "other.ball.json",
        await readFile(new URL("../../scenarios/balls/no-5-thick-cover.ball.json", import.meta.url), "utf8"),
      ),
    );
  await page.getByText("This step of the lesson leaves the").waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await check();
  await context.close();
});

for (const [size, viewport] of Object.entries({ desktop: undefined, phone: PHONE, narrow: NARROW })) {
  test(`lessons by keyboard, without a fault of access, ${size}`, async () => {
    const { page, context, check } = await lessonsOpen(viewport ? { viewport } : {});
    const wide = async () => {
      const found = await page.evaluate(() => document.querySelector(".rooms").scrollWidth);
      assert.ok(found <= (viewport?.width ?? 1366), `${found} px wide`);
    };
    assert.deepEqual(await accessibilityFaults(page), []);
    await wide();
    await page.getByRole("button", { name: `Take this lesson ${FIRST_LESSON}` }).focus();
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.activeElement?.id === "lesson-step");
    assert.deepEqual(await accessibilityFaults(page), []);
    await wide();
    await shoot(page, `lessons-step-${size}`);
    await lessonPanel(page).getByRole("button", { name: "Next" }).focus();
    await page.keyboard.press("Enter");
    await lessonPanel(page).getByRole("radio").first().focus();
    await page.keyboard.press("Space");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    await lessonPanel(page)
      .getByRole("heading", { name: /^You said/ })
      .waitFor();
    assert.deepEqual(await accessibilityFaults(page), []);
    await wide();
    await shoot(page, `lessons-answer-${size}`);
    if (viewport) {
      // Its rooms and no other are a tab away.
      assert.deepEqual(await nav(page).getByRole("button").allTextContents(), [
        "Lesson",
        "Saw",
        "Scale",
        "Shelf",
        "Sheet",
        "Lessons",
      ]);
      await go(page, "Saw");
      assert.equal(await page.locator(".room:visible").count(), 1);
      await go(page, "Lesson");
    }
    await check();
    await context.close();
  });
}

test("progress goes out to a file and comes in again; a class of files makes a table, a bad one is named", async () => {
  const { page, context, check } = await lessonsOpen();
  await take(page, FIRST_LESSON);
  await walk(page, null);
  await toLessons(page);
  await page.getByLabel("Your name").fill("Ada");
  await page.keyboard.press("Tab");
  const saved = await downloaded(page, () =>
    page.getByRole("button", { name: "Save progress to a file" }).click(),
  );
  assert.equal(saved.name, "ada.progress.json");
  const mine = JSON.parse(saved.text);
  assert.equal(mine.learner, "Ada");
  const answered = mine.lessons[0].steps.find(({ answer }) => answer).answer;
  assert.equal(answered.outcome, "wrong");

  await page.getByRole("button", { name: "Forget it…" }).click();
  await page.getByRole("button", { name: "Yes, forget all of it" }).click();
  await page.getByText("Your progress is forgotten.").waitFor();
  await page.getByLabel("Progress to take in").setInputFiles(file("ada.progress.json", saved.text));
  await page.getByText("Taken in from ada.progress.json: 1 lesson.").waitFor();
  assert.deepEqual(await kept(page), mine);
  await page.getByLabel("Progress to take in").setInputFiles(file("bad.json", "{"));
  await page.getByText("bad.json was not taken in. The file is not JSON").waitFor();

  await inLessons(page, "A class");
  const [begun] = mine.lessons;
  const { steps } = begun;
  assert.deepEqual(
    steps.map(({ passed }) => passed),
    [true, true, false, true, true],
    "what was gone past stays open",
  );
  const passed = steps.map((step) => ({ ...step, passed: true }));
  const through = { ...mine, lessons: [{ ...begun, steps: passed }] };
  const other = {
    ...mine,
    learner: "Ben",
    lessons: [
      { ...begun, steps: steps.map((step, at) => (at === 2 ? { ...step, tries: 3, hints: 1 } : step)) },
    ],
  };
  await page
    .getByLabel("Progress files of a class")
    .setInputFiles([
      file("ada.progress.json", through),
      file("ben.progress.json", other),
      file("not.progress.json", { format: "pithball.progress/9" }),
    ]);
  await page.getByText("2 files read.").waitFor();
  await page.getByText("not.progress.json:").waitFor();
  const rows = await page.locator(".class-table").first().locator("tbody th").allTextContents();
  assert.deepEqual(
    rows.map((row) => row.split(" ")[0]),
    ["Ada", "Ben"],
  );
  await page.locator(".class-table tr", { hasText: "Ben" }).getByText(`open: ${steps[2].title}`).waitFor();
  // Who was shown the way is told from who found one.
  const way = page.getByText(`was shown the way: ${steps[2].title}`);
  assert.equal(await way.count(), 2);
  await page.getByText("1 of 2 finished, 1 in the middle of it").waitFor();
  await page.getByText(`2 ×: ${answered.said}`).first().waitFor();
  await page.locator(".class-table tr", { hasText: "Ben" }).getByText("3 failed tries, 1 hint").waitFor();
  const task = page.getByRole("region", { name: "What had to be done" }).locator("tbody tr").first();
  assert.deepEqual(await task.locator("td").allTextContents(), ["1 of 2", "3", "1"]);
  assert.deepEqual(await accessibilityFaults(page), []);
  await shoot(page, "lessons-class");
  // Of one name, as files are where none was typed: told apart by what they hold; the same once more counts once.
  const give = (files) => page.getByLabel("Progress files of a class").setInputFiles(files);
  await give([file("progress.progress.json", { ...other, learner: "Cy" })]);
  await page.getByText("3 files read.").waitFor();
  await give([
    file("progress.progress.json", { ...other, learner: "Dee" }),
    file("again.progress.json", through),
  ]);
  await page.getByText("4 files read.").waitFor();
  await page.getByText("again.progress.json holds the same as ada.progress.json.").waitFor();
  const learners = () => page.locator(".class-table").first().locator("tbody th").allTextContents();
  const all = [
    "Ada ada.progress.json",
    "Ben ben.progress.json",
    "Cy progress.progress.json",
    "Dee progress.progress.json (2)",
  ];
  assert.deepEqual(await learners(), all);
  // Another language, another page of the room: the table stays for the visit.
  await page.getByLabel("Language").selectOption("es");
  await page.getByText("again.progress.json contiene lo mismo que ada.progress.json.").waitFor();
  assert.deepEqual(await learners(), all);
  await check();
  await context.close();
});

test("where nothing can be kept a lesson still works, and says so", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await toLessons(page);
  await take(page, FIRST_LESSON);
  await lessonPanel(page).getByRole("button", { name: "Next" }).click();
  await lessonPanel(page).getByText("your progress is not kept").waitFor();
  await lessonPanel(page).getByRole("button", { name: "Leave the lesson" }).click();
  await page.getByText("Your own ball and shot are back").waitFor();
  const saved = await downloaded(page, () =>
    page.getByRole("button", { name: "Save progress to a file" }).click(),
  );
  assert.equal(JSON.parse(saved.text).lessons.length, 1);
  await check();
  await context.close();
});

test("every word has its meaning and a picture, and a number's word leads there", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  const scale = page.getByRole("region", { name: "Scale", exact: true });
  await scale.getByRole("button", { name: "RG", exact: true }).first().click();
  await page.getByRole("button", { name: "See it drawn RG" }).click();
  await page.waitForFunction(() => document.activeElement?.querySelector("h4")?.textContent === "RG");
  await page.waitForFunction(
    () =>
      document.querySelectorAll(".words-entry").length ===
      document.querySelectorAll(".words-entry svg, .words-entry .hint").length -
        [...document.querySelectorAll(".words-entry")].reduce(
          (more, entry) => more + Math.max(0, entry.querySelectorAll("svg").length - 1),
          0,
        ),
  );
  const rg = page.locator(".words-entry", { has: page.getByRole("heading", { name: "RG", exact: true }) });
  assert.match(await rg.locator("figcaption").first().textContent(), /Here: \d\.\d+.in/);
  for (const text of await page.locator(".words-entry figcaption").allTextContents())
    assert.ok(text.length > 5, text);
  assert.deepEqual(await accessibilityFaults(page), []);
  await check();
  await context.close();
});

test("a lesson prints as a worksheet that gives no answer away, and its key by itself", async () => {
  const { page, context, check } = await lessonsOpen();
  await page.getByRole("button", { name: `On paper ${FIRST_LESSON}` }).click();
  await page.getByRole("heading", { name: FIRST_LESSON }).waitFor();
  const sheet = await page.locator(".paper-page").textContent();
  assert.match(sheet, /Which ball rolls first\?/);
  assert.equal(await page.locator(".paper-options li").count(), 3);
  assert.doesNotMatch(sheet, /It rolls after/);
  // Room for a reason, and for more than one thing that was changed.
  assert.equal(await page.locator(".paper-lines").count(), 2);
  // What a task or a question leads to is left to fill in.
  assert.match(sheet, /________/);
  assert.ok((await page.locator(".paper-page svg").count()) >= 1);
  assert.deepEqual(await accessibilityFaults(page), []);
  const pdf = await page.pdf({ preferCSSPageSize: true });
  assert.ok(pdf.length > 10_000);
  assert.doesNotMatch(pdf.toString("latin1"), /\/Subtype\s*\/Image/, "drawings are vectors");
  await page.emulateMedia({ media: "print" });
  // What explains it all is on a page of its own.
  assert.equal(
    await page.locator(".paper-after").evaluate((one) => getComputedStyle(one).breakBefore),
    "page",
  );
  for (const away of [".bar", ".lessons-nav", ".paper-choices"]) {
    assert.ok(await page.locator(away).first().isHidden(), away);
  }
  await page.emulateMedia({ media: "screen" });
  await page.getByLabel("What to print").selectOption("key");
  await page.getByText("It rolls after").first().waitFor();
  await page.getByText("For the teacher").waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await shoot(page, "lessons-key");
  await check();
  await context.close();
});

for (const [size, viewport] of Object.entries({
  projector: { width: 1920, height: 1080 },
  phone: PHONE,
})) {
  test(`the coach's view goes through a lesson by clicker with a poll of hands, ${size}`, async () => {
    const { page, context, check } = await lessonsOpen({ viewport });
    await page.getByRole("button", { name: `Show to a room ${FIRST_LESSON}` }).click();
    const view = page.getByRole("dialog");
    await view.waitFor();
    const far = view.locator(".coach-way span");
    const count = Number((await far.textContent()).split(" of ")[1]);
    let polled = false;
    for (let at = 1; at < count; at++) {
      await page.keyboard.press(at % 2 ? "PageDown" : "ArrowRight");
      await page.waitForFunction(
        (n) => document.querySelector(".coach-way span").textContent.startsWith(`${n} of`),
        at + 1,
      );
      const fits = await view.evaluate((dialog) => [
        dialog.scrollWidth <= innerWidth,
        dialog.scrollHeight <= innerHeight + 1,
      ]);
      assert.ok(fits[0], `slide ${at + 1} is too wide`);
      if (size === "projector") assert.ok(fits[1], `slide ${at + 1} is too tall`);
      const kind = await view.locator(".coach-slide").getAttribute("data-slide");
      if (kind === "ask") {
        await view.getByText("Which ball begins to roll sooner?").waitFor();
        const hands = (letter) => view.getByLabel(`Hands for ${letter}`, { exact: true }).first();
        // By the keyboard alone, and by its buttons.
        for (const key of ["1", "1", "1", "Shift+Digit1", "3", "Shift+Digit3"])
          await page.keyboard.press(key);
        assert.deepEqual([await hands("A").inputValue(), await hands("C").inputValue()], ["2", "0"]);
        await view.getByRole("button", { name: "One hand more for A" }).click();
        await hands("B").fill("11");
        await page.keyboard.press("ArrowUp");
        assert.equal(await hands("B").inputValue(), "12");
        assert.deepEqual(await accessibilityFaults(page), []);
        await shoot(page, `coach-ask-${size}`);
        polled = true;
      }
      if (kind === "answer") {
        await view.getByText("12 hands").waitFor();
        await view.getByText("3 hands").waitFor();
        assert.deepEqual(await accessibilityFaults(page), []);
        await view.getByText("12 of 15 hands were up for what is right.").waitFor();
        assert.match(await view.locator("[data-right]").textContent(), /heavy core.*Right/);
        await shoot(page, `coach-answer-${size}`);
      }
      if (kind === "cut" || kind === "text" || kind === "numbers") {
        await shoot(page, `coach-${kind}-${size}`);
        assert.deepEqual(await accessibilityFaults(page), []);
      }
    }
    assert.ok(polled);
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("PageUp");
    assert.match(await far.textContent(), new RegExp(`^${count - 2} of`));
    await page.keyboard.press("Escape");
    await page.locator(".lessons-entry").first().waitFor();
    await check();
    await context.close();
  });
}

test("a lesson is written in the page: a mistake is shown at its line, the text is kept, tried and saved", async () => {
  const { page, context, reload, check } = await lessonsOpen();
  await inLessons(page, "Write one");
  await page.getByLabel("Begin from").selectOption({ label: "a short blank one" });
  await page.getByRole("heading", { name: "It is sound" }).waitFor();
  await page.getByLabel("Begin from").selectOption({ label: FIRST_LESSON });
  await page.getByText(`How it reads: ${FIRST_LESSON}`).waitFor();
  const area = page.getByLabel("The lesson as text");
  const text = await area.inputValue();
  const wrong = text.replace("rg_in <= goal_in", "rg_inch <= goal_in");
  const line = wrong.split("\n").findIndex((one) => one.includes("rg_inch")) + 1;
  await area.fill(wrong);
  await page.getByRole("heading", { name: "What is wrong" }).waitFor();
  assert.ok(await page.getByRole("button", { name: "Try it" }).isDisabled());
  assert.deepEqual(await accessibilityFaults(page), []);
  await shoot(page, "lessons-write");
  await page.getByText("a name from the list of names").first().waitFor();
  await page.getByText("Names that can be used").click();
  await page.getByText("the RG (in)").waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await page.getByRole("button", { name: `Line ${line}`, exact: true }).click();
  const at = await area.evaluate((field) => [
    field.value.slice(0, field.selectionStart).split("\n").length,
    document.activeElement === field,
  ]);
  assert.deepEqual(at, [line, true]);
  await page.evaluate(() => dispatchEvent(new Event("pagehide")));
  await reload();
  await inLessons(page, "Write one");
  assert.equal(await area.inputValue(), wrong);
  await page.getByLabel("Lesson file to open").setInputFiles({
    name: "mine.lesson.md",
    mimeType: "text/markdown",
    buffer: Buffer.from(text.replace(`title = "${FIRST_LESSON}"`, 'title = "Mine"')),
  });
  await page.getByText("Opened mine.lesson.md.").waitFor();
  await page.getByText("How it reads: Mine").waitFor();
  const saved = await downloaded(page, () => page.getByRole("button", { name: "Save to a file" }).click());
  assert.equal(saved.name, "why-a-house-ball-goes-long.lesson.md");
  assert.match(saved.text, /title = "Mine"/);
  await page.getByRole("button", { name: "Try it" }).click();
  await lessonPanel(page).getByText("Trying it out.").waitFor();
  await lessonPanel(page).getByRole("button", { name: "Next" }).click();
  assert.equal(await kept(page), null, "a trial leaves no trace in the progress");
  await lessonPanel(page).getByRole("button", { name: "Leave the lesson" }).click();
  await page.getByLabel("The lesson as text").waitFor();
  await check();
  await context.close();
});

test("a path is drawn with the pointer or the arrow keys before the ball's is seen", async () => {
  const { page, context, check } = await lessonsOpen({ viewport: PHONE });
  await take(page, "Skid, hook, roll");
  await lessonPanel(page).getByRole("button", { name: "Next" }).click();
  const lane = lessonPanel(page).locator(".draw-path-lane");
  await lane.waitFor();
  // What the numbers in view would give away is out of it until the answer.
  assert.equal(await page.locator(".strip:visible").count(), 0);
  assert.equal(await lane.locator(".path").count(), 0);
  // Nothing else is beside it, and there is no answer before a point was moved.
  assert.equal(await page.locator(".room:visible").count(), 1);
  assert.ok(await lessonPanel(page).getByRole("button", { name: "Answer with this path" }).isDisabled());
  const at40 = lessonPanel(page).getByRole("slider", { name: "Your path at 40 ft" });
  const board = async () => Number(await at40.getAttribute("aria-valuenow"));
  const first = await board();
  await at40.focus();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("PageDown");
  assert.equal(await board(), first - 6);
  assert.match(
    await lessonPanel(page).locator(".draw-path-says").textContent(),
    new RegExp(`board ${(first - 6).toFixed(1)} at 40.ft`),
  );
  const { x, y, width, height } = await lane.boundingBox();
  await page.mouse.move(x + width * 0.66, y + height * 0.5);
  await page.mouse.down();
  await page.mouse.move(x + width * 0.66, y + height * 0.72, { steps: 3 });
  await page.mouse.up();
  const drawn = await board();
  assert.ok(drawn < 12, `board ${drawn}`);
  assert.deepEqual(await accessibilityFaults(page), []);
  await lessonPanel(page).getByRole("button", { name: "Answer with this path" }).click();
  await lessonPanel(page)
    .getByRole("heading", { name: /^You said/ })
    .waitFor();
  assert.equal(await lane.locator(".path").count(), 1);
  assert.equal(await page.locator(".strip:visible").count(), 1);
  const { lessons } = await kept(page);
  const { answer } = lessons[0].steps.find((step) => step.answer);
  assert.deepEqual(
    answer.path.find(([, ft]) => ft === 40),
    [drawn, 40],
  );
  await check();
  await context.close();
});
