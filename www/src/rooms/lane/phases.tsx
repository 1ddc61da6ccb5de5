// Skid, hook and roll in numbers.
import { phaseName } from "../../draw/say";
import { SayTerms } from "../../parts/say-terms";
import { Aside, Term } from "../../parts/term";
import { useStore } from "../../store";
import type { Roll } from "../../types";
import { change, measure, number, type Quantity } from "../../units";
import { say } from "./say";

/** Each phase: where it begins and ends, and what the ball loses, gains and turns in it. */
export function Phases({ roll }: { roll: Roll }) {
  const { units } = useStore().view.value;
  const unit = (quantity: Quantity) => ({ unit: measure(quantity, units).unit });
  return (
    <div class="phases">
      <p>
        <Aside text={say("lane-phases-meaning")}>{say("lane-phases-name")}</Aside>
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard. */}
      <section class="charts-table" tabIndex={0} aria-label={say("lane-phases-label")}>
        <table>
          <caption>{say("lane-phases-table")}</caption>
          <thead>
            <tr>
              <th scope="col">{say("lane-phase")}</th>
              <th scope="col">{say("lane-phase-from", unit("distance"))}</th>
              <th scope="col">{say("lane-phase-to")}</th>
              <th scope="col">{say("lane-phase-length")}</th>
              <th scope="col">
                <SayTerms id="lane-phase-time" args={unit("time")} terms={{ time: "time" }} />
              </th>
              <th scope="col">
                <SayTerms id="lane-phase-speed" args={unit("speed")} terms={{ speed: "speed" }} />
              </th>
              <th scope="col">
                <SayTerms id="lane-phase-revs" args={unit("revs")} terms={{ revs: "rev rate" }} />
              </th>
              <th scope="col">{say("lane-phase-turns")}</th>
            </tr>
          </thead>
          <tbody>
            {roll.phases.map((phase) => (
              <tr key={phase.phase}>
                <th scope="row">
                  <Term word={phase.phase}>{phaseName(phase.phase)}</Term>
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
