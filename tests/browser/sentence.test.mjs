// The sentence under the Lane's title, from made-up summaries: every case a
// shot can end in. What real shots give is read off the page in lane.test.mjs.
// And what the sheet and a worn lane say of such a shot: as its numbers are shown.
import assert from "node:assert/strict";
import { before, test } from "node:test";
import { bundled } from "./bundled.mjs";

let page;
before(async () => {
  page = await bundled(
    "rooms/lane/sentence.ts",
    "rooms/sheet/words.ts",
    "rooms/lane/oil/wear-words.ts",
    "maker/scatter/half.ts",
  );
});

function shot(summary, { x_in = 0, y_ft = 60 } = {}) {
  return {
    summary: {
      entry_angle_deg: 4.6,
      board_at_pins: 17.2,
      hook_start_ft: 38,
      roll_start_ft: 51,
      gutter: false,
      end_ft: y_ft,
      ...summary,
    },
    samples: [
      { x_in: 0, y_ft: 0 },
      { x_in, y_ft },
    ],
  };
}

function check(name, roll, expected, hand = "right", units = "trade") {
  test(`the sentence for ${name}`, () => {
    assert.equal(page.whatHappened(roll, hand, units).replaceAll("\u00a0", " "), expected);
  });
}

const gone = { entry_angle_deg: null, board_at_pins: null };

check(
  "all three phases",
  shot({}),
  "Skids 38 ft, hooks for 13 ft, rolls the last 9 ft; enters at 4.6° on board 17.2.",
);
check(
  "lengths that only add up when rounded together",
  shot({ hook_start_ft: 38.4, roll_start_ft: 51.4 }),
  "Skids 38 ft, hooks for 13 ft, rolls the last 9 ft; enters at 4.6° on board 17.2.",
);
check(
  "a metric reader",
  shot({}),
  "Skids 11.6 m, hooks for 3.9 m, rolls the last 2.8 m; enters at 4.6° on board 17.2.",
  "right",
  "metric",
);
check(
  "a left-hander",
  shot({}),
  "Skids 38 ft, hooks for 13 ft, rolls the last 9 ft; enters at 4.6° on board 17.2, counted from the left.",
  "left",
);
check(
  "a ball that never rolls",
  shot({ roll_start_ft: null }),
  "Skids 38 ft and hooks for 22 ft, still slipping at the pins; enters at 4.6° on board 17.2.",
);
check(
  "a lane without friction",
  shot({
    hook_start_ft: null,
    roll_start_ft: null,
    entry_angle_deg: 0,
    board_at_pins: 20,
  }),
  "Skids all the way and never comes to roll; comes in straight, on board 20.0.",
);
check(
  "a straight ball that comes to roll",
  shot({
    hook_start_ft: null,
    roll_start_ft: 50,
    entry_angle_deg: 0.1,
    board_at_pins: 20,
  }),
  "Skids 50 ft and rolls the last 10 ft; comes in straight, on board 20.0.",
);
check(
  "a ball let go rolling",
  shot({
    hook_start_ft: null,
    roll_start_ft: 0,
    entry_angle_deg: -1.5,
    board_at_pins: 9,
  }),
  "Rolls all the way without slipping; comes in at 1.5° away from the pocket side, on board 9.0.",
);
check(
  "a hook from the release",
  shot({ hook_start_ft: 0, roll_start_ft: 33.6 }),
  "Hooks for 34 ft and rolls the last 26 ft; enters at 4.6° on board 17.2.",
);
check(
  "a gutter ball",
  shot({ ...gone, roll_start_ft: null, gutter: true, hook_start_ft: 40 }, { x_in: -20.75, y_ft: 57.3 }),
  "Skids 40 ft and hooks for 17 ft, then drops into the left gutter 57.3 ft down the lane.",
);
check(
  "a gutter ball before the hook",
  shot({ ...gone, roll_start_ft: null, hook_start_ft: null, gutter: true }, { x_in: 20.75, y_ft: 31 }),
  "Skids 31 ft, then drops into the right gutter 31.0 ft down the lane.",
);
check(
  "a ball with so much backspin that it comes back",
  {
    ...shot({ ...gone, hook_start_ft: null, roll_start_ft: null, end_ft: 0 }),
    samples: [{ y_ft: 0 }, { y_ft: 12.34 }, { y_ft: 0 }],
  },
  "Skids 12 ft, and never reaches the pins: it comes no further than 12.3 ft.",
);

test("what the sheet says of the pocket fits the numbers as they are shown", () => {
  const told = (summary) =>
    page.whyThis({ roll: shot({ flare_in: null, ...summary }) }, null, "", "trade")[0];
  assert.match(told({ board_at_pins: 18.54, entry_angle_deg: 6.04 }), /This shot comes in there\.$/);
  assert.match(told({ board_at_pins: 16.96, entry_angle_deg: 3.96 }), /This shot comes in there\.$/);
  assert.match(told({ board_at_pins: 18.56 }), /comes in 0\.1 boards past it\.$/);
  assert.match(
    told({ board_at_pins: 15.96, entry_angle_deg: 3.94 }),
    /1\.0 board short of it and 0\.1° flatter\.$/,
  );
});

test("the sheet calls flare what the Lane calls it, and says from where hook is counted", () => {
  const [, flares] = page.whyThis({ roll: shot({ flare_in: 6.274 }) }, null, "", "trade");
  assert.equal(flares, "Its flare is 6.27\u00a0in, so fresh cover meets the lane.");
  const of = (flare_in) => ({
    roll: shot({ flare_in }),
    weighed: { rg_in: { low: 2.5 }, differential_in: 0.04 },
    drilled: null,
  });
  assert.equal(
    page.whyEither(of(6.274), of(5), "", "trade").at(-1),
    "The flare of A is 6.27, that of B 5.00\u00a0in.",
  );
  const because = (hook_boards) =>
    page.becauseWords({ whole: { hook_boards }, sentence: "It comes in otherwise." }, "trade");
  assert.equal(because(1.4), "It comes in otherwise. Hook is counted from the breakpoint to the pins.");
  assert.equal(because(0.04), "It comes in otherwise.");
});

test("what games did is said by the numbers as they are shown", () => {
  const at = (board_at_pins, entry_angle_deg) => ({
    board_at_pins,
    entry_angle_deg,
    breakpoint: { distance_ft: 42 },
  });
  const told = (a, b) => page.whatChanged(a, b, { games: 3, further: "no" }, "right", "trade");
  assert.equal(
    told(at(17.2, 4.451), at(17.2, 4.549)),
    "After 3 games the same shot arrives on the same board, at the same angle.",
  );
  assert.equal(
    told(at(17.24, 4.449), at(17.26, 4.451)),
    "After 3 games the same shot arrives 0.1 boards further left, on board 17.3, at 4.5° instead of 4.4°.",
  );
});

test("games on a worn lane are counted on from those before", () => {
  const fresh = { name: "House" };
  const worn = page.wornOf(fresh, 6);
  assert.equal(worn.name, "House after 6 games");
  assert.equal(page.wornOf(worn, 1).name, "House after 7 games");
  assert.deepEqual(page.gamesFrom({ oil: worn }, 2), { games: 2, further: "yes" });
  assert.deepEqual(page.gamesFrom({ oil: fresh }, 2), { games: 2, further: "no" });
  assert.equal(page.gamesOn({ oil: { name: "League 40" } }), 0);
});

test("what the histogram says where the balls do not differ as they are read", () => {
  const told = (least, [p1, p25, p75, p99], most) =>
    page.halfSays(
      {
        least,
        most,
        quantiles: [
          { percent: 1, at: p1 },
          { percent: 25, at: p25 },
          { percent: 75, at: p75 },
          { percent: 99, at: p99 },
        ],
      },
      (value) => `${value.toFixed(4)} in`,
    );
  assert.equal(told(0, [0, 0, 0.00001, 0.00002], 0.00003), "All balls are alike: 0.0000 in.");
  assert.equal(told(0, [0, 0, 0, 0], 0.001), "98 of 100 balls are alike: 0.0000 in.");
  assert.equal(
    told(0, [0, 0, 0, 0.001], 0.002),
    "Half of the balls are alike, 0.0000 in, 98 of 100 between 0.0000 in and 0.0010 in.",
  );
  assert.match(
    told(1, [1, 2, 3, 4], 5),
    /^Half of the balls lie between 2\.0000 in and 3\.0000 in, 98 of 100/,
  );
});
