// The Lane as a person uses it: the sentence, the numbers and the pictures say
// the same, and the shot plays, stops and goes where it is put.
import assert from "node:assert/strict";
import { readdirSync } from "node:fs";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, NARROW, PHONE, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

async function laneOpen({ viewport = DESKTOP, reducedMotion = "reduce", ...options } = {}) {
  const opened = await site.open({ viewport, reducedMotion, ...options });
  if (viewport.width < 1000) await opened.page.getByRole("button", { name: "Lane", exact: true }).click();
  const lane = opened.page.getByRole("region", { name: "Lane" });
  await lane.locator(".lane-says").waitFor();
  return { ...opened, lane };
}

const plain = (text) => text.replaceAll("\u00a0", " ").replace("\u2212", "-");
const says = async (lane) => plain(await lane.locator(".lane-says").textContent());

/** The value of the readout with this label, without the meaning a trade word carries along. */
async function number(lane, label) {
  const value = await lane.locator(".readout").evaluateAll((readouts, label) => {
    const found = readouts.find((readout) => {
      const name = readout.querySelector(".readout-label").cloneNode(true);
      for (const meaning of name.querySelectorAll(".meaning")) meaning.remove();
      return name.textContent.trim() === label;
    });
    return found?.querySelector(".value").textContent;
  }, label);
  assert.ok(value, `no readout named ${label}`);
  return Number(plain(value));
}

const field = (lane, label) =>
  lane
    .locator(".field", { has: lane.page().locator(".field-label", { hasText: label }) })
    .locator("input[type=text]");

test("the sentence says what the numbers say", async () => {
  const { context, lane, check } = await laneOpen();
  const said = await says(lane);
  const read =
    /^Skids (\d+) ft, hooks for (\d+) ft, rolls the last (\d+) ft; enters at ([\d.]+)° on board (\d+\.\d)\.$/.exec(
      said,
    );
  assert.ok(read, said);
  const [skid, hook, roll, angle, board] = read.slice(1).map(Number);
  assert.equal(skid + hook + roll, 60);
  assert.equal(angle, await number(lane, "Entry angle"));
  assert.equal(board, await number(lane, "Board at the pins"));
  const picture = lane.getByRole("img", { name: "The lane from above" });
  assert.equal(plain(await picture.locator("desc").textContent()), said);
  await check();
  await context.close();
});

test("every release control changes what happens", async () => {
  const { context, lane, check } = await laneOpen();
  await lane.locator("summary", { hasText: /^Lane: friction/ }).click();
  const changes = {
    Speed: "19",
    "Rev rate": "420",
    "Axis rotation": "70",
    "Axis tilt": "25",
    "Launch angle": "2.5",
    "to PAP": "1.5",
    "Oil length": "36",
    "in oil": "0.05",
    beyond: "0.17",
  };
  const state = async () => [
    await number(lane, "Entry angle"),
    await number(lane, "Board at the pins"),
    await number(lane, "Flare"),
    await number(lane, "Revs at the pins"),
  ];
  let last = await state();
  for (const [label, value] of Object.entries(changes)) {
    await field(lane, label).fill(value);
    const now = await state();
    assert.notDeepEqual(now, last, label);
    last = now;
  }
  await check();
  await context.close();
});

test("the ball starts where it is put", async () => {
  const { context, lane, check } = await laneOpen();
  const before = await number(lane, "Board at the pins");
  const board = Number(await field(lane, /^Board/).inputValue());
  await field(lane, /^Board/).fill(String(board + 2));
  // The lane is the same everywhere across, so the whole path moves over.
  assert.ok(Math.abs((await number(lane, "Board at the pins")) - before - 2) < 0.11);
  await check();
  await context.close();
});

test("the left hand is the mirror of the right", async () => {
  const { context, lane, check } = await laneOpen();
  const path = () =>
    lane
      .getByRole("img", { name: "The lane from above" })
      .locator("path.path")
      .evaluateAll((paths) =>
        paths.flatMap((path) =>
          path
            .getAttribute("d")
            .match(/-?[\d.]+/g)
            .map(Number),
        ),
      );
  const all = ["Entry angle", "Board at the pins", "Breakpoint", "Time", "Revs at the pins", "Flare"];
  const numbers = async () => Promise.all(all.map((label) => number(lane, label)));
  const right = { numbers: await numbers(), path: await path(), said: await says(lane) };
  await lane.getByRole("button", { name: "Left hand" }).click();
  assert.deepEqual(await numbers(), right.numbers);
  assert.equal(await says(lane), right.said.replace(/\.$/, ", counted from the left."));
  const left = await path();
  assert.equal(left.length, right.path.length);
  const middle = (left[1] + right.path[1]) / 2;
  for (let i = 0; i < left.length; i += 2) {
    assert.ok(Math.abs(left[i] - right.path[i]) < 0.11);
    assert.ok(Math.abs(left[i + 1] + right.path[i + 1] - 2 * middle) < 0.21);
  }
  await lane.getByRole("button", { name: "Right hand" }).click();
  assert.deepEqual(await numbers(), right.numbers);
  await check();
  await context.close();
});

test("a gutter ball is told, without numbers it does not have", async () => {
  const { page, context, lane, check } = await laneOpen();
  await field(lane, "Launch angle").fill("5");
  assert.match(await says(lane), /then drops into the right gutter [\d.]+ ft down the lane\.$/);
  assert.equal(await lane.locator(".readout-label", { hasText: "Entry angle" }).count(), 0);
  await shoot(page, "lane-gutter");
  await check();
  await context.close();
});

test("a mistake is named at its field and the last good shot stays", async () => {
  const { context, lane, check } = await laneOpen();
  const before = await number(lane, "Entry angle");
  await field(lane, "Speed").fill("90");
  await lane.locator(".says-wrong").first().waitFor();
  await lane.getByText("The shot shown is the last good one.").waitFor();
  assert.equal(await number(lane, "Entry angle"), before);
  await check();
  await context.close();
});

const moment = async (lane) => Number(await lane.getByLabel("Moment of the shot").inputValue());

test("the shot runs by itself when the page opens", async () => {
  const context = await site.browser.newContext({ viewport: DESKTOP, reducedMotion: "no-preference" });
  // Noted as it happens: on a busy machine the run may be over before the test looks.
  await context.addInitScript(() => {
    globalThis.moments = new Set();
    new MutationObserver(() => {
      const ball = document.querySelector(".stage-lane .ball-mark");
      if (ball) globalThis.moments.add(ball.getAttribute("cx"));
    }).observe(document, { subtree: true, childList: true, attributes: true });
  });
  const page = await context.newPage();
  await page.goto(site.url, { waitUntil: "networkidle" });
  await page.waitForFunction(() => globalThis.moments.size > 5);
  await context.close();
});

test("the shot can be played, paused and run to its end", async () => {
  const { page, context, lane, check } = await laneOpen();
  await lane.getByLabel("Playing speed").selectOption("0.1");
  await lane.getByRole("button", { name: "Play", exact: true }).click();
  await page.waitForTimeout(500);
  await lane.getByRole("button", { name: "Pause" }).click();
  await lane.getByRole("button", { name: "Play", exact: true }).waitFor();
  await page.waitForTimeout(100);
  const still = await moment(lane);
  assert.ok(still > 0 && still < (await number(lane, "Time")));
  await page.waitForTimeout(300);
  assert.equal(await moment(lane), still);
  await lane.getByLabel("Playing speed").selectOption("1");
  await lane.getByRole("button", { name: "Play", exact: true }).click();
  // It ends at the pins and does not start again.
  await page.waitForFunction(
    () => document.querySelector(".stage-lane .ball-mark") === null && !document.querySelector("path.ahead"),
  );
  await lane.getByRole("button", { name: "Play", exact: true }).waitFor();
  assert.ok(Math.abs((await moment(lane)) - (await number(lane, "Time"))) < 0.011);
  await check();
  await context.close();
});

test("with reduced motion nothing moves and the whole path is there", async () => {
  const { page, context, lane, check } = await laneOpen();
  await lane.getByRole("button", { name: "Play", exact: true }).waitFor();
  assert.equal(await lane.locator("path.ahead").count(), 0);
  const first = await moment(lane);
  await page.waitForTimeout(300);
  assert.equal(await moment(lane), first);
  await check();
  await context.close();
});

test("scrubbing and stepping move the ball in every picture", async () => {
  const { page, context, lane, check } = await laneOpen();
  const scrub = lane.getByLabel("Moment of the shot");
  await scrub.fill("1");
  assert.match(await scrub.getAttribute("aria-valuetext"), /^1\.00.s, [\d.]+.ft, (skid|hook|roll)$/);
  const ball = () => lane.locator(".stage-lane .ball-mark").getAttribute("cx");
  const at = Number(await ball());
  await lane.getByRole("button", { name: "Step on" }).click();
  assert.ok(Number(await ball()) > at);
  await lane.getByRole("button", { name: "Step back" }).click();
  assert.ok(Math.abs(Number(await ball()) - at) < 0.2);
  await scrub.focus();
  await page.keyboard.press("ArrowRight");
  assert.ok((await moment(lane)) > 1);
  assert.equal(await lane.locator(".stage-eye .ball-mark").count(), 1);
  assert.ok((await lane.locator(".globe-drawing .ring").count()) > 0);
  const charts = await lane.locator(".charts .chart").count();
  assert.ok(charts >= 4);
  assert.equal(await lane.locator(".charts .chart-cursor").count(), charts);
  await shoot(page, "lane-scrubbed");
  await check();
  await context.close();
});

test("every example shot can be thrown, with the ball on the bench and with its own", async () => {
  const { page, context, lane, check } = await laneOpen();
  const files = readdirSync(new URL("../../scenarios/shots/", import.meta.url));
  const pick = lane.getByLabel("Example shot");
  assert.equal(await pick.locator("option").count(), files.length);
  const said = new Set();
  for (let i = 0; i < files.length; i++) {
    await pick.selectOption(String(i));
    await lane.getByRole("button", { name: "With its own" }).click();
    said.add(await says(lane));
    assert.equal(await page.locator(".says-wrong").count(), 0);
  }
  assert.ok(said.size >= files.length - 2, "the shots differ");
  await pick.selectOption({ label: "School club, a first throw" });
  await lane.getByRole("button", { name: "Throw it with my ball" }).click();
  assert.match(await says(lane), /gutter/);
  await check();
  await context.close();
});

test("the note tells the effects of RG and of the core apart, and what the last edit did", async () => {
  const { page, context, lane, check } = await laneOpen();
  // For one release the lower RG rolls sooner and ends at a smaller angle: v = (v0 + k R w0)/(1 + k),
  // k = (RG/R)^2, and slip ends at u0/(mu g (1 + 1/k)) (uniform sphere by Coriolis, any k by textbook).
  const note = lane.locator(".honest");
  await note.getByText("What RG and differential do here").click();
  await note.getByText("RG alone, thrown like this").waitFor();
  const text = plain(await note.textContent());
  assert.match(text, /the lower one rolls [\d.]+ ft sooner and enters at an angle [\d.]+° smaller\./);
  assert.match(text, /beside a round one of the same weight and average RG, your ball /);
  assert.doesNotMatch(text, /Your last change/);
  await page.getByRole("region", { name: "Bench" }).getByRole("button", { name: "simple" }).click();
  assert.match(
    plain(await note.textContent()),
    /Your last change took the RG from 2\.\d{3} in to 2\.\d{3} in: the ball now rolls [\d.]+ ft later/,
  );
  await check();
  await context.close();
});

test("the charts have their table", async () => {
  const { context, lane, check } = await laneOpen();
  await lane.getByText("Charts by distance").click();
  await lane.getByText("The same as a table").click();
  const rows = lane.locator(".charts tbody tr");
  assert.ok((await rows.count()) >= 7);
  const speeds = await rows.locator("td:nth-of-type(2)").allTextContents();
  // No push on a flat lane: the ball only loses speed.
  for (let i = 1; i < speeds.length; i++) assert.ok(Number(speeds[i]) <= Number(speeds[i - 1]));
  await check();
  await context.close();
});

test("metric units reach every number of the Lane", async () => {
  const { page, context, lane, check } = await laneOpen();
  const mph = await number(lane, "Speed lost");
  await page.getByLabel("Units").selectOption("metric");
  assert.match(await says(lane), /Skids [\d.]+ m,/);
  assert.ok(Math.abs((await number(lane, "Speed lost")) - mph * 1.609344) < 0.15);
  await check();
  await context.close();
});

for (const [name, viewport] of Object.entries({
  desktop: DESKTOP,
  phone: PHONE,
  narrow: NARROW,
  projector: { width: 1920, height: 1080 },
})) {
  test(`the Lane is accessible and fits, ${name}`, async () => {
    const { page, context, check } = await laneOpen({ viewport });
    await shoot(page, `lane-${name}`);
    assert.deepEqual(await accessibilityFaults(page), []);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(wide <= 0, `${wide} px too wide`);
    await check();
    await context.close();
  });
}
