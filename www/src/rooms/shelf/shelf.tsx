import "./shelf.css";
import { OpenFile } from "../../parts/open-file";
import { useShelf } from "../../shelf/shelf";
import { useStore } from "../../store";
import { Compare } from "./compare/compare";
import { openOnShelf, saveWholeShelf } from "./exchange";
import { useItems } from "./items";
import { inOrder, ORDERS, type Order, order } from "./order";
import { PutForm } from "./put";
import { BrokenRow, EntryRow, ItemRow } from "./rows";
import { Standing } from "./standing";

/** Balls to keep, and what they have and have not in common. */
export function Shelf() {
  const items = useItems();
  const shelf = useShelf();
  const store = useStore();
  const entries = inOrder(store.wasm, shelf.entries.value, order.value);
  const broken = shelf.broken.value;
  const count = entries.length + broken.length;
  return (
    <div class="shelf">
      <div class="shelf-list">
        <Standing />
        <section aria-labelledby="shelf-bench-name">
          <h3 id="shelf-bench-name">On the bench now</h3>
          <ul class="rows">
            <ItemRow item={items.bench} />
          </ul>
          <PutForm key={items.bench.name} item={items.bench} />
        </section>
        <section aria-labelledby="shelf-kept-name">
          <h3 id="shelf-kept-name">On the shelf{count > 0 && `: ${count}`}</h3>
          {shelf.standing.value === "opening" ? (
            <p class="hint">Looking what is there…</p>
          ) : count === 0 ? (
            <p class="shelf-empty">
              Nothing yet. Put the ball on the bench here, as it is thrown now, before you change it further:
              then the two stand side by side. A ball stays here with its shot until you take it off.
            </p>
          ) : (
            <>
              {entries.length > 1 && (
                <label class="shelf-order">
                  <span>Sorted by</span>
                  <select
                    value={order.value}
                    onChange={(event) => {
                      order.value = event.currentTarget.value as Order;
                    }}
                  >
                    {ORDERS.map(({ key, name }) => (
                      <option key={key} value={key}>
                        {name}
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
          <h3 id="shelf-house-name">From the house</h3>
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
  const shelf = useShelf();
  const entries = shelf.entries.value;
  return (
    <div class="choices shelf-exchange">
      <OpenFile
        label="Files to put on the shelf"
        multiple
        onOpen={async (files) => {
          const said: string[] = [];
          for (const file of files) {
            await openOnShelf(store, shelf, file);
            said.push(shelf.said.peek());
          }
          shelf.said.value = said.join(" ");
        }}
      >
        Add from a file…
      </OpenFile>
      <button type="button" disabled={entries.length === 0} onClick={() => saveWholeShelf(entries)}>
        Save the shelf to a file
      </button>
    </div>
  );
}
