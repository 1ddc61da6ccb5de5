import "./shelf.css";
import { useJobs } from "../../jobs";
import { OpenFile } from "../../parts/open-file";
import { useShelf } from "../../shelf/shelf";
import { useStore } from "../../store";
import { count } from "../../units";
import { Compare } from "./compare/compare";
import { openOnShelf, saveWholeShelf } from "./exchange";
import { useItems } from "./items";
import { inOrder, ORDERS, type Order, order } from "./order";
import { PutForm } from "./put";
import { BrokenRow, EntryRow, ItemRow } from "./rows";
import { say } from "./say";
import { Standing } from "./standing";

/** Balls to keep, and what they have and have not in common. */
export function Shelf() {
  const items = useItems();
  const shelf = useShelf();
  const store = useStore();
  const entries = inOrder(store.wasm, shelf.entries.value, order.value);
  const broken = shelf.broken.value;
  const many = entries.length + broken.length;
  return (
    <div class="shelf">
      <div class="shelf-list">
        <Standing />
        <section aria-labelledby="shelf-bench-name">
          <h3 id="shelf-bench-name">{say("shelf-on-bench")}</h3>
          <ul class="rows">
            <ItemRow item={items.bench} />
          </ul>
          <PutForm key={items.bench.name} item={items.bench} />
        </section>
        <section aria-labelledby="shelf-kept-name">
          <h3 id="shelf-kept-name">
            {many > 0 ? say("shelf-on-shelf-count", { count: count(many) }) : say("shelf-on-shelf")}
          </h3>
          {shelf.standing.value === "opening" ? (
            <p class="hint">{say("shelf-looking")}</p>
          ) : many === 0 ? (
            <p class="shelf-empty">{say("shelf-empty")}</p>
          ) : (
            <>
              {entries.length > 1 && (
                <label class="shelf-order">
                  <span>{say("shelf-sorted")}</span>
                  <select
                    value={order.value}
                    onChange={(event) => {
                      order.value = event.currentTarget.value as Order;
                    }}
                  >
                    {ORDERS.map(({ key, name }) => (
                      <option key={key} value={key}>
                        {say(name)}
                      </option>
                    ))}
                  </select>
                </label>
              )}
              <ul class="rows">
                {entries.map((entry) => (
                  <EntryRow key={entry.id} entry={entry} />
                ))}
                {broken.map((one) => (
                  <BrokenRow key={one.id} broken={one} />
                ))}
              </ul>
            </>
          )}
          <Exchange />
        </section>
        <section aria-labelledby="shelf-house-name">
          <h3 id="shelf-house-name">{say("shelf-from-house")}</h3>
          <ul class="rows">
            {items.house.map((item) => (
              <ItemRow key={item.id} item={item} />
            ))}
          </ul>
        </section>
      </div>
      <Compare items={items} />
    </div>
  );
}

/** Files in and out. */
function Exchange() {
  const store = useStore();
  const jobs = useJobs();
  const shelf = useShelf();
  const entries = shelf.entries.value;
  return (
    <div class="choices shelf-exchange">
      <OpenFile
        label={say("shelf-files")}
        multiple
        onOpen={(files) => void openOnShelf(store, jobs, shelf, files)}
      >
        {say("shelf-add")}
      </OpenFile>
      <button type="button" disabled={entries.length === 0} onClick={() => saveWholeShelf(entries)}>
        {say("shelf-save-all")}
      </button>
    </div>
  );
}
