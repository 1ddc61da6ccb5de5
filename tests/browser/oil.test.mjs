// Oil, cover and friction as a person uses them: patterns chosen, changed,
// drawn by hand and by keyboard, kept in files; what the cover does to friction.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, NARROW } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const plain = (text) => text.replaceAll("\u00a0", " ").replace("\u2212", "-");
const says = async (lane) => plain(await lane.locator(".lane-says").textContent());
const fold = (lane, name) => lane.locator("summary", { hasText: name }).first();
const LANE = /^(Oil|Lane): /;
const oilSays = async (lane) => plain(await fold(lane, LANE).textContent());
const read = (path) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const keptLane = async (page) => {
  await page.evaluate(() => dispatchEvent(new Event("pagehide")));
  return page.evaluate(() => JSON.parse(localStorage.getItem("pithball.bench/1")).doc.shot.lane);
};

const field = (place, label) =>
  place
    .locator(".field", { has: place.page().locator(".field-label", { hasText: label }) })
    .locator("input[type=text]");

/** The Lane with an oil pattern on it and its fold open. */
async function oilOpen({ viewport = DESKTOP, pattern = "house", ...options } = {}) {
  const opened = await site.open({ viewport, reducedMotion: "reduce", ...options });
  if (viewport.width < 1000) await opened.page.getByRole("button", { name: "Lane", exact: true }).click();
  const lane = opened.page.getByRole("region", { name: "Lane" });
  await fold(lane, LANE).click();
  await lane.locator(".oil-fold select").selectOption(pattern);
  return { ...opened, lane, oil: lane.locator(".oil-fold") };
}

/** The volume told, in mL. */
const volume = async (oil) =>
  Number.parseFloat(
    plain(await oil.locator(".oil-numbers div", { hasText: "Volume" }).locator("dd").textContent()),
  );

test("every pattern of the house goes on the lane, and back to friction by distance", async () => {
  const { context, page, lane, oil, check } = await oilOpen();
  const said = new Set();
  const files = readdirSync(new URL("../../scenarios/oil/", import.meta.url));
  for (const name of files.map((file) => file.replace(".oil.json", ""))) {
    await oil.locator("select").first().selectOption(name);
    const file = JSON.parse(read(`scenarios/oil/${name}.oil.json`));
    assert.deepEqual((await keptLane(page)).oil, file);
    const heading = await oilSays(lane);
    assert.ok(heading.includes(`${file.name}, `), heading);
    assert.ok(heading.includes(`${file.pattern.volume_ml.toFixed(1)} mL`), heading);
    said.add(await says(lane));
  }
  assert.equal(said.size, files.length, "each lane is another shot");
  await oil.locator("select").first().selectOption("zones");
  assert.deepEqual((await keptLane(page)).zones[0], { from_ft: 0, to_ft: 40, mu: 0.04 });
  await page.getByRole("button", { name: "Undo" }).click();
  assert.equal(typeof (await keptLane(page)).oil.name, "string");
  await check();
  await context.close();
});

test("each number of a pattern changes the film and the shot at once", async () => {
  const { context, page, lane, oil, check } = await oilOpen();
  const drawn = () =>
    oil.locator(".film-drawing path.film").evaluateAll((paths) => paths.map((p) => p.outerHTML));
  let last = await drawn();
  const changes = {
    Length: "36",
    Volume: "27",
    "Inside to": "5",
    "Thin out": "9",
    "Full from": "14",
    "Full as far": "12",
    "Left at": "50",
    "Brushed out": "6",
  };
  for (const [label, value] of Object.entries(changes)) {
    await field(oil, label).fill(value);
    const now = await drawn();
    assert.notDeepEqual(now, last, label);
    last = now;
  }
  assert.equal(await volume(oil), 27);
  assert.equal((await keptLane(page)).oil.name, "House, changed");
  assert.match(await oilSays(lane), /House, changed, 36\.0 ft, 27\.0 mL, 5:1/);
  // What does not go together is said at its number, and the last good oil stays.
  await field(oil, "Brushed out").fill("30");
  const wrong = oil.locator(".says-wrong");
  assert.match(await wrong.textContent(), /Mistake|length/i);
  assert.equal(await volume(oil), 27);
  await page.getByLabel("Units").selectOption("metric");
  assert.match(await oilSays(lane), /10\.97 m/);
  await check();
  await context.close();
});

test("a pencil lays oil and takes it off; one stroke is one step of undo", async () => {
  const { context, page, lane, oil, check } = await oilOpen();
  await fold(lane, "Draw on the oil").click();
  await oil.getByRole("button", { name: "Pencil: more oil" }).click();
  const at = async (board, foot) => {
    const box = await oil.locator(".film-touch").boundingBox();
    return [box.x + (foot / 63) * box.width, box.y + ((39.5 - board) / 39) * box.height];
  };
  await oil.locator(".film-touch").scrollIntoViewIfNeeded();
  await page.mouse.move(...(await at(30, 45)));
  await page.mouse.down();
  await page.mouse.move(...(await at(30, 52)), { steps: 4 });
  await page.mouse.up();
  const { oil: made } = await keptLane(page);
  // Three boards around board 30 and their mirror images, from 43 to 54 ft, half a micrometre each.
  const laid = made.film_um.slice(43).map((row) => row.flatMap((um, i) => (um > 0 ? [[i + 1, um]] : [])));
  assert.equal(laid.length, 11);
  const expected = [9, 10, 11, 29, 30, 31].map((board) => [board, 0.5]);
  for (const row of laid) assert.deepEqual(row, expected);
  // A cell is a board of 41.5/39 in by a foot.
  const cell_m2 = (41.5 / 39) * 0.0254 * 0.3048;
  assert.ok(Math.abs((await volume(oil)) - 24 - 66 * 0.5 * cell_m2) < 0.051);
  await oil.getByRole("button", { name: "Pencil: less oil" }).click();
  await oil.locator(".film-touch").scrollIntoViewIfNeeded();
  await page.mouse.click(...(await at(30, 48)));
  assert.equal((await keptLane(page)).oil.film_um[48][29], 0);
  await page.getByRole("button", { name: "Undo" }).click();
  assert.deepEqual((await keptLane(page)).oil, made);
  await page.getByRole("button", { name: "Undo" }).click();
  assert.equal((await keptLane(page)).oil.name, "House");
  await check();
  await context.close();
});

test("the keyboard alone sets the film of any part", async () => {
  const { context, page, lane, oil, check } = await oilOpen();
  const opener = fold(lane, "Draw on the oil");
  await opener.focus();
  await page.keyboard.press("Enter");
  const part = oil.locator("fieldset", { hasText: "Part of it" }).last();
  const values = { "From board": "1", "To board": "5", From: "10", To: "12", Film: "3" };
  await page.keyboard.press("Tab");
  await oil.getByRole("checkbox", { name: "The same on both sides" }).press("Space");
  for (const [label, value] of Object.entries(values)) {
    const input = part.getByLabel(label, { exact: false }).and(part.locator("input")).first();
    const exact =
      label === "From" || label === "To" ? part.locator("input").nth(label === "From" ? 2 : 3) : input;
    await exact.focus();
    await page.keyboard.press("Control+a");
    await page.keyboard.type(value);
  }
  await part.getByRole("button", { name: "Set to it" }).press("Enter");
  const { oil: made } = await keptLane(page);
  assert.deepEqual(made.film_um[10].slice(0, 5), [3, 3, 3, 3, 3]);
  assert.deepEqual(made.film_um[11].slice(0, 5), [3, 3, 3, 3, 3]);
  assert.ok(made.film_um[12][0] < 1 && made.film_um[10][38] < 1, "nothing else");
  await part.getByRole("button", { name: "Add it" }).press("Enter");
  assert.equal((await keptLane(page)).oil.film_um[10][0], 6);
  await part.getByRole("button", { name: "Take it off" }).press("Enter");
  assert.equal((await keptLane(page)).oil.film_um[10][0], 3);
  // The cross-section's table says the same as the file, smoothed at its edges.
  await fold(lane, "Across the lane").click();
  await field(oil, "Distance").fill("11.5");
  await fold(lane, "The same as tables").click();
  const rows = await oil.locator(".oil-tables table").first().locator("tbody td").allTextContents();
  assert.equal(rows.length, 39);
  assert.ok(Number(rows[0]) > 2 && Number(rows[0]) < 3.01);
  await check();
  await context.close();
});

test("oil is saved to a file and opened again; a wrong file says where", async () => {
  const { context, page, lane, oil, check } = await oilOpen();
  await field(oil, "Volume").fill("21.5");
  await oil.getByLabel("Name").fill("Mine");
  const [saved] = await Promise.all([
    page.waitForEvent("download"),
    oil.getByRole("button", { name: "Save oil" }).click(),
  ]);
  assert.equal(saved.suggestedFilename(), "mine.oil.json");
  const text = readFileSync(await saved.path(), "utf8");
  await oil.locator("select").first().selectOption("zones");
  const open = (name, buffer) =>
    page
      .getByLabel("File to open", { exact: true })
      .setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(buffer) });
  await open("mine.oil.json", text);
  await page.locator(".notice", { hasText: /Opened mine\.oil\.json/ }).waitFor();
  assert.match(await oilSays(lane), /Mine, 40\.0 ft, 21\.5 mL/);
  await open("bad.oil.json", text.replace('"ratio":10', '"ratio":0'));
  await page.locator(".notice", { hasText: /bad\.oil\.json was not opened.*ratio/ }).waitFor();
  // A shot whose oil lies in another file keeps the lane there is.
  await open("house.shot.json", read("scenarios/shots/house-pattern.shot.json"));
  await page.locator(".notice", { hasText: /its oil is in another file/ }).waitFor();
  assert.match(await oilSays(lane), /Mine/);
  await check();
  await context.close();
});

test("cover and finish change friction on oil, and say so where they do not", async () => {
  const { context, page, lane, oil, check } = await oilOpen();
  const friction = fold(lane, "Friction:");
  await friction.click();
  const panel = lane.locator(".friction-fold");
  const curve = () => panel.locator(".friction-curve path.chart-line").getAttribute("d");
  const state = async () => [plain(await friction.textContent()), await curve(), await says(lane)];
  let last = await state();
  for (const family of ["polyester", "urethane", "reactive"]) {
    await panel.locator("select").first().selectOption(family);
    const now = await state();
    if (family !== "reactive") assert.notDeepEqual(now, last, family);
    last = now;
  }
  await panel.locator("select").nth(1).selectOption("polished");
  await field(panel, "Grit").fill("4000");
  assert.notDeepEqual(await state(), last);
  last = await state();
  for (const [label, value] of Object.entries({
    "thick oil": "0.06",
    "dry boards": "0.18",
    "Half-way": "0.5",
  })) {
    await field(panel, label).fill(value);
    const now = await state();
    assert.notDeepEqual(now, last, label);
    last = now;
  }
  assert.deepEqual((await keptLane(page)).friction, { mu_oil: 0.06, mu_dry: 0.18, film_half_um: 0.5 });
  await field(panel, "dry boards").fill("0.4");
  assert.match(await panel.locator(".says-wrong").textContent(), /0\.32/);
  await panel.getByRole("button", { name: "The usual figures" }).click();
  assert.equal((await keptLane(page)).friction, undefined);
  // The charts down the lane tell film and friction under the ball.
  await fold(lane, "Charts by distance").click();
  assert.equal(await lane.getByRole("img", { name: "Oil under the ball by distance" }).count(), 1);
  await oil.locator("select").first().selectOption("zones");
  assert.equal(await friction.count(), 0);
  assert.match(await oil.textContent(), /do not change it/);
  assert.equal(await lane.getByRole("img", { name: "Oil under the ball by distance" }).count(), 0);
  await check();
  await context.close();
});

test("games wear the oil; nothing is lost; the worn lane can be used", async () => {
  const { context, page, lane, check } = await oilOpen();
  await fold(lane, "As games go by").click();
  const wear = lane.locator(".wear-fold");
  const became = wear.locator(".wear-says", { hasText: "After 3 games" });
  await became.waitFor();
  const mine = await says(lane);
  await fold(wear, "Game by game").click();
  const rows = async () =>
    wear
      .locator("tbody tr")
      .evaluateAll((rows) => rows.map((row) => [...row.querySelectorAll("td")].map((td) => td.textContent)));
  const games = await rows();
  assert.equal(games.length, 4);
  for (const [on, gone] of games)
    assert.ok(Math.abs(Number(on) + Number(gone) - 24) < 0.11, `${on} and ${gone}`);
  assert.ok(Number(games[3][0]) < Number(games[1][0]));
  assert.match(plain(await wear.textContent()), /model choice/);
  await field(wear, "Games").fill("8");
  await wear.locator(".wear-says", { hasText: "After 8 games" }).waitFor();
  const worn = await rows();
  assert.equal(worn.length, 9);
  await wear.getByRole("button", { name: "Use the worn lane" }).click();
  assert.match(await oilSays(lane), new RegExp(`House after 8 games, [\\d.]+ ft, ${worn[8][0]} mL`));
  assert.notEqual(await says(lane), mine);
  // From here on they are further games, and the lane begun from is the worn one.
  await wear.locator(".wear-says", { hasText: "After 8 further games" }).waitFor();
  assert.match(await fold(lane, "As games go by").textContent(), /: 8 further games$/);
  assert.match(
    await wear.locator("figcaption").first().textContent(),
    /^The lane as it is, worn by 8 games: /,
  );
  assert.equal(await wear.locator("tbody th").first().textContent(), "as it is");
  await wear.getByRole("button", { name: "Use the worn lane" }).click();
  assert.match(await oilSays(lane), /House after 16 games, /);
  for (const _ of [1, 2]) await page.getByRole("button", { name: "Undo" }).click();
  assert.equal(await says(lane), mine);
  await check();
  await context.close();
});

test("the Bench says what the cover is", async () => {
  const { context, page, check } = await site.open({ viewport: DESKTOP });
  const bench = page.getByRole("region", { name: "Bench" });
  await bench.locator("#part-list ~ .parts .part-head").last().click();
  const surface = bench.locator(".cover-surface");
  await surface.locator("select").first().selectOption("urethane");
  await surface.locator("select").nth(1).selectOption("sanded");
  await field(surface, "Grit").fill("500");
  await page.evaluate(() => dispatchEvent(new Event("pagehide")));
  const cover = await page.evaluate(
    () => JSON.parse(localStorage.getItem("pithball.bench/1")).doc.ball.cover,
  );
  assert.equal(cover.family, "urethane");
  assert.deepEqual(cover.finish, { grit: 500 });
  assert.match(await surface.textContent(), /there the cover changes nothing/);
  await field(surface, "Grit").fill("20");
  assert.match(await surface.locator(".says-wrong").textContent(), /100/);
  await check();
  await context.close();
});

test("the folds are sound to a screen reader and fit a narrow page", async () => {
  for (const options of [{ viewport: DESKTOP }, { viewport: NARROW, colorScheme: "dark" }]) {
    const { context, page, lane, check } = await oilOpen(options);
    for (const name of ["Draw on the oil", "Across the lane", "The same as tables", "Friction:", "As games"])
      await fold(lane, name).click();
    await lane.getByRole("button", { name: "Pencil: more oil" }).click();
    await lane.getByRole("button", { name: "Use the worn lane" }).waitFor();
    assert.deepEqual(await accessibilityFaults(page), []);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(wide <= 0, `${wide} px too wide`);
    await check();
    await context.close();
  }
});
