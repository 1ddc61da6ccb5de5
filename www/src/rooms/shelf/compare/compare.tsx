import "../../../draw/draw.css";
import "./compare.css";
import { ShotKey } from "../../../draw/shots";
import { useShelf } from "../../../shelf/shelf";
import { useStore } from "../../../store";
import { HandChoice } from "../../../why/same-hand";
import { type Items, useChosen } from "../items";
import { say } from "../say";
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
        {say("compare-name")}
      </h3>
      {all.length === 0 ? (
        <p class="shelf-empty">{say("compare-how")}</p>
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
                    aria-label={say("compare-make-first-name", { name: item.name })}
                    onClick={() => {
                      shelf.chosen.value = [
                        item.id,
                        ...chosen.map(({ id }) => id).filter((id) => id !== item.id),
                      ];
                      shelf.said.value = () => say("compare-is-first", { name: item.name });
                    }}
                  >
                    {say("compare-make-first")}
                  </button>
                )}
                <button
                  type="button"
                  aria-label={say("compare-take-out-name", { name: item.name })}
                  onClick={() => {
                    shelf.chosen.value = chosen.map(({ id }) => id).filter((id) => id !== item.id);
                    document.getElementById("compare-name")?.focus();
                  }}
                >
                  {say("compare-take-out")}
                </button>
              </li>
            ))}
          </ol>
          <fieldset class="compare-same-shot">
            <legend>{say("compare-thrown")}</legend>
            <label>
              <input
                type="radio"
                name="same-shot"
                checked={shelf.sameShot.value}
                onChange={() => {
                  shelf.sameShot.value = true;
                }}
              />
              {say("compare-same-shot")}
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
              {say("compare-own-shot")}
            </label>
            {shelf.sameShot.value && oneBall(all) && (
              <p class="says says-caution">{say("compare-one-ball")}</p>
            )}
            <p class="fine-print">{say("compare-own-layout")}</p>
          </fieldset>
          {shelf.sameShot.value && all.length > 1 && <HandChoice />}
          <Shots all={all} />
          <Reasons all={all} />
          <Sections all={all} />
          <section class="compare-part" aria-labelledby="compare-balls">
            <h4 id="compare-balls">{say("compare-balls")}</h4>
            <BallTable all={all} />
          </section>
        </>
      )}
      <BallMap items={items} />
    </section>
  );
}
