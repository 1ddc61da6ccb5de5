import { useSignal } from "@preact/signals";
import { useMemo, useRef, useState } from "preact/hooks";
import { useNews } from "../../aloud";
import { download } from "../../files";
import { useJobs } from "../../jobs";
import { lessonsAt } from "../../lessons/at";
import { blank } from "../../lessons/blank";
import { before, draft, draftKept, replace, takeBack, write } from "../../lessons/draft";
import { asLesson, lessonTexts, listedOf, placedIn, readAs, useLessons } from "../../lessons/read";
import { Line, Prose } from "../../lessons/said";
import { say as sayLesson } from "../../lessons/say";
import { told } from "../../lessons/told";
import { begin } from "../../lessons/work";
import { language } from "../../locale/language";
import { Say, type ToSay } from "../../locale/say";
import { worded } from "../../locale/worded";
import { more } from "../../more";
import { Broken } from "../../parts/broken";
import { OpenFile } from "../../parts/open-file";
import { isProblem } from "../../problem";
import { textOf } from "../../read-file";
import { useStore } from "../../store";
import type { LessonProblem, Said } from "../../types";
import { sentenceIn } from "../../units";
import { useWhenStill } from "../../when-still";
import { say } from "./say";

const STILL_MS = 500;
/** What the choice of the blank lesson is called. */
const SHORT = "short";
/** As the module reads them. */
const MOST_BYTES = 256 * 1024;

/** What is known of a text: its mistakes, or that it is sound. */
interface Judged {
  text: string;
  problems: LessonProblem[];
}

/** A lesson as a text, what is wrong with it at its line, and how it reads. */
export function Write() {
  const store = useStore();
  const units = store.view.value.units;
  const jobs = useJobs();
  const area = useRef<HTMLTextAreaElement>(null);
  const said = useSignal<ToSay | null>(null);
  const [judged, setJudged] = useState<Judged | null>(null);
  const { lessons } = useLessons();
  const text = draft.value;
  const { broken } = useWhenStill(
    STILL_MS,
    async (signal) => {
      if (text.trim() === "") return setJudged(null);
      const problems = await jobs.run("lesson", readAs(text), signal);
      setJudged({ text, problems: placedIn(text, problems) });
    },
    (problem) => {
      said.value = () => sentenceIn(problem.message, store.view.value.units);
    },
    // Another language has other names for what stands on the bench.
    [text, language()],
  );
  const current = judged?.text === text ? judged : null;

  function goTo({ line, column }: LessonProblem): void {
    const field = area.current;
    if (!field) return;
    const lines = text.split("\n");
    const before = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
    const at = Math.min(text.length, before + Math.max(0, column - 1));
    field.setSelectionRange(at, Math.min(text.length, before + (lines[line - 1]?.length ?? 0)));
    // Near it where lines are as long as usual; a browser that scrolls to the caret does the rest.
    field.scrollTop = Math.max(0, (line - 4) * (field.scrollHeight / Math.max(1, lines.length)));
    field.blur();
    field.focus();
  }

  async function open(file: File): Promise<void> {
    try {
      replace(asLesson(await textOf(file, MOST_BYTES)));
      said.value = () => say("write-opened", { file: file.name });
    } catch (error) {
      if (!isProblem(error)) throw error;
      said.value = () => say("write-not-opened", { file: file.name, why: worded(error.message) });
    }
  }

  const sound = current !== null && current.problems.length === 0;
  const [first] = current?.problems ?? [];
  const verdict = sound
    ? say("write-is-sound")
    : first &&
      say("write-mistakes", {
        many: current?.problems.length ?? 0,
        line: String(first.line),
        message: sentenceIn(first.message, units),
      });
  useNews(current && verdict, verdict || null);
  return (
    <section class="write" aria-labelledby="write-name">
      <h3 id="write-name">{say("write-title")}</h3>
      <p>{say("write-says")}</p>
      <div class="choices write-files">
        <OpenFile
          label={say("write-file")}
          accept=".md,text/markdown,text/plain"
          onOpen={([file]) => file && void open(file)}
        >
          {say("write-open")}
        </OpenFile>
        <label>
          {say("write-begin-from")}{" "}
          <select
            value=""
            onChange={(event) => {
              const { value } = event.currentTarget;
              const from = value === SHORT ? blank() : lessonTexts()[Number(value)];
              if (!from || value === "") return;
              replace(from);
              said.value = () => say(value === SHORT ? "write-short-says" : "write-copy-says");
            }}
          >
            <option value="">{say("write-choose")}</option>
            <option value={SHORT}>{say("write-short")}</option>
            {lessons.map(({ about, text: one }) => (
              <option key={about.id} value={lessonTexts().indexOf(one)}>
                {about.title}
              </option>
            ))}
          </select>
        </label>
        <button
          type="button"
          disabled={text.trim() === ""}
          onClick={() => download(nameOf(text), text, "text/markdown")}
        >
          {say("write-save")}
        </button>
        <button type="button" class="primary" disabled={!sound} onClick={() => begin(store, text, true)}>
          {say("write-try")}
        </button>
        <button
          type="button"
          disabled={!sound}
          onClick={() => {
            lessonsAt.value = { page: "coach", text };
          }}
        >
          {say("write-to-room")}
        </button>
        <button
          type="button"
          disabled={!sound}
          onClick={() => {
            lessonsAt.value = { page: "paper", text };
          }}
        >
          {say("write-on-paper")}
        </button>
      </div>
      {before.value.length > 0 && (
        <p>
          <button
            type="button"
            onClick={() => {
              takeBack();
              said.value = () => say("write-is-back");
              area.current?.focus();
            }}
          >
            {say("write-take-back")}
          </button>
        </p>
      )}
      <p role="status">
        {said.value?.()} {before.value.length > 0 && say("write-before")}{" "}
        {!draftKept.value && say("write-not-kept")}
      </p>
      <div class="write-columns">
        <label class="write-text">
          {say("write-text")}
          <textarea
            data-own-undo
            ref={area}
            rows={24}
            spellcheck={false}
            value={text}
            onInput={(event) => write(event.currentTarget.value)}
          />
        </label>
        <div class="write-beside">
          <h4>
            {say(
              text.trim() === ""
                ? "write-nothing"
                : current === null
                  ? "write-reading"
                  : sound
                    ? "write-sound"
                    : "write-wrong",
            )}
          </h4>
          {broken && <Broken broken={broken} />}
          {sound && <p>{say("write-sound-says")}</p>}
          {current && current.problems.length > 0 && (
            <>
              <ol class="write-problems">
                {current.problems.map((problem, at) => (
                  <li key={at}>
                    <button type="button" class="write-line" onClick={() => goTo(problem)}>
                      {say("write-line", { line: String(problem.line) })}
                    </button>{" "}
                    {sentenceIn(problem.message, units)}
                  </li>
                ))}
              </ol>
              <p class="hint">{say("write-more")}</p>
            </>
          )}
          {current && <Reads text={text} />}
          <Names />
        </div>
      </div>
    </section>
  );
}

/** "id" of the head names the file. */
function nameOf(text: string): string {
  const id = /^id\s*=\s*"([a-z0-9-]+)"/m.exec(text)?.[1];
  return `${id ?? "my"}.lesson.md`;
}

/** How it reads, as far as it can be read at all. */
function Reads({ text }: { text: string }) {
  const reads = useMemo(() => {
    try {
      const one = listedOf(text);
      return { title: one.about.title, steps: told(one) };
    } catch (error) {
      if (error instanceof Error) throw error;
      // What is wrong with it is told above.
      return null;
    }
  }, [text, language()]);
  if (!reads) return null;
  return (
    <details class="write-reads" open>
      <summary>{say("write-reads", { title: reads.title })}</summary>
      {reads.steps.map(({ at, step, shown, truth, done }) => (
        <section key={at} aria-label={step.title}>
          <h5>
            {at + 1}. {step.title}
          </h5>
          <Prose blocks={shown.text} />
          {shown.options.length > 0 && (
            <ul class="missing">
              {shown.options.map((option, n) => (
                <li key={n}>
                  <Line said={option} />
                </li>
              ))}
            </ul>
          )}
          {truth && "number" in truth.truth && (
            <p>
              <Computed number={truth.truth.number} />
            </p>
          )}
          {shown.hints.length > 0 && (
            <ol class="hints" aria-label={sayLesson("lesson-hints")}>
              {shown.hints.map((hint, n) => (
                <li key={n}>
                  <Line said={hint} />
                </li>
              ))}
            </ol>
          )}
          {done && (
            <p class="answered" data-right>
              <Line said={done} />
            </p>
          )}
        </section>
      ))}
    </details>
  );
}

function Computed({ number }: { number: Said }) {
  return <Say id="lesson-computed" parts={{ number: () => <Line said={[number]} /> }} />;
}

/** What expressions may speak of. */
function Names() {
  const [open, setOpen] = useState(false);
  return (
    <details class="write-names" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say("write-names")}</summary>
      {open && (
        <>
          <p>
            <Say
              id="write-names-says"
              parts={{
                piece: () => <code>ball.pieces[0].density_g_cc</code>,
                revs: () => <code>shot.release.revs_rpm</code>,
                start: () => <code>start.</code>,
              }}
            />
          </p>
          <dl>
            {more.lesson_names().map(({ name, unit, words }) => (
              <div key={name}>
                <dt>
                  <code>{name}</code>
                </dt>
                <dd>
                  {worded(words)}
                  {unit && (
                    <>
                      {" "}
                      (<code>{unit}</code>)
                    </>
                  )}
                </dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </details>
  );
}
