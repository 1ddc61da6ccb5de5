// The Bench and the Scale as a person uses them.
import assert from "node:assert/strict";
import { readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, NARROW, PHONE, shoot } from "./harness.mjs";

const PROJECTOR = { width: 1920, height: 1080 };

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

/** A readout of the Scale by its name, as a number. */
async function readout(page, name) {
  const shown = page.locator(".readout", {
    has: page.locator(".readout-label", { hasText: name }),
  });
  return Number((await shown.locator(".value").first().textContent()).replace("\u2212", "-"));
}

/** Opens a part of the ball on the Bench. */
async function openPart(page, name) {
  const head = page.locator(".part-head", {
    has: page.locator(".part-title", { hasText: name }),
  });
  if ((await head.getAttribute("aria-expanded")) === "false") await head.click();
  return page.locator(".part[data-open]");
}

test("the first view is a whole ball: parts, cut, numbers and shot, and an invitation", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  assert.ok((await page.locator(".part").count()) >= 4, "three pieces and the cover");
  const weight = await readout(page, "Weight");
  assert.ok(weight > 12 && weight <= 16, `a ball of sensible weight, not ${weight} lb`);
  assert.match(await page.locator(".room-bench .invitation").textContent(), /^Change something/);
  for (const room of ["Bench", "Saw", "Scale", "Lane"]) {
    assert.ok(await page.getByRole("heading", { name: room, exact: true }).isVisible(), room);
  }
  await shoot(page, "bench-first-desktop");
  await check();
  await context.close();
});

test("a template, a dragged slider, a changed RG, undo and redo", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  const templates = page.locator(".template");
  assert.equal(await templates.count(), 6);
  const firstRg = await readout(page, "about the easiest axis");
  await templates.nth(1).click();
  const rg = await readout(page, "about the easiest axis");
  assert.notEqual(rg, firstRg);

  const part = page.locator(".part[data-open]");
  const slider = part.getByRole("slider", { name: /^Density/ });
  const box = await slider.boundingBox();
  await page.mouse.move(box.x + box.width * 0.4, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.75, box.y + box.height / 2, {
    steps: 8,
  });
  await page.mouse.up();
  const changed = await readout(page, "about the easiest axis");
  assert.notEqual(changed, rg);
  assert.match(await page.locator(".readout .delta").first().textContent(), /[+\u2212]\d/);

  await page.keyboard.press("Control+z");
  assert.equal(await readout(page, "about the easiest axis"), rg, "one drag is one step of undo");
  await page.keyboard.press("Control+Shift+z");
  assert.equal(await readout(page, "about the easiest axis"), changed);
  await page.getByRole("button", { name: "Undo" }).click();
  await page.getByRole("button", { name: "Undo" }).click();
  assert.equal(await readout(page, "about the easiest axis"), firstRg);
  await check();
  await context.close();
});

test("the keyboard alone moves a slider and types a number", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  const part = page.locator(".part[data-open]");
  const slider = part.getByRole("slider", { name: /^Density/ });
  const field = part.getByRole("textbox", { name: /^Density/ });
  const start = Number(await field.inputValue());
  await slider.focus();
  await page.keyboard.press("ArrowRight");
  assert.ok(Math.abs(Number(await field.inputValue()) - start - 0.01) < 1e-9);
  await page.keyboard.press("Tab");
  assert.ok(await field.evaluate((element) => element === document.activeElement));
  const weight = await readout(page, "Weight");
  await page.keyboard.press("Control+a");
  await page.keyboard.type("3.1");
  assert.equal(await field.inputValue(), "3.1");
  assert.ok((await readout(page, "Weight")) > weight);
  await page.locator("[role=status]", { hasText: "Weight" }).waitFor({ state: "attached" });
  await check();
  await context.close();
});

test("what is no number yet stays as typed and changes nothing", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  const field = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
  const weight = await readout(page, "Weight");
  await field.fill("1.2.");
  assert.equal(await field.getAttribute("aria-invalid"), "true");
  await field.blur();
  assert.equal(await field.inputValue(), "1.2.");
  assert.equal(await readout(page, "Weight"), weight);
  await field.press("Escape");
  assert.notEqual(await field.inputValue(), "1.2.");
  assert.equal(await field.getAttribute("aria-invalid"), "false");
  await check();
  await context.close();
});

test("a mistake shows at its piece in words, and the last good ball stays", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  const weight = await readout(page, "Weight");
  const part = page.locator(".part[data-open]");
  const name = await part.locator(".part-title").textContent();
  await part.getByText("Position, tilt and squash").click();
  await part.getByRole("textbox", { name: /^Towards pin z/ }).fill("4.2");
  const mistake = part.locator(".says-wrong");
  await mistake.waitFor();
  assert.ok((await mistake.textContent()).length > 20);
  assert.equal(await readout(page, "Weight"), weight);
  assert.ok(await page.locator(".room-scale .stale").isVisible());
  assert.ok(await page.locator(".room-saw .stale").isVisible());
  await shoot(page, "bench-mistake-desktop");
  assert.deepEqual(await accessibilityFaults(page), []);

  await page.locator(".part-head", { hasText: name }).click();
  assert.ok(
    await page.locator(".part[data-wrong] .says-wrong").isVisible(),
    "also while the piece is closed",
  );
  await page.keyboard.press("Control+z");
  assert.equal(await page.locator(".says-wrong").count(), 0);
  assert.equal(await page.locator(".stale").count(), 0);

  await openPart(page, name);
  const density = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
  await density.fill("-2");
  assert.equal(await density.getAttribute("aria-invalid"), "true");
  assert.match(await page.locator(".part[data-open] .says-wrong").textContent(), /density/i);
  assert.equal(await readout(page, "Weight"), weight);
  await density.fill("4");
  assert.match(
    await page.locator(".part[data-open] .says-caution").textContent(),
    /published limit of 3\.80/,
  );
  await check();
  await context.close();
});

test("a mistake in folded controls opens them, also on the next visit", async () => {
  const { page, context, reload, check } = await site.open({ viewport: DESKTOP });
  const part = page.locator(".part[data-open]");
  await part.getByText("Position, tilt and squash").click();
  const along = part.getByRole("textbox", { name: "Along x" });
  await along.fill("0");
  await part.locator(".says-wrong").waitFor();
  assert.equal(await part.locator(".says-wrong").count(), 1, "told once");
  await page.waitForFunction(() => localStorage.getItem("pithball.bench/1")?.includes('"squash":[0,1]'));
  await reload();
  assert.ok(await part.locator(".says-wrong").isVisible());
  await along.fill("0.9");
  assert.equal(await page.locator(".says-wrong").count(), 0);
  assert.ok(await along.isVisible(), "and stays open once put right");
  await check();
  await context.close();
});

test("pieces are added, renamed, reordered, duplicated, reshaped and removed", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  const names = () => page.locator(".room-bench .part-title").allTextContents();
  const before = await names();
  await page.getByRole("button", { name: "Add a piece" }).click();
  const part = page.locator(".part[data-open]");
  await part.getByRole("textbox", { name: "Name" }).fill("marble");
  assert.deepEqual(await names(), [...before.slice(0, -1), "marble", before.at(-1)]);
  await part.getByRole("button", { name: "Pour marble earlier" }).click();
  assert.equal((await names()).indexOf("marble"), before.length - 2);
  for (const kind of ["ellipsoid", "cylinder", "frustum", "ring", "box", "lathe", "sphere"]) {
    await part.getByLabel("Shape").selectOption(kind);
    assert.equal(await page.locator(".says-wrong").count(), 0, kind);
    await page.locator(".stale").waitFor({ state: "detached" });
  }
  await part.getByRole("textbox", { name: /^Diameter/ }).fill("1.5");
  await part.getByText(/^Cuts and flow channels/).click();
  const volume = () =>
    page.locator(".shares-table tr", { hasText: "marble" }).locator("td").nth(1).textContent();
  const uncut = Number(await volume());
  await part.getByRole("button", { name: "Add a flow channel" }).click();
  assert.equal(await page.locator(".says-wrong").count(), 0);
  assert.ok(Number(await volume()) < uncut, "the channel takes volume from its piece");
  await part.getByRole("button", { name: "Duplicate marble" }).click();
  assert.ok((await names()).includes("marble copy"));
  await page.getByRole("button", { name: "Remove marble copy" }).click();
  assert.ok(!(await names()).includes("marble copy"));
  await page.getByText(/^Drilled holes/).click();
  const undrilled = await readout(page, "Weight");
  await page.getByRole("button", { name: "Add a hole" }).click();
  assert.ok((await readout(page, "Weight")) < undrilled, "a hole takes weight away");
  await check();
  await context.close();
});

test("the outline of a lathe piece is a table of points", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  const part = page.locator(".part[data-open]");
  await part.getByLabel("Shape").selectOption("lathe");
  const rows = part.locator(".profile-table tbody tr");
  const count = await rows.count();
  const weight = await readout(page, "Weight");
  await part.getByRole("button", { name: "Add a point after point 2" }).click();
  assert.equal(await rows.count(), count + 1);
  const out = part.getByRole("textbox", { name: "Point 3, out from the axis" });
  await out.fill(String(Number(await out.inputValue()) * 0.6));
  assert.notEqual(await readout(page, "Weight"), weight);
  await part.getByRole("button", { name: "Remove point 3" }).click();
  assert.equal(await rows.count(), count);
  await shoot(page, "bench-lathe-desktop");
  await check();
  await context.close();
});

test("saved, reloaded, found again; a broken and a full storage are said", async () => {
  const { page, context, reload, check } = await site.open({
    viewport: DESKTOP,
  });
  await page.locator(".ball-name input").fill("Thursday league");
  const density = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
  await density.fill("2.9");
  const rg = await readout(page, "about the easiest axis");
  await reload();
  assert.equal(await page.locator(".ball-name input").inputValue(), "Thursday league");
  assert.equal(await readout(page, "about the easiest axis"), rg);
  assert.equal(
    await page
      .locator(".part[data-open]")
      .getByRole("textbox", { name: /^Density/ })
      .inputValue(),
    "2.9",
  );

  // A mistake is found again too, beside the last good numbers.
  await density.fill("-1");
  await reload();
  assert.equal(await density.inputValue(), "-1");
  assert.ok(await page.locator(".part .says-wrong").isVisible());
  assert.equal(await readout(page, "about the easiest axis"), rg);

  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await density.fill("2.5");
  await page.locator(".notice", { hasText: "storage for this page is full" }).waitFor();
  await check();
  await context.close();
});

test("what was kept but cannot be read is said and set aside", async () => {
  const { page, context, reload, check } = await site.open({
    viewport: DESKTOP,
  });
  await page.evaluate(() => localStorage.setItem("pithball.bench/1", "{ not json"));
  await reload();
  await page.locator(".notice", { hasText: "could not be read" }).waitFor();
  assert.equal(await page.evaluate(() => localStorage.getItem("pithball.unreadable")), "{ not json");
  assert.ok((await readout(page, "Weight")) > 12);
  await check();
  await context.close();
});

test("where the browser keeps nothing, the page works and says so", async () => {
  const context = await site.browser.newContext({ viewport: DESKTOP, serviceWorkers: "block" });
  await context.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get() {
        throw new DOMException("denied", "SecurityError");
      },
    });
  });
  const page = await context.newPage();
  await page.goto(site.url);
  await page.locator(".notice", { hasText: "does not let the page keep anything" }).waitFor();
  assert.ok((await readout(page, "Weight")) > 12);
  await page.locator(".ball-name input").fill("Not kept");
  await page.locator(".notice", { hasText: "does not keep changes" }).waitFor();
  await context.close();
});

test("where the module cannot load, the page says so and hands the ball out", async () => {
  const context = await site.browser.newContext({ viewport: DESKTOP, serviceWorkers: "block" });
  const page = await context.newPage();
  await page.goto(site.url);
  await page.locator(".ball-name input").fill("Kept through it");
  await page.waitForFunction(() => localStorage.getItem("pithball.bench/1")?.includes("Kept through it"));
  await page.route("**/*.wasm", (route) => route.abort());
  await page.reload();
  await page.getByRole("heading", { name: "Pithball has stopped" }).waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await shoot(page, "bench-stopped");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the ball to a file" }).click(),
  ]);
  assert.equal(JSON.parse(readFileSync(await download.path(), "utf8")).name, "Kept through it");
  await page.unroute("**/*.wasm");
  await page.getByRole("button", { name: "Load the page again" }).click();
  await page.locator(".ball-name input").waitFor();
  assert.equal(await page.locator(".ball-name input").inputValue(), "Kept through it");
  await context.close();
});

test("a ball is saved to a file and opened again; a broken file is refused in words", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  await page.locator(".ball-name input").fill("No. 9, copy");
  const rg = await readout(page, "about the easiest axis");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save ball" }).click(),
  ]);
  assert.equal(download.suggestedFilename(), "no-9-copy.ball.json");
  const path = await download.path();
  const file = JSON.parse(readFileSync(path, "utf8"));
  assert.equal(file.format, "pithball.ball/1");

  await page.locator(".template").first().click();
  assert.notEqual(await readout(page, "about the easiest axis"), rg);
  const open = page.getByLabel("File to open");
  await open.setInputFiles({
    name: "copy.ball.json",
    mimeType: "application/json",
    buffer: readFileSync(path),
  });
  await page.locator(".notice", { hasText: "Opened copy.ball.json" }).waitFor();
  assert.equal(await page.locator(".ball-name input").inputValue(), "No. 9, copy");
  assert.equal(await readout(page, "about the easiest axis"), rg);

  const broken = join(tmpdir(), "broken.ball.json");
  writeFileSync(broken, JSON.stringify({ ...file, diameter_in: -1 }));
  await open.setInputFiles(broken);
  await page
    .locator(".notice", {
      hasText: /broken\.ball\.json was not opened\. .*diameter_in/,
    })
    .waitFor();
  assert.equal(await readout(page, "about the easiest axis"), rg);

  const [shot] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save shot" }).click(),
  ]);
  const saved = JSON.parse(readFileSync(await shot.path(), "utf8"));
  assert.equal(saved.format, "pithball.shot/1");
  assert.equal(saved.ball.name, "No. 9, copy");
  await check();
  await context.close();
});

test("metric units change what is read and typed, not the ball", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  const pounds = await readout(page, "Weight");
  const inches = await readout(page, "about the easiest axis");
  await page.getByLabel("Units").selectOption("metric");
  assert.ok(Math.abs((await readout(page, "Weight")) - pounds * 0.45359237) < 0.003);
  assert.ok(Math.abs((await readout(page, "about the easiest axis")) - inches * 25.4) < 0.02);
  await page.getByLabel("Units").selectOption("trade");
  assert.equal(await readout(page, "Weight"), pounds);
  await check();
  await context.close();
});

test("a word of the trade opens its meaning and closes with Escape", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  await page.locator(".room-scale").getByRole("button", { name: "Differential", exact: true }).click();
  const meaning = page.locator(".meaning:popover-open");
  assert.match(await meaning.textContent(), /highest and lowest RG/);
  await page.keyboard.press("Escape");
  assert.equal(await meaning.count(), 0);
  await check();
  await context.close();
});

for (const [name, viewport] of Object.entries({
  phone: PHONE,
  narrow: NARROW,
})) {
  test(`one room at a time with the numbers always in view, ${name}`, async () => {
    const { page, context, check } = await site.open({ viewport });
    for (const room of ["Bench", "Saw", "Scale", "Lane"]) {
      const tab = page.getByRole("navigation").getByRole("button", { name: room });
      await tab.click();
      assert.equal(await tab.getAttribute("aria-current"), "true");
      assert.ok(await page.locator(`.room-${room.toLowerCase()}`).isVisible());
      assert.equal(await page.locator(".room:visible").count(), 1);
      await page.locator(".rooms").evaluate((rooms) => rooms.scrollTo(0, rooms.scrollHeight));
      for (const item of await page.locator(".strip dd").all()) assert.ok(await item.isVisible());
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      assert.ok(wide <= 0, `${room} runs ${wide} px out of the window`);
      await page.locator(".rooms").evaluate((rooms) => rooms.scrollTo(0, 0));
      await shoot(page, `bench-${name}-${room.toLowerCase()}`);
      assert.deepEqual(await accessibilityFaults(page), [], `${room}, ${name}`);
    }
    await check();
    await context.close();
  });
}

for (const [name, viewport, colorScheme] of [
  ["desktop", DESKTOP, "light"],
  ["desktop-dark", DESKTOP, "dark"],
  ["projector", PROJECTOR, "light"],
]) {
  test(`everything in view and accessible, ${name}`, async () => {
    const { page, context, check } = await site.open({ viewport, colorScheme });
    const over = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    assert.ok(over <= 0, `the page runs ${over} px out of the window`);
    await shoot(page, `bench-${name}`);
    assert.deepEqual(await accessibilityFaults(page), []);
    await check();
    await context.close();
  });
}

test("on a phone laid on its side the page scrolls and the numbers stay", async () => {
  const { page, context, check } = await site.open({ viewport: { width: 844, height: 390 } });
  await page.getByRole("navigation").getByRole("button", { name: "Scale" }).click();
  await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
  const strip = await page.locator(".strip").boundingBox();
  assert.ok(strip.y >= 0 && strip.y + strip.height <= 390, `the numbers are at ${strip.y}`);
  assert.deepEqual(await accessibilityFaults(page), []);
  await check();
  await context.close();
});

test("a ball that would hop off the lane is weighed and shown; the lane says why it is not thrown", async () => {
  const { page, context, reload, check } = await site.open({ viewport: DESKTOP });
  const weight = await readout(page, "Weight");
  await page
    .locator(".part[data-open]")
    .getByRole("textbox", { name: /^Density/ })
    .fill("15");
  const stale = page.locator(".room-lane .stale");
  await stale.waitFor();
  assert.match(await stale.textContent(), /hop up off the lane at [\d.]+\sft.*last good one\.$/);
  assert.ok((await readout(page, "Weight")) > weight + 1, "the ball itself is the one on the Bench");
  await page.getByLabel("Units").selectOption("metric");
  assert.match(await stale.textContent(), /hop up off the lane at [\d.]+\sm:/);
  await reload();
  await stale.waitFor();
  await check();
  await context.close();
});

test("a mistake is told in the units chosen", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  const part = page.locator(".part[data-open]");
  await part.getByRole("textbox", { name: /^Diameter/ }).fill("6");
  const says = part.locator(".says-wrong").first();
  const inches = Number((await says.textContent()).match(/ by ([\d.]+)\sin\.$/)?.[1]);
  await page.getByLabel("Units").selectOption("metric");
  const mm = Number((await says.textContent()).match(/ by ([\d.]+)\smm\.$/)?.[1]);
  assert.ok(inches > 0 && Math.abs(mm - inches * 25.4) < 0.01 * mm, `${inches} in, ${mm} mm`);
  await check();
  await context.close();
});

test("on a laptop every number of the Scale is in view at once", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  const room = await page.locator(".room-scale").boundingBox();
  const shown = page.locator(".room-scale > .room-body > .readout");
  assert.equal(await shown.count(), 6);
  for (const one of await shown.all()) {
    const box = await one.boundingBox();
    assert.ok(box.y + box.height <= room.y + room.height, await one.textContent());
  }
  await check();
  await context.close();
});
