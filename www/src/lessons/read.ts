// The lessons that are part of the page, read by the module when they are wanted.

import { FILES, LESSONS as IN_ENGLISH } from "lessons:files";
import { useEffect, useState } from "preact/hooks";
import { onlyOf } from "../kinds";
import { language } from "../locale/language";
import { more } from "../more";
import { useStore } from "../store";
import type { LessonDoc, LessonProblem, WasmLesson } from "../types";
import { inSpanish } from "./editions";
import { columnBefore, namedFiles, namedText } from "./named";

export { FILES };

let filesInSpanish: Record<string, unknown> | null = null;

/** Whether a text is none of the lessons of the page, whose language is known. */
export const isOwn = (text: string): boolean =>
  !IN_ENGLISH.includes(text) && !inSpanish.value?.includes(text);

/** What a lesson names, by the names of its language, or of the page's; null while those of another are not known. */
export function filesOf(text: string): Record<string, unknown> | null {
  const spanish = isOwn(text) ? language() === "es" : !IN_ENGLISH.includes(text);
  if (!spanish) return FILES;
  if (language() === "es") filesInSpanish ??= namedFiles(FILES);
  return filesInSpanish;
}

/** The lessons of the page in its language. */
export const lessonTexts = (): string[] => (language() === "es" && inSpanish.value) || IN_ENGLISH;

/** A lesson of the page in the page's language; any other text as it is. */
export function inLanguage(text: string): string {
  const at = [IN_ENGLISH, inSpanish.value ?? []].map((texts) => texts.indexOf(text)).find((n) => n >= 0);
  return (at !== undefined && lessonTexts()[at]) || text;
}

/** Whether the things that a lesson names are called as their files call them, in English. */
const asFiled = (text: string): boolean => (filesOf(text) ?? FILES) === FILES;

/** One text may be read with the names of either language. */
const keyOf = (text: string): string => `${asFiled(text) ? "en" : "es"} ${text}`;

const MOST_KEPT = 40;
const read = new Map<string, WasmLesson>();

/** How a lesson is read: with the things that it names, by the names that they have. */
export function readAs(text: string): { text: string; files: Record<string, unknown> } {
  return { text: asFiled(text) ? text : namedText(text), files: filesOf(text) ?? FILES };
}

/** The mistakes of a text read so, where they are in the text itself. */
export function placedIn(text: string, problems: LessonProblem[]): LessonProblem[] {
  if (asFiled(text)) return problems;
  const lines = text.split("\n");
  return problems.map((one) => ({ ...one, column: columnBefore(lines[one.line - 1] ?? "", one.column) }));
}

/** The lesson of a text; throws a list of `LessonProblem`. */
export function lessonOf(text: string): WasmLesson {
  const key = keyOf(text);
  const known = read.get(key);
  if (known) {
    // Those in use stay the youngest.
    read.delete(key);
    read.set(key, known);
    return known;
  }
  const as = readAs(text);
  const lesson = new more.Lesson(as.text, as.files);
  for (const [old, one] of read) {
    if (read.size < MOST_KEPT) break;
    read.delete(old);
    listed.delete(old);
    one.free();
  }
  read.set(key, lesson);
  return lesson;
}

/** A file's text as that of a lesson, sound or not; throws a `Problem` where it is none at all. */
export function asLesson(text: string): string {
  onlyOf(["lesson"], text);
  try {
    lessonOf(text);
  } catch (error) {
    const [first] = problemsOf(error) ?? [];
    if (!first) throw error;
    if (typeof first.message === "object" && first.message.id === "lesson-begins") throw first;
  }
  return text;
}

export interface Listed {
  text: string;
  lesson: WasmLesson;
  about: LessonDoc;
}

const listed = new Map<string, Listed>();

export function listedOf(text: string): Listed {
  const lesson = lessonOf(text);
  const known = listed.get(keyOf(text));
  if (known?.lesson === lesson) return known;
  const one = { text, lesson, about: lesson.about() };
  listed.set(keyOf(text), one);
  return one;
}

/** Each begins a course; courses are to be taken in this order. */
const FIRST = ["why-a-house-ball-goes-long", "skid-hook-roll", "making-a-lighter-ball"];

/** All lessons of the page in their order, one after the other as they are read. */
export function useLessons(): { lessons: Listed[]; done: boolean } {
  const store = useStore();
  const texts = lessonTexts();
  const [failed, setFailed] = useState(false);
  const [, setRead] = useState("");
  const next = texts.find((text) => !listed.has(keyOf(text)));
  useEffect(() => {
    if (next === undefined || failed) return undefined;
    // One at a time, so that the page can draw between them.
    const timer = setTimeout(() => {
      try {
        listedOf(next);
        setRead(next);
      } catch (error) {
        setFailed(true);
        store.fail(problemsOf(error)?.[0] ?? error);
      }
    });
    return () => clearTimeout(timer);
  }, [next, failed]);
  const lessons = texts.filter((text) => listed.has(keyOf(text))).map((text) => listedOf(text));
  const first = FIRST.map((id) => lessons.find(({ about }) => about.id === id)?.about.course);
  const courses = [...first, ...lessons.map(({ about }) => about.course)];
  const place = ({ about }: Listed) => courses.indexOf(about.course) * 1000 + about.order;
  return { lessons: lessons.sort((a, b) => place(a) - place(b)), done: next === undefined };
}

/** What is wrong with a lesson's text, where an error is that. */
export function problemsOf(error: unknown): LessonProblem[] | null {
  return Array.isArray(error) ? (error as LessonProblem[]) : null;
}
