// Times in headless Chromium the kernels that criterion has just timed
// natively, and prints one table. "page" is what the page itself waits for: a
// call of the module with its input checked and its result turned into
// JavaScript objects.
// Usage: node table.mjs CRITERION_FOLDER KERNELS_FOLDER
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { serveFolder } from "../../www/server.mjs";
import { startBrowser } from "../browser/harness.mjs";

const [criterion, kernels] = process.argv.slice(2).map((path) => resolve(path));
const root = fileURLToPath(new URL("../..", import.meta.url));
const scenarios = join(root, "scenarios");

const cases = [
  ...named("balls", ".ball.json").map(([name, path]) => ({
    id: `weigh/${name}`,
    ball: readFileSync(path, "utf8"),
  })),
  ...named("shots", ".shot.json").map(([name, path]) => {
    const shot = readFileSync(path, "utf8");
    const { ball, lane } = JSON.parse(shot);
    const beside = (file) => readFileSync(resolve(path, "..", file), "utf8");
    return {
      id: `roll/${name}`,
      shot,
      ball: beside(ball),
      oil: typeof lane.oil === "string" ? beside(lane.oil) : undefined,
    };
  }),
];

function named(folder, ending) {
  return readdirSync(join(scenarios, folder))
    .filter((name) => name.endsWith(ending))
    .sort()
    .map((name) => [name.slice(0, -ending.length), join(scenarios, folder, name)]);
}

/** In the page: microseconds a run of each case takes, median of five. */
async function measure(cases) {
  const start = async (folder, name) => {
    const module = await import(`./${folder}/${name}.js`);
    await module.default({ module_or_path: `./${folder}/${name}_bg.wasm` });
    return module;
  };
  const { Weighing, Rolling } = await start("kernels", "kernels");
  const { Ball } = await start("page", "pithball");
  const microseconds = (run) => {
    let times = 1;
    const once = () => {
      const from = performance.now();
      run(times);
      return performance.now() - from;
    };
    while (once() < 200) times *= 2;
    const taken = [once(), once(), once(), once(), once()].sort((a, b) => a - b);
    return (taken[2] / times) * 1000;
  };
  return cases.map(({ id, ball, shot, oil }) => {
    const kernel = shot === undefined ? new Weighing(ball) : new Rolling(ball, shot, oil);
    const ballFile = JSON.parse(ball);
    const held = new Ball(ballFile);
    const shotFile = shot && JSON.parse(shot);
    if (oil) shotFile.lane.oil = JSON.parse(oil);
    const call = shot === undefined ? () => new Ball(ballFile).weigh() : () => held.roll(shotFile);
    return {
      id,
      wasm: microseconds((times) => kernel.run(times)),
      page: microseconds((times) => {
        for (let i = 0; i < times; i += 1) call();
      }),
      error: kernel.error(),
    };
  });
}

const folder = mkdtempSync(join(tmpdir(), "pithball-bench-"));
cpSync(kernels, join(folder, "kernels"), { recursive: true });
cpSync(join(root, "www/pkg"), join(folder, "page"), { recursive: true });
cpSync(join(root, "tests/bench/blank.html"), join(folder, "index.html"));
const server = await serveFolder(folder);
const browser = await startBrowser();
let rows;
try {
  const page = await browser.newPage();
  await page.goto(server.url);
  rows = await page.evaluate(measure, cases);
} finally {
  await browser.close();
  await server.close();
  rmSync(folder, { recursive: true });
}

const digits = (number) => number.toPrecision(3).padStart(10);
console.log(
  `\n${"".padEnd(34)}${"native µs".padStart(10)}${"wasm µs".padStart(10)}${"ratio".padStart(7)}${"page µs".padStart(10)}  error bound`,
);
for (const { id, wasm, page, error } of rows) {
  const path = join(criterion, id, "new/estimates.json");
  const native = JSON.parse(readFileSync(path, "utf8")).median.point_estimate / 1000;
  const ratio = (wasm / native).toFixed(2).padStart(7);
  console.log(`${id.padEnd(34)}${digits(native)}${digits(wasm)}${ratio}${digits(page)}  ${error}`);
}
