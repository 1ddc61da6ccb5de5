// The lane from above, width stretched: boards, feet, arrows, oil, the path by
// phase, the breakpoint, the entry. Colours come from draw.css.
import type { Hand, Roll } from "../types";
import { digits } from "../units";
import type { Ground as GroundData } from "./ground";
import { ARROWS, boardToX, GUTTER_IN, LANE_FT, line, PINS, PIT_FT, type Place, WIDTH_IN } from "./lane-frame";
import { momentAt, stretches } from "./moment";
import { Picture } from "./picture";
import { phaseName, say } from "./say";
import { textPx } from "./use-size";

export interface LaneProps {
  id: string;
  roll: Roll;
  hand: Hand;
  ground: GroundData;
  place: Place;
  /** The moment shown; null draws no ball and the whole path as gone over. */
  t_s: number | null;
  /** Distances in metres in place of feet. */
  metric: boolean;
  title: string;
  desc: string;
}

const HALF_IN = WIDTH_IN / 2;
/** Height of a capital or a digit over that of its text. */
const CAPITAL = 0.68;

function box(place: Place, x0: number, y0: number, x1: number, y1: number) {
  const [ax, ay] = place.at(x0, y0);
  const [bx, by] = place.at(x1, y1);
  return { x: Math.min(ax, bx), y: Math.min(ay, by), width: Math.abs(bx - ax), height: Math.abs(by - ay) };
}

export function LaneDrawing(props: LaneProps) {
  const { id, roll, place, t_s } = props;
  return (
    <Picture
      id={id}
      class="lane-drawing"
      viewBox={`0 0 ${place.width_px} ${place.height_px}`}
      width={place.width_px}
      height={place.height_px}
      font-size={place.text_px}
      title={props.title}
      desc={props.desc}
    >
      <Ground {...props} />
      <Rulers {...props} />
      <Path roll={roll} place={place} t_s={t_s} />
      <Phases {...props} />
      <Remarks {...props} />
      {t_s !== null && <BallMark roll={roll} place={place} t_s={t_s} />}
    </Picture>
  );
}

const outline = ({ x, y, width, height }: ReturnType<typeof box>): string =>
  `M${x.toFixed(1)} ${y.toFixed(1)}h${width.toFixed(1)}v${height.toFixed(1)}h${(-width).toFixed(1)}Z`;

/**
 * Dots as the round ends of dashes without length: they print as they are, where a pattern would be a bitmap.
 * They lie on one lattice over the whole drawing, so that patches join.
 */
function dots({ x, y, width, height }: ReturnType<typeof box>): string {
  let path = "";
  for (let row = Math.ceil((y - 1.5) / 3); 1.5 + 3 * row < y + height; row++) {
    const shift = row % 2 ? 4.5 : 1.5;
    const from = shift + 6 * Math.ceil((x - shift) / 6);
    if (from < x + width) path += `M${from} ${1.5 + 3 * row}H${(x + width).toFixed(1)}`;
  }
  return path;
}

export function Ground({ place, ground }: Pick<LaneProps, "place" | "ground">) {
  return (
    <g>
      <rect class="gutter" {...box(place, -HALF_IN - GUTTER_IN, 0, HALF_IN + GUTTER_IN, PIT_FT)} />
      <rect class="boards" {...box(place, -HALF_IN, -1.2, HALF_IN, PIT_FT)} />
      {ground.tints.map(({ share, patches }, i) => {
        const areas = patches.map((p) => box(place, p.x0_in, p.from_ft, p.x1_in, p.to_ft));
        return (
          <g key={i}>
            <path class="oil" fill-opacity={share} d={areas.map(outline).join("")} />
            <path class="oil-dot" stroke-opacity={0.35 * share} d={areas.map(dots).join("")} />
          </g>
        );
      })}
      {[5, 10, 15, 20, 25, 30, 35].map((board) => {
        const [x0, y0] = place.at(boardToX(board, "right"), 0);
        const [x1, y1] = place.at(boardToX(board, "right"), LANE_FT);
        return <path key={board} class="board-line" d={`M${x0} ${y0}L${x1} ${y1}`} />;
      })}
      <path class="foul-line" d={line([place.at(-HALF_IN, 0), place.at(HALF_IN, 0)])} />
      {ARROWS.map((arrow) => {
        const [x, y] = place.at(boardToX(arrow.board, "right"), arrow.y_ft);
        return <path key={arrow.board} class="arrow" d={`M${x} ${y}l-9 -3.2v6.4Z`} />;
      })}
      {PINS.map((pin) => {
        const [x, y] = place.at(pin.x_in, pin.y_ft);
        return <circle key={`${pin.x_in} ${pin.y_ft}`} class="pin" cx={x} cy={y} r="3.4" />;
      })}
    </g>
  );
}

/** Every fifth board has its number where there is room, else every tenth, else the middle alone. */
function numbered(place: Place): number[] {
  const [, five] = place.at(boardToX(5, "left"), 0);
  const [, ten] = place.at(boardToX(10, "left"), 0);
  const room_px = Math.abs(ten - five);
  const number_px = 0.9 * place.text_px;
  if (room_px > number_px) return [5, 10, 15, 20, 25, 30, 35];
  return 2 * room_px > number_px ? [10, 20, 30] : [20];
}

/** Where a text may stand about a point without running out at the sides. */
const within = (x: number, wide_px: number, place: Place): number =>
  Math.min(Math.max(x, wide_px / 2), place.width_px - wide_px / 2);

type RulersProps = Pick<LaneProps, "place" | "hand" | "ground" | "metric">;

export function Rulers({ place, hand, ground, metric }: RulersProps) {
  const marks = metric ? [0, 3, 6, 9, 12, 15, 18] : [0, 10, 20, 30, 40, 50, 60];
  const end_ft = ground.oil_end_ft;
  const side = HALF_IN + GUTTER_IN;
  return (
    <g class="ruler">
      {marks.map((mark, i) => {
        const [x, y] = place.at(side, metric ? mark / 0.3048 : mark);
        const last = i === marks.length - 1;
        const text = i === 0 || last ? `${mark} ${metric ? "m" : "ft"}` : mark;
        const middle = within(x, textPx(`${text}`, place.text_px), place);
        return (
          <text key={mark} x={middle} y={y + 1.1 * place.text_px} text-anchor="middle">
            {text}
          </text>
        );
      })}
      {numbered(place).map((board) => {
        const [x, y] = place.at(boardToX(board, hand), 0);
        return (
          <text key={board} class="board-number" x={x + 4} y={y + 0.3 * place.text_px}>
            {board}
          </text>
        );
      })}
      {end_ft !== null && (
        <path class="oil-end" d={line([place.at(-HALF_IN, end_ft), place.at(HALF_IN, end_ft)])} />
      )}
    </g>
  );
}

/** The whole path faint, and over it what the ball has gone over by now. */
function Path({ roll, place, t_s }: { roll: Roll; place: Place; t_s: number | null }) {
  const parts = stretches(roll.samples);
  return (
    <g fill="none">
      {parts.map(({ phase, samples }) => (
        <path
          key={samples[0]?.t_s}
          class={t_s === null ? `path ${phase}` : `path ${phase} ahead`}
          d={line(samples.map((s) => place.at(s.x_in, s.y_ft)))}
        />
      ))}
      {t_s !== null &&
        parts.map(({ phase, samples }) => {
          const gone = samples.filter((s) => s.t_s <= t_s).map((s) => place.at(s.x_in, s.y_ft));
          const now = momentAt(roll, t_s);
          const last = samples.at(-1);
          if (gone.length === 0 || !now || !last) return null;
          if (t_s < last.t_s) gone.push(place.at(now.x_in, now.y_ft));
          return <path key={samples[0]?.t_s} class={`path ${phase}`} d={line(gone)} />;
        })}
    </g>
  );
}

/** Phases along the gutter the ball stays away from, like the dimensions of a drawing. */
function Phases({ roll, place, hand }: LaneProps) {
  const gutter_in = (HALF_IN + GUTTER_IN / 2) * (hand === "right" ? -1 : 1);
  return (
    <g class="remark">
      {stretches(roll.samples).map(({ phase, samples }) => {
        const first = samples[0];
        const last = samples.at(-1);
        if (!first || !last) return null;
        const [from, y] = place.at(gutter_in, first.y_ft);
        const [to] = place.at(0, last.y_ft);
        if (to - from < 4) return null;
        const name = phaseName(phase);
        return (
          <g key={first.t_s} class={phase}>
            <path
              class="extent"
              d={`M${from + 1} ${y}H${to - 1}M${from + 1} ${y - 4}v8M${to - 1} ${y - 4}v8`}
            />
            {to - from > textPx(name, place.text_px, 600) + 8 && (
              <text x={(from + to) / 2} y={y + 0.32 * place.text_px} text-anchor="middle">
                {name}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

function Remarks(props: LaneProps) {
  const { roll, place } = props;
  const { breakpoint, gutter } = roll.summary;
  const last = roll.samples.at(-1);
  return (
    <g class="remark">
      {gutter && last && (
        <text
          x={Math.max(place.at(0, last.y_ft)[0], place.at(0, 5)[0])}
          y={place.at(last.x_in, 0)[1] + (last.x_in > 0 ? 6 + CAPITAL * place.text_px : -7)}
          text-anchor="middle"
        >
          {say("draw-gutter")}
        </text>
      )}
      {!gutter && breakpoint.distance_ft > 1 && breakpoint.distance_ft < LANE_FT - 1 && (
        <Breakpoint {...props} />
      )}
      <Entry {...props} />
    </g>
  );
}

/** Its name stands between the path and the edge of the gutter; where that is too low, beside the mark. */
function Breakpoint({ roll, place, hand }: LaneProps) {
  const { board, distance_ft } = roll.summary.breakpoint;
  const [x, y] = place.at(boardToX(board, hand), distance_ft);
  const down = hand === "right";
  const text = say("draw-breakpoint", { board: digits(board, 0) });
  const wide_px = textPx(text, place.text_px, 600);
  const tall_px = CAPITAL * place.text_px;
  const [, edge] = place.at((HALF_IN + GUTTER_IN) * (down ? 1 : -1), 0);
  const foot = down ? Math.min(y + 9 + tall_px, edge - 2) : Math.max(y - 9, edge + tall_px);
  const clear = down ? foot - tall_px >= y + 7 : foot <= y - 7;
  const right = x + 10 + wide_px < place.width_px;
  return (
    <g>
      <path class="breakpoint" d={`M${x} ${y - 6}L${x + 6} ${y}L${x} ${y + 6}L${x - 6} ${y}Z`} />
      {clear ? (
        <text x={within(x, wide_px, place)} y={foot} text-anchor="middle">
          {text}
        </text>
      ) : (
        <text x={right ? x + 10 : x - 10} y={foot} text-anchor={right ? "start" : "end"}>
          {text}
        </text>
      )}
    </g>
  );
}

/** A line straight down the lane where the ball comes in, and the angle between. */
function Entry({ roll, place, hand }: LaneProps) {
  const last = roll.samples.at(-1);
  const angle = roll.summary.entry_angle_deg;
  if (!last || angle === null) return null;
  const [x, y] = place.at(last.x_in, LANE_FT);
  const inward = (hand === "right") === angle >= 0 ? -1 : 1;
  return (
    <g>
      <path class="entry" d={line([place.at(last.x_in, LANE_FT - 8), [x, y]])} />
      <circle class="entry-mark" cx={x} cy={y} r="3" />
      <text x={x - 6} y={y + (inward < 0 ? -6 : 6 + CAPITAL * place.text_px)} text-anchor="end">
        {digits(angle, 1)}°
      </text>
    </g>
  );
}

function BallMark({ roll, place, t_s }: { roll: Roll; place: Place; t_s: number }) {
  const now = momentAt(roll, t_s);
  if (!now) return null;
  const [x, y] = place.at(now.x_in, now.y_ft);
  return <circle class="ball-mark" cx={x} cy={y} r="7" />;
}
