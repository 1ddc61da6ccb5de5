import { useSignal } from "@preact/signals";
import { useMemo } from "preact/hooks";
import { notProgress } from "../../lessons/progress";
import { useLessons } from "../../lessons/read";
import { more } from "../../more";
import { OpenFile } from "../../parts/open-file";
import { Wide } from "../../parts/wide";
import { isProblem } from "../../store";
import type { ClassTable, ProgressFile } from "../../types";

const MOST_BYTES = 4 * 1024 * 1024;
const MOST_FILES = 500;

interface Handed {
  name: string;
  file: ProgressFile;
}

/** What a class has done: progress files side by side. They stay in this tab. */
export function Classroom() {
  const handed = useSignal<Handed[]>([]);
  const refused = useSignal<string[]>([]);
  const table = useMemo(
    () =>
      handed.value.length > 0
        ? more.class_table(
            handed.value.map(({ name }) => name),
            handed.value.map(({ file }) => file),
          )
        : null,
    [handed.value],
  );

  async function take(files: File[]): Promise<void> {
    const news: Handed[] = [];
    const wrong: string[] = [];
    for (const file of files.slice(0, MOST_FILES)) {
      if (file.size > MOST_BYTES) {
        wrong.push(`${file.name}: larger than 4 MiB.`);
        continue;
      }
      try {
        news.push({ name: file.name, file: more.read_progress(await file.text()) });
      } catch (error) {
        if (!isProblem(error)) throw error;
        wrong.push(`${file.name}: ${notProgress(error)}`);
      }
    }
    if (files.length > MOST_FILES) wrong.push(`Only the first ${MOST_FILES} files were read.`);
    // The same file once more takes the place of the one before.
    const names = new Set(news.map(({ name }) => name));
    handed.value = [...handed.value.filter(({ name }) => !names.has(name)), ...news];
    refused.value = wrong;
  }

  return (
    <section class="lessons-class" aria-labelledby="lessons-class">
      <h3 id="lessons-class">A class</h3>
      <p>
        Your learners save their progress to a file and give it to you. Open all of the files at once: they
        are read here, in this tab, and nothing is sent or kept.
      </p>
      <div class="choices">
        <OpenFile label="Progress files of a class" multiple onOpen={(files) => void take(files)}>
          Open progress files…
        </OpenFile>
        {handed.value.length > 0 && (
          <button
            type="button"
            onClick={() => {
              handed.value = [];
              refused.value = [];
            }}
          >
            Put them away
          </button>
        )}
      </div>
      <div role="status">
        {handed.value.length > 0 && <p>{handed.value.length} files read.</p>}
        {refused.value.length > 0 && (
          <>
            <p>These were not read:</p>
            <ul class="missing">
              {refused.value.map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </>
        )}
      </div>
      {table && <Table table={table} handed={handed.value} />}
    </section>
  );
}

function Table({ table, handed }: { table: ClassTable; handed: Handed[] }) {
  const { lessons, learners, questions, tasks } = table;
  const { lessons: known } = useLessons();
  const idOf = (at: number) => lessons[at]?.id ?? "";
  const place = (id: string) => {
    const at = known.findIndex(({ about }) => about.id === id);
    return at < 0 ? known.length : at;
  };
  /** The columns in the order of the courses. */
  const order = lessons.map((_, at) => at).sort((a, b) => place(idOf(a)) - place(idOf(b)));
  const mineOf = (name: string, id: string) =>
    handed.find((one) => one.name === name)?.file.lessons.find((lesson) => lesson.id === id);
  /** The steps whose own way the learner was shown. */
  const shown = (name: string, id: string): string =>
    (mineOf(name, id)?.steps ?? [])
      .filter((step) => step.shown)
      .map(({ title }) => title)
      .join("; ");
  /** The steps that a learner has not passed, as far as the page or the file knows them. */
  const missing = (name: string, id: string): string => {
    const mine = mineOf(name, id);
    const steps = known.find(({ about }) => about.id === id)?.about.steps ?? mine?.steps ?? [];
    const passed = (step: string) => mine?.steps.some((one) => one.id === step && one.passed);
    return steps
      .filter((step) => !passed(step.id))
      .map(({ title }) => title)
      .join("; ");
  };
  return (
    <>
      <h4>Who did what</h4>
      <Wide label="Who did what">
        <table class="class-table">
          <thead>
            <tr>
              <th scope="col">Learner</th>
              <th scope="col">Finished</th>
              {order.map((at) => {
                const { id, title, begun, finished } = lessons[at] as (typeof lessons)[number];
                return (
                  <th key={id} scope="col">
                    {title}
                    <span class="class-sum">
                      {finished} of {learners.length} finished
                      {begun > finished && `, ${begun - finished} in the middle of it`}
                    </span>
                  </th>
                );
              })}
            </tr>
          </thead>
          <tbody>
            {learners.map(({ file, learner, finished, lessons }) => (
              <tr key={file}>
                <th scope="row">
                  {learner || "no name"} <span class="class-sum">{file}</span>
                </th>
                <td>{finished}</td>
                {order.map((at) => {
                  const one = lessons[at] ?? null;
                  return (
                    <td key={at}>
                      {one === null ? (
                        "–"
                      ) : (
                        <>
                          {one.finished ? "finished" : `${one.passed} of ${one.of_steps} steps`}
                          <span class="class-sum">
                            {[
                              one.predicted > 0 && `${one.right} of ${one.predicted} predicted right`,
                              one.tries > 0 && counted(one.tries, "failed try", "failed tries"),
                              one.hints > 0 && counted(one.hints, "hint", "hints"),
                            ]
                              .filter(Boolean)
                              .join(", ")}
                          </span>
                          {one.shown > 0 && (
                            <span class="class-sum">was shown the way: {shown(file, idOf(at))}</span>
                          )}
                          {!one.finished && (
                            <span class="class-sum">
                              open: {missing(file, idOf(at)) || "a step not named in the file"}
                            </span>
                          )}
                        </>
                      )}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </Wide>
      {questions.length > 0 && (
        <>
          <h4>What was predicted wrong, the most often mistaken first</h4>
          <Wide label="What was predicted wrong">
            <table class="class-table">
              <thead>
                <tr>
                  <th scope="col">Question</th>
                  <th scope="col">Right</th>
                  <th scope="col">Wrong answers</th>
                </tr>
              </thead>
              <tbody>
                {questions.map(({ lesson, lesson_title, step, title, answered, right, wrong }) => (
                  <tr key={`${lesson} ${step}`}>
                    <th scope="row">
                      {title} <span class="class-sum">{lesson_title}</span>
                    </th>
                    <td>
                      {right} of {answered}
                    </td>
                    <td>
                      {wrong.length === 0
                        ? "none"
                        : wrong.map(({ said, count }) => (
                            <span key={said} class="class-wrong">
                              {count} ×: {said}
                            </span>
                          ))}
                    </td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Wide>
        </>
      )}
      {tasks.length > 0 && (
        <>
          <h4>What had to be done, the most failed tries first</h4>
          <Wide label="What had to be done">
            <table class="class-table">
              <thead>
                <tr>
                  <th scope="col">Task</th>
                  <th scope="col">Done by</th>
                  <th scope="col">Failed tries</th>
                  <th scope="col">Hints</th>
                </tr>
              </thead>
              <tbody>
                {tasks.map(({ lesson, lesson_title, step, title, begun, passed, tries, hints }) => (
                  <tr key={`${lesson} ${step}`}>
                    <th scope="row">
                      {title} <span class="class-sum">{lesson_title}</span>
                    </th>
                    <td>
                      {passed} of {begun}
                    </td>
                    <td>{tries}</td>
                    <td>{hints}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Wide>
          <p class="hint">A failed try: a change that was left standing and was not what was wanted.</p>
        </>
      )}
    </>
  );
}

const counted = (count: number, one: string, more: string) => `${count} ${count === 1 ? one : more}`;
