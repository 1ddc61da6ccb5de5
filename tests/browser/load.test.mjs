import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { firstLoad, MOST_BYTES, weigh } from "../bench/first-load.mjs";
import { accessibilityFaults, DESKTOP, launch, PHONE, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

for (const [name, viewport] of Object.entries({
  desktop: DESKTOP,
  phone: PHONE,
})) {
  test(`the page loads from a sub-folder without an error, ${name}`, async () => {
    const { page, context, check } = await site.open({ viewport });
    assert.match(await page.title(), /^Pithball/);
    assert.ok(await page.locator("h1").first().textContent());
    await shoot(page, `load-${name}`);
    await check();
    await context.close();
  });
}

test("the page's policy lets in no text as code, no inline script and no other host", async () => {
  const { page, context } = await site.open();
  const seen = await page.evaluate(async () => {
    const refused = new Set();
    document.addEventListener("securitypolicyviolation", (event) => refused.add(event.effectiveDirective));
    // In a task of the page's own: what the test itself runs is free of the policy.
    const text = await new Promise((resolve) => {
      setTimeout(() => {
        try {
          resolve(new Function("return 'ran'")());
        } catch (error) {
          resolve(error.name);
        }
      });
    });
    const script = document.createElement("script");
    script.textContent = "globalThis.inlineRan = true";
    document.head.append(script);
    const away = await fetch("http://localhost:9/", { mode: "no-cors" }).catch((error) => error.name);
    const image = new Image();
    image.src = "http://localhost:9/away.png";
    await new Promise((resolve) => image.addEventListener("error", resolve));
    return { text, inline: "inlineRan" in globalThis, away, refused: [...refused].sort() };
  });
  assert.deepEqual(seen, {
    text: "EvalError",
    inline: false,
    away: "TypeError",
    refused: ["connect-src", "img-src", "script-src", "script-src-elem"],
  });
  await context.close();
});

test("the page goes on working with the network gone", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  await context.setOffline(true);
  const weight = page.locator(".readout", { hasText: "Weight" }).locator(".value").first();
  const before = await weight.textContent();
  await page.locator(".template").first().click();
  assert.notEqual(await weight.textContent(), before);
  await check();
  await context.close();
});

test("the first load is light, and leaves out the second module and the rooms that take the whole space", async () => {
  const { files } = await firstLoad(site);
  const list = files.join(", ");
  assert.equal(files.filter((file) => file.endsWith(".wasm")).length, 1, list);
  assert.ok(!files.some((file) => /(more_bg|shelf|sheet|model|lessons?)-/.test(file)), list);
  for (const part of [/^index\.html$/, /main-.*\.js$/, /main-.*\.css$/, /pithball_bg-/, /\.woff2$/]) {
    assert.ok(
      files.some((file) => part.test(file)),
      `${part} of ${list}`,
    );
  }
  const bytes = files.reduce((sum, file) => sum + weigh(file)[2], 0);
  assert.ok(bytes <= MOST_BYTES, `${bytes} bytes by Brotli: ${list}`);
});

test("where the second module never comes, the workshop goes on and says what waits", async () => {
  const context = await site.browser.newContext({ serviceWorkers: "block" });
  const page = await context.newPage();
  await page.route("**/more_bg-*.wasm", (route) => route.abort());
  await page.goto(site.url);
  await page.getByText("A part of the page did not arrive").waitFor();
  const weight = page.locator(".readout", { hasText: "Weight" }).locator(".value").first();
  const before = await weight.textContent();
  await page.locator(".template").nth(1).click();
  await page.waitForFunction(
    (before) => document.querySelector(".readout .value").textContent !== before,
    before,
  );
  await page.getByRole("button", { name: "Lessons", exact: true }).click();
  await page.getByText("This part of the page did not arrive").waitFor();
  assert.deepEqual(await accessibilityFaults(page), []);
  await page.unroute("**/more_bg-*.wasm");
  await page.getByRole("button", { name: "Load the page again" }).click();
  await page.getByRole("heading", { name: "Why a house ball goes long" }).waitFor();
  await context.close();
});

test("where the texts of the reader's language never come, the page starts in English and says so", async () => {
  const context = await site.browser.newContext({ serviceWorkers: "block", locale: "es-ES" });
  const page = await context.newPage();
  let refused = 0;
  await page.route("**/*.js", async (route) => {
    const answer = await route.fetch();
    if (!(await answer.text()).includes("frame-undo = Deshacer")) return route.fulfill({ response: answer });
    refused += 1;
    return route.abort();
  });
  await page.goto(site.url);
  await page.getByText("The texts of that language did not arrive").waitFor();
  assert.ok(refused > 0);
  await page.getByRole("button", { name: "Undo" }).waitFor();
  // What is still being fetched for the page is waited for, or let go.
  await page.unrouteAll({ behavior: "ignoreErrors" });
  await context.close();
});

test("a lesson under way waits for the second module when the page is loaded again", async () => {
  const { page, context } = await site.open({ reducedMotion: "reduce" });
  await page.getByRole("button", { name: "Lessons", exact: true }).click();
  await page
    .locator(".lessons-entry", { has: page.getByRole("heading", { name: "Why a house ball goes long" }) })
    .getByRole("button", { name: /^Take/ })
    .click();
  const step = page.locator("#lesson-step");
  const title = await step.textContent();
  await page.waitForFunction(() => localStorage.getItem("pithball.bench/1")?.includes('"taken"'));
  let come;
  const wanted = new Promise((resolve) => {
    come = resolve;
  });
  await page.route("**/more_bg-*.wasm", async (route) => {
    await wanted;
    await route.continue();
  });
  await page.reload();
  const room = page.getByRole("region", { name: "Lesson", exact: true });
  await room.getByText("One moment").waitFor();
  come();
  await step.waitFor();
  assert.equal(await step.textContent(), title);
  assert.equal(await page.locator(".fault").count(), 0);
  await context.close();
});
