import { contours } from "d3-contour";
import { Picture } from "../../draw/picture";
import { useStore } from "../../store";
import type { BallMap, Figures } from "../../types";
import { digits, measure } from "../../units";
import { controlName, quantityOf } from "../controls";
import { say } from "../say";
import { past } from "./judge";
import type { Side } from "./sides";

const WIDTH = 300;
const HEIGHT = 240;

interface MapPictureProps {
  sides: [Side, Side];
  rows: BallMap["rows"];
  limits: BallMap["limits"];
  /** In parts of the ranges: the ball itself, and the point in hand. */
  here: [number, number];
  point: [number, number];
  desc: string;
  onPoint(point: [number, number]): void;
}

/** Contours of low RG and of differential over two controls. */
export function MapPicture({ sides, rows, limits, here, point, desc, onPoint }: MapPictureProps) {
  const { units } = useStore().view.value;
  const { factor } = measure("rg", units);
  const flat = rows.flat();
  const levels = (of: (figures: Figures) => number) => linesOf(rows, of, factor);
  const rg = levels(({ low_rg_in }) => low_rg_in);
  const differential = levels(({ differential_in }) => differential_in);
  const labelsRg = labels(rg, WIDTH * 0.28);
  const outside = areaOf(
    rows,
    flat.map((figures) => (figures ? past(figures, limits) : Number.NaN)),
    0,
  );
  const impossible = areaOf(
    rows,
    flat.map((figures) => (figures ? 0 : 1)),
    0.5,
  );
  const ends = sides.map(({ control, range }) => {
    const { factor, unit } = measure(quantityOf(control), units);
    return range.map((end) => `${digits(end * factor, 2)}${unit && `\u00a0${unit}`}`);
  });
  const at = ([x, y]: [number, number]): [number, number] => [x * WIDTH, (1 - y) * HEIGHT];
  const inside = (one: [number, number]) => one.every((part) => part >= 0 && part <= 1);
  const [px, py] = at(point);
  const [hx, hy] = at(here);
  return (
    <Picture
      id="maker-map"
      class="maker-map"
      viewBox={`-8 -8 ${WIDTH + 16} ${HEIGHT + 62}`}
      title={say("map-picture", {
        across: controlName(sides[0].control),
        up: controlName(sides[1].control),
      })}
      desc={desc}
      onClick={(event) => {
        const box = event.currentTarget.getBoundingClientRect();
        const scale = (WIDTH + 16) / box.width;
        const part = (value: number) => Math.min(1, Math.max(0, value));
        onPoint([
          part(((event.clientX - box.left) * scale - 8) / WIDTH),
          part(1 - ((event.clientY - box.top) * scale - 8) / HEIGHT),
        ]);
      }}
    >
      <defs>
        <pattern id="map-outside" width="6" height="6" patternUnits="userSpaceOnUse">
          <path d="M0 6L6 0" />
        </pattern>
        <pattern id="map-impossible" width="6" height="6" patternUnits="userSpaceOnUse">
          <path d="M0 6L6 0M0 0L6 6" />
        </pattern>
        <clipPath id="map-clip">
          <rect width={WIDTH} height={HEIGHT} />
        </clipPath>
      </defs>
      <rect class="map-ground" width={WIDTH} height={HEIGHT} />
      <g clip-path="url(#map-clip)">
        {outside && <path class="map-outside" fill-rule="evenodd" d={outside} />}
        {rg.map(({ level, path }) => (
          <path key={level} class="map-rg" d={path} />
        ))}
        {differential.map(({ level, path }) => (
          <path key={level} class="map-differential" d={path} />
        ))}
        {impossible && <path class="map-impossible" fill-rule="evenodd" d={impossible} />}
      </g>
      {labelsRg.map(({ level, text, x, y }) => (
        <text key={level} class="map-label" x={x} y={y} text-anchor="middle">
          {text}
        </text>
      ))}
      {labels(differential, WIDTH * 0.72, labelsRg).map(({ level, text, x, y }) => (
        <text key={level} class="map-label map-label-differential" x={x} y={y} text-anchor="middle">
          {text}
        </text>
      ))}
      {inside(here) && <path class="map-here" d={`M${hx - 8} ${hy}h16m-8 -8v16`} />}
      <circle class="map-point" cx={px} cy={py} r="6" />
      <rect class="map-edge" width={WIDTH} height={HEIGHT} />
      <text x="0" y={HEIGHT + 16}>
        {ends[0]?.[0]}
      </text>
      <text x={WIDTH} y={HEIGHT + 16} text-anchor="end">
        {ends[0]?.[1]}
      </text>
      <text x={WIDTH / 2} y={HEIGHT + 32} text-anchor="middle">
        {say("map-axis-across", { control: controlName(sides[0].control) })}
      </text>
      <text x={WIDTH / 2} y={HEIGHT + 48} text-anchor="middle">
        {say("map-axis-up", {
          control: controlName(sides[1].control),
          from: ends[1]?.[0] ?? "",
          to: ends[1]?.[1] ?? "",
        })}
      </text>
    </Picture>
  );
}

interface Line {
  level: number;
  /** The level as it is written beside the line. */
  text: string;
  path: string;
  points: [number, number][];
}

/** Nice levels between the least and the most of a number, and where they run. */
function linesOf(rows: BallMap["rows"], of: (figures: Figures) => number, factor: number): Line[] {
  const values = rows.flat().map((figures) => (figures ? of(figures) : Number.NaN));
  const known = values.filter((value) => !Number.isNaN(value));
  const [low, high] = [Math.min(...known), Math.max(...known)];
  if (!(high - low > 1e-6)) return [];
  const step = niceStep(((high - low) * factor) / 6) / factor;
  const first = Math.ceil(low / step);
  const thresholds = Array.from(
    { length: Math.max(0, Math.floor(high / step) - first + 1) },
    (_, n) => (first + n) * step,
  );
  const decimals = Math.max(0, -Math.floor(Math.log10(step * factor) + 1e-9));
  return shapes(rows, values, thresholds).map(({ level, rings }) => ({
    level,
    text: digits(level * factor, decimals),
    path: drawn(rings),
    points: rings.flat(),
  }));
}

function areaOf(rows: BallMap["rows"], values: number[], level: number): string {
  return drawn(shapes(rows, values, [level])[0]?.rings ?? []);
}

/** Rings round what is at or above each level, in the picture's own units. */
function shapes(
  rows: BallMap["rows"],
  values: number[],
  thresholds: number[],
): { level: number; rings: [number, number][][] }[] {
  const n = rows.length;
  const place = ([x = 0, y = 0]: number[]): [number, number] => [
    ((x - 0.5) / (n - 1)) * WIDTH,
    (1 - (y - 0.5) / (n - 1)) * HEIGHT,
  ];
  return contours()
    .size([n, n])
    .thresholds(thresholds)(values)
    .map(({ value, coordinates }) => ({
      level: value,
      rings: coordinates.flat().map((ring) => ring.map(place)),
    }));
}

function drawn(rings: [number, number][][]): string {
  return rings
    .map((ring) => `${ring.map(([x, y], i) => `${i ? "L" : "M"}${x.toFixed(1)} ${y.toFixed(1)}`).join("")}Z`)
    .join("");
}

/** 1, 2 or 5 times a power of ten. */
function niceStep(about: number): number {
  const power = 10 ** Math.floor(Math.log10(about));
  const [step] = [1, 2, 5, 10].filter((times) => times * power >= about);
  return (step ?? 10) * power;
}

interface Label {
  level: number;
  text: string;
  x: number;
  y: number;
}

/** Where each level is written: on its line, near one column, where there is room. */
function labels(lines: Line[], column: number, others: Label[] = []): Label[] {
  const placed: Label[] = [];
  for (const { level, text, points } of lines) {
    const near = points
      .filter(([x, y]) => x > 14 && x < WIDTH - 14 && y > 10 && y < HEIGHT - 4)
      .toSorted(([a], [b]) => Math.abs(a - column) - Math.abs(b - column));
    const free = near.find(([x, y]) =>
      [...others, ...placed].every((other) => Math.abs(other.x - x) > 34 || Math.abs(other.y - y) > 13),
    );
    if (free) placed.push({ level, text, x: free[0], y: free[1] + 4 });
  }
  return placed;
}
