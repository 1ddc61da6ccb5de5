// What every browser test shares: the built site in a sub-folder of a local
// server, a headless Chromium, and a page that fails the test on any error it
// reports or any request it should not make.
import assert from "node:assert/strict";
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { serveFolder } from "../../www/server.mjs";

const here = dirname(fileURLToPath(import.meta.url));
/** The built site. */
export const dist = join(here, "..", "..", "dist");
/** The page that is one file, as the address of a file on a disk. */
export const packed = pathToFileURL(join(dist, "pithball.html")).href;
const npm = createRequire(new URL("../../www/package.json", import.meta.url));
const { chromium } = npm("playwright-core");

/** Sizes the page is judged at, in CSS pixels. */
export const DESKTOP = { width: 1366, height: 768 };
export const PHONE = { width: 390, height: 844 };
export const NARROW = { width: 320, height: 640 };

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Starts headless Chromium. */
export function startBrowser() {
  const executablePath = process.env.PITHBALL_CHROMIUM ?? "/usr/bin/chromium";
  return chromium.launch({ executablePath, args: FLAGS });
}

/**
 * Serves the site below `/some/folder/` and starts Chromium. Resolves to
 * `{ url, asked, server, open, close }`; `asked` lists what the server was asked
 * for, `open` makes a page, `close` stops everything.
 */
export async function launch({ base = "/some/folder/", folder = dist } = {}) {
  assert.ok(existsSync(join(dist, "index.html")), "no dist/: run `cargo xtask build` first");
  const asked = [];
  const server = await serveFolder(folder, { base, onRequest: (address) => asked.push(address) });
  const browser = await startBrowser();
  return {
    url: server.url,
    asked,
    server,
    browser,
    open: (options) => openPage(browser, server.url, options),
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

/**
 * Opens the site in a context of its own (its own storage), waits until it has
 * drawn itself, and watches it. `options`: viewport, hash (with #), keeps (whether
 * the browser may keep the page for when there is no network), and any option of a
 * Playwright context, such as reducedMotion or colorScheme.
 * Resolves to `{ page, context, faults, reload, check }`; `await check()` fails
 * if the page reported an error or stopped, asked another host for something,
 * or asked for anything at all after it had loaded.
 */
export async function openPage(
  browser,
  url,
  { viewport = DESKTOP, hash = "", keeps = false, ...options } = {},
) {
  const context = await browser.newContext({ viewport, ...options });
  // Most tests are not about that, and it takes a moment each time.
  if (!keeps) await context.addInitScript(() => delete Navigator.prototype.serviceWorker);
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  const faults = [];
  let loaded = false;
  page.on("console", (message) => {
    if (["error", "assert"].includes(message.type())) faults.push(`console: ${message.text()}`);
  });
  page.on("pageerror", (error) => faults.push(`page error: ${error.stack ?? error}`));
  page.on("crash", () => faults.push("the page crashed"));
  page.on("requestfailed", (request) =>
    faults.push(`request failed: ${request.url()} ${request.failure()?.errorText}`),
  );
  page.on("request", (request) => {
    const address = request.url();
    if (address.startsWith("data:") || address.startsWith("blob:")) return;
    if (!address.startsWith(url)) faults.push(`request outside the site's folder: ${address}`);
    else if (loaded) faults.push(`request after load: ${address}`);
  });
  const load = async (go) => {
    loaded = false;
    await go();
    await settled(page);
    loaded = true;
  };
  await load(() => page.goto(url + hash, { waitUntil: "networkidle" }));
  return {
    page,
    context,
    faults,
    reload: () => load(() => page.reload({ waitUntil: "networkidle" })),
    async check() {
      const stopped = page.getByRole("heading", { name: "has stopped" });
      if (await stopped.count()) faults.push(await page.locator("body").textContent());
      assert.deepEqual(faults, []);
    },
  };
}

/** Waits until the page has drawn its first content and fetched the rest, or has stopped. */
async function settled(page) {
  await page.locator("h1").first().waitFor({ state: "attached" });
  await page.waitForFunction(
    () => performance.getEntriesByName("loaded").length > 0 || document.querySelector(".fault"),
  );
}

/** Opens every fold in view, those within folds too, and waits until nothing more is said. */
export async function unfold(page) {
  let before = -1;
  for (let round = 0; round < 20; round += 1) {
    const said = await page.evaluate(() => {
      for (const fold of document.querySelectorAll(".room details:not([open])")) {
        if (fold.checkVisibility()) fold.open = true;
      }
      return document.querySelector(".rooms").textContent.length;
    });
    if (said === before) return;
    before = said;
    await page.waitForTimeout(300);
  }
}

/** Keeps a picture in tests/browser/shots/NAME.png (not under version control). */
export async function shoot(page, name, options = {}) {
  const folder = join(here, "shots");
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${name}.png`);
  await page.screenshot({ path, ...options });
  return path;
}

const STANDARDS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/**
 * What axe-core finds against WCAG 2.2 A and AA, one line each; empty when nothing.
 * `rules` names those that are looked at, where what the others find is known already.
 */
export async function accessibilityFaults(page, { rules } = {}) {
  // As a Playwright script, not a script tag: the page's policy forbids those.
  if (!(await page.evaluate(() => "axe" in globalThis))) {
    await page.evaluate(readFileSync(npm.resolve("axe-core/axe.min.js"), "utf8"));
  }
  const runOnly = rules ? { type: "rule", values: rules } : { type: "tag", values: STANDARDS };
  return page.evaluate(async (runOnly) => {
    const { violations } = await globalThis.axe.run({ elementRef: true, runOnly });
    // What was drawn anew while axe looked is not on the page any more.
    return violations.flatMap(({ id, help, nodes }) =>
      nodes
        .filter(({ element }) => !element || element.isConnected)
        .map(({ target, failureSummary }) => `${id}: ${help} (${target.join(" ")}) ${failureSummary}`),
    );
  }, runOnly);
}
