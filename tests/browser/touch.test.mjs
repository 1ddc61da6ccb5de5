// Fingers and a pen: whatever is dragged with a mouse is dragged with them too,
// and the page still scrolls where nothing is to be dragged.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { launch, PHONE } from "./harness.mjs";

const TABLET = { width: 820, height: 1180 };

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

/** A page under fingers: `{ …, finger, pinch, pen }`, each drag a list of places. */
async function touched(options) {
  const opened = await site.open({ hasTouch: true, isMobile: true, ...options });
  const devtools = await opened.context.newCDPSession(opened.page);
  const touch = (type, touchPoints) => devtools.send("Input.dispatchTouchEvent", { type, touchPoints });
  const point = ([x, y], id) => ({ x, y, id });
  const fingers = async (...ways) => {
    const steps = ways[0].length;
    await touch(
      "touchStart",
      ways.map((way, id) => point(way[0], id)),
    );
    for (let n = 1; n < steps; n += 1) {
      await touch(
        "touchMove",
        ways.map((way, id) => point(way[n], id)),
      );
    }
    await touch("touchEnd", []);
  };
  const pen = async (way) => {
    const send = (type, [x, y], buttons) =>
      devtools.send("Input.dispatchMouseEvent", {
        type,
        x,
        y,
        button: "left",
        buttons,
        clickCount: type === "mouseMoved" ? 0 : 1,
        pointerType: "pen",
        force: buttons ? 0.5 : 0,
      });
    await send("mousePressed", way[0], 1);
    for (const place of way.slice(1)) await send("mouseMoved", place, 1);
    await send("mouseReleased", way.at(-1), 0);
  };
  return { ...opened, fingers, pen };
}

/** Places from one to another, in steps. */
const along = ([x0, y0], [x1, y1], steps = 6) =>
  Array.from({ length: steps + 1 }, (_, n) => [x0 + ((x1 - x0) * n) / steps, y0 + ((y1 - y0) * n) / steps]);

const middle = ({ x, y, width, height }) => [x + width / 2, y + height / 2];

for (const [name, viewport] of [
  ["phone", PHONE],
  ["tablet", TABLET],
]) {
  test(`the sawn ball turns under one finger, grows under two, and a tap names a part: ${name}`, async () => {
    const { page, context, fingers, check } = await touched({ viewport });
    if (name === "phone") await page.getByRole("navigation", { name: "Rooms" }).getByText("Saw").tap();
    const saw = page.locator(".room-saw");
    const stage = saw.locator(".solid-stage");
    await stage.scrollIntoViewIfNeeded();
    assert.equal(await saw.locator(".saw-hint").textContent(), "Drag to turn; two fingers zoom.");
    const shown = async () => {
      await page.evaluate(
        () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
      );
      return (await saw.locator(".solid").screenshot()).toString("base64");
    };
    const [x, y] = middle(await stage.boundingBox());
    const scrolled = await page.evaluate(() => scrollY);
    const first = await shown();
    await fingers(along([x - 40, y], [x + 50, y + 20]));
    const turned = await shown();
    assert.notEqual(turned, first);
    await fingers(along([x - 20, y], [x - 70, y]), along([x + 20, y], [x + 70, y]));
    assert.notEqual(await shown(), turned);
    assert.equal(await page.evaluate(() => scrollY), scrolled, "the page stays under the fingers");
    await page.touchscreen.tap(x, y);
    await saw.locator(".saw-about", { hasText: /core|cover|puck/i }).waitFor();
    await check();
    await context.close();
  });
}

test("a finger and a pen draw on the oil", async () => {
  const { page, context, fingers, pen, check } = await touched({ viewport: TABLET });
  if (await page.getByRole("navigation", { name: "Rooms" }).isVisible()) {
    await page.getByRole("button", { name: "Lane", exact: true }).tap();
  }
  const lane = page.getByRole("region", { name: "Lane" });
  const oil = lane.locator(".oil-fold");
  const kept = () => page.evaluate(() => localStorage.getItem("pithball.bench/1"));
  await lane
    .locator("summary", { hasText: /^(Oil|Lane): / })
    .first()
    .tap();
  await oil.locator("select").first().selectOption("house");
  await lane.locator("summary", { hasText: "Draw on the oil" }).tap();
  await oil.getByRole("button", { name: "Pencil: more oil" }).tap();
  const field = oil.locator(".film-touch");
  for (const [n, draw] of [fingers, pen].entries()) {
    await field.scrollIntoViewIfNeeded();
    const box = await field.boundingBox();
    const place = (share) => [box.x + share * box.width, box.y + (0.3 + 0.2 * n) * box.height];
    const before = await kept();
    await draw(along(place(0.7), place(0.8)));
    await page.waitForTimeout(500);
    assert.notEqual(await kept(), before, n ? "pen" : "finger");
  }
  await check();
  await context.close();
});

test("a finger draws a path in a lesson", async () => {
  const { page, context, fingers, check } = await touched({ viewport: PHONE });
  await page.getByRole("navigation", { name: "Rooms" }).getByText("Lessons").tap();
  const lesson = page.locator(".room-lessons li", { hasText: "Skid, hook, roll" });
  await lesson.getByRole("button", { name: /Take this lesson/ }).tap();
  const panel = page.locator(".room-lesson");
  const lane = panel.locator(".draw-path-lane");
  for (let n = 0; n < 6 && !(await lane.count()); n += 1) {
    await panel.getByRole("button", { name: "Next", exact: true }).tap();
  }
  await lane.scrollIntoViewIfNeeded();
  const point = lane.locator("[role=slider]").nth(2);
  const was = Number(await point.getAttribute("aria-valuenow"));
  const [x, y] = middle(await point.locator(".drawn-point").boundingBox());
  await fingers(along([x, y], [x, y - 15]));
  assert.notEqual(Number(await point.getAttribute("aria-valuenow")), was);
  await check();
  await context.close();
});

test("a finger beside what can be dragged scrolls", async () => {
  const { page, context, fingers, check } = await touched({ viewport: PHONE });
  await page.getByRole("navigation", { name: "Rooms" }).getByText("Bench").tap();
  const scrolled = () =>
    page.evaluate(() =>
      Math.max(scrollY, ...[...document.querySelectorAll("*")].map((one) => one.scrollTop)),
    );
  const before = await scrolled();
  await fingers(along([200, 700], [200, 300], 12));
  await page.waitForTimeout(500);
  assert.ok((await scrolled()) > before + 100, `${before} to ${await scrolled()}`);
  await check();
  await context.close();
});
