// The page's frame: the workshop as a whole or a room at a time, and the rooms
// that take the whole space.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, NARROW, PHONE, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const room = (page, name) => page.getByRole("region", { name, exact: true });
const places = (page) => page.getByRole("navigation", { name: "Places" });
const rooms = (page) => page.getByRole("navigation", { name: "Rooms" });
const focused = (page) => page.evaluate(() => document.activeElement?.id);

/** Counts what WebGL is asked to draw from now on. */
const countDrawing = (page) =>
  page.evaluate(() => {
    globalThis.drawn = 0;
    for (const name of ["clear", "drawArrays", "drawElements"]) {
      const real = WebGL2RenderingContext.prototype[name];
      WebGL2RenderingContext.prototype[name] = function (...given) {
        globalThis.drawn += 1;
        return real.apply(this, given);
      };
    }
  });
const settle = (page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

test("on a desk the Shelf takes the whole space and the workshop comes back as it was", async () => {
  const { page, context, reload, check } = await site.open({ reducedMotion: "reduce" });
  await room(page, "Saw").getByRole("button", { name: "Drawing" }).click();
  assert.equal(
    await places(page).getByRole("button", { name: "Workshop" }).getAttribute("aria-current"),
    "true",
  );
  await places(page).getByRole("button", { name: "Shelf" }).click();
  await room(page, "Shelf").waitFor();
  for (const name of ["Bench", "Saw", "Scale", "Lane"]) assert.equal(await room(page, name).count(), 0, name);
  assert.equal(
    await places(page).getByRole("button", { name: "Shelf" }).getAttribute("aria-current"),
    "true",
  );
  assert.equal(await places(page).locator("[aria-current]").count(), 1);
  const { width, height } = await room(page, "Shelf").boundingBox();
  assert.ok(width === DESKTOP.width && height > DESKTOP.height - 120, `${width} by ${height}`);
  await settle(page);
  assert.equal(await focused(page), "room-shelf");
  assert.deepEqual(await accessibilityFaults(page), []);
  await shoot(page, "frame-shelf-desktop");

  await reload();
  await room(page, "Shelf").waitFor();
  await places(page).getByRole("button", { name: "Workshop" }).click();
  for (const name of ["Bench", "Saw", "Scale", "Lane"]) await room(page, name).waitFor();
  assert.equal(await room(page, "Shelf").count(), 0);
  await check();
  await context.close();
});

test("what is out of view draws nothing, and draws again once it is in view", async () => {
  const { page, context, check } = await site.open();
  await room(page, "Scale").locator(".readout").first().waitFor();
  await page.locator(".template").first().click();
  await countDrawing(page);
  await places(page).getByRole("button", { name: "Shelf" }).click();
  await settle(page);
  await page.evaluate(() => {
    globalThis.drawn = 0;
  });
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Control+y");
  await page.waitForTimeout(300);
  assert.equal(await page.evaluate(() => globalThis.drawn), 0);
  assert.equal(
    await page.locator(".transport .play").textContent(),
    "Play",
    "the shot out of view has stopped",
  );
  await places(page).getByRole("button", { name: "Workshop" }).click();
  await page.waitForFunction(() => globalThis.drawn > 0);
  await check();
  await context.close();
});

test("a ball of the house goes on the bench from the Shelf, and undo takes it back there", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  const name = page.getByRole("textbox", { name: "Ball", exact: true });
  const first = await name.inputValue();
  await places(page).getByRole("button", { name: "Shelf" }).click();
  await page.getByRole("button", { name: "Put on the bench: No. 5, thick cover" }).click();
  await page.getByText("is on the bench").first().waitFor();
  await page.keyboard.press("Control+z");
  await page.getByRole("button", { name: "Redo", exact: true }).click();
  await places(page).getByRole("button", { name: "Workshop" }).click();
  assert.match(await name.inputValue(), /^No\. 5/);
  await page.keyboard.press("Control+z");
  assert.equal(await name.inputValue(), first);
  await check();
  await context.close();
});

for (const [size, viewport] of Object.entries({ phone: PHONE, narrow: NARROW })) {
  test(`one room at a time, the Shelf among them, ${size}`, async () => {
    const { page, context, check } = await site.open({ viewport, reducedMotion: "reduce" });
    assert.equal(await places(page).count(), 0);
    for (const name of ["Bench", "Shelf", "Lane"]) {
      const tab = rooms(page).getByRole("button", { name, exact: true });
      await tab.focus();
      await page.keyboard.press("Enter");
      await room(page, name).waitFor();
      await settle(page);
      assert.equal(await focused(page), `room-${name.toLowerCase()}`);
      assert.equal(await page.locator(".room:visible").count(), 1);
      assert.equal(await tab.getAttribute("aria-current"), "true");
      // Where several balls are in view, the numbers of one would mislead.
      assert.equal(await page.locator(".strip:visible").count(), name === "Shelf" ? 0 : 1);
      if (name === "Shelf") {
        assert.deepEqual(await accessibilityFaults(page), []);
        await shoot(page, `frame-shelf-${size}`);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        assert.ok(wide <= viewport.width, `${wide} px wide`);
      }
    }
    await check();
    await context.close();
  });
}

test("a room kept by another version that is not there does not leave the page empty", async () => {
  const { page, context, reload, check } = await site.open({ viewport: PHONE, reducedMotion: "reduce" });
  await page.evaluate(() => {
    // The page writes what it has as it goes; this stands in for another version doing so.
    addEventListener("pagehide", () => {
      const kept = JSON.parse(localStorage.getItem("pithball.bench/1") ?? "{}");
      kept.view.room = "attic";
      localStorage.setItem("pithball.bench/1", JSON.stringify(kept));
    });
  });
  await rooms(page).getByRole("button", { name: "Lane", exact: true }).click();
  await reload();
  await room(page, "Saw").waitFor();
  await check();
  await context.close();
});

test("on a desk a room can have the others' space, beside the Bench if it is not the long Lane", async () => {
  const { page, context, reload, check } = await site.open({ reducedMotion: "reduce" });
  await page.getByRole("button", { name: "Larger: Scale" }).click();
  assert.ok(await room(page, "Bench").isVisible());
  assert.ok(await room(page, "Saw").isHidden());
  await page.getByRole("button", { name: "All rooms" }).click();
  const before = await room(page, "Lane").boundingBox();
  await page.getByRole("button", { name: "Larger: Lane" }).click();
  const after = await room(page, "Lane").boundingBox();
  assert.ok(after.height > 2 * before.height && after.width > 1.2 * before.width);
  assert.ok(await room(page, "Bench").isHidden());
  assert.ok(await room(page, "Saw").isHidden());
  assert.ok(await room(page, "Scale").isHidden());
  assert.deepEqual(await accessibilityFaults(page), []);
  await shoot(page, "frame-larger-lane");
  await page.evaluate(() => dispatchEvent(new Event("pagehide")));
  await reload();
  assert.ok(await room(page, "Saw").isHidden());
  await page.getByRole("button", { name: "All rooms" }).focus();
  await page.keyboard.press("Enter");
  assert.ok(await room(page, "Saw").isVisible());
  await check();
  await context.close();
});
