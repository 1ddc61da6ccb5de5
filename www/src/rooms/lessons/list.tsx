import { lessonsAt } from "../../lessons/at";
import { lessonProgress, progress } from "../../lessons/progress";
import { type Listed, lessonTexts, useLessons } from "../../lessons/read";
import { Prose } from "../../lessons/said";
import { begin, goTo, leave, openStep, resume } from "../../lessons/work";
import { Term } from "../../parts/term";
import { useStore } from "../../store";
import { WORDS, type Word } from "../../words";
import { Mine } from "./mine";

/** All courses with their lessons, and what was done of them. */
export function List({ finished: finishedNow }: { finished?: string }) {
  const { lessons, done } = useLessons();
  const courses = [...new Set(lessons.map(({ about }) => about.course))];
  const finished = lessons.filter(({ about }) => lessonProgress(about.id)?.finished_at).length;
  return (
    <>
      <p class="lessons-first">
        Each lesson takes about ten minutes and works without a network: look, say what you expect, try it on
        the bench, and see why. {finished > 0 && `You have finished ${finished} of ${lessonTexts().length}.`}
      </p>
      {done && progress.value.lessons.length > 0 && (
        <p>
          <button type="button" onClick={toMine}>
            Your progress: name it, save it, hand it in
          </button>
        </p>
      )}
      <Going />
      {!done && <p role="status">One moment. Reading the lessons …</p>}
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
    <section class="lessons-going" aria-label="What comes next">
      <p>
        {next
          ? `The next one: ${next.about.title}. ${next.about.course}.`
          : "There is no lesson after this one that you have not finished."}
      </p>
      <div class="choices">
        {next && (
          <button type="button" class="primary" onClick={() => begin(store, next.text)}>
            Go on with it
          </button>
        )}
        <button type="button" onClick={toMine}>
          Save your progress
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
    <section class="lessons-going" aria-label="The lesson you are in">
      <p>You are in a lesson, at step {taken.step + 1}. Your own ball and shot are kept aside.</p>
      <div class="choices">
        <button type="button" class="primary" onClick={() => goTo(store, taken, taken.step)}>
          Back to it
        </button>
        <button type="button" onClick={() => leave(store, taken)}>
          Leave it
        </button>
      </div>
    </section>
  );
}

function Entry({ one }: { one: Listed }) {
  const store = useStore();
  const { about, text } = one;
  const mine = lessonProgress(about.id);
  const passed = mine?.steps.filter((step) => step.passed).length ?? 0;
  const next = openStep(about);
  const state = mine?.finished_at ? "done" : mine ? `begun: ${passed} of ${about.steps.length} steps` : null;
  return (
    <li class="lessons-entry" data-done={mine?.finished_at ? "" : undefined}>
      <h4>{about.title}</h4>
      <p class="lessons-facts">
        About {about.minutes} minutes, {about.steps.length} steps
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
          Words:{" "}
          {about.words.map((word, at) => (
            <span key={word}>
              {at > 0 && ", "}
              {word in WORDS ? <Term word={word as Word} /> : word}
            </span>
          ))}
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
            Go on at step {next + 1}, {about.steps[next]?.title}
            <span class="visually-hidden">, of {about.title}</span>
          </button>
        )}
        <button
          type="button"
          class={next === null ? "primary" : undefined}
          onClick={() => begin(store, text)}
        >
          {mine?.finished_at
            ? "Take it again"
            : next === null
              ? "Take this lesson"
              : "Take it from the beginning"}
          <span class="visually-hidden"> {about.title}</span>
        </button>
        <button
          type="button"
          onClick={() => {
            lessonsAt.value = { page: "coach", text };
          }}
        >
          Show to a room<span class="visually-hidden"> {about.title}</span>
        </button>
        <button
          type="button"
          onClick={() => {
            lessonsAt.value = { page: "paper", text };
          }}
        >
          On paper<span class="visually-hidden"> {about.title}</span>
        </button>
      </div>
    </li>
  );
}
