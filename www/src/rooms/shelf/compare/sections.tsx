import { useState } from "preact/hooks";
import { SectionDrawing } from "../../../draw/section";
import { remPx, useSize } from "../../../draw/use-size";
import { paintOf } from "../../../palette";
import { Swatch } from "../../../parts/swatch";
import { isProblem } from "../../../problem";
import { cutOf, type Plane } from "../../../shelf/measured";
import { useStore } from "../../../store";
import { reading } from "../../../units";
import { useDark } from "../../saw/dark";
import { partNames } from "../../saw/parts";
import { normalOf, PRESETS, planeWords } from "../../saw/plane";
import { say } from "../say";
import type { Compared } from "./throws";

const AS_ON_SAW = "saw";

/** Every ball cut along the same plane, to the same scale. */
export function Sections({ all }: { all: Compared[] }) {
  const store = useStore();
  const { units, plane: sawn } = store.view.value;
  const [chosen, setChosen] = useState("along");
  const [box, size] = useSize<HTMLDivElement>();
  const preset = PRESETS.find(({ key }) => key === chosen);
  const plane: Plane = (chosen === AS_ON_SAW && sawn) || {
    normal: normalOf(preset?.facing ?? { round_deg: 0, up_deg: 0 }),
    depth_in: 0,
  };
  const largest_in = Math.max(...all.map(({ shot }) => shot.ball.diameter_in / 2));
  const columns = size && Math.max(1, Math.min(all.length, Math.floor((size.width_px + 8) / 150)));
  // So narrow a drawing has numbers in its parts, which the list below it names.
  const width_px =
    size && columns ? Math.min(290, Math.floor((size.width_px - 8 * (columns - 1)) / columns)) : 0;
  return (
    <section class="compare-part" aria-labelledby="compare-sections">
      <h4 id="compare-sections">{say("compare-sections")}</h4>
      <label class="shelf-order">
        <span>{say("compare-cut")}</span>
        <select value={chosen} onChange={(event) => setChosen(event.currentTarget.value)}>
          {PRESETS.map(({ key, name }) => (
            <option key={key} value={key}>
              {say(name)}
            </option>
          ))}
          {sawn && <option value={AS_ON_SAW}>{say("compare-as-on-saw")}</option>}
        </select>
      </label>
      <div class="compare-sections" ref={box}>
        {width_px > 0 &&
          all.map((one) => (
            <Cut key={one.letter} one={one} plane={plane} radius_in={largest_in} width_px={width_px} />
          ))}
      </div>
      <p class="fine-print">
        {say("compare-to-scale", {
          plane: planeWords(plane, (inches) => reading(inches, "size", units)),
        })}
      </p>
    </section>
  );
}

interface CutProps {
  one: Compared;
  plane: Plane;
  radius_in: number;
  width_px: number;
}

function Cut({ one, plane, radius_in, width_px }: CutProps) {
  const store = useStore();
  const dark = useDark();
  const { units } = store.view.value;
  const section = cutOf(store.wasm, one.shot, plane);
  if (isProblem(section)) return null;
  const names = partNames(one.found);
  const parts = [...new Set(section.regions.map(({ part }) => part))].sort((a, b) => a - b);
  return (
    <figure class="compare-section">
      <SectionDrawing
        id={`compare-${one.letter}`}
        section={section}
        radius_in={one.shot.ball.diameter_in / 2}
        scale_in={radius_in}
        names={names}
        partAt={() => -1}
        paint={names.map((_, part) => paintOf(part))}
        width_px={width_px}
        height_px={width_px + 24}
        paper={dark ? "#d6d1c6" : "#fffdf8"}
        title={say("compare-section", { letter: one.letter, ball: one.item.name })}
        desc={say("compare-shows", { parts: parts.map((part) => names[part]).join(", ") })}
        text_px={remPx(0.8125)}
        metric={units === "metric"}
      />
      <figcaption>
        <span class="choose-letter">{one.letter}</span> {one.item.name}
        <ol class="compare-parts">
          {parts.map((part) => (
            <li key={part}>
              <Swatch part={part} /> {part + 1} {names[part]}
            </li>
          ))}
        </ol>
      </figcaption>
    </figure>
  );
}
