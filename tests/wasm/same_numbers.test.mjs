// The modules that ship with the page against the native command line, to the
// last bit, on every ball and shot of scenarios/. JSON carries a double exactly
// (shortest digits that read back), and Object.is tells 0 from -0.
import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";
import {
  initSync as initMore,
  Lesson,
  lesson_problems,
  Scatter,
  Seek,
  Throws,
  Ball as WorkBall,
  why,
} from "../../www/pkg/more.js";
import { Ball, initSync, link, oil_map, unlink } from "../../www/pkg/pithball.js";

const root = fileURLToPath(new URL("../..", import.meta.url));
const target = resolve(root, process.env.CARGO_TARGET_DIR ?? "target");
initSync({ module: readFileSync(join(root, "www/pkg/pithball_bg.wasm")) });
initMore({ module: readFileSync(join(root, "www/pkg/more_bg.wasm")) });

const pithball = (...args) => execFileSync(join(target, "debug/pithball"), args, { encoding: "utf8" });
const native = (...args) => JSON.parse(pithball(...args, "--json"));

/** What the page is given, with the English of what is said as the command line has it. */
function inEnglish(document) {
  if (Array.isArray(document)) return document.map(inEnglish);
  if (document === null || typeof document !== "object") return document;
  if ("id" in document && "args" in document) return document.text;
  return Object.fromEntries(Object.entries(document).map(([key, value]) => [key, inEnglish(value)]));
}
const same = (page, expected) => assert.deepStrictEqual(inEnglish(page), expected);

const files = (folder, ending) => {
  const found = readdirSync(join(root, "scenarios", folder))
    .filter((name) => name.endsWith(ending))
    .map((name) => join(root, "scenarios", folder, name));
  assert.ok(found.length > 0, `no ${ending} in scenarios/${folder}`);
  return found;
};

const read = (path) => JSON.parse(readFileSync(path, "utf8"));

for (const path of files("balls", ".ball.json")) {
  const ball = read(path);
  test(`weigh gives the same bits: ${ball.name}`, () => {
    same(new Ball(ball).weigh(), native("weigh", path));
  });
  test(`cover gives the same bits: ${ball.name}`, () => {
    same(new Ball(ball).cover(), native("cover", path));
    same(new WorkBall(ball).cover(), native("cover", path));
  });
  test(`check and a weight line give the same bits: ${ball.name}`, () => {
    same(new Ball(ball).check(), native("check", path));
    const cover = ball.cover.name ?? "cover";
    const line = native("ladder", path, "--piece", cover, "--by", "density");
    same(new WorkBall(ball).ladder(Uint32Array.of(0), false), line);
  });
}

test("the cover of a drilled ball with cuts gives the same bits", () => {
  for (const name of [
    "09-scallops-and-channels",
    "11-pitched-deep-holes",
    "19-cuts-reach-out",
    "20-crossing-holes",
  ]) {
    const path = join(root, `tests/reference/balls/${name}.ball.json`);
    same(new Ball(read(path)).cover(), native("cover", path));
  }
});

/** A shot with its ball and its oil inside. */
function whole(path) {
  const shot = read(path);
  const inside = (part) => (typeof part === "string" ? read(resolve(path, "..", part)) : part);
  const lane = shot.lane.oil ? { ...shot.lane, oil: inside(shot.lane.oil) } : shot.lane;
  return { ...shot, ball: inside(shot.ball), lane };
}

for (const path of files("shots", ".shot.json")) {
  const shot = whole(path);
  test(`roll gives the same bits: ${shot.name ?? path}`, () => {
    same(new Ball(shot.ball).roll(shot), native("roll", path));
    same(new WorkBall(shot.ball).roll(shot), native("roll", path));
  });
  test(`a link is the same to the last character and gives back the shot: ${shot.name ?? path}`, () => {
    const made = `#${link(shot)}`;
    assert.equal(`${made}\n`, pithball("link", path));
    same(unlink(made), shot);
    same(JSON.parse(pithball("unlink", made)), shot);
  });
}

for (const path of files("layouts", ".layout.json")) {
  const { hand, layout, drilling, name } = read(path);
  const opening = read(join(root, "scenarios/shots/opening.shot.json"));
  const { ball: _, ...first } = opening;
  const shot = { ...first, hand, drilling, layout: { ...layout, start_turn_deg: 0 } };
  for (const of of files("balls", ".ball.json")) {
    test(`drill gives the same bits: ${name}, ${read(of).name}`, () => {
      const drilled = new Ball(read(of)).drilled(shot);
      same(drilled.drilling(), native("drill", of, path));
      // The ball as thrown is the ball of the file that drilling makes.
      same(new Ball(drilled.file()).weigh(), drilled.weigh());
      same(new Ball(read(of)).roll(shot), drilled.roll(shot));
    });
  }
}

test("a weight line by size gives the same bits", () => {
  const [path] = files("balls", "three-piece.ball.json");
  const line = native("ladder", path, "--piece", "inner core", "--by", "size");
  same(new WorkBall(read(path)).ladder(Uint32Array.of(2), true), line);
});

test("wear gives the same bits", () => {
  const [path] = files("shots", "house-pattern.shot.json");
  const shot = whole(path);
  same(new WorkBall(shot.ball).wear(shot, 2), native("wear", path, "--games", "2"));
});

const shots = files("shots", ".shot.json");

for (const [n, path] of shots.entries()) {
  const other = shots[(n + 1) % shots.length];
  test(`why gives the same bits: ${read(path).name} and ${read(other).name}`, () => {
    const effort = n % 2 === 1;
    const told = native("why", path, other, ...(effort ? ["--same-effort"] : []));
    same(why(whole(path), whole(other), effort, "A", "B"), told);
  });
}

for (const name of ["opening.shot.json", "house-pattern.shot.json", "left-hander.shot.json"]) {
  test(`area gives the same bits, in whatever parts it is worked out: ${name}`, () => {
    const path = shots.find((path) => path.endsWith(name));
    const throws = new Throws(whole(path));
    const parts = [];
    for (let from = 0; from < throws.count; from += 777) {
      parts.push(...throws.part(from, Math.min(from + 777, throws.count)));
    }
    same(throws.area(Float64Array.from(parts)), native("area", path));
    assert.equal(throws.area(Float64Array.of(1, 2)), null);
  });
}

for (const path of files("oil", ".oil.json")) {
  test(`an oil pattern gives the same bits: ${read(path).name}`, () => {
    same(oil_map(read(path)), native("oil", path));
  });
}

test("scatter gives the same bits, however its units are shared out", () => {
  for (const path of files("balls", ".ball.json").slice(1, 3)) {
    const ball = read(path);
    const scatter = new Scatter(ball, new Ball(ball).usual_tolerances());
    const half = Math.floor(scatter.units() / 3);
    const other = new Scatter(ball, new Ball(ball).usual_tolerances());
    const parts = [scatter.run(0, half), other.run(half, other.units())];
    const all = Float64Array.from(parts.flatMap((part) => [...part]));
    same(scatter.merge(all), native("scatter", path));
  }
});

test("levers, a map and pours give the same bits", () => {
  for (const path of files("balls", ".ball.json").filter((path) => !path.includes("no-6"))) {
    const ball = new WorkBall(read(path));
    same(ball.all_levers(), native("levers", path));
    same(ball.pour(), native("pour", path));
    const sides = ["pieces[0].density_g_cc", "pieces[0].at_in[2]"];
    const ranges = [Float64Array.of(0.8, 1.6), Float64Array.of(-0.2, 4)];
    const rows = [
      ...ball.map_rows(sides[0], ranges[0], sides[1], ranges[1], 5, 0, 2),
      ...ball.map_rows(sides[0], ranges[0], sides[1], ranges[1], 5, 2, 5),
    ];
    const map = native(
      "map",
      path,
      "--x",
      sides[0],
      "--x-from",
      "0.8",
      "--x-to",
      "1.6",
      "--y",
      sides[1],
      "--y-from",
      "-0.2",
      "--y-to",
      "4",
      "--count",
      "5",
    );
    same({ ...ball.map(sides[0], ranges[0], sides[1], ranges[1], 5), rows }, map);
    assert.ok(rows.flat().includes(null) && rows.flat().some((figures) => figures !== null));
  }
});

test("seek gives the same bits, however its starts are shared out", () => {
  const [path] = files("balls", "two-piece.ball.json");
  const [target] = files("targets", ".target.json");
  const seek = new Seek(read(path), read(target));
  const parts = [seek.run(0, 5), seek.run(5, seek.units())];
  const all = Float64Array.from(parts.flatMap((part) => [...part]));
  same(seek.merge(all), native("seek", path, target));
});

/** Every file that a lesson may name, by its path. */
const beside = Object.fromEntries(
  ["balls", "shots", "layouts", "oil"].flatMap((folder) =>
    files(folder, ".json").map((path) => [`${folder}/${path.split("/").at(-1)}`, read(path)]),
  ),
);

// Editions in another language differ in words alone; one of them stands for the rest.
for (const path of [...files("lessons", ".lesson.md"), files("lessons/es", ".lesson.md")[0]]) {
  const text = readFileSync(path, "utf8");
  const lesson = new Lesson(text, beside);
  const about = lesson.about();
  test(`a lesson worked through gives the same bits: ${about.title}`, () => {
    same(lesson_problems(text, beside), []);
    const walked = native("lessons", "walk", path);
    same(about, walked.about);
    let left = null;
    for (const [step, { start, shown, end, checked }] of walked.steps.entries()) {
      const opened = lesson.opens(step, left);
      same(opened, start);
      same(lesson.shown(step, opened, opened), shown);
      left = lesson.ends(step, opened);
      same(left, end);
      same(lesson.check(step, opened, left), checked);
    }
  });
}
