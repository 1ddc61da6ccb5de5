// The same edits as with the pencil, in numbers: which part of the film, and
// what happens to it.

import { useState } from "preact/hooks";
import { BoundedField } from "../../../parts/bounded-field";
import { Term } from "../../../parts/term";
import { useStore } from "../../../store";
import { paint } from "./map";
import { BOARDS, cellsOf, MOST_UM, ROWS } from "./paint";

export function AreaFields({ mirrored, stale }: { mirrored: boolean; stale: boolean }) {
  const store = useStore();
  const [area, setArea] = useState({ from_board: 8, to_board: 12, from_ft: 20, to_ft: 40 });
  const [film_um, setFilm] = useState(1);

  function change(to: (film_um: number) => number) {
    paint(store, cellsOf(area, mirrored), to, "");
  }

  return (
    <fieldset class="nested">
      <legend>Part of it, in numbers</legend>
      <div class="quad">
        {(["from_board", "to_board"] as const).map((key) => (
          <BoundedField
            bare
            key={key}
            label={<Term word="board">{key === "from_board" ? "From board" : "To board"}</Term>}
            value={area[key]}
            quantity="count"
            min={1}
            max={BOARDS}
            step={1}
            onChange={(value) => setArea({ ...area, [key]: Math.round(value) })}
          />
        ))}
        {(["from_ft", "to_ft"] as const).map((key) => (
          <BoundedField
            bare
            key={key}
            label={<Term word="oil pattern">{key === "from_ft" ? "From" : "To"}</Term>}
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
          label={<Term word="film">Film</Term>}
          value={film_um}
          quantity="film"
          min={0}
          max={MOST_UM}
          step={0.1}
          onChange={setFilm}
        />
        <button type="button" disabled={stale} onClick={() => change(() => film_um)}>
          Set to it
        </button>
        <button type="button" disabled={stale} onClick={() => change((old) => old + film_um)}>
          Add it
        </button>
        <button type="button" disabled={stale} onClick={() => change((old) => old - film_um)}>
          Take it off
        </button>
      </div>
    </fieldset>
  );
}
