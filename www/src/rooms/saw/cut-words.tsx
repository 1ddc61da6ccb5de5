import { useEffect, useState } from "preact/hooks";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import type { Section } from "../../types";
import { reading } from "../../units";
import { narrowestWords } from "./narrowest";
import { partNames } from "./parts";
import { planeWords } from "./plane";
import { areas, type Layer, walkIn } from "./walk";

const REST_MS = 100;

/** The cut in words, the same as the picture beside it, once an edit has come to rest. */
export function CutWords({ id }: { id: string }) {
  const store = useStore();
  const derived = store.derived.value;
  const { plane } = store.view.value;
  const [section, setSection] = useState<Section | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setSection(store.section.peek()), REST_MS);
    return () => clearTimeout(timer);
  }, [store, derived, plane]);
  return section && plane ? <Words id={id} section={section} /> : null;
}

function Words({ id, section }: { id: string; section: Section }) {
  const store = useStore();
  const { units } = store.view.value;
  const derived = store.derived.value;
  const names = partNames(derived);
  const radius_in = derived.file.diameter_in / 2;
  const name = (part: number) => (part < 0 ? "drilled hole" : (names[part] ?? ""));
  const size = (inches: number) => reading(inches, "size", units);
  const say = (layers: Layer[]) =>
    layers.map(({ part, thick_in }) => `${name(part)} ${reading(thick_in, "cover", units)}`).join(", then ");
  if (section.regions.length === 0) {
    return (
      <p class="cut-words" id={id}>
        The plane passes the ball by: it cuts nothing.
      </p>
    );
  }
  const up = walkIn(derived.ball, section, section.v, radius_in);
  const aside = walkIn(derived.ball, section, section.u, radius_in);
  const area = (in2: number) =>
    units === "metric" ? `${(in2 * 6.4516).toFixed(1)}\u00a0cm²` : `${in2.toFixed(2)}\u00a0in²`;
  return (
    <div class="cut-words" id={id}>
      <p>The ball is cut {planeWords(section, size)}.</p>
      <p>From the top of the cut down to its middle: {say(up)}.</p>
      <p>From its right side in to the middle: {say(aside)}.</p>
      {section.narrowest && <p>{narrowestWords(section.narrowest, section, units)}</p>}
      <table>
        <caption>
          Area of each part on the <Term word="cut">cut</Term>
        </caption>
        <tbody>
          {areas(section).map(({ part, area_in2 }) => (
            <tr key={part}>
              <th scope="row">{name(part)}</th>
              <td>{area(area_in2)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
