// Share link: what one page copies, another opens as it was; what is no good
// link leaves the work alone; the work a link takes the place of comes back.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { initSync, link } from "../../www/pkg/pithball.js";
import { keptAs } from "./bench-kept.mjs";
import { accessibilityFaults, launch, NARROW } from "./harness.mjs";
import { SLOW_PIECES } from "./slow-ball.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const scenario = (path) =>
  JSON.parse(readFileSync(new URL(`../../scenarios/${path}`, import.meta.url), "utf8"));
const notice = (page) => page.locator(".notice");
const numbers = (page) => page.locator(".strip").textContent();
const setName = async (page, name) => {
  await page.getByLabel("Ball", { exact: true }).fill(name);
};

async function share(page) {
  await page.getByRole("button", { name: "Share link" }).click();
  return page.getByLabel("Link to this ball and shot").inputValue();
}

test("a copied link opens elsewhere as the very same ball and shot", async () => {
  const one = await site.open({ permissions: ["clipboard-read", "clipboard-write"] });
  await one.page.getByRole("button", { name: "Start from No. 6, five-piece" }).click();
  const name = 'Half price <img src="x" onerror="document.title=1"> & "ünlike" 🎳';
  await setName(one.page, name);
  const doc = await keptAs(one.page, name);
  const address = await share(one.page);
  await one.page.getByText("Copied.").waitFor();
  assert.equal(await one.page.evaluate(() => navigator.clipboard.readText()), address);
  assert.match(address, /^http:.*\/some\/folder\/#p1\.[A-Za-z0-9_-]+$/);
  assert.match(
    await one.page.locator("#share").textContent(),
    new RegExp(`The link is ${address.length} characters long`),
  );
  assert.deepEqual(await accessibilityFaults(one.page), []);

  const two = await site.open({ hash: new URL(address).hash });
  assert.deepEqual(await keptAs(two.page, name), doc);
  assert.equal(await numbers(two.page), await numbers(one.page));
  assert.match(await notice(two.page).textContent(), /Opened from the link: Half price <img/);
  assert.equal(await two.page.locator("img").count(), 0);
  assert.equal(new URL(two.page.url()).hash, "");
  assert.equal(await share(two.page), address);
  await one.check();
  await two.check();
  await one.context.close();
  await two.context.close();
});

test("the work a link takes the place of comes back, on the next visit too", async () => {
  const { page, reload, check, context } = await site.open();
  await page.getByRole("button", { name: "Start from No. 1, simple" }).click();
  await setName(page, "Theirs");
  await keptAs(page, "Theirs");
  const { hash } = new URL(await share(page));
  await setName(page, "Mine");
  await keptAs(page, "Mine");
  await page.evaluate((hash) => {
    location.hash = hash;
  }, hash);
  await keptAs(page, "Theirs");
  assert.equal(new URL(page.url()).hash, "");
  await page.getByRole("button", { name: "Undo" }).click();
  await keptAs(page, "Mine");
  await page.getByRole("button", { name: "Redo" }).click();
  await keptAs(page, "Theirs");
  await page.getByRole("button", { name: "Start from No. 2, two-piece" }).click();
  await keptAs(page, "No. 2, two-piece");
  await reload();
  await keptAs(page, "No. 2, two-piece");
  await page.getByRole("button", { name: "Undo" }).click();
  await keptAs(page, "Mine");
  await check();
  await context.close();
});

test("an oil pattern that was edited, under a drilled ball, comes back exactly as it was", async () => {
  const { layout, drilling } = scenario("layouts/league-right.layout.json");
  const oil = scenario("oil/house.oil.json");
  oil.pattern = { ...oil.pattern, length_ft: 41.3, volume_ml: 23.7 };
  const shot = {
    ...scenario("shots/opening.shot.json"),
    ball: { ...scenario("balls/no-4-nested-core.ball.json"), name: "On edited oil" },
    layout: { start_turn_deg: 0, ...layout },
    drilling,
    lane: { oil },
  };
  const one = await site.open();
  await one.page.locator("input[type=file]").setInputFiles({
    name: "edited.shot.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(shot)),
  });
  const doc = await keptAs(one.page, "On edited oil");
  assert.equal(doc.shot.lane.oil.pattern.length_ft, 41.3);
  const { hash } = new URL(await share(one.page));
  const two = await site.open({ hash });
  assert.deepEqual(await keptAs(two.page, "On edited oil"), doc);
  assert.equal(await numbers(two.page), await numbers(one.page));
  await one.check();
  await two.check();
  await one.context.close();
  await two.context.close();
});

test("a link to what is there already changes nothing", async () => {
  const { page, check, context } = await site.open();
  const { hash } = new URL(await share(page));
  await page.evaluate((hash) => {
    location.hash = hash;
  }, hash);
  await page.getByText("on the bench already").waitFor();
  assert.ok(await page.getByRole("button", { name: "Undo" }).isDisabled());
  await check();
  await context.close();
});

test("links that are no good leave the work as it is and say why", async () => {
  const { page, check, context } = await site.open({ viewport: NARROW, hash: "#p1.AAAA" });
  await page.getByText("The link is cut off").waitFor();
  assert.equal(new URL(page.url()).hash, "");
  const numbersBefore = await numbers(page);
  for (const [hash, says] of [
    ["#p2.AAAA", "edition 2"],
    ["#p1", "not a link"],
    ["#p1.%3Cscript%3E", "does not belong to a link"],
    ["#p1.AAAAAAAAAAAA", "damaged"],
    [`#p1.${"A".repeat(70_000)}`, "too much"],
  ]) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, hash);
    await notice(page).getByText(says).waitFor();
    assert.match(await notice(page).textContent(), /your work is as it was/);
    assert.equal(new URL(page.url()).hash, "");
  }
  assert.equal(await numbers(page), numbersBefore);
  assert.ok(await page.getByRole("button", { name: "Undo" }).isDisabled());
  await page.evaluate(() => {
    location.hash = "#rooms";
  });
  assert.equal(new URL(page.url()).hash, "#rooms", "other fragments are let be");
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  assert.ok(wide <= NARROW.width, `${wide} px wide`);
  await check();
  await context.close();
});

test("where copying is not allowed the address stands selected in its field", async () => {
  const { page, check, context } = await site.open({ viewport: NARROW });
  await page.evaluate(() => {
    navigator.clipboard.writeText = () => Promise.reject(new DOMException("no", "NotAllowedError"));
  });
  await page.getByRole("button", { name: "More" }).click();
  const address = await share(page);
  await page.getByText("copy it from the field").waitFor();
  assert.equal(await page.evaluate(() => getSelection().toString()), address);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  assert.ok(wide <= NARROW.width, `${wide} px wide`);
  assert.deepEqual(await accessibilityFaults(page), []);
  await check();
  await context.close();
});

test("a ball with a mistake gives no link but the reason", async () => {
  const { page, check, context } = await site.open();
  await page.locator("input[type=file]").setInputFiles({
    name: "long.shot.json",
    mimeType: "application/json",
    buffer: Buffer.from(
      JSON.stringify({
        ...scenario("shots/opening.shot.json"),
        ball: scenario("balls/no-2-two-piece.ball.json"),
        note: "x".repeat(1001),
      }),
    ),
  });
  await page.getByText("Opened long.shot.json").waitFor();
  await page.getByRole("button", { name: "Share link" }).click();
  await page.getByText("No link can be made. A name or a note is too long for a link").waitFor();
  await check();
  await context.close();
});

test("a ball that takes for ever does not hold up the page", async () => {
  const { page, check, context } = await site.open();
  const before = await numbers(page);
  const made = { ...scenario("shots/opening.shot.json") };
  made.ball = { ...scenario("balls/no-1-simple.ball.json"), pieces: SLOW_PIECES };
  initSync({ module: readFileSync(new URL("../../www/pkg/pithball_bg.wasm", import.meta.url)) });
  await page.evaluate((hash) => {
    location.hash = hash;
  }, link(made));
  await page.getByText("Opening the link").waitFor();
  await page.getByRole("button", { name: "Start from No. 1, simple" }).click();
  await page.getByText("takes more than 8 seconds").waitFor();
  await page.getByRole("button", { name: "Undo" }).click();
  assert.equal(await numbers(page), before);
  await check();
  await context.close();
});
