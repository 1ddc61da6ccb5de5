// A slider in hand stays where it is, whatever its value changes above it or in the
// rooms beside it: by mouse and by keyboard, on a desk and on a phone.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { DESKTOP, launch, PHONE } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

for (const [where, viewport] of Object.entries({ "a desk": DESKTOP, "a phone": PHONE })) {
  test(`a piece drawn out of the ball: its row and the rooms beside it stay, on ${where}`, async () => {
    const { page, context, check } = await site.open({ viewport, reducedMotion: "reduce" });
    if (viewport === PHONE) await page.locator(".rooms-nav").getByRole("button", { name: "Bench" }).click();
    const slider = page.locator(".part[data-open]").getByRole("slider", { name: /^Height/ });
    await slider.scrollIntoViewIfNeeded();
    const tops = () =>
      page.evaluate(() =>
        [".saw", ".lane", ".readout"].map((name) => document.querySelector(name).getBoundingClientRect().top),
      );
    const box = await slider.boundingBox();
    const rooms = await tops();
    const stays = async (when) => {
      const { y } = await slider.boundingBox();
      assert.ok(Math.abs(y - box.y) <= 1, `${when}: from ${box.y} to ${y}`);
      assert.deepEqual(await tops(), rooms, when);
    };
    const middle = box.y + box.height / 2;
    await page.mouse.move(box.x + 0.1 * box.width, middle);
    await page.mouse.down();
    for (const share of [0.2, 0.3, 0.4, 0.6, 0.9]) {
      await page.mouse.move(box.x + share * box.width, middle);
      await page.waitForTimeout(80);
      await stays(`${share} of the way`);
    }
    await page.locator(".part-problem, .says-wrong").first().waitFor();
    await page.mouse.up();
    await stays("let go");
    for (let press = 0; press < 8; press += 1) await page.keyboard.press("PageDown");
    await page.locator(".part-problem, .says-wrong").first().waitFor({ state: "detached" });
    await stays("back by keyboard");
    await check();
    await context.close();
  });
}
