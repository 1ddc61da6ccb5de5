// What the page relies on beyond the numbers: files as text or object, every
// mistake thrown as a Problem, parts by number, sections as drawings.
import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import { test } from "node:test";
import { initSync as initMore, Throws, Ball as WorkBall, why } from "../../www/pkg/more.js";
import {
  Ball,
  friction_curve,
  initSync,
  link,
  oil_map,
  read_oil,
  read_shelf,
  read_shot,
  same_effort_revs_rpm,
  unlink,
} from "../../www/pkg/pithball.js";

const root = new URL("../../", import.meta.url);
initSync({ module: readFileSync(new URL("www/pkg/pithball_bg.wasm", root)) });
initMore({ module: readFileSync(new URL("www/pkg/more_bg.wasm", root)) });

const text = (path) => readFileSync(new URL(`scenarios/${path}`, root), "utf8");
const nested = text("balls/no-4-nested-core.ball.json");
const opening = text("shots/opening.shot.json");
const balls = readdirSync(new URL("scenarios/balls", root));

const thrown = (call) => {
  try {
    call();
  } catch (problem) {
    return problem;
  }
  assert.fail("nothing is thrown");
};

const check = (call, place, found) => {
  const problem = thrown(call);
  assert.deepEqual(Object.keys(problem).sort(), ["accepted", "found", "message", "place"]);
  assert.equal(problem.place, place);
  const said = [problem.found, problem.accepted, problem.message];
  const english = said.map((phrase) => phrase.text ?? phrase);
  assert.equal(english[0], found);
  for (const part of [problem.place, ...english]) assert.equal(typeof part, "string");
  assert.notEqual(english[1], "");
  assert.match(english[2], /^[A-Z].*\.$/);
  assert.ok(problem.message.id !== "" && problem.message.args, "the page can say it in another language");
};

test("a ball is read from text and from an object alike", () => {
  assert.deepEqual(new Ball(nested).weigh(), new Ball(JSON.parse(nested)).weigh());
});

test("a shot that is read is handed back as it was", () => {
  assert.deepEqual(read_shot(opening), JSON.parse(opening));
  const whole = { ...JSON.parse(opening), ball: JSON.parse(nested) };
  assert.deepEqual(read_shot(whole), whole);
});

test("a shelf is handed back entry by entry, with what is wrong in the others", () => {
  const shot = { ...JSON.parse(opening), ball: JSON.parse(nested) };
  const whole = { name: "first", note: "kept", saved_at: "2026-03-01T18:30:00.000Z", shot };
  const spoiled = { name: "spoiled", shot: { ...shot, hand: "both" } };
  const shelf = { format: "pithball.shelf/1", entries: [whole, spoiled, { name: "last", shot }] };
  const { entries, broken } = read_shelf(JSON.stringify(shelf));
  assert.deepEqual(entries, [whole, { name: "last", shot }]);
  assert.equal(broken.length, 1);
  assert.equal(broken[0].name, "spoiled");
  assert.equal(broken[0].problem.place, "entries[1].shot.hand");
  check(() => read_shelf("{}"), "format", "nothing");
});

test("mistakes in a ball are thrown as problems", () => {
  const ball = (change) => {
    const file = JSON.parse(nested);
    change(file);
    return () => new Ball(file);
  };
  check(
    ball((file) => (file.pieces[1].density_g_cc = -1)),
    "pieces[1].density_g_cc",
    "-1",
  );
  check(
    ball((file) => (file.pieces[1].cuts[0].shape.kind = "moat")),
    "pieces[1].cuts[0].shape.kind",
    '"moat"',
  );
  check(
    ball((file) => (file.pieces[0].shape.diameter_in = 8.6)),
    "pieces[0]",
    "it reaches 4.3 in from the ball's centre",
  );
  check(
    ball((file) => (file.diameter_in = Number.NaN)),
    "diameter_in",
    "null",
  );
  check(() => new Ball("{"), "", "it ends too early (line 1, column 1)");
  check(() => new Ball(undefined), "", "it is empty");
  check(() => new Ball(7), "", "7");
});

test("mistakes in a shot are thrown as problems", () => {
  const ball = new Ball(nested);
  const shot = (change) => {
    const file = JSON.parse(opening);
    change(file);
    return file;
  };
  const fast = shot((file) => (file.release.speed_mph = 41));
  check(() => ball.roll(fast), "release.speed_mph", "41");
  check(() => read_shot(fast), "release.speed_mph", "41");
  check(() => ball.roll(shot((file) => (file.lane.zones[1].from_ft = 41))), "lane.zones[1].from_ft", "41");
  check(() => ball.roll(shot((file) => (file.layout.pin_to_pap_in = 13.5))), "layout.pin_to_pap_in", "13.5");
  check(() => ball.section([0, 0, 0], 0), "plane", "[0.0, 0.0, 0.0] at 0");
});

test("oil is read from text and object, laid out, and its mistakes are thrown as problems", () => {
  const file = text("oil/house.oil.json");
  const oil = JSON.parse(file);
  assert.deepEqual(read_oil(file), oil);
  assert.deepEqual(read_oil(oil), oil);
  const map = oil_map(oil);
  assert.equal(map.length_ft, 40);
  assert.ok(Math.abs(map.volume_ml - 24) < 1e-9);
  assert.ok(Math.abs(map.ratio - 10) < 1e-9);
  for (const rows of [map.cells_um, map.film_um]) {
    assert.equal(rows.length, 63);
    for (const row of rows) assert.equal(row.length, 39);
  }
  assert.equal(map.thickest_um, Math.max(...map.film_um.flat()));
  // The same as a map: the same film.
  const { pattern: _, ...rest } = oil;
  const laid = oil_map({ ...rest, film_um: map.cells_um });
  laid.film_um.forEach((row, i) => {
    row.forEach((film, j) => {
      assert.ok(Math.abs(film - map.film_um[i][j]) < 1e-9);
    });
  });
  const wrong = { ...oil, pattern: { ...oil.pattern, front_ft: 39 } };
  check(() => read_oil(wrong), "pattern.buff_ft", "3");
  check(() => oil_map({ ...rest, film_um: [[1]] }), "film_um[0]", "a list of 1");
  const shot = { ...JSON.parse(opening), lane: { oil: wrong } };
  check(() => new Ball(nested).roll(shot), "lane.oil.pattern.buff_ft", "3");
});

test("the friction curve falls from dry to oily and follows the cover", () => {
  const cover = { density_g_cc: 1.2 };
  const curve = friction_curve(cover, null);
  // As usually quoted: 0.20 on dry boards, 0.04 in oil.
  assert.equal(curve.points[0].mu, 0.2);
  assert.equal(curve.mu_oil, 0.04);
  curve.points.slice(1).forEach((point, i) => {
    assert.ok(point.mu < curve.points[i].mu && point.film_um > curve.points[i].film_um);
  });
  const smooth = friction_curve(
    { ...cover, family: "polyester", finish: { grit: 4000, polished: true } },
    {},
  );
  smooth.points.forEach((point, i) => {
    assert.ok(point.mu < curve.points[i].mu);
  });
  check(() => friction_curve(cover, { mu_oil: 0.3 }), "friction.mu_oil", "0.3");
  check(() => friction_curve({ ...cover, family: "glass" }), "cover.family", '"glass"');
});

test("the ball a shot names is not looked at when another is rolled", () => {
  const ball = new Ball(nested);
  const { ball: _, ...without } = JSON.parse(opening);
  assert.deepEqual(ball.roll(without), ball.roll(JSON.parse(opening)));
});

test("parts go by number from the cover inwards", () => {
  const ball = new Ball(nested);
  assert.equal(ball.part_at([0, 0, 0]), 3);
  assert.equal(ball.part_at([1.5, 0, 0]), 2);
  assert.equal(ball.part_at([3, 0, 0]), 1);
  assert.equal(ball.part_at([4, 0, 0]), 0);
  assert.equal(ball.part_at([5, 0, 0]), -1);
  assert.equal(ball.part_at([0, 0, Number.NaN]), -1);
});

test("a map of the cover goes row by row from the pin down", () => {
  const file = JSON.parse(nested);
  file.holes = [{ entry: [0, 0, 1], diameter_in: 2, depth_in: 1.2 }];
  const map = new WorkBall(file).cover_map(18, 36);
  assert.equal(map.length, 18 * 36 * 2);
  const [thickness, to_hole] = [0, 1].map((which) => map.filter((_, n) => n % 2 === which));
  // 8.57 in across over an outer core of 7.1 in, under the hole too.
  assert.ok(thickness.every((inches) => Math.abs(inches - 0.735) < 1e-9));
  // Half a row from the pin: 1 in less R sin 5° within the wall. The hole is open over two rows and more.
  const first = (8.57 / 2) * Math.sin((5 * Math.PI) / 180) - 1;
  assert.ok(to_hole.slice(0, 36).every((inches) => Math.abs(inches - first) < 1e-9));
  assert.ok(to_hole.slice(36).every((inches) => inches > 0));
  assert.ok(Number.isNaN(new Ball(file).cover_along([0, 0, 1])));
  const plain = new WorkBall({ ...file, pieces: [], holes: [] }).cover_map(3, 4);
  assert.ok(plain.every((inches, n) => inches === (n % 2 ? Number.POSITIVE_INFINITY : 8.57 / 2)));
});

test("a cut through the centre shows the cover's thickness where it is narrowest", () => {
  const { narrowest } = new Ball(nested).section([1, 0, 0], 0);
  assert.ok(Math.abs(narrowest.thickness_in - 0.735) < 0.002);
  assert.ok(Math.abs(Math.hypot(...narrowest.surface_in) - 8.57 / 2) < 1e-9);
  assert.equal(new Ball(nested).section([1, 0, 0], 4).narrowest, null);
});

for (const name of balls) {
  test(`the regions of a section fill the disc: ${name}`, () => {
    const file = JSON.parse(text(`balls/${name}`));
    const ball = new Ball(file);
    for (const [normal, depth_in] of [
      [[1, 0, 0], 0],
      [[0, 0, 1], 1],
      [[1, 2, -2], -0.5],
    ]) {
      const section = ball.section(normal, depth_in);
      const area = section.regions.reduce((sum, region) => sum + region.area_in2, 0);
      const disc = Math.PI * ((file.diameter_in / 2) ** 2 - depth_in ** 2);
      assert.ok(Math.abs(area / disc - 1) < 1e-3, `${area} of ${disc}`);
      for (const { part, path, label_at } of section.regions) {
        assert.match(path, /^(M-?[\d.]+ -?[\d.]+(L-?[\d.]+ -?[\d.]+)+Z)+$/);
        const at = [0, 1, 2].map(
          (i) => section.normal[i] * depth_in + section.u[i] * label_at[0] + section.v[i] * label_at[1],
        );
        assert.equal(ball.part_at(at), part);
      }
    }
  });
}

test("mistakes in a link are thrown as problems", () => {
  const whole = { ...JSON.parse(opening), ball: JSON.parse(nested) };
  const made = link(whole);
  assert.deepEqual(unlink(`https://example.org/#${made}`), whole);
  check(() => unlink("p2.AAAA"), "", "edition 2");
  check(() => unlink(made.slice(0, 15)), "", "15 characters");
  check(() => link(opening), "ball", '"../balls/no-3-three-piece.ball.json"');
  check(() => link({ ...whole, note: "x".repeat(1001) }), "note", "1001 characters");
});

test("a drilled ball: cover without inserts, drilled afresh from what it was, undrilled by a shot without a grip", () => {
  const drilledShot = JSON.parse(text("shots/drilled.shot.json"));
  const base = new Ball(text("balls/no-3-three-piece.ball.json"));
  const drilled = base.drilled(drilledShot);
  assert.equal(base.drilling(), null);
  assert.equal(drilled.file().holes.length, 3);
  // Inserts reach the surface and are no core; under straight cover nothing changes.
  const cover = drilled.cover();
  assert.deepEqual(cover.thinnest, base.cover().thinnest);
  assert.deepEqual([cover.as_thin_share, cover.under_usual_share], [1, 0]);
  assert.ok(Math.abs(cover.mean_in - cover.thinnest.thickness_in) < 1e-12);
  assert.equal(cover.holes.length, 3);
  // The same from the drilled ball's file alone, and on a cut through an insert.
  assert.deepEqual(new Ball(drilled.file()).cover(), cover);
  const { entry } = drilled.file().holes[0];
  const { narrowest } = drilled.section([entry[1], -entry[0], 0], 0);
  assert.ok(Math.abs(narrowest.thickness_in - cover.thinnest.thickness_in) < 2e-3);
  const other = { ...drilledShot, layout: { ...drilledShot.layout, pin_to_pap_in: 3 } };
  assert.deepEqual(drilled.drilled(other).weigh(), base.drilled(other).weigh());
  assert.deepEqual(drilled.roll(other), base.roll(other));
  const { drilling: _, ...plain } = drilledShot;
  assert.deepEqual(drilled.drilled(plain).weigh(), base.weigh());
  assert.deepEqual(drilled.roll(plain), base.roll(plain));
  const rule = (ball) => ball.check().rules.find(({ rule }) => rule === "static_balance");
  assert.equal(rule(base).verdict, "not_applicable");
  const { top_oz, finger_oz, side_oz } = drilled.drilling().statics;
  assert.equal(rule(drilled).found, Math.max(...[top_oz, finger_oz, side_oz].map(Math.abs)));
  const wrong = structuredClone(drilledShot);
  wrong.drilling.thumb.ring_span_in = 1;
  check(
    () => base.drilled(wrong),
    "drilling.thumb.middle_span_in",
    "spans that differ by more than the fingers are apart",
  );
  check(
    () => base.roll(wrong),
    "drilling.thumb.middle_span_in",
    "spans that differ by more than the fingers are apart",
  );
});

test("shots that are compared or thrown again have their ball inside, and a mistake says in which", () => {
  const whole = { ...JSON.parse(opening), ball: JSON.parse(nested) };
  const fast = { ...whole, release: { ...whole.release, speed_mph: 41 } };
  const path = '"../balls/no-3-three-piece.ball.json"';
  check(() => why(opening, whole, false, "A", "B"), "ball", path);
  check(() => why(fast, whole, false, "A", "B"), "release.speed_mph", "41");
  check(() => new Throws(opening), "ball", path);
  check(() => new Throws(fast), "release.speed_mph", "41");
  const off = { ...whole, layout: { ...whole.layout, pin_to_pap_in: 13.5 } };
  check(() => why(whole, off, false, "A", "B"), "b.layout.pin_to_pap_in", "13.5");
  check(() => why(off, whole, false, "A", "B"), "a.layout.pin_to_pap_in", "13.5");
  check(() => new Throws(off), "layout.pin_to_pap_in", "13.5");
});

test("a shot thrown by the same hand has its own revs; the sentence calls the shots as asked", () => {
  const whole = { ...JSON.parse(opening), ball: JSON.parse(nested) };
  const simple = { ...whole, ball: JSON.parse(text("balls/no-1-simple.ball.json")) };
  assert.equal(same_effort_revs_rpm(whole, whole), whole.release.revs_rpm);
  const told = why(whole, simple, true, "this", "that");
  assert.equal(told.b.revs_rpm, same_effort_revs_rpm(whole, simple));
  assert.ok(told.b.revs_rpm < whole.release.revs_rpm, "a higher RG leaves with fewer revs");
  assert.match(told.sentence.text, /^that, against this, /);
});
