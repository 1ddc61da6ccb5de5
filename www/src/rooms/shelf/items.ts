// What can be compared: the ball on the bench as it is now, what stands on the
// shelf, and the balls of the house.

import { useMemo } from "preact/hooks";
import { language } from "../../locale/language";
import { offeredBall } from "../../locale/names";
import { useShelf } from "../../shelf/shelf";
import { useStore, type WholeShot, wholeShot } from "../../store";
import { firstDoc, TEMPLATES } from "../bench/templates";

export interface Item {
  id: string;
  name: string;
  note: string;
  shot: WholeShot;
  /** A ball of the house comes without a shot of its own: `shot` is then the opening one. */
  houseBall: boolean;
}

export const BENCH_ID = "bench";

function houseBalls(): Item[] {
  const { shot } = firstDoc();
  return TEMPLATES.map(offeredBall).map((ball, at) => ({
    id: `house-${at + 1}`,
    name: ball.name,
    note: ball.note ?? "",
    shot: wholeShot({ ball, shot }),
    houseBall: true,
  }));
}

export interface Items {
  bench: Item;
  shelf: Item[];
  house: Item[];
}

/** Each the same object for as long as nothing about it changes. */
export function useItems(): Items {
  const { file, shot } = useStore().derived.value;
  const entries = useShelf().entries.value;
  // The last good ball and shot of the bench.
  const bench: Item = useMemo(
    () => ({
      id: BENCH_ID,
      name: file.name,
      note: "",
      shot: wholeShot({ ball: file, shot }),
      houseBall: false,
    }),
    [file, shot],
  );
  const shelf = useMemo(() => entries.map((entry) => ({ ...entry, houseBall: false })), [entries]);
  const house = useMemo(houseBalls, [language()]);
  return { bench, shelf, house };
}

/** Those chosen to compare that are still there, the first one first. */
export function useChosen({ bench, shelf, house }: Items): Item[] {
  const all = [bench, ...shelf, ...house];
  return useShelf().chosen.value.flatMap((id) => all.find((item) => item.id === id) ?? []);
}
