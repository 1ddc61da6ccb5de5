// The main job as a person does it, from first look to finding it again.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { DESKTOP, launch, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

test("build a core, weigh it, saw it, roll it, save it, find it again", async () => {
  const { page, context, reload, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  const rg = page.locator(".readout", { hasText: "about the easiest axis" }).locator(".value").first();
  const sentence = page.locator(".lane-says");
  const shown = async () => [await rg.textContent(), await sentence.textContent()];

  // Choose a template.
  const first = await shown();
  await page.locator(".template", { hasText: /nested/i }).click();
  const chosen = await shown();
  assert.notDeepEqual(chosen, first);

  // Drag the density of a piece; the RG and the shot answer.
  const part = page.locator(".part[data-open]");
  const slider = part.getByRole("slider", { name: /^Density/ });
  const box = await slider.boundingBox();
  const drag = async (from, to) => {
    await page.mouse.move(box.x + box.width * from, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * to, box.y + box.height / 2, { steps: 6 });
    await page.mouse.up();
  };
  await drag(0.5, 0.7);
  const changed = await shown();
  assert.notEqual(changed[0], chosen[0]);
  await page.locator(".readout .delta").first().waitFor();
  await shoot(page, "job-1-built");

  // Saw along and across: the words beside the picture follow the plane.
  const saw = page.getByRole("region", { name: "Saw" });
  await saw.getByRole("button", { name: "Across" }).click();
  await saw.getByRole("button", { name: "Across", pressed: true }).waitFor();
  await shoot(page, "job-2-sawn");

  // Roll it with more revs: another sentence.
  const lane = page.getByRole("region", { name: "Lane" });
  const revs = lane.getByRole("textbox", { name: /^Rev rate/ });
  await revs.fill("380");
  await page.waitForFunction(
    (before) => document.querySelector(".lane-says").textContent !== before,
    changed[1],
  );
  await lane.getByRole("button", { name: "Play" }).click();
  await page.waitForTimeout(500);
  await shoot(page, "job-3-rolled");

  // Save it as a file under a name, load the page again, and it is there.
  await page.locator(".ball-name input").fill("Club night, heavier core");
  const saving = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save ball" }).click();
  const file = JSON.parse(readFileSync(await (await saving).path(), "utf8"));
  assert.equal(file.format, "pithball.ball/1");
  assert.equal(file.name, "Club night, heavier core");
  const kept = await shown();
  await reload();
  assert.equal(await page.locator(".ball-name input").inputValue(), "Club night, heavier core");
  assert.deepEqual(await shown(), kept);
  await shoot(page, "job-4-found");
  await check();
  await context.close();
});
