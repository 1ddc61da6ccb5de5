// The take-home sheet: one page of A4 or Letter for every ball and comparison,
// nothing cut off, drawn in vectors, and a code that says the very link.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { after, before, test } from "node:test";
import { accessibilityFaults, launch, NARROW, shoot } from "./harness.mjs";
import { overlaid } from "./states.mjs";

const npm = createRequire(new URL("../../www/package.json", import.meta.url));
const jsQR = npm("jsqr");

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const scenario = (path) =>
  JSON.parse(readFileSync(new URL(`../../scenarios/${path}`, import.meta.url), "utf8"));
const BALLS = [
  "No. 1, simple",
  "No. 2, two-piece",
  "No. 3, three-piece",
  "No. 4, nested core",
  "No. 5, thick cover",
  "No. 6, five-piece",
];
const PAPERS = { A4: [595, 842], Letter: [612, 792] };

async function openSheet(options) {
  const opened = await site.open(options);
  await toSheet(opened.page);
  return opened;
}

async function toSheet(page) {
  await page.getByRole("button", { name: "Sheet", exact: true }).click();
  await page.locator(".sheet-page").waitFor();
}

let opened = 0;
async function openFile(page, file, ending = "made.shot.json") {
  opened += 1;
  const name = `${opened}-${ending}`;
  await page.locator("input[type=file]").setInputFiles({
    name,
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(file)),
  });
  await page.getByText(`Opened ${name}`).waitFor();
}

/** A ball of the house on the bench, and its other weights worked out. */
async function onBench(page, name) {
  const number = /\d/.exec(name)[0];
  const [file] = readdirSync(new URL("../../scenarios/balls", import.meta.url)).filter((file) =>
    file.startsWith(`no-${number}-`),
  );
  await openFile(page, scenario(`balls/${file}`), file);
}

/** What is pressed and looked for, by language. */
const ENGLISH = { paper: "Paper", print: "Print…", compare: "Compare with", title: /^Sheet: / };
const SPANISH = { paper: "Papel", print: "Imprimir…", compare: "Comparar con", title: /^Hoja: / };

const workedOut = (page, { print } = ENGLISH) =>
  page.getByRole("button", { name: print, disabled: false }).waitFor();

/** What of the sheet is cut off at its own edge or the paper's, when printed. */
const cutOff = (page) =>
  page.evaluate(() => {
    const sheet = document.querySelector(".sheet-page");
    const edge = sheet.getBoundingClientRect();
    const mm = 96 / 25.4;
    const outside = [...sheet.querySelectorAll("h3, h4, p, li, dd, th, td, figcaption, svg")].filter(
      (part) => {
        const box = part.getBoundingClientRect();
        const inside =
          box.left >= edge.left + 11 * mm &&
          box.right <= edge.right - 11 * mm &&
          box.top >= edge.top + 11 * mm &&
          box.bottom <= edge.bottom - 11 * mm;
        const whole =
          part.tagName === "svg" || part.scrollWidth <= part.clientWidth + 1 || part.clientWidth === 0;
        return !(inside && whole);
      },
    );
    const parts = [...sheet.children].map((child) => child.getBoundingClientRect());
    const over = parts.filter((box, n) => n > 0 && box.top < parts[n - 1].bottom - 0.5);
    return [
      ...outside.map((part) => `${part.tagName} ${part.textContent.slice(0, 60)}`),
      ...over.map(() => "parts lie on one another"),
    ];
  });

/** Prints to PDF and holds it to one page of the right size, without bitmaps. */
async function print(page, paper, what, words = ENGLISH) {
  await page.getByLabel(words.paper).selectOption(paper);
  await workedOut(page, words);
  const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString("latin1");
  assert.equal(pdf.match(/\/Type\s*\/Page\b/g).length, 1, `${what} on ${paper}: pages`);
  const [, width, height] = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/.exec(pdf);
  assert.match(await page.title(), words.title, "a name for the file");
  assert.deepEqual([Math.round(width), Math.round(height)], PAPERS[paper], `${what} on ${paper}: size`);
  assert.doesNotMatch(pdf, /\/Subtype\s*\/Image/, `${what} on ${paper}: bitmaps`);
  await page.emulateMedia({ media: "print" });
  assert.deepEqual(await cutOff(page), [], `${what} on ${paper}: cut off`);
  assert.deepEqual(await overlaid(page, ".sheet-lane svg"), [], `${what} on ${paper}: names on the lane`);
  await page.emulateMedia({ media: null });
}

/** What the code on the page says to a reader of such codes. */
async function read(page, at = 0) {
  const picture = await page.locator(".sheet-code").nth(at).screenshot();
  const { width, height, data } = await page.evaluate(async (png) => {
    const image = new Image();
    image.src = `data:image/png;base64,${png}`;
    await image.decode();
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [image.width, image.height];
    const pen = canvas.getContext("2d");
    pen.drawImage(image, 0, 0);
    const { data } = pen.getImageData(0, 0, image.width, image.height);
    return { width: image.width, height: image.height, data: [...data] };
  }, picture.toString("base64"));
  return jsQR(Uint8ClampedArray.from(data), width, height)?.data;
}

test("every ball is one page of either paper, and its code reads as its link", async () => {
  const { page, check, context } = await openSheet({ deviceScaleFactor: 2 });
  for (const name of BALLS) {
    await onBench(page, name);
    assert.equal(await page.locator("#sheet-title").textContent(), name);
    for (const paper of Object.keys(PAPERS)) await print(page, paper, name);
    const link = await page.locator(".sheet-link a").first().getAttribute("href");
    assert.match(link, /^http:.*#p1\./);
    assert.equal(await read(page), link, name);
  }
  await check();
  await context.close();
});

test("every comparison is one page of either paper, with a code for each ball", async () => {
  const { page, check, context } = await openSheet({ deviceScaleFactor: 2 });
  await onBench(page, BALLS[5]);
  for (const name of BALLS) {
    await page.getByLabel("Compare with").selectOption({ label: name });
    assert.equal(await page.locator("#sheet-title").textContent(), `A: ${BALLS[5]} B: ${name}`);
    for (const paper of Object.keys(PAPERS)) await print(page, paper, `${BALLS[5]} and ${name}`);
  }
  for (const at of [0, 1]) {
    const link = await page.locator(".sheet-code-place").nth(at).getAttribute("href");
    assert.equal(await read(page, at), link);
  }
  const same = await page.locator(".sheet-why").textContent();
  // One from the shelf, under the name it has there.
  await page.getByRole("button", { name: "Shelf", exact: true }).click();
  await page.locator(".put-form").getByLabel("Name").fill("League ball");
  await page.getByRole("button", { name: "Put on the shelf", exact: true }).click();
  await page.getByText(": League ball.").waitFor();
  await toSheet(page);
  await page.getByLabel("Compare with").selectOption({ label: "League ball" });
  assert.equal(await page.locator("#sheet-title").textContent(), `A: ${BALLS[5]} B: League ball`);
  assert.match(same, /A and B end alike/, "a ball compared with itself");
  await check();
  await context.close();
});

test("the code opens the very ball and shot, and the bowler's name is not in it nor kept", async () => {
  const { page, reload, check, context } = await openSheet({ deviceScaleFactor: 2 });
  const before = await read(page);
  await page.getByLabel("Bowler", { exact: true }).fill("Somebody Private");
  assert.match(await page.locator(".sheet-for").textContent(), /Somebody Private/);
  assert.equal(await read(page), before);
  await page.waitForTimeout(400);
  assert.ok(!JSON.stringify(await page.evaluate(() => ({ ...localStorage }))).includes("Private"));
  // A reload of this tab leaves it; another tab knows nothing of it.
  await reload();
  await toSheet(page);
  assert.equal(await page.getByLabel("Bowler", { exact: true }).inputValue(), "Somebody Private");
  const numbers = await page.locator(".sheet-numbers").textContent();
  const shot = await page.locator(".sheet-shot figcaption").textContent();
  const again = await openSheet({ hash: new URL(before).hash });
  assert.equal(await again.page.getByLabel("Bowler", { exact: true }).inputValue(), "");
  assert.equal(await again.page.locator(".sheet-numbers").textContent(), numbers);
  assert.equal(await again.page.locator(".sheet-shot figcaption").textContent(), shot);
  await check();
  await again.check();
  await again.context.close();
  await context.close();
});

/** The opening shot with a core of so many corners at no round place. */
function made(corners, more = {}) {
  const ball = scenario("balls/no-2-two-piece.ball.json");
  const profile_in = Array.from({ length: corners }, (_, n) => {
    const angle = -Math.PI / 2 + (Math.PI * n) / (corners - 1);
    const r = 2.1 + 0.1 * Math.sin(7 * angle);
    return [Math.abs(r * Math.cos(angle)), r * Math.sin(angle)];
  });
  const pieces = ball.pieces.map((piece, n) =>
    n === 1 ? { ...piece, shape: { kind: "lathe", profile_in }, cuts: undefined } : piece,
  );
  return { ...scenario("shots/opening.shot.json"), ball: { ...ball, pieces, ...more } };
}

test("long names, many parts, large links: still one page, and it says what it leaves out", async () => {
  const { page, check, context } = await site.open({ deviceScaleFactor: 2 });
  const note = "A note that goes on and on. ".repeat(30);
  const rings = Array.from({ length: 14 }, (_, n) => ({
    name: `a rather long-named ring number ${n}`,
    density_g_cc: 1.5 + n / 10,
    shape: { kind: "ring", ring_diameter_in: 1 + n / 4, tube_diameter_in: 0.2 },
    at_in: [0, 0, 0.013 * n],
  }));
  const ball = scenario("balls/no-1-simple.ball.json");
  await openFile(page, {
    ...scenario("shots/opening.shot.json"),
    ball: { ...ball, name: "Wordy ".repeat(60), note, pieces: [ball.pieces[0], ...rings] },
  });
  await toSheet(page);
  for (const paper of Object.keys(PAPERS)) await print(page, paper, "wordy");
  await page.getByLabel("Compare with").selectOption({ label: BALLS[3] });
  for (const paper of Object.keys(PAPERS)) await print(page, paper, "wordy and another");

  // Without a space where a line could end.
  const endless = "W".repeat(10_000);
  const pieces = ball.pieces.map((piece) => ({ ...piece, name: endless }));
  await openFile(page, {
    ...scenario("shots/opening.shot.json"),
    ball: { ...ball, name: endless, note: endless, cover: { ...ball.cover, name: `The ${endless}` }, pieces },
  });
  for (const paper of Object.keys(PAPERS)) await print(page, paper, "endless and another");
  await page.getByLabel("Compare with").selectOption({ label: "no other ball" });
  for (const paper of Object.keys(PAPERS)) await print(page, paper, "endless");
  const names = await page.locator(".sheet-page svg text").allTextContents();
  assert.ok(names.some((name) => /W…$/.test(name)) && names.every((name) => name.length < 70));
  assert.ok((await page.title()).length < 100);

  await openFile(page, made(18));
  await page.getByLabel("Compare with").selectOption({ label: "no other ball" });
  const link = await page.locator(".sheet-link a").first().getAttribute("href");
  assert.ok(link.length > 400 && link.length < 1200, `${link.length} characters`);
  assert.equal(await read(page), link, "a large code is read too");
  for (const paper of Object.keys(PAPERS)) await print(page, paper, "a large code");

  await openFile(page, made(50));
  await page.getByText("too much for a code that can be scanned").waitFor();
  assert.equal(await page.locator(".sheet-code").count(), 0);
  for (const paper of Object.keys(PAPERS)) await print(page, paper, "a link without a code");

  await openFile(page, made(200));
  await page.getByText("too long to print").waitFor();
  for (const paper of Object.keys(PAPERS)) await print(page, paper, "no link");
  await check();
  await context.close();
});

test("a drilled ball on oil: the layout drawn, what its holes did, and a link to all of it", async () => {
  const { page, check, context } = await openSheet({ deviceScaleFactor: 2 });
  const { layout, drilling } = scenario("layouts/league-right.layout.json");
  await openFile(page, {
    ...scenario("shots/house-pattern.shot.json"),
    ball: scenario("balls/no-4-nested-core.ball.json"),
    layout: { start_turn_deg: 0, ...layout },
    drilling,
    lane: { oil: scenario("oil/house.oil.json") },
  });
  await page.getByRole("img", { name: "The layout, seen at the grip" }).last().waitFor();
  assert.match(await page.locator(".sheet-laid").textContent(), /The drill takes out 2\.\d\d\u00a0oz/);
  assert.match(
    await page.locator(".sheet-shot").textContent(),
    /VAL angle 35.*oil pattern House, 24\u00a0mL/,
  );
  for (const paper of Object.keys(PAPERS)) await print(page, paper, "drilled");
  await page.getByLabel("Compare with").selectOption({ label: BALLS[5] });
  for (const paper of Object.keys(PAPERS)) {
    await print(page, paper, "two drilled alike");
    await page.emulateMedia({ media: "print" });
    const names = page.locator(".sheet-section svg text");
    assert.ok(!(await names.allTextContents()).some((name) => name.includes("…")), "a name cut short");
    const tall_px = await page
      .locator(".sheet-section svg")
      .evaluateAll((all) =>
        all.map((svg) => (svg.getAttribute("font-size") * svg.clientWidth) / svg.getAttribute("width")),
      );
    for (const px of tall_px) assert.ok(px > 10.5, `names of parts ${px} px high`);
    await shoot(page, `sheet-two-drilled-${paper.toLowerCase()}`);
    await page.emulateMedia({ media: null });
  }
  await page.getByLabel("Compare with").selectOption({ label: "no other ball" });
  const numbers = await page.locator(".sheet-numbers").textContent();
  const again = await openSheet({ hash: new URL(await read(page)).hash });
  await again.page.locator(".sheet-laid").waitFor();
  assert.equal(await again.page.locator(".sheet-numbers").textContent(), numbers);
  assert.match(numbers, /Top weight, undrilled/);
  assert.match(
    await page.locator(".sheet-laid").textContent(),
    /Static balance over the grip: top 0\.57\u00a0oz, finger 1\.96\u00a0oz, positive side 0\.49\u00a0oz/,
  );
  await page.getByLabel("Compare with").selectOption({ label: BALLS[5] });
  for (const paper of Object.keys(PAPERS)) await print(page, paper, "drilled and another");
  // Both carry the drilling, and the sheet shows it and says so.
  assert.match(await page.locator(".sheet-laid").textContent(), /A and B drilled alike/);
  assert.match(
    await page.locator(".sheet-balance").textContent(),
    /A: Static balance over the grip: top 0\.57.*B: Static balance over the grip: /,
  );
  assert.equal(await page.locator(".sheet-laid svg").count(), 1);
  assert.match(await page.locator(".sheet-why").textContent(), /Both drilled alike for this hand/);
  const weights = page.locator(".sheet-weights tbody tr");
  assert.equal(await weights.count(), 5);
  const told = await page.locator(".sheet-weights").textContent();
  assert.match(told, /11\u00a0lb, 10\u00a0lb: neither can be made so/);
  assert.match(told, /A at .*outside the published limit of/);
  // What the material hardly can be is marked beside each ball, and said.
  assert.match(told, /\u2020 Its material hardly has the density for it/);
  assert.match(await weights.nth(3).textContent(), /^13\u00a0lb[\d.]+\u2020[\d.]+\u2020/);
  await page.emulateMedia({ media: "print" });
  await shoot(page, "sheet-drilled-two");
  await page.emulateMedia({ media: null });
  await check();
  await again.check();
  await again.context.close();
  await context.close();
});

test("in Spanish, longer as it is, every ball and comparison is one page, drilled or not", async () => {
  const { page, check, context } = await site.open({ locale: "es-MX" });
  const go = (name) => page.getByRole("button", { name, exact: true }).click();
  const printAll = async (what) => {
    for (const paper of Object.keys(PAPERS)) await print(page, paper, what, SPANISH);
  };
  for (const [n, name] of BALLS.entries()) {
    await go("Estante");
    await page.getByRole("button", { name: new RegExp(`^Poner en el Banco: N\\.º ${n + 1},`) }).click();
    await go("Hoja");
    await page.locator(".sheet-page").waitFor();
    assert.match(await page.locator("#sheet-title").textContent(), new RegExp(`^N\\.º ${n + 1},`));
    await printAll(name);
  }
  const compare = async (what) => {
    for (const value of ["house-1", "house-4", "house-6"]) {
      await page.getByLabel(SPANISH.compare).selectOption(value);
      await printAll(`${what} and ${value}`);
    }
    await page.getByLabel(SPANISH.compare).selectOption("");
  };
  await compare("No. 6");
  await go("Taller");
  await page.getByText("Taladrarla para una mano").click();
  await page.getByLabel("La bola está taladrada").check();
  await go("Hoja");
  await page.locator(".sheet-laid").waitFor();
  await printAll("No. 6, drilled");
  await compare("No. 6, drilled");
  await check();
  await context.close();
});

test("metric, in the dark, on a narrow screen, for every reader", async () => {
  const { page, check, context } = await openSheet({ viewport: NARROW, colorScheme: "dark" });
  await page.getByRole("button", { name: "More" }).click();
  await page.getByLabel("Units").selectOption("metric");
  assert.match(await page.locator(".sheet-numbers").textContent(), /6\.8\d\d\u00a0kg/);
  assert.match(await page.locator(".sheet-weights").textContent(), /7\.257\u00a0kg/);
  assert.doesNotMatch(await page.locator(".sheet-page").textContent(), /\d\u00a0(in|lb|ft|oz|mph)\b/);
  await page.getByLabel("Compare with").selectOption({ label: BALLS[0] });
  assert.doesNotMatch(await page.locator(".sheet-page").textContent(), /\d\u00a0(in|lb|ft|oz|mph)\b/);
  assert.deepEqual(await accessibilityFaults(page), []);
  // The whole lane is there, to the pins.
  for (const lane of await page.locator(".sheet-lane-place").all()) {
    const [own, shown] = await lane.evaluate((place) => [place.scrollWidth, place.clientWidth]);
    assert.ok(own <= shown, `a lane ${own} px wide in ${shown}`);
    assert.match(await lane.locator("svg").textContent(), /18\s*m/);
  }
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  assert.ok(wide <= NARROW.width, `${wide} px wide`);
  const body = await page
    .locator(".room-sheet .room-body")
    .evaluate((body) => body.scrollWidth - body.clientWidth);
  assert.ok(body <= 0, `${body} px to scroll sideways`);
  assert.equal(
    await page.locator(".sheet-page").evaluate((sheet) => getComputedStyle(sheet).backgroundColor),
    "rgb(255, 255, 255)",
    "paper is white",
  );
  await check();
  await context.close();
});

test("printed, there is the sheet alone; a ball outside the limits says so on it", async () => {
  const { page, check, context } = await site.open();
  const ball = scenario("balls/no-3-three-piece.ball.json");
  ball.pieces[1].density_g_cc = 3.6;
  await openFile(page, { ...scenario("shots/opening.shot.json"), ball });
  await toSheet(page);
  assert.match(await page.locator(".sheet-cautions").textContent(), /outside: [^.]*[Ww]eight/);
  await page.emulateMedia({ media: "print" });
  for (const gone of [".bar", ".sheet-choices", ".room-bench", ".room-name"]) {
    assert.ok(!(await page.locator(gone).first().isVisible()), `${gone} is printed`);
  }
  await shoot(page, "sheet-print");
  await check();
  await context.close();
});
