// Balls side by side: the same numbers as everywhere, one scale, one lane, one
// time base, told apart without colour.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { accessibilityFaults, launch, NARROW, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const nav = (page, name) =>
  page
    .getByRole("navigation", { name: /Places|Rooms/ })
    .getByRole("button", { name, exact: true })
    .click();

async function shelfOpen(options) {
  const opened = await site.open({ reducedMotion: "reduce", ...options });
  await nav(opened.page, "Shelf");
  await opened.page.getByRole("heading", { name: "On the bench now" }).waitFor();
  return { ...opened, compare: opened.page.getByRole("region", { name: "Side by side" }) };
}

const choose = async (page, ...names) => {
  for (const name of names) await page.getByLabel(`Compare ${name}`, { exact: true }).first().check();
};
const plain = (text) => text.replaceAll("\u2212", "-").replaceAll("\u00a0", " ");

/** The cells of a row as numbers, each with what sets it apart from the first. */
async function row(table, label) {
  const cells = await table
    .locator("tr", { has: table.page().locator("th[scope=row]", { hasText: label }) })
    .first()
    .locator("td")
    .evaluateAll((all) =>
      all.map((cell) => [cell.firstChild.textContent, cell.querySelector("span")?.textContent ?? ""]),
    );
  return cells.map(([value, apart]) => ({ value: Number(plain(value)), apart: plain(apart) }));
}
const balls = (page) => page.getByRole("table", { name: /^The balls in numbers/ });
const shots = (page) => page.getByRole("table", { name: /^The shots in numbers/ });

test("four balls of the house side by side: numbers, differences, one scale, a fifth does not fit", async () => {
  const { page, context, compare, check } = await shelfOpen();
  await compare.getByText("Mark up to four balls").waitFor();
  await choose(page, "No. 1, simple", "No. 4, nested core", "No. 5, thick cover", "No. 6, five-piece");
  assert.ok(await page.getByLabel("Compare No. 2, two-piece").isDisabled());
  for (const [label, digits] of [
    ["Weight", 2],
    ["RG, low", 3],
    ["Differential", 3],
    ["Top weight", 2],
  ]) {
    const [first, ...others] = await row(balls(page), label);
    assert.equal(first.apart, "");
    for (const { value, apart } of others) {
      const by = apart === "same" ? 0 : Number(apart);
      assert.ok(Math.abs(by - (value - first.value)) <= 1.01 * 10 ** -digits, `${label}: ${value} ${apart}`);
    }
  }
  const [angle] = await row(shots(page), "Entry angle");
  const said = plain(await compare.locator(".compare-says").textContent());
  assert.match(said, new RegExp(`^A: .*enters at ${angle.value.toFixed(1)}°`));
  // One scale: the outline of each ball is as wide as its diameter against the others.
  const radii = await compare
    .locator(".compare-section > svg > circle:first-of-type")
    .evaluateAll((all) => all.map((circle) => Number(circle.getAttribute("r"))));
  const diameters = [1, 4, 5, 6].map((n) => {
    const file = { 1: "no-1-simple", 4: "no-4-nested-core", 5: "no-5-thick-cover", 6: "no-6-five-piece" }[n];
    return JSON.parse(readFileSync(new URL(`../../scenarios/balls/${file}.ball.json`, import.meta.url)))
      .diameter_in;
  });
  for (const [i, radius] of radii.entries()) {
    assert.ok(Math.abs(radius / radii[0] - diameters[i] / diameters[0]) < 1e-9);
  }
  // Each by its own dash and mark, not by colour alone.
  const marks = await compare
    .locator("#compare-shots ~ .compare-lane .shot-mark path")
    .evaluateAll((all) => all.map((mark) => mark.getAttribute("d")));
  const dashes = await compare
    .locator("#compare-shots ~ .compare-lane path.shot")
    .evaluateAll((all) => all.map((path) => getComputedStyle(path).strokeDasharray));
  assert.equal(new Set(marks).size, 4);
  assert.equal(new Set(dashes).size, 4);
  const close = compare.getByRole("img", { name: "The last third of the lane, closer" });
  assert.equal(await close.locator("path.shot").count(), 4);
  assert.deepEqual(await accessibilityFaults(page), []);
  await shoot(page, "compare-desktop");

  const third = (await row(balls(page), "Weight"))[2].value;
  await compare.getByRole("button", { name: "Make it the first: No. 5, thick cover" }).click();
  assert.equal((await row(balls(page), "Weight"))[0].value, third);
  await compare.getByRole("button", { name: "Take out: No. 1, simple" }).click();
  assert.equal((await row(balls(page), "Weight")).length, 3);
  await page.getByLabel("Compare No. 2, two-piece").check();
  await page.getByLabel("Units").selectOption("metric");
  const [kg] = await row(balls(page), "Weight");
  assert.ok(Math.abs(kg.value - third * 0.45359237) < 0.006);
  await check();
  await context.close();
});

test("the bench as it is now has the numbers it has in the workshop", async () => {
  const { page, context, check } = await shelfOpen();
  await nav(page, "Workshop");
  const readout = async (label) =>
    Number(plain(await page.locator(".readout", { hasText: label }).first().locator(".value").textContent()));
  const weight = await readout("Weight");
  const angle = await readout("Entry angle");
  await nav(page, "Shelf");
  await choose(page, "No. 3, three-piece");
  assert.equal((await row(balls(page), "Weight"))[0].value, weight);
  assert.equal((await row(shots(page), "Entry angle"))[0].value, angle);
  await page.keyboard.press("Control+z");
  await page.getByRole("button", { name: "Put on the bench: No. 1, simple" }).click();
  assert.notEqual((await row(balls(page), "Weight"))[0].value, weight, "it follows the bench");
  await page.keyboard.press("Control+z");
  assert.equal((await row(balls(page), "Weight"))[0].value, weight);
  await check();
  await context.close();
});

test("releases of one ball: apart with each its own shot, one and the same with A's for all", async () => {
  const { page, context, compare, check } = await shelfOpen();
  const put = async (name) => {
    await page.locator(".put-form").getByLabel("Name").fill(name);
    await page.getByRole("button", { name: "Put on the shelf", exact: true }).click();
    await page.getByText(`Put on the shelf: ${name}.`).waitFor();
  };
  await put("As it is");
  await nav(page, "Workshop");
  const speed = page
    .getByRole("region", { name: "Lane", exact: true })
    .locator(".field", { has: page.locator(".field-label", { hasText: /^Speed/ }) })
    .locator("input[type=text]");
  await speed.fill("15");
  await speed.press("Enter");
  await nav(page, "Shelf");
  await put("Slower");
  await choose(page, "As it is", "Slower");
  await compare.getByText("these are one and the same ball").waitFor();
  await compare.locator(".compare-says").getByText("B rolls as A does.").waitFor();
  assert.deepEqual(
    (await row(shots(page), "Speed at release")).map(({ value }) => value),
    [17.5, 17.5],
  );
  await compare.getByLabel("Each its own shot, as it was put there").check();
  assert.deepEqual(
    (await row(shots(page), "Speed at release")).map(({ value }) => value),
    [17.5, 15],
  );
  assert.match(await compare.locator(".compare-says").textContent(), /B comes in .* steeper/);
  // Make the other the first, and with one shot for all both go at its speed.
  await compare.getByLabel(/^Same shot for all/).check();
  await compare.getByRole("button", { name: "Make it the first: Slower" }).click();
  assert.deepEqual(
    (await row(shots(page), "Speed at release")).map(({ value }) => value),
    [15, 15],
  );
  await check();
  await context.close();
});

test("all run on one clock: played, paused, put to a moment; still at first where motion is unwanted", async () => {
  const { page, context, compare, check } = await shelfOpen();
  await choose(page, "No. 1, simple", "No. 4, nested core");
  const play = compare.locator(".transport .play");
  const moment = compare.getByLabel("Moment of the shot");
  assert.equal(await play.textContent(), "Play");
  const marks = compare.locator(".fine-print", { hasText: "marks" });
  assert.match(await marks.textContent(), /the marks only say which path is which/, "at rest");
  await moment.fill("1");
  await compare.getByText("a mark rides with each ball").waitFor();
  assert.equal(await marks.count(), 0);
  assert.match(plain(await moment.getAttribute("aria-valuetext")), /^1\.00 s, A 2\d\.\d ft, B 2\d\.\d ft$/);
  const places = () =>
    compare
      .locator(".compare-lane .shot-mark")
      .evaluateAll((all) => all.map((mark) => mark.getAttribute("transform")));
  const before = await places();
  await play.click();
  assert.equal(await play.textContent(), "Pause");
  await page.waitForFunction(
    (old) => document.querySelector(".compare-lane .shot-mark").getAttribute("transform") !== old,
    before[0],
  );
  await play.click();
  await compare.getByRole("button", { name: "Play", exact: true }).waitFor();
  // The picture that was asked for as it was stopped comes yet.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  const paused = await places();
  await page.waitForTimeout(120);
  assert.deepEqual(await places(), paused);
  assert.ok(Number(await moment.inputValue()) > 1);
  await check();
  await context.close();
});

test("oil and drilling come along: kept, thrown, handed out and put on the bench again", async () => {
  const { page, context, reload, check } = await shelfOpen();
  const scenario = (path) => JSON.parse(readFileSync(new URL(`../../scenarios/${path}`, import.meta.url)));
  const shot = {
    ...scenario("shots/opening.shot.json"),
    ball: scenario("balls/no-4-nested-core.ball.json"),
    lane: { oil: scenario("oil/house.oil.json") },
    drilling: scenario("layouts/league-right.layout.json").drilling,
    name: "Drilled, on oil",
  };
  await page.getByLabel("Files to put on the shelf").setInputFiles({
    name: "whole.shot.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(shot)),
  });
  await page.getByText("1 put on the shelf from whole.shot.json.").waitFor();
  await reload();
  await nav(page, "Shelf");
  const entry = page.locator("[data-entry]");
  await entry.locator("summary").click();
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    entry.getByRole("button", { name: "Save as shot file" }).click(),
  ]);
  const saved = JSON.parse(readFileSync(await file.path(), "utf8"));
  assert.deepEqual({ ...saved, note: shot.note }, shot);
  // Drilled it is lighter than the house's own; the house's takes A's drilling with A's shot.
  await choose(page, "Drilled, on oil", "No. 4, nested core");
  const [own, house] = await row(balls(page), "Weight");
  assert.equal(own.value, house.value);
  await page.getByLabel("Each its own shot, as it was put there").check();
  const [drilled, whole] = await row(balls(page), "Weight");
  assert.equal(drilled.value, own.value);
  assert.ok(whole.value - drilled.value > 0.05, `${whole.value} ${drilled.value}`);
  await page.getByText("B rolled on another").waitFor();
  const [angle] = await row(shots(page), "Entry angle");
  await page.getByRole("button", { name: "Put on the bench: Drilled, on oil" }).click();
  await nav(page, "Workshop");
  const lane = page.getByRole("region", { name: "Lane", exact: true });
  const readout = lane.locator(".readout", { hasText: "Entry angle" }).first().locator(".value");
  assert.equal(Number(plain(await readout.textContent())), angle.value);
  await check();
  await context.close();
});

test("every ball is on the map and in its table", async () => {
  const { page, context, compare, check } = await shelfOpen();
  await page.getByRole("button", { name: "Put on the shelf", exact: true }).click();
  await page.getByText("Put on the shelf: ").waitFor();
  await compare.getByText("The same as a table").click();
  const table = page.getByRole("table", { name: "Every ball by RG" });
  assert.equal(await table.locator("tbody tr").count(), 8);
  assert.equal(await compare.locator(".ball-point").count(), 8);
  const rgs = (await table.locator("tbody tr td:nth-of-type(2)").allTextContents()).map(Number);
  assert.deepEqual(
    rgs,
    rgs.toSorted((a, b) => a - b),
  );
  await check();
  await context.close();
});

test("on a narrow screen the comparison stands below the list and nothing runs out of it", async () => {
  const { page, context, compare, check } = await shelfOpen({ viewport: NARROW });
  await choose(page, "No. 1, simple", "No. 4, nested core", "No. 5, thick cover");
  await compare.getByRole("heading", { name: "Cut open alike" }).scrollIntoViewIfNeeded();
  const wide = await page.evaluate(() => document.querySelector(".rooms").scrollWidth);
  assert.ok(wide <= NARROW.width, `${wide} px wide`);
  assert.deepEqual(await accessibilityFaults(page), []);
  await shoot(page, "compare-narrow");
  await check();
  await context.close();
});

test("the same hand: the same effort gives a ball of lower RG more revs; why it differs is told", async () => {
  const { page, context, compare, check } = await shelfOpen();
  await choose(page, "No. 1, simple", "No. 4, nested core");
  const revs = async () => (await row(shots(page), "Revs at release")).map(({ value }) => value);
  assert.deepEqual(await revs(), [300, 300]);
  await compare.getByRole("button", { name: "Same effort" }).click();
  const [first, second] = await revs();
  assert.equal(first, 300);
  assert.ok(second > 305, `${second}`);
  await compare.getByText("Why B differs from A").click();
  const why = compare.locator(".why");
  await why.getByRole("table", { name: /^B, less A/ }).waitFor();
  assert.match(await why.locator(".why-says").textContent(), /B/);
  await compare.getByLabel("Each its own shot, as it was put there").check();
  assert.deepEqual(await revs(), [300, 300]);
  await check();
  await context.close();
});
