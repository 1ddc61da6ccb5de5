// How the rooms that a step of a lesson shows stand beside it on a desk.

import type { Room } from "../store";

const AREAS: Record<number, (rooms: Room[]) => string[]> = {
  1: ([a]) => [`${a}`],
  2: ([a, b]) => (a === "lane" || b === "lane" ? [`${a}`, `${b}`] : [`${a} ${b}`]),
  3: ([a, b, c]) => (c === "lane" ? [`${a} ${b}`, `${c} ${c}`] : [`${a} ${b}`, `${a} ${c}`]),
  4: ([a, b, c, d]) => [`${a} ${b}`, `${c} ${d}`],
};

/** Grid areas and tracks for the lesson, which comes first, and its rooms. */
export function arrange([lesson, ...rooms]: Room[]) {
  const rows = AREAS[rooms.length]?.(rooms) ?? [];
  const columns = (rows[0] ?? "").split(" ").filter(Boolean).length;
  return {
    gridTemplateAreas: (rows.length > 0 ? rows : [""])
      .map((row) => `"${`${lesson} ${row}`.trim()}"`)
      .join(" "),
    gridTemplateColumns:
      columns === 0 ? "minmax(0, 1fr)" : `minmax(20rem, 32%) repeat(${columns}, minmax(0, 1fr))`,
    // What comes first has the larger part.
    gridTemplateRows: rows.length > 1 ? "minmax(0, 3fr) minmax(0, 2fr)" : "minmax(0, 1fr)",
  };
}
