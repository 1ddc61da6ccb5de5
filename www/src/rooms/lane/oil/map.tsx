// The film drawn, and edited on the drawing: with a pencil, or part by part.
import { useRef, useState } from "preact/hooks";
import { FilmDrawing, type FilmFrame, filmFrame } from "../../../draw/film";
import { line, WIDTH_IN } from "../../../draw/lane-frame";
import { useSize } from "../../../draw/use-size";
import { BoundedField } from "../../../parts/bounded-field";
import { type Store, useStore } from "../../../store";
import { reading } from "../../../units";
import { AreaFields } from "./area-fields";
import { BOARDS, brushAt, cellsOf, MOST_UM, painted, ROWS } from "./paint";
import { oiled, ownOf } from "./presets";
import { say } from "./say";
import type { OilOn } from "./use-oil";

const HEIGHT_PX = 190;

/** Changes cells of the film on the lane; a pattern of a few numbers becomes a map by it. */
export function paint(
  store: Store,
  cells: ReadonlySet<number>,
  change: (film_um: number) => number,
  key: string,
): void {
  store.editShot((old) => {
    if ("zones" in old.lane || typeof old.lane.oil === "string") return old;
    const { oil } = old.lane;
    const cells_um = "film_um" in oil ? oil.film_um : store.wasm.oil_map(oil).cells_um;
    return { ...old, lane: oiled(old.lane, { ...ownOf(oil), film_um: painted(cells_um, cells, change) }) };
  }, key);
}

type Pencil = "none" | "more" | "less";
/** Their texts. */
const PENCILS: [Pencil, string][] = [
  ["none", "oil-look-only"],
  ["more", "oil-pencil-more"],
  ["less", "oil-pencil-less"],
];

interface MapProps extends OilOn {
  /** Where the cross-section is taken. */
  cut_ft: number;
  /** Numbers that are wrong cannot be painted over. */
  stale: boolean;
}

export function FilmMap({ oil, map, cut_ft, stale }: MapProps) {
  const store = useStore();
  const { units } = store.view.value;
  const { roll } = store.derived.value;
  const [pencil, setPencil] = useState<Pencil>("none");
  const [boards_wide, setWide] = useState(3);
  const [feet_long, setLong] = useState(4);
  const [amount_um, setAmount] = useState(0.5);
  const [mirrored, setMirrored] = useState(true);
  const [box, size] = useSize<HTMLDivElement>();
  const frame = size && size.width_px > 60 ? filmFrame(size.width_px, HEIGHT_PX, BOARDS, ROWS) : null;
  const drawing = pencil !== "none" && !stale;
  const path = roll.samples.map(({ x_in, y_ft }): [number, number] => [boardOf(x_in), y_ft]);
  return (
    <div class="oil-map">
      <div ref={box} class="oil-map-box">
        {frame && (
          <FilmDrawing
            id="oil-film"
            map={map}
            frame={frame}
            metric={units === "metric"}
            title={say("oil-map")}
            desc={say("oil-map-says", {
              name: oil.name,
              length: reading(map.length_ft, "distance", units),
              thickest: reading(map.thickest_um, "film", units),
            })}
          >
            <path class="film-path" d={line(path.map(([board, foot]) => frame.at(board, foot)))} />
            <path
              class="film-cross"
              d={line([frame.at(0.5, cut_ft - 0.5), frame.at(BOARDS + 0.5, cut_ft - 0.5)])}
            />
            {drawing && (
              <Brush
                frame={frame}
                boards_wide={boards_wide}
                feet_long={feet_long}
                mirrored={mirrored}
                onPaint={(cells, key) =>
                  paint(store, cells, (film) => film + (pencil === "more" ? amount_um : -amount_um), key)
                }
              />
            )}
          </FilmDrawing>
        )}
      </div>
      <p class="hint">{say("oil-map-hint")}</p>
      <details>
        <summary>{say("oil-draw")}</summary>
        <div class="oil-map">
          <fieldset class="choices" aria-label={say("oil-draw")}>
            {PENCILS.map(([kind, name]) => (
              <button type="button" key={kind} aria-pressed={pencil === kind} onClick={() => setPencil(kind)}>
                {say(name)}
              </button>
            ))}
          </fieldset>
          {pencil !== "none" && (
            <div class="trio">
              <BoundedField
                bare
                label={say("oil-boards-wide")}
                value={boards_wide}
                quantity="count"
                min={1}
                max={39}
                step={1}
                onChange={setWide}
              />
              <BoundedField
                bare
                label={say("oil-feet-long")}
                value={feet_long}
                quantity="distance"
                min={1}
                max={63}
                step={1}
                onChange={(value) => setLong(Math.round(value))}
              />
              <BoundedField
                bare
                label={say("oil-each-time")}
                value={amount_um}
                quantity="film"
                min={0.01}
                max={MOST_UM}
                step={0.1}
                onChange={setAmount}
              />
            </div>
          )}
          <label class="check">
            <input
              type="checkbox"
              checked={mirrored}
              onChange={(event) => setMirrored(event.currentTarget.checked)}
            />
            {say("oil-both-sides")}
          </label>
          <AreaFields mirrored={mirrored} stale={stale} />
        </div>
      </details>
    </div>
  );
}

/** The board from the lane's right edge under a point. */
export const boardOf = (x_in: number): number => (BOARDS + 1) / 2 - x_in / (WIDTH_IN / BOARDS);

interface BrushProps {
  frame: FilmFrame;
  boards_wide: number;
  feet_long: number;
  mirrored: boolean;
  onPaint(cells: Set<number>, key: string): void;
}

let strokes = 0;

/** Takes the pointer over the drawing: one stroke changes each cell it passes once. */
function Brush({ frame, boards_wide, feet_long, mirrored, onPaint }: BrushProps) {
  const [over, setOver] = useState<{ board: number; foot: number } | null>(null);
  const stroke = useRef<{ key: string; done: Set<number>; last: { board: number; foot: number } } | null>(
    null,
  );
  const place = (event: PointerEvent) => {
    const svg = (event.currentTarget as SVGElement).ownerSVGElement?.getBoundingClientRect();
    return frame.from(event.clientX - (svg?.left ?? 0), event.clientY - (svg?.top ?? 0));
  };

  function go(to: { board: number; foot: number }) {
    const now = stroke.current;
    if (!now) return;
    const steps = Math.ceil(
      Math.max(1, Math.abs(to.board - now.last.board), Math.abs(to.foot - now.last.foot)),
    );
    const fresh = new Set<number>();
    for (let i = 1; i <= steps; i++) {
      const board = now.last.board + ((to.board - now.last.board) * i) / steps;
      const foot = now.last.foot + ((to.foot - now.last.foot) * i) / steps;
      for (const cell of cellsOf(brushAt(board, foot, boards_wide, feet_long), mirrored)) {
        if (!now.done.has(cell)) fresh.add(cell);
        now.done.add(cell);
      }
    }
    now.last = to;
    if (fresh.size > 0) onPaint(fresh, now.key);
  }

  const area = over && brushAt(over.board, over.foot, boards_wide, feet_long);
  const [x0, y0] = frame.at(BOARDS + 0.5, 0);
  const [x1, y1] = frame.at(0.5, ROWS);
  return (
    <>
      {area && (
        <path
          class="film-brush"
          d={`${line([
            frame.at(area.from_board - 0.5, area.from_ft),
            frame.at(area.to_board + 0.5, area.from_ft),
            frame.at(area.to_board + 0.5, area.to_ft),
            frame.at(area.from_board - 0.5, area.to_ft),
          ])}Z`}
        />
      )}
      <rect
        class="film-touch"
        x={x0}
        y={y0}
        width={x1 - x0}
        height={y1 - y0}
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          event.currentTarget.setPointerCapture(event.pointerId);
          strokes += 1;
          const at = place(event);
          stroke.current = { key: `oil.stroke.${strokes}`, done: new Set(), last: at };
          setOver(at);
          go(at);
        }}
        onPointerMove={(event) => {
          const at = place(event);
          setOver(at);
          go(at);
        }}
        onPointerUp={() => {
          stroke.current = null;
        }}
        onPointerCancel={() => {
          stroke.current = null;
        }}
        onPointerLeave={() => setOver(null)}
      />
    </>
  );
}
