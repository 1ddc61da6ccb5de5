// Up to four shots on one lane, told apart by dash, mark and letter, all at the
// same moment. Colours come from draw.css.
import type { Hand, Roll } from "../types";
import type { Ground as GroundData } from "./ground";
import { Ground, Rulers } from "./lane";
import { line, type Place } from "./lane-frame";
import { momentAt, sampleAfter } from "./moment";

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

/** Where each path carries its mark, so that marks of paths that lie together do not. */
const MARKED_FT = [53, 48, 43, 38];

export function ShotsDrawing(props: ShotsProps) {
  const { id, shots, place, t_s } = props;
  return (
    <svg
      class="lane-drawing shots-drawing"
      viewBox={`0 0 ${place.width_px} ${place.height_px}`}
      width={place.width_px}
      height={place.height_px}
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
    >
      <title id={`${id}-title`}>{props.title}</title>
      <desc id={`${id}-desc`}>{props.desc}</desc>
      <Ground {...props} />
      <Rulers {...props} />
      {shots.map((shot, i) => (
        <Path key={shot.letter} shot={shot} at={i} place={place} t_s={t_s} />
      ))}
      {shots.map((shot, i) => (
        <Mark key={shot.letter} shot={shot} at={i} place={place} t_s={t_s} />
      ))}
    </svg>
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
    <g class={`shot-mark shot-${at}`} transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
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
      width="72"
      height="24"
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
