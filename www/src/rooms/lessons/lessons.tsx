import "./lessons.css";
import type { JSX } from "preact";
import { useEffect } from "preact/hooks";
import { type LessonsPage, lessonsAt } from "../../lessons/at";
import { openProgress } from "../../lessons/progress";
import { inLanguage } from "../../lessons/read";
import { Classroom } from "./class";
import { Coach } from "./coach";
import { List } from "./list";
import { PaperLesson } from "./paper";
import { say } from "./say";
import { Words } from "./words";
import { Write } from "./write";

const PAGES: { page: LessonsPage["page"]; name: string; at: LessonsPage }[] = [
  { page: "list", name: "lessons-list", at: { page: "list" } },
  { page: "words", name: "lessons-words", at: { page: "words", word: null } },
  { page: "class", name: "lessons-class", at: { page: "class" } },
  { page: "write", name: "lessons-write", at: { page: "write" } },
];

/** Where else a page belongs to. */
const IN: Partial<Record<LessonsPage["page"], LessonsPage["page"]>> = { paper: "list", coach: "list" };

/** Lessons to take, the trade's words, and what a teacher needs. */
export function Lessons() {
  useEffect(() => openProgress(), []);
  const at = lessonsAt.value;
  return (
    <div class="lessons">
      <nav class="lessons-nav" aria-label={say("lessons-in")}>
        {PAGES.map(({ page, name, at: to }) => (
          <button
            type="button"
            key={page}
            aria-current={(IN[at.page] ?? at.page) === page ? "page" : undefined}
            onClick={() => {
              lessonsAt.value = to;
            }}
          >
            {say(name)}
          </button>
        ))}
      </nav>
      <Page at={at} />
    </div>
  );
}

function Page({ at }: { at: LessonsPage }): JSX.Element {
  switch (at.page) {
    case "words":
      return <Words word={at.word} from={at.from} />;
    case "class":
      return <Classroom />;
    case "write":
      return <Write />;
    case "paper":
      return <PaperLesson key={at.text} text={inLanguage(at.text)} />;
    case "coach":
      return <Coach text={inLanguage(at.text)} />;
    default:
      return <List finished={at.page === "list" ? at.finished : undefined} />;
  }
}
