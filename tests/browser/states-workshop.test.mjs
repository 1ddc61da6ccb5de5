// axe-core in the states of the workshop that no other test brings about: folds all
// open, words explained, mistakes, work under way, stopped and without an answer.
import { after, before, test } from "node:test";
import { launch } from "./harness.mjs";
import { sound } from "./states.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const room = (page, name) => page.getByRole("region", { name, exact: true });
const unfold = (place, name) => place.locator("summary", { hasText: name }).first().click();

test("the Bench with an outline, cuts, holes and bores unfolded, a word explained, numbers it does not take", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  const bench = room(page, "Bench");
  const part = page.locator(".part[data-open]");
  await part.getByLabel("Shape").selectOption("lathe");
  await unfold(part, "Position, tilt and squash");
  await unfold(part, /^Cuts and flow channels/);
  await part.getByRole("button", { name: "Add a flow channel" }).click();
  await unfold(bench, /^Drilled holes/);
  await bench.getByRole("button", { name: "Add a hole" }).click();
  await unfold(bench, "Drill it for a hand");
  await bench.getByRole("checkbox", { name: "The ball is drilled" }).check();
  await page.locator(".drill .layout-drawing").waitFor();
  await unfold(bench, /^Thumb: /);
  await part.getByRole("button", { name: "Density", exact: true }).click();
  await sound(page, "everything unfolded", "Bench");
  await page.keyboard.press("Escape");
  await part.getByRole("textbox", { name: /^Density/ }).fill("4");
  const point = part.getByRole("textbox", { name: "Point 2, out from the axis" });
  await point.fill("1.2.");
  await bench.getByRole("textbox", { name: "Bridge" }).fill("0");
  await bench
    .getByText(/Holes run into each other/)
    .first()
    .waitFor();
  await unfold(bench, "Find a core");
  await bench.getByRole("textbox", { name: "Starts" }).fill("0");
  await sound(page, "no number, too dense, holes that meet, outside what is taken", "Bench");
  await check();
  await context.close();
});

test("seeking: nothing that may change, at work, no core that matches", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  const seek = page.locator(".maker", { hasText: "Find a core" });
  await page.locator(".template", { hasText: /five-piece/ }).click();
  await seek.locator("summary").first().click();
  await seek.getByRole("textbox", { name: "Starts" }).fill("1000");
  await seek.getByRole("button", { name: "Seek a core" }).click();
  await seek.getByRole("button", { name: "Stop" }).waitFor();
  await sound(page, "seeking", "Bench");
  await seek.getByRole("button", { name: "Stop" }).click();
  await seek.getByText("Stopped.").waitFor();
  await page.locator(".template", { hasText: /nested/ }).click();
  await seek.getByRole("textbox", { name: /^Wanted: Low RG/ }).fill("2.79");
  await seek.getByRole("textbox", { name: /^Wanted: Weight/ }).fill("15.9");
  await seek.getByRole("textbox", { name: "Starts" }).fill("1");
  await seek.getByRole("button", { name: "Seek a core" }).click();
  await seek.locator(".rung-card", { hasText: "Nearest" }).waitFor();
  await seek.getByRole("textbox", { name: "Starts" }).fill("2");
  await seek.getByText("What is wanted has changed since").waitFor();
  await sound(page, "no core that matches", "Bench");
  await check();
  await context.close();
});

test("the Lane with a ball in the gutter, a track over a hole, throws stopped and refused, all charts", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  const [bench, lane] = [room(page, "Bench"), room(page, "Lane")];
  await unfold(bench, "Drill it for a hand");
  await bench.getByRole("checkbox", { name: "The ball is drilled" }).check();
  await lane.getByRole("textbox", { name: /^Axis tilt/ }).fill("0");
  await bench.getByRole("textbox", { name: /over from the grip centre/ }).fill("6.5");
  await lane
    .getByText(/The track goes over a hole/)
    .first()
    .waitFor();
  for (const name of [/^Rings on the ball/, "This throw before and after", "What RG and differential"])
    await unfold(lane, name);
  await unfold(lane, "Charts by distance");
  await unfold(lane, "The same as a table");
  await lane.getByRole("row", { name: /^Board at the pins/ }).waitFor();
  await lane.getByRole("button", { name: "Step back" }).click();
  await lane.locator(".stage-scale .term").click();
  await sound(page, "a track over a hole, charts and their table", "Lane");
  await page.keyboard.press("Escape");
  await unfold(lane, "Room for error");
  await lane.getByRole("button", { name: "Stop" }).click();
  await lane.getByText("Stopped.").waitFor();
  await unfold(lane, "Why did the shot change?");
  await lane.getByRole("textbox", { name: /^Launch angle/ }).fill("6");
  await lane.locator(".why-says", { hasText: "gutter" }).waitFor();
  await sound(page, "in the gutter, nothing to compare", "Lane");
  await lane.getByRole("textbox", { name: /^Speed/ }).fill("90");
  await lane.getByText("The shot shown is the last good one.").waitFor();
  await sound(page, "a shot that cannot be thrown", "Lane");
  await check();
  await context.close();
});

test("the Scale with its folds open, a job at work, stale, stopped, refused", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  const scale = room(page, "Scale");
  const density = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
  await density.fill("4");
  for (const name of [
    "Every rule",
    "What these numbers do",
    "Will the cover last?",
    "This ball at other weights",
  ])
    await unfold(scale, name);
  await scale.locator(".rung-card .section-region").first().waitFor();
  await scale.locator(".durability table").waitFor();
  await sound(page, "outside the limits, at other weights", "Scale");
  const scatter = page.locator(".maker", { hasText: "Poured a little off" });
  await scatter.locator("summary").first().click();
  await scatter.getByRole("textbox", { name: "Balls" }).fill("100");
  await scatter
    .getByRole("button", { name: /^Pour / })
    .first()
    .click();
  await scatter.locator(".histogram").first().waitFor();
  await scatter.locator(".histogram", { hasText: "Weight" }).first().getByText("Bars as a table").click();
  for (const name of [/^Every piece:/, /^What is/]) await unfold(scatter, name);
  await density.fill("2");
  await scatter.getByText("have changed since").waitFor();
  await sound(page, "poured, stale", "Scale");
  await scatter.getByRole("textbox", { name: "Balls" }).fill("1000000");
  await scatter
    .getByRole("button", { name: /^Pour / })
    .first()
    .click();
  await scatter.getByRole("button", { name: "Stop" }).waitFor();
  await sound(page, "pouring", "Scale");
  await scatter.getByRole("button", { name: "Stop" }).click();
  await scatter.getByText("Stopped.").waitFor();
  await check();
  await context.close();
});
