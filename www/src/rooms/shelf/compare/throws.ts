// Those chosen, each thrown: as it was put on the shelf, or as the first is.

import { isProblem } from "../../../problem";
import { type Measured, measured, rolled } from "../../../shelf/measured";
import type { Doc, Shot, View, WholeShot } from "../../../store";
import type { Problem, Roll, WasmModule } from "../../../types";
import { sameHand } from "../../../why/same-hand";
import type { Item } from "../items";
import { LETTERS } from "../letters";

export interface Compared {
  letter: string;
  item: Item;
  /** The ball and how it is thrown here. */
  shot: WholeShot;
  /** The same before the hand's effort is shared out. */
  thrown: WholeShot;
  found: Measured;
  /** null where the shot cannot be followed, and then why. */
  roll: Roll | null;
  problem: Problem | null;
}

/**
 * The same hand, release and lane as the first; how a ball is drilled is its
 * own, and only one of the house, which has no layout, takes the first's.
 */
function thrownAs(item: Item, first: Item): WholeShot {
  const { format, ball } = item.shot;
  if (item.houseBall) {
    const { format: _format, ball: _ball, name: _name, note: _note, ...throwing } = first.shot;
    return { format, ball, ...throwing };
  }
  const { hand, release, lane } = first.shot;
  return { ...item.shot, hand, release, lane };
}

export const docOf = ({ ball, ...shot }: WholeShot): Doc => ({ ball, shot: shot as Shot });

/** The shot as the hand of the first throws this ball; as it is where that cannot be told. */
function fromHand(wasm: WasmModule, first: WholeShot, shot: WholeShot, hand: View["hand"]): WholeShot {
  try {
    return { ...shot, release: sameHand(wasm, docOf(first), docOf(shot), hand).release };
  } catch (error) {
    if (isProblem(error)) return shot;
    throw error;
  }
}

export function compareAll(
  wasm: WasmModule,
  chosen: Item[],
  sameShot: boolean,
  hand: View["hand"],
): Compared[] {
  const [first] = chosen;
  if (!first) return [];
  return chosen.flatMap((item, i) => {
    const thrown = sameShot && i > 0 ? thrownAs(item, first) : item.shot;
    const shot = sameShot && i > 0 ? fromHand(wasm, first.shot, thrown, hand) : thrown;
    const found = measured(wasm, shot);
    // What stands on the shelf has been read and found right; it may still not be drilled as another is.
    const made = isProblem(found) ? measured(wasm, item.shot) : found;
    if (isProblem(made)) return [];
    const roll = rolled(wasm, shot);
    return [
      {
        letter: LETTERS[i] ?? "",
        item,
        shot,
        thrown,
        found: made,
        roll: isProblem(roll) ? null : roll,
        problem: isProblem(roll) ? roll : null,
      },
    ];
  });
}

/** Whether all of them are one ball, so that one shot for all shows no difference. */
export const oneBall = (all: Compared[]): boolean =>
  all.length > 1 && new Set(all.map(({ shot: { ball } }) => JSON.stringify(ball))).size === 1;

/** Those whose lane is not the one drawn, the first's. */
export const onOtherLanes = (all: Compared[]): Compared[] => {
  const lane = JSON.stringify(all[0]?.shot.lane);
  return all.filter(({ shot }) => JSON.stringify(shot.lane) !== lane);
};
