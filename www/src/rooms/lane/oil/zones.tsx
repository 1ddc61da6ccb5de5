import { BoundedField } from "../../../parts/bounded-field";
import { NumberField } from "../../../parts/field";
import { Term } from "../../../parts/term";
import { useStore } from "../../../store";
import type { Zone } from "../../../types";

/** What the controls of a zone are called: oil, where it thins out, and the dry lane beyond. */
function zoneWords(at: number, count: number): { end: string; where: string } {
  if (at === 0 && count > 1) return { end: count === 2 ? "Oil length" : "Full oil ends", where: "in oil" };
  if (at === count - 1 && count > 1) return { end: "", where: "beyond" };
  if (count === 3) return { end: "Thin oil ends", where: "in thin oil" };
  return { end: `Zone ${at + 1} ends`, where: `in zone ${at + 1}` };
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
        <Term word="friction">Friction</Term> by distance
      </legend>
      {zones.map((zone, i) => (
        <div key={i}>
          {i < zones.length - 1 && (
            <BoundedField
              label={zoneWords(i, zones.length).end}
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
              <>
                <Term word="friction">Friction</Term> {zoneWords(i, zones.length).where}
              </>
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
