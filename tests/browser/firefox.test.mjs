// The main job in Firefox, over http and from the one-file page: the ball is built,
// weighed, sawn in 3D, rolled, worked on beside the page, kept and found again.
import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { existsSync, mkdirSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { serveFolder } from "../../www/server.mjs";
import { DESKTOP, dist, packed } from "./harness.mjs";

const npm = createRequire(new URL("../../www/package.json", import.meta.url));
const puppeteer = npm("puppeteer-core");
const shots = fileURLToPath(new URL("shots", import.meta.url));

/** Firefox draws with WebGL2 only where there is a display. */
function startDisplay() {
  if (process.env.DISPLAY) return { name: process.env.DISPLAY, close() {} };
  return new Promise((resolve, reject) => {
    const server = spawn("Xvfb", ["-displayfd", "3", "-screen", "0", "1440x900x24", "-nolisten", "tcp"], {
      stdio: ["ignore", "ignore", "ignore", "pipe"],
    });
    server.once("error", reject);
    server.stdio[3].once("data", (number) =>
      resolve({ name: `:${String(number).trim()}`, close: () => server.kill() }),
    );
  });
}

let display;
let browser;
let server;
const asked = [];
before(async () => {
  const executablePath = process.env.PITHBALL_FIREFOX ?? "/usr/bin/firefox-esr";
  assert.ok(existsSync(executablePath), `no ${executablePath}: install firefox-esr or set PITHBALL_FIREFOX`);
  display = await startDisplay();
  server = await serveFolder(dist, { base: "/some/folder/", onRequest: (address) => asked.push(address) });
  browser = await puppeteer.launch({
    browser: "firefox",
    executablePath,
    headless: false,
    env: { ...process.env, DISPLAY: display.name },
    extraPrefsFirefox: { "webgl.force-enabled": true },
    defaultViewport: DESKTOP,
  });
});
after(async () => {
  await browser?.close();
  await server?.close();
  display?.close();
});

/** Clicks the first button that says so. */
const press = async (page, within, words) => {
  const button = await page.waitForSelector(`${within} ::-p-xpath(.//button[normalize-space(.)="${words}"])`);
  await button.click();
};
const DENSITY =
  '.part[data-open] ::-p-xpath(.//div[label[starts-with(normalize-space(.), "Density")]]/input[@type="range"])';
const text = (page, selector) => page.$eval(selector, (element) => element.textContent);

for (const [way, address] of [
  ["over http", () => server.url],
  ["from a file", () => packed],
]) {
  test(`the main job in Firefox ${way}`, async () => {
    const page = await browser.newPage();
    const faults = [];
    page.on("pageerror", (error) => faults.push(String(error)));
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(message.text());
    });
    await page.goto(address());
    await page.waitForSelector(".readout .value");
    await page.waitForFunction(() => performance.getEntriesByName("loaded").length > 0);
    if (way === "over http") {
      await page.waitForFunction(() => navigator.serviceWorker.ready.then(() => true));
    }
    const quiet = asked.length;
    const kept = `Kept in Firefox ${way}`;

    // Build: another template, a heavier piece; the weight and the shot answer.
    const said = await text(page, ".lane-says");
    await (await page.$$(".template")).at(3).click();
    await page.waitForFunction(
      (before) => document.querySelector(".lane-says").textContent !== before,
      {},
      said,
    );
    const density = await page.waitForSelector(DENSITY);
    const weight = await text(page, ".room-scale .readout .value");
    await density.focus();
    for (let n = 0; n < 5; n += 1) await page.keyboard.press("ArrowRight");
    await page.waitForFunction(
      (before) => document.querySelector(".room-scale .readout .value").textContent !== before,
      {},
      weight,
    );

    // Saw: the 3D picture is drawn, with the words beside it.
    assert.equal(await page.$(".saw-missing"), null);
    assert.ok(
      await page.$eval(".solid canvas", (canvas) => canvas.getContext("webgl2").drawingBufferWidth > 100),
    );
    await press(page, ".room-saw", "Across");

    // Roll it, and let the workers do something.
    await press(page, ".room-lane", "Play");
    await (await page.waitForSelector(".weight-line summary")).click();
    await page.waitForSelector(".weight-line table");

    // A name, the Shelf and the Sheet; then the page is loaded again and everything is there.
    const name = await page.waitForSelector(".ball-name input");
    await name.evaluate((input) => input.select());
    await name.type(kept);
    for (const place of ["Sheet", "Shelf"]) {
      await press(page, ".places-nav", place);
      await page.waitForSelector(`#room-${place.toLowerCase()} button`);
    }
    await page.waitForFunction((kept) => localStorage.getItem("pithball.bench/1")?.includes(kept), {}, kept);
    mkdirSync(shots, { recursive: true });
    await press(page, ".places-nav", "Workshop");
    await page.screenshot({ path: join(shots, `firefox-${way.replaceAll(" ", "-")}.png`) });
    assert.deepEqual(asked.slice(quiet), [], "asked for after load");
    await page.reload();
    await page.waitForSelector(".ball-name input");
    assert.equal(await page.$eval(".ball-name input", (input) => input.value), kept);
    assert.deepEqual(faults, []);
    await page.close();
  });
}
