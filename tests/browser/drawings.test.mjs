// What the drawings are worked out from: the lane's published measures, names
// that do not cover each other, and rings where the module says the ball was
// touched. The pictures themselves are looked at in saw and lane tests.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import { bundled } from "./bundled.mjs";

const root = new URL("../../", import.meta.url);

let frame;
let names;
let globe;
let moments;
before(async () => {
  [frame, names, globe, moments] = await Promise.all(
    ["lane-frame.ts", "leaders.ts", "globe.tsx", "moment.ts"].map((name) => bundled(`draw/${name}`)),
  );
});

test("pins stand 12 in apart in a triangle 36 in on a side, the head pin at 60 ft", () => {
  // USBC specifications as published.
  const { PINS } = frame;
  const apart = (a, b) => Math.hypot(a.x_in - b.x_in, (a.y_ft - b.y_ft) * 12);
  assert.equal(PINS.length, 10);
  assert.deepEqual(PINS[0], { x_in: 0, y_ft: 60 });
  for (const pin of PINS) {
    const nearest = Math.min(...PINS.filter((other) => other !== pin).map((other) => apart(pin, other)));
    assert.ok(Math.abs(nearest - 12) < 1e-9);
  }
  for (const [a, b] of [
    [0, 6],
    [0, 9],
    [6, 9],
  ])
    assert.ok(Math.abs(apart(PINS[a], PINS[b]) - 36) < 1e-9);
});

test("board 20 is the middle for both hands, board 1 on the bowler's own side", () => {
  const { boardToX, ARROWS } = frame;
  assert.equal(boardToX(20, "right"), 0);
  assert.equal(boardToX(20, "left"), 0);
  assert.ok(Math.abs(boardToX(0.5, "right") - 20.75) < 1e-9);
  assert.ok(Math.abs(boardToX(0.5, "left") + 20.75) < 1e-9);
  assert.deepEqual(
    ARROWS.map(({ board, y_ft }) => [board, y_ft]),
    [5, 10, 15, 20, 25, 30, 35].map((board) => [board, 15.5 - Math.abs(board - 20) / 5]),
  );
});

test("the drawing says truly by how much the width is stretched", () => {
  for (const [width, height] of [
    [640, 150],
    [300, 180],
  ]) {
    const place = frame.place(width, height, 12.5);
    const [x0, y0] = place.at(0, 0);
    const [x1] = place.at(0, 10);
    const [, y1] = place.at(20, 0);
    assert.ok(Math.abs((y1 - y0) / 20 / ((x1 - x0) / 120) - place.stretch) < 1e-9);
    const [right, bottom] = place.at(30, 63);
    assert.ok(right < width && bottom < height);
  }
});

test("names beside a section keep their distance and stay on the sheet", () => {
  const targets = Array.from({ length: 9 }, (_, part) => ({ part, x: 200 + (part % 3) * 10, y: 100 + part }));
  for (const centre of [null, 205]) {
    const placed = names.leaders(targets, centre, 16, 280, 18);
    assert.equal(placed.length, 9);
    for (const side of ["left", "right"]) {
      const heights = placed.filter((one) => one.side === side).map((one) => one.text_y);
      for (const [i, height] of heights.entries()) {
        assert.ok(height >= 16 && height <= 280);
        if (i > 0) assert.ok(height - heights[i - 1] >= 18 - 1e-9);
      }
    }
  }
});

test("the rings on the ball run where the module says the lane touched it", async () => {
  const { default: init, Ball } = await import(new URL("www/pkg/pithball.js", root));
  await init({ module_or_path: readFileSync(new URL("www/pkg/pithball_bg.wasm", root)) });
  for (const name of ["opening", "left-hander", "two-handed"]) {
    const { ball, ...shot } = JSON.parse(
      readFileSync(new URL(`scenarios/shots/${name}.shot.json`, root), "utf8"),
    );
    const file = JSON.parse(readFileSync(new URL(`scenarios/shots/${ball}`, root), "utf8"));
    const made = new Ball(file);
    const roll = made.roll(shot);
    made.free();
    for (const sample of roll.samples) {
      const now = moments.momentAt(roll, sample.t_s);
      const [near] = globe.track({ ...roll, samples: [{ ...sample, turn: now.turn }] });
      for (const i of [0, 1, 2]) assert.ok(Math.abs(near.at[i] - sample.contact_body[i]) < 1e-6);
    }
    // Between samples the ball turns by far less than half a turn, so that the way round is known.
    const turns = roll.samples.slice(1).map((sample, i) => {
      const before = roll.samples[i];
      const angle = (Math.hypot(...sample.omega_rad_s) * (sample.t_s - before.t_s) * 180) / Math.PI;
      return angle;
    });
    assert.ok(Math.max(...turns) < 90, `${Math.max(...turns)}`);
  }
});
