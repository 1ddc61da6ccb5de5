// Every room with all its folds open on 320 pixels (WCAG 1.4.10), with text at twice
// its size on a phone and a desk (1.4.4), both in Spanish with its longer words, and with
// text set wide (1.4.12): nothing runs out sideways, no word is cut off or runs out of its
// button, none lies over another in a drawing, and letters of drawings grow with the rest.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { DESKTOP, launch, NARROW, PHONE, shoot, unfold } from "./harness.mjs";
import { overlaid, tooWide } from "./states.mjs";

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
      const button = element.closest("button:not(.term)")?.getBoundingClientRect();
      for (const box of range.getClientRects()) {
        if (button && (box.left < button.left - 1 || box.right > button.right + 1))
          found.push(`“${node.data.trim().slice(0, 40)}” out of its button`);
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

/** Letters of the readouts, the lane and the ball that stay small though the page's are large. */
const smallLetters = (page) =>
  page.evaluate(() => {
    const rem = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    return [...document.querySelectorAll(".room :is(.place, .lane-drawing, .globe-drawing) text")]
      .filter((text) => text.checkVisibility() && !text.closest(".sheet-page"))
      .map((text) => ({
        text,
        px: Number.parseFloat(getComputedStyle(text).fontSize) * text.getScreenCTM().a,
      }))
      .filter(({ px }) => px < 0.55 * rem)
      .map(({ text, px }) => `“${text.textContent}” ${px} px`);
  });

async function fits(page, name) {
  await unfold(page);
  assert.deepEqual(await tooWide(page), [], name);
  assert.deepEqual(await cutOff(page), [], name);
  assert.deepEqual(await overlaid(page, ".room svg"), [], name);
  assert.deepEqual(await smallLetters(page), [], name);
}

/** As WCAG 1.4.12 has it. */
const SPACED = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
p { margin-block-end: 2em !important; }`;

function twice() {
  document.documentElement.style.fontSize = "200%";
}

/** What is pressed, by language. */
const SAID = {
  en: {
    drilled: "The ball is drilled",
    inLessons: ["In Lessons", "Words", "A class", "Write one", "Lessons"],
    take: "Take this lesson Why a house ball goes long",
    menu: ["More", "Share link"],
  },
  es: {
    drilled: "La bola está taladrada",
    inLessons: ["En Lecciones", "Palabras", "Una clase", "Escribir una", "Lecciones"],
    take: /^Tomar esta lección Por qué una bola de la casa se va de largo/,
    menu: ["Más", "Compartir enlace"],
  },
};
/** The rooms by themselves, in their order. */
const ROOMS = ["bench", "saw", "scale", "lane", "shelf", "sheet", "lessons"];

/** `desk`: the workshop of four rooms alone. */
const WAYS = {
  "on 320 pixels": { viewport: NARROW, locale: "es" },
  "with text at twice its size": { viewport: PHONE, locale: "es", set: twice },
  "with text at twice its size on a desk": { viewport: DESKTOP, locale: "es", set: twice, desk: true },
  "with text set wide": {
    viewport: PHONE,
    set: (css) => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(css);
      document.adoptedStyleSheets = [sheet];
    },
  },
};

for (const [way, { viewport, locale = "en", set, desk }] of Object.entries(WAYS)) {
  test(`every room unfolded ${way}: nothing runs out, no word is cut off`, async () => {
    const { page, context, check } = await site.open({ viewport, locale, reducedMotion: "reduce" });
    if (set) await page.evaluate(set, SPACED);
    const said = SAID[locale];
    if (desk) {
      await fits(page, "the workshop");
      await shoot(page, `reflow-${way.replaceAll(" ", "-")}`);
      await check();
      await context.close();
      return;
    }
    const nav = page.locator(".rooms-nav").getByRole("button");
    for (const [at, room] of ROOMS.entries()) {
      await nav.nth(at).click();
      await page.getByText(/Reading the lessons|One moment|Un momento/).waitFor({ state: "detached" });
      if (room === "shelf") {
        const compare = page.locator(".room-shelf .choose input");
        for (const entry of [1, 4]) await compare.nth(entry).check();
      }
      await fits(page, room);
      if (room === "bench") {
        await page.getByRole("checkbox", { name: said.drilled }).check();
        await fits(page, "bench, drilled");
      }
      await shoot(page, `reflow-${way.replaceAll(" ", "-")}-${room}`);
    }
    const [lessons, ...names] = said.inLessons;
    const inside = page.getByRole("navigation", { name: lessons }).getByRole("button");
    for (const name of names) {
      await inside.filter({ hasText: new RegExp(`^${name}$`) }).click();
      await fits(page, name);
    }
    await page.getByRole("button", { name: said.take }).click();
    await page.locator("#lesson-step").waitFor();
    await fits(page, "a lesson");
    for (const name of said.menu) await page.getByRole("button", { name, exact: true }).click();
    await fits(page, "the menu");
    await check();
    await context.close();
  });
}
