import { lessonsAt } from "../../lessons/at";
import { lessonProgress, progress } from "../../lessons/progress";
import { type Listed, lessonTexts, useLessons } from "../../lessons/read";
import { Prose } from "../../lessons/said";
import { begin, goTo, leave, openStep, resume } from "../../lessons/work";
import { Say, type SayProps } from "../../locale/say";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import { WORDS, type Word } from "../../words";
import { Mine } from "./mine";
import { say } from "./say";

/** All courses with their lessons, and what was done of them. */
export function List({ finished: finishedNow }: { finished?: string }) {
  const { lessons, done } = useLessons();
  const courses = [...new Set(lessons.map(({ about }) => about.course))];
  const finished = lessons.filter(({ about }) => lessonProgress(about.id)?.finished_at).length;
  return (
    <>
      <p class="lessons-first">
        {say("lessons-first")}{" "}
        {finished > 0 && say("lessons-finished", { finished, all: lessonTexts().length })}
      </p>
      {done && progress.value.lessons.length > 0 && (
        <p>
          <button type="button" onClick={toMine}>
            {say("lessons-to-mine")}
          </button>
        </p>
      )}
      <Going />
      {!done && <p role="status">{say("lessons-reading")}</p>}
      {done && finishedNow && <After lessons={lessons} id={finishedNow} />}
      {(done ? courses : []).map((course) => (
        <section key={course} aria-label={course}>
          <h3>{course}</h3>
          <ol class="lessons-list">
            {lessons
              .filter(({ about }) => about.course === course)
              .map((one) => (
                <Entry key={one.about.id} one={one} />
              ))}
          </ol>
        </section>
      ))}
      {done && <Mine />}
    </>
  );
}

function toMine(): void {
  const place = document.getElementById("lessons-mine");
  place?.scrollIntoView({ block: "start" });
  place?.focus({ preventScroll: true });
}

/** What comes after a lesson. */
function After({ lessons, id }: { lessons: Listed[]; id: string }) {
  const store = useStore();
  const at = lessons.findIndex(({ about }) => about.id === id);
  const next = lessons.slice(at + 1).find(({ about }) => !lessonProgress(about.id)?.finished_at);
  if (at < 0) return null;
  return (
    <section class="lessons-going" aria-label={say("lessons-after")}>
      <p>
        {next
          ? say("lessons-next", { title: next.about.title, course: next.about.course })
          : say("lessons-no-next")}
      </p>
      <div class="choices">
        {next && (
          <button type="button" class="primary" onClick={() => begin(store, next.text)}>
            {say("lessons-go-on-next")}
          </button>
        )}
        <button type="button" onClick={toMine}>
          {say("lessons-save-progress")}
        </button>
      </div>
    </section>
  );
}

/** The lesson that has the bench now. */
function Going() {
  const store = useStore();
  const taken = store.loan.value?.taken;
  if (!taken) return null;
  return (
    <section class="lessons-going" aria-label={say("lessons-going")}>
      <p>{say("lessons-going-says", { step: taken.step + 1 })}</p>
      <div class="choices">
        <button type="button" class="primary" onClick={() => goTo(store, taken, taken.step)}>
          {say("lessons-back-to-it")}
        </button>
        <button type="button" onClick={() => leave(store, taken)}>
          {say("lessons-leave-it")}
        </button>
      </div>
    </section>
  );
}

/** Of which lesson a button is, for those who do not see where it stands. */
const HEARD: SayProps["parts"] = { of: (said) => <span class="visually-hidden">{said}</span> };

function Entry({ one }: { one: Listed }) {
  const store = useStore();
  const { about, text } = one;
  const mine = lessonProgress(about.id);
  const passed = mine?.steps.filter((step) => step.passed).length ?? 0;
  const next = openStep(about);
  const steps = about.steps.length;
  const state = mine?.finished_at
    ? say("lessons-state-done")
    : mine
      ? say("lessons-begun", { passed, steps })
      : null;
  return (
    <li class="lessons-entry" data-done={mine?.finished_at ? "" : undefined}>
      <h4>{about.title}</h4>
      <p class="lessons-facts">
        {say("lessons-facts", { minutes: about.minutes, steps })}
        {state && (
          <>
            {" · "}
            <strong>{state}</strong>
          </>
        )}
      </p>
      <Prose blocks={about.aim} />
      {about.words.length > 0 && (
        <p class="lessons-words">
          <Say
            id="lessons-its-words"
            parts={{
              words: () =>
                about.words.map((word, at) => (
                  <span key={word}>
                    {at > 0 && ", "}
                    {word in WORDS ? <Term word={word as Word} /> : word}
                  </span>
                )),
            }}
          />
        </p>
      )}
      <div class="choices">
        {next !== null && (
          <button
            type="button"
            class="primary"
            id={`go-on-${about.id}`}
            onClick={() => resume(store, text, next)}
          >
            <Say
              id="lessons-go-on"
              args={{ step: next + 1, title: about.steps[next]?.title ?? "", lesson: about.title }}
              parts={HEARD}
            />
          </button>
        )}
        <button
          type="button"
          class={next === null ? "primary" : undefined}
          onClick={() => begin(store, text)}
        >
          <Say
            id={
              mine?.finished_at ? "lessons-take-again" : next === null ? "lessons-take" : "lessons-take-anew"
            }
            args={{ lesson: about.title }}
            parts={HEARD}
          />
        </button>
        <button
          type="button"
          id={`to-room-${about.id}`}
          onClick={() => {
            lessonsAt.value = { page: "coach", text };
          }}
        >
          <Say id="lessons-to-room" args={{ lesson: about.title }} parts={HEARD} />
        </button>
        <button
          type="button"
          onClick={() => {
            lessonsAt.value = { page: "paper", text };
          }}
        >
          <Say id="lessons-on-paper" args={{ lesson: about.title }} parts={HEARD} />
        </button>
      </div>
    </li>
  );
}
