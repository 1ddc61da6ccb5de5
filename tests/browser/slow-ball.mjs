// A ball that is sound and takes minutes to weigh.

/** Turned shapes of many corners that all overlap: weighed only by halving again and again. */
export const SLOW_PIECES = Array.from({ length: 40 }, (_, n) => ({
  name: `${n}`,
  density_g_cc: 1 + (n % 7) / 10,
  shape: {
    kind: "lathe",
    profile_in: [
      [0, -1.5],
      ...Array.from({ length: 30 }, (_, i) => [0.3 + ((i * 7 + n * 3) % 11) / 10, -1.4 + (2.8 * i) / 30]),
      [0, 1.5],
    ],
  },
  at_in: [(n % 5) / 5, (n % 3) / 3, (n % 4) / 4],
  turn_deg: [n * 7, n * 11, n * 13],
}));
