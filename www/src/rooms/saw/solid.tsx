// The ball in three dimensions, drawn by the module on a canvas: turn it by
// dragging or with the arrow keys, zoom with the wheel, two fingers or + and −.
import { useEffect, useRef, useState } from "preact/hooks";
import { remPx, useSize } from "../../draw/use-size";
import { Result } from "../../parts/result";
import { useStore } from "../../store";
import type { Look, MarkPlace, Vec3, WasmBall, WasmView } from "../../types";
import { type Camera, lookOf } from "./camera";
import { useDark } from "./dark";
import { say } from "./say";

interface SolidProps {
  /** The part that stands out. */
  highlighted: number | null;
  camera: Camera;
  onCamera(change: (camera: Camera) => Camera): void;
  onPick(part: number | null): void;
  /** WebGL2 cannot be had: the flat drawing stands in. */
  onMissing(why: string): void;
  /** Told how to take a picture of what is shown. */
  onReady(picture: () => Promise<Blob | null>): void;
  /** Shows the cover's thickness in its stead. */
  cover?: CoverShown;
}

/** How the cover's thickness is shown. */
export interface CoverShown {
  look: NonNullable<Look["cover"]>;
  /** What to write at each spot. */
  names: string[];
  /** Told of a direction that was clicked. */
  onPlace(direction: Vec3): void;
}

/** The texts set beside the marks in the picture. */
const MARKS = new Map<MarkPlace["mark"], string>([
  ["pin", "saw-mark-pin"],
  ["cg", "saw-mark-cg"],
  ["low_rg", "saw-mark-low-rg"],
  ["high_rg", "saw-mark-high-rg"],
  ["pap", "saw-mark-pap"],
  ["grip_centre", "saw-mark-grip-centre"],
]);

/** Room a mark's name needs beside it: for the sign, and about so much for a letter. */
const SIGN_PX = 24;
const LETTER_REM = 0.45;
const TURN_DEG_PX = 0.45;
const KEY_DEG = 5;
/** A finger trembles more than a mouse. */
const CLICK_PX = { mouse: 4, touch: 14 };

export const clampCamera = ({ yaw_deg, pitch_deg, zoom }: Camera): Camera => ({
  yaw_deg: ((((yaw_deg + 180) % 360) + 360) % 360) - 180,
  pitch_deg: Math.min(89, Math.max(-89, pitch_deg)),
  zoom: Math.min(4, Math.max(0.5, zoom)),
});

export function Solid(props: SolidProps) {
  const { highlighted, camera, onCamera, onPick, onMissing, onReady, cover } = props;
  const store = useStore();
  const [box, size] = useSize<HTMLDivElement>();
  const canvas = useRef<HTMLCanvasElement>(null);
  const view = useRef<WasmView | null>(null);
  const [lost, setLost] = useState(false);
  const dark = useDark();
  const pointers = useRef(new Map<number, { x: number; y: number }>());
  const moved = useRef(0);
  // Nothing is drawn while the room is out of view.
  const look: Look | null =
    size && size.width_px > 0
      ? { ...lookOf(store.view.value, store.derived.value, highlighted, camera, size, dark), ...whole(cover) }
      : null;
  const marks: Map<MarkPlace["mark"], string> = cover
    ? new Map(cover.names.map((name, n) => [`spot_${n}` as const, name]))
    : new Map([...MARKS].map(([mark, text]) => [mark, say(text)]));
  const labels = useRef(new Map<MarkPlace["mark"], HTMLElement>());
  const drawn = useRef<{ ball: WasmBall; look: string } | null>(null);
  const latest = useRef(look);
  latest.current = look;

  /** Draws now; the ball is read at the last moment since an edit frees the one before. */
  function draw() {
    if (!view.current || !latest.current) return;
    const { ball } = store.derived.peek();
    drawn.current = { ball, look: JSON.stringify(latest.current) };
    const places = view.current.draw(ball, latest.current);
    for (const [name, text] of marks) {
      const label = labels.current.get(name);
      const place = places.find(({ mark }) => mark === name);
      if (!label) continue;
      label.hidden = !place || (cover !== undefined && !place.visible);
      label.classList.toggle("behind", place?.visible === false);
      if (!place) continue;
      // The low RG axis mostly comes out near the pin: its name stands on the other side.
      // So does one that would run out of the picture.
      const left =
        name === "low_rg" || place.x_px + SIGN_PX + remPx(LETTER_REM) * text.length > latest.current.width_px;
      const x = left ? `calc(${place.x_px - 22}px - 100%)` : `${place.x_px}px`;
      // Half a line from either edge, as large as the text may be.
      const y = `clamp(0.75em, ${place.y_px}px, ${latest.current.height_px}px - 0.75em)`;
      label.style.translate = `${x} ${y}`;
    }
  }

  function start() {
    const element = canvas.current;
    if (!element) return;
    view.current?.free();
    view.current = null;
    try {
      view.current = new store.wasm.View(element);
      draw();
    } catch (why) {
      onMissing(String(why));
    }
  }

  useEffect(() => {
    const element = canvas.current;
    if (!element) return;
    start();
    const lose = (event: Event) => {
      event.preventDefault();
      setLost(true);
    };
    const restore = () => {
      setLost(false);
      start();
    };
    // Not Preact's onWheel: scrolling must be held back, which a passive listener cannot.
    const wheel = (event: WheelEvent) => {
      if (document.activeElement !== element.parentElement && !event.ctrlKey) return;
      event.preventDefault();
      onCamera((old) => clampCamera({ ...old, zoom: old.zoom * Math.exp(-event.deltaY / 600) }));
    };
    element.addEventListener("webglcontextlost", lose);
    element.addEventListener("webglcontextrestored", restore);
    element.addEventListener("wheel", wheel, { passive: false });
    onReady(
      () =>
        new Promise((done) => {
          draw();
          element.toBlob(done, "image/png");
        }),
    );
    return () => {
      element.removeEventListener("webglcontextlost", lose);
      element.removeEventListener("webglcontextrestored", restore);
      element.removeEventListener("wheel", wheel);
      view.current?.free();
      view.current = null;
    };
  }, []);

  useEffect(() => {
    // An edit of the shot changes nothing here.
    const same =
      drawn.current?.ball === store.derived.peek().ball &&
      drawn.current.look === JSON.stringify(latest.current);
    if (lost || same || !latest.current) return;
    const frame = requestAnimationFrame(draw);
    return () => cancelAnimationFrame(frame);
  });

  function drag(event: PointerEvent) {
    const before = pointers.current.get(event.pointerId);
    if (!before) return;
    const now = { x: event.clientX, y: event.clientY };
    const [dx, dy] = [now.x - before.x, now.y - before.y];
    const other = [...pointers.current].find(([id]) => id !== event.pointerId)?.[1];
    pointers.current.set(event.pointerId, now);
    moved.current += Math.abs(dx) + Math.abs(dy);
    if (other) {
      const apart = (a: { x: number; y: number }) => Math.hypot(a.x - other.x, a.y - other.y);
      const by = apart(now) / Math.max(1, apart(before));
      onCamera((old) => clampCamera({ ...old, zoom: old.zoom * by }));
    } else {
      onCamera((old) =>
        clampCamera({
          ...old,
          yaw_deg: old.yaw_deg - dx * TURN_DEG_PX,
          pitch_deg: old.pitch_deg + dy * TURN_DEG_PX,
        }),
      );
    }
  }

  function drop(event: PointerEvent) {
    const known = pointers.current.delete(event.pointerId);
    if (
      !known ||
      event.type === "pointercancel" ||
      moved.current > CLICK_PX[event.pointerType === "touch" ? "touch" : "mouse"]
    )
      return;
    const rect = canvas.current?.getBoundingClientRect();
    if (!rect || !view.current || !latest.current) return;
    const at: [number, number] = [event.clientX - rect.left, event.clientY - rect.top];
    const pick = view.current.pick(store.derived.peek().ball, latest.current, ...at);
    if (!cover) onPick(pick?.part ?? null);
    else if (pick) cover.onPlace(pick.at_in);
  }

  function press(event: KeyboardEvent) {
    const step = STEPS[event.key];
    if (!step || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    onCamera((old) => clampCamera(step(old)));
  }

  return (
    <div class="solid" ref={box}>
      <div
        class="solid-stage"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is turned with the arrow keys
        tabIndex={0}
        aria-roledescription={say("saw-3d-picture")}
        aria-label={say(cover ? "saw-3d-cover" : "saw-3d-ball")}
        aria-describedby={cover ? "cover-words" : "cut-words"}
        onKeyDown={press}
      >
        <canvas
          ref={canvas}
          onPointerDown={(event) => {
            if (pointers.current.size === 0) moved.current = 0;
            pointers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
            event.currentTarget.setPointerCapture(event.pointerId);
          }}
          onPointerMove={drag}
          onPointerUp={drop}
          onPointerCancel={drop}
        />
        {[...marks].map(([mark, name]) => (
          <span
            key={mark}
            class="solid-mark"
            aria-hidden="true"
            hidden
            ref={(label) => {
              if (label) labels.current.set(mark, label);
              else labels.current.delete(mark);
            }}
          >
            {name}
          </span>
        ))}
      </div>
      {lost && (
        <Result class="solid-lost" of={lost}>
          {say("saw-3d-lost")}
        </Result>
      )}
    </div>
  );
}

/** The cover is seen on the whole ball, together. */
const whole = (cover: CoverShown | undefined): Partial<Look> =>
  cover ? { plane: null, exploded: 0, hidden: [], highlighted: null, cover: cover.look } : {};

const STEPS: Record<string, (camera: Camera) => Camera> = {
  ArrowLeft: (c) => ({ ...c, yaw_deg: c.yaw_deg + KEY_DEG }),
  ArrowRight: (c) => ({ ...c, yaw_deg: c.yaw_deg - KEY_DEG }),
  ArrowUp: (c) => ({ ...c, pitch_deg: c.pitch_deg - KEY_DEG }),
  ArrowDown: (c) => ({ ...c, pitch_deg: c.pitch_deg + KEY_DEG }),
  "+": (c) => ({ ...c, zoom: c.zoom * 1.15 }),
  "=": (c) => ({ ...c, zoom: c.zoom * 1.15 }),
  "-": (c) => ({ ...c, zoom: c.zoom / 1.15 }),
};
