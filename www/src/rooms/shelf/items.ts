// What can be compared: the ball on the bench as it is now, what stands on the
// shelf, and the balls of the house.

import type { WholeShot } from "../../shelf/measured";
import { useShelf } from "../../shelf/shelf";
import { type Shot, type Store, useStore } from "../../store";
import type { BallFile } from "../../types";
import { FIRST_DOC, TEMPLATES } from "../bench/templates";

export interface Item {
  id: string;
  name: string;
  note: string;
  shot: WholeShot;
  /** A ball of the house comes without a shot of its own: `shot` is then the opening one. */
  houseBall: boolean;
}

export const BENCH_ID = "bench";

const whole = (ball: BallFile, { format, ...shot }: Shot): WholeShot => ({ format, ball, ...shot });

const HOUSE: Item[] = TEMPLATES.map((ball, at) => ({
  id: `house-${at + 1}`,
  name: ball.name,
  note: ball.note ?? "",
  shot: whole(ball, FIRST_DOC.shot),
  houseBall: true,
}));

/** The last good ball and shot of the bench. */
export function benchItem(store: Store): Item {
  const { file, shot } = store.derived.value;
  return { id: BENCH_ID, name: file.name, note: "", shot: whole(file, shot), houseBall: false };
}

export interface Items {
  bench: Item;
  shelf: Item[];
  house: Item[];
}

export function useItems(): Items {
  const store = useStore();
  const shelf = useShelf();
  return {
    bench: benchItem(store),
    shelf: shelf.entries.value.map((entry) => ({ ...entry, houseBall: false })),
    house: HOUSE,
  };
}

/** Those chosen to compare that are still there, the first one first. */
export function useChosen({ bench, shelf, house }: Items): Item[] {
  const all = [bench, ...shelf, ...house];
  return useShelf().chosen.value.flatMap((id) => all.find((item) => item.id === id) ?? []);
}
