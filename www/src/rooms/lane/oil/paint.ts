// Editing a film cell by cell: plain lists in, plain lists out. Rows are feet
// from the foul line, columns boards from the lane's right edge.

export const BOARDS = 39;
export const ROWS = 63;
export const MOST_UM = 100;

/** Boards counted from 1, both ends in; feet from one to the other. */
export interface Area {
  from_board: number;
  to_board: number;
  from_ft: number;
  to_ft: number;
}

/** Cells by one number each. */
const cell = (row: number, board: number): number => row * BOARDS + board - 1;

const between = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** The cells of an area, with `mirrored` those of its mirror image across the lane too. */
export function cellsOf(area: Area, mirrored: boolean): Set<number> {
  const cells = new Set<number>();
  const [low, high] = [area.from_board, area.to_board].sort((a, b) => a - b) as [number, number];
  const [from, to] = [area.from_ft, area.to_ft].sort((a, b) => a - b) as [number, number];
  for (let row = between(Math.round(from), 0, ROWS); row < between(Math.round(to), 0, ROWS); row++) {
    for (let board = between(Math.round(low), 1, BOARDS); board <= between(high, 1, BOARDS); board++) {
      cells.add(cell(row, board));
      if (mirrored) cells.add(cell(row, BOARDS + 1 - board));
    }
  }
  return cells;
}

/** A brush around a place, as an area that stays on the lane. */
export function brushAt(board: number, foot: number, boards_wide: number, feet_long: number): Area {
  const from_board = Math.round(board - (boards_wide - 1) / 2);
  const from_ft = Math.round(foot - feet_long / 2);
  return {
    from_board: between(from_board, 1, BOARDS),
    to_board: between(from_board + boards_wide - 1, 1, BOARDS),
    from_ft: between(from_ft, 0, ROWS - 1),
    to_ft: between(from_ft + feet_long, 1, ROWS),
  };
}

/** Thicknesses to a tenth of a nanometre: what only rounding made would fill the file. */
const tidy = (um: number): number => Number(between(um, 0, MOST_UM).toFixed(4));

/** The film with some of its cells changed; dry feet at the far end are left out. */
export function painted(
  cells_um: number[][],
  cells: ReadonlySet<number>,
  change: (film_um: number) => number,
): number[][] {
  const rows = Array.from({ length: ROWS }, (_, row) =>
    Array.from({ length: BOARDS }, (_, i) => {
      const film_um = cells_um[row]?.[i] ?? 0;
      return tidy(cells.has(cell(row, i + 1)) ? change(film_um) : film_um);
    }),
  );
  const last = rows.findLastIndex((row) => row.some((film_um) => film_um > 0));
  return rows.slice(0, last + 1);
}
