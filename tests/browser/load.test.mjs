import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { firstLoad } from "../bench/first-load.mjs";
import { DESKTOP, launch, PHONE, shoot } from "./harness.mjs";

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

test("the first load leaves out the rooms that take the whole space", async () => {
  const { files } = await firstLoad(site);
  assert.ok(files.some((file) => file.endsWith(".wasm")));
  assert.ok(!files.some((file) => /(shelf|sheet|model)-/.test(file)), files.join(", "));
});
