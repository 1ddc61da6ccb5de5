// Up to four shots on one lane, told apart by dash, mark and letter, all at the
// same moment. Colours come from draw.css.
import type { Hand, Roll } from "../types";
import type { Ground as GroundData } from "./ground";
import { Ground, Rulers } from "./lane";
import { BOARD_IN, boardToX, line, type Place, TEXT_REM } from "./lane-frame";
import { momentAt, sampleAfter } from "./moment";
import { Picture } from "./picture";
import { remPx } from "./use-size";

export interface OneShot {
  letter: string;
  roll: Roll;
}
export interface ShotsProps {
  id: string;
  shots: OneShot[];
  /** Of the first, for the numbers of the boards. */
  hand: Hand;
  ground: GroundData;
  place: Place;
  /** The moment shown; null draws every path as gone over. */
  t_s: number | null;
  metric: boolean;
  title: string;
  desc: string;
}

/** Marks about a point: circle, square, triangle, diamond. */
const MARKS = [
  "M-7.5 0a7.5 7.5 0 1 0 15 0a7.5 7.5 0 1 0 -15 0Z",
  "M-7 -7H7V7H-7Z",
  "M0 -10L10 7.5H-10Z",
  "M0 -10L10 0L0 10L-10 0Z",
];

/** Height of the lane's text beside marks of this size. */
const MARK_TEXT_PX = 12.5;

/** Where each path carries its mark, so that marks of paths that lie together do not. */
const MARKED_FT = [55, 50, 45, 40];

export function ShotsDrawing(props: ShotsProps) {
  const { id, shots, place, t_s } = props;
  return (
    <Picture
      id={id}
      class="lane-drawing shots-drawing"
      viewBox={`0 0 ${place.width_px} ${place.height_px}`}
      width={place.width_px}
      height={place.height_px}
      font-size={place.text_px}
      title={props.title}
      desc={props.desc}
    >
      <Ground {...props} />
      <Rulers {...props} />
      {shots.map((shot, i) => (
        <Path key={shot.letter} shot={shot} at={i} place={place} t_s={t_s} />
      ))}
      {shots.map((shot, i) => (
        <Mark key={shot.letter} shot={shot} at={i} place={place} t_s={t_s} />
      ))}
    </Picture>
  );
}

const CLOSE_FROM_FT = 38;
const CLOSE_TO_FT = 61;
/** Room for the boards and the feet, in heights of the text. */
const CLOSE_LEFT = 2.1;
const CLOSE_FOOT = 1.6;

/** Lays the last third of the lane, as wide as the shots need it, into a box. */
export function closePlace(shots: OneShot[], width_px: number, height_px: number): Place | null {
  const text_px = remPx(TEXT_REM);
  const xs = shots.flatMap(({ roll }) =>
    roll.samples.flatMap(({ x_in, y_ft }) => (y_ft > CLOSE_FROM_FT && y_ft < CLOSE_TO_FT ? [x_in] : [])),
  );
  if (xs.length === 0) return null;
  const from_in = Math.min(...xs) - 1.5 * BOARD_IN;
  const to_in = Math.max(...xs) + 1.5 * BOARD_IN;
  const left_px = CLOSE_LEFT * text_px;
  const px_ft = (width_px - left_px - 8) / (CLOSE_TO_FT - CLOSE_FROM_FT);
  const px_in = (height_px - CLOSE_FOOT * text_px) / (to_in - from_in);
  return {
    width_px,
    height_px,
    text_px,
    stretch: (px_in * 12) / px_ft,
    at: (x_in, y_ft) => [left_px + (y_ft - CLOSE_FROM_FT) * px_ft, (x_in - from_in) * px_in],
  };
}

/** The last third of the same picture, closer: `place` is that of `closePlace`. */
export function CloseDrawing(props: ShotsProps) {
  const { id, shots, hand, place, t_s, metric } = props;
  const { text_px } = place;
  const foot_px = place.height_px - CLOSE_FOOT * text_px;
  const left_px = CLOSE_LEFT * text_px;
  const board_px = Math.abs(place.at(BOARD_IN, 0)[1] - place.at(0, 0)[1]);
  const every = board_px > text_px ? 1 : 5;
  const boards = Array.from({ length: 39 }, (_, i) => i + 1).filter((board) => board % every === 0);
  const marks = metric ? [12, 14, 16, 18] : [40, 45, 50, 55, 60];
  return (
    <Picture
      id={id}
      class="lane-drawing shots-drawing"
      viewBox={`0 0 ${place.width_px} ${place.height_px}`}
      width={place.width_px}
      height={place.height_px}
      font-size={place.text_px}
      title={props.title}
      desc={props.desc}
    >
      <clipPath id={`${id}-clip`}>
        <rect x={left_px} width={place.width_px - left_px} height={foot_px} />
      </clipPath>
      <g clip-path={`url(#${id}-clip)`}>
        <Ground {...props} />
        {shots.map((shot, i) => (
          <Path key={shot.letter} shot={shot} at={i} place={place} t_s={t_s} />
        ))}
        {shots.map((shot, i) => (
          <Mark key={shot.letter} shot={shot} at={i} place={place} t_s={t_s} />
        ))}
      </g>
      <g class="ruler">
        {boards.map((board) => {
          const [, y] = place.at(boardToX(board, hand), 0);
          return y < 0.4 * text_px || y > foot_px - 2 ? null : (
            <text key={board} class="board-number" x={left_px - 5} y={y + 0.3 * text_px} text-anchor="end">
              {board}
            </text>
          );
        })}
        {marks.map((mark, i) => (
          <text
            key={mark}
            x={place.at(0, metric ? mark / 0.3048 : mark)[0]}
            y={place.height_px - 5}
            text-anchor="middle"
          >
            {mark}
            {i === 0 ? (metric ? " m" : " ft") : ""}
          </text>
        ))}
      </g>
    </Picture>
  );
}

function Path({ shot, at, place, t_s }: { shot: OneShot; at: number; place: Place; t_s: number | null }) {
  const { samples } = shot.roll;
  const whole = line(samples.map((s) => place.at(s.x_in, s.y_ft)));
  if (t_s === null) return <path class={`shot shot-${at}`} d={whole} />;
  const now = momentAt(shot.roll, t_s);
  const gone = samples.slice(0, sampleAfter(samples, t_s)).map((s) => place.at(s.x_in, s.y_ft));
  if (now) gone.push(place.at(now.x_in, now.y_ft));
  return (
    <g>
      <path class={`shot shot-${at} ahead`} d={whole} />
      <path class={`shot shot-${at}`} d={line(gone)} />
    </g>
  );
}

/** Rides with the ball; once all is over it stands on its path. */
function Mark({ shot, at, place, t_s }: { shot: OneShot; at: number; place: Place; t_s: number | null }) {
  const { samples } = shot.roll;
  const rest = samples.find(({ y_ft }) => y_ft >= (MARKED_FT[at] ?? 0)) ?? samples.at(-1);
  const now = t_s === null ? rest : momentAt(shot.roll, t_s);
  if (!now) return null;
  const [x, y] = place.at(now.x_in, now.y_ft);
  return (
    <g
      class={`shot-mark shot-${at}`}
      transform={`translate(${x.toFixed(1)} ${y.toFixed(1)}) scale(${place.text_px / MARK_TEXT_PX})`}
    >
      <path d={MARKS[at]} />
      <text y="4" text-anchor="middle">
        {shot.letter}
      </text>
    </g>
  );
}

/** The dash and the mark of one shot, for a key. */
export function ShotKey({ at, letter }: { at: number; letter: string }) {
  return (
    <svg
      class="lane-drawing shots-drawing shot-key"
      viewBox="0 0 72 24"
      width="4.5rem"
      height="1.5rem"
      aria-hidden="true"
    >
      <path class={`shot shot-${at}`} d="M1 12H71" />
      <g class={`shot-mark shot-${at}`} transform="translate(36 12)">
        <path d={MARKS[at]} />
        <text y="4" text-anchor="middle">
          {letter}
        </text>
      </g>
    </svg>
  );
}
