import "./paper.css";
import { useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import { lessonsAt } from "../../lessons/at";
import { type Listed, listedOf } from "../../lessons/read";
import { Line, Prose, plain } from "../../lessons/said";
import { type ToldStep, told } from "../../lessons/told";
import { Watched } from "../../lessons/watched";
import { useStore } from "../../store";
import type { ProseBlock, Said } from "../../types";
import { measure } from "../../units";
import { isWord, meaningOf, nameOf } from "../../words";
import { type Paper, PaperSelect, usePaper, useTitle, usualPaper } from "../sheet/paper";
import { CutOf, LaneOf, ShotOf } from "./pictured";
import { say } from "./say";

/** A lesson to print: the sheet for learners, and by itself the key to it. */
export function PaperLesson({ text }: { text: string }) {
  const one = listedOf(text);
  const steps = useMemo(() => told(one), [one]);
  const key = useSignal(false);
  const paper = useSignal<Paper>(usualPaper());
  usePaper(paper.value, "14mm");
  useTitle(say(key.value ? "paper-key-title" : "paper-sheet-title", { title: one.about.title }));
  return (
    <div class="paper">
      <form class="paper-choices" onSubmit={(event) => event.preventDefault()}>
        <label>
          {say("paper-what")}
          <select
            value={key.value ? "key" : "sheet"}
            onChange={(event) => {
              key.value = event.currentTarget.value === "key";
            }}
          >
            <option value="sheet">{say("paper-sheet")}</option>
            <option value="key">{say("paper-key")}</option>
          </select>
        </label>
        <PaperSelect paper={paper} />
        <button type="button" class="primary" onClick={() => print()}>
          {say("paper-print")}
        </button>
        <button
          type="button"
          onClick={() => {
            lessonsAt.value = { page: "list" };
          }}
        >
          {say("paper-back")}
        </button>
      </form>
      {key.value ? <Key one={one} steps={steps} /> : <Worksheet one={one} steps={steps} />}
    </div>
  );
}

function Worksheet({ one: { about }, steps }: { one: Listed; steps: ToldStep[] }) {
  return (
    <article class="paper-page" aria-labelledby="paper-title">
      <header>
        <p class="paper-course">{about.course}</p>
        <h3 id="paper-title">{about.title}</h3>
        <dl class="paper-for">
          <div>
            <dt>{say("paper-name")}</dt>
            <dd />
          </div>
          <div>
            <dt>{say("paper-date")}</dt>
            <dd />
          </div>
        </dl>
        <Prose blocks={about.aim} still />
      </header>
      {about.words.length > 0 && (
        <section>
          <h4>{say("paper-words")}</h4>
          <dl class="paper-words">
            {about.words.map((word) => (
              <div key={word}>
                <dt>{isWord(word) ? nameOf(word) : word}</dt>
                <dd>{isWord(word) ? meaningOf(word) : ""}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      {steps.map((one) => (
        <section key={one.at} class={one.step.kind === "explain" ? "paper-step paper-after" : "paper-step"}>
          {one.step.kind === "explain" && <p class="paper-note">{say("paper-read-later")}</p>}
          <h4>
            {one.at + 1}. {one.step.title}
          </h4>
          <Prose blocks={blanked(one.shown.text, one.bare.text)} still />
          <Drawn one={one} before={steps[one.at - 1] ?? null} />
          <Asked one={one} />
        </section>
      ))}
    </article>
  );
}

const BLANK: Said = { kind: "text", text: "\u2009________\u2009" };

/** The same with a blank for each number that was found. */
function blankedLine(said: Said[], bare: Said[]): Said[] {
  return said.map((part, at) => {
    const other = bare[at];
    if (part.kind === "value") {
      return other?.kind === "value" && other.value === part.value ? part : BLANK;
    }
    if (!("said" in part)) return part;
    return { ...part, said: blankedLine(part.said, other && "said" in other ? other.said : []) };
  });
}

function blanked(blocks: ProseBlock[], bare: ProseBlock[]): ProseBlock[] {
  return blocks.map((block, at) => {
    const other = bare[at];
    if (block.kind === "paragraph") {
      return { ...block, said: blankedLine(block.said, other?.kind === "paragraph" ? other.said : []) };
    }
    const items = other?.kind === "list" ? other.items : [];
    return { ...block, items: block.items.map((item, n) => blankedLine(item, items[n] ?? [])) };
  });
}

/** Pictures of what stands there, where they are new and give no answer away. */
function Drawn({ one, before }: { one: ToldStep; before: ToldStep | null }) {
  if (one.found) return null;
  const shows = one.step.rooms ?? [];
  const newBall = JSON.stringify(one.start.ball) !== JSON.stringify(before?.start.ball);
  return (
    <div class="paper-drawings">
      {newBall && (shows.includes("saw") || shows.includes("bench")) && (
        <CutOf id={`paper-cut-${one.at}`} doc={one.start} width_px={300} height_px={210} />
      )}
      {shows.includes("lane") && one.step.kind !== "predict" && one.step.kind !== "do" && (
        <ShotOf id={`paper-lane-${one.at}`} doc={one.start} width_px={640} height_px={130} />
      )}
    </div>
  );
}

/** Room to answer on the paper. */
function Asked({ one }: { one: ToldStep }) {
  const { units } = useStore().view.value;
  const { step, shown } = one;
  if (step.asks?.kind === "option") {
    return (
      <>
        <ul class="paper-options">
          {shown.options.map((option, at) => (
            <li key={at}>{plain(blankedLine(option, one.bare.options[at] ?? []), units)}</li>
          ))}
        </ul>
        <Lines what={say("paper-because")} lines={2} />
      </>
    );
  }
  if (step.asks?.kind === "number") {
    return (
      <>
        <p class="paper-line">
          {say("paper-your-number")} <span class="paper-blank" /> {measure(step.asks.quantity, units).unit}
        </p>
        <Lines what={say("paper-because")} lines={2} />
      </>
    );
  }
  if (step.asks?.kind === "path") {
    return (
      <>
        <p>{say("paper-draw")}</p>
        <LaneOf id={`paper-path-${one.at}`} doc={one.start} width_px={640} height_px={150} path={null} />
        <Lines what={say("paper-because")} lines={2} />
      </>
    );
  }
  // What a step before leads to is to be found; where nothing is to be done nothing new comes out.
  const first = !one.found;
  const task = step.kind === "do";
  if (step.kind === "explain" || (step.kind !== "do" && shown.watch.length === 0)) return null;
  return (
    <>
      {shown.watch.length > 0 && (
        <table class="paper-watch">
          <thead>
            <tr>
              <td />
              {first && <th scope="col">{say("paper-at-first")}</th>}
              {task && <th scope="col">{say("paper-found")}</th>}
              {!first && !task && <th scope="col">{say("paper-fill-in")}</th>}
            </tr>
          </thead>
          <tbody>
            {shown.watch.map(({ what, start }, at) => (
              <tr key={at}>
                <th scope="row">
                  <Line said={what} still />
                </th>
                {first && (
                  <td>
                    <Line said={[start]} still />
                  </td>
                )}
                {(task || !first) && <td />}
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {step.kind === "do" && <Lines what={say("paper-changed")} lines={3} />}
    </>
  );
}

/** Lines to write on. */
function Lines({ what, lines }: { what: string; lines: number }) {
  return (
    <div class="paper-lines">
      <p class="paper-line">
        {what} <span class="paper-blank" />
      </p>
      {Array.from({ length: lines - 1 }, (_, n) => (
        <p key={n} class="paper-line">
          <span class="paper-blank" />
        </p>
      ))}
    </div>
  );
}

function Key({ one: { about }, steps }: { one: Listed; steps: ToldStep[] }) {
  return (
    <article class="paper-page" aria-labelledby="paper-title">
      <header>
        <p class="paper-course">{say("paper-key-of", { course: about.course })}</p>
        <h3 id="paper-title">{about.title}</h3>
      </header>
      <section>
        <h4>{say("paper-teacher")}</h4>
        <Prose blocks={about.teacher} still />
      </section>
      {steps
        .filter((one) => one.step.kind === "predict" || one.step.kind === "do" || one.found)
        .map((one) => (
          <section key={one.at} class="paper-step">
            <h4>
              {one.at + 1}. {one.step.title}
            </h4>
            {one.found && <Prose blocks={one.shown.text} still />}
            <Answered one={one} />
          </section>
        ))}
    </article>
  );
}

function Answered({ one }: { one: ToldStep }) {
  const { units } = useStore().view.value;
  const { step, truth, shown, done } = one;
  if (truth) {
    return (
      <>
        {"option" in truth.truth && truth.truth.option !== null && (
          <p>
            <strong>{plain(shown.options[truth.truth.option] ?? [], units)}</strong>{" "}
            <Line said={truth.say} still />
          </p>
        )}
        {"number" in truth.truth && (
          <p>
            <strong>
              <Line said={[truth.truth.number]} still />
            </strong>
          </p>
        )}
        {"path" in truth.truth && (
          <LaneOf
            id={`key-path-${one.at}`}
            doc={one.end}
            width_px={640}
            height_px={150}
            path={truth.truth.path}
          />
        )}
      </>
    );
  }
  if (step.kind !== "do") return <Numbers one={one} />;
  return (
    <>
      {done && (
        <p>
          <Line said={done} still />
        </p>
      )}
      <p>{say("paper-one-way")}</p>
      <div class="paper-drawings">
        <CutOf id={`key-cut-${one.at}`} doc={one.end} width_px={300} height_px={210} />
      </div>
      <Numbers one={one} />
      <ol class="hints">
        {shown.hints.map((said, at) => (
          <li key={at}>
            <Line said={said} still />
          </li>
        ))}
      </ol>
    </>
  );
}

/** The numbers to watch, as they were and as they are. */
function Numbers({ one: { after } }: { one: ToldStep }) {
  if (after.watch.length === 0) return null;
  return <Watched class="paper-watch" watch={after.watch} still />;
}
