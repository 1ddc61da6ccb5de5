// Hatching after the practice of ISO 128-3: thin lines at 45 degrees, a part
// beside it turned or spaced otherwise. By the palette's numbers: 0 plain, 1
// rising lines, 2 falling lines, 3 crossed, 4 level, 5 upright, 6 dots.

const STYLES: { size: number; path: string }[] = [
  { size: 6, path: "" },
  { size: 6, path: "M-1 7 7 -1M-1 1 1 -1M5 7 7 5" },
  { size: 6, path: "M-1 -1 7 7M5 -1 7 1M-1 5 1 7" },
  { size: 8, path: "M0 8 8 0M0 0 8 8" },
  { size: 5, path: "M0 2.5H5" },
  { size: 5, path: "M2.5 0V5" },
  { size: 6, path: "M1 1.5h1.2M4 4.5h1.2" },
];

/** Defines the pattern `id` for a hatching; lay it over the flat colour. */
export function HatchPattern({ id, hatch }: { id: string; hatch: number }) {
  const style = STYLES[hatch];
  if (!style) return null;
  return (
    <pattern id={id} width={style.size} height={style.size} patternUnits="userSpaceOnUse">
      <path d={style.path} fill="none" stroke="#1c1a17" stroke-width="0.9" stroke-opacity="0.6" />
    </pattern>
  );
}

/**
 * The same hatching as plain lines over a whole drawing, for one that is
 * printed: printers get patterns as bitmaps, lines as lines.
 */
export function HatchLines({
  hatch,
  width_px,
  height_px,
}: {
  hatch: number;
  width_px: number;
  height_px: number;
}) {
  const lines = LINES[hatch]?.(width_px, height_px);
  if (!lines) return null;
  return (
    <path
      d={lines}
      fill="none"
      stroke="#1c1a17"
      stroke-width="0.9"
      stroke-opacity="0.6"
      stroke-dasharray={hatch === 6 ? "1.2 4.8" : undefined}
    />
  );
}

type Lines = (width: number, height: number) => string;

const repeated = (from: number, step: number, to: number, at: (place: number) => string): string => {
  let path = "";
  for (let place = from; place < to; place += step) path += at(place);
  return path;
};

const rising =
  (step: number): Lines =>
  (w, h) =>
    repeated(step, step, w + h, (x) => `M${x - h} ${h}L${x} 0`);
const falling =
  (step: number): Lines =>
  (w, h) =>
    repeated(step - h, step, w, (x) => `M${x} 0L${x + h} ${h}`);
const level =
  (from: number, step: number, start = 0): Lines =>
  (w, h) =>
    repeated(from, step, h, (y) => `M${start} ${y}H${w}`);

/** By the palette's numbers, as wide apart as the patterns above. */
const LINES: (Lines | null)[] = [
  null,
  rising(6),
  falling(6),
  (w, h) => rising(8)(w, h) + falling(8)(w, h),
  level(2.5, 5),
  (w, h) => repeated(2.5, 5, w, (x) => `M${x} 0V${h}`),
  (w, h) => level(1.5, 6, 1)(w, h) + level(4.5, 6, 4)(w, h),
];
