import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { type Language, language } from "../../locale/language";
import { Say } from "../../locale/say";
import { SectionDrawing } from "../../parts/section-drawing";
import { isProblem } from "../../problem";
import { measuredSoon } from "../../shelf/measured";
import { type Broken, type Entry, whyUnkept } from "../../shelf/record";
import { MOST_CHOSEN, useShelf } from "../../shelf/shelf";
import { useStore } from "../../store";
import { reading, sentenceIn } from "../../units";
import { EditForm } from "./edit";
import { saveBroken, saveEntryBall, saveEntryShot } from "./exchange";
import { BENCH_ID, type Item } from "./items";
import { LETTERS } from "./letters";
import { say } from "./say";

/** Something to compare: the bench's ball or one of the house. */
export function ItemRow({ item }: { item: Item }) {
  return (
    <li class="row">
      <Picture item={item} />
      <div class="row-about">
        <h4>{item.name}</h4>
        <Numbers item={item} />
        {item.note && <p class="row-note">{item.note}</p>}
        <div class="choices">
          <Choose item={item} />
          {item.id !== BENCH_ID && <ToBench item={item} />}
        </div>
      </div>
    </li>
  );
}

/** Something on the shelf, with all that can be done to it. */
export function EntryRow({ entry }: { entry: Entry }) {
  const [editing, setEditing] = useState<Entry | null>(null);
  const item: Item = { ...entry, houseBall: false };
  return (
    <li class="row" data-entry={entry.id}>
      <Picture item={item} />
      <div class="row-about">
        <h4>{entry.name || say("shelf-no-name")}</h4>
        <Numbers item={item} />
        {entry.note && <p class="row-note">{entry.note}</p>}
        <p class="row-when">
          {whyUnkept(entry) ? (
            <strong class="out">{say("shelf-not-kept")}</strong>
          ) : (
            <When at={entry.saved_at} />
          )}
        </p>
        <div class="choices">
          <Choose item={item} />
          <ToBench item={item} />
          {!editing && <More entry={entry} onEdit={() => setEditing(entry)} />}
        </div>
        {editing && <EditForm seen={editing} onDone={() => setEditing(null)} />}
      </div>
    </li>
  );
}

function More({ entry, onEdit }: { entry: Entry; onEdit(): void }) {
  const shelf = useShelf();
  return (
    <details class="row-more">
      <summary>
        <Say id="shelf-more" args={{ name: entry.name }} parts={{ aloud }} />
      </summary>
      <div class="choices">
        <button type="button" onClick={onEdit}>
          {say("shelf-name-and-note")}
        </button>
        <button type="button" onClick={() => void shelf.duplicate(entry)}>
          {say("shelf-duplicate")}
        </button>
        <button type="button" onClick={() => saveEntryShot(entry)}>
          {say("shelf-save-shot")}
        </button>
        <button type="button" onClick={() => saveEntryBall(entry)}>
          {say("shelf-save-ball")}
        </button>
        <TakeOff one={entry} />
      </div>
    </details>
  );
}

/** A record that cannot be read: nothing of it is lost. */
export function BrokenRow({ broken }: { broken: Broken }) {
  const { problem } = broken;
  const { units } = useStore().view.value;
  return (
    <li class="row row-broken" data-entry={broken.id}>
      <div class="row-about">
        <h4>{say("shelf-unread")}</h4>
        <p class="says says-wrong">
          {sentenceIn(problem.message, units)}{" "}
          {problem.place !== "" && say("shelf-unread-where", { place: problem.place })}
        </p>
        <p class="row-note">{say("shelf-unread-stays")}</p>
        <div class="choices">
          {broken.raw !== null && (
            <button type="button" onClick={() => saveBroken(broken)}>
              {say("shelf-save-as-is")}
            </button>
          )}
          <TakeOff one={broken} />
        </div>
      </div>
    </li>
  );
}

/** Taken off at once; the button to put it back comes where one looks next. */
function TakeOff({ one }: { one: Entry | Broken }) {
  const shelf = useShelf();
  return (
    <button
      type="button"
      onClick={async () => {
        await shelf.remove(one);
        requestAnimationFrame(() => document.querySelector<HTMLElement>(".put-back")?.focus());
      }}
    >
      {say("shelf-take-off")}
    </button>
  );
}

function Picture({ item }: { item: Item }) {
  const store = useStore();
  const found = measuredSoon(store.wasm, item.shot);
  // Holds its place while it has to wait.
  if (found === null || isProblem(found)) return <span class="row-waits" />;
  return <SectionDrawing section={found.section} diameter_in={item.shot.ball.diameter_in} />;
}

function Numbers({ item }: { item: Item }) {
  const store = useStore();
  const units = store.view.value.units;
  const found = measuredSoon(store.wasm, item.shot);
  if (found === null) return <p class="row-numbers">{say("shelf-measuring")}</p>;
  if (isProblem(found)) return <p class="says says-wrong">{sentenceIn(found.message, units)}</p>;
  const { weight_lb, rg_in, differential_in } = found.weighed;
  return (
    <p class="row-numbers">
      {say("shelf-numbers", {
        weight: reading(weight_lb, "weight", units),
        rg: reading(rg_in.low, "rg", units),
        differential: reading(differential_in, "rg", units),
      })}
    </p>
  );
}

/** What is only heard. */
const aloud = (text: ComponentChildren) => <span class="visually-hidden">{text}</span>;

const SAVED_AT: Record<Language, Intl.DateTimeFormat> = {
  en: new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "short" }),
  es: new Intl.DateTimeFormat("es", { dateStyle: "medium", timeStyle: "short" }),
};

function When({ at }: { at: string }) {
  const time = new Date(at);
  if (Number.isNaN(time.getTime())) return null;
  return <time dateTime={at}>{say("shelf-saved", { when: SAVED_AT[language()].format(time) })}</time>;
}

/** In or out of the comparison; four fit. */
function Choose({ item }: { item: Item }) {
  const shelf = useShelf();
  const chosen = shelf.chosen.value;
  const at = chosen.indexOf(item.id);
  const full = at < 0 && chosen.length >= MOST_CHOSEN;
  return (
    <label class="choose" title={full ? say("shelf-four-chosen") : undefined}>
      <input
        type="checkbox"
        checked={at >= 0}
        disabled={full}
        onChange={() => {
          shelf.chosen.value = at >= 0 ? chosen.toSpliced(at, 1) : [...chosen, item.id];
          shelf.said.value = () =>
            at >= 0
              ? say("shelf-is-out", { name: item.name })
              : say("shelf-is-in", { name: item.name, letter: LETTERS[chosen.length] ?? "" });
        }}
      />
      <Say id="shelf-compare" args={{ name: item.name }} parts={{ aloud }} />
      {at >= 0 && <span class="choose-letter">{LETTERS[at]}</span>}
    </label>
  );
}

/** As one step of undo, ball and shot together; of a ball of the house the ball alone. */
function ToBench({ item }: { item: Item }) {
  const store = useStore();
  return (
    <button
      type="button"
      aria-label={say("shelf-to-bench-name", { name: item.name })}
      onClick={() => {
        const { ball, ...shot } = item.shot;
        store.replace(structuredClone(item.houseBall ? { ball } : { ball, shot }), item.name);
      }}
    >
      {say("shelf-to-bench")}
    </button>
  );
}
