// The parts' colours as colour-blind readers see them: G. M. Machado, M. M. Oliveira
// and L. A. F. Fernandes, "A Physiologically-based Model for Simulation of Color
// Vision Deficiency", IEEE TVCG 15(6), 2009, matrices of severity 1.0 on linear sRGB.
import assert from "node:assert/strict";
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

const { paintOf } = await bundled("palette.ts");
const PARTS = Array.from({ length: 12 }, (_, part) => paintOf(part));

for (const [who, matrix] of Object.entries(SEEN_BY)) {
  test(`parts are told apart, and their black edges stand out, as seen by ${who}`, () => {
    const colours = PARTS.map(({ colour }) => seen(colour, matrix));
    for (const [a, one] of PARTS.entries()) {
      // WCAG 2.2, 1.4.11: 3 : 1 for what is needed to understand a picture.
      const contrast = (luminance(colours[a]) + 0.05) / 0.05;
      assert.ok(contrast >= 3, `edge of part ${a}: ${contrast}`);
      for (let b = a + 1; b < PARTS.length; b += 1) {
        // Either by the hatching, or by a difference that nobody overlooks (2.3 is just noticeable).
        const colour = apart(lab(colours[a]), lab(colours[b]));
        assert.ok(one.hatch !== PARTS[b].hatch || colour > 10, `parts ${a} and ${b}: ${colour}`);
      }
    }
  });
}

test("neighbours in pouring order differ in hatching, so that no colour is needed", () => {
  for (let part = 1; part < 40; part += 1) assert.notEqual(paintOf(part - 1).hatch, paintOf(part).hatch);
});
