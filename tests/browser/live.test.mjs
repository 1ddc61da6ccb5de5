// Every result of the workshop that a person starts is said by a live region: in a
// sentence with its numbers, once, and not while one is still typing or dragging.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { go } from "./about.mjs";
import { launch } from "./harness.mjs";
import { heard, heardOf, inTurn, listen, once } from "./heard.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const room = (page, name) => page.getByRole("region", { name, exact: true });
const density = (page) => page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
const readout = (page, n) => page.locator(".room-scale .readout .value").nth(n).textContent();

async function open(options = {}) {
  const opened = await site.open({ reducedMotion: "reduce", ...options });
  await listen(opened.context);
  await opened.reload();
  await heard(opened.page);
  return opened;
}

async function unfold(place, name) {
  await place.locator("summary", { hasText: name }).first().click();
}

test("an edit is said once it has come to rest, however it was typed or dragged; so are undo and a mistake", async () => {
  const { page, context, check } = await open();
  await inTurn(density(page), ["2", "2.", "2.3", "2.31", "2.315"]);
  const typed = await heardOf(page, /Weight/);
  assert.equal(typed.length, 1, JSON.stringify(typed));
  const [weight, rg] = [await readout(page, 0), await readout(page, 1)];
  assert.ok(typed[0].includes(`Weight ${weight} lb, RG ${rg} in, differential 0.0`), typed[0]);
  assert.match(typed[0], /Skids .* enters at [\d.]+° on board [\d.]+/);

  const slider = page.locator(".part[data-open]").getByRole("slider", { name: /^Density/ });
  await inTurn(
    slider,
    Array.from({ length: 20 }, (_, n) => `${2.3 + n / 100}`),
  );
  const dragged = await heardOf(page, /Weight/);
  assert.equal(dragged.length, 1, JSON.stringify(dragged));

  await page.keyboard.press("Control+z");
  once(await heardOf(page, /Undone/), /^Undone\. .*Weight/);
  await density(page).fill("4");
  once(await heardOf(page, /Weight/), /Not within the published limits: .*density/i);
  await density(page).fill("-1");
  once(await heardOf(page, /still/), /density.*The numbers are still those of the last good ball/i);
  await page.keyboard.press("Control+z");
  await heardOf(page, /Undone/);
  await density(page).fill("1.2.");
  once(await heardOf(page, /number/), /number/);
  await density(page).press("Escape");
  await check();
  await context.close();
});

test("the shot says what it does after an edit, and at the end of a run that was asked for", async () => {
  const { page, context, check } = await open();
  const lane = room(page, "Lane");
  await lane.getByRole("textbox", { name: /^Speed/ }).fill("19");
  const edited = await heardOf(page, /Skids/);
  once(edited, /^Skids .* enters at/);
  const says = (await lane.locator(".lane-says").textContent()).replaceAll("\u00a0", " ");
  assert.ok(
    edited.some((text) => text.includes(says)),
    says,
  );
  await lane.getByLabel("Playing speed").selectOption("1");
  await lane.getByRole("button", { name: "Play", exact: true }).click();
  const run = await heardOf(page, /Skids/);
  assert.equal(run.length, 1, JSON.stringify(run));

  await unfold(lane, "Why did the shot change?");
  once(await heardOf(page, /Your shot now/), /^Your shot now, against before, .*\d/);
  await unfold(lane, "Room for error");
  once(await heardOf(page, /throws/), /Of 100 throws .* \d+ do both\./);
  await unfold(lane, /^Lane: /);
  await lane.getByLabel("Pattern", { exact: true }).selectOption("house");
  await heardOf(page, /Skids/);
  await unfold(lane, "As games go by");
  once(await heardOf(page, /After 3 games/), /After 3 games .*\d/);
  await check();
  await context.close();
});

test("the Scale's folds and the Saw say what was worked out", async () => {
  const { page, context, check } = await open();
  const [scale, saw, bench] = ["Scale", "Saw", "Bench"].map((name) => room(page, name));
  await unfold(scale, "This ball at other weights");
  once(await heardOf(page, /lb/), /^It can be made so from \d+ lb \(low RG [\d.]+ in\) to \d+ lb/);
  await unfold(scale, "Will the cover last?");
  once(await heardOf(page, /cover/), /The cover is [\d.]+ in at its thinnest/);
  await saw.locator(".saw-part").nth(2).click();
  once(await heardOf(page, /carries/), /g\/cc.* carries [\d.]+%/);
  await saw.getByRole("button", { name: "Cover", exact: true }).click();
  once(await heardOf(page, /cover/), /The cover is [\d.]+ in at its thinnest/);
  const stage = await saw.locator(".solid canvas").boundingBox();
  await page.mouse.click(stage.x + stage.width / 2, stage.y + stage.height / 2);
  once(await heardOf(page, /Here/), /^Here, .*: [\d.]+ in\.$/);

  await bench.getByText("Drill it for a hand", { exact: true }).click();
  await bench.getByRole("checkbox", { name: "The ball is drilled" }).check();
  await heardOf(page, /Weight/);
  await room(page, "Lane")
    .getByRole("textbox", { name: /^Axis tilt/ })
    .fill("0");
  await page
    .locator(".drill")
    .getByRole("textbox", { name: /over from the grip centre/ })
    .fill("6.5");
  once(await heardOf(page, /track/), /The track goes over a hole, .*turn \d+/);
  await check();
  await context.close();
});

test("files and links say what became of them", async () => {
  const { page, context, check } = await open();
  const [ball] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save ball" }).click(),
  ]);
  once(await heard(page), /^Saved as no-3-three-piece\.ball\.json\.$/);
  await page.getByLabel("File to open").setInputFiles(await ball.path());
  const opened = await heardOf(page, /Opened/);
  once(opened, /^Opened .*\. Close$/);
  await page.getByLabel("File to open").setInputFiles({
    name: "bad.ball.json",
    mimeType: "application/json",
    buffer: Buffer.from("{"),
  });
  once(await heardOf(page, /bad/), /^bad\.ball\.json was not opened\. .+/);
  await page.getByRole("button", { name: "Share link" }).click();
  once(await heardOf(page, /link/), /The link is \d+ characters long\.$/);
  await go(page, "Shelf");
  await page.getByRole("button", { name: "Put on the shelf", exact: true }).click();
  once(await heardOf(page, /shelf/), /^Put on the shelf: No\. 3, three-piece\.$/);
  const row = page.locator("[data-entry]").first();
  await row.locator("summary").click();
  await row.getByRole("button", { name: "Take off the shelf" }).click();
  once(await heardOf(page, /Taken off/), /^Taken off the shelf: No\. 3, three-piece\.$/);
  await page.getByRole("button", { name: "Put back No. 3, three-piece" }).click();
  once(await heardOf(page, /Put back/), /^Put back: /);
  await page.getByLabel("Compare No. 1, simple", { exact: true }).check();
  await heardOf(page, /^A: /);
  await page.getByLabel("Compare No. 4, nested core", { exact: true }).check();
  const compared = await heardOf(page, /B.*\d/);
  once(compared, /^No\. 4, nested core is B in the comparison\.$/);
  once(compared, /^A: Skids .* B /);
  await page.getByText("Why B differs from A").click();
  once(await heardOf(page, /B, against A/), /^B, against A, .*\d/);
  await check();
  await context.close();
});

test("where nothing can be kept, that is heard as the page opens", async () => {
  const { page, context, reload } = await site.open({ reducedMotion: "reduce" });
  await listen(context);
  await context.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get() {
        throw new DOMException("denied", "SecurityError");
      },
    });
  });
  await reload();
  once(await heardOf(page, /keep/), /does not let the page keep anything/);
  await context.close();
});
