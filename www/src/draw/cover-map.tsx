// The cover's thickness over the whole ball as a flat map: round the pin axis
// from left to right, from the pin at the top to the far side at the bottom.
// Classes by colour with a line and its number between them.
import { contours } from "d3-contour";
import type { Vec3 } from "../types";
import { say } from "./say";

export interface CoverMapProps {
  /** Inches, row by row from the pin down, from +x round. */
  map: Float64Array;
  /** Inches to the nearest hole's wall, below 0 where one opens; empty without holes. */
  to_hole_in: Float64Array;
  rows: number;
  columns: number;
  limits_in: readonly number[];
  /** One more than limits, the thinnest first. */
  colours: string[];
  /** How a limit is written on its line. */
  label(limit_in: number): string;
  /** The thinnest place and what is written beside it; left out where there is none. */
  mark: { direction: Vec3; text: string } | null;
  title: string;
  desc: string;
}

const WIDTH = 360;
const HEIGHT = 180;
const MARGIN = { left: 8, right: 8, top: 18, bottom: 20 };
/** A line that takes up less of the map's width, or twice as much of its height, bears no number. */
const LEAST_SHARE = 0.25;
/** As thick as a limit is in the class above it, whatever rounding says. */
const ROUNDING_IN = 4e-5;

type Ring = [number, number][];

export function CoverMap(props: CoverMapProps) {
  const { map, rows, columns, limits_in, colours, mark } = props;
  const at = ([x, y]: [number, number]): [number, number] => [(x / columns) * WIDTH, (y / rows) * HEIGHT];
  const filled = Array.from(map, (inches) => inches + ROUNDING_IN);
  const levels = contours()
    .size([columns, rows])
    .thresholds([...limits_in])(filled);
  const rings = levels.map(({ coordinates }) => coordinates.flat() as Ring[]);
  const path = (all: Ring[]) =>
    all
      .map(
        (ring) =>
          `M${ring
            .map((point) =>
              at(point)
                .map((c) => c.toFixed(1))
                .join(" "),
            )
            .join("L")}Z`,
      )
      .join("");
  const holes = path(openings(props));
  const spot = mark && place(mark.direction);
  return (
    <svg
      class="cover-map"
      viewBox={`${-MARGIN.left} ${-MARGIN.top} ${WIDTH + MARGIN.left + MARGIN.right} ${HEIGHT + MARGIN.top + MARGIN.bottom}`}
      role="img"
      aria-label={`${props.title}. ${props.desc}`}
    >
      <rect width={WIDTH} height={HEIGHT} fill={colours[0]} />
      {levels.map(({ value }, n) => (
        <path
          key={value}
          d={path(rings[n] ?? [])}
          fill={colours[n + 1]}
          fill-rule="evenodd"
          class="cover-line"
        />
      ))}
      <path d={holes} fill-rule="evenodd" class="cover-hole" />
      <rect width={WIDTH} height={HEIGHT} class="cover-frame" />
      {levels.map(({ value }, n) =>
        (rings[n] ?? []).map((ring, k) => {
          const where = numbered(ring, columns, rows, n);
          if (!where) return null;
          const [x, y] = at(where);
          return (
            <text key={`${value}-${k}`} x={x} y={y + 3.5} text-anchor="middle" class="cover-number">
              {props.label(value)}
            </text>
          );
        }),
      )}
      {spot && mark && (
        <g>
          <circle cx={spot[0]} cy={spot[1]} r="4.5" class="cover-spot" />
          <path d={`M${spot[0] - 7} ${spot[1]}h14M${spot[0]} ${spot[1] - 7}v14`} class="cover-line" />
          <text
            x={spot[0] + (spot[0] > WIDTH / 2 ? -9 : 9)}
            y={Math.max(12, spot[1] - 6)}
            text-anchor={spot[0] > WIDTH / 2 ? "end" : "start"}
            class="cover-number cover-mark"
          >
            {mark.text}
          </text>
        </g>
      )}
      <text x={WIDTH / 2} y="-5" text-anchor="middle" class="cover-edge">
        {say("draw-pin")}
      </text>
      <text x={WIDTH / 2} y={HEIGHT + 14} text-anchor="middle" class="cover-edge">
        {say("draw-opposite-pin")}
      </text>
      {["+x", "+y", "−x", "−y"].map((axis, n) => (
        <text key={axis} x={(n * WIDTH) / 4 + 3} y={HEIGHT - 5} class="cover-number">
          {axis}
        </text>
      ))}
      <path d={`M0 ${HEIGHT / 2}H${WIDTH}`} class="cover-equator" />
    </svg>
  );
}

/** The rims of the holes: where the way to the nearest wall goes through 0. The
 * map is continued over its edges, so that a hole across one stays open there. */
function openings({ to_hole_in, rows, columns }: CoverMapProps): Ring[] {
  if (to_hole_in.length === 0) return [];
  const [wide, tall] = [columns + 2, rows + 2];
  const way = Array.from({ length: wide * tall }, (_, n) => {
    const row = Math.floor(n / wide) - 1;
    const beyond = row < 0 || row >= rows;
    // Over a pole lies the other side of the ball.
    const column = (n % wide) - 1 + columns + (beyond ? columns / 2 : 0);
    const inside = Math.min(rows - 1, Math.max(0, row));
    return -(to_hole_in[inside * columns + (column % columns)] ?? Number.POSITIVE_INFINITY);
  });
  const [level] = contours().size([wide, tall]).thresholds([0])(way);
  const clamp = (value: number, most: number) => Math.min(most, Math.max(0, value));
  const rings = (level?.coordinates.flat() ?? []) as Ring[];
  return rings.map((ring) => ring.map(([x, y]) => [clamp(x - 1, columns), clamp(y - 1, rows)]));
}

/** Where a direction lies on the map. */
function place([x, y, z]: Vec3): [number, number] {
  const down = Math.acos(Math.min(1, Math.max(-1, z / Math.hypot(x, y, z))));
  const round = (Math.atan2(y, x) + 2 * Math.PI) % (2 * Math.PI);
  return [(round / (2 * Math.PI)) * WIDTH, (down / Math.PI) * HEIGHT];
}

/** A point of a line well inside the map for its number, farther along for every line; null where the line is short or all edge. */
function numbered(ring: Ring, columns: number, rows: number, line: number): [number, number] | null {
  const [x, y] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
  const wide = Math.max(...x) - Math.min(...x) > LEAST_SHARE * columns;
  const tall = Math.max(...y) - Math.min(...y) > 2 * LEAST_SHARE * rows;
  const inside = ring.filter(
    ([x, y]) => x > 0.05 * columns && x < 0.95 * columns && y > 0.06 * rows && y < 0.94 * rows,
  );
  if (!(wide || tall)) return null;
  return inside[Math.floor(inside.length * (0.2 + 0.09 * line))] ?? null;
}
