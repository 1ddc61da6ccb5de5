// axe-core where something is wrong that is not the reader's doing: no 3D picture,
// nothing kept, a link or a file that is no good, a part that never came.
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { launch, NARROW } from "./harness.mjs";
import { sound } from "./states.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const notice = (page, hasText) => page.locator(".notice", { hasText }).waitFor();

test("without WebGL2, and with the picture lost", async () => {
  const { page, context, reload } = await site.open({ reducedMotion: "reduce" });
  await page.evaluate(() => {
    const gl = document.querySelector(".solid canvas").getContext("webgl2");
    gl.getExtension("WEBGL_lose_context").loseContext();
  });
  await page.locator(".solid-lost").waitFor();
  await sound(page, "the picture lost", "Saw");
  await context.addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {
      return kind.startsWith("webgl") ? null : real.call(this, kind, ...rest);
    };
  });
  await reload();
  await page.locator(".saw-missing", { hasText: "cannot draw in three dimensions" }).waitFor();
  await sound(page, "no WebGL2", "Saw");
  await context.close();
});

test("storage full, what was kept unreadable, nothing kept at all", async () => {
  const { page, context, reload, check } = await site.open({ reducedMotion: "reduce" });
  await page.evaluate(() => localStorage.setItem("pithball.bench/1", "{ not json"));
  await reload();
  await notice(page, "could not be read");
  await sound(page, "unreadable", "Scale");
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException("full", "QuotaExceededError");
    };
  });
  await page.locator(".ball-name input").fill("Too much");
  await notice(page, "storage for this page is full");
  await sound(page, "full", "Scale");
  await context.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get() {
        throw new DOMException("denied", "SecurityError");
      },
    });
  });
  await reload();
  await notice(page, "does not let the page keep anything");
  await sound(page, "nothing kept", "Scale");
  await check();
  await context.close();
});

test("a link that is no good, one that is long, one that cannot be made, a file that is not read", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce", hash: "#p1.AAAA" });
  await notice(page, "The link is cut off");
  await sound(page, "link cut off", "Bench");
  const file = (name, content) => ({ name, mimeType: "application/json", buffer: Buffer.from(content) });
  const give = (...given) => page.getByLabel("File to open").setInputFiles(file(...given));
  const ball = JSON.parse(
    readFileSync(new URL("../../scenarios/balls/no-1-simple.ball.json", import.meta.url)),
  );
  const piece = (n) => ({
    name: `piece ${n} ${Math.sin(n)}`,
    density_g_cc: 1 + n / 100,
    shape: { kind: "sphere", diameter_in: 0.3 + Math.abs(Math.sin(n * 7)) / 10 },
    at_in: [Math.sin(n * 3) * 2, Math.cos(n * 5) * 2, Math.sin(n * 11) * 2],
  });
  const many = { ...ball, name: "Many", pieces: Array.from({ length: 60 }, (_, n) => piece(n)) };
  await give("many.ball.json", JSON.stringify(many));
  await notice(page, "Opened many.ball.json");
  await page.getByRole("button", { name: "Share link" }).click();
  await page.getByText("Some programs cut off a link this long").first().waitFor();
  await sound(page, "a long link", "Bench");
  await give("noted.ball.json", JSON.stringify({ ...ball, note: "x".repeat(1001) }));
  await page.getByText("No link can be made").first().waitFor();
  await sound(page, "no link", "Bench");
  await give("broken.ball.json", JSON.stringify({ ...ball, diameter_in: -1 }));
  await notice(page, "broken.ball.json was not opened");
  await sound(page, "not opened", "Bench");
  await check();
  await context.close();
});

test("the menu of a phone with the address to share", async () => {
  const { page, context, check } = await site.open({ viewport: NARROW, reducedMotion: "reduce" });
  await page.getByRole("button", { name: "More" }).click();
  await page.getByRole("button", { name: "Share link" }).click();
  await page.getByText("characters long").first().waitFor();
  await sound(page, "menu open", "Saw");
  await check();
  await context.close();
});

test("before it has started, and with a room that never came", async () => {
  const context = await site.browser.newContext({ serviceWorkers: "block", reducedMotion: "reduce" });
  const page = await context.newPage();
  let go;
  const wanted = new Promise((resolve) => {
    go = resolve;
  });
  await page.route("**/pithball_bg-*.wasm", async (route) => {
    await wanted;
    await route.continue();
  });
  await page.route("**/shelf-*.js", (route) => route.abort());
  await page.goto(site.url, { waitUntil: "commit" });
  await page.getByText("Pithball is starting").waitFor();
  go();
  await page.locator(".ball-name input").waitFor();
  await page.getByRole("button", { name: "Shelf", exact: true }).first().click();
  await page.getByText("This part of the page did not arrive").waitFor();
  await sound(page, "a room that never came", "Shelf");
  await context.close();
});
