// The edits a person makes to the grip of a shot, and the grips to start from.

import league from "../../../../scenarios/layouts/league-right.layout.json";
import twoHanded from "../../../../scenarios/layouts/two-handed-left.layout.json";
import type { Doc, Shot, Store } from "../../store";
import type { Drilling, LayoutFile, ThumbBore } from "../../types";
import { say } from "./say";

export const LAYOUTS = [league, twoHanded] as LayoutFile[];

const FIRST = (league as LayoutFile).drilling;
export const FIRST_INSERT = { wall_in: 0.0625, density_g_cc: 1.2 };

export type Digit = "middle" | "ring" | "thumb";

/** Turns the drilling on with a common grip, or off. */
export function setDrilled(store: Store, on: boolean): void {
  store.editShot((old) => {
    const { drilling: _, ...rest } = old;
    return on ? { ...rest, drilling: structuredClone(FIRST) } : rest;
  });
}

/** With the thumb hole of the common grip, or two-handed without one. */
export function setThumb(store: Store, on: boolean): void {
  editGrip(store, ({ thumb: _, ...rest }) =>
    on ? { ...rest, thumb: structuredClone(FIRST.thumb as ThumbBore) } : rest,
  );
}

export function editGrip(store: Store, change: (grip: Drilling) => Drilling, key = ""): void {
  store.editShot(
    (old) => (old.drilling ? { ...old, drilling: change(old.drilling) } : old),
    key && `drilling.${key}`,
  );
}

/** Changes one hole; a key set to undefined is left out. */
export function editBore(store: Store, digit: Digit, change: Partial<ThumbBore>, key = ""): void {
  editGrip(
    store,
    (grip) => {
      const { insert, ...bore } = { ...grip[digit], ...change } as ThumbBore;
      return { ...grip, [digit]: insert ? { ...bore, insert } : bore };
    },
    key && `${digit}.${key}`,
  );
}

/** The shot with hand, layout and grip of a layout file; how the ball is turned at release stays. */
export function withLayout(shot: Shot, { hand, layout, drilling }: LayoutFile): Shot {
  const release =
    hand === shot.hand
      ? shot.release
      : { ...shot.release, launch_angle_deg: -shot.release.launch_angle_deg || 0 };
  return { ...shot, hand, release, drilling, layout: { ...shot.layout, ...layout } };
}

/** What a layout file of this shot holds; null where nothing is drilled. */
export function layoutOf({ ball, shot }: Doc): LayoutFile | null {
  const { hand, drilling } = shot;
  const { start_turn_deg: _, ...layout } = shot.layout;
  if (!drilling) return null;
  return {
    format: "pithball.layout/1",
    name: say("bench-layout-name", { ball: ball.name }),
    hand,
    layout,
    drilling,
  };
}
