// The Scale's published limits and the ball at other weights, as a person uses them.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, PHONE, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

async function openLine(page) {
  const summary = page.getByText("This ball at other weights", { exact: true });
  await summary.focus();
  await page.keyboard.press("Enter");
  await page.locator(".weight-line tbody tr").first().waitFor();
  return page.locator(".weight-line");
}

test("every published limit is told, with its source on demand", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  const published = page.locator(".published");
  assert.match(await published.textContent(), /\d+ within, 0 outside/);
  await published.getByText("Every rule", { exact: true }).click();
  assert.equal(await published.locator(".rules > li").count(), 16);
  const weight = published.locator(".rules > li").first();
  assert.match(await weight.textContent(), /^weight.*within.*\slb; allowed: 16\.00\slb or less$/);
  await weight.getByRole("button", { name: "weight" }).click();
  assert.match(await page.locator(".meaning:popover-open").textContent(), /United States Bowling Congress/);
  await page.keyboard.press("Escape");
  assert.match(await published.textContent(), /cannot be computed here/);
  await published.scrollIntoViewIfNeeded();
  await shoot(page, "scale-published-limits");
  assert.deepEqual(await accessibilityFaults(page), []);
  await check();
  await context.close();
});

test("the ball at other weights, by density and by size", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP });
  assert.equal(
    await page.locator(".weight-line table").count(),
    0,
    "nothing is worked out while it is closed",
  );
  const line = await openLine(page);
  const rows = line.locator("tbody tr");
  assert.equal(await rows.count(), 7);
  assert.deepEqual(
    (await rows.locator("th").allTextContents()).map((text) => Number.parseInt(text, 10)),
    [16, 15, 14, 13, 12, 11, 10],
  );
  const [own, shown] = await line
    .locator(".weight-line-table")
    .evaluate((table) => [table.scrollWidth, table.clientWidth]);
  assert.ok(own <= shown, `a table ${own} px wide in ${shown}`);
  // What is said counts what the material can be, and no more.
  const said = await line.locator("p", { hasText: "It can be made so" }).textContent();
  assert.match(
    said.replaceAll("\u00a0", " "),
    /from 16 lb \(low RG .* in\) to 14 lb \(low RG .* in\) with densities that its material has\./,
  );
  assert.equal(await line.getByText("All weights here are before drilling.").count(), 0);
  const feasible = line.locator("tbody tr:not([data-infeasible])");
  const densities = (await feasible.locator("td:nth-child(2)").allTextContents()).map(Number);
  assert.ok(densities.length >= 3);
  for (let n = 1; n < densities.length; n += 1) assert.ok(densities[n] < densities[n - 1], `${densities}`);
  assert.match(await line.textContent(), /floats in water if it weighs less than 1[12]\.\d\d/);
  await line.locator(".weight-chart").scrollIntoViewIfNeeded();
  await shoot(page, "scale-weight-line");
  assert.deepEqual(await accessibilityFaults(page), []);

  // Every ball that can be had is drawn, and one click puts it on the bench, as one step of undo.
  const cards = line.locator(".rung-card");
  assert.equal(await cards.count(), densities.length);
  await cards.last().locator(".section-drawing path").first().waitFor({ state: "attached" });
  await cards.last().scrollIntoViewIfNeeded();
  await shoot(page, "scale-weight-line-balls");
  const weight = page.locator(".readout").first().locator(".value");
  const before = await weight.textContent();
  const pounds = Number.parseInt(await cards.last().locator("strong").textContent(), 10);
  await cards
    .last()
    .getByRole("button", { name: new RegExp(`, ${pounds} lb$`) })
    .click();
  assert.match(await weight.textContent(), new RegExp(`^${pounds}\\.00`));
  await page.getByRole("button", { name: "Undo" }).click();
  assert.equal(await weight.textContent(), before);
  await cards.first().waitFor();

  const piece = (await line.getByLabel("What changes").locator("option").allTextContents()).at(-1);
  await line.getByLabel("What changes").selectOption({ label: piece });
  await line.getByLabel("How").selectOption("size");
  await line.getByRole("columnheader", { name: "Size, times" }).waitFor();
  assert.equal(await rows.count(), 7);
  for (const why of await line.locator(".rung-why").allTextContents()) assert.match(why, /\.$/);
  // The cover has no size of its own.
  await line.getByLabel("What changes").selectOption({ index: 0 });
  await line.getByRole("columnheader", { name: /g\/cc/ }).waitFor();
  assert.equal(await line.getByLabel("How").inputValue(), "density");
  await check();
  await context.close();
});

test("on a phone the table scrolls within itself", async () => {
  const { page, context, check } = await site.open({ viewport: PHONE });
  await page.getByRole("navigation").getByRole("button", { name: "Scale" }).click();
  const line = await openLine(page);
  // What cannot be made says so across the numbers' columns, and why below the table.
  const [cell, row] = await Promise.all(
    [".rung-why", "tr[data-infeasible]"].map((part) => line.locator(part).first().boundingBox()),
  );
  assert.ok(cell.width > 0.5 * row.width, `${cell.width} of ${row.width}`);
  assert.match(
    await line.locator(".weight-line-notes").textContent(),
    /10\slb: The rest of the ball is too heavy/,
  );
  const wide = await page.evaluate(() => document.documentElement.scrollWidth > innerWidth);
  assert.equal(wide, false, "the page itself does not scroll sideways");
  await check();
  await context.close();
});
