// A flat cut as a section drawing: flat colour and hatching by part, an outline
// at every boundary, names on leader lines, centre lines, a scale bar. All
// looks are attributes, so the drawing stands by itself as a file.
import type { Section, Vec3 } from "../types";
import { HatchLines } from "./hatch";
import { type Leader, leaders } from "./leaders";
import { Picture } from "./picture";
import { textPx } from "./use-size";

export interface Paint {
  colour: Vec3;
  hatch: number;
}
/** A point of the ball near the plane worth showing, such as the pin. */
export interface Mark {
  name: string;
  at: [number, number];
}
export interface SectionProps {
  /** Unique in the document; patterns and titles are named from it. */
  id: string;
  section: Section;
  radius_in: number;
  /** The radius that fills the drawing, for several to one scale; the ball's own where left out. */
  scale_in?: number;
  /** Names of the parts, cover first. */
  names: string[];
  /** The part at a point of the plane, to find where a name can point. */
  partAt(at: [number, number]): number;
  paint: Paint[];
  marks?: Mark[];
  /** The narrowest stretch of cover and what to write beside it. */
  narrowest?: { core: [number, number]; surface: [number, number]; text: string } | null;
  width_px: number;
  height_px: number;
  /** The sheet it is drawn on; light, since ink and hatching are dark. */
  paper: string;
  title: string;
  desc: string;
  metric: boolean;
  /** Height of the text. */
  text_px: number;
  highlighted?: number | null;
  onPick?: (part: number) => void;
}

const rgb = ([r, g, b]: Vec3): string =>
  `rgb(${Math.round(r * 255)} ${Math.round(g * 255)} ${Math.round(b * 255)})`;

const INK = "#1c1a17";
/** Least room for the names on one side, in heights of the text. */
const COLUMN = 8.3;

/** From this width on, in heights of the text, there is room for them on one side. */
const ONE_SIDE = 22.9;

/** A name, or as much of it as there is room for. */
function shorten(name: string, text_px: number, weight: number, room_px: number): string {
  const fits = (text: string) => textPx(text, text_px, weight) <= room_px;
  if (fits(name)) return name;
  let length = name.length - 1;
  while (length > 1 && !fits(`${name.slice(0, length)}…`)) length--;
  return `${name.slice(0, length).trimEnd()}…`;
}

/** The largest region of each part: the one its name points at. */
function largest(section: Section): Section["regions"] {
  const best = new Map<number, Section["regions"][number]>();
  for (const region of section.regions) {
    const known = best.get(region.part);
    if (!known || region.area_in2 > known.area_in2) best.set(region.part, region);
  }
  return [...best.values()];
}

/** A region's label point or its mirror image, whichever lies nearest to names on the right. */
function rightmost(region: Section["regions"][number], partAt: SectionProps["partAt"]): [number, number] {
  const [u, v] = region.label_at;
  const mirrored: [number, number] = [Math.abs(u), v];
  return u < 0 && partAt(mirrored) === region.part ? mirrored : [u, v];
}

export function SectionDrawing(props: SectionProps) {
  const { id, section, radius_in, paint, width_px, height_px, paper, highlighted, text_px } = props;
  const sides = width_px >= height_px + 1.2 * COLUMN * text_px ? 2 : width_px >= ONE_SIDE * text_px ? 1 : 0;
  const room_px = Math.min(width_px - sides * COLUMN * text_px - 20, height_px - 5 * text_px);
  // The names have what the ball leaves.
  const column_px = sides > 0 ? (width_px - room_px - 20) / sides : 0;
  const px_in = Math.max(1, room_px / (2 * (props.scale_in ?? radius_in)));
  const cx = sides === 1 ? (width_px - column_px) / 2 : width_px / 2;
  const cy = (height_px - 16) / 2;
  const at = ([u, v]: [number, number]): [number, number] => [cx + u * px_in, cy - v * px_in];
  const targets = largest(section).map((region) => {
    const [x, y] = at(sides === 1 ? rightmost(region, props.partAt) : region.label_at);
    return { part: region.part, x, y };
  });
  const r_px = radius_in * px_in;
  const stroke = 1.4 / px_in;
  return (
    <Picture
      id={id}
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${width_px} ${height_px}`}
      width={width_px}
      height={height_px}
      font-family="'Source Sans 3', system-ui, sans-serif"
      font-size={text_px}
      fill={INK}
      title={props.title}
      desc={props.desc}
    >
      <rect width={width_px} height={height_px} fill={paper} />
      <circle cx={cx} cy={cy} r={r_px} fill="none" stroke={INK} stroke-opacity="0.5" stroke-dasharray="3 4" />
      <g transform={`translate(${cx} ${cy}) scale(${px_in})`} fill-rule="evenodd" stroke-linejoin="round">
        {section.regions.map((region, i) => (
          <path key={i} d={region.path} fill={rgb(paint[region.part]?.colour ?? [0.8, 0.8, 0.8])} />
        ))}
      </g>
      <Hatching {...props} px_in={px_in} cx={cx} cy={cy} />
      <g
        transform={`translate(${cx} ${cy}) scale(${px_in})`}
        fill="none"
        stroke={INK}
        stroke-linejoin="round"
      >
        {section.regions.map((region, i) => (
          <path key={i} d={region.path} stroke-width={highlighted === region.part ? stroke * 2.4 : stroke} />
        ))}
      </g>
      <CentreLines cx={cx} cy={cy} r={r_px} />
      {props.narrowest && (
        <Measure
          from={at(props.narrowest.core)}
          to={at(props.narrowest.surface)}
          text={props.narrowest.text}
          paper={paper}
        />
      )}
      {props.marks?.map((mark) => (
        <MarkSign key={mark.name} mark={mark} at={at(mark.at)} paper={paper} />
      ))}
      {sides > 0
        ? leaders(targets, sides === 1 ? null : cx, 16, cy + r_px, text_px * 1.4).map((leader) => (
            <Name key={leader.part} {...props} leader={leader} column_px={column_px} />
          ))
        : targets.map((target) => (
            <g key={target.part} pointer-events="none">
              <circle cx={target.x} cy={target.y} r={text_px * 0.7} fill={paper} stroke={INK} />
              <text x={target.x} y={target.y + text_px * 0.35} text-anchor="middle">
                {target.part + 1}
              </text>
            </g>
          ))}
      <ScaleBar px_in={px_in} metric={props.metric} y={height_px - 12} />
    </Picture>
  );
}

/** Hatching keeps its own pixel pitch, so it is laid in unscaled coordinates and clipped. */
function Hatching(props: SectionProps & { px_in: number; cx: number; cy: number }) {
  const { id, section, paint, px_in, cx, cy, onPick } = props;
  return (
    <g>
      {section.regions.map((region, i) => {
        return (
          <g key={i}>
            <clipPath id={`${id}-clip-${i}`}>
              <path
                d={region.path}
                clip-rule="evenodd"
                transform={`translate(${cx} ${cy}) scale(${px_in})`}
              />
            </clipPath>
            {/* biome-ignore lint/a11y/noStaticElementInteractions: the list of parts does the same by keyboard */}
            <g
              data-part={region.part}
              clip-path={`url(#${id}-clip-${i})`}
              onClick={onPick && (() => onPick(region.part))}
            >
              <rect width={props.width_px} height={props.height_px} fill="none" pointer-events="all" />
              <HatchLines
                hatch={paint[region.part]?.hatch ?? 0}
                width_px={props.width_px}
                height_px={props.height_px}
              />
            </g>
          </g>
        );
      })}
    </g>
  );
}

function CentreLines({ cx, cy, r }: { cx: number; cy: number; r: number }) {
  return (
    <path
      d={`M${cx} ${cy - r - 7}V${cy + r + 7}M${cx - r - 7} ${cy}H${cx + r + 7}`}
      stroke={INK}
      stroke-width="0.8"
      stroke-opacity="0.7"
      stroke-dasharray="14 3 2 3"
      pointer-events="none"
    />
  );
}

function Name(props: SectionProps & { leader: Leader; column_px: number }) {
  const { leader, names, width_px, highlighted, column_px, text_px } = props;
  const weight = highlighted === leader.part ? 700 : 400;
  const left = leader.side === "left";
  const edge = left ? column_px - 6 : width_px - column_px + 6;
  return (
    <g pointer-events="none">
      <path
        d={`M${edge} ${leader.text_y}H${edge + (left ? 8 : -8)}L${leader.x} ${leader.y}`}
        fill="none"
        stroke={INK}
        stroke-width="1"
      />
      <circle cx={leader.x} cy={leader.y} r="2.6" fill={INK} />
      <text
        x={edge + (left ? -4 : 4)}
        y={leader.text_y + text_px * 0.35}
        text-anchor={left ? "end" : "start"}
        font-weight={weight}
      >
        {shorten(names[leader.part] ?? "", text_px, weight, column_px - 10)}
      </text>
    </g>
  );
}

interface MeasureProps {
  from: [number, number];
  to: [number, number];
  text: string;
  paper: string;
}

/** A dimension line with a tick at either end. At the top and foot of the ball its text stands outside, left of the pin's name; else beyond the inner end, where there is room. */
function Measure({ from, to, text, paper }: MeasureProps) {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  if (length < 1) return null;
  const [ux, uy] = [dx / length, dy / length];
  const tick = ([x, y]: [number, number]) => `M${x - 5 * uy} ${y + 5 * ux}L${x + 5 * uy} ${y - 5 * ux}`;
  const upright = Math.abs(ux) <= 0.35;
  const [x, y] = upright
    ? [to[0] - 9, to[1] + (uy < 0 ? -6 : 16)]
    : [from[0] - 8 * ux, from[1] - 12 * uy + 4];
  const d = `M${from[0]} ${from[1]}L${to[0]} ${to[1]}${tick(from)}${tick(to)}`;
  return (
    <g pointer-events="none" data-measure>
      <path d={d} fill="none" stroke={paper} stroke-width="4.5" />
      <path d={d} fill="none" stroke={INK} stroke-width="1.8" />
      <text
        x={x}
        y={y}
        text-anchor={upright || ux > 0 ? "end" : "start"}
        font-weight="600"
        stroke={paper}
        stroke-width="3.5"
        paint-order="stroke"
      >
        {text}
      </text>
    </g>
  );
}

function MarkSign({ mark, at, paper }: { mark: Mark; at: [number, number]; paper: string }) {
  const [x, y] = at;
  return (
    <g pointer-events="none">
      <circle cx={x} cy={y} r="5" fill={paper} stroke={INK} stroke-width="1.5" />
      <path
        d={`M${x} ${y}V${y - 5}A5 5 0 0 1 ${x + 5} ${y}ZM${x} ${y}V${y + 5}A5 5 0 0 1 ${x - 5} ${y}Z`}
        fill={INK}
      />
      <text x={x + 8} y={y - 6} font-size="0.92em" stroke={paper} stroke-width="3" paint-order="stroke">
        {mark.name}
      </text>
    </g>
  );
}

function ScaleBar({ px_in, metric, y }: { px_in: number; metric: boolean; y: number }) {
  const step_px = metric ? px_in / 2.54 : px_in / 2;
  const count = metric ? 5 : 4;
  const text = metric ? "5 cm" : "2 in";
  return (
    <g pointer-events="none">
      {Array.from({ length: count }, (_, i) => (
        <rect
          key={i}
          x={10 + i * step_px}
          y={y - 5}
          width={step_px}
          height="5"
          fill={i % 2 ? "none" : INK}
          stroke={INK}
          stroke-width="1"
        />
      ))}
      <text x={16 + count * step_px} y={y}>
        {text}
      </text>
    </g>
  );
}
