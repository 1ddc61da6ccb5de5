// What the Lessons room shows.

import { signal } from "@preact/signals";
import type { Room, Store } from "../store";
import type { Word } from "../words";

export type LessonsPage =
  | { page: "class" | "write" }
  /** All lessons; one that was just finished. */
  | { page: "list"; finished?: string }
  /** The words, beginning at one; where the reader came from. */
  | { page: "words"; word: Word | null; from?: Room }
  /** A lesson on paper, or told to a room. */
  | { page: "paper" | "coach"; text: string };

export const lessonsAt = signal<LessonsPage>({ page: "list" });

/** Where a word is shown with its picture. */
export function toGlossary(store: Store, word: Word): void {
  const { room } = store.view.peek();
  // From word to word it stays where the first one was.
  const was = lessonsAt.peek();
  const from = room !== "lessons" ? room : was.page === "words" ? was.from : undefined;
  lessonsAt.value = { page: "words", word, from: from && store.loan.peek() ? "lesson" : from };
  store.look({ room: "lessons" });
}

/** Back to where a word was looked up; in a lesson to its step, as it was left. */
export function fromGlossary(store: Store, room: Room): void {
  store.look({ room });
  requestAnimationFrame(() => {
    const place = document.getElementById(room === "lesson" ? "lesson-step" : `room-${room}`);
    place?.focus({ preventScroll: true });
  });
}
