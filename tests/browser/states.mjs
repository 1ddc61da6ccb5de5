// A state of the page as everybody meets it: looked at by axe-core in light, and
// again for what may differ in the dark, with forced colours and on a narrow screen.
import assert from "node:assert/strict";
import { accessibilityFaults, DESKTOP, NARROW } from "./harness.mjs";

const COLOURS = ["color-contrast", "link-in-text-block"];
const LAYOUT = ["target-size", "scrollable-region-focusable", "color-contrast"];

/** What is wider than the page, or than the place it scrolls in without having been meant to. */
const tooWide = (page) =>
  page.evaluate(() =>
    [document.documentElement, ...document.querySelectorAll(".rooms, .room-body, dialog[open], .bar")]
      .filter((one) => one.checkVisibility() && one.scrollWidth > one.clientWidth + 1)
      .map((one) => `${one.className || one.localName} ${one.scrollWidth} in ${one.clientWidth} px`),
  );

/** Lets what follows a change of media or size be drawn. */
const drawn = (page) =>
  page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));

/**
 * Fails on what is wrong with the state the page is in, which `name` tells. `room`
 * is the one to look at where only one fits; null for a state that is only wide.
 */
export async function sound(page, name, room) {
  assert.deepEqual(await accessibilityFaults(page), [], name);
  await page.emulateMedia({ colorScheme: "dark" });
  await drawn(page);
  assert.deepEqual(await accessibilityFaults(page, { rules: COLOURS }), [], `${name}, dark`);
  await page.emulateMedia({ colorScheme: "light", forcedColors: "active" });
  await drawn(page);
  assert.deepEqual(await accessibilityFaults(page, { rules: COLOURS }), [], `${name}, forced colours`);
  await page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
  if (room === null) return;
  await page.setViewportSize(NARROW);
  const tab = page.locator(".rooms-nav").getByRole("button", { name: room, exact: true });
  if (room && (await tab.getAttribute("aria-current")) === null) await tab.click();
  await drawn(page);
  assert.deepEqual(await accessibilityFaults(page, { rules: LAYOUT }), [], `${name}, narrow`);
  assert.deepEqual(await tooWide(page), [], `${name}, narrow`);
  await page.setViewportSize(DESKTOP);
  await drawn(page);
}
