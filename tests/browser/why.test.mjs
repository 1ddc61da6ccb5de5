// Why the shot changed, room for error, and the phases: as a person uses them.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, NARROW, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const minus = (text) => Number(text.replace("−", "-").replace(/[^\d.+-]/g, ""));

async function lane(options) {
  const opened = await site.open({ reducedMotion: "reduce", ...options });
  const { page } = opened;
  if (options.viewport.width < 1000) await page.getByRole("button", { name: "Lane", exact: true }).click();
  return { ...opened, room: page.getByRole("region", { name: "Lane" }) };
}

test("a change of release is told, its parts sum to the whole, and the hand can be read two ways", async () => {
  const { page, room, context, check } = await lane({ viewport: DESKTOP });
  await room.getByText("Why did the shot change?").click();
  const why = room.locator(".why-fold");
  await why.getByText("Change the ball, the release or the lane").waitFor();
  await why.getByRole("button", { name: "Measure from here" }).click();
  await room.getByRole("textbox", { name: /^Rev rate/ }).fill("340");
  await why.getByText(/Your shot now, against before, hooks .*All of it comes from the release\./).waitFor();

  // Another ball too: more rows, and every column sums.
  await page.locator(".template", { hasText: /simple/i }).click();
  await why.locator("tbody tr", { hasText: "RG" }).first().waitFor();
  await why.locator("tbody tr", { hasText: "Release" }).waitFor();
  const rows = await why
    .locator("tbody tr")
    .evaluateAll((all) => all.map((row) => [...row.querySelectorAll("td")].map((cell) => cell.textContent)));
  const whole = await why.locator("tfoot td").allTextContents();
  for (const [at, text] of whole.entries()) {
    const sum = rows.reduce((sum, row) => sum + minus(row[at]), 0);
    assert.ok(Math.abs(sum - minus(text)) <= 0.05 * (rows.length + 1) + 1e-9, `${sum} and ${text}`);
  }
  const revs = await why.locator("tfoot").textContent();
  await why.getByRole("button", { name: "Same effort" }).click();
  await why.getByText("This is a model choice").waitFor();
  await why.getByText(/Your shot now: \d+/).waitFor();
  assert.notEqual(await why.locator("tfoot").textContent(), revs);
  await why.scrollIntoViewIfNeeded();
  await shoot(page, "lane-why");
  assert.deepEqual(await accessibilityFaults(page), []);
  await why.getByRole("button", { name: "From the last change" }).click();
  await why.getByText("Measured from before your last change.").waitFor();
  await check();
  await context.close();
});

test("a ball in the gutter has nothing to compare, and that is said", async () => {
  const { room, context, check } = await lane({ viewport: DESKTOP });
  await room.getByText("Why did the shot change?").click();
  await room.getByRole("textbox", { name: /^Launch angle/ }).fill("6");
  await room.locator(".why-says", { hasText: "falls into the gutter" }).waitFor();
  assert.equal(await room.locator(".why table").count(), 0);
  await check();
  await context.close();
});

test("room for error: thousands of throws beside the page, a map, a table, words; it can be stopped", async () => {
  const { page, room, context, check } = await lane({ viewport: DESKTOP });
  await context.setOffline(true);
  await room.getByText("Room for error", { exact: true }).click();
  const area = room.locator(".area");
  await area.locator("table").waitFor();
  await area.locator("p", { hasText: "boards of room at the foul line" }).waitFor();
  await area.getByText("3,525 throws", { exact: false }).waitFor();
  for (const column of [0, 1]) {
    const cells = await area
      .locator("tbody:first-of-type tr")
      .evaluateAll(
        (all, column) => all.map((row) => Number(row.querySelectorAll("td")[column].textContent)),
        column,
      );
    const sum = cells.reduce((a, b) => a + b, 0);
    assert.ok(Math.abs(sum - 100) < 0.4, `${sum}`);
  }
  const said = await area.locator(".why-says").textContent();
  assert.equal(await area.locator("svg.area-map desc").textContent(), said);
  await area.scrollIntoViewIfNeeded();
  await shoot(page, "lane-area");
  assert.deepEqual(await accessibilityFaults(page), []);

  // Another shot: thrown again, stopped, and thrown again when asked.
  await room.getByRole("textbox", { name: /^Board/ }).fill("26");
  await area.getByRole("button", { name: "Stop" }).click();
  await area.getByText("Stopped.").waitFor();
  assert.equal(page.workers().length, 2);
  await area.getByRole("button", { name: "Throw again" }).click();
  await area.locator("table").waitFor();
  assert.notEqual(await area.locator(".why-says").textContent(), said);
  await check();
  await context.close();
});

test("the phases in numbers join, in either units, and fit a narrow screen", async () => {
  const { page, room, context, check } = await lane({ viewport: NARROW });
  const cells = await room
    .locator(".phases tbody tr")
    .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent)));
  assert.deepEqual(
    cells.map(([phase]) => phase),
    ["skid", "hook", "roll"],
  );
  assert.equal(cells[0][1], "0.0");
  assert.equal(cells[0][2], cells[1][1]);
  assert.equal(cells[2][2], "60.0");
  await room.getByText("Charts by distance", { exact: false }).click();
  for (const name of ["Bend of the path", "Axis rotation", "Axis tilt"]) {
    await room.getByRole("img", { name: `${name} by distance` }).waitFor();
  }
  // Each phase's bend is what its path turns over its length: no ripple in it.
  const bend = await room.locator("#lane-chart-bend-desc").textContent();
  const [, hook] = /hook (\d+\.\d+)/.exec(bend);
  assert.ok(Math.abs(Number(hook) - Number.parseFloat(cells[1][7]) / Number(cells[1][3])) < 0.02, bend);
  await room.getByText("Room for error", { exact: true }).click();
  await room.locator(".area table").waitFor();
  await room.locator(".area").scrollIntoViewIfNeeded();
  await shoot(page, "lane-area-narrow");
  const wide = await room.locator(".room-body").evaluate((body) => body.scrollWidth - body.clientWidth);
  assert.ok(wide <= 0, `${wide} px too wide`);
  await check();
  await context.close();
});
