import "./sheet.css";
import { type Signal, useSignal, useSignalEffect } from "@preact/signals";
import { Said } from "../../parts/said";
import { isProblem, useStore } from "../../store";
import type { BallFile } from "../../types";
import { sentenceIn } from "../../units";
import { partNames } from "../saw/parts";
import { type Item, type Items, useItems } from "../shelf/items";
import { Page } from "./page";
import { type Paper, PaperSelect, usePaper, useTitle, usualPaper } from "./paper";
import { useBench, useLadder, useOther, usePlain, useWhy } from "./told";
import { whyEither, whyThis } from "./words";

/** A page to hand over: what is in the ball and what it does for this bowler. */
export function Sheet() {
  const store = useStore();
  const bench = useBench();
  const { units } = store.view.value;
  const bowler = useTyped("bowler", "");
  const date = useTyped("date", new Date().toLocaleDateString("en-GB", { dateStyle: "long" }));
  const paper = useSignal<Paper>(usualPaper());
  const items = useItems();
  const wanted = useSignal("");
  const against = [...items.shelf, ...items.house].find(({ id }) => id === wanted.value);
  const part = useSignal(1);
  const partOther = useSignal(1);
  const other = useOther(against?.shot.ball ?? null, bench.shot);
  const changed = changedIn(bench.file, part.value);
  const rival = other && !isProblem(other) ? other : null;
  const ladder = useLadder(bench.file, changed);
  const otherLadder = useLadder(rival?.file ?? null, changedIn(rival?.file, partOther.value));
  const asked = rival ? [ladder, otherLadder] : [ladder];
  const plain = usePlain(bench, bench.shot);
  const why = useWhy(
    rival ?? plain ?? bench,
    bench,
    bench.shot,
    rival ? ["B", "A"] : ["one without a core", "This ball"],
  );
  const because = why.found ? sentenceIn(why.found.sentence, units) : "";
  const lines = rival ? whyEither(bench, rival, because, units) : whyThis(bench, plain, because, units);
  usePaper(paper.value);
  useTitle(`Sheet: ${[bench.file.name, ...(rival && against ? [against.name] : [])].join(" and ")}`);
  const { ballProblem, shotProblem } = store.derived.value;
  const wrong = ballProblem ?? shotProblem;
  return (
    <div class="sheet">
      <form class="sheet-choices" onSubmit={(event) => event.preventDefault()}>
        <label>
          Bowler
          <input
            type="text"
            autocomplete="off"
            maxLength={60}
            placeholder="name"
            value={bowler}
            onInput={(event) => {
              bowler.value = event.currentTarget.value;
            }}
          />
        </label>
        <label>
          Date
          <input
            type="text"
            autocomplete="off"
            maxLength={40}
            value={date}
            onInput={(event) => {
              date.value = event.currentTarget.value;
            }}
          />
        </label>
        <PaperSelect paper={paper} />
        <Against items={items} chosen={against?.id ?? ""} choose={(id) => (wanted.value = id)} />
        <WeightsBy
          label={rival ? "A at other weights by" : "Other weights by"}
          file={bench.file}
          part={part}
        />
        {rival && <WeightsBy label="B at other weights by" file={rival.file} part={partOther} />}
        <button
          type="button"
          disabled={asked.some(({ pending }) => pending) || why.pending}
          onClick={() => print()}
        >
          Print…
        </button>
        <p class="hint">
          Name and date stay in this tab until it is closed: they are not in the link. For a PDF, print to a
          file.
          {/^(localhost|127\.|\[::1\])/.test(location.hostname) &&
            " This page comes from this computer itself, so the code opens nowhere else."}
        </p>
        {wrong && (
          <p class="stale">
            <Said problem={wrong} /> The sheet is of the last good ball and shot.
          </p>
        )}
        {isProblem(other) && (
          <p class="stale">
            The other ball cannot be shown. <Said problem={other} />
          </p>
        )}
      </form>
      <Page
        bench={bench}
        other={rival}
        otherName={against?.name ?? ""}
        ladders={
          asked.every(({ found, pending }) => found || pending) ? asked.map(({ found }) => found) : undefined
        }
        lines={lines}
        paper={paper.value}
        bowler={bowler}
        date={date}
      />
    </div>
  );
}

/** The part in hand, or the cover where a ball has no such part. */
const changedIn = (file: BallFile | undefined, part: number): number =>
  file && part <= file.pieces.length ? part : 0;

/** Which part makes a ball lighter or heavier. */
function WeightsBy({ label, file, part }: { label: string; file: BallFile; part: Signal<number> }) {
  return (
    <label>
      {label}
      <select
        value={changedIn(file, part.value)}
        onChange={(event) => {
          part.value = Number(event.currentTarget.value);
        }}
      >
        {partNames({ made: file }).map((name, n) => (
          <option key={n} value={n}>
            the density of {name}
          </option>
        ))}
      </select>
    </label>
  );
}

/** What was typed, until the tab is closed: a reload leaves it. */
function useTyped(name: string, first: string): Signal<string> {
  const typed = useSignal(remembered(name) ?? first);
  useSignalEffect(() => {
    if (typed.value === first) return;
    try {
      sessionStorage.setItem(`pithball.sheet.${name}`, typed.value);
    } catch {
      // A browser that keeps nothing: it stays as long as the page.
    }
  });
  return typed;
}

function remembered(name: string): string | null {
  try {
    return sessionStorage.getItem(`pithball.sheet.${name}`);
  } catch {
    return null;
  }
}

interface AgainstProps {
  items: Items;
  chosen: string;
  choose(id: string): void;
}

/** Which ball to compare with, if any: thrown as the one on the bench is. */
function Against({ items: { shelf, house }, chosen, choose }: AgainstProps) {
  const options = (items: Item[]) =>
    items.map(({ id, name }) => (
      <option key={id} value={id}>
        {name}
      </option>
    ));
  return (
    <label>
      Compare with
      <select value={chosen} onChange={(event) => choose(event.currentTarget.value)}>
        <option value="">no other ball</option>
        {shelf.length > 0 && <optgroup label="On the shelf">{options(shelf)}</optgroup>}
        <optgroup label="From the house">{options(house)}</optgroup>
      </select>
    </label>
  );
}
