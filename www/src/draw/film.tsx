// An oil pattern from above: the film as a tint that deepens in steps, each step
// edged by a line with its thickness, so that it reads without colour and prints.
import { contours } from "d3-contour";
import type { OilMap } from "../types";
import { digits } from "../units";
import { Picture } from "./picture";

/** Thicknesses with a line, in micrometres. */
export const FILM_LEVELS_UM = [0.1, 0.5, 1, 2, 4, 8, 16, 32];

export interface FilmFrame {
  width_px: number;
  height_px: number;
  /** Where a place on the lane lies: boards from the right edge (at the foot of the drawing), feet. */
  at(board: number, foot: number): [number, number];
  /** The board, as a number with parts, and the foot under a point. */
  from(x_px: number, y_px: number): { board: number; foot: number };
}

const LEFT = 22;
const FOOT = 18;
const TOP = 6;
const RIGHT = 8;

/** Lays boards and feet into a box, with room for their numbers. */
export function filmFrame(width_px: number, height_px: number, boards: number, feet: number): FilmFrame {
  const px_ft = (width_px - LEFT - RIGHT) / feet;
  const px_board = (height_px - TOP - FOOT) / boards;
  return {
    width_px,
    height_px,
    at: (board, foot) => [LEFT + foot * px_ft, TOP + (boards + 0.5 - board) * px_board],
    from: (x_px, y_px) => ({
      board: boards + 0.5 - (y_px - TOP) / px_board,
      foot: (x_px - LEFT) / px_ft,
    }),
  };
}

interface FilmProps {
  id: string;
  map: OilMap;
  frame: FilmFrame;
  metric: boolean;
  title: string;
  desc: string;
  children?: preact.ComponentChildren;
}

export function FilmDrawing({ id, map, frame, metric, title, desc, children }: FilmProps) {
  const feet = map.film_um.length;
  const boards = map.film_um[0]?.length ?? 0;
  const corner = frame.at(boards + 0.5, 0);
  const [right, foot] = frame.at(0.5, feet);
  const marks = metric ? [0, 5, 10, 15] : [0, 10, 20, 30, 40, 50, 60];
  return (
    <Picture
      id={id}
      class="film-drawing"
      width={frame.width_px}
      height={frame.height_px}
      viewBox={`0 0 ${frame.width_px} ${frame.height_px}`}
      title={title}
      desc={desc}
    >
      <rect class="boards" x={corner[0]} y={corner[1]} width={right - corner[0]} height={foot - corner[1]} />
      {levelsOf(map).map(({ level_um, path }) => (
        <path
          key={level_um}
          class="film"
          fill-rule="evenodd"
          data-strong={level_um >= 2 || undefined}
          d={path(frame)}
        />
      ))}
      {labelsOf(map, frame).map(({ level_um, x, y }) => (
        <text key={level_um} class="film-level" x={x} y={y + 4} text-anchor="middle">
          {digits(level_um, level_um < 1 ? 1 : 0)}
        </text>
      ))}
      <rect
        class="film-edge"
        x={corner[0]}
        y={corner[1]}
        width={right - corner[0]}
        height={foot - corner[1]}
      />
      {marks.map((mark) => {
        const [x] = frame.at(0.5, metric ? mark / 0.3048 : mark);
        return (
          <text key={mark} x={x} y={foot + 13} text-anchor="middle">
            {mark === marks.at(-1) ? `${mark}\u00a0${metric ? "m" : "ft"}` : mark}
          </text>
        );
      })}
      {[1, 10, 20, 30, 39].map((board) => {
        const [x, y] = frame.at(board, 0);
        return (
          <text key={board} x={x - 4} y={y + 4} text-anchor="end">
            {board}
          </text>
        );
      })}
      {children}
    </Picture>
  );
}

/** Where the film on the middle board falls below a thickness for good, between the middles of two cells. */
function endOf(map: OilMap, level_um: number): number | null {
  const column = map.film_um.map((row) => row[Math.floor(row.length / 2)] ?? 0);
  const last = column.findLastIndex((film_um) => film_um >= level_um);
  const [here, next] = [column[last], column[last + 1]];
  if (here === undefined || next === undefined) return null;
  return last + 0.5 + (here - level_um) / (here - next);
}

const LABEL_PX = 14;

/** Where on the middle board a thickness is written: at its line, the thicker first, where there is room. */
function labelsOf(map: OilMap, frame: FilmFrame): { level_um: number; x: number; y: number }[] {
  let last = Number.NEGATIVE_INFINITY;
  return levelsOf(map)
    .toReversed()
    .flatMap(({ level_um }) => {
      const end = endOf(map, level_um);
      if (end === null) return [];
      const [x, y] = frame.at(20, end);
      if (x < last + LABEL_PX) return [];
      last = x;
      return [{ level_um, x, y }];
    });
}

interface Level {
  level_um: number;
  path(frame: FilmFrame): string;
}

const made = new WeakMap<OilMap, Level[]>();

/** The areas at or above each thickness, their edges smooth between the cells. */
function levelsOf(map: OilMap): Level[] {
  const known = made.get(map);
  if (known) return known;
  const feet = map.film_um.length;
  const boards = map.film_um[0]?.length ?? 0;
  // Board 39 first: the drawing has the lane's left edge on top.
  const values = Array.from({ length: boards }, (_, i) =>
    map.film_um.map((row) => row[boards - 1 - i] ?? 0),
  ).flat();
  const levels = FILM_LEVELS_UM.filter((level_um) => level_um < map.thickest_um);
  const shapes = contours().size([feet, boards]).thresholds(levels)(values);
  const found = shapes.map(({ value, coordinates }) => ({
    level_um: value,
    path: (frame: FilmFrame) =>
      coordinates
        .flat()
        .map((ring) => {
          const points = ring.map(([x = 0, y = 0]) => frame.at(boards + 0.5 - y, x));
          return `${points.map(([x, y], i) => `${i ? "L" : "M"}${x.toFixed(1)} ${y.toFixed(1)}`).join("")}Z`;
        })
        .join(""),
  }));
  made.set(map, found);
  return found;
}
