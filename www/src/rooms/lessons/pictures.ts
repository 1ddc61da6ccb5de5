// Which picture of our own computation each word has.

import glossary from "../../../../scenarios/glossary.json";
import { FILES } from "../../lessons/read";
import { covered, houseBall, houseDoc, houseShot, released, type Scene } from "../../lessons/scenes";
import { more } from "../../more";
import type { Doc, Units } from "../../store";
import type { BallFile, LayoutFile, OilFile, Poured } from "../../types";
import { digits, LB_KG, reading } from "../../units";
import type { Word } from "../../words";
import { withLayout } from "../bench/grip";

interface Picture {
  kind: "section" | "cover" | "lane" | "track" | "layout" | "oil" | "scatter";
  ball?: string;
  shot?: string;
  layout?: string;
  oil?: string;
}

/** The same pictures for page and command line: scenarios/glossary.json says which. */
const LISTED = glossary.words as Record<Word, { picture: Picture; shows: string }>;

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

/** What a word's picture is of, and what it shows. */
export function pictureOf(word: Word): { draws: Draws; doc: Doc; shows: string } {
  const { picture, shows } = LISTED[word];
  return { draws: DRAWS[picture.kind], doc: docOf(picture), shows };
}

function docOf({ ball, shot: path, layout, oil }: Picture): Doc {
  const name = path && /([\w-]+)\.shot\.json$/.exec(path)?.[1];
  const shot = houseShot(name ?? "opening");
  const file = ball ? (FILES[ball] as BallFile) : path ? ballOf(path) : houseBall(3);
  if (layout) return { ball: file, shot: withLayout(shot, FILES[layout] as LayoutFile) };
  return { ball: file, shot: oil ? { ...shot, lane: { oil: FILES[oil] as OilFile } } : shot };
}

/** The ball that a shot's file names. */
function ballOf(path: string): BallFile {
  const { ball } = FILES[path] as { ball: string };
  return FILES[ball.replace("../", "")] as BallFile;
}

const entry = (scene: Scene, units: Units): string =>
  scene.roll.summary.entry_angle_deg === null
    ? "into the gutter"
    : `enters at ${reading(scene.roll.summary.entry_angle_deg, "angle", units)}`;

type Shots = () => [string, Doc][];

/** Angles this near to each other look alike, boards this far apart do not. */
const ALIKE_DEG = 0.5;
const APART_BOARDS = 2;

/** What the letters of shots side by side stand for, and where each ends. */
export function apartSays(names: string[], scenes: Scene[], units: Units): string {
  const each = scenes.map((scene, n) => `${"ABCD"[n]}, ${names[n]}, ${end(scene, units)}`);
  const span = (of: (scene: Scene) => number | null) => {
    const all = scenes.map(of);
    return all.some((one) => one === null)
      ? 0
      : Math.max(...(all as number[])) - Math.min(...(all as number[]));
  };
  const angles = span(({ roll }) => roll.summary.entry_angle_deg);
  const boards = span(({ roll }) => roll.summary.board_at_pins);
  const alike =
    angles < ALIKE_DEG && boards > APART_BOARDS
      ? " They come in at nearly the same angle; what differs is how far each has come back by then."
      : "";
  return `${each.join("; ")}.${alike}`;
}

/** Where it comes in: of two shots with one angle the boards tell which turned more. */
function end(scene: Scene, units: Units): string {
  const { board_at_pins } = scene.roll.summary;
  const angle = entry(scene, units);
  return board_at_pins === null
    ? angle
    : `comes to board ${reading(board_at_pins, "board", units)} and ${angle}`;
}

const onOil = (change: (doc: Doc) => [string, Doc][]) => () => change(houseDoc(3, "house-pattern"));
const families = onOil((doc) =>
  (["polyester", "urethane", "reactive"] as const).map((family) => [family, covered(doc, { family })]),
);
const finishes = onOil((doc) => [
  ["grit 500", covered(doc, { family: "reactive", finish: { grit: 500 } })],
  ["grit 4000", covered(doc, { family: "reactive", finish: { grit: 4000 } })],
  ["polished", covered(doc, { family: "reactive", finish: { grit: 4000, polished: true } })],
]);

const stretch = (scene: Scene, phase: "skid" | "hook" | "roll", units: Units): string => {
  const of = scene.roll.samples.filter((sample) => sample.phase === phase);
  const first = of[0];
  const last = of.at(-1);
  if (!first || !last) return "";
  return `from ${reading(first.y_ft, "distance", units)} to ${reading(last.y_ft, "distance", units)}`;
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
      ["150 rpm", released(doc, { revs_rpm: 150 })],
      ["400 rpm", released(doc, { revs_rpm: 400 })],
    ];
  },
  "launch angle": () => {
    const doc = houseDoc(3);
    return [
      ["2.5° to the right", released(doc, { launch_angle_deg: 2.5 })],
      ["3.5° to the right", released(doc, { launch_angle_deg: 3.5 })],
    ];
  },
  friction: () => [
    ["oil to the usual length", houseDoc(3)],
    ["a drier lane", houseDoc(3, "dry-lane")],
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
      .map(({ name, density_g_cc }) => `${name ?? "cover"} ${reading(density_g_cc, "density", units)}`)
      .join(", "),
  piece: (s) => s.file.pieces.map(({ name }) => name).join(", "),
  position: (s, units) => {
    const puck = s.file.pieces.find(({ name }) => name === "puck");
    return puck?.at_in ? `z ${reading(puck.at_in[2], "size", units)}` : "";
  },
  "ball diameter": (s, units) => reading(s.file.diameter_in, "rg", units),
  hole: (s, units) => {
    const middle = s.shot.drilling?.middle;
    return middle
      ? `the middle finger's ${reading(middle.diameter_in, "size", units)} across and ${reading(middle.depth_in, "size", units)} deep`
      : "";
  },
  speed: (s, units) => {
    const { speed_at_pins_mph } = s.roll.summary;
    const hand = reading(s.shot.release.speed_mph, "speed", units);
    return speed_at_pins_mph === null
      ? hand
      : `${hand} from the hand, ${reading(speed_at_pins_mph, "speed", units)} at the pins`;
  },
  "rev rate": (s, units) => {
    const { revs_at_pins_rpm } = s.roll.summary;
    const hand = reading(s.shot.release.revs_rpm, "revs", units);
    return revs_at_pins_rpm === null
      ? hand
      : `${hand} from the hand, ${reading(revs_at_pins_rpm, "revs", units)} at the pins`;
  },
  "axis rotation": (s, units) => reading(s.shot.release.axis_rotation_deg, "angle", units),
  "axis tilt": (s, units) => reading(s.shot.release.axis_tilt_deg, "angle", units),
  time: (s, units) => (s.roll.summary.time_s === null ? "" : reading(s.roll.summary.time_s, "time", units)),
  slip: (s, units) => {
    const [first] = s.roll.samples;
    const last = s.roll.samples.at(-1);
    return first && last
      ? `${reading(first.slip_mph, "speed", units)} at first, ${reading(last.slip_mph, "speed", units)} at the end`
      : "";
  },
  "axis migration": (s, units) =>
    s.roll.summary.axis_migration_deg === null
      ? ""
      : reading(s.roll.summary.axis_migration_deg, "angle", units),
  pocket: (s, units) =>
    s.roll.summary.board_at_pins === null
      ? ""
      : `board ${reading(s.roll.summary.board_at_pins, "board", units)} at the pins`,
  "published limit": (s) => {
    const { rules } = s.ball.check();
    const of = (verdict: string) => rules.filter((rule) => rule.verdict === verdict).length;
    return `${of("pass")} within, ${of("fail")} outside`;
  },
  pour: (s) => `${pouredOf(s.file).pours.length} pours`,
  "cost index": (s) => digits(pouredOf(s.file).cost_index, 2),
  "intermediate differential": (s, units) => reading(s.weighed.intermediate_differential_in, "rg", units),
  CG: (s, units) => `${reading(s.weighed.cg_in[2], "cover", units)} from the middle towards the pin`,
  "top weight": (s, units) => reading(s.weighed.top_weight_oz, "imbalance", units),
  PAP: (s, units) => `pin to PAP ${reading(s.shot.layout.pin_to_pap_in, "size", units)}`,
  "track flare": (s, units) => {
    const widest = s.roll.track.widest;
    return widest ? `${reading(widest.width_in, "size", units)} wide at its widest` : "";
  },
  "bow-tie": (s, units) => {
    const ties = s.roll.track.bow_ties;
    return ties ? `${reading(ties[0].width_in, "size", units)} wide` : "";
  },
  board: (s, units) => `laid down on board ${reading(s.shot.release.board, "board", units)}`,
  breakpoint: (s, units) =>
    `board ${reading(s.roll.summary.breakpoint.board, "board", units)} after ${reading(s.roll.summary.breakpoint.distance_ft, "distance", units)}`,
  "entry angle": entry,
  coverstock: (s, units) => `${reading(s.weighed.pieces[0]?.volume_cc ?? 0, "volume", units)} of cover`,
  skid: (s, units) => stretch(s, "skid", units),
  hook: (s, units) => stretch(s, "hook", units),
  roll: (s, units) => stretch(s, "roll", units),
  "drilling angle": (s, units) => reading(s.shot.layout.drilling_angle_deg, "angle", units),
  span: (s, units) => {
    const thumb = s.shot.drilling?.thumb;
    return thumb ? `to the middle finger ${reading(thumb.middle_span_in, "size", units)}` : "";
  },
  bridge: (s, units) => (s.shot.drilling ? reading(s.shot.drilling.bridge_in, "size", units) : ""),
  "VAL angle": (s, units) => (s.shot.drilling ? reading(s.shot.drilling.val_angle_deg, "angle", units) : ""),
};
