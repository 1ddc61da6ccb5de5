import { RG, RG_LIMITS_FROM_LB } from "../../limits";
import { useStore } from "../../store";
import type { Ladder } from "../../types";
import { digits, measure, number, reading } from "../../units";
import { say } from "./say";

const WIDTH = 320;
const HEIGHT = 150;
const LEFT = 44;
const BOTTOM = 22;
const TOP = 18;

/** RG by weight: each ball a bar from its low to its high RG, so that the bar's length is the differential. */
export function WeightChart({ ladder }: { ladder: Ladder }) {
  const units = useStore().view.value.units;
  const balls = ladder.rungs.flatMap(({ weight_lb, rg_in, feasible }) =>
    feasible && rg_in ? [{ weight_lb, ...rg_in }] : [],
  );
  if (balls.length < 2) return null;
  const limits = [RG.low ?? 0, RG.high ?? 0];
  const from = Math.min(limits[0] ?? 0, ...balls.map(({ low }) => low)) - 0.01;
  const to = Math.max(...balls.map(({ high }) => high)) + 0.01;
  const weights = ladder.rungs.map(({ weight_lb }) => weight_lb);
  const [light, heavy] = [Math.min(...weights), Math.max(...weights)];
  const x = (lb: number) => LEFT + 16 + ((lb - light) / (heavy - light)) * (WIDTH - LEFT - 32);
  const y = (rg: number) => HEIGHT - BOTTOM - ((rg - from) / (to - from)) * (HEIGHT - BOTTOM - TOP);
  const line = (end: "low" | "high") =>
    balls.map((ball, n) => `${n === 0 ? "M" : "L"}${x(ball.weight_lb)} ${y(ball[end])}`).join("");
  return (
    <figure class="weight-chart">
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
        {limits
          .filter((limit) => limit > from && limit < to)
          .map((limit) => (
            <g key={limit}>
              <path class="weight-chart-limit" d={`M${x(RG_LIMITS_FROM_LB)} ${y(limit)}H${WIDTH}`} />
              <text x={LEFT - 6} y={y(limit) + 4} text-anchor="end">
                {number(limit, "rg", units)}
              </text>
            </g>
          ))}
        <path class="weight-chart-frame" d={`M${LEFT} ${TOP}V${HEIGHT - BOTTOM}H${WIDTH}`} />
        <text x={LEFT - 6} y={TOP + 4} text-anchor="end">
          {number(to, "rg", units)}
        </text>
        <path class="weight-chart-line" d={line("low")} />
        <path class="weight-chart-line" d={line("high")} />
        {balls.map(({ weight_lb, low, high }) => (
          <path
            key={weight_lb}
            class="weight-chart-ball"
            d={`M${x(weight_lb)} ${y(low)}V${y(high)}m-5 0h10M${x(weight_lb) - 5} ${y(low)}h10`}
          />
        ))}
        {weights.map((lb) => (
          <text key={lb} x={x(lb)} y={HEIGHT - 6} text-anchor="middle">
            {digits(lb * measure("weight", units).factor, units === "trade" ? 0 : 1)}
          </text>
        ))}
      </svg>
      <figcaption class="readout-says">
        {say("scale-line-chart", {
          rg: measure("rg", units).unit,
          weight: measure("weight", units).unit,
          from: reading(RG_LIMITS_FROM_LB, "weight", units),
        })}
      </figcaption>
    </figure>
  );
}
