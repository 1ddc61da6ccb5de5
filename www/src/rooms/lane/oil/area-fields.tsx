// The same edits as with the pencil, in numbers: which part of the film, and
// what happens to it.

import { useState } from "preact/hooks";
import { BoundedField } from "../../../parts/bounded-field";
import { SayTerms } from "../../../parts/say-terms";
import { useStore } from "../../../store";
import { paint } from "./map";
import { BOARDS, cellsOf, MOST_UM, ROWS } from "./paint";
import { say } from "./say";

export function AreaFields({ mirrored, stale }: { mirrored: boolean; stale: boolean }) {
  const store = useStore();
  const [area, setArea] = useState({ from_board: 8, to_board: 12, from_ft: 20, to_ft: 40 });
  const [film_um, setFilm] = useState(1);

  function change(to: (film_um: number) => number) {
    paint(store, cellsOf(area, mirrored), to, "");
  }

  return (
    <fieldset class="nested">
      <legend>{say("oil-part")}</legend>
      <div class="quad">
        {(["from_board", "to_board"] as const).map((key) => (
          <BoundedField
            bare
            key={key}
            label={
              <SayTerms
                id={key === "from_board" ? "oil-part-from-board" : "oil-part-to-board"}
                terms={{ board: "board" }}
              />
            }
            value={area[key]}
            quantity="count"
            min={1}
            max={BOARDS}
            step={1}
            onChange={(value) => setArea({ ...area, [key]: value })}
          />
        ))}
        {(["from_ft", "to_ft"] as const).map((key) => (
          <BoundedField
            bare
            key={key}
            label={
              <SayTerms
                id={key === "from_ft" ? "oil-part-from" : "oil-part-to"}
                terms={{ pattern: "oil pattern" }}
              />
            }
            value={area[key]}
            quantity="distance"
            min={0}
            max={ROWS}
            step={1}
            onChange={(value) => setArea({ ...area, [key]: Math.round(value) })}
          />
        ))}
      </div>
      <div class="oil-part">
        <BoundedField
          bare
          label={<SayTerms id="oil-part-film" terms={{ film: "film" }} />}
          value={film_um}
          quantity="film"
          min={0}
          max={MOST_UM}
          step={0.1}
          onChange={setFilm}
        />
        <button type="button" disabled={stale} onClick={() => change(() => film_um)}>
          {say("oil-part-set")}
        </button>
        <button type="button" disabled={stale} onClick={() => change((old) => old + film_um)}>
          {say("oil-part-add")}
        </button>
        <button type="button" disabled={stale} onClick={() => change((old) => old - film_um)}>
          {say("oil-part-take")}
        </button>
      </div>
    </fieldset>
  );
}
