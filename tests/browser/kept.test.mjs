// What is made survives: two tabs on one bench, many links one after another, a store
// that is full for a while, and what an earlier page kept that cannot be read.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { kept, keptAs } from "./bench-kept.mjs";
import { accessibilityFaults, launch } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const KEY = "pithball.bench/1";
const nameOf = (page) => page.locator(".ball-name input");
const notice = (page, hasText) => page.locator(".notice", { hasText }).waitFor();
const undo = (page) => page.getByRole("button", { name: "Undo", exact: true }).click();

test("two tabs: neither loses what the other made, and one that only looks writes nothing over it", async () => {
  const { page, context, reload, check } = await site.open({ reducedMotion: "reduce" });
  await nameOf(page).fill("Alpha");
  await keptAs(page, "Alpha");
  const other = await context.newPage();
  await other.goto(site.url, { waitUntil: "networkidle" });
  await nameOf(page).fill("Alpha, second hour");
  await keptAs(page, "Alpha, second hour");
  await other.getByLabel("Units").selectOption("metric");
  await other.close({ runBeforeUnload: true });
  assert.equal((await kept(page)).doc.ball.name, "Alpha, second hour");

  const third = await context.newPage();
  await third.goto(site.url, { waitUntil: "networkidle" });
  await nameOf(page).fill("Alpha, third hour");
  await keptAs(page, "Alpha, third hour");
  await third.locator(".template", { hasText: /two-piece/ }).click();
  await notice(third, "Another tab of this page has changed its bench too");
  await nameOf(page).fill("Alpha, fourth hour");
  await keptAs(page, "Alpha, fourth hour");
  await nameOf(third).fill("Beta");
  await keptAs(third, "Beta");
  await third.close({ runBeforeUnload: true });
  await reload();
  assert.equal(await nameOf(page).inputValue(), "Beta");
  await undo(page);
  assert.equal(await nameOf(page).inputValue(), "Alpha, fourth hour");
  await check();
  await context.close();
});

test("many links, each in a page of its own, leave own work where Undo finds it", async () => {
  const { page, context } = await site.open({ reducedMotion: "reduce" });
  const links = [];
  for (let n = 1; n <= 5; n += 1) {
    await nameOf(page).fill(`Student ${n}`);
    await page.getByRole("button", { name: "Share link" }).click();
    links.push(new URL(await page.getByLabel("Link to this ball and shot").inputValue()).hash);
    await page.getByRole("button", { name: "Share link" }).click();
  }
  await nameOf(page).fill("My own work");
  await keptAs(page, "My own work");
  await page.close();
  for (const [n, link] of links.entries()) {
    const opened = await context.newPage();
    await opened.goto(site.url + link, { waitUntil: "networkidle" });
    await notice(opened, "Opened from the link");
    // One of them is worked on: that is own work too.
    if (n === 2) await nameOf(opened).fill("Student 3, corrected");
    await keptAs(opened, n === 2 ? "Student 3, corrected" : `Student ${n + 1}`);
    await opened.close();
  }
  const last = await context.newPage();
  await last.goto(site.url, { waitUntil: "networkidle" });
  const names = [await nameOf(last).inputValue()];
  for (let n = 0; n < 2; n += 1) {
    await undo(last);
    names.push(await nameOf(last).inputValue());
  }
  assert.deepEqual(names, ["Student 5", "Student 3, corrected", "My own work"]);
  await context.close();
});

test("while nothing is kept the page goes on saying so, and stops when there is room again", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await page.evaluate(() => {
    const put = Storage.prototype.setItem;
    globalThis.full = true;
    Storage.prototype.setItem = function (...given) {
      if (globalThis.full) throw new DOMException("full", "QuotaExceededError");
      return put.apply(this, given);
    };
  });
  await nameOf(page).fill("One");
  await notice(page, "storage for this page is full");
  await page.getByLabel("File to open").setInputFiles({
    name: "two.ball.json",
    mimeType: "application/json",
    buffer: readFileSync(new URL("../../scenarios/balls/no-1-simple.ball.json", import.meta.url)),
  });
  await notice(page, "Opened two.ball.json");
  await page.getByRole("button", { name: "Close" }).click();
  await nameOf(page).fill("Three");
  await notice(page, "storage for this page is full");
  assert.deepEqual(await accessibilityFaults(page), []);
  await page.evaluate(() => {
    globalThis.full = false;
  });
  await nameOf(page).fill("Four");
  await page.locator(".notice").waitFor({ state: "detached" });
  await keptAs(page, "Four");
  await check();
  await context.close();
});

test("where only the work in hand has room, it is said that the rest is not kept", async () => {
  const { page, context, reload, check } = await site.open({ reducedMotion: "reduce" });
  await nameOf(page).fill("Mine");
  await keptAs(page, "Mine");
  const aside = { ...(await kept(page)).doc };
  await page.evaluate(
    ([key, aside]) => {
      const kept = JSON.parse(localStorage.getItem(key));
      localStorage.setItem(key, JSON.stringify({ ...kept, aside: [aside] }));
    },
    [KEY, aside],
  );
  await reload();
  await page.evaluate(() => {
    const put = Storage.prototype.setItem;
    Storage.prototype.setItem = function (key, value) {
      if (JSON.parse(value).aside?.length) throw new DOMException("full", "QuotaExceededError");
      return put.call(this, key, value);
    };
  });
  await nameOf(page).fill("Mine, longer");
  await notice(page, "set aside for Undo is kept only until you close this page");
  await keptAs(page, "Mine, longer");
  await check();
  await context.close();
});

test("what cannot be read stays, can be saved to a file, and goes only when it is thrown away", async () => {
  const { page, context, reload, check } = await site.open({ reducedMotion: "reduce" });
  for (const text of ["{ not json", '{"doc": "an older page\'s"}']) {
    await page.evaluate(([key, text]) => localStorage.setItem(key, text), [KEY, text]);
    await reload();
    await notice(page, "could not be read");
  }
  await notice(page, "cannot be read by this page");
  assert.deepEqual(await accessibilityFaults(page), []);
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save it to a file" }).click(),
  ]);
  assert.equal(readFileSync(await file.path(), "utf8"), '{ not json\n{"doc": "an older page\'s"}');
  await page.getByRole("button", { name: "Throw it away" }).click();
  await reload();
  assert.equal(await page.locator(".notice").count(), 0);
  await check();
  await context.close();
});

test("odd values of how it was looked at do not stop the page, and the ball is there", async () => {
  const { page, context, reload, check } = await site.open({ reducedMotion: "reduce" });
  await nameOf(page).fill("Looked at oddly");
  await page.getByLabel("Units").selectOption("metric");
  await page.waitForFunction((key) => localStorage.getItem(key)?.includes('"metric"'), KEY);
  for (const odd of [
    { plane: { normal: [0, 0, 0], depth_in: 0 } },
    { plane: 5, hidden: null, exploded: "x", selected: -3, tolerances: 7, target: "none" },
    { plane: { normal: [1, null, 0], depth_in: 0 }, hidden: [-1], room: "cellar", large: 3, hand: null },
    { hidden: "x", exploded: 9, markers: 1, theme: "pink" },
  ]) {
    await page.evaluate(
      ([key, odd]) => {
        const kept = JSON.parse(localStorage.getItem(key));
        localStorage.setItem(key, JSON.stringify({ ...kept, view: { ...kept.view, ...odd } }));
      },
      [KEY, odd],
    );
    await reload();
    assert.equal(await nameOf(page).inputValue(), "Looked at oddly");
    assert.equal(await page.getByLabel("Units").inputValue(), "metric");
    await check();
  }
  await context.close();
});
