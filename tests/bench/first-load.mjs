// What the page weighs until it can be used, and how long that takes.
// Usage: node first-load.mjs
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";
import { dist, launch } from "../browser/harness.mjs";

/** Most that the first load may weigh, compressed as static hosts do it (Brotli), in bytes. */
export const MOST_BYTES = 700_000;
/** Longest until the page can be used, from this machine, in ms. */
const LONGEST_MS = 1000;

/**
 * Opens the page once in a browser that has never seen it. Resolves to the files
 * that it asked for until its first picture was there, and the ms until it could be
 * used: the weight is on the Scale, so the ball is weighed and rolled, and the page answers.
 */
export async function firstLoad(site) {
  const context = await site.browser.newContext({ serviceWorkers: "block" });
  try {
    await context.addInitScript(() => {
      const look = () => {
        if (document.querySelector(".readout .value")) {
          // In a task after the picture: nothing holds the page up any more.
          requestAnimationFrame(() =>
            setTimeout(() => {
              globalThis.usableAt = performance.now();
            }),
          );
        } else requestAnimationFrame(look);
      };
      look();
    });
    const page = await context.newPage();
    await page.goto(site.url);
    await page.waitForFunction(
      () => globalThis.usableAt && performance.getEntriesByName("first picture").length > 0,
    );
    const { ms, asked } = await page.evaluate(() => {
      const [picture] = performance.getEntriesByName("first picture");
      const before = performance
        .getEntriesByType("resource")
        .filter(({ startTime }) => startTime < picture.startTime);
      return { ms: globalThis.usableAt, asked: before.map(({ name }) => name) };
    });
    const files = new Set(asked.filter((address) => address.startsWith(site.url)));
    return { ms, files: ["index.html", ...[...files].map((address) => address.slice(site.url.length))] };
  } finally {
    await context.close();
  }
}

/** Bytes of a file of the site: as it is, by gzip and by Brotli, each as small as they make it. */
export function weigh(file) {
  const bytes = readFileSync(join(dist, file));
  const brotli = brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } });
  return [bytes.length, gzipSync(bytes, { level: 9 }).length, brotli.length];
}

async function print() {
  const site = await launch();
  try {
    const loads = [];
    for (let n = 0; n < 5; n += 1) loads.push(await firstLoad(site));
    const kb = (bytes) => (bytes / 1000).toFixed(1).padStart(9);
    const rows = loads[0].files.map((file) => [file, weigh(file)]);
    const sum = [0, 1, 2].map((k) => rows.reduce((sum, [, sizes]) => sum + sizes[k], 0));
    console.log(
      `\n${"first load".padEnd(54)}${"kB".padStart(9)}${"gzip".padStart(9)}${"Brotli".padStart(9)}`,
    );
    for (const [file, sizes] of [...rows, ["in all", sum]]) {
      console.log(`${file.padEnd(54)}${sizes.map(kb).join("")}`);
    }
    const over =
      sum[2] > MOST_BYTES ? `, which this is over by ${((sum[2] - MOST_BYTES) / 1000).toFixed(0)} kB` : "";
    console.log(`wanted: at most ${MOST_BYTES / 1000} kB by Brotli${over}`);
    const later = readdirSync(join(dist, "assets"))
      .map((name) => `assets/${name}`)
      .filter((file) => !file.endsWith(".map") && !loads[0].files.includes(file));
    const bytes = later.reduce((sum, file) => sum + weigh(file)[2], 0);
    console.log(`in the quiet after it, ${later.length} files: ${kb(bytes).trim()} kB by Brotli`);
    const times = loads.map(({ ms }) => ms).sort((a, b) => a - b);
    console.log(
      `usable after ${times[2].toFixed(0)} ms (median of 5: ${times.map((ms) => ms.toFixed(0)).join(", ")}); wanted: at most ${LONGEST_MS} ms`,
    );
  } finally {
    await site.close();
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await print();
