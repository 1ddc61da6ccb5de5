// The layers on a cut face as they are drawn in three dimensions: from every layer to
// the next, and to what is round the ball, the line between or the two themselves
// stand out by 3 : 1 (WCAG 2.2, 1.4.11), read off the pixels of the real canvas.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bundled } from "./bundled.mjs";
import { contrast } from "./contrast.mjs";
import { launch, shoot } from "./harness.mjs";

const { paintOf } = await bundled("palette.ts");
const PAINTS = Array.from({ length: 9 }, (_, part) =>
  paintOf(part).colour.map((one) => Math.round(255 * one)),
);

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

/** Rows of the picture's pixels, each `[r, g, b]`. */
async function pixels(page, canvas) {
  const base64 = (await canvas.screenshot()).toString("base64");
  const { width, data } = await page.evaluate(async (base64) => {
    const blob = new Blob([Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))], { type: "image/png" });
    const bitmap = await createImageBitmap(blob);
    const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d");
    pen.drawImage(bitmap, 0, 0);
    const { data } = pen.getImageData(0, 0, bitmap.width, bitmap.height);
    return { width: bitmap.width, data: btoa(Array.from(data, (c) => String.fromCharCode(c)).join("")) };
  }, base64);
  const bytes = Buffer.from(data, "base64");
  return Array.from({ length: bytes.length / 4 / width }, (_, y) =>
    Array.from({ length: width }, (_, x) => [
      ...bytes.subarray(4 * (y * width + x), 4 * (y * width + x) + 3),
    ]),
  );
}

/** Wider than a line with its soft sides: between these are hatching or a shaded surface, no boundary. */
const LINE_PX = 7;

/** Boundaries along one row: from which colour to which, and the pixels between. */
function boundaries(row, kinds) {
  const found = [];
  let last = null;
  for (const [x, pixel] of row.entries()) {
    const kind = kinds.findIndex((colour) => colour.every((byte, n) => Math.abs(byte - pixel[n]) <= 3));
    if (kind < 0) continue;
    if (last && last.kind !== kind && x - last.x <= LINE_PX) {
      found.push({ from: last.kind, to: kind, between: row.slice(last.x + 1, x), x });
    }
    last = { kind, x };
  }
  return found;
}

for (const colorScheme of ["light", "dark"]) {
  test(`every layer of the six templates stands out from its neighbours, ${colorScheme}`, async () => {
    const { page, context, check } = await site.open({ colorScheme, reducedMotion: "reduce" });
    const saw = page.getByRole("region", { name: "Saw", exact: true });
    await saw.getByLabel(/^Mark the pin/).uncheck();
    const canvas = saw.locator(".solid canvas");
    const templates = page.locator(".template");
    for (let n = 0; n < 6; n += 1) {
      await templates.nth(n).click();
      const ball = await page.locator(".ball-name input").inputValue();
      await saw.getByRole("button", { name: "Along the pin" }).click();
      await page.evaluate(
        () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
      );
      const parts = await saw.locator(".saw-part").count();
      const rows = await pixels(page, canvas);
      const kinds = [...PAINTS.slice(0, parts), rows[0][0]];
      const columns = rows[0].map((_, x) => rows.map((row) => row[x]));
      const pairs = new Map();
      for (const { from, to, between } of [...rows, ...columns].flatMap((row) => boundaries(row, kinds))) {
        const [a, b] = [kinds[from], kinds[to]];
        const line = Math.max(0, ...between.map((pixel) => Math.min(contrast(pixel, a), contrast(pixel, b))));
        const name = [from, to].sort((p, q) => p - q).join(" and ");
        pairs.set(name, [...(pairs.get(name) ?? []), Math.max(line, contrast(a, b))]);
      }
      // Every part borders on another, and the ball on the ground.
      for (let kind = 0; kind < kinds.length; kind += 1) {
        assert.ok(
          [...pairs.keys()].some((name) => name.split(" and ").includes(`${kind}`)),
          `${ball}: ${kind}`,
        );
      }
      for (const [name, all] of pairs) {
        const low = all.filter((one) => one < 3).length;
        assert.ok(low === 0, `${ball}, ${name}: ${low} of ${all.length} below 3 : 1, ${Math.min(...all)}`);
      }
    }
    await shoot(page, `edges-${colorScheme}`);
    await check();
    await context.close();
  });
}
