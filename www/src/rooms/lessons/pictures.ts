// Which picture of our own computation each word has.

import glossary from "../../../../scenarios/glossary.json";
import { FILES } from "../../lessons/read";
import { ballAt, covered, houseBall, houseDoc, houseShot, released, type Scene } from "../../lessons/scenes";
import { offered } from "../../locale/names";
import { more } from "../../more";
import type { Doc, Units } from "../../store";
import type { BallFile, LayoutFile, OilFile, Poured } from "../../types";
import { digits, LB_KG, reading } from "../../units";
import { nameOf, type Word } from "../../words";
import { withLayout } from "../bench/grip";
import { say } from "./say";
import { shownOf } from "./shown";

interface Picture {
  kind: "section" | "cover" | "lane" | "track" | "layout" | "oil" | "scatter";
  ball?: string;
  shot?: string;
  layout?: string;
  oil?: string;
}

/** The same pictures for page and command line: scenarios/glossary.json says which. */
const LISTED = glossary.words as Record<Word, { picture: Picture }>;

/** Cut through the pin; rolled from above; what the lane left on the ball; the layout; balls poured and counted. */
export type Draws = "cut" | "lane" | "rings" | "layout" | "counted";

const DRAWS: Record<Picture["kind"], Draws> = {
  section: "cut",
  cover: "cut",
  lane: "lane",
  oil: "lane",
  track: "rings",
  layout: "layout",
  scatter: "counted",
};

/** How a word's picture is drawn. */
export const drawsOf = (word: Word): Draws => DRAWS[LISTED[word].picture.kind];

/** What a word's picture is of, and what it shows. */
export function pictureOf(word: Word): { draws: Draws; doc: Doc; shows: string } {
  return { draws: drawsOf(word), doc: docOf(LISTED[word].picture), shows: shownOf(word) };
}

function docOf({ ball, shot: path, layout, oil }: Picture): Doc {
  const name = path && /([\w-]+)\.shot\.json$/.exec(path)?.[1];
  const shot = houseShot(name ?? "opening");
  const file = ball ? ballAt(ball) : path ? ballOf(path) : houseBall(3);
  if (layout) return { ball: file, shot: withLayout(shot, FILES[layout] as LayoutFile) };
  return { ball: file, shot: oil ? { ...shot, lane: { oil: FILES[oil] as OilFile } } : shot };
}

/** The ball that a shot's file names. */
function ballOf(path: string): BallFile {
  const { ball } = FILES[path] as { ball: string };
  return ballAt(ball.replace("../", ""));
}

const entry = (scene: Scene, units: Units): string =>
  scene.roll.summary.entry_angle_deg === null
    ? say("words-gutter")
    : say("words-enters", { angle: reading(scene.roll.summary.entry_angle_deg, "angle", units) });

type Shots = () => [string, Doc][];

/** Angles this near to each other look alike, boards this far apart do not. */
const ALIKE_DEG = 0.5;
const APART_BOARDS = 2;

/** What the letters of shots side by side stand for, and where each ends. */
export function apartSays(names: string[], scenes: Scene[], units: Units): string {
  const each = scenes.map((scene, n) =>
    say("words-shot", { letter: "ABCD"[n] ?? "", name: names[n] ?? "", end: end(scene, units) }),
  );
  const span = (of: (scene: Scene) => number | null) => {
    const all = scenes.map(of);
    return all.some((one) => one === null)
      ? 0
      : Math.max(...(all as number[])) - Math.min(...(all as number[]));
  };
  const angles = span(({ roll }) => roll.summary.entry_angle_deg);
  const boards = span(({ roll }) => roll.summary.board_at_pins);
  const alike = angles < ALIKE_DEG && boards > APART_BOARDS;
  return say(alike ? "words-shots-alike" : "words-shots", { shots: each.join("; ") });
}

/** Where it comes in: of two shots with one angle the boards tell which turned more. */
function end(scene: Scene, units: Units): string {
  const { board_at_pins } = scene.roll.summary;
  const angle = entry(scene, units);
  return board_at_pins === null
    ? angle
    : say("words-comes", { board: reading(board_at_pins, "board", units), enters: angle });
}

const onOil = (change: (doc: Doc) => [string, Doc][]) => () => change(houseDoc(3, "house-pattern"));
const families = onOil((doc) =>
  (["polyester", "urethane", "reactive"] as const).map((family) => [
    nameOf(family),
    covered(doc, { family }),
  ]),
);
const finishes = onOil((doc) => [
  [say("words-grit", { grit: "500" }), covered(doc, { family: "reactive", finish: { grit: 500 } })],
  [say("words-grit", { grit: "4000" }), covered(doc, { family: "reactive", finish: { grit: 4000 } })],
  [say("words-polished"), covered(doc, { family: "reactive", finish: { grit: 4000, polished: true } })],
]);

/** Where a part of the path begins and ends, as the Lane has it. */
const stretch = ({ roll }: Scene, phase: "skid" | "hook" | "roll", units: Units): string => {
  const { hook_start_ft, roll_start_ft } = roll.summary;
  const end_ft = roll.samples.at(-1)?.y_ft ?? null;
  const [from_ft, to_ft] = {
    skid: [0, hook_start_ft],
    hook: [hook_start_ft, roll_start_ft],
    roll: [roll_start_ft, end_ft],
  }[phase];
  if (typeof from_ft !== "number" || typeof to_ft !== "number") return "";
  return say("words-stretch", {
    from: reading(from_ft, "distance", units),
    to: reading(to_ft, "distance", units),
  });
};

/** Two or three shots that differ in one thing. */
export const APART: Partial<Record<Word, Shots>> = {
  "axis rotation": () => {
    const doc = houseDoc(3);
    return [
      ["20°", released(doc, { axis_rotation_deg: 20 })],
      ["70°", released(doc, { axis_rotation_deg: 70 })],
    ];
  },
  "axis tilt": () => {
    const doc = houseDoc(3);
    return [
      ["5°", released(doc, { axis_tilt_deg: 5 })],
      ["40°", released(doc, { axis_tilt_deg: 40 })],
    ];
  },
  "rev rate": () => {
    const doc = houseDoc(3);
    return [
      [say("words-revs", { revs: "150" }), released(doc, { revs_rpm: 150 })],
      [say("words-revs", { revs: "400" }), released(doc, { revs_rpm: 400 })],
    ];
  },
  "launch angle": () => {
    const doc = houseDoc(3);
    return [
      [say("words-to-the-right", { angle: digits(2.5, 1) }), released(doc, { launch_angle_deg: 2.5 })],
      [say("words-to-the-right", { angle: digits(3.5, 1) }), released(doc, { launch_angle_deg: 3.5 })],
    ];
  },
  friction: () => [
    [say("words-oiled"), houseDoc(3)],
    [say("words-drier"), houseDoc(3, "dry-lane")],
  ],
  polyester: families,
  urethane: families,
  reactive: families,
  finish: finishes,
  grit: finishes,
  polish: finishes,
};

/** How a ball is poured, by the module that knows it. */
function pouredOf(file: BallFile): Poured {
  const ball = new more.Ball(file);
  try {
    return ball.pour();
  } finally {
    ball.free();
  }
}

/** The numbers of a word's picture, as computed. */
export const NUMBERS: Partial<Record<Word, (scene: Scene, units: Units) => string>> = {
  RG: (s, units) => reading(s.weighed.rg_in.low, "rg", units),
  differential: (s, units) => reading(s.weighed.differential_in, "rg", units),
  "middle RG": (s, units) => reading(s.weighed.rg_in.middle, "rg", units),
  "high RG": (s, units) => reading(s.weighed.rg_in.high, "rg", units),
  weight: (s, units) =>
    s.weighed.pieces
      .map(({ name, mass_kg }) => `${name} ${reading(mass_kg / LB_KG, "weight", units)}`)
      .join(", "),
  volume: (s, units) =>
    s.weighed.pieces
      .map(({ name, volume_cc }) => `${name} ${reading(volume_cc, "volume", units)}`)
      .join(", "),
  density: (s, units) =>
    [s.file.cover, ...s.file.pieces]
      .map(
        ({ name, density_g_cc }) =>
          `${name ?? offered("piece", "cover")} ${reading(density_g_cc, "density", units)}`,
      )
      .join(", "),
  piece: (s) => s.file.pieces.map(({ name }) => name).join(", "),
  position: (s, units) => {
    const puck = s.file.pieces.find(({ name }) => name === offered("piece", "puck"));
    return puck?.at_in ? `z ${reading(puck.at_in[2], "size", units)}` : "";
  },
  "ball diameter": (s, units) => reading(s.file.diameter_in, "rg", units),
  hole: (s, units) => {
    const middle = s.shot.drilling?.middle;
    return middle
      ? say("words-hole", {
          across: reading(middle.diameter_in, "size", units),
          deep: reading(middle.depth_in, "size", units),
        })
      : "";
  },
  speed: (s, units) => {
    const { speed_at_pins_mph } = s.roll.summary;
    const hand = reading(s.shot.release.speed_mph, "speed", units);
    return speed_at_pins_mph === null
      ? hand
      : say("words-hand-and-pins", { hand, pins: reading(speed_at_pins_mph, "speed", units) });
  },
  "rev rate": (s, units) => {
    const { revs_at_pins_rpm } = s.roll.summary;
    const hand = reading(s.shot.release.revs_rpm, "revs", units);
    return revs_at_pins_rpm === null
      ? hand
      : say("words-hand-and-pins", { hand, pins: reading(revs_at_pins_rpm, "revs", units) });
  },
  "axis rotation": (s, units) => reading(s.shot.release.axis_rotation_deg, "angle", units),
  "axis tilt": (s, units) => reading(s.shot.release.axis_tilt_deg, "angle", units),
  time: (s, units) => (s.roll.summary.time_s === null ? "" : reading(s.roll.summary.time_s, "time", units)),
  slip: (s, units) => {
    const [first] = s.roll.samples;
    const last = s.roll.samples.at(-1);
    return first && last
      ? say("words-slip", {
          first: reading(first.slip_mph, "speed", units),
          last: reading(last.slip_mph, "speed", units),
        })
      : "";
  },
  "axis migration": (s, units) =>
    s.roll.summary.axis_migration_deg === null
      ? ""
      : reading(s.roll.summary.axis_migration_deg, "angle", units),
  pocket: (s, units) =>
    s.roll.summary.board_at_pins === null
      ? ""
      : say("words-pocket", { board: reading(s.roll.summary.board_at_pins, "board", units) }),
  "published limit": (s) => {
    const { rules } = s.ball.check();
    const of = (verdict: string) => rules.filter((rule) => rule.verdict === verdict).length;
    return say("words-limits", { within: String(of("pass")), outside: String(of("fail")) });
  },
  pour: (s) => say("words-pours", { pours: pouredOf(s.file).pours.length }),
  "cost index": (s) => digits(pouredOf(s.file).cost_index, 2),
  "intermediate differential": (s, units) => reading(s.weighed.intermediate_differential_in, "rg", units),
  CG: (s, units) => say("words-cg", { far: reading(s.weighed.cg_in[2], "cover", units) }),
  "top weight": (s, units) => reading(s.weighed.top_weight_oz, "imbalance", units),
  PAP: (s, units) => say("words-pin-to-pap", { far: reading(s.shot.layout.pin_to_pap_in, "size", units) }),
  "track flare": (s, units) => {
    const widest = s.roll.track.widest;
    return widest ? say("words-flare", { wide: reading(widest.width_in, "size", units) }) : "";
  },
  "bow-tie": (s, units) => {
    const ties = s.roll.track.bow_ties;
    return ties ? say("words-bow-tie", { wide: reading(ties[0].width_in, "size", units) }) : "";
  },
  board: (s, units) => say("words-board", { board: reading(s.shot.release.board, "board", units) }),
  breakpoint: (s, units) =>
    say("words-breakpoint", {
      board: reading(s.roll.summary.breakpoint.board, "board", units),
      far: reading(s.roll.summary.breakpoint.distance_ft, "distance", units),
    }),
  "entry angle": entry,
  coverstock: (s, units) => {
    const { thinnest, mean_in } = s.ball.cover();
    const mean = reading(mean_in, "cover", units);
    return thinnest
      ? say("words-cover", { thinnest: reading(thinnest.thickness_in, "cover", units), mean })
      : say("words-cover-mean", { mean });
  },
  skid: (s, units) => stretch(s, "skid", units),
  hook: (s, units) => stretch(s, "hook", units),
  roll: (s, units) => stretch(s, "roll", units),
  "drilling angle": (s, units) => reading(s.shot.layout.drilling_angle_deg, "angle", units),
  span: (s, units) => {
    const thumb = s.shot.drilling?.thumb;
    return thumb ? say("words-span", { far: reading(thumb.middle_span_in, "size", units) }) : "";
  },
  bridge: (s, units) => (s.shot.drilling ? reading(s.shot.drilling.bridge_in, "size", units) : ""),
  "VAL angle": (s, units) => (s.shot.drilling ? reading(s.shot.drilling.val_angle_deg, "angle", units) : ""),
};
