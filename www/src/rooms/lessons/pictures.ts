// Which picture of our own computation each word has.

import { covered, houseBall, houseDoc, houseShot, released, type Scene } from "../../lessons/scenes";
import type { Doc, Units } from "../../store";
import { reading } from "../../units";
import type { Word } from "../../words";

type Says = (scenes: Scene[], units: Units) => string;

export type WordPicture = {
  /** Cut through the pin; rolled from above, several on one lane; what the lane left on the ball; the layout. */
  draws: "cut" | "lane" | "rings" | "layout";
  /** What each is called, with what it shows. */
  of: () => [string, Doc][];
  says: Says;
} | null;

const name = (scene: Scene | undefined): string => scene?.file.name.replace(/,.*/, "") ?? "";
const each = (scenes: Scene[], tell: (scene: Scene) => string): string =>
  `${scenes.map((scene) => `${name(scene)}: ${tell(scene)}`).join(". ")}.`;
const balls =
  (...numbers: number[]) =>
  (): [string, Doc][] =>
    numbers.map((n) => [`No. ${n}`, houseDoc(n)]);

const cut = (numbers: number[], says: Says): WordPicture => ({ draws: "cut", of: balls(...numbers), says });

const entry = (scene: Scene, units: Units): string =>
  scene.roll.summary.entry_angle_deg === null
    ? "into the gutter"
    : `enters at ${reading(scene.roll.summary.entry_angle_deg, "angle", units)}`;

/** The opening shot alone. */
const lane = (says: (scene: Scene, units: Units) => string): WordPicture => ({
  draws: "lane",
  of: () => [["No. 3", houseDoc(3)]],
  says: ([scene], units) => (scene ? says(scene, units) : ""),
});

/** Two or three shots that differ in one thing. */
const apart = (of: () => [string, Doc][]): WordPicture => ({
  draws: "lane",
  of,
  says: (scenes, units) => {
    const names = of().map(([label]) => label);
    return `${scenes.map((scene, n) => `${"ABCD"[n]}, ${names[n]}, ${entry(scene, units)}`).join("; ")}.`;
  },
});

const layout = (says: (scene: Scene, units: Units) => string): WordPicture => ({
  draws: "layout",
  of: () => [["No. 3", houseDoc(3, "drilled")]],
  says: ([scene], units) => (scene ? says(scene, units) : ""),
});

const oil = (pattern: string, says: string): WordPicture => ({
  draws: "lane",
  of: () => [["", { ball: houseBall(3), shot: houseShot(pattern) }]],
  says: () => says,
});

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
  if (!first || !last) return `There is no ${phase} in this shot.`;
  return `Here from ${reading(first.y_ft, "distance", units)} to ${reading(last.y_ft, "distance", units)}.`;
};

const rings = (says: Says): WordPicture => ({ draws: "rings", of: () => [["No. 3", houseDoc(3)]], says });

export const PICTURES: Record<Word, WordPicture> = {
  RG: cut([1, 3], (scenes, units) => each(scenes, (s) => reading(s.weighed.rg_in.low, "rg", units))),
  differential: cut([1, 3], (scenes, units) =>
    each(scenes, (s) => reading(s.weighed.differential_in, "rg", units)),
  ),
  "intermediate differential": cut([3, 4], (scenes, units) =>
    each(scenes, (s) => reading(s.weighed.intermediate_differential_in, "rg", units)),
  ),
  CG: cut([1], (scenes, units) =>
    each(scenes, (s) => `${reading(s.weighed.cg_in[2], "cover", units)} above the middle, towards the pin`),
  ),
  "top weight": cut([1, 3], (scenes, units) =>
    each(scenes, (s) => reading(s.weighed.top_weight_oz, "imbalance", units)),
  ),
  pin: layout((s, units) =>
    s.drilled
      ? `Here ${reading(s.drilled.marks.pin_to_grip_centre_in, "size", units)} from the middle of the grip.`
      : "",
  ),
  PAP: layout(
    (s, units) => `Here the pin lies ${reading(s.shot.layout.pin_to_pap_in, "size", units)} from it.`,
  ),
  "mass bias": layout(() => "Marked beside the pin, the PAP and the holes."),
  "track flare": rings(([scene], units) => {
    const widest = scene?.roll.track.widest;
    return widest
      ? `The rings of the opening shot; widest apart ${reading(widest.width_in, "size", units)}.`
      : "";
  }),
  board: lane((s, units) => `Laid down on board ${reading(s.shot.release.board, "board", units)}.`),
  breakpoint: lane(
    (s, units) =>
      `Board ${reading(s.roll.summary.breakpoint.board, "board", units)}, after ${reading(s.roll.summary.breakpoint.distance_ft, "distance", units)}.`,
  ),
  "entry angle": lane((s, units) => `The opening shot ${entry(s, units)}.`),
  coverstock: cut([3, 5], (scenes, units) =>
    each(scenes, (s) => `${reading(s.weighed.pieces[0]?.volume_cc ?? 0, "volume", units)} of cover`),
  ),
  "flow channel": cut(
    [6],
    () => "No. 6: the dents at the waist of its pieces are filled with what lies round them.",
  ),
  puck: cut([1, 3], () => "The flat piece near the top."),
  hook: lane((s, units) => stretch(s, "hook", units)),
  skid: lane((s, units) => stretch(s, "skid", units)),
  roll: lane((s, units) => stretch(s, "roll", units)),
  "axis rotation": apart(() => {
    const doc = houseDoc(3);
    return [
      ["20°", released(doc, { axis_rotation_deg: 20 })],
      ["70°", released(doc, { axis_rotation_deg: 70 })],
    ];
  }),
  "axis tilt": apart(() => {
    const doc = houseDoc(3);
    return [
      ["5°", released(doc, { axis_tilt_deg: 5 })],
      ["40°", released(doc, { axis_tilt_deg: 40 })],
    ];
  }),
  "rev rate": apart(() => {
    const doc = houseDoc(3);
    return [
      ["150 rpm", released(doc, { revs_rpm: 150 })],
      ["400 rpm", released(doc, { revs_rpm: 400 })],
    ];
  }),
  "drilling angle": layout(
    (s, units) => `Here ${reading(s.shot.layout.drilling_angle_deg, "angle", units)}.`,
  ),
  "start turn": rings(
    ([scene], units) => `Here ${reading(scene?.shot.layout.start_turn_deg ?? 0, "angle", units)}.`,
  ),
  "launch angle": apart(() => {
    const doc = houseDoc(3);
    return [
      ["1° to the right", released(doc, { launch_angle_deg: 1 })],
      ["3° to the right", released(doc, { launch_angle_deg: 3 })],
    ];
  }),
  friction: apart(() => [
    ["oil to the usual length", houseDoc(3)],
    ["a drier lane", houseDoc(3, "dry-lane")],
  ]),
  "grip centre": layout(() => "Between the fingers and the thumb."),
  span: layout((s, units) => {
    const spans = s.shot.drilling?.thumb;
    return spans ? `To the middle finger ${reading(spans.middle_span_in, "size", units)}.` : "";
  }),
  bridge: layout((s, units) =>
    s.shot.drilling ? `Here ${reading(s.shot.drilling.bridge_in, "size", units)}.` : "",
  ),
  pitch: layout((s, units) =>
    s.shot.drilling
      ? `The middle finger has ${reading(s.shot.drilling.middle.forward_pitch_in ?? 0, "size", units)} forward.`
      : "",
  ),
  midline: layout(() => "Across the grip, towards the PAP."),
  VAL: layout(() => "Through the PAP, across the midline."),
  "VAL angle": layout((s, units) =>
    s.shot.drilling ? `Here ${reading(s.shot.drilling.val_angle_deg, "angle", units)}.` : "",
  ),
  insert: layout((s, units) =>
    s.drilled
      ? `${s.drilled.inserts.map(({ name, weight_oz }) => `${name} ${reading(weight_oz, "imbalance", units)}`).join(", ")}.`
      : "",
  ),
  "static balance": layout((s, units) =>
    s.drilled ? `The holes took ${reading(s.drilled.change.drilled_out_oz, "imbalance", units)} out.` : "",
  ),
  "bow-tie": rings(([scene], units) => {
    const ties = scene?.roll.track.bow_ties;
    return ties ? `Where the rings cross; there ${reading(ties[0].width_in, "size", units)} wide.` : "";
  }),
  "oil pattern": oil("house-pattern", "The house pattern: dots and tint are oil."),
  film: oil("house-pattern", "The more dots, the thicker the film."),
  "oil ratio": oil("house-pattern", "Thick in the middle, thin at the sides."),
  taper: oil("long-pattern", "The long pattern thins out towards its end."),
  polyester: apart(families),
  urethane: apart(families),
  reactive: apart(families),
  finish: apart(finishes),
  grit: apart(finishes),
  polish: apart(finishes),
  squash: cut([4], () => "No. 4 has a piece that is not round about its pin."),
  "95 % interval": null,
  "first order": null,
  "total order": null,
  density: cut([3], (scenes, units) =>
    each(scenes, ({ file }) =>
      [
        ["cover", file.cover.density_g_cc] as const,
        ...file.pieces.map((p) => [p.name, p.density_g_cc] as const),
      ]
        .map(([part, density]) => `${part} ${reading(density, "density", units)}`)
        .join(", "),
    ),
  ),
};
