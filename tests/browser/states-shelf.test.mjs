// axe-core in the states of Shelf and Sheet that no other test brings about.
import { after, before, test } from "node:test";
import { go } from "./about.mjs";
import { launch } from "./harness.mjs";
import { sound } from "./states.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const put = (page) => page.getByRole("button", { name: "Put on the shelf", exact: true }).click();

test("the Shelf empty, an entry unfolded, renamed, taken off, kept by no one, in another tab's hands", async () => {
  const { page, context, reload, check } = await site.open({ reducedMotion: "reduce" });
  await context.addInitScript(() => {
    const real = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...given) {
      if (globalThis.full) throw new DOMException("full", "QuotaExceededError");
      return real.apply(this, given);
    };
  });
  await reload();
  await go(page, "Shelf");
  await page.getByText("Nothing yet.").waitFor();
  await sound(page, "empty", "Shelf");
  await put(page);
  const row = page.locator("[data-entry]").first();
  await row.locator("summary").click();
  await sound(page, "unfolded", "Shelf");
  await row.getByRole("button", { name: "Name and note" }).click();
  await row.getByLabel("Note").fill("half a thought");
  await sound(page, "renamed", "Shelf");
  await row.getByRole("button", { name: "Done" }).click();
  await row.locator("summary").click();
  await row.getByRole("button", { name: "Take off the shelf" }).click();
  await page.getByRole("button", { name: /^Put back/ }).waitFor();
  await page.evaluate(() => {
    globalThis.full = true;
  });
  await put(page);
  await page.getByText("One entry is not kept.").waitFor();
  await sound(page, "taken off, and one that is not kept", "Shelf");
  await page.evaluate(() => indexedDB.open("pithball.shelf", 99));
  await page.getByText("Another tab has the shelf in a newer version").waitFor();
  for (const name of ["No. 1, simple", "No. 6, five-piece"])
    await page.getByLabel(`Compare ${name}`, { exact: true }).check();
  await page.getByLabel("Each its own shot, as it was put there").check();
  await page.getByText("Why B differs from A").click();
  await page.locator(".why table").waitFor();
  await page.locator("#room-shelf").getByText("The same as a table").click();
  await sound(page, "another tab has it; all of a comparison unfolded", "Shelf");
  await check();
  await context.close();
});

test("the Sheet of two drilled balls, and of a ball with a mistake", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await page.getByText("Drill it for a hand").click();
  await page.getByLabel("The ball is drilled").check();
  await go(page, "Sheet");
  await page.getByLabel("Compare with").selectOption("house-6");
  await page.locator(".sheet-balance").waitFor();
  await sound(page, "two drilled balls", "Sheet");
  await go(page, "Workshop");
  await page
    .locator(".part[data-open]")
    .getByRole("textbox", { name: /^Density/ })
    .fill("-1");
  await go(page, "Sheet");
  await page.locator(".sheet-choices .stale").waitFor();
  await sound(page, "the last good one", "Sheet");
  await check();
  await context.close();
});
