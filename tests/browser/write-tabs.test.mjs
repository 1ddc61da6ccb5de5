// A lesson being written in two tabs: each shows what the other wrote, and where
// both wrote neither loses it.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { launch } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const area = (page) => page.getByLabel("The lesson as text");

async function toWrite(page) {
  await page.getByRole("navigation").getByRole("button", { name: "Lessons" }).click();
  await page.getByRole("button", { name: "Write one" }).click();
  await area(page).waitFor();
}

const holds = (page, text) =>
  page.waitForFunction((text) => document.querySelector(".write-text textarea").value === text, text);

test("what one tab writes the other shows; where both wrote the other's can be taken back", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await toWrite(page);
  const other = await context.newPage();
  await other.addInitScript(() => {
    // As a tab that the browser lets rest: it hears nothing.
    addEventListener("storage", (event) => globalThis.resting && event.stopImmediatePropagation());
  });
  await other.goto(site.url);
  await toWrite(other);

  await area(page).fill("A long text of the first tab");
  await holds(other, "A long text of the first tab");
  await area(other).press("End");
  await area(other).pressSequentially("!");
  await holds(page, "A long text of the first tab!");
  assert.equal(await page.getByRole("button", { name: "Back to what you wrote" }).count(), 0);

  await other.evaluate(() => {
    globalThis.resting = true;
  });
  await area(page).fill("What the second never saw");
  await area(other).press("End");
  await area(other).pressSequentially("?");
  await holds(page, "A long text of the first tab!?");
  for (const one of [page, other]) {
    await one.getByRole("button", { name: "Back to what you wrote" }).waitFor();
  }
  await page.getByRole("button", { name: "Back to what you wrote" }).click();
  await holds(page, "What the second never saw");
  await page.getByRole("button", { name: "Back to what you wrote" }).click();
  await holds(page, "A long text of the first tab!?");
  await check();
  await context.close();
});

test("a text that the browser does not keep stays in view when another tab writes", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await toWrite(page);
  const other = await context.newPage();
  await other.goto(site.url);
  await toWrite(other);
  await other.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await area(other).fill("Not kept");
  await other.getByText("The browser does not keep this text").waitFor();
  await area(page).fill("Kept");
  await other.getByRole("button", { name: "Back to what you wrote" }).waitFor();
  assert.equal(await area(other).inputValue(), "Not kept");
  await other.getByRole("button", { name: "Back to what you wrote" }).click();
  await holds(other, "Kept");
  await check();
  await context.close();
});
