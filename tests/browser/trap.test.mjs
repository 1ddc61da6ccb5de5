// The module traps, as it would on a mistake of ours: the page says so, keeps the
// work and goes on after one click. A worker that dies or cannot start stops only what asked.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { accessibilityFaults, launch, shoot } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const name = (page) => page.locator(".ball-name input");
const weight = (page) => page.locator(".readout", { hasText: "Weight" }).locator(".value").first();

/**
 * Changes the density of the piece in hand while weighing a ball traps: `once`, or
 * always from now on. In one task, so that nothing else is weighed in between.
 * Real traps, of a module of one instruction.
 */
const changeIntoTrap = (page, when) =>
  page
    .locator(".part[data-open]")
    .getByRole("textbox", { name: /^Density/ })
    .evaluate((input, when) => {
      globalThis.trapping = when;
      input.value = "2.8";
      input.dispatchEvent(new InputEvent("input", { bubbles: true }));
    }, when);

async function open() {
  const context = await site.browser.newContext({ serviceWorkers: "block" });
  await context.addInitScript(() => {
    const unreachable = Uint8Array.from([
      0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 7, 5, 1, 1, 102, 0, 0, 10, 5, 1, 3, 0, 0,
      11,
    ]);
    const instantiate = WebAssembly.instantiateStreaming;
    WebAssembly.instantiateStreaming = async (...given) => {
      const { module, instance } = await instantiate(...given);
      const trap = new WebAssembly.Instance(new WebAssembly.Module(unreachable)).exports.f;
      const exports = { ...instance.exports };
      exports.ball_weigh = (...given) => {
        if (globalThis.trapping === "always") trap();
        if (globalThis.trapping === "once") {
          globalThis.trapping = "";
          trap();
        }
        return instance.exports.ball_weigh(...given);
      };
      return { module, instance: { exports } };
    };
  });
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(site.url);
  await name(page).waitFor();
  return { page, context };
}

test("after a trap the page says so and loading it again brings the work back", async () => {
  const { page, context } = await open();
  await name(page).fill("Mine");
  await changeIntoTrap(page, "once");
  await page.getByRole("heading", { name: "Pithball has stopped" }).waitFor();
  assert.match(await page.getByRole("alert").textContent(), /kept in this browser/);
  assert.match(await page.locator("pre").textContent(), /RuntimeError/);
  assert.deepEqual(await accessibilityFaults(page), []);
  await page.getByRole("button", { name: "Load the page again" }).click();
  await name(page).waitFor();
  assert.equal(await name(page).inputValue(), "Mine");
  assert.equal(await page.getByRole("textbox", { name: /^Density/ }).inputValue(), "2.8");
  await context.close();
});

test("a change that traps every time can be taken back, and the rest of the work stays", async () => {
  const { page, context } = await open();
  await name(page).fill("Mine");
  const good = await weight(page).textContent();
  await changeIntoTrap(page, "always");
  await page.getByRole("heading", { name: "Pithball has stopped" }).waitFor();
  await shoot(page, "trap-stopped");
  await page.getByRole("button", { name: "Go back to before the last change" }).click();
  await name(page).waitFor();
  assert.equal(await name(page).inputValue(), "Mine");
  assert.equal(await weight(page).textContent(), good);
  await context.close();
});

/** The page with workers that break with their first task, or that the browser refuses, until `globalThis.workers` is "well". */
async function openWithWorkers(workers) {
  const context = await site.browser.newContext({ serviceWorkers: "block" });
  await context.addInitScript((workers) => {
    globalThis.workers = workers;
    const dying = `self.onmessage = ({ data }) => {
      if ("job" in data) throw new RangeError("Out of memory");
    };`;
    globalThis.Worker = class extends Worker {
      constructor(address) {
        if (globalThis.workers === "refused") throw new DOMException("no more workers", "SecurityError");
        super(
          globalThis.workers === "well"
            ? address
            : URL.createObjectURL(new Blob([dying], { type: "text/javascript" })),
        );
      }
    };
  }, workers);
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(site.url);
  await name(page).waitFor();
  return { page, context };
}

for (const [workers, said] of [
  ["dying", "RangeError: Out of memory"],
  ["refused", "SecurityError: no more workers"],
]) {
  test(`with workers ${workers} the panel that asked says so and tries again, and all else goes on`, async () => {
    const { page, context } = await openWithWorkers(workers);
    const line = page.locator(".weight-line");
    await line.locator("summary").first().click();
    await line.getByText(`could not be worked out. The browser said: ${said}.`).waitFor();
    assert.equal(await line.getByText("Working").count(), 0);
    await shoot(page, `workers-${workers}`);
    assert.deepEqual(await accessibilityFaults(page), []);
    const before = await weight(page).textContent();
    const density = page.locator(".part[data-open]").getByRole("textbox", { name: /^Density/ });
    await density.fill("2.6");
    await page.waitForFunction(
      (before) =>
        [...document.querySelectorAll(".readout")]
          .find((one) => one.textContent.includes("Weight"))
          .querySelector(".value").textContent !== before,
      before,
    );
    await line.getByText(`The browser said: ${said}.`).waitFor();
    await page.evaluate(() => {
      globalThis.workers = "well";
    });
    await line.getByRole("button", { name: "Try again" }).click();
    await line.locator("table").first().waitFor();
    assert.equal(await page.getByRole("heading", { name: "has stopped" }).count(), 0);
    await context.close();
  });
}
