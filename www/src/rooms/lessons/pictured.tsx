// What stands on the bench of a lesson as a picture: the cut ball, the shot.

import "../../draw/draw.css";
import { groundOf } from "../../draw/ground";
import { Ground, LaneDrawing, Rulers } from "../../draw/lane";
import { boardToX, line, place } from "../../draw/lane-frame";
import { Picture } from "../../draw/picture";
import type { Points } from "../../lessons/draw-path";
import { say } from "../../lessons/say";
import { sceneOf } from "../../lessons/scenes";
import { type Doc, useStore } from "../../store";
import { whatHappened } from "../lane/sentence";
import { useDark } from "../saw/dark";
import { Flat } from "../saw/flat";

interface PicturedProps {
  id: string;
  doc: Doc;
  width_px: number;
  height_px: number;
}

/** The ball sawn through the pin, its parts named; for paper on white, whatever the page is. */
export function CutOf({ id, doc, width_px, height_px, page }: PicturedProps & { page?: true }) {
  const store = useStore();
  const scene = sceneOf(store, doc);
  const dark = useDark();
  return (
    <Flat
      id={id}
      derived={scene}
      section={scene.section}
      units={store.view.value.units}
      width_px={width_px}
      height_px={height_px}
      text_px={page ? undefined : 12}
      dark={page ? dark : false}
      paper={page ? undefined : "#fff"}
      marked
    />
  );
}

/** The shot from above; without the ball where its path is still to be guessed. */
export function ShotOf({ id, doc, width_px, height_px }: PicturedProps) {
  const store = useStore();
  const { units } = store.view.value;
  const { roll } = sceneOf(store, doc);
  const said = whatHappened(roll, doc.shot.hand, units);
  return (
    <figure class="pictured">
      <LaneDrawing
        id={id}
        roll={roll}
        hand={doc.shot.hand}
        ground={groundOf(store.wasm, doc.shot.lane)}
        place={place(width_px, height_px)}
        t_s={null}
        metric={units === "metric"}
        title={say("lesson-lane-above")}
        desc={said}
      />
      <figcaption>{said}</figcaption>
    </figure>
  );
}

/** The lane alone, or with one path on it. */
export function LaneOf({ id, doc, width_px, height_px, path }: PicturedProps & { path: Points | null }) {
  const store = useStore();
  const { units } = store.view.value;
  const { hand, lane } = doc.shot;
  const laid = place(width_px, height_px);
  const ground = groundOf(store.wasm, lane);
  return (
    <Picture
      id={id}
      class="lane-drawing"
      viewBox={`0 0 ${width_px} ${height_px}`}
      width={width_px}
      height={height_px}
      font-size={laid.text_px}
      title={say("lesson-lane-above")}
      desc={say(path ? "lesson-lane-path" : "lesson-lane-empty")}
    >
      <Ground place={laid} ground={ground} />
      <Rulers place={laid} hand={hand} ground={ground} metric={units === "metric"} />
      {path && (
        <path
          class="path roll"
          fill="none"
          d={line(path.map(([board, ft]) => laid.at(boardToX(board, hand), ft)))}
        />
      )}
    </Picture>
  );
}
