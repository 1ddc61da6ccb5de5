// The store's own rules, with a made-up module that counts what it hands out:
// the last good ball stays, undo, and every ball given back exactly once.
import assert from "node:assert/strict";
import { before, beforeEach, test } from "node:test";
import { bundled } from "./bundled.mjs";

let createStore;
let FIRST_VIEW;
before(async () => {
  ({ createStore, FIRST_VIEW } = await bundled("store.ts"));
});

const problem = (place) => ({
  place,
  found: "this",
  accepted: "that",
  message: `${place} is wrong.`,
});

/** Takes any ball with a positive diameter and any shot with a positive speed. */
function moduleThatCounts() {
  const alive = new Set();
  class Ball {
    constructor(file) {
      if (file.diameter_in === 666) throw new Error("unreachable");
      if (!(file.diameter_in > 0)) throw problem("diameter_in");
      this.file = file;
      alive.add(this);
    }
    weigh() {
      return { weight_lb: this.file.diameter_in };
    }
    roll(shot) {
      assert.ok(alive.has(this), "a freed ball was used");
      if (!(shot.release.speed_mph > 0)) throw problem("release.speed_mph");
      return {
        diameter_in: this.file.diameter_in,
        speed_mph: shot.release.speed_mph,
      };
    }
    section(normal, depth_in) {
      assert.ok(alive.has(this), "a freed ball was used");
      return { normal, depth_in, of: this.file.diameter_in };
    }
    free() {
      assert.ok(alive.delete(this), "freed twice");
    }
  }
  return { wasm: { Ball }, alive };
}

const doc = {
  ball: { diameter_in: 8.5, pieces: [] },
  shot: { release: { speed_mph: 17 } },
};
const diameter = (diameter_in) => (ball) => ({ ...ball, diameter_in });
const speed = (speed_mph) => (shot) => ({ ...shot, release: { speed_mph } });

let store;
let alive;
beforeEach(() => {
  const counted = moduleThatCounts();
  alive = counted.alive;
  store = createStore(counted.wasm, doc, doc, FIRST_VIEW);
});

test("one edit derives everything and gives the old ball back", () => {
  store.editBall(diameter(8.55));
  assert.equal(store.derived.value.weighed.weight_lb, 8.55);
  assert.equal(store.derived.value.before.weight_lb, 8.5);
  assert.equal(store.derived.value.roll.diameter_in, 8.55);
  assert.equal(store.section.value.of, 8.55);
  assert.equal(alive.size, 1);
});

test("a wrong ball leaves the last good one, a wrong shot the last good roll", () => {
  store.editBall(diameter(-1));
  assert.equal(store.doc.value.ball.diameter_in, -1);
  assert.equal(store.derived.value.ballProblem.place, "diameter_in");
  assert.equal(store.derived.value.weighed.weight_lb, 8.5);
  assert.equal(store.section.value.of, 8.5);

  store.editShot(speed(0));
  assert.equal(store.derived.value.shotProblem.place, "release.speed_mph");
  store.editBall(diameter(8.6));
  assert.equal(store.derived.value.ballProblem, null);
  assert.deepEqual(
    store.derived.value.roll,
    { diameter_in: 8.6, speed_mph: 17 },
    "the new ball rolls as the last good shot says",
  );
  store.editShot(speed(20));
  assert.equal(store.derived.value.shotProblem, null);
  assert.equal(store.derived.value.roll.speed_mph, 20);
  assert.equal(alive.size, 1);
});

test("a drag is one step of undo; separate edits are steps of their own", () => {
  for (const d of [8.51, 8.52, 8.53]) store.editBall(diameter(d), "diameter_in");
  store.editShot(speed(18), "speed_mph");
  store.undo();
  assert.equal(store.doc.value.shot.release.speed_mph, 17);
  assert.equal(store.doc.value.ball.diameter_in, 8.53);
  store.undo();
  assert.equal(store.doc.value.ball.diameter_in, 8.5);
  assert.equal(store.canUndo.value, false);
  store.redo();
  store.redo();
  assert.equal(store.doc.value.shot.release.speed_mph, 18);
  assert.equal(store.canRedo.value, false);
  store.undo();
  store.editBall(diameter(9));
  assert.equal(store.canRedo.value, false, "an edit forgets what was undone");
  assert.equal(alive.size, 1);
});

test("undone into a mistake, the numbers are of the last good ball before it", () => {
  for (const size of [8.2, -1, -2, 8.4]) store.editBall(diameter(size));
  const shown = () => [
    store.doc.value.ball.diameter_in,
    store.derived.value.weighed.weight_lb,
    store.derived.value.ballProblem?.place,
  ];
  store.undo();
  assert.deepEqual(shown(), [-2, 8.2, "diameter_in"]);
  store.undo();
  assert.deepEqual(shown(), [-1, 8.2, "diameter_in"]);
  store.undo();
  assert.deepEqual(shown(), [8.2, 8.2, undefined]);
  store.redo();
  assert.deepEqual(shown(), [-1, 8.2, "diameter_in"]);
  for (const mph of [16, 0]) store.editShot(speed(mph));
  store.editBall(diameter(8.3));
  store.editShot(speed(18));
  store.undo();
  assert.equal(store.derived.value.roll.speed_mph, 16);
  assert.equal(store.derived.value.weighed.weight_lb, 8.3);
  assert.equal(store.derived.value.shotProblem.place, "release.speed_mph");
  assert.equal(alive.size, 1);
});

test("what is said of a ball put on the bench goes when it is not true any more", () => {
  const said = () => store.notice.value !== null;
  store.replace({ ball: { ...doc.ball, diameter_in: 8.4 } }, "Lighter");
  assert.ok(said());
  store.undo();
  assert.ok(!said());
  store.replace({ ball: { ...doc.ball, diameter_in: 8.4 } }, "Lighter");
  store.editBall(diameter(8.3));
  assert.ok(!said());
  store.notice.value = () => "The storage is full.";
  store.undo();
  assert.ok(said());
});

test("what was kept with a mistake starts beside the last good ball", () => {
  const counted = moduleThatCounts();
  const wrong = { ...doc, ball: { diameter_in: -3, pieces: [] } };
  const again = createStore(counted.wasm, wrong, doc, FIRST_VIEW);
  assert.equal(again.doc.value.ball.diameter_in, -3);
  assert.equal(again.derived.value.ballProblem.place, "diameter_in");
  assert.equal(again.derived.value.weighed.weight_lb, 8.5);
  assert.equal(counted.alive.size, 1);
});

test("what breaks in the module itself stops the page and keeps the work", () => {
  store.editBall(diameter(666));
  assert.match(store.fault.value, /unreachable/);
  assert.equal(store.doc.value.ball.diameter_in, 666);
  store.editBall(diameter(8.5));
  assert.equal(store.doc.value.ball.diameter_in, 666, "nothing is called after that");
});
