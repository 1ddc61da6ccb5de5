// The example shots of scenarios/, each with the ball it was thought out for.
import ball1 from "../../../../scenarios/balls/no-1-simple.ball.json";
import ball2 from "../../../../scenarios/balls/no-2-two-piece.ball.json";
import ball3 from "../../../../scenarios/balls/no-3-three-piece.ball.json";
import ball4 from "../../../../scenarios/balls/no-4-nested-core.ball.json";
import ball5 from "../../../../scenarios/balls/no-5-thick-cover.ball.json";
import ball6 from "../../../../scenarios/balls/no-6-five-piece.ball.json";
import drilled from "../../../../scenarios/shots/drilled.shot.json";
import dryLane from "../../../../scenarios/shots/dry-lane.shot.json";
import flatPattern from "../../../../scenarios/shots/flat-pattern.shot.json";
import gutter from "../../../../scenarios/shots/gutter.shot.json";
import housePattern from "../../../../scenarios/shots/house-pattern.shot.json";
import highRevs from "../../../../scenarios/shots/league-high-revs.shot.json";
import lowRevs from "../../../../scenarios/shots/league-low-revs.shot.json";
import medium from "../../../../scenarios/shots/league-medium.shot.json";
import leftHander from "../../../../scenarios/shots/left-hander.shot.json";
import longOil from "../../../../scenarios/shots/long-oil.shot.json";
import longPattern from "../../../../scenarios/shots/long-pattern.shot.json";
import opening from "../../../../scenarios/shots/opening.shot.json";
import shortPattern from "../../../../scenarios/shots/short-pattern.shot.json";
import straight from "../../../../scenarios/shots/straight-spare.shot.json";
import student from "../../../../scenarios/shots/student.shot.json";
import twoHanded from "../../../../scenarios/shots/two-handed.shot.json";
import wetDryStep from "../../../../scenarios/shots/wet-dry-step.shot.json";
import type { Shot } from "../../store";
import type { BallFile, Lane, ShotFile } from "../../types";
import { PRESETS } from "./oil/presets";

export interface Example {
  name: string;
  note: string;
  shot: Shot;
  ball: BallFile;
}

/** JSON modules are typed by their text, so that "right" reads as any string. */
const BALLS = [ball1, ball2, ball3, ball4, ball5, ball6] as unknown as BallFile[];
const SHOTS = [
  opening,
  medium,
  lowRevs,
  highRevs,
  twoHanded,
  leftHander,
  drilled,
  longOil,
  dryLane,
  student,
  straight,
  gutter,
  housePattern,
  wetDryStep,
  flatPattern,
  shortPattern,
  longPattern,
] as unknown as (ShotFile & { ball: string })[];

/** In the page a lane's oil stands in the shot itself. */
function withOil(lane: Lane): Lane {
  if ("zones" in lane || typeof lane.oil !== "string") return lane;
  const oil = PRESETS[/([\w-]+)\.oil\.json$/.exec(lane.oil)?.[1] ?? ""];
  return oil ? { ...lane, oil } : lane;
}

export const EXAMPLES: Example[] = SHOTS.flatMap(({ ball: path, ...file }) => {
  const shot = { ...file, lane: withOil(file.lane) };
  const number = /no-(\d)-/.exec(path)?.[1];
  const ball = BALLS[Number(number) - 1];
  return ball ? [{ name: shot.name ?? "", note: shot.note ?? "", shot, ball }] : [];
});
