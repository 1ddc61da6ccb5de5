// Skid, hook and roll in numbers.
import { Aside, Term } from "../../parts/term";
import { useStore } from "../../store";
import type { Roll } from "../../types";
import { change, measure, number } from "../../units";

const MEANING =
  "The order skid, hook, roll is that of the United States Bowling Congress's ball motion study. Where each begins is this page's choice: the hook where the sideways pull of friction first reaches half of its greatest value, the roll where slip ends, or stays below a fiftieth of the ball's speed.";

/** Each phase: where it begins and ends, and what the ball loses, gains and turns in it. */
export function Phases({ roll }: { roll: Roll }) {
  const { units } = useStore().view.value;
  const unit = (quantity: "distance" | "speed" | "revs") => measure(quantity, units).unit;
  return (
    <div class="phases">
      <p>
        <Aside text={MEANING}>Skid, hook and roll</Aside>
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard. */}
      <section class="charts-table" tabIndex={0} aria-label="The phases in numbers">
        <table>
          <caption>What the ball loses, gains and turns in each</caption>
          <thead>
            <tr>
              <th scope="col">Phase</th>
              <th scope="col">From, {unit("distance")}</th>
              <th scope="col">To</th>
              <th scope="col">Length</th>
              <th scope="col">
                <Term word="time">Time</Term>, s
              </th>
              <th scope="col">
                <Term word="speed">Speed</Term>, {unit("speed")}
              </th>
              <th scope="col">
                <Term word="rev rate">Revs</Term>, {unit("revs")}
              </th>
              <th scope="col">Path turns</th>
            </tr>
          </thead>
          <tbody>
            {roll.phases.map((phase) => (
              <tr key={phase.phase}>
                <th scope="row">
                  <Term word={phase.phase} />
                </th>
                <td>{number(phase.from_ft, "distance", units)}</td>
                <td>{number(phase.to_ft, "distance", units)}</td>
                <td>{number(phase.length_ft, "distance", units)}</td>
                <td>{number(phase.time_s, "time", units)}</td>
                <td>{change(-phase.speed_lost_mph, "speed", units) ?? "0"}</td>
                <td>{change(phase.revs_gained_rpm, "revs", units) ?? "0"}</td>
                <td>{number(phase.turned_deg, "angle", units)}°</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </div>
  );
}
