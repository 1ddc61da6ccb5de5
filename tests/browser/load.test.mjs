import assert from "node:assert/strict";
import { after, before, test } from "node:test";
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
