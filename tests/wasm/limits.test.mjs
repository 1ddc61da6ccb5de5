// The limits that the page draws are those that physics holds a ball to.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import { Ball, initSync } from "../../www/pkg/pithball.js";
import { bundled } from "../browser/bundled.mjs";

const root = new URL("../../", import.meta.url);
initSync({ module: readFileSync(new URL("www/pkg/pithball_bg.wasm", root)) });

let limits;
before(async () => {
  limits = await bundled("limits.ts");
});

test("the page draws the limits that a ball is held to", () => {
  const file = readFileSync(new URL("scenarios/balls/no-3-three-piece.ball.json", root), "utf8");
  const { rules } = new Ball(file).check();
  const rule = (word) => rules.find(({ rule }) => rule === word);
  assert.equal(rule("weight").at_most, limits.WEIGHT_LIMIT_LB);
  assert.equal(rule("weight").at_most, limits.WEIGHT.high);
  assert.equal(rule("density").at_most, limits.DENSITY_LIMIT_G_CC);
  assert.equal(rule("diameter").at_least, limits.DIAMETER.low);
  assert.equal(rule("diameter").at_most, limits.DIAMETER.high);
  assert.equal(rule("low_rg").at_least, limits.RG.low);
  assert.equal(rule("high_rg").at_most, limits.RG.high);
  assert.equal(rule("differential").at_most, limits.DIFFERENTIAL.high);
  assert.equal(rule("static_balance").at_most, limits.STATIC_BALANCE_LIMIT_OZ);
  assert.ok(rule("low_rg").applies.text.includes(`${limits.RG_LIMITS_FROM_LB} lb`));
});
