// The page in a language from right to left that is none (see `www/src/locale/pseudo.ts`): nothing is too
// wide or out of its room, and every text is from the Fluent files, but for names, numbers and what Rust says.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { DESKTOP, launch, PHONE, shoot, unfold } from "./harness.mjs";

const npm = createRequire(new URL("../../www/package.json", import.meta.url));
const { FluentParser } = npm("@fluent/syntax");
const inRepository = (path) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

/** Names and notes of the house's files, and titles of lessons: what anybody may write, which no language changes. */
function houseNames() {
  // Of the holes that the page drills.
  const all = new Set(["middle finger", "ring finger", "thumb"]);
  const collect = (value) => {
    for (const [key, one] of Object.entries(value)) {
      if (one && typeof one === "object") collect(one);
      else if (["name", "note", "material", "use", "source"].includes(key)) {
        all.add(one);
        // On the buttons that put it on the bench.
        all.add(one.replace(/^No\. \d, /, ""));
      }
    }
  };
  const folder = inRepository("scenarios");
  for (const name of readdirSync(folder, { recursive: true })) {
    const text = name.includes(".") ? readFileSync(`${folder}/${name}`, "utf8") : "";
    if (name.endsWith(".json")) collect(JSON.parse(text));
    if (name.endsWith(".lesson.md")) {
      for (const [, written] of text.matchAll(/^(?:## |(?:title|course|aim) = ")(.+?)"?$/gm))
        all.add(written);
    }
  }
  return [...all].filter((name) => name.length > 2);
}

const escaped = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
const letters = (text) => (text.match(/\p{L}/gu) ?? []).length;

const LEADING = ".{0,80}?";
/** What Rust says, as patterns: it speaks English in every language that has no texts for it. */
function ofRust() {
  const { body } = new FluentParser().parse(readFileSync(inRepository("www/locales/en/said.ftl"), "utf8"));
  return body
    .filter(({ type }) => type === "Message")
    .map(({ value }) => {
      const words = value.elements.map((one) => (one.type === "TextElement" ? one.value : null));
      // Its parts may be from the Fluent files; what stands before and after it is not taken for one.
      const part = (n) => (n === 0 ? LEADING : n < words.length - 1 ? "[^]{0,200}?" : ".{0,80}");
      const pattern = words.map((word, n) =>
        word === null ? part(n) : escaped(word).replace(/\s+/g, "\\s+"),
      );
      return { pattern: pattern.join("").replace(/\\\.$/, "\\.(?!\\d)"), letters: letters(words.join("")) };
    })
    .filter((one) => one.letters > 3);
}

const RUST = ofRust();
/** The longest first, so that a note is not taken apart by what it is made of. */
const KNOWN = [
  ...houseNames().map((name) => [name.length, `(?<!\\p{L})${escaped(name)}(?!\\p{L})`]),
  ...RUST.filter((one) => one.letters > 6).map((one) => [
    one.letters,
    one.pattern.startsWith(LEADING) ? one.pattern.slice(LEADING.length) : one.pattern,
  ]),
]
  .sort(([a], [b]) => b - a)
  .map(([, pattern]) => new RegExp(pattern, "giu"));
const PHRASES = new RegExp(`^(?:${RUST.map(({ pattern }) => pattern).join("|")})$`, "u");
const UNITS =
  /(?<!\p{L})(?:in|mm|lb|kg|oz|g|g\/cc|cc|mL|µm|µin|mph|km\/h|ft|m|rpm|s|Shore D|holes)(?!\p{L})/gu;
/** Axes, shots' letters and the page's own name stand for themselves. */
const SIGNS = /(?<!\p{L})(?:Pithball|[xyzABC]|[A-Z]{2,3}:?\d*)(?!\p{L})/gu;

/** Dates are the browser's own, addresses the site's. */
const GIVEN = /\d{1,2} \p{Lu}\p{Ll}+ \d{4}|https?:\/\/\S+/gu;

/** What of a text is neither from the Fluent files nor a name, a number, a unit or what Rust says. */
function unwrapped(text) {
  let rest = text
    .replace(/\u202e[^\u202c]*\u202c/g, "\n")
    .replace(/[\u200f\u2066-\u2069\u00ad]/g, "")
    .replace(GIVEN, "\n");
  for (const known of KNOWN) rest = rest.replace(known, "\n");
  return rest
    .split(/[\n,:;()±]+/)
    .map((piece) => piece.trim().replace(/\s+/g, " ").replace(/\.$/, ""))
    .filter((piece) => !PHRASES.test(piece) && letters(piece.replace(UNITS, "").replace(SIGNS, "")) > 0)
    .join(" … ");
}

/** Of the rooms in view: how much is too wide, controls out of their room, and texts with where they stand. */
const seen = (page) =>
  page.evaluate(() => {
    const root = document.documentElement;
    const scrolls = (element) => {
      for (let at = element.parentElement; at && !at.matches(".room"); at = at.parentElement) {
        const { overflowX } = getComputedStyle(at);
        if (overflowX !== "visible" && at.scrollWidth > at.clientWidth) return true;
      }
      return false;
    };
    const outside = [];
    const texts = [];
    for (const room of document.querySelectorAll(".room")) {
      if (!room.checkVisibility()) continue;
      const { left, right } = room.getBoundingClientRect();
      for (const control of room.querySelectorAll("button, input, select, textarea, a, summary")) {
        const box = control.getBoundingClientRect();
        if (!control.checkVisibility() || box.width < 2 || control.type === "file" || scrolls(control))
          continue;
        if (box.left < left - 1 || box.right > right + 1) outside.push(`${room.id}: ${control.outerHTML}`);
      }
      const walker = document.createTreeWalker(room, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        const element = node.parentElement;
        if (element.closest(".model-note article, .model-edition, textarea, .prose, code")) continue;
        if (!element.checkVisibility() && !element.closest("option, title, desc")) continue;
        texts.push([`${room.id} ${element.closest("[class]")?.getAttribute("class")}`, node.data]);
      }
      for (const named of room.querySelectorAll("[aria-label], [title], [placeholder]")) {
        if (!named.checkVisibility()) continue;
        for (const key of ["aria-label", "title", "placeholder"])
          if (named.hasAttribute(key)) texts.push([`${room.id} ${key}`, named.getAttribute(key)]);
      }
    }
    return { dir: root.dir, tooWide: root.scrollWidth - innerWidth, outside, texts };
  });

async function look(page, name) {
  await unfold(page);
  const { dir, tooWide, outside, texts } = await seen(page);
  assert.equal(dir, "rtl");
  assert.ok(tooWide <= 0, `${name}: ${tooWide} px too wide`);
  assert.deepEqual(outside, [], name);
  await shoot(page, `right-to-left-${name}`);
  const found = texts.map(([where, text]) => [where, unwrapped(text)]).filter(([, text]) => text !== "");
  assert.deepEqual(found, [], `${name}: texts that are not from the Fluent files`);
}

for (const [size, viewport] of Object.entries({ desk: DESKTOP, phone: PHONE })) {
  test(`every room holds a language from right to left on a ${size}`, async () => {
    const context = await site.browser.newContext({ viewport, reducedMotion: "reduce" });
    await context.addInitScript(() => {
      localStorage.setItem("pithball.language", "en-XB");
      delete Navigator.prototype.serviceWorker;
    });
    const page = await context.newPage();
    const faults = [];
    page.on("pageerror", (error) => faults.push(`${error.stack ?? error}`));
    await page.goto(site.url, { waitUntil: "networkidle" });
    await page.waitForFunction(() => performance.getEntriesByName("loaded").length > 0);
    const nav = page.locator(size === "desk" ? ".bar nav button" : ".rooms-nav button");
    const count = await nav.count();
    for (let n = 0; n < count; n += 1) {
      await nav.nth(n).click();
      await look(page, `${size}-${n + 1}`);
    }
    await nav.nth(size === "desk" ? 0 : 3).click();
    await page.locator(".to-model").click();
    await page.locator(".model-note").waitFor();
    await look(page, `${size}-model`);
    await nav.last().click();
    const tabs = page.locator(".room-lessons nav button");
    for (let n = 1; n < (await tabs.count()); n += 1) {
      await tabs.nth(n).click();
      await look(page, `${size}-lessons-${n}`);
    }
    await tabs.first().click();
    await page.locator(".room-lessons button.primary").first().click();
    await page.locator(".room-lesson").waitFor();
    await look(page, `${size}-lesson`);
    assert.deepEqual(faults, []);
    await context.close();
  });
}
