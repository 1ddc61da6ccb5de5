// The cover as a person looks at it, on balls whose thickness has a closed form:
// a core shifted by 0.3 in towards the pin, and one in the middle under two holes.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, PHONE, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const core = (diameter_in, z_in) => ({
  name: "outer core",
  density_g_cc: 0.95,
  shape: { kind: "sphere", diameter_in },
  at_in: [0, 0, z_in],
});
const SHIFTED = {
  format: "pithball.ball/1",
  name: "Cover sample",
  diameter_in: 8.5,
  cover: { name: "cover", density_g_cc: 1.2 },
  pieces: [core(6.5, 0.3)],
};
const DRILLED = {
  ...SHIFTED,
  name: "Drilled sample",
  pieces: [core(7.7, 0)],
  holes: [
    { name: "thumb", entry: [1, 0, 0], diameter_in: 1, depth_in: 2.5 },
    { name: "finger", entry: [0, 1, 0], diameter_in: 0.9, depth_in: 0.2 },
  ],
};

async function opened(ball, options = {}) {
  const opened = await site.open({ viewport: DESKTOP, reducedMotion: "reduce", ...options });
  const { page } = opened;
  await page.locator("input[type=file]").setInputFiles({
    name: "sample.ball.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(ball)),
  });
  await page
    .getByRole("region", { name: "Bench" })
    .getByText("outer core")
    .first()
    .waitFor({ state: "attached" });
  return opened;
}

async function cover(page) {
  const saw = page.getByRole("region", { name: "Saw" });
  await saw.getByRole("button", { name: "Cover", exact: true }).click();
  await saw.locator(".cover-words").waitFor();
  return saw;
}

const plain = async (place) => (await place.textContent()).replaceAll("\u00a0", " ");

test("the thickness is on the ball, in the legend and in words, and the saw goes through the thinnest place", async () => {
  const { page, context, check } = await opened(SHIFTED);
  const saw = await cover(page);
  const words = await plain(saw.locator(".cover-words"));
  // 4.25 in of radius over a core that reaches 3.55 in at the pin and 2.95 in opposite.
  assert.match(words, /The cover is 0\.700 in at its thinnest, over the outer core, at the pin\./);
  assert.match(words, /at the pin0\.700 in/);
  assert.match(words, /opposite the pin1\.300 in/);
  assert.match(words, /within the 0\.50 to 1\.00 in of common balls/);
  assert.match(words, /Common practice, no source/);
  const legend = await plain(saw.locator(".cover-legend"));
  assert.match(legend, /0\.625 to 0\.75 in.*1\.25 to 1\.5 in/);
  assert.doesNotMatch(legend, /under 0\.5|2 in or more/);
  const canvas = saw.locator(".solid canvas");
  await canvas.waitFor();
  await page.waitForTimeout(300);
  await saw.locator(".solid-mark", { hasText: "thinnest, 0.700" }).waitFor();
  const box = await canvas.boundingBox();
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  assert.match(await plain(saw.locator(".cover-place")), /Here, \d+° down from the pin.*: [01]\.\d\d\d in\./);
  await shoot(page, "cover-ball");
  assert.deepEqual(await accessibilityFaults(page), []);

  await saw.getByRole("button", { name: "Cut through the thinnest place" }).click();
  await saw.getByRole("img", { name: /Section of Cover sample/ }).waitFor();
  assert.match(await plain(saw.locator("[data-measure]")), /^0\.700 in$/);
  assert.match(await plain(saw.locator(".flat desc")), /The narrowest cover on this cut is 0\.700 in\./);
  await shoot(page, "cover-section");
  await check();
  await context.close();
});

test("as a map, with holes, in metric", async () => {
  const { page, context, check } = await opened(DRILLED);
  await page.getByRole("combobox", { name: "Units" }).selectOption("metric");
  const saw = await cover(page);
  await saw.getByRole("button", { name: "As a map" }).click();
  const map = saw.getByRole("img", { name: /Map of the cover of Drilled sample/ });
  await map.waitFor();
  assert.ok((await map.locator(".cover-hole").getAttribute("d")).length > 0);
  const words = await plain(saw.locator(".cover-words"));
  // 0.4 in is 10.16 mm.
  assert.match(words, /10\.16 mm at its thinnest, over the outer core, and as thin all over/);
  assert.match(words, /Thumb: the drill leaves the cover 10\.16 mm down\./);
  assert.match(words, /Finger: 5\.08 mm of cover between it and the core\./);
  assert.match(words, /Between thumb and finger: \d+\.\d\d mm at the least/);
  assert.match(words, /thinner than the 12\.7 to 25\.4 mm of common balls/);
  assert.match(await plain(saw.locator(".cover-legend")), /hole/);
  await shoot(page, "cover-map");
  assert.deepEqual(await accessibilityFaults(page), []);
  await check();
  await context.close();
});

test("a ball drilled for a hand, with inserts: sentence, mean, map and holes agree", async () => {
  const read = (path) =>
    JSON.parse(readFileSync(new URL(`../../scenarios/${path}`, import.meta.url), "utf8"));
  const shot = { ...read("shots/drilled.shot.json"), ball: read("balls/no-3-three-piece.ball.json") };
  const { page, context, check } = await opened(shot);
  const saw = await cover(page);
  const words = await plain(saw.locator(".cover-words"));
  // 8.55 in across over an outer core of 7 in, whatever is drilled.
  assert.match(words, /The cover is 0\.775 in at its thinnest, over the outer core, and as thin all over\./);
  assert.match(
    words,
    /On average it is 0\.775 in; none of the surface has less than 0\.50 in, all of it less/,
  );
  assert.deepEqual(await saw.locator(".cover-legend li").allInnerTexts(), ["0.75 to 0.875\u00a0in", "hole"]);
  await saw.locator(".solid canvas").waitFor();
  await page.waitForTimeout(300);
  await shoot(page, "cover-drilled");
  await saw.getByRole("button", { name: "As a map" }).click();
  const map = saw.locator("svg.cover-map");
  await map.waitFor();
  // Three holes, each a smooth ring of its own, and no line of thickness about them.
  const holes = (await map.locator(".cover-hole").getAttribute("d")).split("M").slice(1);
  assert.equal(holes.length, 3);
  assert.ok(holes.every((ring) => ring.split("L").length >= 12));
  const lines = await map
    .locator("path.cover-line")
    .evaluateAll((all) => all.map((p) => p.getAttribute("d")));
  assert.ok(lines.every((d) => d.split("M").length <= 2));
  await shoot(page, "cover-drilled-map");
  await check();
  await context.close();
});

test("the Scale says whether the cover will last: a thick one better than a thin one", async () => {
  const told = async (ball) => {
    const { page, context, check } = await opened(ball);
    await page.getByText("Will the cover last?", { exact: true }).click();
    const told = await plain(page.locator(".durability .cover-words"));
    await shoot(page, `cover-last-${ball.pieces.length}`);
    await check();
    await context.close();
    return told;
  };
  const thin = await told({ ...SHIFTED, pieces: [core(7.7, 0)] });
  assert.match(thin, /^That is thinner than .* tends to come away and crack with age\.\*/);
  assert.match(thin, /Thinnest place0\.400 in/);
  const inner = { ...core(4, 0), name: "core", density_g_cc: 2.6 };
  const thick = await told({ ...SHIFTED, pieces: [inner, { ...inner, name: "outer core" }] });
  assert.match(thick, /^That is more than .* a thicker cover lasts longer\.\*/);
});

test("without WebGL2 the map stands in; on a phone nothing scrolls sideways", async () => {
  const { page, context, reload, check } = await site.open({ viewport: PHONE });
  await context.addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {
      return kind.startsWith("webgl") ? null : real.call(this, kind, ...rest);
    };
  });
  await reload();
  await page.getByRole("navigation").getByRole("button", { name: "Saw" }).click();
  const saw = await cover(page);
  await saw.getByRole("img", { name: /Map of the cover/ }).waitFor();
  assert.match(await plain(saw), /a flat map stands in/);
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
  await shoot(page, "cover-phone", { fullPage: true });
  assert.deepEqual(await accessibilityFaults(page), []);
  await check();
  await context.close();
});
