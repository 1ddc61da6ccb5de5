// A path drawn on the lane before it is seen: a point at each distance, to be
// dragged or moved with the keyboard, and beside it the path the ball took.
import { useId, useRef } from "preact/hooks";
import "../draw/draw.css";
import { type Ground as GroundData, groundOf } from "../draw/ground";
import { Ground, Rulers } from "../draw/lane";
import { boardToX, line, place as placed } from "../draw/lane-frame";
import { useSize } from "../draw/use-size";
import { NumberField } from "../parts/field";
import { SayTerms } from "../parts/say-terms";
import { type Shot, useStore } from "../store";
import { digits, reading } from "../units";
import { say } from "./say";

export type Points = [number, number][];

const AT_FT = [0, 10, 20, 30, 40, 50, 60];
const LOW_BOARD = 0;
const HIGH_BOARD = 40;

/** Straight down the lane from where the ball is laid down. */
export const straight = (shot: Shot): Points => AT_FT.map((ft) => [shot.release.board, ft]);

/** Whether no point has been moved yet. */
export const untouched = (points: Points): boolean => points.every(([board]) => board === points[0]?.[0]);

interface DrawPathProps {
  shot: Shot;
  points: Points;
  /** The path the ball took; null until the answer is given. */
  truth: Points | null;
  onDraw(points: Points): void;
}

const half = (board: number): number => Math.min(HIGH_BOARD, Math.max(LOW_BOARD, Math.round(board * 2) / 2));

export function DrawPath({ shot, points, truth, onDraw }: DrawPathProps) {
  const store = useStore();
  const { units } = store.view.value;
  const { hand } = shot;
  const [box, size] = useSize<HTMLDivElement>();
  const held = useRef<number | null>(null);
  const id = useId();
  const place = size && size.width_px > 0 ? placed(Math.max(size.width_px, 240), size.height_px) : null;
  const ground: GroundData = groundOf(store.wasm, shot.lane);
  const at = ([board, ft]: [number, number]) => place?.at(boardToX(board, hand), ft) ?? [0, 0];
  const move = (n: number, board: number) =>
    onDraw(points.map((point, i) => (i === n ? [half(board), point[1]] : point)));

  /** The board under a point of the drawing, and the nearest of the points to draw. */
  function under(event: PointerEvent): { n: number; board: number } | null {
    const svg = event.currentTarget as SVGSVGElement;
    if (!place) return null;
    const frame = svg.getBoundingClientRect();
    const x = ((event.clientX - frame.left) / frame.width) * place.width_px;
    const y = ((event.clientY - frame.top) / frame.height) * place.height_px;
    const [, one] = place.at(boardToX(1, hand), 0);
    const [, last] = place.at(boardToX(39, hand), 0);
    const board = 1 + ((y - one) / (last - one)) * 38;
    let n = 1;
    for (let i = 1; i < points.length; i++) {
      const far = (k: number) => Math.abs(at(points[k] ?? [0, 0])[0] - x);
      if (far(i) < far(n)) n = i;
    }
    return { n, board };
  }

  const start = (board: number, ft: number) =>
    say("lesson-path-point", { board: digits(board, 1), far: reading(ft, "distance", units, -1) });
  const said = say("lesson-your-path", {
    points: points.map(([board, ft]) => start(board, ft)).join(", "),
  });
  const was =
    truth &&
    say("lesson-balls-path", {
      points: truth
        .filter(([, ft]) => ft % 10 === 0)
        .map(([board, ft]) => start(board, ft))
        .join(", "),
    });
  return (
    <fieldset class="draw-path" aria-label={say("lesson-draw")}>
      {!truth && <p class="hint">{say("lesson-draw-says")}</p>}
      <div class="draw-path-place" ref={box}>
        {place && (
          // biome-ignore lint/a11y/useSemanticElements: a drawing with points to move in it.
          <svg
            class="lane-drawing draw-path-lane"
            role="group"
            aria-label={say("lesson-lane-above")}
            aria-describedby={id}
            viewBox={`0 0 ${place.width_px} ${place.height_px}`}
            width={place.width_px}
            height={place.height_px}
            font-size={place.text_px}
            data-open={truth ? undefined : ""}
            onPointerDown={(event) => {
              const found = truth ? null : under(event);
              if (!found) return;
              // Nothing is selected on the way.
              event.preventDefault();
              event.currentTarget.setPointerCapture(event.pointerId);
              held.current = found.n;
              move(found.n, found.board);
            }}
            onPointerMove={(event) => {
              const found = held.current === null ? null : under(event);
              if (found && held.current !== null) move(held.current, found.board);
            }}
            onPointerUp={() => {
              held.current = null;
            }}
            onPointerCancel={() => {
              held.current = null;
            }}
          >
            <Ground place={place} ground={ground} />
            <Rulers place={place} hand={hand} ground={ground} metric={units === "metric"} />
            {truth && (
              <path
                class="path roll"
                fill="none"
                d={line(truth.map((point) => place.at(boardToX(point[0], hand), point[1])))}
              />
            )}
            <path
              class="drawn"
              fill="none"
              d={line(points.map((point) => place.at(boardToX(point[0], hand), point[1])))}
            />
            {points.map((point, n) => {
              const [x, y] = place.at(boardToX(point[0], hand), point[1]);
              if (n === 0 || truth) return <circle key={n} class="drawn-end" cx={x} cy={y} r="3" />;
              return (
                <g
                  key={n}
                  role="slider"
                  // As SVG spells it.
                  tabindex={0}
                  aria-label={say("lesson-path-at", { far: reading(point[1], "distance", units, -1) })}
                  aria-valuemin={LOW_BOARD}
                  aria-valuemax={HIGH_BOARD}
                  aria-valuenow={point[0]}
                  aria-valuetext={say("lesson-on-board", { board: digits(point[0], 1) })}
                  onKeyDown={(event) => {
                    const by = {
                      ArrowUp: 1,
                      ArrowRight: 1,
                      ArrowDown: -1,
                      ArrowLeft: -1,
                      PageUp: 5,
                      PageDown: -5,
                    }[event.key];
                    if (!by) return;
                    event.preventDefault();
                    event.stopPropagation();
                    move(n, point[0] + by * (event.shiftKey ? 0.5 : 1));
                  }}
                >
                  <circle class="drawn-reach" cx={x} cy={y} r="14" />
                  <circle class="drawn-point" cx={x} cy={y} r="6" />
                </g>
              );
            })}
          </svg>
        )}
      </div>
      <p class="draw-path-says" id={id}>
        {said} {was}
      </p>
      {truth ? (
        <p class="hint">{say("lesson-path-key")}</p>
      ) : (
        <details>
          <summary>{say("lesson-type-boards")}</summary>
          {points.slice(1).map(([board, ft], n) => (
            <NumberField
              key={ft}
              label={
                <SayTerms
                  id="lesson-board-at"
                  args={{ far: reading(ft, "distance", units, -1) }}
                  terms={{ board: "board" }}
                />
              }
              value={board}
              quantity="board"
              min={LOW_BOARD}
              max={HIGH_BOARD}
              step={0.5}
              onChange={(value) => move(n + 1, value)}
            />
          ))}
        </details>
      )}
    </fieldset>
  );
}
