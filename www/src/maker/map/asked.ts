// What a map is asked for with, on the page and in a worker.

export interface MapSides {
  x: string;
  x_range: [number, number];
  y: string;
  y_range: [number, number];
  count: number;
}

/** As the module takes them. */
export function flat({ x, x_range, y, y_range, count }: MapSides) {
  return [x, Float64Array.from(x_range), y, Float64Array.from(y_range), count] as const;
}
