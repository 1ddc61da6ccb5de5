import { HatchPattern } from "../draw/hatch";
import { paintOf } from "../palette";

/** The hatchings of the palette, once a page, for `fill="url(#hatch-N)"`. */
export function Hatches() {
  return (
    <svg class="hatches" width="0" height="0" aria-hidden="true">
      <defs>
        {[1, 2, 3, 4, 5, 6].map((hatch) => (
          <HatchPattern key={hatch} id={`hatch-${hatch}`} hatch={hatch} />
        ))}
      </defs>
    </svg>
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
