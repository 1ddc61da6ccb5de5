import { paintOf } from "../palette";

/** The hatchings of the palette, once a page, for `fill="url(#hatch-N)"`. */
export function Hatches() {
  return (
    <svg class="hatches" width="0" height="0" aria-hidden="true">
      <defs>
        <Hatch id={1} size={6} path="M-1 7 7 -1M-1 1 1 -1M5 7 7 5" />
        <Hatch id={2} size={6} path="M-1 -1 7 7M5 -1 7 1M-1 5 1 7" />
        <Hatch id={3} size={8} path="M0 8 8 0M0 0 8 8" />
        <Hatch id={4} size={5} path="M0 2.5H5" />
        <Hatch id={5} size={5} path="M2.5 0V5" />
        <Hatch id={6} size={6} path="M1.5 1.5h1M4.5 4.5h1" />
      </defs>
    </svg>
  );
}

function Hatch({ id, size, path }: { id: number; size: number; path: string }) {
  return (
    <pattern id={`hatch-${id}`} width={size} height={size} patternUnits="userSpaceOnUse">
      <path d={path} class="hatch-line" />
    </pattern>
  );
}

/** The colour and hatching of a part, as a small square. */
export function Swatch({ part }: { part: number }) {
  const paint = paintOf(part);
  return (
    <svg class="swatch" viewBox="0 0 18 18" aria-hidden="true">
      <rect x="0.5" y="0.5" width="17" height="17" fill={paint.css} />
      {paint.hatch > 0 && <rect x="0.5" y="0.5" width="17" height="17" fill={`url(#hatch-${paint.hatch})`} />}
      <rect x="0.5" y="0.5" width="17" height="17" class="swatch-edge" />
    </svg>
  );
}
