// What is done beside the page: the pool's own rules with made-up workers, and
// the weight line as the first job that uses it.
import assert from "node:assert/strict";
import { after, before, beforeEach, test } from "node:test";
import { bundled } from "./bundled.mjs";
import { DESKTOP, launch } from "./harness.mjs";

let startJobs;
let site;
before(async () => {
  ({ startJobs } = await bundled("jobs.ts"));
  site = await launch();
});
after(() => site?.close());

/** A module with nothing in it. */
const emptyModule = () => new WebAssembly.Module(Uint8Array.of(0, 97, 115, 109, 1, 0, 0, 0));

/** Every worker started, each with the tasks it was handed; answers only when told. */
let started;
class MadeUpWorker {
  constructor() {
    this.tasks = [];
    this.ended = false;
    this.heard = {};
    started.push(this);
  }
  addEventListener(name, listener) {
    this.heard[name] = listener;
  }
  postMessage(message) {
    if ("module" in message) this.module = message.module;
    else this.tasks.push(message);
  }
  terminate() {
    this.ended = true;
  }
  answer(answer) {
    this.heard.message({ data: { id: this.tasks.at(-1).id, ...answer } });
  }
}

beforeEach(() => {
  started = [];
  globalThis.Worker = MadeUpWorker;
});

const settled = (promise) =>
  Promise.race([
    promise.then(
      (value) => ({ value }),
      (error) => ({ error }),
    ),
    new Promise((resolve) => setTimeout(() => resolve("open"), 20)),
  ]);

test("two workers, each given the module and one task at a time, in the order asked", async () => {
  const module = emptyModule();
  const jobs = startJobs(module);
  assert.equal(started.length, 2);
  assert.ok(started.every((worker) => worker.module === module));
  const runs = ["first", "second", "third"].map((asked) => jobs.run("ladder", asked));
  assert.deepEqual(
    started.map(({ tasks }) => tasks.map(({ asked }) => asked)),
    [["first"], ["second"]],
  );
  started[1].answer({ done: 2 });
  assert.equal(await runs[1], 2);
  assert.equal(started[1].tasks.at(-1).asked, "third");
  started[1].answer({ done: 3 });
  started[0].answer({ done: 1 });
  assert.deepEqual(await Promise.all(runs), [1, 2, 3]);
});

test("a problem arrives as it is, and what broke starts the worker anew", async () => {
  const jobs = startJobs(emptyModule());
  const problem = { place: "pieces[0]", found: "this", accepted: "that", message: "Wrong." };
  const wrong = jobs.run("ladder", "wrong");
  started[0].answer({ problem });
  assert.deepEqual(await settled(wrong), { error: problem });
  assert.equal(started.length, 2);
  const broken = jobs.run("ladder", "broken");
  started[0].answer({ broke: "RuntimeError: unreachable" });
  assert.match(String((await settled(broken)).error), /unreachable/);
  assert.ok(started[0].ended);
  assert.equal(started.length, 3);
  const next = jobs.run("ladder", "next");
  started[2].answer({ done: "well" });
  assert.equal(await next, "well");
});

test("stopping ends the worker at work, lets what waits go, and the next task runs", async () => {
  const jobs = startJobs(emptyModule());
  const stop = new AbortController();
  const runs = [1, 2, 3].map((asked) => jobs.run("ladder", asked, stop.signal));
  const other = jobs.run("ladder", "other");
  stop.abort();
  for (const run of runs) assert.equal((await settled(run)).error, stop.signal.reason);
  assert.deepEqual(
    started.map(({ ended }) => ended),
    [true, true, false, false],
  );
  const asked = started.flatMap(({ ended, tasks }) => (ended ? [] : tasks.map(({ asked }) => asked)));
  assert.deepEqual(asked, ["other"]);
  started.find(({ ended, tasks }) => !ended && tasks.length > 0).answer({ done: "well" });
  assert.equal(await other, "well");
  assert.equal((await settled(jobs.run("ladder", 4, stop.signal))).error, stop.signal.reason);
});

test("many tasks say how far they are, and one that fails stops the rest", async () => {
  const jobs = startJobs(emptyModule());
  const shares = [];
  const all = jobs.all("ladder", [1, 2, 3, 4], { progress: (share) => shares.push(share) });
  for (const at of [0, 0, 1, 0]) {
    started[at].answer({ done: started[at].tasks.at(-1).asked * 10 });
    await settled(all);
  }
  assert.deepEqual(await all, [10, 20, 30, 40]);
  assert.deepEqual(shares, [0.25, 0.5, 0.75, 1]);
  const failing = jobs.all("ladder", [1, 2, 3, 4]);
  started[0].answer({ problem: "no" });
  assert.deepEqual(await settled(failing), { error: "no" });
  await settled(jobs.run("ladder", "quiet"));
  assert.equal(started[1].ended, true);
  const asked = started.flatMap(({ ended, tasks }) => (ended ? [] : tasks.map(({ asked }) => asked)));
  assert.ok(!asked.includes(4));
});

test("a worker that never starts says so", async () => {
  const jobs = startJobs(emptyModule());
  const run = jobs.run("ladder", 1);
  started[0].heard.error({ preventDefault() {}, message: "refused" });
  assert.match(String((await settled(run)).error), /refused/);
  const next = jobs.run("ladder", 2);
  const [, , third] = started;
  third.answer({ done: "well" });
  assert.equal(await next, "well");
});

test("workers that the browser refuses say so to each who asks, and start once it lets them", async () => {
  const refusal = class {
    constructor() {
      throw new RangeError("no memory");
    }
  };
  globalThis.Worker = refusal;
  const jobs = startJobs(emptyModule());
  for (const run of [jobs.run("ladder", 1), jobs.run("ladder", 2), jobs.all("ladder", [3, 4, 5])]) {
    assert.match(String((await settled(run)).error), /RangeError: no memory/);
  }
  globalThis.Worker = MadeUpWorker;
  const next = jobs.run("ladder", 6);
  started[0].answer({ done: "well" });
  assert.equal(await next, "well");
});

test("the weight line is worked out beside the page, with the network gone; only the last choice shows", async () => {
  const { page, context, check } = await site.open({ viewport: DESKTOP, reducedMotion: "reduce" });
  await context.setOffline(true);
  assert.equal(page.workers().length, 2);
  const line = page.locator(".weight-line");
  await line.locator("summary").first().click();
  const what = line.getByLabel("What changes");
  await line.locator("table").first().waitFor();
  for (const part of ["1", "0", "2"]) {
    await what.selectOption(part);
    await page.waitForTimeout(part === "2" ? 0 : 260);
  }
  const name = await what.locator("option:checked").textContent();
  await line.locator("thead th", { hasText: name }).first().waitFor();
  assert.equal(page.workers().length, 2);
  await check();
  await context.close();
});
