// The maker's jobs, as a person does them: tolerances, pouring, levers, seeking a core, maps.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { accessibilityFaults, DESKTOP, launch, NARROW, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

async function fold(room, name, options) {
  const opened = await site.open({ reducedMotion: "reduce", ...options });
  const { page } = opened;
  if (options.template) {
    if (options.viewport.width < 1000) await page.locator(".rooms-nav button", { hasText: "Bench" }).click();
    await page.locator(".template", { hasText: options.template }).click();
  }
  if (options.viewport.width < 1000) await page.locator(".rooms-nav button", { hasText: room }).click();
  const panel = page.locator(".maker", { hasText: name });
  await panel.locator("summary").first().click();
  return { ...opened, panel };
}

/** No text of a panel is cut off sideways: what is wider scrolls by itself. */
async function fits(page) {
  const wide = await page.evaluate(() =>
    [...document.querySelectorAll(".room-body")].map((body) => body.scrollWidth - body.clientWidth),
  );
  assert.ok(
    wide.every((px) => px <= 0),
    `${wide} px too wide`,
  );
}

const download = async (page, click) => {
  const saving = page.waitForEvent("download");
  await click();
  return JSON.parse(readFileSync(await (await saving).path(), "utf8"));
};

test("balls poured a little off: how many pass, the same for the same seed, other tolerances, another ball", async () => {
  const { page, panel, context, check } = await fold("Scale", "Poured a little off", {
    viewport: DESKTOP,
    template: /nested/,
  });
  await context.setOffline(true);
  const says = panel.locator(".why-says").first();
  const shares = async () =>
    (
      await panel.locator("section[aria-label='How many pass'] tbody td:nth-of-type(1)").allTextContents()
    ).map((text) => Number(text.replace(",", "")));
  const pour = async () => {
    await panel.getByRole("button", { name: /^Pour [\d,]+ balls/ }).click();
    await panel.locator(".working").first().waitFor();
    await panel.locator(".working").first().waitFor({ state: "detached" });
    await says.waitFor();
    return shares();
  };
  await panel.getByRole("textbox", { name: "Balls" }).fill("2000");
  const first = await pour();
  assert.equal(
    first.reduce((a, b) => a + b, 0),
    2000,
  );
  const part = `${((100 * first[0]) / 2000).toFixed(1)}%`;
  assert.ok((await says.textContent()).includes(`Of 2,000 balls ${part}`), await says.textContent());
  assert.deepEqual(await pour(), first);
  const numbers = panel.locator("section[aria-label='Every number'] tbody tr");
  assert.ok((await numbers.count()) >= 8);
  assert.equal(await panel.locator(".histogram svg").count(), await numbers.count());
  for (const picture of await panel.locator(".histogram").all()) {
    assert.equal(
      await picture.locator("desc").textContent(),
      await picture.locator(".readout-says").textContent(),
    );
  }
  await panel.locator(".histogram", { hasText: "Weight" }).first().getByText("Bars as a table").click();
  await panel.locator(".histogram").first().locator("tbody td").first().waitFor();
  const bars = await panel.locator(".histogram").first().locator("tbody td:nth-child(3)").allTextContents();
  assert.equal(
    bars.reduce((sum, text) => sum + Number(text.replace(",", "")), 0),
    2000,
  );

  // Twice as exact: more pass. The old result is marked until then.
  await panel.getByText(/^Every piece:/).click();
  await panel.getByRole("textbox", { name: /^Density, ±/ }).fill("0.2");
  await panel.getByText("have changed since").waitFor();
  const exact = await pour();
  assert.ok(exact[0] > first[0], `${exact} and ${first}`);
  assert.equal(await panel.getByText("have changed since").count(), 0);

  // What costs most is told by the first row, whatever it is measured by.
  for (const kind of ["passing", "weight_lb", "differential_in"]) {
    await panel.getByLabel("Measured by").selectOption(kind);
    const row = panel.locator(".costs tbody tr").first();
    const name = (await row.locator("th").textContent()).trim();
    await panel.locator(".costs-say", { hasText: `comes from ${name}` }).waitFor();
  }

  // The file holds it, and brings it back.
  const file = await download(page, () => panel.getByRole("button", { name: "Save tolerances" }).click());
  assert.equal(file.format, "pithball.tolerances/1");
  assert.equal(file.every_piece.density_percent, 0.2);
  await panel.getByRole("button", { name: "Usual ones" }).click();
  await panel.getByText(/^Every piece: density ±1.00%/).waitFor();
  await panel.locator("input[type=file]").setInputFiles({
    name: "mine.tolerances.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify({ ...file, seed: 7 })),
  });
  await panel.getByText(/^Every piece: density ±0.20%/).waitFor();
  await page.getByText("Opened mine.tolerances.json: these are the tolerances, on the Scale.").waitFor();
  assert.equal(await panel.getByRole("textbox", { name: "Seed" }).inputValue(), "7");
  await panel.getByRole("button", { name: "Usual ones" }).click();

  // A one-piece core beside it.
  await panel.getByRole("textbox", { name: "Balls" }).fill("2000");
  await panel.getByRole("button", { name: "Pour both" }).click();
  await panel.locator(".beside .why-says", { hasText: "(one piece)" }).waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await panel.locator(".beside").scrollIntoViewIfNeeded();
  await shoot(page, "maker-scatter");
  await check();
  await context.close();
});

test("pouring stops at once, and a one-piece core passes more often than a five-piece one", async () => {
  const { page, panel, context, check } = await fold("Scale", "Poured a little off", {
    viewport: NARROW,
    template: /five-piece/,
  });
  await panel.getByRole("textbox", { name: "Balls" }).fill("100000");
  await panel.getByRole("button", { name: /^Pour/ }).first().click();
  await panel.getByRole("button", { name: "Stop" }).click();
  await panel.getByText("Stopped.").waitFor();
  while (page.workers().length > 2) await page.waitForTimeout(50);
  await panel.getByRole("textbox", { name: "Balls" }).fill("4000");
  await panel.getByRole("button", { name: "Pour both" }).click();
  const told = panel.locator(".beside .why-says");
  await told.waitFor({ timeout: 60_000 });
  const [, five, one] = /(\S+)% \(.*5 pieces.*and (\S+)% \(.*one piece/.exec(await told.textContent());
  assert.ok(Number(one) > Number(five), await told.textContent());
  await told.getByText("is the more robust", { exact: false }).waitFor();
  await fits(page);
  await check();
  await context.close();
});

test("tolerances of a piece that is not there are named and can be dropped", async () => {
  const { page, panel, context, check } = await fold("Scale", "Poured a little off", {
    viewport: DESKTOP,
    template: /nested/,
  });
  const piece = panel.locator("details", { hasText: ": as every piece" }).first();
  await piece.locator("summary").click();
  const own = panel.getByRole("checkbox", { name: "Tolerances of its own" });
  await own.first().check();
  await page.locator(".template", { hasText: /thick/ }).click();
  await panel.getByText("no one piece of this ball is called that").waitFor();
  await panel.getByRole("button", { name: /^Pour [\d,]+ balls/ }).click();
  await panel.locator(".says-wrong", { hasText: "No piece of the ball is called" }).waitFor();
  await panel.getByRole("button", { name: "Drop them" }).click();
  await panel.getByRole("button", { name: /^Pour [\d,]+ balls/ }).click();
  await panel.locator(".why-says").first().waitFor();
  await check();
  await context.close();
});

test("pouring: every pour in its order, a piece that floats is named, the five-piece core is the dearest and why", async () => {
  const { page, panel, context, check } = await fold("Scale", "How it is poured", {
    viewport: DESKTOP,
    template: /five-piece/,
  });
  const pours = panel.locator("section[aria-label='Pours in their order'] tbody tr");
  await pours.nth(5).waitFor();
  assert.match(await pours.nth(5).textContent(), /cover/);
  await panel.getByText("Nothing stands in the way of pouring it.", { exact: false }).waitFor();
  await panel.locator(".cost-chart").waitFor();
  const said = await panel.locator(".cost-says").textContent();
  assert.match(said, /Of these No\. 6, five-piece is the dearest, .*pours, 6 against 4/);
  assert.ok(said.includes(await panel.locator(".cost-chart desc").textContent()));
  const numbers = (rows) =>
    rows.evaluateAll((all) =>
      all.map((row) => [...row.querySelectorAll("td")].map((cell) => Number(cell.textContent))),
    );
  const costs = await numbers(panel.locator("section[aria-label='Cost index of every ball'] tbody tr"));
  assert.equal(costs.length, 6);
  for (const row of costs) {
    const sum = row.slice(0, -1).reduce((a, b) => a + b, 0);
    assert.ok(Math.abs(sum - row.at(-1)) < 0.03, `${row}`);
    assert.ok(row.at(-1) <= costs[0].at(-1));
  }
  // More is lost, more is mixed.
  const mixed = async () => Number((await pours.nth(5).locator("td").nth(4).textContent()).replace(",", ""));
  const before = await mixed();
  await panel.getByRole("textbox", { name: /^Lost of each pour/ }).fill("20");
  await page.waitForFunction(
    (before) =>
      Number(
        document.querySelectorAll("section[aria-label='Pours in their order'] tbody tr")[5].cells[5]
          .textContent,
      ) > before,
    before,
  );
  assert.deepEqual(await accessibilityFaults(page), []);
  await panel.scrollIntoViewIfNeeded();
  await shoot(page, "maker-pouring");

  const floating = {
    format: "pithball.ball/1",
    name: "Off the axis",
    diameter_in: 8.56,
    cover: { density_g_cc: 1.16 },
    pieces: [
      { name: "stray", density_g_cc: 2, shape: { kind: "sphere", diameter_in: 1.5 }, at_in: [2.5, 0, 0] },
    ],
  };
  await page.getByLabel(/^File to open/).setInputFiles({
    name: "stray.ball.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(floating)),
  });
  await panel.getByText("stray floats while cover is poured", { exact: false }).waitFor();
  await panel.getByText("It cannot be poured in this order as it is.", { exact: false }).waitFor();
  await check();
  await context.close();
});

test("levers: a ranked list and hints beside the sliders, renewed with every edit, never in the way of one", async () => {
  const { page, panel, context, check } = await fold("Bench", "What moves what", {
    viewport: DESKTOP,
    template: /three-piece/,
  });
  const rows = panel.locator("section[aria-label='What every control moves'] tbody tr");
  await rows.first().waitFor();
  const size = (text) =>
    Math.max(
      ...[...text.replaceAll("−", "-").matchAll(/[+-]?\d+\.?\d*/g)].map(([found]) => Math.abs(Number(found))),
    );
  for (const [at, figure] of [
    [1, "weight_lb"],
    [3, "differential_in"],
  ]) {
    await panel.getByLabel("Ranked by").selectOption(figure);
    const told = await rows.evaluateAll(
      (all, at) => all.map((row) => row.querySelectorAll("td")[at].textContent),
      at,
    );
    const sizes = told.map(size);
    assert.deepEqual(
      sizes,
      sizes.toSorted((a, b) => b - a),
    );
    assert.ok(sizes[0] > 0);
    const first = (await rows.first().locator("th").textContent()).trim();
    await panel.locator(".levers-say", { hasText: `moves most with ${first}:` }).waitFor();
  }
  // A hint stands with a slider of the part in hand.
  const hint = page.locator(".part[data-open] .field-hint").first();
  await hint.waitFor();
  assert.match(await hint.textContent(), /^moves .* most/);
  assert.deepEqual(await accessibilityFaults(page), []);
  await panel.scrollIntoViewIfNeeded();
  await shoot(page, "maker-levers");

  // Edits in quick succession: the list is worked out once they rest, and none waits for it.
  const before = await rows.allTextContents();
  const density = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
  for (const value of ["2.1", "2.2", "2.3"]) await density.fill(value);
  await panel.getByText("Working it out anew", { exact: false }).waitFor();
  await panel.getByText("Working it out anew", { exact: false }).waitFor({ state: "detached" });
  assert.notDeepEqual(await rows.allTextContents(), before);
  await check();
  await context.close();
});

test("seeking: different cores for wanted numbers, put on the bench and taken back; a file; what stands in the way", async () => {
  const { page, panel, context, check } = await fold("Bench", "Find a core", {
    viewport: DESKTOP,
    template: /nested/,
  });
  await context.setOffline(true);
  const rg = page.locator(".readout", { hasText: "about the easiest axis" }).locator(".value").first();
  const name = page.locator(".ball-name input");
  await panel.getByRole("textbox", { name: /^Wanted: Low RG/ }).fill("2.53");
  await panel.getByRole("textbox", { name: /^Wanted: Differential/ }).fill("0.045");
  await panel.getByRole("button", { name: "Seek a core" }).click();
  const says = panel.locator(".why-says");
  await says.filter({ hasText: /meet it, with \d different cores/ }).waitFor();
  const count = Number(/with (\d)/.exec(await says.textContent())[1]);
  await panel.locator(".rung-card .section-region").first().waitFor();
  assert.equal(await panel.locator(".rung-card").count(), count);
  const numbers = await panel
    .locator("section[aria-label='The cores in numbers'] tbody tr", { hasText: "low RG" })
    .locator("td")
    .allTextContents();
  for (const text of numbers) assert.ok(Math.abs(Number(text) - 2.53) <= 0.001, text);
  assert.deepEqual(await accessibilityFaults(page), []);
  await panel.scrollIntoViewIfNeeded();
  await shoot(page, "maker-seek");

  const before = await rg.textContent();
  await panel.getByRole("button", { name: "To the bench: Core 2" }).click();
  await page.waitForFunction(
    (before) => document.querySelectorAll(".readout .value")[1].textContent !== before,
    before,
  );
  assert.ok(Math.abs(Number(await rg.textContent()) - 2.53) <= 0.0011);
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await page.waitForFunction(
    (before) => document.querySelectorAll(".readout .value")[1].textContent === before,
    before,
  );
  assert.equal(await name.inputValue(), "No. 4, nested core");

  const file = await download(page, () => panel.getByRole("button", { name: "Save target" }).click());
  assert.equal(file.format, "pithball.target/1");
  assert.equal(file.want.rg_in, 2.53);

  // Out of reach: the nearest, and what stands in the way.
  await panel.locator("input[type=file]").setInputFiles({
    name: "far.target.json",
    mimeType: "application/json",
    buffer: Buffer.from(
      JSON.stringify({
        format: "pithball.target/1",
        want: { weight_lb: 15.9, rg_in: 2.75 },
        free: [{ control: "pieces[0].density_g_cc", from: 0.6, to: 0.7 }],
        starts: 4,
      }),
    ),
  });
  await panel.getByText("What is wanted has changed since", { exact: false }).waitFor();
  assert.equal(await panel.getByRole("textbox", { name: /^Wanted: Weight/ }).inputValue(), "15.9");
  await panel.getByRole("button", { name: "Seek a core" }).click();
  await panel.getByText("None of 4 starts meets it.", { exact: false }).waitFor();
  await panel.locator("li", { hasText: "is at its upper bound, 0.7" }).waitFor();
  await panel.locator(".rung-card", { hasText: "Nearest" }).waitFor();
  await check();
  await context.close();
});

test("seeking stops at once, fits a narrow screen, and asks for something that may change", async () => {
  const { page, panel, context, check } = await fold("Bench", "Find a core", {
    viewport: NARROW,
    template: /five-piece/,
  });
  await panel.getByRole("button", { name: "Seek a core" }).click();
  await panel.getByRole("button", { name: "Stop" }).click();
  await panel.getByText("Stopped.").waitFor();
  await panel.getByText(/^inner core: density/).click();
  await panel.getByRole("checkbox", { name: /^width of the profile/ }).uncheck();
  await panel.getByRole("checkbox", { name: /^height of the profile/ }).uncheck();
  await panel.getByRole("textbox", { name: "Starts" }).fill("2");
  await panel.getByRole("button", { name: "Seek a core" }).click();
  await panel.locator(".why-says", { hasText: /of \d+ starts? meets? it/ }).waitFor({ timeout: 150_000 });
  await fits(page);
  for (const wanted of ["Weight", "Low RG", "Differential"]) {
    await panel.getByRole("checkbox", { name: wanted, exact: true }).uncheck();
  }
  await panel.getByText("Nothing is wanted.").waitFor();
  assert.ok(await panel.getByRole("button", { name: "Seek a core" }).isDisabled());
  await check();
  await context.close();
});

test("map: contours, table and words of two controls; a point by keyboard, put on the bench; another control", async () => {
  const { page, panel, context, check } = await fold("Scale", "Map: RG", {
    viewport: DESKTOP,
    template: /nested/,
  });
  await panel.getByText("Drawn from 33 by 33 balls.").waitFor();
  const map = panel.locator("svg.maker-map");
  const desc = await map.locator("desc").textContent();
  assert.match(desc, /^Low RG runs from 2\.\d+.in to 2\.\d+.in, differential from/);
  assert.ok((await panel.locator("figcaption").textContent()).startsWith(desc));
  assert.ok((await map.locator(".map-rg").count()) > 1);
  assert.ok((await map.locator(".map-differential").count()) > 1);
  const cells = await panel.locator("section[aria-label='The map in numbers'] tbody td").allTextContents();
  assert.equal(cells.length, 81);
  // The point in hand begins at the ball itself, as near as the map has one.
  const own = /low RG (\S+)\sin/.exec(await panel.locator(".map-says").textContent())[1];
  const rg = page.locator(".readout .value").nth(1);
  assert.ok(Math.abs(Number(own) - Number(await rg.textContent())) <= 0.002, own);
  assert.deepEqual(await accessibilityFaults(page), []);
  await panel.scrollIntoViewIfNeeded();
  await shoot(page, "maker-map");

  // By keyboard to another point: it says what the ball would be, and the bench has it then.
  const across = panel.getByRole("slider", { name: /^Across/ });
  await across.focus();
  for (let n = 0; n < 4; n += 1) await page.keyboard.press("ArrowRight");
  const said = await panel.locator(".map-says").textContent();
  const [, there] = /low RG (\S+)\sin/.exec(said);
  await panel.getByRole("button", { name: "Put this point on the bench" }).click();
  await page.waitForFunction(
    (there) => document.querySelectorAll(".readout .value")[1].textContent === there,
    there,
  );
  await page.getByRole("button", { name: "Undo", exact: true }).click();

  // A click moves the point too.
  await map.click({ position: { x: 40, y: 40 } });
  await panel.locator(".map-says").filter({ hasNotText: said }).waitFor();

  const up = panel.locator(".map-side select").nth(1);
  await up.selectOption({ label: "cover: density" });
  await map.getByText("up: cover: density", { exact: false }).waitFor();
  await panel.getByRole("textbox", { name: "Up, from" }).fill("9");
  await panel.locator(".says-wrong").waitFor();
  await check();
  await context.close();
});

test("map fits a narrow screen and speaks metric", async () => {
  const { page, panel, context, check } = await fold("Scale", "Map: RG", {
    viewport: NARROW,
    template: /three-piece/,
  });
  await panel.getByText("Drawn from", { exact: false }).waitFor();
  await page.getByRole("button", { name: "More" }).click();
  await page.getByLabel("Units").selectOption("metric");
  await panel.locator("figcaption", { hasText: /Low RG runs from \d\d\.\d+.mm/ }).waitFor();
  await fits(page);
  await check();
  await context.close();
});
