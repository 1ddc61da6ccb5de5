// With reduced motion asked for nothing moves by itself, in any room; without it,
// what runs by itself ends, and can be stopped.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { go } from "./about.mjs";
import { launch } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const STILL_MS = 700;

/** What was drawn in a while: changes of the document, drawing by WebGL, and animations. */
const stirred = (page) =>
  page.evaluate(
    (still_ms) =>
      new Promise((done) => {
        let drawn = 0;
        const seen = [];
        const real = WebGL2RenderingContext.prototype.clear;
        WebGL2RenderingContext.prototype.clear = function (...given) {
          drawn += 1;
          return real.apply(this, given);
        };
        const watch = new MutationObserver((records) => {
          for (const { target, attributeName } of records)
            seen.push(`${target.nodeName} ${target.className?.baseVal ?? target.className} ${attributeName}`);
        });
        watch.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
        setTimeout(() => {
          watch.disconnect();
          WebGL2RenderingContext.prototype.clear = real;
          done({ drawn, seen, running: document.getAnimations().length });
        }, still_ms);
      }),
    STILL_MS,
  );
const NOTHING = { drawn: 0, seen: [], running: 0 };

test("with reduced motion nothing moves by itself, in any room", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await page.waitForTimeout(STILL_MS);
  assert.deepEqual(await stirred(page), NOTHING, "the workshop");
  const saw = page.getByRole("region", { name: "Saw", exact: true });
  await saw.getByRole("button", { name: "Zoom in" }).click();
  await saw.getByRole("button", { name: "Across" }).click();
  await page.waitForTimeout(STILL_MS);
  assert.deepEqual(await stirred(page), NOTHING, "the ball turned and cut");
  await page.locator(".template").nth(1).hover();
  assert.equal((await stirred(page)).running, 0, "a button under the pointer");

  await go(page, "Shelf");
  for (const name of ["No. 1, simple", "No. 4, nested core"])
    await page.getByLabel(`Compare ${name}`, { exact: true }).check();
  await page.locator(".compare-lane path.shot").first().waitFor();
  await page.waitForTimeout(1500);
  assert.deepEqual(await stirred(page), NOTHING, "two shots side by side");
  assert.equal(await page.locator(".compare .transport .play").textContent(), "Play");
  for (const name of ["Sheet", "Lessons"]) {
    await go(page, name);
    await page.waitForTimeout(2000);
    assert.deepEqual(await stirred(page), NOTHING, name);
  }
  await check();
  await context.close();
});

test("without it the shot runs once, can be stopped, and ends by itself", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "no-preference" });
  const play = page.locator(".room-lane .transport .play");
  await play.filter({ hasText: "Play" }).waitFor();
  await play.click();
  await play.filter({ hasText: "Pause" }).click();
  await play.filter({ hasText: "Play" }).waitFor();
  await page.waitForTimeout(STILL_MS);
  assert.deepEqual(await stirred(page), NOTHING);
  await check();
  await context.close();
});
