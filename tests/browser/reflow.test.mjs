// Every room with all its folds open on 320 pixels (WCAG 1.4.10), with text at twice
// its size (1.4.4) and with text set wide (1.4.12): nothing runs out sideways, and no
// word is cut off.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { launch, NARROW, PHONE, shoot, unfold } from "./harness.mjs";
import { tooWide } from "./states.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

/** Words in view of which a part is cut away: by a box that hides what runs over, or by a drawing's frame. */
const cutOff = (page) =>
  page.evaluate(() => {
    const found = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement;
      if (node.data.trim() === "" || !element.checkVisibility({ visibilityProperty: true })) continue;
      if (element.closest(".visually-hidden, option, title, desc, textarea, .skip")) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const box of range.getClientRects()) {
        for (let at = element; at && at !== document.body; at = at.parentElement) {
          const { overflowX, overflowY, clipPath } = getComputedStyle(at);
          // Said aloud only, such as the name of the room in front.
          if (clipPath !== "none") break;
          const frame = at.getBoundingClientRect();
          const sideways =
            /hidden|clip/.test(overflowX) && (box.left < frame.left - 2 || box.right > frame.right + 2);
          // Above and below the letters a line has room that may go.
          const room = 4 + 0.2 * box.height;
          const down =
            /hidden|clip/.test(overflowY) && (box.top < frame.top - room || box.bottom > frame.bottom + room);
          if (sideways || down)
            found.push(`“${node.data.trim().slice(0, 40)}” by ${at.localName}.${at.getAttribute("class")}`);
          if (sideways || down || /auto|scroll/.test(overflowX)) break;
        }
      }
    }
    return [...new Set(found)];
  });

async function fits(page, name) {
  await unfold(page);
  assert.deepEqual(await tooWide(page), [], name);
  assert.deepEqual(await cutOff(page), [], name);
}

/** As WCAG 1.4.12 has it. */
const SPACED = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
p { margin-block-end: 2em !important; }`;

const WAYS = {
  "on 320 pixels": { viewport: NARROW },
  "with text at twice its size": {
    viewport: { width: 2 * NARROW.width, height: 2 * NARROW.height },
    set: () => {
      document.documentElement.style.fontSize = "200%";
    },
  },
  "with text set wide": {
    viewport: PHONE,
    set: (css) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(css);
      document.adoptedStyleSheets = [sheet];
    },
  },
};

for (const [way, { viewport, set }] of Object.entries(WAYS)) {
  test(`every room unfolded ${way}: nothing runs out, no word is cut off`, async () => {
    const { page, context, check } = await site.open({ viewport, reducedMotion: "reduce" });
    if (set) await page.evaluate(set, SPACED);
    const nav = page.locator(".rooms-nav").getByRole("button");
    for (const room of await nav.allTextContents()) {
      await nav.filter({ hasText: new RegExp(`^${room}$`) }).click();
      await page.getByText(/Reading the lessons|One moment/).waitFor({ state: "detached" });
      if (room === "Shelf") {
        for (const name of ["No. 1, simple", "No. 4, nested core"])
          await page.getByLabel(`Compare ${name}`, { exact: true }).check();
      }
      await fits(page, room);
      if (room === "Bench") {
        await page.getByRole("checkbox", { name: "The ball is drilled" }).check();
        await fits(page, "Bench, drilled");
      }
      await shoot(page, `reflow-${way.replaceAll(" ", "-")}-${room.toLowerCase()}`);
    }
    const inside = page.getByRole("navigation", { name: "In Lessons" }).getByRole("button");
    for (const name of ["Words", "A class", "Write one", "Lessons"]) {
      await inside.filter({ hasText: new RegExp(`^${name}$`) }).click();
      await fits(page, name);
    }
    await page.getByRole("button", { name: "Take this lesson Why a house ball goes long" }).click();
    await page.locator("#lesson-step").waitFor();
    await fits(page, "a lesson");
    await page.getByRole("button", { name: "More" }).click();
    await page.getByRole("button", { name: "Share link" }).click();
    await fits(page, "the menu");
    await check();
    await context.close();
  });
}
