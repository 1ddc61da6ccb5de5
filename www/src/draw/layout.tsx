// The layout on the ball, seen straight at the grip centre with the fingers
// up: pin, PAP, mass bias, lines, holes, and the track rings of the shot. What
// lies on the far side is faint. Plain data in; knows no store.
import { holeName } from "../locale/names";
import "./layout.css";
import type { Units } from "../store";
import type { Drilled, Hand, Track, Vec3 } from "../types";
import { reading } from "../units";
import { Picture } from "./picture";
import { say } from "./say";
import { circleAt, greatCircle, outline, type Seen, seenFrom } from "./sphere";
import { remPx } from "./use-size";
import { add, cross, dot, scale, unit } from "./vectors";

export interface LayoutProps {
  id: string;
  drilled: Drilled;
  hand: Hand;
  /** The rings of the shot; null for the layout alone. */
  track: Track | null;
  radius_in: number;
  size_px: number;
  units: Units;
}

export function LayoutDrawing({ id, drilled, hand, track, radius_in, size_px, units }: LayoutProps) {
  const { marks } = drilled;
  const r = size_px / 2 - remPx(2.125);
  const see = seenFrom(marks.grip_centre, marks.up, r);
  const line = (pole: Vec3, kind: string) => {
    const { near, far } = outline(greatCircle(pole), see);
    return (
      <g class={kind}>
        <path class="far" d={far} />
        <path d={near} />
      </g>
    );
  };
  const arc = outline(between(marks.pin, marks.pap), see);
  return (
    <Picture
      id={id}
      class="layout-drawing"
      viewBox={`${-size_px / 2} ${-size_px / 2} ${size_px} ${size_px}`}
      width={size_px}
      height={size_px}
      title={say("draw-layout")}
      desc={layoutWords(drilled, hand, units)}
    >
      <circle class="globe" r={r} />
      {track?.rings.map(({ axis, height_in }, n) => {
        const { near, far } = outline(circleAt(axis, height_in / radius_in), see);
        return (
          <g class="ring" key={n}>
            <path class="far" d={far} />
            <path d={near} />
          </g>
        );
      })}
      {line(marks.up, "midline")}
      {line(marks.over, "centre-line")}
      {line(marks.val_pole, "val")}
      <path class="arc far" d={arc.far} />
      <path class="arc" d={arc.near} />
      {drilled.holes.map(({ name, entry, diameter_in }) => {
        const rim = (across: number) =>
          outline(circleAt(unit(entry), Math.sqrt(Math.max(0, 1 - (across / 2 / radius_in) ** 2))), see);
        const wide = drilled.inserts.find((insert) => insert.hole === name)?.drilled_diameter_in;
        const hole = rim(diameter_in);
        return (
          <g class="hole" key={name}>
            {wide !== undefined && <path class="insert" d={rim(wide).near} />}
            <path class="bore" d={hole.near} />
            <path class="far" d={hole.far} />
          </g>
        );
      })}
      {track?.bow_ties?.map(({ at }, n) => (
        <Spot key={n} see={see} at={at} kind="tie" name={say("draw-bow-tie")} />
      ))}
      <LineName
        see={see}
        at={turnedFrom(marks.grip_centre, scale(marks.over, -1), 52)}
        name={say("draw-midline")}
      />
      <LineName see={see} at={turnedFrom(marks.foot, marks.up, 40)} beside name={say("draw-val")} />
      <Spot see={see} at={marks.grip_centre} kind="grip" name={say("draw-grip-centre")} />
      <Spot see={see} at={marks.mass_bias} kind="bias" name={say("draw-mass-bias")} />
      <Spot see={see} at={marks.pap} kind="PAP" name={say("draw-pap")} />
      <Spot see={see} at={marks.pin} kind="pin" name={say("draw-pin")} />
    </Picture>
  );
}

const SIGNS: Record<string, string> = {
  PAP: "M0-7L7 0L0 7L-7 0Z",
  bias: "M-5-5H5V5H-5Z",
  grip: "M-6 0H6M0-6V6",
  tie: "M-6-4L6 4V-4L-6 4Z",
};

function Spot({ see, at, kind, name }: { see: Seen; at: Vec3; kind: string; name: string }) {
  const [x, y, depth] = see(at);
  const left = x < -20 || (kind === "grip" && x <= 0);
  return (
    <g
      class={depth >= -1e-6 ? `spot ${kind}` : `spot far ${kind}`}
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}
    >
      {kind === "pin" ? <circle r="5" /> : <path d={SIGNS[kind] ?? ""} />}
      <text x={left ? -10 : 10} y={kind === "grip" ? 14 : 4} text-anchor={left ? "end" : "start"}>
        {name}
      </text>
    </g>
  );
}

function LineName({ see, at, beside, name }: { see: Seen; at: Vec3; beside?: boolean; name: string }) {
  const [x, y] = see(at);
  const out = beside ? (x > 0 ? 8 : -8) : 0;
  return (
    <text x={x + out} y={y - 5} text-anchor={out > 0 ? "start" : out < 0 ? "end" : "middle"}>
      {name}
    </text>
  );
}

/** From `at` this far towards `way`, which is square to it. */
function turnedFrom(at: Vec3, way: Vec3, turn_deg: number): Vec3 {
  const turn = (turn_deg * Math.PI) / 180;
  return add(scale(at, Math.cos(turn)), scale(way, Math.sin(turn)));
}

/** Points along the short way from `a` to `b`. */
function between(a: Vec3, b: Vec3): Vec3[] {
  const angle = Math.acos(Math.max(-1, Math.min(1, dot(a, b))));
  const side = unit(cross(cross(a, b), a));
  return Array.from({ length: 33 }, (_, n) => {
    const turn = (angle * n) / 32;
    return add(scale(a, Math.cos(turn)), scale(side, Math.sin(turn)));
  });
}

/** The drawing in words: where pin and PAP lie from the grip, and whether they are in view. */
export function layoutWords({ marks, holes }: Drilled, hand: Hand, units: Units): string {
  const right: Vec3 = hand === "right" ? marks.over : scale(marks.over, -1);
  const where = (at: Vec3): string => {
    const [across, up] = [dot(at, right), dot(at, marks.up)];
    return say("draw-layout-where", {
      up: Math.abs(up) <= 0.08 ? "middle" : up > 0 ? "above" : "below",
      across: Math.abs(across) <= 0.08 ? "middle" : across > 0 ? "right" : "left",
      side: dot(at, marks.grip_centre) < 0 ? "far" : "near",
    });
  };
  const size = (inches: number) => reading(inches, "size", units);
  return say("draw-layout-says", {
    pin: where(marks.pin),
    "pin-to-grip": size(marks.pin_to_grip_centre_in),
    "pin-to-val": size(Math.abs(marks.pin_to_val_in)),
    pap: where(marks.pap),
    "pap-to-grip": size(marks.pap_to_grip_centre_in),
    bias: where(marks.mass_bias),
    holes: holes.map(({ name }) => holeName(name)).join(", "),
  });
}
