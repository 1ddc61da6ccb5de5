import { paintOf } from "../palette";
import type { Section } from "../types";

/** A cut as a flat drawing: colour, hatching and an edge for every region. */
export function SectionDrawing({ section, diameter_in }: { section: Section; diameter_in: number }) {
  const radius = diameter_in / 2;
  return (
    <svg
      class="section-drawing"
      viewBox={`${-radius * 1.03} ${-radius * 1.03} ${radius * 2.06} ${radius * 2.06}`}
      aria-hidden="true"
    >
      {section.regions.map((region, at) => (
        <path
          key={at}
          d={region.path}
          fill={paintOf(region.part).css}
          fill-rule="evenodd"
          class="section-region"
        />
      ))}
    </svg>
  );
}
