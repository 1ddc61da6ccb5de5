// The parts' colours, those of the cover's thickness and those of shots and phases as
// colour-blind readers see them: G. M. Machado, M. M. Oliveira
// and L. A. F. Fernandes, "A Physiologically-based Model for Simulation of Color
// Vision Deficiency", IEEE TVCG 15(6), 2009, matrices of severity 1.0 on linear sRGB.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { bundled } from "./bundled.mjs";

const SEEN_BY = {
  everybody: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** sRGB to linear light (IEC 61966-2-1). */
const linear = (channel) => (channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4);
const seen = (colour, matrix) => {
  const light = colour.map(linear);
  return matrix.map((row) =>
    Math.min(
      1,
      Math.max(
        0,
        row.reduce((sum, m, k) => sum + m * light[k], 0),
      ),
    ),
  );
};
const luminance = ([r, g, b]) => 0.2126 * r + 0.7152 * g + 0.0722 * b;

/** Linear sRGB to CIE L*a*b* under D65. */
function lab([r, g, b]) {
  const f = (t) => (t > (6 / 29) ** 3 ? Math.cbrt(t) : (t * (29 / 6) ** 2) / 3 + 4 / 29);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.95047);
  const y = f(luminance([r, g, b]));
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.08883);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
const apart = (a, b) => Math.hypot(...a.map((x, k) => x - b[k]));

const { CLASSES, paintOf } = await bundled("palette.ts", "cover/classes.ts");
const PARTS = Array.from({ length: 12 }, (_, part) => paintOf(part));

for (const [who, matrix] of Object.entries(SEEN_BY)) {
  test(`parts are told apart, and their black edges stand out, as seen by ${who}`, () => {
    const colours = PARTS.map(({ colour }) => seen(colour, matrix));
    for (const [a, one] of PARTS.entries()) {
      // WCAG 2.2, 1.4.11: 3 : 1 for what is needed to understand a picture.
      const contrast = (luminance(colours[a]) + 0.05) / 0.05;
      assert.ok(contrast >= 3, `edge of part ${a}: ${contrast}`);
      for (let b = a + 1; b < PARTS.length; b += 1) {
        // Either by the hatching, or by a difference that nobody overlooks.
        const colour = apart(lab(colours[a]), lab(colours[b]));
        assert.ok(one.hatch !== PARTS[b].hatch || colour > PLAIN, `parts ${a} and ${b}: ${colour}`);
      }
    }
  });
}

/** Just noticeable is 2.3; nobody overlooks this. */
const PLAIN = 10;

for (const [who, matrix] of Object.entries(SEEN_BY)) {
  test(`classes of cover thickness that lie side by side are told apart, as seen by ${who}`, () => {
    const colours = CLASSES.map(({ colour }) => seen(colour, matrix));
    for (let n = 1; n < colours.length; n += 1) {
      // The thicker the paler, so that the order is seen, too.
      assert.ok(luminance(colours[n]) > luminance(colours[n - 1]), `class ${n}`);
      const colour = apart(lab(colours[n - 1]), lab(colours[n]));
      assert.ok(colour > PLAIN || luminance(colours[n]) > 0.8, `classes ${n - 1} and ${n}: ${colour}`);
    }
  });
}

/** The lane's colours by name, in light and in the dark. */
const css = readFileSync(new URL("../../www/src/draw/draw.css", import.meta.url), "utf8");
const LANE = new Map(
  [...css.matchAll(/--([\w-]+): light-dark\(#(\w{6}), #(\w{6})\)/g)].map(([, name, ...both]) => [
    name,
    both.map((hex) => [0, 2, 4].map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)),
  ]),
);

for (const [who, matrix] of Object.entries(SEEN_BY)) {
  test(`paths stand out from the wood and from the thickest oil, as seen by ${who}`, () => {
    const paths = [...LANE.keys()].filter((name) => /^(skid|hook|roll|shot-\d)$/.test(name));
    assert.equal(paths.length, 7);
    for (const [ground, path] of ["wood", "oil"].flatMap((ground) => paths.map((path) => [ground, path]))) {
      for (const n of [0, 1]) {
        const both = [ground, path].map((name) => luminance(seen(LANE.get(name)[n], matrix)));
        const [low, high] = both.sort((a, b) => a - b);
        const contrast = (high + 0.05) / (low + 0.05);
        assert.ok(contrast >= 3, `${path} on ${ground}, ${n ? "dark" : "light"}: ${contrast}`);
      }
    }
  });
}

test("neighbours in pouring order differ in hatching, so that no colour is needed", () => {
  for (let part = 1; part < 40; part += 1) assert.notEqual(paintOf(part - 1).hatch, paintOf(part).hatch);
});
