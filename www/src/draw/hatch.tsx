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
