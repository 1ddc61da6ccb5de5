// A number is typed a key at a time, as people do, not put in whole: what has been
// typed so far stays, though it is not yet a number, or not one that is taken.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { launch, unfold } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

test("every number field keeps what is typed in it, key by key", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await page.getByText("Drill it for a hand", { exact: true }).click();
  await page.getByRole("checkbox", { name: "The ball is drilled" }).check();
  await unfold(page);
  const names = await page
    .locator(".field-number input")
    .evaluateAll((all) => all.map(({ labels }) => labels[0]?.textContent));
  assert.ok(names.length > 80, `${names.length} fields`);
  const lost = await page.evaluate(async () => {
    const lost = [];
    const frame = () => new Promise(requestAnimationFrame);
    for (const field of document.querySelectorAll(".field-number input")) {
      if (!field.isConnected) continue;
      const [name, was] = [field.labels[0]?.textContent, field.value];
      field.focus();
      for (const text of ["0.", "-7", "99999"]) {
        field.value = text;
        field.dispatchEvent(new InputEvent("input", { bubbles: true }));
        await frame();
        if (field.isConnected && field.value !== text) lost.push(`${name}: ${text} became ${field.value}`);
      }
      field.value = was;
      field.dispatchEvent(new InputEvent("input", { bubbles: true }));
      await frame();
    }
    return lost;
  });
  assert.deepEqual(lost, []);
  await check();
  await context.close();
});

test("what is refused leaves the value as it was before the first key", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  const numbers = () => page.locator(".room-scale .readout .value").allTextContents();
  const before = await numbers();
  const type = async (field, text) => {
    await field.focus();
    await page.keyboard.press("Control+a");
    await page.keyboard.type(text);
  };

  // Ten inches do not fit into the ball: the numbers are not those of a puck of one inch.
  const part = page.locator(".part[data-open]");
  const across = part.getByRole("textbox", { name: /^Diameter/ });
  await type(across, "12");
  await page.getByText("still the last good one").first().waitFor();
  assert.deepEqual(await numbers(), before);
  await type(across, "2.4");
  assert.deepEqual(await numbers(), before);
  await type(across, "2 2/5");
  await part.getByText("Not a number yet; still using 2.4.").waitFor();
  assert.deepEqual(await numbers(), before);
  await page.keyboard.press("Escape");

  // The page's own numbers: what is used is what is said.
  await page.getByText("Poured a little off").click();
  const scatter = page.locator(".maker", { hasText: "Poured a little off" });
  await type(scatter.getByRole("textbox", { name: "Balls" }), "20000000");
  await scatter.getByText("Only a whole number from 100 to 1,000,000; still using 10000.").waitFor();
  await scatter.getByRole("button", { name: "Pour 10,000 balls" }).waitFor();
  await page.getByText("Map: RG").click();
  const map = page.locator(".maker", { hasText: "Map: RG" });
  const ends = map.locator(".map-side").first().getByRole("textbox");
  await ends.nth(1).waitFor();
  const [low, high] = await ends.evaluateAll((all) => all.map(({ value }) => value));
  await type(ends.nth(0), "99");
  await map.getByText(`Must be less than ${high}; still using ${low}.`).waitFor();
  await type(ends.nth(1), "0.01");
  await map.getByText(`Must be more than ${low}; still using ${high}.`).waitFor();
  await check();
  await context.close();
});
