// What the published limits say at a point of the map.

import { RG_LIMITS_FROM_LB } from "../../limits";
import type { BallMap, Figures } from "../../types";

/** By how much a ball passes a published limit; 0 or below where it keeps all of them. */
export function past(figures: Figures, limits: BallMap["limits"]): number {
  const { weight_lb, low_rg_in, differential_in } = figures;
  const over = (value: number, most: number | null) => (most === null ? -1 : value - most);
  const under = (value: number, least: number | null) => (least === null ? -1 : least - value);
  const heavy = weight_lb >= RG_LIMITS_FROM_LB;
  return Math.max(
    over(weight_lb, limits.weight_at_most_lb),
    over(differential_in, limits.differential_at_most_in),
    heavy ? under(low_rg_in, limits.low_rg_at_least_in) : -1,
    heavy ? over(low_rg_in + differential_in, limits.high_rg_at_most_in) : -1,
  );
}
