// The Saw as a person uses it, with a ball whose every cut has a closed form:
// sphere in sphere, and an ellipsoid that is round about the pin axis.
import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, NARROW, PHONE, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const BALL = {
  format: "pithball.ball/1",
  name: "Saw sample",
  diameter_in: 8.5,
  cover: { name: "cover", density_g_cc: 1.2 },
  pieces: [
    { name: "outer core", density_g_cc: 0.95, shape: { kind: "sphere", diameter_in: 7 } },
    { name: "inner core", density_g_cc: 2.4, shape: { kind: "ellipsoid", size_in: [3, 3, 5] } },
  ],
};

/** Opens the page with the sample ball on the bench and the Saw in front. */
async function sawOpen(options = {}) {
  const opened = await site.open({ reducedMotion: "reduce", ...options });
  await prepare(opened.page, options.viewport ?? DESKTOP);
  return { ...opened, saw: opened.page.getByRole("region", { name: "Saw" }) };
}

async function prepare(page, viewport) {
  await page.locator("input[type=file]").setInputFiles({
    name: "sample.ball.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(BALL)),
  });
  if (viewport.width < 1000) await page.getByRole("button", { name: "Saw", exact: true }).click();
  await page.locator(".saw-part", { hasText: "inner core" }).waitFor();
}

/** The cut in words, which follow the picture once an edit has come to rest. */
async function words(saw) {
  await saw.page().waitForTimeout(400);
  return saw.locator(".cut-words").textContent();
}
const plain = (text) => text.replaceAll("\u00a0", " ");

/** Area of a part on the cut as the page's table gives it, in square inches. */
async function area(saw, name) {
  const cell = saw.locator(".cut-words tr", { hasText: name }).locator("td");
  return Number.parseFloat(plain(await cell.textContent()));
}

test("the presets cut along, across and aslant, and the words give the true layers", async () => {
  const { context, saw, check } = await sawOpen();
  await saw.getByRole("button", { name: "Along the pin" }).click();
  let said = plain(await words(saw));
  assert.match(said, /along the pin axis, through the centre/);
  assert.match(
    said,
    /top of the cut down to its middle: cover 0\.750 in, then outer core 1\.000 in, then inner core 2\.500 in/,
  );
  assert.match(
    said,
    /right side in to the middle: cover 0\.750 in, then outer core 2\.000 in, then inner core 1\.500 in/,
  );
  // Circles and an ellipse: areas by hand.
  assert.ok(Math.abs((await area(saw, "cover")) - Math.PI * (4.25 ** 2 - 3.5 ** 2)) < 0.02);
  assert.ok(Math.abs((await area(saw, "inner core")) - Math.PI * 1.5 * 2.5) < 0.02);

  await saw.getByRole("button", { name: "Across" }).click();
  said = plain(await words(saw));
  assert.match(said, /across the pin axis/);
  assert.ok(Math.abs((await area(saw, "inner core")) - Math.PI * 1.5 ** 2) < 0.02);

  await saw.getByLabel("Depth").last().fill("2");
  assert.match(plain(await words(saw)), /2\.00 in from the centre/);
  const r2 = 1.5 ** 2 * (1 - (2 / 2.5) ** 2);
  assert.ok(Math.abs((await area(saw, "inner core")) - Math.PI * r2) < 0.02);

  await saw.getByRole("button", { name: "Off-axis" }).click();
  assert.match(plain(await words(saw)), /off the pin axis by 35°, turned 30° about it/);
  await saw.getByRole("button", { name: "Whole" }).click();
  assert.equal(await saw.locator(".cut-words").count(), 0);
  await check();
  await context.close();
});

test("a part chosen from the list gives its name, material and share; the shares make up the whole", async () => {
  const { context, saw, check } = await sawOpen();
  let sum = 0;
  for (const name of ["cover", "outer core", "inner core"]) {
    const part = saw.locator(".saw-part", { hasText: name });
    if ((await part.getAttribute("aria-pressed")) === "true") await part.click();
    await part.click();
    const about = plain(await saw.locator(".saw-about").textContent());
    assert.match(about, new RegExp(`^${name}`, "i"));
    assert.match(about, /g\/cc/);
    assert.equal(plain(await saw.locator(".saw-tools [role=status]").textContent()), about);
    sum += Number(/carries ([\d.]+)%/.exec(about)[1]);
  }
  assert.ok(Math.abs(sum - 100) < 0.2, `${sum}`);
  await check();
  await context.close();
});

test("a click on the picture names the part there, in 3D and in the drawing", async () => {
  const { page, context, saw, check } = await sawOpen();
  await saw.getByRole("button", { name: "Along the pin" }).click();
  const box = await saw.locator("canvas").boundingBox();
  await page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
  assert.match(await saw.locator(".saw-about").textContent(), /^Inner core/);

  await saw.getByRole("button", { name: "Drawing" }).click();
  const ball = await saw.locator("svg[role=img] > circle").first().boundingBox();
  const middle = ball.y + ball.height / 2;
  const inch = ball.height / 8.5;
  await page.mouse.click(ball.x + 0.3 * inch, middle);
  assert.match(await saw.locator(".saw-about").textContent(), /^Cover/);
  await page.mouse.click(ball.x + 1.8 * inch, middle);
  assert.match(await saw.locator(".saw-about").textContent(), /^Outer core/);
  await check();
  await context.close();
});

test("a part can be taken out of the picture and put back", async () => {
  const { page, context, saw, check } = await sawOpen();
  const shown = async () => {
    await page.waitForTimeout(300);
    return (await saw.locator(".solid").screenshot()).toString("base64");
  };
  const whole = await shown();
  await saw.getByLabel("Show inner core").uncheck();
  assert.notEqual(await shown(), whole);
  await saw.getByRole("button", { name: "Drawing" }).click();
  const parts = () =>
    saw.locator("svg[role=img] [data-part]").evaluateAll((all) => all.map((one) => one.dataset.part));
  assert.deepEqual(new Set(await parts()), new Set(["0", "1"]));
  await saw.getByLabel("Show inner core").check();
  assert.deepEqual(new Set(await parts()), new Set(["0", "1", "2"]));
  await check();
  await context.close();
});

test("the arrow keys and the buttons turn the picture", async () => {
  const { page, context, saw, check } = await sawOpen();
  const shown = async () => (await saw.locator(".solid").screenshot()).toString("base64");
  const stage = saw.getByLabel("The ball sawn open.");
  await stage.focus();
  const first = await shown();
  for (let i = 0; i < 4; i++) await page.keyboard.press("ArrowLeft");
  await page.waitForTimeout(200);
  const second = await shown();
  assert.notEqual(second, first);
  await saw.getByRole("button", { name: "Zoom in" }).click();
  await page.waitForTimeout(200);
  assert.notEqual(await shown(), second);
  await check();
  await context.close();
});

test("two cuts of one ball stand side by side at one scale, and say by how much they differ", async () => {
  const { context, saw, check, page } = await sawOpen();
  await saw.getByRole("button", { name: "Two cuts" }).click();
  const figures = saw.locator("figure");
  assert.equal(await figures.count(), 2);
  const [a, b] = await Promise.all(
    [0, 1].map((i) => figures.nth(i).locator("svg[role=img] > circle").first().getAttribute("r")),
  );
  assert.equal(a, b);
  await saw.getByRole("button", { name: "Across" }).click();
  // The inner core shows pi·1.5·2.5 against pi·1.5²; what it loses the outer core gains.
  const differs = 2 * Math.PI * 1.5 * (2.5 - 1.5);
  assert.match(
    plain(await saw.locator(".two-cuts-says").textContent()),
    new RegExp(`differ by ${differs.toFixed(1)} in²`),
  );
  await saw.getByRole("button", { name: "A quarter turn on" }).click();
  assert.match(plain(await saw.locator(".two-cuts-says").textContent()), /differ by 0\.0 in²/);
  await shoot(page, "saw-two-cuts");
  await check();
  await context.close();
});

test("the section is saved as an SVG file that stands by itself", async () => {
  const { page, context, saw, check } = await sawOpen();
  await saw.getByRole("button", { name: "Along the pin" }).click();
  const waiting = page.waitForEvent("download");
  await saw.getByRole("button", { name: "Save section as SVG" }).click();
  const download = await waiting;
  assert.equal(download.suggestedFilename(), "saw-sample.section.svg");
  const text = await readFile(await download.path(), "utf8");
  const read = await page.evaluate((text) => {
    const doc = new DOMParser().parseFromString(text, "image/svg+xml");
    return {
      broken: doc.querySelector("parsererror")?.textContent ?? null,
      root: doc.documentElement.namespaceURI + doc.documentElement.localName,
      title: doc.querySelector("title")?.textContent,
      desc: doc.querySelector("desc")?.textContent,
      names: [...doc.querySelectorAll("text")].map((t) => t.textContent),
      classes: doc.querySelectorAll("[class], style, script, image").length,
    };
  }, text);
  assert.equal(read.broken, null);
  assert.equal(read.root, "http://www.w3.org/2000/svgsvg");
  assert.match(read.title, /Section of Saw sample, cut along the pin axis/);
  assert.match(read.desc, /outer core, cover, inner core/);
  for (const name of ["cover", "outer core", "inner core"]) assert.ok(read.names.includes(name), name);
  assert.equal(read.classes, 0);
  await check();
  await context.close();
});

test("the 3D view is saved as a PNG with the picture in it", async () => {
  const { page, context, saw, check } = await sawOpen();
  const waiting = page.waitForEvent("download");
  await saw.getByRole("button", { name: "Save 3D view as PNG" }).click();
  const download = await waiting;
  assert.equal(download.suggestedFilename(), "saw-sample.png");
  const bytes = await readFile(await download.path());
  assert.deepEqual([...bytes.subarray(0, 4)], [0x89, 0x50, 0x4e, 0x47]);
  const seen = await page.evaluate(async (base64) => {
    const blob = new Blob([Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))], { type: "image/png" });
    const bitmap = await createImageBitmap(blob);
    const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d");
    pen.drawImage(bitmap, 0, 0);
    const { data } = pen.getImageData(0, 0, bitmap.width, bitmap.height);
    return new Set(Array.from({ length: data.length / 4 }, (_, i) => data.slice(4 * i, 4 * i + 3).join()))
      .size;
  }, bytes.toString("base64"));
  assert.ok(seen > 20, `${seen} colours`);
  await check();
  await context.close();
});

test("without WebGL2 the drawing stands in and the rest works", async () => {
  const context = await site.browser.newContext({ viewport: DESKTOP, reducedMotion: "reduce" });
  await context.addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {
      return kind.startsWith("webgl") ? null : real.call(this, kind, ...rest);
    };
  });
  const page = await context.newPage();
  await page.goto(site.url, { waitUntil: "networkidle" });
  await prepare(page, DESKTOP);
  const saw = page.getByRole("region", { name: "Saw" });
  await saw.getByText("cannot draw in three dimensions").waitFor();
  assert.equal(await saw.locator("canvas").count(), 0);
  await saw.getByRole("img", { name: /Section of Saw sample/ }).waitFor();
  await saw.getByRole("button", { name: "Across" }).click();
  await saw.getByRole("img", { name: /cut across the pin axis/ }).waitFor();
  assert.ok(await saw.getByRole("button", { name: "Save 3D view as PNG" }).isDisabled());
  await shoot(page, "saw-no-webgl");
  await context.close();
});

test("a lost graphics context is said, and the picture comes back", async () => {
  const { page, context, saw } = await sawOpen();
  await page.evaluate(() => {
    const gl = document.querySelector(".solid canvas").getContext("webgl2");
    globalThis.lose = gl.getExtension("WEBGL_lose_context");
    globalThis.lose.loseContext();
  });
  await saw.getByText("let go of the 3D picture").waitFor();
  await page.evaluate(() => globalThis.lose.restoreContext());
  await saw.getByText("let go of the 3D picture").waitFor({ state: "detached" });
  const before = (await saw.locator(".solid").screenshot()).toString("base64");
  await saw.getByRole("button", { name: "Across" }).click();
  await page.waitForTimeout(300);
  assert.notEqual((await saw.locator(".solid").screenshot()).toString("base64"), before);
  await context.close();
});

for (const [name, viewport] of Object.entries({ desktop: DESKTOP, phone: PHONE, narrow: NARROW })) {
  test(`the Saw is accessible and fits, ${name}`, async () => {
    const { page, context, saw, check } = await sawOpen({ viewport });
    for (const picture of ["Solid", "Drawing", "Two cuts", "Cover"]) {
      await saw.getByRole("button", { name: picture, exact: true }).click();
      await shoot(page, `saw-${picture.toLowerCase().replace(" ", "-")}-${name}`);
      assert.deepEqual(await accessibilityFaults(page), []);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      assert.ok(wide <= 0, `${wide} px too wide`);
    }
    await check();
    await context.close();
  });
}

test("a drilled ball is first offered cut through its holes", async () => {
  const { page, saw, check, context } = await sawOpen();
  // The thumb's axis passes 0.3 in beside the centre; the finger's mouth lies straight above it.
  const lean = 0.3 / 4.25;
  const holes = [
    { name: "finger", entry: [0, 0.6, 0.8], diameter_in: 0.9, depth_in: 1 },
    { name: "thumb", entry: [0, -0.6, 0.8], axis: [lean, 0.6, -0.8], diameter_in: 1, depth_in: 2.5 },
  ];
  await page.locator("input[type=file]").setInputFiles({
    name: "holes.ball.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify({ ...BALL, name: "Holes", holes })),
  });
  const cuts = saw.locator(".plane-controls .choices button");
  await cuts.filter({ hasText: "Through the holes" }).waitFor();
  assert.equal(await cuts.first().textContent(), "Through the holes");
  await cuts.first().click();
  assert.equal(await cuts.first().getAttribute("aria-pressed"), "true");
  await saw.getByRole("button", { name: "Drawing" }).click();
  await saw.getByRole("img", { name: /Section of Holes/ }).waitFor();
  // The words follow once the cut rests.
  await saw.locator("#cut-words", { hasText: /\d\.\d\d\sin from the centre/ }).waitFor();
  // What is missing of the whole disc is the thumb's full width and most of the finger's.
  const depth_in = Number(
    /(\d\.\d\d)\sin from the centre/.exec(await saw.locator("#cut-words").textContent())[1],
  );
  const areas = await saw.locator("#cut-words td").allTextContents();
  const there = areas.map((text) => Number.parseFloat(text)).reduce((a, b) => a + b);
  const missing = Math.PI * (4.25 ** 2 - depth_in ** 2) - there;
  assert.ok(missing > 3 && missing < 3.6, `${missing} in² of holes`);
  await shoot(page, "saw-holes");
  await saw.getByRole("button", { name: "Along the pin" }).click();
  assert.equal(await cuts.first().getAttribute("aria-pressed"), "false");
  await check();
  await context.close();
});
