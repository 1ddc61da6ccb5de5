// A ball drilled for a hand: turned on with the keyboard, what follows on the
// Bench, the Scale, the Saw and the Lane, and the layout as a file.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, NARROW, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const layouts = new URL("../../scenarios/layouts/", import.meta.url);
const bench = (page) => page.locator(".room-bench");
const kept = (page) =>
  page
    .waitForTimeout(400)
    .then(() => page.evaluate(() => JSON.parse(localStorage.getItem("pithball.bench/1"))));

/** Opens the fold and ticks its box, by keyboard alone. */
async function turnOn(page) {
  await bench(page).getByText("Drill it for a hand", { exact: true }).focus();
  await page.keyboard.press("Enter");
  await bench(page).getByRole("checkbox", { name: "The ball is drilled" }).focus();
  await page.keyboard.press("Space");
  await page.locator(".drill .layout-drawing").waitFor();
}

test("drilling answers on Bench, Scale, Saw and Lane, and undoes", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  const numbers = () => page.locator(".room-scale .readout").first().textContent();
  const undrilled = await numbers();
  assert.equal(await page.locator(".drilled").count(), 0, "off until asked for");
  await turnOn(page);
  const scale = page.locator(".drilled");
  await scale.waitFor();
  assert.notEqual(await numbers(), undrilled);
  const weights = await scale.locator("tbody tr").first().locator("td").allTextContents();
  assert.ok(Number.parseFloat(weights[0]) > Number.parseFloat(weights[1]), `lighter: ${weights}`);
  assert.equal(await scale.getByText("within", { exact: true }).count(), 3);
  await page.getByText("This ball at other weights", { exact: true }).click();
  await page.getByText("All weights here are before drilling.").waitFor();
  const rule = page.locator(".rules > li", { hasText: "static balance" });
  await page.locator(".published").getByText("Every rule", { exact: true }).click();
  assert.match(await rule.textContent(), /within/);
  // Every drawn thing is told in words beside it.
  const words = await bench(page).locator("figcaption").textContent();
  assert.match(
    words,
    /the pin is above.*the PAP is above and to the right.*Holes: middle finger, ring finger, thumb\./,
  );
  assert.equal(await page.locator(".layout-drawing .hole .bore").count(), 3);
  // The inserts are parts of the ball as thrown, not of the recipe.
  assert.match(await page.locator(".room-scale .shares").textContent(), /thumb sleeve/);
  assert.equal((await kept(page)).doc.ball.pieces.length, 3);
  const lane = page.locator(".room-lane");
  await lane.getByText("This throw before and after drilling").click();
  const pins = lane.getByRole("row", { name: /^Board at the pins/ });
  await pins.waitFor();
  // Two paths on one lane, told apart by letter; the sentence says what the table's numbers do.
  await lane.locator(".drilling-lane .shot-mark.shot-1").waitFor();
  assert.equal(await lane.locator(".drilling-lane .shot-mark").count(), 2);
  assert.equal(await lane.locator(".drilling-close path.shot").count(), 2);
  const [before, after] = (await pins.locator("td").allTextContents()).map(Number.parseFloat);
  const told = await lane.locator(".drilling-key + .says").textContent();
  assert.notEqual(before, after);
  assert.match(told, new RegExp(`^B comes in .*${Math.abs(after - before).toFixed(1)} boards further`));
  await lane.locator(".drilling-lane").scrollIntoViewIfNeeded();
  await shoot(page, "drill-lane");
  await lane.getByText(/^Rings on the ball \(\d+\)$/).click();
  assert.match(await lane.locator(".lane-track").textContent(), /in at its widest .* a bow-tie/);
  assert.equal(await lane.locator(".lane-track tbody tr").count(), 3);
  // What the saw took away has no mark; the whole ball has.
  await page.getByRole("button", { name: "Whole", exact: true }).click();
  await page.locator(".solid-mark:not([hidden])", { hasText: "grip centre" }).waitFor({ state: "attached" });
  assert.equal(await page.locator(".solid-mark:not([hidden])", { hasText: "grip centre" }).count(), 1);
  await bench(page).locator(".drill-picture").scrollIntoViewIfNeeded();
  await shoot(page, "drill-desktop");
  assert.deepEqual(await accessibilityFaults(page), []);
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await scale.waitFor({ state: "detached" });
  assert.equal((await numbers()).includes(undrilled.slice(0, 12)), true);
  await check();
  await context.close();
});

test("a bowler without a thumb hole, a left hand, and what cannot be drilled", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  await turnOn(page);
  const drill = page.locator(".drill");
  await drill.getByRole("checkbox", { name: /^Thumb hole/ }).click();
  assert.equal(await page.locator(".layout-drawing .hole").count(), 2);
  await drill.getByRole("button", { name: "Left hand" }).click();
  assert.match(await drill.locator("figcaption").textContent(), /the PAP is above and to the left/);
  assert.equal((await kept(page)).doc.shot.hand, "left");
  await drill.getByRole("button", { name: "League right-hander" }).click();
  assert.equal(await page.locator(".layout-drawing .hole").count(), 3);
  // Spans that cannot go together: told beside the drilling, the last good ball stays.
  await drill.getByText(/^Thumb: /).click();
  const span = drill.getByRole("textbox", { name: "Span to the ring finger" });
  await span.fill("1");
  await drill
    .getByText(/spans differ by more than the fingers are apart/)
    .first()
    .waitFor();
  assert.equal(await page.locator(".layout-drawing .hole").count(), 3);
  await span.fill("3.9");
  await drill.getByText(/spans differ/).waitFor({ state: "detached" });
  // No bridge: the fingers run into each other, and it is told.
  await drill.getByRole("textbox", { name: "Bridge" }).fill("0");
  await drill.getByText(/Holes run into each other by/).waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await check();
  await context.close();
});

test("a track over a hole is warned of, and by how much another clears", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  await turnOn(page);
  const track = page.locator(".lane-track");
  assert.equal(await track.locator(".says-caution").count(), 0, "the common layout clears its holes");
  await page
    .locator(".room-lane")
    .getByRole("textbox", { name: /^Axis tilt/ })
    .fill("0");
  await page
    .locator(".drill")
    .getByRole("textbox", { name: /over from the grip centre/ })
    .fill("6.5");
  await track
    .getByText(/The track goes over a hole, .*first in turn \d+/)
    .first()
    .waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await check();
  await context.close();
});

test("a layout file is opened and saved, a wrong one told", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  const name = "two-handed-left.layout.json";
  const text = readFileSync(new URL(name, layouts), "utf8");
  const give = (name, text) =>
    page
      .locator('input[type="file"]')
      .setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
  await give(name, text);
  await page.getByText("the ball on the bench is drilled after it").waitFor();
  await bench(page).getByText("Drill it for a hand", { exact: true }).click();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save the layout to a file" }).click(),
  ]);
  assert.match(download.suggestedFilename(), /\.layout\.json$/);
  const saved = JSON.parse(readFileSync(await download.path(), "utf8"));
  const given = JSON.parse(text);
  for (const key of ["format", "hand", "layout", "drilling"]) assert.deepEqual(saved[key], given[key], key);
  await give("wrong.layout.json", text.replace('"bridge_in": 0.3125', '"bridge_in": -1'));
  await page.getByText(/wrong\.layout\.json was not opened.*drilling\.bridge_in/s).waitFor();
  await check();
  await context.close();
});

test("the grip's controls fit a narrow page and speak millimetres", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  await page.getByLabel("Units").selectOption("metric");
  await page.setViewportSize(NARROW);
  await page.getByRole("navigation").getByRole("button", { name: "Bench" }).click();
  await turnOn(page);
  assert.match(await page.locator(".drill figcaption").textContent(), /mm from the grip centre/);
  assert.doesNotMatch(await page.locator(".drill").textContent(), /\d\sin\b/);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
  assert.equal(wide, false, "the page itself does not scroll sideways");
  await page.locator(".drill-picture").scrollIntoViewIfNeeded();
  await shoot(page, "drill-narrow");
  await check();
  await context.close();
});
