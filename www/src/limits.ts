// Published limits and the trade's usual ranges, as numbers to place a ball in.
// Limits: United States Bowling Congress, Equipment Specifications and
// Certifications, as published in its notices; the current edition decides.
// Ranges: common practice, no source.

import type { Range } from "./parts/readout";

/** Of any piece, g/mL. */
export const DENSITY_LIMIT_G_CC = 3.8;
export const WEIGHT_LIMIT_LB = 16;
/** The RG limits are for balls of this weight and up. */
export const RG_LIMITS_FROM_LB = 13;

export const WEIGHT: Range = { from: 8, to: 18, high: WEIGHT_LIMIT_LB };
export const DIAMETER: Range = { from: 8.4, to: 8.7, low: 8.5, high: 8.595 };
export const RG: Range = {
  from: 2.42,
  to: 2.84,
  low: 2.46,
  high: 2.8,
  bands: [
    { upTo: 2.52, word: "band-low" },
    { upTo: 2.58, word: "band-medium" },
    { upTo: 2.84, word: "band-high" },
  ],
};
/** The trade says low .01 to .02, medium .03 to .04, high .05 and up: drawn midway between. */
export const DIFFERENTIAL: Range = {
  from: 0,
  to: 0.08,
  high: 0.06,
  bands: [
    { upTo: 0.025, word: "band-low" },
    { upTo: 0.045, word: "band-medium" },
    { upTo: 0.08, word: "band-high" },
  ],
};
/** Of a drilled ball over 10 lb, each way, oz. */
export const STATIC_BALANCE_LIMIT_OZ = 3;
/** What a ball usually loses on the lane, mph. */
export const USUAL_SPEED_LOST_MPH = [2, 2.5] as const;

/** What undrilled balls usually have, oz. */
export const USUAL_TOP_WEIGHT_OZ = [2, 4] as const;
export const TOP_WEIGHT: Range = {
  from: -1,
  to: 6,
  bands: [
    { upTo: 2, word: "band-little" },
    { upTo: 4, word: "band-usual" },
    { upTo: 6, word: "band-much" },
  ],
};
/** High less middle RG over this share of the differential is called asymmetric. */
export const ASYMMETRIC_SHARE = 0.05;
