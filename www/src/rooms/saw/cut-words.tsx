import { useEffect, useState } from "preact/hooks";
import { Say } from "../../locale/say";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import type { Section } from "../../types";
import { digits, reading } from "../../units";
import { narrowestWords } from "./narrowest";
import { partNames } from "./parts";
import { planeWords } from "./plane";
import { say } from "./say";
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
  const name = (part: number) => (part < 0 ? say("saw-drilled-hole") : (names[part] ?? ""));
  const size = (inches: number) => reading(inches, "size", units);
  const told = (layers: Layer[]) => {
    const [outermost = "", ...others] = layers.map(({ part, thick_in }) =>
      say("saw-layer", { part: name(part), thickness: reading(thick_in, "cover", units) }),
    );
    return others.reduce((first, next) => say("saw-layers", { first, next }), outermost);
  };
  if (section.regions.length === 0) {
    return (
      <p class="cut-words" id={id}>
        {say("saw-passes-by")}
      </p>
    );
  }
  const up = walkIn(derived.ball, section, section.v, radius_in);
  const aside = walkIn(derived.ball, section, section.u, radius_in);
  const area = (in2: number) =>
    units === "metric" ? `${digits(in2 * 6.4516, 1)}\u00a0cm²` : `${digits(in2, 2)}\u00a0in²`;
  return (
    <div class="cut-words" id={id}>
      <p>{say("saw-is-cut", { plane: planeWords(section, size) })}</p>
      <p>{say("saw-from-top", { layers: told(up) })}</p>
      <p>{say("saw-from-side", { layers: told(aside) })}</p>
      {section.narrowest && <p>{narrowestWords(section.narrowest, section, units)}</p>}
      <table>
        <caption>
          <Say id="saw-areas" parts={{ cut: (word) => <Term word="cut">{word}</Term> }} />
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
