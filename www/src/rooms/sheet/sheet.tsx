import "./sheet.css";
import { type Signal, useSignal } from "@preact/signals";
import { language } from "../../locale/language";
import { Broken } from "../../parts/broken";
import { isProblem } from "../../problem";
import { shorten } from "../../shorten";
import { useStore } from "../../store";
import { useTyped } from "../../typed";
import type { BallFile } from "../../types";
import { sentenceIn } from "../../units";
import { partNames } from "../saw/parts";
import { type Item, type Items, useItems } from "../shelf/items";
import { Page } from "./page";
import { type Paper, PaperSelect, usePaper, useTitle, usualPaper } from "./paper";
import { say } from "./say";
import { useBench, useLadder, useOther, usePlain, useWhy } from "./told";
import { becauseWords, whyEither, whyThis } from "./words";

/** How a date is written. */
const DATES = { en: "en-GB", es: "es" };

/** A page to hand over: what is in the ball and what it does for this bowler. */
export function Sheet() {
  const store = useStore();
  const bench = useBench();
  const { units } = store.view.value;
  const bowler = useTyped("pithball.sheet.bowler", "");
  const date = useTyped(
    "pithball.sheet.date",
    new Date().toLocaleDateString(DATES[language()], { dateStyle: "long" }),
  );
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
    rival ? ["B", "A"] : [say("sheet-without-core"), say("sheet-this-ball")],
  );
  const broken = [...asked, why].flatMap((one) => one.broken ?? []);
  const because = why.found ? becauseWords(why.found, units) : "";
  const lines = rival ? whyEither(bench, rival, because, units) : whyThis(bench, plain, because, units);
  usePaper(paper.value);
  useTitle(
    rival && against
      ? say("sheet-title-two", { ball: short(bench.file.name), other: short(against.name) })
      : say("sheet-title", { ball: short(bench.file.name) }),
  );
  const { ballProblem, shotProblem } = store.derived.value;
  const wrong = ballProblem ?? shotProblem;
  return (
    <div class="sheet">
      <form class="sheet-choices" onSubmit={(event) => event.preventDefault()}>
        <label>
          {say("sheet-bowler")}
          <input
            type="text"
            autocomplete="off"
            maxLength={60}
            placeholder={say("sheet-bowler-name")}
            value={bowler}
            onInput={(event) => {
              bowler.value = event.currentTarget.value;
            }}
          />
        </label>
        <label>
          {say("sheet-date")}
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
          label={say(rival ? "sheet-weights-by-a" : "sheet-weights-by")}
          file={bench.file}
          part={part}
        />
        {rival && <WeightsBy label={say("sheet-weights-by-b")} file={rival.file} part={partOther} />}
        <button
          type="button"
          disabled={asked.some(({ pending }) => pending) || why.pending}
          onClick={() => print()}
        >
          {say("sheet-print")}
        </button>
        <p class="hint">
          {say("sheet-stays")}
          {/^(localhost|127\.|\[::1\])/.test(location.hostname) && ` ${say("sheet-from-here")}`}
        </p>
        {wrong && (
          <p class="stale">{say("sheet-last-good", { problem: sentenceIn(wrong.message, units) })}</p>
        )}
        {broken[0] && (
          <Broken broken={{ why: broken[0].why, again: () => broken.map(({ again }) => again()) }} />
        )}
        {isProblem(other) && (
          <p class="stale">{say("sheet-other-not-shown", { problem: sentenceIn(other.message, units) })}</p>
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

/** A name in a list to choose from, or in that of the file to print to. */
const short = (name: string): string => shorten(name, 60);

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
            {say("sheet-density-of", { part: short(name) })}
          </option>
        ))}
      </select>
    </label>
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
        {short(name)}
      </option>
    ));
  return (
    <label>
      {say("sheet-compare-with")}
      <select value={chosen} onChange={(event) => choose(event.currentTarget.value)}>
        <option value="">{say("sheet-no-other")}</option>
        {shelf.length > 0 && <optgroup label={say("sheet-on-shelf")}>{options(shelf)}</optgroup>}
        <optgroup label={say("sheet-from-house")}>{options(house)}</optgroup>
      </select>
    </label>
  );
}
