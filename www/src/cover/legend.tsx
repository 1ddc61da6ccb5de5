import { useStore } from "../store";
import { CLASSES, classText } from "./classes";
import { say } from "./say";
import type { Covered } from "./use-cover";

/** What the colours of the map stand for; the classes that the ball has none of are left out. */
export function Legend({ map, to_hole_in }: Pick<Covered, "map" | "to_hole_in">) {
  const units = useStore().view.value.units;
  const has = (from_in: number, to_in: number) =>
    map.some((inches, n) => inches >= from_in && inches < to_in && !((to_hole_in[n] ?? 1) <= 0));
  const shown = CLASSES.filter(({ from_in, to_in }) => has(from_in - 4e-5, to_in - 4e-5));
  return (
    <ul class="cover-legend" aria-label={say("cover-by-colour")}>
      {shown.map((one) => (
        <li key={one.css}>
          <svg viewBox="0 0 16 16" aria-hidden="true">
            <rect x="0.5" y="0.5" width="15" height="15" fill={one.css} class="cover-line" />
          </svg>
          {classText(one, units)}
        </li>
      ))}
      {to_hole_in.length > 0 && (
        <li>
          <svg viewBox="0 0 16 16" aria-hidden="true">
            <rect x="0.5" y="0.5" width="15" height="15" class="cover-hole" />
          </svg>
          {say("cover-hole")}
        </li>
      )}
    </ul>
  );
}
