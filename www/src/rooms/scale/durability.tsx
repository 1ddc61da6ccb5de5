import "../../cover/cover.css";
import { useCover } from "../../cover/use-cover";
import { besideHoles, computed, inPractice } from "../../cover/words";
import { LazyFold } from "../../parts/lazy-fold";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import { reading } from "../../units";
import type { Word } from "../../words";

/** How much cover there is and what that means for the ball's life; worked out only while it is open. */
export function Durability() {
  return (
    <LazyFold class="durability" summary="Will the cover last?">
      <Told />
    </LazyFold>
  );
}

function Told() {
  const units = useStore().view.value.units;
  const covered = useCover();
  if (!covered) return <p aria-live="polite">Measuring the cover …</p>;
  const { cover } = covered;
  const { thinnest, usual_in } = cover;
  const size = (inches: number) => reading(inches, "cover", units);
  const percent = (share: number) => reading(share, "share", units);
  const [least, most] = usual_in.map((inches) => reading(inches, "size", units));
  const rows: [string, string, Word][] = [
    ["Thinnest place", thinnest ? size(thinnest.thickness_in) : "no core", "coverstock"],
    ["Mean", size(cover.mean_in), "coverstock"],
    [`Surface with under ${least}`, percent(cover.under_usual_share), "coverstock"],
    [`Surface with under ${most}`, percent(cover.under_most_share), "coverstock"],
    ["Ball filled by pieces", percent(cover.core_share), "piece"],
  ];
  return (
    <div class="cover-words">
      <p>
        <strong>{inPractice(cover, units)}</strong>
      </p>
      <table>
        <caption class="visually-hidden">The cover in numbers</caption>
        <tbody>
          {rows.map(([name, value, word]) => (
            <tr key={name}>
              <th scope="row">
                <Term word={word}>{name}</Term>
              </th>
              <td>{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {computed(covered, units).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {besideHoles(cover, units).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p>
        What no drawing tells: how well the <Term word="coverstock" /> holds to the core, heat, and wear. The
        Saw shows the thickness all over under Cover.
      </p>
      <p class="fine-print">* Common practice, no source. The numbers are computed from this ball.</p>
    </div>
  );
}
