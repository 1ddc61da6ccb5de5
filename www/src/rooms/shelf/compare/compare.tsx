import "../../../draw/draw.css";
import "./compare.css";
import { ShotKey } from "../../../draw/shots";
import { useShelf } from "../../../shelf/shelf";
import { useStore } from "../../../store";
import { HandChoice } from "../../../why/same-hand";
import { type Items, useChosen } from "../items";
import { BallMap } from "./map";
import { Reasons } from "./reasons";
import { Sections } from "./sections";
import { Shots } from "./shots";
import { BallTable } from "./table";
import { compareAll, oneBall } from "./throws";

/** Up to four balls, each with its shot, held against the first. */
export function Compare({ items }: { items: Items }) {
  const store = useStore();
  const shelf = useShelf();
  const chosen = useChosen(items);
  const all = compareAll(store.wasm, chosen, shelf.sameShot.value, store.view.value.hand);
  return (
    <section class="compare" aria-labelledby="compare-name">
      <h3 id="compare-name" tabIndex={-1}>
        Side by side
      </h3>
      {all.length === 0 ? (
        <p class="shelf-empty">
          Mark up to four balls with Compare: those of the house, those on the shelf, the one on the bench.
          The first is what the others are held against. One ball put on the shelf with several releases
          compares those.
        </p>
      ) : (
        <>
          <ol class="compare-key">
            {all.map(({ letter, item }, at) => (
              <li key={item.id}>
                <ShotKey at={at} letter={letter} />
                <span class="compare-name">{item.name}</span>
                {at > 0 && (
                  <button
                    type="button"
                    aria-label={`Make it the first: ${item.name}`}
                    onClick={() => {
                      shelf.chosen.value = [
                        item.id,
                        ...chosen.map(({ id }) => id).filter((id) => id !== item.id),
                      ];
                      shelf.said.value = `${item.name} is now what the others are held against.`;
                    }}
                  >
                    Make it the first
                  </button>
                )}
                <button
                  type="button"
                  aria-label={`Take out: ${item.name}`}
                  onClick={() => {
                    shelf.chosen.value = chosen.map(({ id }) => id).filter((id) => id !== item.id);
                    document.getElementById("compare-name")?.focus();
                  }}
                >
                  Take out
                </button>
              </li>
            ))}
          </ol>
          <fieldset class="compare-same-shot">
            <legend>How they are thrown</legend>
            <label>
              <input
                type="radio"
                name="same-shot"
                checked={shelf.sameShot.value}
                onChange={() => {
                  shelf.sameShot.value = true;
                }}
              />
              Same shot for all: A's hand, release and lane
            </label>
            <label>
              <input
                type="radio"
                name="same-shot"
                checked={!shelf.sameShot.value}
                onChange={() => {
                  shelf.sameShot.value = false;
                }}
              />
              Each its own shot, as it was put there
            </label>
            {shelf.sameShot.value && oneBall(all) && (
              <p class="says says-caution">
                these are one and the same ball: choose each its own shot to see releases apart.
              </p>
            )}
            <p class="fine-print">
              How a ball is laid out and drilled stays its own. A ball of the house has none of that: with the
              same shot for all it takes A's, else it is thrown as the opening shot.
            </p>
          </fieldset>
          {shelf.sameShot.value && all.length > 1 && <HandChoice />}
          <Shots all={all} />
          <Reasons all={all} />
          <Sections all={all} />
          <section class="compare-part" aria-labelledby="compare-balls">
            <h4 id="compare-balls">The balls</h4>
            <BallTable all={all} />
          </section>
        </>
      )}
      <BallMap items={items} />
    </section>
  );
}
