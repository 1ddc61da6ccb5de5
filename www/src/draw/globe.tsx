// The ball close up as it rolls, seen from behind and a little above: pin,
// axis, and the rings the lane leaves on it. What is on the far side is faint.
import type { BandWidth, Hand, Hole, Phase, Roll, Vec3 } from "../types";
import { endOf, momentAt } from "./moment";
import { Picture } from "./picture";
import { say } from "./say";
import { circleAt } from "./sphere";
import { add, dot, type Quaternion, scale, turned, turnedBack, unit } from "./vectors";

const DOWN: Vec3 = [0, 0, -1];
const LOOK_DOWN = (20 * Math.PI) / 180;

/** Lane axes to the picture: right, up, and towards the viewer. */
export function seen([x, y, z]: Vec3): Vec3 {
  const c = Math.cos(LOOK_DOWN);
  const s = Math.sin(LOOK_DOWN);
  return [x, z * c + y * s, -y * c + z * s];
}

/** A mark on the ball's surface every so often along the run, in ball axes. */
export interface TrackPoint {
  t_s: number;
  phase: Phase;
  at: Vec3;
}

const STEP_S = 0.004;

/** Where the lane has touched the ball, evenly in time. */
export function track(roll: Roll): TrackPoint[] {
  const end = endOf(roll);
  const steps = Math.max(1, Math.ceil(end / STEP_S));
  const out: TrackPoint[] = [];
  for (let i = 0; i <= steps; i++) {
    const now = momentAt(roll, (end * i) / steps);
    if (now) out.push({ t_s: now.t_s, phase: now.phase, at: turnedBack(now.turn, DOWN) });
  }
  return out;
}

/** The release axis point on the ball: where +ω leaves it, −ω for a left-hander. */
function axisPoint(roll: Roll, hand: Hand): Vec3 | null {
  const first = roll.samples[0];
  return first ? scale(first.axis_body, hand === "right" ? 1 : -1) : null;
}

/** Paths of a polyline on the sphere, split into the near and the far side. */
function halves(points: Vec3[], q: Quaternion, r: number): { near: string; far: string } {
  const out = { near: "", far: "" };
  let last: "near" | "far" | null = null;
  for (const point of points) {
    const [x, y, depth] = seen(turned(q, point));
    const side = depth >= 0 ? "near" : "far";
    const text = `${(x * r).toFixed(1)} ${(-y * r).toFixed(1)}`;
    if (last !== null && last !== side) out[last] += `L${text}`;
    out[side] += `${last === side ? "L" : "M"}${text}`;
    last = side;
  }
  return out;
}

const circle = (height: number): Vec3[] => {
  const r = Math.sqrt(1 - height * height);
  return Array.from({ length: 49 }, (_, i) => [
    r * Math.cos((i * Math.PI) / 24),
    r * Math.sin((i * Math.PI) / 24),
    height,
  ]);
};
const meridian = (turn: number): Vec3[] =>
  Array.from({ length: 49 }, (_, i) => {
    const a = (i * Math.PI) / 24;
    return [Math.sin(a) * Math.cos(turn), Math.sin(a) * Math.sin(turn), Math.cos(a)];
  });
/** Lines about the pin, so that the eye sees the ball turn. */
const NET = [
  circle(0),
  circle(0.7),
  circle(-0.7),
  meridian(0),
  meridian(Math.PI / 3),
  meridian((2 * Math.PI) / 3),
];

export interface GlobeProps {
  id: string;
  roll: Roll;
  hand: Hand;
  points: TrackPoint[];
  /** Holes of the ball as thrown. */
  holes: Hole[];
  radius_in: number;
  /** Measures of the band of rings; none until the run is whole. */
  measured: boolean;
  t_s: number;
  size_px: number;
  title: string;
  desc: string;
}

export function Globe(props: GlobeProps) {
  const { id, roll, hand, points, holes, radius_in, measured, t_s, size_px, title, desc } = props;
  const now = momentAt(roll, t_s);
  if (!now) return null;
  const r = size_px / 2 - 16;
  const net = NET.map((one) => halves(one, now.turn, r));
  const phases: Phase[] = ["skid", "hook", "roll"];
  const past = points.filter((point) => point.t_s <= t_s + STEP_S);
  const axis = axisPoint(roll, hand);
  return (
    <Picture
      id={id}
      class="globe-drawing"
      viewBox={`${-size_px / 2} ${-size_px / 2} ${size_px} ${size_px}`}
      width={size_px}
      height={size_px}
      title={title}
      desc={desc}
    >
      <circle class="globe" r={r} />
      {net.map((one, i) => (
        <path key={i} class="net" d={one.near} />
      ))}
      {holes.map(({ entry, diameter_in }, i) => {
        const height = Math.sqrt(Math.max(0, 1 - (diameter_in / 2 / radius_in) ** 2));
        return <path key={i} class="hole" d={halves(circleAt(unit(entry), height), now.turn, r).near} />;
      })}
      {phases.map((phase) => {
        const ring = halves(
          past.filter((point) => point.phase === phase).map((point) => point.at),
          now.turn,
          r,
        );
        return (
          <g key={phase}>
            <path class={`ring far ${phase}`} d={ring.far} />
            <path class={`ring ${phase}`} d={ring.near} />
          </g>
        );
      })}
      {measured && <Band roll={roll} turn={now.turn} radius_in={radius_in} r={r} />}
      {axis && <Spot kind="PAP" name={say("draw-pap")} at={axis} turn={now.turn} r={r} />}
      <Spot kind="pin" name={say("draw-pin")} at={[0, 0, 1]} turn={now.turn} r={r} />
      <path class="contact" d={contact(r)} />
    </Picture>
  );
}

interface BandProps {
  roll: Roll;
  turn: Quaternion;
  radius_in: number;
  r: number;
}

/** Where the band of rings is widest, with a bar across it, and its bow-ties. */
function Band({ roll, turn, radius_in, r }: BandProps) {
  const { widest, bow_ties, rings } = roll.track;
  const axis = rings[0]?.axis;
  if (!widest || !bow_ties || !axis) return null;
  const bar = halves(across(widest, axis, radius_in), turn, r);
  return (
    <g class="band">
      <path class="bar far" d={bar.far} />
      <path class="bar" d={bar.near} />
      {bow_ties.map(({ at }, i) => {
        const [tx, ty, near] = seen(turned(turn, at));
        return (
          <path
            key={i}
            class={near >= 0 ? "tie" : "tie far"}
            transform={`translate(${(tx * r).toFixed(1)} ${(-ty * r).toFixed(1)})`}
            d="M-6-4L6 4V-4L-6 4Z"
          />
        );
      })}
    </g>
  );
}

/** Points across the band, along the great circle through the first ring's axis. */
function across({ at, width_in }: BandWidth, axis: Vec3, radius_in: number): Vec3[] {
  const way = unit(add(axis, scale(at, -dot(axis, at))));
  const half = width_in / 2 / radius_in;
  return Array.from({ length: 17 }, (_, i) => {
    const angle = half * (i / 8 - 1);
    return add(scale(at, Math.cos(angle)), scale(way, Math.sin(angle)));
  });
}

/** A small wedge at the point that touches the lane. */
function contact(r: number): string {
  const [x, y] = seen(DOWN);
  return `M${x * r} ${-y * r}l-6 10h12Z`;
}

interface SpotProps {
  kind: "pin" | "PAP";
  name: string;
  at: Vec3;
  turn: Quaternion;
  r: number;
}

function Spot({ kind, name, at, turn, r }: SpotProps) {
  const [x, y, depth] = seen(turned(turn, unit(at)));
  return (
    <g class={depth >= 0 ? `spot ${kind}` : `spot far ${kind}`} transform={`translate(${x * r} ${-y * r})`}>
      {kind === "pin" ? <circle r="4.5" /> : <path d="M0-6L6 0L0 6L-6 0Z" />}
      <text x={x > 0.6 ? -9 : 9} y="4" text-anchor={x > 0.6 ? "end" : "start"}>
        {name}
      </text>
    </g>
  );
}
