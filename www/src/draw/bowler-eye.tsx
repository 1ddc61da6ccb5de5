// The same shot as the bowler sees it: a true perspective, nothing stretched.
import type { Roll } from "../types";
import type { Ground } from "./ground";
import { ARROWS, BOARD_IN, boardToX, GUTTER_IN, LANE_FT, line, PINS, PIT_FT, WIDTH_IN } from "./lane-frame";
import { momentAt, stretches } from "./moment";
import { Picture } from "./picture";

export interface EyeProps {
  id: string;
  roll: Roll;
  ground: Ground;
  radius_in: number;
  t_s: number | null;
  width_px: number;
  height_px: number;
  title: string;
  desc: string;
}

/** The eye of a person who stands behind the foul line. */
const EYE_UP_IN = 64;
const EYE_BACK_IN = 170;
const NEAR_FT = -2;
const HALF_IN = WIDTH_IN / 2;

type Project = (x_in: number, y_ft: number, z_in?: number) => [number, number];

function camera(width_px: number, height_px: number): { to: Project; px_in: (y_ft: number) => number } {
  const near = EYE_BACK_IN + NEAR_FT * 12;
  const far = EYE_BACK_IN + PIT_FT * 12;
  const top = 10;
  const rise = EYE_UP_IN / near - (EYE_UP_IN - 26) / far;
  const wide = (2 * (HALF_IN + GUTTER_IN)) / near;
  const f = Math.min((height_px - top - 4) / rise, (width_px - 4) / wide);
  const horizon = top - (f * (EYE_UP_IN - 26)) / far;
  return {
    to: (x_in, y_ft, z_in = 0) => {
      const away = EYE_BACK_IN + y_ft * 12;
      return [width_px / 2 + (f * x_in) / away, horizon + (f * (EYE_UP_IN - z_in)) / away];
    },
    px_in: (y_ft) => f / (EYE_BACK_IN + y_ft * 12),
  };
}

const strip = (to: Project, x0: number, x1: number, y0: number, y1: number): string =>
  `${line([to(x0, y0), to(x0, y1), to(x1, y1), to(x1, y0)])}Z`;

export function BowlerEye(props: EyeProps) {
  const { id, roll, ground, radius_in, t_s, width_px, height_px } = props;
  const { to, px_in } = camera(width_px, height_px);
  const now = t_s === null ? null : momentAt(roll, t_s);
  return (
    <Picture
      id={id}
      class="lane-drawing eye"
      viewBox={`0 0 ${width_px} ${height_px}`}
      width={width_px}
      height={height_px}
      title={props.title}
      desc={props.desc}
    >
      <path class="gutter" d={strip(to, -HALF_IN - GUTTER_IN, HALF_IN + GUTTER_IN, 0, PIT_FT)} />
      <path class="boards" d={strip(to, -HALF_IN, HALF_IN, NEAR_FT, PIT_FT)} />
      {ground.tints.map(({ share, patches }, i) => (
        <path
          key={i}
          class="oil"
          fill-opacity={share}
          d={patches.map((p) => strip(to, p.x0_in, p.x1_in, p.from_ft, p.to_ft)).join("")}
        />
      ))}
      {[5, 10, 15, 20, 25, 30, 35].map((board) => {
        const x = boardToX(board, "right");
        return <path key={board} class="board-line" d={line([to(x, 0), to(x, LANE_FT)])} />;
      })}
      <path class="foul-line" d={line([to(-HALF_IN, 0), to(HALF_IN, 0)])} />
      {ARROWS.map(({ board, y_ft }) => {
        const x = boardToX(board, "right");
        const half = BOARD_IN / 2;
        return (
          <path
            key={board}
            class="arrow"
            d={`${line([to(x - half, y_ft - 0.5), to(x, y_ft), to(x + half, y_ft - 0.5)])}Z`}
          />
        );
      })}
      <g fill="none">
        {stretches(roll.samples).map(({ phase, samples }) => (
          <path
            key={samples[0]?.t_s}
            class={`path ${phase}`}
            d={line(samples.map((s) => to(s.x_in, s.y_ft)))}
          />
        ))}
      </g>
      {[...PINS].reverse().map((pin) => (
        <PinShape key={`${pin.x_in} ${pin.y_ft}`} {...pin} to={to} px_in={px_in(pin.y_ft)} />
      ))}
      {now && <Ball to={to} px_in={px_in(now.y_ft)} x_in={now.x_in} y_ft={now.y_ft} radius_in={radius_in} />}
    </Picture>
  );
}

/** A pin as a plain upright, 15 in tall and 4.75 in at the belly. */
function PinShape({ x_in, y_ft, to, px_in }: { x_in: number; y_ft: number; to: Project; px_in: number }) {
  const [x, y] = to(x_in, y_ft);
  const w = (half: number) => half * px_in;
  const h = (up: number) => y - up * px_in;
  return (
    <path
      class="pin"
      d={`M${x - w(1.1)} ${y}C${x - w(3.2)} ${h(5)} ${x - w(2)} ${h(7)} ${x - w(0.9)} ${h(10)}A${w(1.3)} ${w(1.6)} 0 1 1 ${x + w(0.9)} ${h(10)}C${x + w(2)} ${h(7)} ${x + w(3.2)} ${h(5)} ${x + w(1.1)} ${y}Z`}
    />
  );
}

function Ball(props: { to: Project; px_in: number; x_in: number; y_ft: number; radius_in: number }) {
  const { to, px_in, x_in, y_ft, radius_in } = props;
  const [x, y] = to(x_in, y_ft, radius_in);
  return <circle class="ball-mark" cx={x} cy={y} r={Math.max(3, radius_in * px_in)} />;
}
