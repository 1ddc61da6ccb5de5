// The rings on the ball: how wide their band is, where the bow-ties are, and
// whether they go over a hole. Warnings stand outside the fold.
import { Fold } from "../../parts/fold";
import { Term } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { Track } from "../../types";
import { reading } from "../../units";

export function TrackRings() {
  const store = useStore();
  const { roll } = store.derived.value;
  const units = store.view.value.units;
  const { track } = roll;
  const near = track.holes.filter(({ close }) => close);
  return (
    <div class="lane-track">
      {near.length > 0 && (
        <div role="status">
          {near.map((pass) => (
            <p class="says says-caution" key={pass.hole}>
              {warning(pass, units)}
            </p>
          ))}
        </div>
      )}
      <Fold summary={`Rings on the ball (${track.rings.length})`} wrong={false}>
        <p>{bandWords(track, units)}</p>
        {track.holes.length > 0 && <Passes track={track} units={units} />}
        <p class="hint">
          A ring is the circle the lane draws on the ball in one turn. The rings cross near two places, the{" "}
          <Term word="bow-tie">bow-ties</Term>, and are widest apart between them.
        </p>
      </Fold>
    </div>
  );
}

/** The band of rings in one sentence. */
export function bandWords({ rings, widest, bow_ties }: Track, units: Units): string {
  const size = (inches: number) => reading(inches, "size", units);
  if (!widest || !bow_ties) return "Fewer than two whole turns: there is no band of rings to measure.";
  const [a, b] = bow_ties;
  return `${rings.length} rings; the band of them is ${size(widest.width_in)} at its widest and ${size(Math.min(a.width_in, b.width_in))} at its narrowest, a bow-tie.`;
}

function warning({ hole, over_turns, clearance_in }: Track["holes"][number], units: Units): string {
  const [first] = over_turns;
  return first === undefined
    ? `The track passes a hole, ${hole}, by only ${reading(clearance_in, "size", units)}.`
    : `The track goes over a hole, ${hole}: first in turn ${first}. The ball would click there and lose its line; choose another layout.`;
}

function Passes({ track, units }: { track: Track; units: Units }) {
  return (
    <table class="shares-table">
      <caption class="visually-hidden">How far the track clears every hole</caption>
      <thead>
        <tr>
          <th scope="col">Hole</th>
          <th scope="col">Clears by</th>
          <th scope="col">In turn</th>
        </tr>
      </thead>
      <tbody>
        {track.holes.map(({ hole, clearance_in, turn, over_turns }) => (
          <tr key={hole}>
            <th scope="row">
              <Term word="hole">{hole}</Term>
            </th>
            <td>
              {over_turns.length > 0
                ? `over it in ${over_turns.length} ${over_turns.length === 1 ? "turn" : "turns"}`
                : reading(clearance_in, "size", units)}
            </td>
            <td>{turn}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
