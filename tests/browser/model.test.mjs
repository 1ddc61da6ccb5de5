// The model note: one click from the Lane, the same text as in the repository,
// readable, printable, and back; in Spanish with the same numbers.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { accessibilityFaults, launch, NARROW } from "./harness.mjs";

let site;
before(async () => {
  site = await launch();
});
after(() => site?.close());

const read = (name) => readFileSync(new URL(`../../docs/${name}.md`, import.meta.url), "utf8");
const NAMES = ["model", "coach-rules"];
const note = NAMES.map(read).join("\n");
const spanish = NAMES.map((name) => read(`${name}.es`)).join("\n");

/** Numbers of a text in their order; a program works out the English ones (`model_note.rs`, `coach_rules.rs`). */
const numbers = (text) => [...text.matchAll(/\u2212?\d+(?:[.,]\d+)?/g)].map(([found]) => found);
const count = (text, what) => text.match(what).length;

test("the Spanish edition has the numbers of the English one, each in its place, written with a comma", () => {
  const decimals = numbers(spanish).filter((number) => /[.,]/.test(number));
  assert.ok(decimals.length > 50 && decimals.every((number) => number.includes(",")), `${decimals}`);
  assert.deepEqual(
    numbers(spanish).map((number) => number.replace(",", ".")),
    numbers(note),
  );
  for (const what of [/^#+ /gm, /^\|/gm, /^- /gm]) assert.equal(count(spanish, what), count(note, what));
});

test("the notes are the files' text, reached from the Lane and left again", async () => {
  const { page, context, check } = await site.open({ viewport: NARROW });
  await page.getByRole("button", { name: "Lane", exact: true }).click();
  await page.getByRole("button", { name: "What this model leaves out" }).click();
  const article = page.getByRole("article");
  for (const [, heading] of note.matchAll(/^#+ (.*)$/gm))
    assert.equal(await article.getByRole("heading", { name: heading, exact: true }).count(), 1, heading);
  const rows = note.match(/^\| (?!---)/gm).length;
  assert.equal(await article.locator("tr").count(), rows);
  assert.deepEqual(await accessibilityFaults(page), []);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  assert.ok(wide <= 0, `${wide} px too wide`);
  assert.equal(await page.evaluate(() => document.activeElement.textContent), "Back to the lane");
  await page.keyboard.press("Enter");
  await page.getByRole("region", { name: "Lane" }).locator(".lane-says").waitFor();
  await check();
  await context.close();
});

test("where the page speaks Spanish, so does the note", async () => {
  const { page, context, check } = await site.open({ viewport: NARROW, locale: "es" });
  await page.locator(".rooms-nav").getByRole("button", { name: "Pista", exact: true }).click();
  await page.getByRole("button", { name: "Lo que este modelo deja fuera" }).click();
  const article = page.getByRole("article");
  for (const [, heading] of spanish.matchAll(/^#+ (.*)$/gm))
    assert.equal(await article.getByRole("heading", { name: heading, exact: true }).count(), 1, heading);
  assert.deepEqual(await accessibilityFaults(page), []);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  assert.ok(wide <= 0, `${wide} px too wide`);
  await page.getByRole("button", { name: "Volver a la pista" }).press("Enter");
  await page.getByRole("region", { name: "Pista" }).locator(".lane-says").waitFor();
  await check();
  await context.close();
});

test("printed, the note stands alone", async () => {
  const { page, context, check } = await site.open();
  await page.getByRole("button", { name: "What this model leaves out" }).click();
  await page.emulateMedia({ media: "print" });
  for (const article of await page.getByRole("article").all()) assert.ok(await article.isVisible());
  for (const other of [".bar", ".model-actions"])
    assert.equal(await page.locator(other).isVisible(), false, other);
  const pdf = (await page.pdf({ format: "A4" })).toString("latin1");
  const pages = pdf.match(/\/Type \/Page\b/g).length;
  assert.ok(pages >= 3 && pages <= 7, `${pages} pages`);
  await check();
  await context.close();
});
