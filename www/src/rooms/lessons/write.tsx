import { useSignal } from "@preact/signals";
import { useMemo, useRef, useState } from "preact/hooks";
import { download } from "../../files";
import { useJobs } from "../../jobs";
import { lessonsAt } from "../../lessons/at";
import { BLANK } from "../../lessons/blank";
import { draft, draftKept, write } from "../../lessons/draft";
import { FILES, lessonTexts, listedOf, useLessons } from "../../lessons/read";
import { Line, Prose } from "../../lessons/said";
import { told } from "../../lessons/told";
import { begin } from "../../lessons/work";
import { worded } from "../../locale/worded";
import { more } from "../../more";
import { OpenFile } from "../../parts/open-file";
import { useStore } from "../../store";
import type { LessonProblem } from "../../types";
import { useWhenStill } from "../../when-still";

const STILL_MS = 500;
/** What the choice of the blank lesson is called. */
const SHORT = "short";
const MOST_BYTES = 1024 * 1024;

/** What is known of a text: its mistakes, or that it is sound. */
interface Judged {
  text: string;
  problems: LessonProblem[];
}

/** A lesson as a text, what is wrong with it at its line, and how it reads. */
export function Write() {
  const store = useStore();
  const jobs = useJobs();
  const area = useRef<HTMLTextAreaElement>(null);
  const said = useSignal("");
  const [judged, setJudged] = useState<Judged | null>(null);
  const { lessons } = useLessons();
  const text = draft.value;
  useWhenStill(
    STILL_MS,
    async (signal) => {
      if (text.trim() === "") return setJudged(null);
      setJudged({ text, problems: await jobs.run("lesson", { text, files: FILES }, signal) });
    },
    (problem) => {
      said.value = worded(problem.message);
    },
    [text],
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
    if (file.size > MOST_BYTES) {
      said.value = `${file.name} was not opened: it is larger than 1 MiB.`;
      return;
    }
    write(await file.text());
    said.value = `Opened ${file.name}.`;
  }

  const sound = current !== null && current.problems.length === 0;
  return (
    <section class="write" aria-labelledby="write-name">
      <h3 id="write-name">Write a lesson</h3>
      <p>
        A lesson is a text file. Begin from one that is there, change it, and see what is wrong and how it
        reads. Save it to a file to give it to others: they open it here and take it.
      </p>
      <div class="choices write-files">
        <OpenFile
          label="Lesson file to open"
          accept=".md,text/markdown,text/plain"
          onOpen={([file]) => file && void open(file)}
        >
          Open a lesson file…
        </OpenFile>
        <label>
          Begin from{" "}
          <select
            value=""
            onChange={(event) => {
              const { value } = event.currentTarget;
              const from = value === SHORT ? BLANK : lessonTexts()[Number(value)];
              if (!from || value === "") return;
              write(from);
              said.value =
                value === SHORT
                  ? "A short lesson with one step of each kind, to be filled in."
                  : "This is a copy: the lesson of the page stays as it is.";
            }}
          >
            <option value="">choose a lesson …</option>
            <option value={SHORT}>a short blank one</option>
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
          Save to a file
        </button>
        <button type="button" class="primary" disabled={!sound} onClick={() => begin(store, text, true)}>
          Try it
        </button>
        <button
          type="button"
          disabled={!sound}
          onClick={() => {
            lessonsAt.value = { page: "coach", text };
          }}
        >
          Show it to a room
        </button>
        <button
          type="button"
          disabled={!sound}
          onClick={() => {
            lessonsAt.value = { page: "paper", text };
          }}
        >
          On paper
        </button>
      </div>
      <p role="status">
        {said.value}
        {!draftKept.value && " The browser does not keep this text: save it to a file before you leave."}
      </p>
      <div class="write-columns">
        <label class="write-text">
          The lesson as text
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
            {text.trim() === ""
              ? "Nothing yet"
              : current === null
                ? "Being read …"
                : sound
                  ? "It is sound"
                  : "What is wrong"}
          </h4>
          {sound && (
            <p>
              Its own solutions pass every check, its start passes none, and every number in it is computed.
            </p>
          )}
          {current && current.problems.length > 0 && (
            <ol class="write-problems">
              {current.problems.map((problem, at) => (
                <li key={at}>
                  <button type="button" class="write-line" onClick={() => goTo(problem)}>
                    Line {problem.line}
                  </button>{" "}
                  {worded(problem.message)}
                </li>
              ))}
            </ol>
          )}
          {current?.problems.length === 1 && (
            <p class="hint">
              Where the form is wrong the rest cannot be read yet: more may show once this is mended.
            </p>
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
  }, [text]);
  if (!reads) return null;
  return (
    <details class="write-reads" open>
      <summary>How it reads: {reads.title}</summary>
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
              Computed: <Line said={[truth.truth.number]} />
            </p>
          )}
          {shown.hints.length > 0 && (
            <ol class="hints" aria-label="Hints">
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

/** What expressions may speak of. */
function Names() {
  const [open, setOpen] = useState(false);
  return (
    <details class="write-names" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Names that can be used</summary>
      {open && (
        <>
          <p>
            Any number of the ball or shot can be used by its place too, such as{" "}
            <code>ball.pieces[0].density_g_cc</code> or <code>shot.release.revs_rpm</code>. With{" "}
            <code>start.</code> before it a name speaks of the bench as the step opened, with the name of a
            state before it of that state.
          </p>
          <dl>
            {more.lesson_names().map(({ name, unit, words }) => (
              <div key={name}>
                <dt>
                  <code>{name}</code>
                </dt>
                <dd>
                  {words}
                  {unit && ` (${unit})`}
                </dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </details>
  );
}
