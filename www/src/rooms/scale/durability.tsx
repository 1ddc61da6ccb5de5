import { useAloud } from "../../aloud";
import "../../cover/cover.css";
import { say as sayCover } from "../../cover/say";
import { type Covered, useCover } from "../../cover/use-cover";
import { besideHoles, computed, inPractice } from "../../cover/words";
import { Broken } from "../../parts/broken";
import { LazyFold } from "../../parts/lazy-fold";
import { SayTerms } from "../../parts/say-terms";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import { reading } from "../../units";
import type { Word } from "../../words";
import { say } from "./say";

/** How much cover there is and what that means for the ball's life; worked out only while it is open. */
export function Durability() {
  return (
    <LazyFold class="durability" summary={say("scale-cover-last")}>
      <Told />
    </LazyFold>
  );
}

function Told() {
  const { covered, broken } = useCover();
  if (broken) return <Broken broken={broken} />;
  return covered ? <Words covered={covered} /> : <p>{sayCover("cover-measuring")}</p>;
}

function Words({ covered }: { covered: Covered }) {
  const units = useStore().view.value.units;
  const { cover } = covered;
  const { thinnest, usual_in } = cover;
  const size = (inches: number) => reading(inches, "cover", units);
  useAloud(covered, `${computed(covered, units)[0]} ${inPractice(cover, units)}`);
  const percent = (share: number) => reading(share, "share", units);
  const [least, most] = usual_in.map((inches) => reading(inches, "size", units));
  const rows: [string, string, Word][] = [
    [
      say("scale-cover-thinnest"),
      thinnest ? size(thinnest.thickness_in) : say("scale-cover-no-core"),
      "coverstock",
    ],
    [say("scale-cover-mean"), size(cover.mean_in), "coverstock"],
    [say("scale-cover-under", { limit: least ?? "" }), percent(cover.under_usual_share), "coverstock"],
    [say("scale-cover-under", { limit: most ?? "" }), percent(cover.under_most_share), "coverstock"],
    [say("scale-cover-pieces"), percent(cover.core_share), "piece"],
  ];
  return (
    <div class="cover-words">
      <p>
        <strong>{inPractice(cover, units)}</strong>
      </p>
      <table>
        <caption class="visually-hidden">{say("scale-cover-numbers")}</caption>
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
        <SayTerms id="scale-cover-not-told" terms={{ coverstock: "coverstock" }} />
      </p>
      <p class="fine-print">{sayCover("cover-in-practice-note")}</p>
    </div>
  );
}
