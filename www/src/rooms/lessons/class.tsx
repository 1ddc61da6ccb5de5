import { useMemo } from "preact/hooks";
import { useOptions, wrongSaid } from "../../lessons/answers";
import { useLessons } from "../../lessons/read";
import type { ToSay } from "../../locale/say";
import { more } from "../../more";
import { OpenFile } from "../../parts/open-file";
import { Wide } from "../../parts/wide";
import { useStore } from "../../store";
import type { ClassTable } from "../../types";
import { type Handed, handed, notRead, putAway, takeHanded, twice } from "./handed";
import { say } from "./say";

/** What a class has done: progress files side by side. They stay in this tab. */
export function Classroom() {
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

  return (
    <section class="lessons-class" aria-labelledby="lessons-class">
      <h3 id="lessons-class">{say("lessons-class")}</h3>
      <p>{say("class-says")}</p>
      <div class="choices">
        <OpenFile label={say("class-files")} multiple onOpen={(files) => void takeHanded(files)}>
          {say("class-open")}
        </OpenFile>
        {handed.value.length > 0 && (
          <button type="button" onClick={putAway}>
            {say("class-away")}
          </button>
        )}
      </div>
      <div role="status">
        {handed.value.length > 0 && <p>{say("class-read", { files: handed.value.length })}</p>}
        <Told title={say("class-twice")} told={twice.value} />
        <Told title={say("class-not-read")} told={notRead.value} />
      </div>
      {table && <Table table={table} handed={handed.value} />}
    </section>
  );
}

function Told({ title, told }: { title: string; told: ToSay[] }) {
  if (told.length === 0) return null;
  return (
    <>
      <p>{title}</p>
      <ul class="missing">
        {told.map((one, at) => (
          <li key={at}>{one()}</li>
        ))}
      </ul>
    </>
  );
}

function Table({ table, handed }: { table: ClassTable; handed: Handed[] }) {
  const { lessons, learners, questions, tasks } = table;
  const { units } = useStore().view.value;
  const { lessons: known } = useLessons();
  const idOf = (at: number) => lessons[at]?.id ?? "";
  const place = (id: string) => {
    const at = known.findIndex(({ about }) => about.id === id);
    return at < 0 ? known.length : at;
  };
  const listedAs = (id: string) => known.find(({ about }) => about.id === id);
  const aboutOf = (id: string) => listedAs(id)?.about;
  /** In the page's language, where it is a lesson of the page. */
  const lessonTitle = (id: string, title: string) => aboutOf(id)?.title ?? title;
  const stepTitle = (id: string, step: string, title: string) =>
    aboutOf(id)?.steps.find((one) => one.id === step)?.title ?? title;
  useOptions(
    known.filter(({ about }) =>
      questions.some(
        ({ lesson, wrong }) => lesson === about.id && wrong.some(({ answer }) => answer.option !== undefined),
      ),
    ),
  );
  /** The columns in the order of the courses. */
  const order = lessons.map((_, at) => at).sort((a, b) => place(idOf(a)) - place(idOf(b)));
  const mineOf = (name: string, id: string) =>
    handed.find((one) => one.name === name)?.file.lessons.find((lesson) => lesson.id === id);
  /** The steps whose own way the learner was shown. */
  const shown = (name: string, id: string): string =>
    (mineOf(name, id)?.steps ?? [])
      .filter((step) => step.shown)
      .map((step) => stepTitle(id, step.id, step.title))
      .join("; ");
  /** The steps that a learner has not passed, as far as the page or the file knows them. */
  const missing = (name: string, id: string): string => {
    const mine = mineOf(name, id);
    const steps = aboutOf(id)?.steps ?? mine?.steps ?? [];
    const passed = (step: string) => mine?.steps.some((one) => one.id === step && one.passed);
    return steps
      .filter((step) => !passed(step.id))
      .map(({ title }) => title)
      .join("; ");
  };
  return (
    <>
      <h4>{say("class-who")}</h4>
      <Wide label={say("class-who")}>
        <table class="class-table">
          <thead>
            <tr>
              <th scope="col">{say("class-learner")}</th>
              <th scope="col">{say("class-finished-many")}</th>
              {order.map((at) => {
                const { id, title, begun, finished } = lessons[at] as (typeof lessons)[number];
                return (
                  <th key={id} scope="col">
                    {lessonTitle(id, title)}
                    <span class="class-sum">
                      {say(begun > finished ? "class-finished-middle" : "class-finished-of", {
                        finished,
                        learners: learners.length,
                        middle: begun - finished,
                      })}
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
                  {learner || say("class-no-name")} <span class="class-sum">{file}</span>
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
                          {one.finished
                            ? say("class-finished")
                            : say("class-passed", { passed: one.passed, steps: one.of_steps })}
                          <span class="class-sum">
                            {[
                              one.predicted > 0 &&
                                say("class-right", { right: one.right, predicted: one.predicted }),
                              one.tries > 0 && say("class-tries", { tries: one.tries }),
                              one.hints > 0 && say("class-hints", { hints: one.hints }),
                            ]
                              .filter(Boolean)
                              .join(", ")}
                          </span>
                          {one.shown > 0 && (
                            <span class="class-sum">
                              {say("class-shown", { steps: shown(file, idOf(at)) })}
                            </span>
                          )}
                          {!one.finished && (
                            <span class="class-sum">
                              {say("class-steps-open", {
                                steps: missing(file, idOf(at)) || say("class-not-named"),
                              })}
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
          <h4>{say("class-wrong-first")}</h4>
          <Wide label={say("class-wrong")}>
            <table class="class-table">
              <thead>
                <tr>
                  <th scope="col">{say("class-question")}</th>
                  <th scope="col">{say("class-answered-right")}</th>
                  <th scope="col">{say("class-wrong-answers")}</th>
                </tr>
              </thead>
              <tbody>
                {questions.map(({ lesson, lesson_title, step, title, answered, right, wrong }) => (
                  <tr key={`${lesson} ${step}`}>
                    <th scope="row">
                      {stepTitle(lesson, step, title)}{" "}
                      <span class="class-sum">{lessonTitle(lesson, lesson_title)}</span>
                    </th>
                    <td>{say("class-of", { part: right, all: answered })}</td>
                    <td>
                      {wrong.length === 0
                        ? say("class-none")
                        : wrong.map(({ answer, count }, at) => (
                            <span key={at} class="class-wrong">
                              {say("class-times", {
                                count,
                                said: wrongSaid(answer, step, listedAs(lesson), units),
                              })}
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
          <h4>{say("class-tasks-first")}</h4>
          <Wide label={say("class-tasks")}>
            <table class="class-table">
              <thead>
                <tr>
                  <th scope="col">{say("class-task")}</th>
                  <th scope="col">{say("class-done-by")}</th>
                  <th scope="col">{say("class-failed-tries")}</th>
                  <th scope="col">{say("class-hints-taken")}</th>
                </tr>
              </thead>
              <tbody>
                {tasks.map(({ lesson, lesson_title, step, title, begun, passed, tries, hints }) => (
                  <tr key={`${lesson} ${step}`}>
                    <th scope="row">
                      {stepTitle(lesson, step, title)}{" "}
                      <span class="class-sum">{lessonTitle(lesson, lesson_title)}</span>
                    </th>
                    <td>{say("class-of", { part: passed, all: begun })}</td>
                    <td>{tries}</td>
                    <td>{hints}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </Wide>
          <p class="hint">{say("class-failed-try")}</p>
        </>
      )}
    </>
  );
}
