// A state of the page as everybody meets it: looked at by axe-core in light, again
// for what may differ in the dark and on a narrow screen, and with forced colours.
import assert from "node:assert/strict";
import { contrast } from "./contrast.mjs";
import { accessibilityFaults, DESKTOP, NARROW } from "./harness.mjs";

const COLOURS = ["color-contrast", "link-in-text-block"];
const LAYOUT = ["target-size", "scrollable-region-focusable"];

/** What is wider than the page, or than a place in it that is not meant to scroll sideways. */
export const tooWide = (page) =>
  page.evaluate(() =>
    [
      document.documentElement,
      ...document.querySelectorAll(".rooms, .room-body, .rooms-nav, .strip, dialog[open], .bar"),
    ]
      .filter((one) => one.checkVisibility() && one.scrollWidth > one.clientWidth + 1)
      .map((one) => `${one.className || one.localName} ${one.scrollWidth} in ${one.clientWidth} px`),
  );

/** Texts of one drawing that lie over each other; edges of letters may touch. */
export const overlaid = (page, drawings) =>
  page.evaluate((drawings) => {
    const found = [];
    for (const svg of document.querySelectorAll(drawings)) {
      if (!svg.checkVisibility()) continue;
      const texts = [...svg.querySelectorAll("text")].map((text) => {
        const { left, right, top, bottom } = text.getBoundingClientRect();
        // Digits and most letters fill the middle of a line.
        const edge = 0.26 * (bottom - top);
        return {
          says: text.textContent,
          left: left + 1,
          right: right - 1,
          top: top + edge,
          bottom: bottom - edge,
        };
      });
      for (const [i, a] of texts.entries()) {
        for (const b of texts.slice(0, i)) {
          const apart = a.left >= b.right || b.left >= a.right || a.top >= b.bottom || b.top >= a.bottom;
          if (!apart) found.push(`“${a.says}” over “${b.says}”`);
        }
      }
    }
    return found;
  }, drawings);

/**
 * With forced colours every text gets a ground of the system's own, whatever is behind it:
 * texts in a colour that cannot be read on that, which axe-core does not know.
 */
async function lostInForcedColours(page) {
  const { ground, texts } = await page.evaluate(() => {
    const channels = (computed) =>
      computed
        .match(/[\d.]+/g)
        .slice(0, 3)
        .map(Number);
    const probe = document.body.appendChild(document.createElement("i"));
    probe.style.color = "Canvas";
    const ground = channels(getComputedStyle(probe).color);
    probe.remove();
    const texts = [...document.querySelectorAll("body *:not(svg *, option)")]
      .filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.data.trim() !== ""))
      .filter((one) => one.checkVisibility() && getComputedStyle(one).forcedColorAdjust === "auto")
      .map((one) => ({
        name: `${one.localName}.${one.className} “${one.textContent.trim().slice(0, 30)}”`,
        colour: channels(getComputedStyle(one).color),
      }));
    return { ground, texts };
  });
  return texts.filter(({ colour }) => contrast(ground, colour) < 3).map(({ name }) => name);
}

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
  await page.emulateMedia({ forcedColors: "active" });
  await drawn(page);
  assert.deepEqual(await lostInForcedColours(page), [], `${name}, forced colours`);
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
