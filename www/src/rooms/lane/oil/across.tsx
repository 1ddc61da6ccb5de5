// The film across the lane at one distance, and its mean foot by foot.

import { NumberField } from "../../../parts/field";
import { SayTerms } from "../../../parts/say-terms";
import { useStore } from "../../../store";
import type { OilMap } from "../../../types";
import { measure, number, type Quantity, reading } from "../../../units";
import { BOARDS } from "./paint";
import { say } from "./say";

const WIDTH = 280;
const HEIGHT = 84;

interface AcrossProps {
  map: OilMap;
  /** The foot looked at, counted from 1. */
  cut_ft: number;
  onCut(cut_ft: number): void;
}

export function Across({ map, cut_ft, onCut }: AcrossProps) {
  const { units } = useStore().view.value;
  const row = map.film_um[cut_ft - 1] ?? [];
  const top_um = Math.max(map.thickest_um, 1e-9) * 1.05;
  const bar = WIDTH / BOARDS;
  const most = Math.max(...row);
  const least = Math.min(...row);
  const distance = reading(cut_ft - 0.5, "distance", units);
  const unit = (quantity: Quantity) => ({ unit: measure(quantity, units).unit });
  return (
    <div class="oil-across">
      <NumberField
        label={<SayTerms id="oil-across-distance" terms={{ pattern: "oil pattern" }} />}
        value={cut_ft - 0.5}
        quantity="distance"
        min={0.5}
        max={62.5}
        step={1}
        onChange={(value) => onCut(Math.min(63, Math.max(1, Math.floor(value) + 1)))}
      />
      <svg
        class="chart oil-bars"
        viewBox={`-4 -18 ${WIDTH + 8} ${HEIGHT + 34}`}
        role="img"
        aria-labelledby="oil-across-title oil-across-desc"
      >
        <title id="oil-across-title">{say("oil-across-title")}</title>
        <desc id="oil-across-desc">
          {say("oil-across-says", {
            distance,
            least: reading(least, "film", units),
            most: reading(most, "film", units),
          })}
        </desc>
        <text x="0" y="-6">
          {say("oil-across-ends", {
            distance,
            least: number(least, "film", units),
            most: reading(most, "film", units),
          })}
        </text>
        {row.map((film_um, i) => {
          const height = (film_um / top_um) * HEIGHT;
          return (
            <rect
              key={i}
              class="oil-bar"
              x={WIDTH - (i + 1) * bar + 0.5}
              y={HEIGHT - height}
              width={bar - 1}
              height={height}
            />
          );
        })}
        <path class="chart-axis" d={`M0 ${HEIGHT}H${WIDTH}`} />
        {[1, 10, 20, 30, 39].map((board) => (
          <text key={board} x={WIDTH - (board - 0.5) * bar} y={HEIGHT + 13} text-anchor="middle">
            {board}
          </text>
        ))}
      </svg>
      <details>
        <summary>{say("oil-across-tables")}</summary>
        <div class="oil-tables">
          <table>
            <caption>{say("oil-across-table", { distance })}</caption>
            <thead>
              <tr>
                <th scope="col">{say("oil-across-board")}</th>
                <th scope="col">
                  <SayTerms id="oil-across-film" args={unit("film")} terms={{ film: "film" }} />
                </th>
              </tr>
            </thead>
            <tbody>
              {row.map((film_um, i) => (
                <tr key={i}>
                  <th scope="row">{i + 1}</th>
                  <td>{number(film_um, "film", units)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <table>
            <caption>{say("oil-down-table")}</caption>
            <thead>
              <tr>
                <th scope="col">{say("oil-down-to", unit("distance"))}</th>
                <th scope="col">
                  <SayTerms id="oil-across-film" args={unit("film")} terms={{ film: "film" }} />
                </th>
              </tr>
            </thead>
            <tbody>
              {map.by_row_um.map((film_um, i) =>
                (i + 1) % 3 === 0 ? (
                  <tr key={i}>
                    <th scope="row">{number(i + 1, "distance", units)}</th>
                    <td>{number(film_um, "film", units)}</td>
                  </tr>
                ) : null,
              )}
            </tbody>
          </table>
        </div>
      </details>
    </div>
  );
}
