// The main job by keyboard alone: build, weigh, saw, roll and save, with the focus
// in view and visible at every stop on the way.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { stop, tabTo } from "./by-keys.mjs";
import { DESKTOP, launch, NARROW } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

test("build, weigh, saw, roll and save by keyboard alone", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  const weight = page.locator(".room-scale .readout .value").first();

  await tabTo(page, ({ kind, name }) => kind === "button" && /^Start from .*nested/i.test(name));
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => /nested/i.test(document.querySelector(".ball-name input").value));

  await tabTo(page, ({ kind }) => kind === "text");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("By keyboard");

  await tabTo(page, ({ kind, name }) => kind === "range" && /^Density/.test(name));
  const light = await weight.textContent();
  for (let n = 0; n < 12; n += 1) await page.keyboard.press("ArrowRight");
  await page.waitForFunction(
    (old) => document.querySelector(".room-scale .readout .value").textContent !== old,
    light,
  );
  // The result is said aloud once it has come to rest.
  await page
    .getByRole("status")
    .filter({ hasText: /^Weight .*RG .*differential/ })
    .waitFor({ state: "attached" });

  await tabTo(page, ({ name }) => name === "Across");
  await page.keyboard.press("Space");
  await page.getByRole("button", { name: "Across", pressed: true }).waitFor();
  await tabTo(page, ({ name }) => name === "Play");
  await page.keyboard.press("Enter");

  await tabTo(page, ({ name }) => name === "Save ball");
  const [download] = await Promise.all([page.waitForEvent("download"), page.keyboard.press("Enter")]);
  assert.equal(JSON.parse(readFileSync(await download.path(), "utf8")).name, "By keyboard");
  await check();
  await context.close();
});

test("with forced colours every control keeps an edge and the focus its mark", async () => {
  const { page, context, check } = await site.open({ viewport: NARROW, forcedColors: "active" });
  const bare = await page.evaluate(() =>
    [...document.querySelectorAll("button, input, select")]
      .filter((element) => element.checkVisibility())
      .filter((element) => {
        const style = getComputedStyle(element);
        const edged = style.borderStyle !== "none" || style.textDecorationLine !== "none";
        return element.localName === "button" && !edged;
      })
      .map((element) => element.className || element.textContent),
  );
  await page.keyboard.press("Tab");
  assert.ok((await stop(page)).marked);
  assert.deepEqual([...new Set(bare)], []);
  await check();
  await context.close();
});
