// The rest of the job by keyboard alone: drill, check, lighten, pour, seek, keep and
// compare, print, share, learn. The pointer is never used; every stop is seen.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { press, stop, tabTo, type } from "./by-keys.mjs";
import { DESKTOP, launch } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

test("drill, check, lighten and pour by keyboard alone", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  await press(page, /^Drill it for a hand/);
  await page.getByRole("checkbox", { name: "The ball is drilled" }).waitFor();
  await press(page, /^The ball is drilled/, "Space");
  await page.locator(".drill .layout-drawing").waitFor();
  const drilled = page.locator(".drilled");
  const before = await drilled.textContent();
  await press(page, /^Every rule/);
  await page.locator(".rules > li", { hasText: "static balance" }).waitFor();
  await type(page, /^Pin to PAP/, "2.5");
  await page.waitForFunction((before) => document.querySelector(".drilled").textContent !== before, before);

  await press(page, /^This ball at other weights/);
  const line = page.locator(".weight-line");
  await line.locator("table").first().waitFor();
  const inner = await line.locator("thead").first().textContent();
  await tabTo(page, ({ name }) => /^What changes/.test(name));
  await page.keyboard.press("ArrowDown");
  await page.waitForFunction(
    (before) => document.querySelector(".weight-line thead")?.textContent !== before,
    inner,
  );
  await press(page, /^To the bench: .* 14 lb/);
  await page.waitForFunction(() => document.querySelector(".ball-name input").value.endsWith("14 lb"));

  await press(page, /^Poured a little off/);
  const scatter = page.locator(".maker", { hasText: "Poured a little off" });
  await scatter.getByRole("textbox", { name: "Balls" }).waitFor();
  await type(page, /^Balls/, "1000");
  await press(page, /^Pour 1,000 balls/);
  await scatter.locator(".histogram").first().waitFor();
  await check();
  await context.close();
});

test("find a core, keep it, compare it by keyboard alone", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  await press(page, /^Find a core/);
  const seek = page.locator(".maker", { hasText: "Find a core" });
  await seek.getByRole("textbox", { name: "Starts" }).waitFor();
  await type(page, /^Wanted: Low RG/, "2.6");
  await type(page, /^Starts/, "2");
  await press(page, /^Seek a core/);
  await seek.locator(".rung-card").first().waitFor();
  const rg = () => page.locator(".room-scale .readout .value").nth(1).textContent();
  const sought = await rg();
  await press(page, /^To the bench/);
  await page.getByRole("button", { name: "Undo", exact: true, disabled: false }).waitFor();
  assert.notEqual(await rg(), sought);

  await press(page, /^Shelf$/);
  await press(page, /^Put on the shelf$/);
  await page.getByText(/^Put on the shelf: /).waitFor();
  await press(page, /^Compare No. 1, simple/, "Space");
  await press(page, /^Compare No. 4, nested core/, "Space");
  await page.locator(".compare-table").first().waitFor();
  await page.locator(".compare-lane path.shot").nth(1).waitFor();
  await check();
  await context.close();
});

test("print, share and take a lesson by keyboard alone", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.evaluate(() => {
    globalThis.printed = 0;
    globalThis.print = () => {
      globalThis.printed += 1;
    };
  });
  await press(page, /^Share link/);
  await page.getByText("characters long").first().waitFor();
  assert.match(await page.evaluate(() => navigator.clipboard.readText()), /#p1\./);

  await press(page, /^Sheet$/);
  await page.getByRole("button", { name: "Print…", disabled: false }).waitFor();
  await type(page, /^Bowler/, "Ada of the school club");
  await page.locator(".sheet", { hasText: "Ada of the school club" }).waitFor();
  await press(page, /^Print…/);
  assert.equal(await page.evaluate(() => globalThis.printed), 1);

  await press(page, /^Lessons$/);
  await page.getByText("Reading the lessons").waitFor({ state: "detached" });
  await press(page, /^Take this lesson/);
  await page.locator("#lesson-step").waitFor();
  assert.notEqual((await stop(page)).kind, "body");
  await check();
  await context.close();
});
