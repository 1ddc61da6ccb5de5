import { paintOf } from "../../palette";
import { Column } from "../../parts/column";
import { SayTerms } from "../../parts/say-terms";
import { Swatch } from "../../parts/swatch";
import { useStore } from "../../store";
import { LB_KG, number } from "../../units";
import { partNames } from "../saw/parts";
import { say } from "./say";
import { largest } from "./words";

const WIDTH = 300;

/** What each part weighs and how much of the RG comes from it: a bar and its table. */
export function Shares() {
  const store = useStore();
  const { weighed, made } = store.derived.value;
  const names = partNames({ made });
  const { units, selected } = store.view.value;
  let from = 0;
  const bars = weighed.pieces.map(({ rg_share }, part) => {
    const start = from;
    from += Math.max(0, rg_share);
    return { part, x: start * WIDTH, width: Math.max(0, rg_share) * WIDTH };
  });
  return (
    <section class="shares" aria-labelledby="shares-name">
      <h3 id="shares-name">
        <SayTerms id="scale-shares" terms={{ rg: "RG" }} />
      </h3>
      <svg class="shares-bar" viewBox={`0 0 ${WIDTH} 28`} preserveAspectRatio="none" aria-hidden="true">
        {bars.map(({ part, x, width }) => {
          const paint = paintOf(part);
          return (
            <g key={part}>
              <rect x={x} width={width} y="2" height="24" fill={paint.css} />
              {paint.hatch > 0 && (
                <rect x={x} width={width} y="2" height="24" fill={`url(#hatch-${paint.hatch})`} />
              )}
              <rect x={x} width={width} y="2" height="24" class="swatch-edge" />
            </g>
          );
        })}
      </svg>
      <table class="shares-table">
        <caption class="visually-hidden">{say("scale-shares-table")}</caption>
        <thead>
          <tr>
            <th scope="col">{say("scale-part")}</th>
            <Column word="weight" name={say("scale-shares-weight")} quantity="weight" />
            <Column word="volume" name={say("scale-shares-volume")} quantity="volume" />
            <Column word="RG" name={say("scale-shares-rg")} quantity="share" />
          </tr>
        </thead>
        <tbody>
          {weighed.pieces.map((piece, part) => (
            <tr key={part} data-selected={selected === part || undefined}>
              <th scope="row">
                <Swatch part={part} />
                <span>{names[part]}</span>
              </th>
              <td>{number(piece.mass_kg / LB_KG, "weight", units)}</td>
              <td>{number(piece.volume_cc, "volume", units)}</td>
              <td>{number(piece.rg_share, "share", units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="readout-says">
        {say("scale-shares-how")} {largest(weighed, names)}
      </p>
    </section>
  );
}
