// Every job of the maker says by a live region what came of it: in a sentence with
// its numbers, once; that it began and that it was stopped, too.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { launch } from "./harness.mjs";
import { heard, heardOf, hears, inTurn, listen, once } from "./heard.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

async function fold(page, name) {
  const panel = page.locator(".maker", { hasText: name });
  await panel.locator("summary").first().click();
  return panel;
}

test("pouring, levers, the map, scatter and the seeking of a core say what they found", async () => {
  const { page, context, reload, check } = await site.open({ reducedMotion: "reduce" });
  await listen(context);
  await reload();
  await heard(page);

  await fold(page, "How it is poured");
  once(await heardOf(page, /pours/), /^\d+ pours.*\d lb.*\. Nothing stands in the way of pouring it\.$/);

  const levers = await fold(page, "What moves what");
  once(await heardOf(page, /moves most/), /^The differential moves most with .*: .*\d/i);
  await levers.getByLabel("Ranked by").selectOption("weight_lb");
  once(await heardOf(page, /moves most/), /^The weight moves most with/i);

  const map = await fold(page, "Map: RG");
  once(await heardOf(page, /runs from/), /^Low RG runs from [\d.]+ in to [\d.]+ in, differential from/);
  await inTurn(map.getByRole("slider", { name: /^Across/ }), ["20", "21", "22", "23", "24"]);
  const moved = await heardOf(page, /There/);
  assert.equal(moved.length, 1, JSON.stringify(moved));

  const scatter = await fold(page, "Poured a little off");
  await scatter.getByRole("textbox", { name: "Balls" }).fill("1000");
  await scatter.getByRole("button", { name: /^Pour 1,000 balls/ }).click();
  const poured = await heardOf(page, /Of 1,000/);
  once(poured, /Of 1,000 balls [\d.]+%/);
  await scatter.getByLabel("Measured by").selectOption("weight_lb");
  once(await heardOf(page, /comes from/), /decides the weight comes from .* \([\d.]+%/);
  await scatter.getByRole("textbox", { name: "Balls" }).fill("5");
  once(await heardOf(page, /only|from/i), /from 100 to 1.?000.?000/);
  await scatter.getByRole("textbox", { name: "Balls" }).fill("1000000");
  await scatter.getByRole("button", { name: /^Pour 1,000,000 balls/ }).click();
  await hears(page, /Pouring/);
  await scatter.getByRole("button", { name: "Stop" }).click();
  const stopped = await heardOf(page, /Stopped/);
  once(stopped, /Pouring 1,000,000 balls/);
  once(stopped, /Stopped\./);

  const seek = await fold(page, "Find a core");
  await seek.getByRole("textbox", { name: /^Wanted: Low RG/ }).fill("2.75");
  await seek.getByRole("textbox", { name: "Starts" }).fill("2");
  await seek.getByRole("button", { name: "Seek a core" }).click();
  once(await heardOf(page, /meets? it/), /2 starts? meets? it/);
  await check();
  await context.close();
});
