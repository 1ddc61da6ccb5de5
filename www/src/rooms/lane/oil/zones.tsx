import { BoundedField } from "../../../parts/bounded-field";
import { NumberField } from "../../../parts/field";
import { SayTerms } from "../../../parts/say-terms";
import { useStore } from "../../../store";
import type { Zone } from "../../../types";
import { count } from "../../../units";
import { say } from "./say";

/** What a zone is, for the names of its controls: oil, where it thins out, and the dry lane beyond. */
function zoneOf(at: number, zones: number): { zone: string; number: string } {
  const number = count(at + 1);
  if (at === 0 && zones > 1) return { zone: zones === 2 ? "oil" : "full", number };
  if (at === zones - 1 && zones > 1) return { zone: "beyond", number };
  return { zone: zones === 3 ? "thin" : "other", number };
}

/** Friction in stretches of the lane. */
export function Zones({ zones }: { zones: Zone[] }) {
  const store = useStore();
  const wrong = store.derived.value.shotProblem;

  function edit(change: (zones: Zone[]) => Zone[], key: string) {
    store.editShot(
      (old) => ("zones" in old.lane ? { ...old, lane: { ...old.lane, zones: change(old.lane.zones) } } : old),
      key,
    );
  }

  function setEnd(at: number, to_ft: number) {
    edit(
      (old) =>
        old.map((zone, i) =>
          i === at ? { ...zone, to_ft } : i === at + 1 ? { ...zone, from_ft: to_ft } : zone,
        ),
      `lane.${at}.to_ft`,
    );
  }

  return (
    <fieldset>
      <legend>
        <SayTerms id="oil-zones" terms={{ friction: "friction" }} />
      </legend>
      {zones.map((zone, i) => (
        <div key={i}>
          {i < zones.length - 1 && (
            <BoundedField
              label={say("oil-zone-end", zoneOf(i, zones.length))}
              value={zone.to_ft}
              quantity="distance"
              min={20}
              max={55}
              step={0.5}
              least={zone.from_ft + 0.01}
              most={(zones[i + 1]?.to_ft ?? 63) - 0.01}
              onChange={(value) => setEnd(i, value)}
            />
          )}
          <NumberField
            label={
              <SayTerms
                id="oil-zone-friction"
                args={zoneOf(i, zones.length)}
                terms={{ friction: "friction" }}
              />
            }
            value={zone.mu}
            quantity="friction"
            min={0}
            max={0.4}
            step={0.005}
            problem={wrong?.place === `lane.zones[${i}].mu` ? wrong : null}
            onChange={(mu) =>
              edit((old) => old.map((other, j) => (j === i ? { ...other, mu } : other)), `lane.${i}.mu`)
            }
          />
        </div>
      ))}
    </fieldset>
  );
}
