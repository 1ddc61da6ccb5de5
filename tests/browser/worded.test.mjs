// What Rust says, as the page says it in either language.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { bundled } from "./bundled.mjs";

let page;
before(async () => {
  globalThis.document = { documentElement: {} };
  page = await bundled("units.ts", "locale/worded.ts", "locale/language.ts");
});
after(() => {
  delete globalThis.document;
});

const phrase = (id, text, args = {}) => ({ id, text, args });
const tooDense = phrase("must-be", "The density (g/cc) must be a number above 0 and up to 2.5, not 40.", {
  subject: phrase("key-density_g_cc", "The density (g/cc)"),
  accepted: phrase("number-above-to", "a number above 0 and up to 2.5", { min: "0", max: "2.5" }),
  found: "40",
});
const tooWide = phrase("must-be", "The diameter (inches) must be a number from 4 to 12, not 12.5.", {
  subject: phrase("key-diameter_in", "The diameter (inches)"),
  accepted: phrase("number-from-to", "a number from 4 to 12", { min: "4", max: "12" }),
  found: "12.5",
});
const sticksOut = phrase("sticks-out", 'The piece "No. 2.5 in" sticks out of the ball by 0.25 in.', {
  name: '"No. 2.5 in"',
  by: "0.25",
});

test("English is Rust's own, in the reader's units", async () => {
  const { sentenceIn, speak, worded } = page;
  await speak("en");
  assert.equal(worded(tooDense), tooDense.text);
  assert.equal(sentenceIn(tooWide, "trade"), tooWide.text);
  assert.equal(
    sentenceIn(tooWide, "metric"),
    "The diameter (millimetres) must be a number from 101.6 to 304.8, not 317.5.",
  );
  assert.equal(
    sentenceIn(sticksOut, "metric"),
    'The piece "No. 2.5 in" sticks out of the ball by 6.35\u00a0mm.',
  );
});

test("a number rounded already is in another unit hardly finer than it was", async () => {
  const { roughlyIn, speak } = page;
  await speak("en");
  const inMetres = (text) => roughlyIn(text, "metric").replaceAll("\u00a0", " ");
  assert.equal(inMetres("turns 0.1 ft later"), "turns 0.03 m later");
  assert.equal(inMetres("turns 0.7 ft earlier, 0.02 lb and 3 oz"), "turns 0.21 m earlier, 0.009 kg and 85 g");
  assert.equal(
    inMetres("within 0.001 in, 12 to 13 in, 1e-4 in"),
    "within 0.0254 mm, 304.8 to 330.2 mm, 0.00254 mm",
  );
});

test("a limit in another unit is as exact as it was, and what is beyond it is not the same", async () => {
  const { sentenceIn, speak } = page;
  await speak("en");
  const inMetres = (text) => sentenceIn(text, "metric").replaceAll("\u00a0", " ");
  const tooFast = (found) =>
    inMetres(`The speed (miles per hour) must be above 0 and up to 40, not ${found}.`);
  const parsed = page.parseField("64.4", "speed", "metric");
  assert.equal(
    tooFast(parsed),
    "The speed (kilometres per hour) must be above 0 and up to 64.37376, not 64.4.",
  );
  assert.equal(page.parseField("64.37376", "speed", "metric"), 40);
  assert.equal(inMetres("drilled balls over 10 lb"), "drilled balls over 4.536 kg");
  assert.equal(inMetres("balls of 13 lb and up"), "balls of 5.897 kg and up");
  assert.equal(inMetres("26.704 to 27.002 in; 0.080 in before"), "678.28 to 685.85 mm; 2.032 mm before");
  assert.equal(inMetres("by 1e-4 in"), "by 0.00254 mm");
});

test("Spanish is put together from the parts, with its decimal comma", async () => {
  const { sentenceIn, speak, worded } = page;
  await speak("es");
  assert.equal(worded(tooDense), "La densidad (g/cc) debe ser un número mayor que 0 y hasta 2,5, no 40.");
  assert.equal(sentenceIn(tooWide, "trade"), "El diámetro (pulgadas) debe ser un número de 4 a 12, no 12,5.");
  assert.equal(
    sentenceIn(tooWide, "metric"),
    "El diámetro (milímetros) debe ser un número de 101,6 a 304,8, no 317,5.",
  );
  assert.equal(
    sentenceIn(sticksOut, "metric"),
    'La pieza "No. 2.5 in" sobresale de la bola por 6,35\u00a0mm.',
  );
  assert.equal(worded("No. 4"), "No. 4");
  assert.equal(worded(phrase("not-there", "Only English 1.5.")), "Only English 1,5.");
  const rg = phrase("figure-rg_in", "the RG");
  assert.equal(worded(phrase("capital", "The RG", { said: rg })), "El RG");
  assert.equal(worded(phrase("must-at-most", "; it must be at most ")), "; debe ser como mucho ");
});
