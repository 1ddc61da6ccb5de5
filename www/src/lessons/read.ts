// The lessons that are part of the page, read by the module when they are wanted.

import { FILES, LESSONS } from "lessons:files";
import { useEffect, useState } from "preact/hooks";
import { more } from "../more";
import { useStore } from "../store";
import type { LessonDoc, LessonProblem, WasmLesson } from "../types";

export { FILES, LESSONS };

const MOST_KEPT = 40;
const read = new Map<string, WasmLesson>();

/** The lesson of a text; throws a list of `LessonProblem`. */
export function lessonOf(text: string): WasmLesson {
  const known = read.get(text);
  if (known) {
    // Those in use stay the youngest.
    read.delete(text);
    read.set(text, known);
    return known;
  }
  const lesson = new more.Lesson(text, FILES);
  for (const [old, one] of read) {
    if (read.size < MOST_KEPT) break;
    read.delete(old);
    listed.delete(old);
    one.free();
  }
  read.set(text, lesson);
  return lesson;
}

export interface Listed {
  text: string;
  lesson: WasmLesson;
  about: LessonDoc;
}

const listed = new Map<string, Listed>();

export function listedOf(text: string): Listed {
  const lesson = lessonOf(text);
  const known = listed.get(text);
  if (known?.lesson === lesson) return known;
  const one = { text, lesson, about: lesson.about() };
  listed.set(text, one);
  return one;
}

/** All lessons of the page in their order, one after the other as they are read. */
export function useLessons(): { lessons: Listed[]; done: boolean } {
  const store = useStore();
  const [count, setCount] = useState(() => LESSONS.filter((text) => listed.has(text)).length);
  useEffect(() => {
    if (count >= LESSONS.length) return undefined;
    // One at a time, so that the page can draw between them.
    const timer = setTimeout(() => {
      try {
        listedOf(LESSONS[count] ?? "");
        setCount(count + 1);
      } catch (error) {
        store.fail(problemsOf(error)?.[0]?.message ?? error);
      }
    });
    return () => clearTimeout(timer);
  }, [count]);
  const lessons = LESSONS.slice(0, count).map((text) => listedOf(text));
  const courses = [...COURSES, ...lessons.map(({ about }) => about.course)];
  const place = ({ about }: Listed) => courses.indexOf(about.course) * 1000 + about.order;
  return { lessons: lessons.sort((a, b) => place(a) - place(b)), done: count >= LESSONS.length };
}

/** In the order in which they are to be taken. */
const COURSES = ["What's inside", "What it does on the lane", "At the shop and the factory"];

/** What is wrong with a lesson's text, where an error is that. */
export function problemsOf(error: unknown): LessonProblem[] | null {
  return Array.isArray(error) ? (error as LessonProblem[]) : null;
}
