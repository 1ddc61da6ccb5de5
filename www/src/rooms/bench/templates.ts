import type { Doc, Shot } from "../../store";
import type { BallFile } from "../../types";

const THREE_PIECE: BallFile = {
  format: "pithball.ball/1",
  name: "No. 3, three-piece",
  diameter_in: 8.55,
  cover: { name: "cover", density_g_cc: 1.18 },
  pieces: [
    { name: "outer core", density_g_cc: 1.05, shape: { kind: "sphere", diameter_in: 7 } },
    {
      name: "inner core",
      density_g_cc: 2.0,
      shape: { kind: "ellipsoid", size_in: [2.6, 2.6, 4] },
    },
    {
      name: "puck",
      density_g_cc: 2.6,
      shape: { kind: "cylinder", diameter_in: 2.4, height_in: 0.5 },
      at_in: [0, 0, 2.6],
    },
  ],
};

const SHOT: Shot = {
  format: "pithball.shot/1",
  hand: "right",
  release: {
    speed_mph: 17,
    revs_rpm: 300,
    axis_rotation_deg: 45,
    axis_tilt_deg: 12,
    launch_angle_deg: 1.5,
    board: 22,
  },
  layout: { pin_to_pap_in: 4, drilling_angle_deg: 60, start_turn_deg: 0 },
  lane: {
    zones: [
      { from_ft: 0, to_ft: 40, mu: 0.04 },
      { from_ft: 40, to_ft: 63, mu: 0.2 },
    ],
  },
};

export interface Template {
  ball: BallFile;
  /** A word or two under its picture. */
  short: string;
}

export const TEMPLATES: Template[] = [{ ball: THREE_PIECE, short: "Three-piece" }];

export const FIRST_DOC: Doc = { ball: THREE_PIECE, shot: SHOT };
