// How numbers are read and written on the page.
import assert from "node:assert/strict";
import { before, test } from "node:test";
import { bundled } from "./bundled.mjs";

let units;
before(async () => {
  units = await bundled("units.ts", "locale/language.ts");
});

test("what is typed is taken as a number only when it is one", () => {
  const typed = (text) => units.parseField(text, "density", "trade");
  for (const [text, value] of [
    ["2", 2],
    [" 2.5 ", 2.5],
    ["2.", 2],
    [".5", 0.5],
    ["2,5", 2.5],
    ["-1", -1],
    ["\u22121", -1],
    ["+3", 3],
    ["1e-1", 0.1],
  ]) {
    assert.equal(typed(text), value, text);
  }
  for (const text of ["", "-", ".", "1.2.", "2 5", "two", "NaN", "Infinity", "1e999", "0x10", "1e"]) {
    assert.equal(typed(text), null, text);
  }
});

test("a comma before the decimals is a point in every language, in either unit", async () => {
  globalThis.document = { documentElement: {} };
  for (const language of ["en", "es"]) {
    await units.speak(language);
    for (const text of ["2,55", "2.55"]) {
      assert.equal(units.parseField(text, "size", "trade"), 2.55);
      assert.equal(units.parseField(text, "size", "metric"), 2.55 / 25.4);
    }
    assert.equal(units.fieldText(2.55, "density", "metric"), language === "es" ? "2,55" : "2.55");
  }
  await units.speak("en");
  delete globalThis.document;
});

test("a count is read with its thousands apart; two marks are no number elsewhere", () => {
  for (const text of ["10000", "10,000", "10.000", "10 000", "10\u202f000"]) {
    assert.equal(units.parseField(text, "count", "trade"), 10_000, text);
  }
  assert.equal(units.parseField("1,000,000", "count", "trade"), 1_000_000);
  assert.equal(units.parseField("1,5", "count", "trade"), 1.5);
  for (const text of ["1.234,5", "1,234.5", "2,5,5"]) {
    assert.equal(units.parseField(text, "size", "trade"), null, text);
  }
});

test("metric is exact: 1 in = 25.4 mm, 1 lb = 0.45359237 kg (by definition)", () => {
  assert.equal(units.reading(1, "size", "metric"), "25.4\u00a0mm");
  assert.equal(units.parseField("25.4", "size", "metric"), 1);
  assert.equal(units.reading(1, "weight", "metric"), "0.454\u00a0kg");
  assert.equal(units.LB_KG, 0.45359237);
  assert.equal(units.reading(1.18, "density", "metric"), units.reading(1.18, "density", "trade"));
});

test("a field shows what was kept, in either unit, and reads back as the same", () => {
  for (const value of [0, 0.05, 2.4375, -0.29, 8.595, 12]) {
    for (const system of ["trade", "metric"]) {
      const text = units.fieldText(value, "size", system);
      const back = units.parseField(text, "size", system);
      assert.ok(Math.abs(back - value) <= 5e-5, `${value} as ${text}`);
    }
  }
});

test("a change has its sign; none where it rounds to nothing; never minus zero", () => {
  assert.equal(units.change(0.0123, "rg", "trade"), "+0.012");
  assert.equal(units.change(-0.0123, "rg", "trade"), "\u22120.012");
  assert.equal(units.change(0.0004, "rg", "trade"), null);
  assert.equal(units.change(-0.0004, "rg", "trade"), null);
  assert.equal(units.number(-0.0004, "rg", "trade"), "0.000");
});

test("a change is between the numbers as they are read, in either unit", () => {
  const said = (from, to, quantity, unit) =>
    units.change(units.apart(from, to, quantity, unit), quantity, unit);
  // 2.576 and 2.570, though 0.0054 apart.
  assert.equal(said(2.5758, 2.5704, "rg", "trade"), "\u22120.006");
  assert.equal(said(0.0068, 0.0072, "rg", "trade"), null);
  assert.equal(said(13.86, 13.94, "speed", "trade"), null);
  assert.equal(said(4.84, 4.26, "angle", "trade"), "\u22120.5");
  assert.equal(said(2.5, 2.501, "rg", "metric"), "+0.03");
  assert.equal(units.apart(2.5, 2.501, "rg", "metric") * 25.4, 0.03);
});
