// The rings on the ball: how wide their band is, where the bow-ties are, and
// whether they go over a hole. Warnings stand outside the fold.
import { holeName } from "../../locale/names";
import { Fold } from "../../parts/fold";
import { Result } from "../../parts/result";
import { SayTerms } from "../../parts/say-terms";
import { Term } from "../../parts/term";
import { type Units, useStore } from "../../store";
import type { Track } from "../../types";
import { count, reading } from "../../units";
import { say } from "./say";

export function TrackRings() {
  const store = useStore();
  const { roll } = store.derived.value;
  const units = store.view.value.units;
  const { track } = roll;
  const near = track.holes.filter(({ close }) => close);
  return (
    <div class="lane-track">
      {near.length > 0 && (
        <div>
          {near.map((pass) => {
            const says = warning(pass, units);
            return (
              <Result class="says says-caution" key={pass.hole} of={says}>
                {says}
              </Result>
            );
          })}
        </div>
      )}
      <Fold summary={say("lane-rings", { rings: count(track.rings.length) })} wrong={false}>
        <p>{bandWords(track, units)}</p>
        {track.holes.length > 0 && <Passes track={track} units={units} />}
        <p class="hint">
          <SayTerms id="lane-rings-says" terms={{ ties: "bow-tie" }} />
        </p>
      </Fold>
    </div>
  );
}

/** The band of rings in one sentence. */
export function bandWords({ rings, widest, bow_ties }: Track, units: Units): string {
  const size = (inches: number) => reading(inches, "size", units);
  if (!widest || !bow_ties) return say("lane-band-none");
  const [a, b] = bow_ties;
  return say("lane-band", {
    rings: count(rings.length),
    widest: size(widest.width_in),
    narrowest: size(Math.min(a.width_in, b.width_in)),
  });
}

function warning(pass: Track["holes"][number], units: Units): string {
  const { over_turns, clearance_in } = pass;
  const hole = holeName(pass.hole);
  const [first] = over_turns;
  return first === undefined
    ? say("lane-passes-hole", { hole, clearance: reading(clearance_in, "size", units) })
    : say("lane-over-hole", { hole, turn: count(first) });
}

function Passes({ track, units }: { track: Track; units: Units }) {
  return (
    <table class="shares-table">
      <caption class="visually-hidden">{say("lane-clear")}</caption>
      <thead>
        <tr>
          <th scope="col">{say("lane-clear-hole")}</th>
          <th scope="col">{say("lane-clear-by")}</th>
          <th scope="col">{say("lane-clear-turn")}</th>
        </tr>
      </thead>
      <tbody>
        {track.holes.map(({ hole, clearance_in, turn, over_turns }) => (
          <tr key={hole}>
            <th scope="row">
              <Term word="hole">{holeName(hole)}</Term>
            </th>
            <td>
              {over_turns.length > 0
                ? say("lane-clear-over", { turns: over_turns.length })
                : reading(clearance_in, "size", units)}
            </td>
            <td>{turn}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
