// From every number on the page there is a way to the word that explains it,
// and from the word to its picture; by keyboard, and in a lesson without losing it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { go } from "./about.mjs";
import { accessibilityFaults, launch, PHONE, unfold } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

/**
 * Numbers in view without a way to a word: readouts, pairs of name and number,
 * fields, and cells of tables. A cell's way is in its row's or column's head or
 * in the caption, a field's in its label or the name of its group.
 */
const lost = (page) =>
  page.evaluate(() => {
    const seen = (element) => element.checkVisibility({ visibilityProperty: true });
    const way = (element) => Boolean(element?.querySelector(".term"));
    const words = (element) => (element?.textContent ?? "").trim().slice(0, 60);
    const found = [];
    const room = (element) => element.closest(".room, [id^=room-]")?.id ?? "";
    for (const readout of document.querySelectorAll(".readout")) {
      if (seen(readout) && !way(readout.querySelector(".readout-label")))
        found.push(`readout ${words(readout.querySelector(".readout-label"))}`);
    }
    for (const item of document.querySelectorAll("dl > div")) {
      const value = item.querySelector("dd");
      // A date counts nothing.
      if (item.closest(".sheet-for")) continue;
      if (seen(item) && /\d/.test(value?.textContent ?? "") && !way(item.querySelector("dt")))
        found.push(`list ${room(item)} ${words(item)}`);
    }
    for (const field of document.querySelectorAll(".field")) {
      if (!seen(field) || way(field.querySelector(".field-label"))) continue;
      const group = [field.closest("fieldset")?.querySelector("legend"), field.closest(".optional")];
      const cell = field.closest("td");
      const head = cell?.closest("table")?.querySelectorAll("thead th, thead td")[cell.cellIndex];
      if (![...group, head].some(way)) found.push(`field ${room(field)} ${words(field)}`);
    }
    for (const table of document.querySelectorAll("table")) {
      if (!seen(table) || way(table.querySelector("caption"))) continue;
      const heads = table.querySelectorAll("thead tr:last-child > *");
      for (const cell of table.querySelectorAll("tbody td, tfoot td")) {
        if (!/\d/.test(cell.textContent) && !cell.querySelector("input")) continue;
        const row = cell.parentElement.querySelector("th");
        if (!way(row) && !way(heads[cell.cellIndex]))
          found.push(
            `table ${room(table)} ${words(table.querySelector("caption"))}: ${words(row)} / ${words(heads[cell.cellIndex])}`,
          );
      }
    }
    return [...new Set(found)];
  });

test("every number of every room has a way to the glossary", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  // Drilled, on oil: more numbers than any other ball has.
  await page.getByText("Drill it for a hand").click();
  await page.getByLabel("The ball is drilled").check();
  await unfold(page);
  for (const part of await page.locator("#room-bench .part-head").all()) {
    await part.click();
    await unfold(page);
    assert.deepEqual(await lost(page), []);
  }
  await page.getByLabel("Pattern", { exact: true }).selectOption({ index: 0 });
  const pour = page.locator("#room-scale").getByRole("button", { name: /^Pour [\d,]+ balls$/ });
  await page
    .locator("#room-scale")
    .getByRole("textbox", { name: /^Balls/ })
    .fill("1000");
  await pour.click();
  await page.locator("#room-scale .histogram").first().waitFor({ timeout: 60_000 });
  await unfold(page);
  await page.waitForFunction(() => document.querySelectorAll(".weight-line-table tbody tr").length > 3);
  await page.waitForFunction(() => document.querySelectorAll(".wear-table tbody tr").length > 1);
  assert.deepEqual(await lost(page), []);
  for (const name of ["Shelf", "Sheet"]) {
    await go(page, name);
    await unfold(page);
    if (name === "Shelf") {
      for (const box of await page
        .locator("#room-shelf input[type=checkbox]")
        .all()
        .then((all) => all.slice(0, 2)))
        await box.check();
      await page.locator(".compare-table").first().waitFor();
      await unfold(page);
    } else await page.locator(".sheet-numbers").first().waitFor();
    assert.deepEqual(await lost(page), [], name);
  }
  await check();
  await context.close();
});

test("from the strip of numbers on a phone too", async () => {
  const { page, context, check } = await site.open({ viewport: PHONE, reducedMotion: "reduce" });
  assert.deepEqual(await lost(page), []);
  await page.locator(".strip").getByRole("button", { name: "Weight" }).click();
  await page.getByRole("button", { name: "See it drawn weight" }).click();
  await page.waitForFunction(() => document.activeElement?.querySelector("h4")?.textContent === "weight");
  await check();
  await context.close();
});

test("in a lesson a number leads to its word by keyboard, and back to the step as it was", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await go(page, "Lessons");
  await page.getByText("Reading the lessons").waitFor({ state: "detached" });
  await page.getByRole("button", { name: "Take this lesson Why a house ball goes long" }).click();
  const panel = page.getByRole("region", { name: "Lesson", exact: true });
  for (let step = 0; step < 2; step++) {
    await panel
      .locator(".lesson-way button.primary, .lesson-way button", { hasText: /^(Next|Go on)/ })
      .first()
      .click();
  }
  await panel.getByRole("heading", { name: "Still missing" }).waitFor();
  await page.locator("#room-bench .part-head", { hasText: "body" }).click();
  const field = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
  await field.fill("1.11");
  assert.deepEqual(await lost(page), []);
  const word = panel.locator(".watch").getByRole("button", { name: "the RG" });
  await word.focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.activeElement?.querySelector("h4")?.textContent === "RG");
  await page.getByRole("button", { name: "Back to the lesson" }).click();
  await page.waitForFunction(() => document.activeElement?.id === "lesson-step");
  await panel.getByRole("heading", { name: "Still missing" }).waitFor();
  assert.equal(await field.inputValue(), "1.11");
  // A word in what the step holds fast opens all the same, by pointer and by keyboard, and leads on.
  await page.locator("#room-bench .part-head", { hasText: "cover" }).click();
  const held = page.locator(".part[data-open]");
  assert.ok(await held.getByRole("textbox", { name: /^Density/ }).isDisabled());
  await held.getByRole("button", { name: "Density" }).click();
  await page.getByText("How heavy a material is for its size").waitFor();
  await page.keyboard.press("Escape");
  await held.getByRole("button", { name: "Density" }).focus();
  await page.keyboard.press("Enter");
  await page.getByText("How heavy a material is for its size").waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await page.getByRole("button", { name: "See it drawn density" }).press("Enter");
  await page.waitForFunction(() => document.activeElement?.querySelector("h4")?.textContent === "density");
  await page.getByRole("button", { name: "Back to the lesson" }).click();
  await page.waitForFunction(() => document.activeElement?.id === "lesson-step");
  await panel.getByRole("heading", { name: "Still missing" }).waitFor();
  await check();
  await context.close();
});

test("words of counting are drawn from balls that are poured for them", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await go(page, "Lessons");
  await page.getByRole("navigation", { name: "In Lessons" }).getByRole("button", { name: "Words" }).click();
  const words = page.getByRole("region", { name: "Words of counting" });
  await page.waitForFunction(
    () => {
      const all = [...document.querySelectorAll(".words-entry")];
      return all.length > 70 && all.every((entry) => entry.querySelector("svg"));
    },
    undefined,
    { timeout: 60_000 },
  );
  assert.equal(await words.locator("figure").count(), 8);
  for (const text of await page.locator(".words-entry figcaption").allTextContents())
    assert.ok(text.length > 5, text);
  assert.match(
    await words.locator("figcaption").nth(0).textContent(),
    /Here: [\d.]+.% \([\d.]+ to [\d.]+%\)/,
  );
  assert.deepEqual(await accessibilityFaults(page), []);
  await check();
  await context.close();
});
