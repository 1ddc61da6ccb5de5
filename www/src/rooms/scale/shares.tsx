import { paintOf } from "../../palette";
import { Swatch } from "../../parts/swatch";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import { LB_KG, measure, number, type Quantity } from "../../units";
import type { Word } from "../../words";

const WIDTH = 300;

/** What each part weighs and how much of the RG comes from it: a bar and its table. */
export function Shares() {
  const store = useStore();
  const { weighed } = store.derived.value;
  const { units, selected } = store.view.value;
  let from = 0;
  const bars = weighed.pieces.map(({ rg_share }, part) => {
    const start = from;
    from += Math.max(0, rg_share);
    return { part, x: start * WIDTH, width: Math.max(0, rg_share) * WIDTH };
  });
  const head = (word: Word, name: string, quantity: Quantity) => (
    <th scope="col">
      <Term word={word}>{name}</Term> <span class="unit">{measure(quantity, units).unit}</span>
    </th>
  );
  return (
    <section class="shares" aria-labelledby="shares-name">
      <h3 id="shares-name">
        Where the <Term word="RG" /> comes from
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
        <caption class="visually-hidden">Weight, volume and share of the RG of every part</caption>
        <thead>
          <tr>
            <th scope="col">Part</th>
            {head("weight", "Weight", "weight")}
            {head("volume", "Volume", "volume")}
            {head("RG", "RG share", "share")}
          </tr>
        </thead>
        <tbody>
          {weighed.pieces.map((piece, part) => (
            <tr key={part} data-selected={selected === part || undefined}>
              <th scope="row">
                <Swatch part={part} />
                <span>{piece.name}</span>
              </th>
              <td>{number(piece.mass_kg / LB_KG, "weight", units)}</td>
              <td>{number(piece.volume_cc, "volume", units)}</td>
              <td>{number(piece.rg_share, "share", units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="readout-says">
        A part counts by its weight and by the square of its distance from the axis: the cover is light for
        its size and still matters most, because it is far out.
      </p>
    </section>
  );
}
