// Without network: the site after its first load, a newer site that waits until it
// is asked for, and the page that is one file on a disk.
import assert from "node:assert/strict";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { accessibilityFaults, dist, launch, openPage, packed, shoot, startBrowser } from "./harness.mjs";

const room = (page, name) => page.getByRole("region", { name, exact: true });
const place = (page, name) =>
  page.getByRole("navigation", { name: "Places" }).getByRole("button", { name, exact: true });
const weight = (page) => page.locator(".readout", { hasText: "Weight" }).locator(".value").first();
/** Until the browser keeps the page. */
const kept = (page) => page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
const name = (page) => page.locator(".ball-name input");

/** A walk through every room, with a job for the workers. */
async function walk(page) {
  await page.locator(".template", { hasText: /nested/i }).click();
  assert.match(await name(page).inputValue(), /nested/i);
  assert.match(await weight(page).textContent(), /^1[0-9]\./);
  await room(page, "Saw").getByRole("button", { name: "Drawing" }).click();
  const line = page.locator(".weight-line");
  await line.locator("summary").first().click();
  await line.locator("table").first().waitFor();
  for (const whole of ["Shelf", "Sheet"]) {
    await place(page, whole).click();
    await room(page, whole).getByRole("button").first().waitFor();
  }
  await place(page, "Workshop").click();
  await page.getByRole("button", { name: "What this model leaves out" }).click();
  await room(page, "Model note").getByRole("heading", { level: 3 }).first().waitFor();
  await page.getByRole("button", { name: "Back to the lane" }).click();
  await room(page, "Lane").waitFor();
}

test("after the first load the site needs no server, and asks for nothing", async () => {
  const site = await launch();
  try {
    const { page, context, check } = await site.open({ keeps: true, reducedMotion: "reduce" });
    await kept(page);
    await page.waitForLoadState("networkidle");
    const asked = site.asked.length;
    await walk(page);
    assert.deepEqual(site.asked.slice(asked), []);
    await check();
    await name(page).fill("Kept without a server");
    await page.waitForFunction(() => localStorage.getItem("pithball.bench/1")?.includes("without a server"));

    // The server is gone for good; the page is closed and opened anew, with an address of a bookmark.
    await site.server.close();
    await page.close();
    const again = await context.newPage();
    const faults = [];
    again.on("pageerror", (error) => faults.push(String(error)));
    await again.goto(`${site.url}?from=bookmark`);
    assert.equal(await name(again).inputValue(), "Kept without a server");
    await walk(again);
    assert.deepEqual(faults, []);
  } finally {
    await site.close();
  }
});

test("a newer site is offered, waits while one works, and then takes over with the work kept", async () => {
  const folder = mkdtempSync(join(tmpdir(), "pithball-site-"));
  cpSync(dist, folder, { recursive: true });
  const site = await launch({ folder });
  try {
    const { page, context } = await site.open({ keeps: true, reducedMotion: "reduce" });
    await kept(page);
    await page.waitForFunction(() => navigator.serviceWorker.controller);

    // Tomorrow's site: another edition of index.html.
    const edit = (file, old, now) => {
      const text = readFileSync(join(folder, file), "utf8");
      assert.match(text, old);
      writeFileSync(join(folder, file), text.replace(old, now));
    };
    edit("index.html", /<html/, '<html data-edition="newer"');
    const edition = (page) => page.evaluate(() => document.documentElement.dataset.edition ?? "as before");
    edit("service-worker.js", /revision:"[0-9a-f]{64}"/, 'revision:"newer"');
    await name(page).fill("In the middle of work");
    // What the browser does by itself when the page is opened.
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
    const offer = page.getByRole("status").filter({ hasText: "A newer Pithball is here" });
    await offer.waitFor();
    assert.deepEqual(await accessibilityFaults(page), []);
    await shoot(page, "offline-offer");

    // It waits: the page goes on as it was, and so does another one opened beside it.
    await page.locator(".template").first().click();
    await page.keyboard.press("Control+z");
    const beside = await context.newPage();
    await beside.goto(site.url);
    assert.equal(await edition(beside), "as before");
    await beside.getByRole("button", { name: "Later", exact: true }).click();
    await beside.getByRole("button", { name: "Later", exact: true }).waitFor({ state: "detached" });

    await page.getByRole("button", { name: "Use it now" }).click();
    await page.waitForFunction(() => document.documentElement.dataset.edition === "newer");
    await name(page).waitFor();
    assert.equal(await name(page).inputValue(), "In the middle of work");
    assert.equal(await offer.count(), 0);
    // The page beside it was in use: nothing was swapped under it.
    assert.equal(await edition(beside), "as before");
    await place(beside, "Sheet").click();
    await room(beside, "Sheet").getByRole("button").first().waitFor();
  } finally {
    await site.close();
    rmSync(folder, { recursive: true });
  }
});

test("the page that is one file opens from a disk, with workers, under a strict policy", async () => {
  const browser = await startBrowser();
  try {
    const html = readFileSync(join(dist, "pithball.html"), "utf8");
    const policy = /content="(default-src [^"]*)"/.exec(html)[1];
    assert.doesNotMatch(policy, /unsafe-inline|unsafe-eval'(?<!wasm-unsafe-eval')|https?:|\*/);
    const { page, check, reload } = await openPage(browser, packed, { reducedMotion: "reduce" });
    // The browser tells of them a little after they were started.
    while (page.workers().length < 2) await page.waitForTimeout(20);
    await walk(page);
    assert.deepEqual(await accessibilityFaults(page), []);
    await name(page).fill("From a stick");
    await page.waitForFunction(() => localStorage.getItem("pithball.bench/1")?.includes("From a stick"));
    await shoot(page, "offline-one-file");
    await reload();
    assert.equal(await name(page).inputValue(), "From a stick");
    await check();
  } finally {
    await browser.close();
  }
});
