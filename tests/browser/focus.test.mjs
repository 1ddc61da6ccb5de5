// By keyboard through every room, on a desk and on a phone: stops come in the order
// in which they stand, each is marked and in view, none holds the keyboard fast, and
// what was opened closes with Escape and gives the keyboard back.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { go, nav } from "./about.mjs";
import { contrast } from "./contrast.mjs";
import { DESKTOP, launch, PHONE } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

/** Begins to note each stop of the keyboard. */
const note = (page) =>
  page.evaluate(() => {
    const channels = (css) => {
      const pen = new OffscreenCanvas(1, 1).getContext("2d", { willReadFrequently: true });
      pen.fillStyle = css;
      pen.fillRect(0, 0, 1, 1);
      return [...pen.getImageData(0, 0, 1, 1).data];
    };
    /** What is painted behind an element: the nearest ground that lets nothing through. */
    const behind = (element) => {
      for (let at = element; at; at = at.parentElement) {
        const ground = channels(getComputedStyle(at).backgroundColor);
        if (ground[3] === 255) return ground;
      }
      return [255, 255, 255, 255];
    };
    globalThis.stops = [];
    document.addEventListener("focusin", ({ target }) => {
      const style = getComputedStyle(target);
      const box = target.getBoundingClientRect();
      let scrolled = 0;
      let scroller = null;
      for (let at = target.parentElement; at; at = at.parentElement) {
        scrolled += at.scrollTop;
        if (/auto|scroll/.test(getComputedStyle(at).overflowY)) scroller ??= at;
      }
      const [x, y] = [box.left + box.width / 2, box.top + box.height / 2];
      const inset = (from, to, share) => from + (to - from) * share;
      const seen = [0.1, 0.5, 0.9].some((u) =>
        [0.1, 0.5, 0.9].some((v) => {
          const at = document.elementFromPoint(inset(box.left, box.right, u), inset(box.top, box.bottom, v));
          return at && (target.contains(at) || at.contains(target) || target.labels?.[0]?.contains(at));
        }),
      );
      const outline = style.outlineStyle !== "none" ? Number.parseFloat(style.outlineWidth) : 0;
      globalThis.stops.push({
        name: `${target.localName}.${target.className?.baseVal ?? target.className} “${(target.getAttribute("aria-label") ?? target.labels?.[0]?.textContent ?? target.textContent).replace(/\s+/g, " ").trim().slice(0, 40)}”`,
        first: globalThis.stops.length === 0,
        within: scroller?.className ?? target.closest("header, nav, section")?.className,
        // As it stands in what scrolls, so that scrolling on the way does not count.
        top: box.top + scrolled,
        bottom: box.bottom + scrolled,
        left: box.left,
        right: box.right,
        outline,
        mark: channels(style.outlineColor).slice(0, 3),
        ground: behind(target.parentElement).slice(0, 3),
        seen,
        middle: [x, y],
      });
    });
  });

/** From the top of the page with a key until it comes round; gives the stops in their order. */
async function walk(page, key) {
  await page.evaluate(() => {
    document.activeElement.blur();
    document.querySelector(".skip").focus();
    globalThis.stops.length = 0;
  });
  for (let n = 0; n < 500; n += 1) {
    await page.keyboard.press(key);
    const round = await page.evaluate(
      () => document.activeElement === document.body || document.activeElement.matches(".skip"),
    );
    if (round) return page.evaluate(() => globalThis.stops.filter(({ name }) => !name.includes("skip")));
  }
  return assert.fail("the keyboard does not come round");
}

/** What is wrong with the stops of a walk down the page. */
function wrong(stops) {
  const faults = [];
  for (const [n, stop] of stops.entries()) {
    const mark = contrast(stop.mark, stop.ground);
    if (stop.outline < 2) faults.push(`not marked: ${stop.name}`);
    else if (mark < 3) faults.push(`mark of ${mark.toFixed(1)} : 1: ${stop.name}`);
    if (!stop.seen) faults.push(`out of sight: ${stop.name} at ${stop.middle}`);
    const last = stops[n - 1];
    // Back upwards within one column: the eye has to look for it.
    const sameColumn =
      last && last.within === stop.within && stop.left < last.right && last.left < stop.right;
    if (sameColumn && stop.bottom < last.top - 1) faults.push(`back up from ${last.name} to ${stop.name}`);
  }
  return faults;
}

for (const [size, viewport] of Object.entries({ desk: DESKTOP, phone: PHONE })) {
  test(`through every room by Tab alone, ${size}`, async () => {
    const { page, context, check } = await site.open({ viewport, reducedMotion: "reduce" });
    await note(page);
    const rooms = await nav(page).getByRole("button").allTextContents();
    for (const room of rooms) {
      await go(page, room);
      await page.getByText(/Reading the lessons|One moment/).waitFor({ state: "detached" });
      if (room === "Shelf") {
        for (const name of ["No. 1, simple", "No. 4, nested core"])
          await page.getByLabel(`Compare ${name}`, { exact: true }).check();
        await page.locator(".compare-table").first().waitFor();
      }
      // What is worked out beside the page has its words, too, once it is there.
      if (room === "Sheet") await page.locator(".sheet-weights .term").first().waitFor();
      const stops = await walk(page, "Tab");
      assert.ok(stops.length > 12, `${room}: ${stops.length} stops`);
      assert.deepEqual(wrong(stops), [], room);
      // Upwards, what stays in view at the top may stand over a stop.
      const back = await walk(page, "Shift+Tab");
      assert.equal(back.length, stops.length, room);
      const hidden = back.filter(({ seen }) => !seen).map(({ name }) => name);
      assert.deepEqual(hidden, [], `${room}, upwards`);
    }
    await check();
    await context.close();
  });
}

const focused = (page) =>
  page.evaluate(
    () => document.activeElement.getAttribute("aria-label") ?? document.activeElement.textContent,
  );

test("Escape closes what was opened, and the keyboard is back where it came from", async () => {
  const { page, context, check } = await site.open({ viewport: PHONE, reducedMotion: "reduce" });
  const press = async (name) => {
    await page.getByRole("button", { name, exact: true }).first().focus();
    await page.keyboard.press("Enter");
  };
  await press("More");
  await press("Share link");
  await page.getByLabel("Link to this ball and shot").focus();
  await page.keyboard.press("Escape");
  assert.equal(await page.locator("#share").isVisible(), false);
  assert.equal(await focused(page), "Share link");
  await press("Share link");
  await page.keyboard.press("Escape");
  assert.equal(await page.locator("#share").isVisible(), false);
  await page.keyboard.press("Escape");
  assert.equal(await page.locator(".bar-tucked").first().isVisible(), false);
  assert.equal(await focused(page), "More");

  await press("Weight");
  await page.locator(".meaning:popover-open").waitFor();
  await page.keyboard.press("Tab");
  assert.match(await focused(page), /^See it drawn/);
  await page.keyboard.press("Escape");
  assert.equal(await page.locator(".meaning:popover-open").count(), 0);
  assert.equal(await focused(page), "Weight");
  await check();
  await context.close();
});

test("what goes away with its button leaves the keyboard beside it", async () => {
  const { page, context, check } = await site.open({ reducedMotion: "reduce" });
  const enter = async (button) => {
    await button.focus();
    await page.keyboard.press("Enter");
    await page.waitForTimeout(150);
    const lost = await page.evaluate(() => document.activeElement === document.body);
    assert.ok(!lost, `lost after ${await button.toString()}`);
    return focused(page);
  };
  const button = (name, place = page) => place.getByRole("button", { name, exact: true }).first();
  const part = page.locator(".part[data-open]");
  await page.getByText(/^Drilled holes/).click();
  await enter(button("Add a hole"));
  await enter(page.getByRole("button", { name: /^Remove .*hole/ }).first());
  await part.getByText(/^Cuts and flow channels/).click();
  await enter(part.getByRole("button", { name: "Add a flow channel" }));
  await enter(part.getByRole("button", { name: /^Remove/ }).last());
  for (let n = 0; n < 4; n += 1) await enter(button("Undo"));
  // Long enough at work to be stopped, however busy the machine is.
  const seek = page.locator(".maker", { hasText: "Find a core" });
  await page.locator(".template", { hasText: /five-piece/ }).click();
  await seek.locator("summary").first().click();
  await seek.getByRole("textbox", { name: "Starts" }).fill("1000");
  await seek.getByRole("button", { name: "Seek a core" }).click();
  await enter(button("Stop", seek));
  await page.getByLabel("File to open").setInputFiles({
    name: "bad.ball.json",
    mimeType: "application/json",
    buffer: Buffer.from("{"),
  });
  await enter(button("Close", page.locator(".notice")));
  await page.getByRole("combobox", { name: "Language" }).focus();
  await page.keyboard.press("ArrowDown");
  await page.getByRole("button", { name: "Deshacer" }).waitFor();
  await page.waitForFunction(() => document.activeElement.id === "bar-language");
  await page.keyboard.press("ArrowUp");
  await button("Undo").waitFor();

  await go(page, "Shelf");
  await enter(button("Put on the shelf"));
  const row = page.locator("[data-entry]").first();
  await row.locator("summary").click();
  await enter(button("Name and note", row));
  await page.keyboard.press("Escape");
  await page.locator(".edit-form").waitFor({ state: "detached" });
  assert.ok(
    await page.evaluate(() => document.activeElement !== document.body),
    "after Escape from its form",
  );
  await check();
  await context.close();
});
