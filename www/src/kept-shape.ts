// What was kept may have been written by another version of the page, or by none:
// enough of its shape is looked at that the page can start with it.

import { type Doc, type Loan, ROOMS, type View } from "./store";

export function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null;
}

export function isLoan(value: unknown): value is Loan {
  if (!isObject(value) || !isDoc(value.own) || !isDoc(value.ownGood)) return false;
  const { taken } = value;
  return (
    isObject(taken) &&
    typeof taken.text === "string" &&
    typeof taken.step === "number" &&
    Array.isArray(taken.states) &&
    taken.states.length > taken.step &&
    taken.states.every((state) => isObject(state) && isDoc(state.start))
  );
}

/** Enough of the shape that the page can show it; the module judges the values. */
export function isDoc(value: unknown): value is Doc {
  if (!isObject(value)) return false;
  const { ball, shot } = value;
  return (
    isObject(ball) &&
    typeof ball.name === "string" &&
    typeof ball.diameter_in === "number" &&
    isObject(ball.cover) &&
    Array.isArray(ball.pieces) &&
    ball.pieces.every((piece) => isObject(piece) && isObject(piece.shape)) &&
    isObject(shot) &&
    isObject(shot.release) &&
    isObject(shot.layout) &&
    isObject(shot.lane)
  );
}

const numbers = (value: unknown, count: number): boolean =>
  Array.isArray(value) && value.length === count && value.every((one) => Number.isFinite(one));
const isPart = (value: unknown): boolean => Number.isInteger(value) && Number(value) >= 0;
const oneOf =
  (...all: (string | null)[]) =>
  (value: unknown) =>
    all.includes(value as string | null);

function isPlane(value: unknown): boolean {
  return (
    value === null ||
    (isObject(value) &&
      Number.isFinite(value.depth_in) &&
      numbers(value.normal, 3) &&
      Math.hypot(...(value.normal as number[])) > 0.5)
  );
}

const SOUND: { [key in keyof View]: (value: unknown) => boolean } = {
  room: oneOf(...ROOMS),
  large: oneOf(null, ...ROOMS),
  units: oneOf("trade", "metric"),
  theme: oneOf("system", "light", "dark"),
  selected: (value) => value === null || isPart(value),
  hidden: (value) => Array.isArray(value) && value.every(isPart),
  plane: isPlane,
  exploded: (value) => Number(value) >= 0 && Number(value) <= 1 && typeof value === "number",
  markers: (value) => typeof value === "boolean",
  hand: oneOf("revs", "effort"),
  tolerances: (value) => value === null || isObject(value),
  target: (value) => value === null || isObject(value),
};

/** As much of how the work was looked at as can be used: the rest is as on a first visit. */
export function soundView(kept: object): Partial<View> {
  const sound = Object.entries(kept).filter(([key, value]) => SOUND[key as keyof View]?.(value));
  return Object.fromEntries(sound) as Partial<View>;
}
