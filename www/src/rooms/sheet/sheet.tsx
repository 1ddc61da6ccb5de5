import "./sheet.css";
import { useSignal } from "@preact/signals";
import { Said } from "../../parts/said";
import { isProblem, useStore } from "../../store";
import { sentenceIn } from "../../units";
import { partNames } from "../saw/parts";
import { type Item, type Items, useItems } from "../shelf/items";
import { Page } from "./page";
import { type Paper, usePaper, useTitle, usualPaper } from "./paper";
import { useBench, useLadder, useOther, usePlain, useWhy } from "./told";
import { whyEither, whyThis } from "./words";

/** A page to hand over: what is in the ball and what it does for this bowler. */
export function Sheet() {
  const store = useStore();
  const bench = useBench();
  const { units } = store.view.value;
  const bowler = useSignal("");
  const date = useSignal(new Date().toLocaleDateString("en-GB", { dateStyle: "long" }));
  const paper = useSignal<Paper>(usualPaper());
  const items = useItems();
  const wanted = useSignal("");
  const against = [...items.shelf, ...items.house].find(({ id }) => id === wanted.value);
  const part = useSignal(1);
  const other = useOther(against?.shot.ball ?? null, bench.shot);
  const changed = part.value <= bench.file.pieces.length ? part.value : 0;
  const ladder = useLadder(bench.file, against ? null : changed);
  const rival = other && !isProblem(other) ? other : null;
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
            value={bowler.value}
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
            value={date.value}
            onInput={(event) => {
              date.value = event.currentTarget.value;
            }}
          />
        </label>
        <label>
          Paper
          <select
            value={paper.value}
            onChange={(event) => {
              paper.value = event.currentTarget.value as Paper;
            }}
          >
            <option value="A4">A4</option>
            <option value="Letter">US Letter</option>
          </select>
        </label>
        <Against items={items} chosen={against?.id ?? ""} choose={(id) => (wanted.value = id)} />
        {!against && (
          <label>
            Other weights by
            <select
              value={changed}
              onChange={(event) => {
                part.value = Number(event.currentTarget.value);
              }}
            >
              {partNames({ made: bench.file }).map((name, n) => (
                <option key={n} value={n}>
                  the density of {name}
                </option>
              ))}
            </select>
          </label>
        )}
        <button type="button" disabled={ladder.pending || why.pending} onClick={() => print()}>
          Print…
        </button>
        <p class="hint">
          Name and date stay on this page: they are neither kept nor in the link. For a PDF, print to a file.
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
        ladder={ladder.found || ladder.pending ? ladder.found : undefined}
        lines={lines}
        paper={paper.value}
        bowler={bowler.value}
        date={date.value}
      />
    </div>
  );
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
