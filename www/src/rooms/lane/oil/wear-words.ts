// What games did to the shot, in a sentence, and what a lane worn by them is called.

import type { Args } from "../../../locale/say";
import type { Units } from "../../../store";
import type { Hand, Lane, OilFile, Roll } from "../../../types";
import { apart, digits, reading } from "../../../units";
import { say } from "./say";

/** What a pattern was before it was worn here, as the name has it that it got then, and by how many games. */
export function begunFrom({ name }: Pick<OilFile, "name">): { name: string; games: number } {
  const games = Number(name.match(/(\d+)\D*$/)?.[1] ?? 0);
  const ending = say("oil-worn", { name: "", games });
  return games > 0 && name.endsWith(ending)
    ? { name: name.slice(0, -ending.length), games }
    : { name, games: 0 };
}

/** Name and note of a pattern after so many games more. */
export function wornOf(oil: OilFile, more: number): Pick<OilFile, "name" | "note"> {
  const { name, games } = begunFrom(oil);
  return { name: say("oil-worn", { name, games: games + more }), note: say("oil-worn-note") };
}

/** How many games there were on a lane before. */
export const gamesOn = (lane: Lane): number =>
  "zones" in lane || typeof lane.oil === "string" ? 0 : begunFrom(lane.oil).games;

/** So many games as texts have them: further ones where the lane is a worn one. */
interface Games extends Args {
  games: number;
  further: "yes" | "no";
}

export const gamesFrom = (lane: Lane, games: number): Games => ({
  games,
  further: gamesOn(lane) > 0 ? "yes" : "no",
});

/** What the shot does after the games beside what it did before them. */
export function whatChanged(
  a: Roll["summary"],
  b: Roll["summary"],
  games: Games,
  hand: Hand,
  units: Units,
): string {
  if (
    a.board_at_pins === null ||
    b.board_at_pins === null ||
    a.entry_angle_deg === null ||
    b.entry_angle_deg === null
  ) {
    return say(b.gutter ? "oil-wear-gutter" : "oil-wear-apart", games);
  }
  const boards = apart(a.board_at_pins, b.board_at_pins, "board", units);
  // Boards count from the bowler's own side.
  const side = boards > 0 === (hand === "right") ? "left" : "right";
  const turn = apart(a.entry_angle_deg, b.entry_angle_deg, "angle", units);
  const further = apart(a.breakpoint.distance_ft, b.breakpoint.distance_ft, "distance", units);
  return say("oil-wear-arrives", {
    ...games,
    where: boards === 0 ? "same" : side,
    boards: digits(Math.abs(boards), 1),
    board: digits(b.board_at_pins, 1),
    turn: turn === 0 ? "same" : "changed",
    angle: reading(b.entry_angle_deg, "angle", units),
    "angle-before": reading(a.entry_angle_deg, "angle", units),
    breakpoint: Math.abs(further) < 0.5 ? "same" : further > 0 ? "further" : "sooner",
    distance: reading(Math.abs(further), "distance", units),
  });
}
