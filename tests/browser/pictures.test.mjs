// Words for every picture: each canvas and drawing of every room has a name and says
// what is seen with its numbers, or stands hidden beside the words that do.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { go } from "./about.mjs";
import { launch, unfold } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

/**
 * Pictures in view that say nothing, each with where it is: `told` is how many say
 * what they show themselves.
 */
const mute = (page) =>
  page.evaluate(() => {
    const faults = [];
    let told = 0;
    const words = (element) => (element?.textContent ?? "").replace(/\s+/g, " ").trim();
    const byIds = (element, attribute) =>
      (element.getAttribute(attribute) ?? "")
        .split(" ")
        .filter(Boolean)
        .map((id) => words(document.getElementById(id)))
        .join(" ");
    const named = (element) =>
      `${element.getAttribute("aria-label") ?? ""} ${byIds(element, "aria-labelledby")}`;
    const where = (element) =>
      `${element.localName}.${element.getAttribute("class")} in ${element.closest("[id^=room-], dialog")?.id} ${words(element.closest("figure, section, li, td, th, div")).slice(0, 60)}`;
    const says = (text) => /\d/.test(text) || text.split(" ").length >= 4;
    for (const picture of document.querySelectorAll("canvas, svg")) {
      if (!picture.checkVisibility() || picture.matches(".hatches")) continue;
      if (picture.closest("[aria-hidden=true]")) {
        // A sign beside a word, or a drawing of the numbers beside it.
        const beside = picture.closest(
          "figure, li, tr, .readout, .shares, label, button, .beside-bar, section",
        );
        if (!/\p{L}{2,}/u.test(words(beside)))
          faults.push(`hidden with no words beside it: ${where(picture)}`);
        continue;
      }
      const one = picture.localName === "canvas" ? picture.parentElement : picture;
      const name = named(one).trim();
      const desc = byIds(one, "aria-describedby");
      const role = one.getAttribute("role");
      if (!["img", "application", "group"].includes(role)) faults.push(`no role: ${where(picture)}`);
      else if (!name) faults.push(`no name: ${where(picture)}`);
      else if (!says(`${name} ${desc}`.trim())) faults.push(`says little, “${name}”: ${where(picture)}`);
      else told += 1;
      // Charts have axes or bars: their numbers are in words, too.
      if (picture.matches(".chart, .maker-map, .cost-chart, .area-map, .histogram svg, .film-drawing"))
        if (!/\d/.test(`${name} ${desc}`)) faults.push(`a chart without a number: ${where(picture)}`);
    }
    return { faults, told };
  });

async function allTold(page, least, what) {
  const { faults, told } = await mute(page);
  assert.deepEqual(faults, [], what);
  assert.ok(told >= least, `${what}: ${told} pictures`);
}

test("every picture of the workshop says what it shows, and charts have their table", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await page.locator(".part[data-open]").getByLabel("Shape").selectOption("lathe");
  await page.getByText("Drill it for a hand").click();
  await page.getByLabel("The ball is drilled").check();
  await unfold(page);
  await page.getByLabel("Pattern", { exact: true }).selectOption("house");
  const scatter = page.locator(".maker", { hasText: "Poured a little off" });
  await scatter.getByRole("textbox", { name: "Balls" }).fill("100");
  await scatter
    .getByRole("button", { name: /^Pour / })
    .first()
    .click();
  await scatter.locator(".histogram").first().waitFor();
  await page.locator(".weight-chart").waitFor();
  await page.locator(".cost-chart").waitFor();
  await page.locator(".maker-map").waitFor();
  await page.locator(".area-map").waitFor();
  await unfold(page);
  await page.locator(".wear-picture svg").first().waitFor();
  await allTold(page, 20, "all unfolded");
  // Each chart by distance, each histogram, map and pattern has a table close by.
  const bare = await page.evaluate(() =>
    [
      ...document.querySelectorAll(
        ".charts .chart, .histogram svg, .maker-map, .cost-chart, .area-map, .weight-chart svg, .friction-curve, .oil-bars",
      ),
    ]
      .filter((chart) => {
        for (let at = chart.parentElement; at && !at.matches(".room-body"); at = at.parentElement) {
          if (at.querySelector("table td, dl dd")) return false;
        }
        return true;
      })
      .map((chart) => chart.outerHTML.slice(0, 120)),
  );
  assert.deepEqual(bare, []);
  const saw = page.getByRole("region", { name: "Saw", exact: true });
  for (const picture of ["Drawing", "Two cuts", "Cover"]) {
    await saw.getByRole("button", { name: picture, exact: true }).click();
    await page.waitForTimeout(300);
    await allTold(page, 20, picture);
  }
  await saw.getByRole("button", { name: "As a map" }).click();
  await allTold(page, 20, "the cover as a map");
  await check();
  await context.close();
});

test("every picture of Shelf, Sheet, model note and lessons says what it shows", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await page.getByRole("button", { name: "What this model leaves out" }).click();
  await allTold(page, 0, "model note");
  await go(page, "Shelf");
  for (const name of ["No. 1, simple", "No. 4, nested core"])
    await page.getByLabel(`Compare ${name}`, { exact: true }).check();
  await page.locator(".compare-lane path.shot").first().waitFor();
  await unfold(page);
  await page.locator(".why table").waitFor();
  await allTold(page, 5, "two balls side by side");
  await go(page, "Sheet");
  await page.getByLabel("Compare with").selectOption("house-6");
  await page.locator(".sheet-weights").first().waitFor();
  await allTold(page, 4, "a sheet of two balls");

  await go(page, "Lessons");
  await page.getByText("Reading the lessons").waitFor({ state: "detached" });
  await page.getByRole("button", { name: "On paper Skid, hook, roll" }).click();
  await page.locator(".paper-page svg").first().waitFor();
  await allTold(page, 1, "a worksheet");
  await go(page, "Lessons");
  const inside = page.getByRole("navigation", { name: "In Lessons" });
  await inside.getByRole("button", { name: "Words" }).click();
  await page.waitForFunction(() => {
    const all = [...document.querySelectorAll(".words-entry")];
    return all.length > 70 && all.every((entry) => entry.querySelector("svg, .hint"));
  });
  await allTold(page, 40, "the words");
  await inside.getByRole("button", { name: "Lessons" }).click();
  await page.getByRole("button", { name: "Show to a room Skid, hook, roll" }).click();
  for (;;) {
    await allTold(page, 0, await page.locator(".coach-slide").getAttribute("data-slide"));
    const on = page.getByRole("dialog").getByRole("button", { name: "Next" });
    if (await on.isDisabled()) break;
    await on.click();
  }
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Take this lesson Skid, hook, roll" }).click();
  await page
    .getByRole("region", { name: "Lesson", exact: true })
    .getByRole("button", { name: "Next", exact: true })
    .click();
  await page.locator(".draw-path-lane").waitFor();
  await allTold(page, 1, "a path to draw");
  await check();
  await context.close();
});
